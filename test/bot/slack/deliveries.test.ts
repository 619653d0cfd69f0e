// Deliveries over HTTP: signed or turned away, acknowledged at once, worked off once however often they come, and not lost
// when the process ends in between.

import { mkdtempSync, rmSync } from 'node:fs';
import { get } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { readInbound } from '../../../bot/slack/read-inbound.ts';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import {
  dropsPicture,
  encoded,
  joins,
  mentions,
  opensHome,
  post,
  postText,
  signed,
  slashCommand,
} from './fake/deliveries.ts';
import { gate } from './fake/gate.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
let open: Workshop | undefined;
afterEach(async () => {
  await open?.close();
  open = undefined;
});

const port = (): number => shop.slack.port() ?? 0;
const recorded = async (): Promise<number> => (await shop.store.head('crew')).seq;
const air = () => slashCommand('air 24C 48%', { response_url: shop.fake.responseUrl() });
const form = { 'content-type': 'application/x-www-form-urlencoded' };

describe('a signature', () => {
  test('is made as Slack describes it: its own published example', () => {
    // doc "Verifying requests from Slack"
    const body =
      'token=xyzz0WbapA4vBCDEFasx0q6G&team_id=T1DC2JH3J&team_domain=testteamnow&channel_id=G8PSS9T3V&channel_name=foobar' +
      '&user_id=U2CERLKJA&user_name=roadrunner&command=%2Fwebhook-collect&text=&response_url=https%3A%2F%2Fhooks.slack.com' +
      '%2Fcommands%2FT1DC2JH3J%2F397700885554%2F96rGlfmibIGlgcZRskXaIFfN&trigger_id=398738663015.47445629121.803a0bc887a14d10d2c447fce8b6703c';
    const { 'x-slack-signature': signature } = signed(body, 1531420618, '8f742231b10e8888abcd99yyyzzz85a5');
    expect(signature).toBe('v0=a2114d57b48eac39b9ad189dd8316235a7b4a8d21a10bd27519666489c69b503');
  });

  test('that is wrong, old or missing is turned away, and nothing is recorded', async () => {
    shop = open = await openWorkshop();
    const { text } = encoded(air());
    const old = Math.floor(Date.now() / 1000) - 360;
    expect((await postText(port(), text, { ...form, ...signed(text, undefined, 'another secret') })).status).toBe(401);
    expect((await postText(port(), text, { ...form, ...signed(text, old) })).status).toBe(401);
    expect((await postText(port(), text, form)).status).toBe(401);
    expect((await postText(port(), `${text}&text=mix`, { ...form, ...signed(text) })).status).toBe(401);
    expect(await recorded()).toBe(0);
  });

  test('replayed within its five minutes is acknowledged, and worked off once', async () => {
    shop = open = await openWorkshop();
    const { text } = encoded(air());
    const headers = { ...form, ...signed(text) };
    const first = await postText(port(), text, headers);
    const again = await postText(port(), text, headers);
    await shop.slack.idle();
    expect([first.status, again.status]).toEqual([200, 200]);
    expect(await recorded()).toBe(1);
    expect(shop.fake.inChannel('C1')).toHaveLength(1);
  });

  test('over more than 4 MiB is turned away', async () => {
    shop = open = await openWorkshop();
    const big = `text=${'a'.repeat(4 * 1024 * 1024 + 10)}`;
    expect((await postText(port(), big, { ...form, ...signed(big) })).status).toBe(413);
  });
});

describe('a delivery', () => {
  test('that Slack makes three times, at once and later, is one event and one answer', async () => {
    shop = open = await openWorkshop();
    const said = mentions('air 24C 48%', { thread_ts: undefined, ts: '1772438399.000100' });
    const answers = await Promise.all([post(port(), said), post(port(), said), post(port(), said)]);
    await shop.slack.idle();
    await shop.deliver(said);
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200]);
    expect(await recorded()).toBe(1);
    expect(shop.fake.inChannel('C1')).toHaveLength(1);
  });

  test('counts from when it was typed, and says so where it came late', async () => {
    shop = open = await openWorkshop();
    await shop.deliver(mentions('air 24C 48%', { thread_ts: undefined, ts: '1772437800.000100' }));
    const [event] = await shop.store.eventsAfter('crew', 0);
    expect((event?.recordedAt ?? 0) - (event?.happenedAt ?? 0)).toBe(600_000);
    expect(shop.fake.inChannel('C1')[0]?.text).toContain('written 10 min later');
  });

  test('whose clock is ahead of ours is not from the future', async () => {
    shop = open = await openWorkshop();
    await shop.deliver(mentions('air 24C 48%', { thread_ts: undefined, ts: '1772438405.000100' }));
    expect(await recorded()).toBe(1);
  });

  test('is acknowledged before Slack has taken any answer, though sixty come at once', async () => {
    shop = open = await openWorkshop();
    const { until, letGo } = gate();
    shop.fake.fail('chat.postMessage', ...Array.from({ length: 60 }, () => ({ is: 'held', until }) as const));
    const said = Array.from({ length: 60 }, (_, i) =>
      slashCommand(`air ${20 + (i % 5)}C 48%`, { response_url: shop.fake.responseUrl() }),
    );
    const answers = await Promise.all(said.map((each) => post(port(), each)));
    expect(answers.every(({ status }) => status === 200)).toBe(true);
    expect(shop.fake.messages).toEqual([]);
    letGo();
    await shop.slack.idle();
    expect(await recorded()).toBe(60);
  });

  test('taken in before the process ended is worked off by the next one, once', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'batchbell-'));
    const file = join(folder, 'batchbell.sqlite');
    const store = openSqliteStore(file);
    const before = openSqlitePostbox(file);
    // As the receiver leaves it when the process ends at once after the acknowledgement.
    const where = { team: 'T1', user: 'UKARI', channel: 'C1', via: 'mention' };
    const content = JSON.stringify({
      kind: 'line',
      id: 'event:Ev9',
      where,
      text: 'air 24C 48%',
      saidAt: 1772438390000,
    });
    expect(before.takeIn({ id: 'event:Ev9', at: 1772438390000 as never, content })).toBe(true);
    before.close();
    const postbox = openSqlitePostbox(file);
    shop = open = await openWorkshop({ store, postbox });
    await shop.slack.idle();
    expect(shop.fake.inChannel('C1').map(({ text }) => text.split('\n')[0])).toEqual(['Air, room']);
    expect(postbox.unfinished()).toEqual([]);
    expect(postbox.takeIn({ id: 'event:Ev9', at: 1772438390000 as never, content })).toBe(false);
    await shop.close();
    open = undefined;
    postbox.close();
    store.close();
    rmSync(folder, { recursive: true });
  });

  test('of any shape at all is read or left alone, and never throws', () => {
    const shapes = [slashCommand('x'), mentions('x'), dropsPicture(), opensHome(), joins()].map(({ body }) => body);
    let read = 0;
    const spoilt = fc
      .tuple(fc.constantFrom(...shapes), fc.array(fc.tuple(fc.string(), fc.jsonValue()), { maxLength: 3 }), fc.nat(20))
      .map(([shape, changes, at]) => {
        const entries = Object.entries(shape);
        entries.splice(at, 1);
        return Object.fromEntries([...entries, ...changes]);
      });
    fc.assert(
      fc.property(fc.oneof(fc.anything(), spoilt), (body) => {
        if (readInbound(body, { team: 'T1', botUser: 'UBOT' }) !== undefined) read += 1;
      }),
      { numRuns: 500, seed: 6 },
    );
    expect(read).toBeGreaterThan(50);
  });

  test('that is none of our business is acknowledged and left alone', async () => {
    shop = open = await openWorkshop();
    const chatter = mentions('', {
      type: 'message',
      channel_type: 'channel',
      text: 'who has the key?',
      thread_ts: undefined,
    });
    const own = mentions('', { type: 'message', channel_type: 'im', user: 'UBOT', bot_id: 'B1', text: 'air 24C 48%' });
    expect((await shop.deliver(chatter)).status).toBe(200);
    expect((await shop.deliver(own)).status).toBe(200);
    expect(await recorded()).toBe(0);
    expect(shop.fake.messages).toHaveLength(0);
  });
});

describe('whoever watches the process', () => {
  const ask = (path: string): Promise<number> =>
    new Promise((resolve) => {
      get({ host: '127.0.0.1', port: port(), path }, (response) => resolve(response.resume().statusCode ?? 0));
    });

  test('is told that it is up, and that it is ready once Slack knows it', async () => {
    shop = open = await openWorkshop();
    expect(await ask('/health')).toBe(200);
    expect(await ask('/ready')).toBe(200);
    expect(await ask('/elsewhere')).toBe(404);
  });

  test('is told that Slack takes its token no more, until it does again', async () => {
    shop = open = await openWorkshop();
    await shop.types('air 24C 48%');
    shop.fake.fail('chat.postMessage', { is: 'refused', error: 'token_revoked' });
    await shop.types('mix 2.4kg');
    await shop.types('weigh 1 1201g 1198g');
    shop.fake.fail('views.publish', { is: 'refused', error: 'token_revoked' });
    await shop.opensHome();
    expect(await ask('/health')).toBe(200);
    expect(await ask('/ready')).toBe(503);
    await shop.opensHome();
    expect(await ask('/ready')).toBe(200);
  });
});
