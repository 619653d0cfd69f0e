import { defineConfig } from 'vitest/config';
import { pureTests } from './test/imports.ts';
import whole from './vitest.config.ts';

/**
 * What can be told in seconds: no build, no record, no process, no browser. None of it keeps anything from one file to the
 * next, so that a file is read once and not once a test.
 */
export default defineConfig({
  test: { ...whole.test, include: [...pureTests()], globalSetup: [], isolate: false, pool: 'threads' },
});
