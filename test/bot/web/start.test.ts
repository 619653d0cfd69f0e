import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { visitor } from './visitor.ts';

const main = join(import.meta.dirname, '../../../dist/bot/main.js');
let folder: string;
let running: ChildProcess | undefined;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'page-'));
});
afterEach(() => {
  running?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

/** As a service starts it: nobody at the keyboard. */
function start(...flags: readonly string[]) {
  const child = spawn(process.execPath, [main, '--serve', '--port', '0', ...flags], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  running = child;
  let out = '';
  child.stdout.on('data', (chunk: Buffer) => {
    out += chunk.toString();
  });
  const says = async (wanted: RegExp): Promise<string> => {
    for (;;) {
      const found = wanted.exec(out)?.[1];
      if (found !== undefined) return found;
      await once(child.stdout, 'data');
    }
  };
  return { child, says, address: () => says(/(http:\/\/127\.0\.0\.1:\d+)\b/) };
}

describe('the page’s server as a service', () => {
  test('goes on without a terminal, and ends cleanly when it is told to', async () => {
    const { child, address } = start('--data', folder);
    expect((await visitor(await address()).request('/')).status).toBe(200);
    child.kill('SIGTERM');
    expect((await once(child, 'exit'))[0]).toBe(0);
  });

  test('a phone stays who it is over a restart, and what was recorded is there', async () => {
    const first = start('--data', folder);
    const lead = visitor(await first.address());
    await lead.request('/');
    expect((await lead.say('lead', 'air 24C 48%')).status).toBe(200);
    first.child.kill('SIGTERM');
    await once(first.child, 'exit');
    const second = start('--data', folder);
    const again = visitor(await second.address());
    again.useCookie(lead.cookie());
    expect(await (await again.request('/')).text()).toContain('Air, room');
  });

  test('open to the network it prints a join code, and lets nobody in without it', async () => {
    const { address, says } = start('--data', folder, '--lan');
    const lead = visitor(await address());
    expect((await lead.request('/')).headers.get('location')).toBe('/join');
    const code = await says(/Join code: (\S+)/);
    expect((await lead.enter('lead', code)).headers.get('location')).toBe('/');
  });

  test('with a public address it says so first, and lets nobody in without the code', async () => {
    const { address, says } = start('--data', folder, '--public-url', 'https://bell.example');
    const lead = visitor(await address());
    expect(await says(/The shop page: (\S+)/)).toBe('https://bell.example');
    expect((await lead.request('/')).headers.get('location')).toBe('/join');
    const code = await says(/Open to whoever can reach https:\/\/bell\.example\. Join code: (\S+)/);
    expect((await lead.enter('lead', code)).headers.get('location')).toBe('/');
  });

  test('a port that is taken is a bad flag: exit 2, and it names it', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await once(other, 'listening');
    const at = other.address();
    const port = typeof at === 'object' && at !== null ? at.port : 0;
    const { child } = start('--data', folder, '--port', String(port));
    let errors = '';
    child.stderr.on('data', (chunk: Buffer) => {
      errors += chunk.toString();
    });
    expect((await once(child, 'exit'))[0]).toBe(2);
    expect(errors).toContain(`--port ${port}`);
    other.close();
  });
});
