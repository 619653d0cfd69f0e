// On Node 24.19 and newer, better-sqlite3 12 ends the process when a statement that nobody holds any more is collected.

import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';

it('a process whose idle statements are collected lives on, and ends well', () => {
  const source = `
    import Database from 'better-sqlite3';
    import { setImmediate } from 'node:timers/promises';
    const database = new Database(':memory:');
    for (let round = 0; round < 20; round += 1) {
      for (let i = 0; i < 200; i += 1) database.prepare('select ' + i).get();
      gc();
      await setImmediate();
    }
    console.log('lives');
  `;
  const ran = spawnSync(process.execPath, ['--expose-gc', '--input-type=module', '-e', source], { encoding: 'utf8' });
  expect(ran.stdout.trim()).toBe('lives');
  expect(ran.status).toBe(0);
});
