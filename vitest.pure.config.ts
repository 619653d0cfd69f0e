import { defineConfig } from 'vitest/config';
import { pureTests } from './test/imports.ts';
import whole from './vitest.config.ts';

/** What can be told in seconds: no build, no record, no process, no browser. */
export default defineConfig({
  test: { ...whole.test, include: [...pureTests()], globalSetup: [] },
});
