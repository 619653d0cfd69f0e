import { defineConfig } from 'vitest/config';

/** Stops what hangs, and judges nothing: a busy machine may take a hundred times as long as an idle one. */
const hangMs = 20 * 60_000;

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: ['test/bench/**'],
    // The black-box tests run what ships: the build is made once, before them.
    globalSetup: ['test/build.ts'],
    testTimeout: hangMs,
    hookTimeout: hangMs,
    // `expect.poll` waits for what happens by itself. `vi.waitFor` gives up after a second of the wall: not here.
    expect: { poll: { timeout: hangMs } },
  },
});
