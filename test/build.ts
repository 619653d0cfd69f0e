// Builds once before the tests: the black-box ones run what ships. Type errors are the typecheck's to tell; the compiler
// emits all the same and ends with 2.

import { spawnSync } from 'node:child_process';

export function setup(): void {
  const { status } = spawnSync('npx', ['tsc'], { stdio: 'ignore' });
  if (status !== 0 && status !== 2) throw new Error(`the build ended with ${status}`);
}
