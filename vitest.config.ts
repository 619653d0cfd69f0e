import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: ['test/bench/**'],
    // The black-box tests run what ships: the build is made once, before them.
    globalSetup: ['test/build.ts'],
  },
});
