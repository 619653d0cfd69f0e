// Builds once before the tests: the black-box ones run what ships.

import { execFileSync } from 'node:child_process';

export function setup(): void {
  execFileSync('npx', ['tsc'], { stdio: 'inherit' });
}
