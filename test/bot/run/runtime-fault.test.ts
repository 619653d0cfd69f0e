import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { runtimeFault } from '../../../bot/run/runtime-fault.ts';

/** The built program under a Node that says it is another one. */
function startedBy(version: string) {
  const pretend = `data:text/javascript,Object.defineProperty(process,'versions',{value:{...process.versions,node:'${version}'}})`;
  return spawnSync(process.execPath, ['--import', pretend, 'dist/bot/main.js', '--help'], { encoding: 'utf8' });
}

describe('the Node it is started by', () => {
  it('gets one clear line where it is too old, and nothing of the database is loaded', () => {
    const { status, stdout, stderr } = startedBy('20.20.2');
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toMatch(/^batchbell: this is Node 20\.20\.2; it needs Node 22\.13 or newer.*\n$/);
  });

  it('serves from 22.13 on', () => {
    expect(startedBy('22.13.0').status).toBe(0);
    expect(runtimeFault('22.12.0')).toBeDefined();
    expect(runtimeFault('22.13.0')).toBeUndefined();
    expect(runtimeFault('24.22.3')).toBeUndefined();
  });

  it('is the one that package.json asks for', () => {
    const { engines } = JSON.parse(readFileSync('package.json', 'utf8'));
    expect(engines.node).toBe('>=22.13');
  });

  it('is not the one with the fault in its built code: the database library is the one that mends it', () => {
    // better-sqlite3 12 aborts on Node 24.19 and newer as soon as an idle statement is collected.
    const { version } = JSON.parse(readFileSync('node_modules/better-sqlite3/package.json', 'utf8'));
    expect(Number(version.split('.')[0])).toBeGreaterThanOrEqual(13);
  });
});
