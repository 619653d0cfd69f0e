// The program as it ships, started for Slack: refuses a set-up that cannot work, serves, writes nothing to standard output,
// keeps its memory over a restart, and stops when it is told to.

import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { visitor } from '../web/visitor.ts';
import { post, signingSecret, slashCommand } from './fake/deliveries.ts';
import { type FakeSlack, startFakeSlack } from './fake/fake-slack.ts';
import { bayTwo } from './fake/workshop.ts';

let folder: string;
let fake: FakeSlack;
const running: ChildProcess[] = [];
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'batchbell-'));
  writeFileSync(join(folder, 'crew.json'), JSON.stringify(bayTwo));
  fake = await startFakeSlack(() => Date.now());
});
afterEach(async () => {
  for (const child of running.splice(0)) child.kill('SIGKILL');
  await fake.close();
  rmSync(folder, { recursive: true, force: true });
  expect(fake.complaints).toEqual([]);
});

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function start(environment: Record<string, string>, pagePort = '0') {
  const flags = ['--serve', '--crew', join(folder, 'crew.json'), '--data', join(folder, 'data'), '--port', pagePort];
  const child = spawn(process.execPath, ['dist/bot/main.js', ...flags], {
    env: { PATH: process.env.PATH, ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  running.push(child);
  let [out, err] = ['', ''];
  child.stdout.on('data', (data) => {
    out += String(data);
  });
  child.stderr.on('data', (data) => {
    err += String(data);
  });
  const ended = new Promise<Ended>((resolve) => {
    child.on('exit', (code) => resolve({ code, out, err }));
  });
  const port = async (): Promise<number> => {
    await expect.poll(() => err).toContain('"event":"serving"');
    return Number(/"port":(\d+)/.exec(err)?.[1]);
  };
  const page = async (): Promise<string> => {
    await port();
    return /http:\/\/127\.0\.0\.1:\d+/.exec(err)?.[0] ?? 'no page';
  };
  return { child, ended, port, page };
}

const overHttp = () => ({
  SLACK_BOT_TOKEN: 'xoxb-invented',
  SLACK_SIGNING_SECRET: signingSecret,
  SLACK_API_URL: fake.apiUrl,
  PORT: '0',
});
const ready = (port: number): Promise<number> =>
  new Promise((resolve) => {
    get({ host: '127.0.0.1', port, path: '/ready' }, (response) => resolve(response.resume().statusCode ?? 0));
  });

describe('started for Slack', () => {
  test('with a bot token alone, it ends with 2 and names what is missing', async () => {
    const { code, err } = await start({ SLACK_BOT_TOKEN: 'xoxb-invented' }).ended;
    expect(code).toBe(2);
    expect(err).toContain('SLACK_APP_TOKEN');
    expect(err).toContain('SLACK_SIGNING_SECRET');
  });

  test('with a token that Slack refuses, it ends with 2 and says so', async () => {
    fake.fail('auth.test', { is: 'refused', error: 'invalid_auth' });
    const { code, err } = await start(overHttp()).ended;
    expect(code).toBe(2);
    expect(err).toContain('invalid_auth');
    expect(err).not.toContain('xoxb-invented');
  });

  test('it records, is told to stop, and goes on with the same message after a restart', async () => {
    const first = start(overHttp());
    const port = await first.port();
    expect(await ready(port)).toBe(200);
    await post(port, slashCommand('mix 2.4kg 24C 48%', { response_url: fake.responseUrl() }));
    await expect.poll(() => fake.inChannel('C1')).toHaveLength(1);
    first.child.kill('SIGTERM');
    const { code, out, err } = await first.ended;
    expect([code, out]).toEqual([0, '']);
    expect(err).not.toContain('2.4kg');

    const second = start(overHttp());
    const again = await second.port();
    await post(again, slashCommand('weigh 1 1201g 1198g', { response_url: fake.responseUrl() }));
    await expect.poll(() => fake.inChannel('C1')[0]?.text).toContain('mixing time runs');
    expect(fake.inChannel('C1')).toHaveLength(1);
    second.child.kill('SIGTERM');
    expect((await second.ended).code).toBe(0);
    const store = openSqliteStore(join(folder, 'data', 'batchbell.sqlite'));
    expect((await store.eventsUnder('crew', 'batch/1')).map(({ body }) => body.type)).toEqual(
      expect.arrayContaining(['BatchOpened', 'PartsWeighed']),
    );
    store.close();
  });

  test('a single crew has its page beside it: what is said in one is seen in the other', async () => {
    const { child, ended, port, page } = start(overHttp());
    await post(await port(), slashCommand('mix 2.4kg 24C 48%', { response_url: fake.responseUrl() }));
    await expect.poll(() => fake.inChannel('C1')).toHaveLength(1);
    const jo = visitor(await page());
    await jo.enter('jo');
    expect(await (await jo.request('/')).text()).toContain('<b>Batch 1: Demo Clear</b>');
    expect((await jo.say('jo', 'weigh 1 1201g 1198g')).status).toBe(200);
    await expect.poll(() => fake.inChannel('C1')[0]?.text).toContain('mixing time runs');
    child.kill('SIGTERM');
    expect((await ended).code).toBe(0);
  });

  test('a page whose port is taken keeps Slack from nothing', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await once(other, 'listening');
    const { port: taken } = other.address() as AddressInfo;
    const { child, ended, port } = start(overHttp(), String(taken));
    expect(await ready(await port())).toBe(200);
    child.kill('SIGTERM');
    const { code, err } = await ended;
    expect(code).toBe(0);
    expect(err).toContain('page-not-opened');
    other.close();
  });

  test('over a socket it connects, and by signal it stops', async () => {
    const { child, ended, port } = start({
      ...{ SLACK_BOT_TOKEN: 'xoxb-invented', SLACK_APP_TOKEN: 'xapp-invented', SLACK_API_URL: fake.apiUrl, PORT: '0' },
    });
    const listening = await port();
    await expect.poll(() => fake.sockets.length).toBe(1);
    await expect.poll(() => ready(listening)).toBe(200);
    child.kill('SIGINT');
    expect((await ended).code).toBe(0);
  });
});
