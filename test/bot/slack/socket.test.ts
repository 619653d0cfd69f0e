// Socket Mode: frames acknowledged, a planned refresh without a gap, an outage and the way back, and what Slack sends again.

import { afterEach, describe, expect, test } from 'vitest';
import type { Payload } from './fake/deliveries.ts';
import { mentions, slashCommand } from './fake/deliveries.ts';
import { quickPace } from './fake/quick-pace.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
const unhandled: unknown[] = [];
const keep = (error: unknown): number => unhandled.push(error);
process.on('unhandledRejection', keep);
afterEach(async () => {
  await shop.close();
  expect(unhandled).toEqual([]);
});

const connected = (count: number) => expect.poll(() => shop.fake.sockets.length).toBe(count);
const ready = (is: boolean) => expect.poll(() => shop.slack.isReady()).toBe(is);
const recorded = async (): Promise<number> => (await shop.store.head('crew')).seq;

function send(payload: Payload, envelope: string): void {
  const frame = { type: payload.is, envelope_id: envelope, accepts_response_payload: payload.is !== 'events_api' };
  shop.fake.sockets.at(-1)?.send(JSON.stringify({ ...frame, payload: payload.body }));
}
const acknowledged = (envelope: string) =>
  expect.poll(() => shop.fake.acknowledged.map(({ envelope_id }) => envelope_id)).toContain(envelope);
const air = (): Payload => slashCommand('air 24C 48%', { response_url: shop.fake.responseUrl() });

describe('over a socket', () => {
  test('a command and an event are acknowledged and recorded', async () => {
    shop = await openWorkshop({ mode: 'socket' });
    await connected(1);
    await ready(true);
    send(air(), 'one');
    await acknowledged('one');
    send(mentions('mix 2.4kg', { thread_ts: undefined, ts: '1772438400.000100' }), 'two');
    await acknowledged('two');
    await expect.poll(() => shop.batch().text).toContain('to be weighed');
  });

  test('the same event in two frames is one event', async () => {
    shop = await openWorkshop({ mode: 'socket' });
    await connected(1);
    const said = mentions('air 24C 48%', { thread_ts: undefined, ts: '1772438399.000100' });
    send(said, 'one');
    send(said, 'two');
    await acknowledged('one');
    await acknowledged('two');
    await shop.slack.idle();
    expect(await recorded()).toBe(1);
  });

  test('a planned refresh connects again at once, with no pause before it', async () => {
    const logged: string[] = [];
    const pace = quickPace();
    shop = await openWorkshop({ mode: 'socket', logged, pace });
    await connected(1);
    await ready(true);
    const before = pace.waits.length;
    shop.fake.sockets[0]?.send(JSON.stringify({ type: 'disconnect', reason: 'refresh_requested' }));
    await connected(2);
    await ready(true);
    expect(pace.waits.slice(before)).toEqual([]);
    // It was this program that connected again: the SDK's own way waits five seconds and tells nobody.
    expect(logged.flatMap((line) => /socket-(?:connected|ended|not-connected)/.exec(line)?.[0] ?? [])).toEqual([
      'socket-connected',
      'socket-ended',
      'socket-connected',
    ]);
    send(air(), 'after');
    await acknowledged('after');
  });

  test('a dropped connection while Slack is down comes back when Slack does, with nothing unhandled', async () => {
    shop = await openWorkshop({ mode: 'socket' });
    await connected(1);
    shop.fake.setDown(true);
    shop.fake.sockets[0]?.terminate();
    await ready(false);
    shop.fake.setDown(false);
    await connected(2);
    await ready(true);
  });
});
