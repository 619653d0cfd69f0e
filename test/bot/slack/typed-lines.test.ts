// What is typed in one message: several lines, a line put right, people mentioned by name.

import { afterEach, describe, expect, test } from 'vitest';
import { edits } from './fake/deliveries.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const events = () => shop.store.eventsAfter('crew', 0);
const types = async () => (await events()).map(({ body }) => body.type);
const told = (user = 'UKARI') => shop.fake.inChannel(`D${user}`).map(({ text }) => text);
const ts = '1772438400.000500';

describe('several lines in one message', () => {
  test('are each said in their order and answered by themselves', async () => {
    shop = await openWorkshop();
    await shop.writes('mix 2.4kg 24C 48%\n\nweigh 1 1201g 1198g\nwobbly');
    expect(await types()).toEqual(expect.arrayContaining(['BatchOpened', 'PartsWeighed']));
    expect(told().map((text) => text.split('\n')[0])).toEqual([
      'Batch 1: Demo Clear. It stands in its thread.',
      'Batch 1: A and B together, clocks run. It stands in its thread.',
      'Not understood',
    ]);
  });

  test('of parts are one act all the same', async () => {
    shop = await openWorkshop();
    await shop.mentions('part valve-1 steel\npart valve-2 steel', undefined);
    expect(new Set((await events()).map(({ request }) => request)).size).toBe(1);
    expect(await events()).toHaveLength(2);
  });

  test('that are a table of parts are shown first, and one tap books them, however long their line', async () => {
    shop = await openWorkshop();
    const rows = Array.from({ length: 120 }, (_, i) => `rail-${i + 1}\tSN-${9000 - i * 7}\t88`);
    await shop.writes(['name\tserial\tjob', ...rows].join('\n'));
    expect(await events()).toEqual([]);
    expect(told().at(-1)).toContain('120 parts to book in');
    const [card] = shop.fake.inChannel('DUKARI').slice(-1);
    if (card === undefined) throw new Error('nothing was told');
    await shop.taps(card, 'Book in 120 parts: rail-1 to rail-120, job 88');
    expect(new Set((await events()).map(({ request }) => request)).size).toBe(1);
    expect(await events()).toHaveLength(120);
  });

  test('are twenty at most: of a twenty-first it is said that it was not taken', async () => {
    shop = await openWorkshop();
    const lines = (count: number) => Array.from({ length: count }, (_, i) => `air ${20 + (i % 5)}C 48%`).join('\n');
    await shop.writes(lines(20));
    expect(await events()).toHaveLength(20);
    expect(told()).toHaveLength(20);
    await shop.writes(lines(21));
    expect(await events()).toHaveLength(40);
    expect(told().at(-1)).toContain('1 more are not recorded');
  });
});

describe('a message changed afterwards', () => {
  test('is answered where it had been misread, as of when it was written', async () => {
    shop = await openWorkshop();
    await shop.writes('wobbly', 'UKARI', { ts });
    expect(told().at(-1)).toContain('wobbly');
    shop.clock.moveTo((shop.clock.now() + 120_000) as never);
    await shop.deliver(edits('air 24C 48%', 'wobbly', { ts, channel: 'DUKARI', channel_type: 'im' }));
    expect(await types()).toEqual(['AirRead']);
    expect(new Date((await events())[0]?.happenedAt ?? 0).toISOString()).toContain('T08:00');
    expect(told().at(-1)).toContain('Air: 24 °C');
  });

  test('of several lines says anew only the one that had been misread', async () => {
    shop = await openWorkshop();
    const of = { ts, channel: 'DUKARI', channel_type: 'im' };
    await shop.writes('air 24C 48%\nsurface wobbly', 'UKARI', { ts });
    await shop.deliver(edits('air 24C 48%\nsurface 22C', 'air 24C 48%\nsurface wobbly', of));
    expect(await types()).toEqual(['AirRead', 'SurfaceRead']);
  });

  test('in a channel is heard where it mentions us', async () => {
    shop = await openWorkshop();
    await shop.mentions('wobbly', undefined);
    const [said] = shop.fake.calls.filter(({ method }) => method === 'chat.postEphemeral');
    expect(said).toBeDefined();
    const changed = { ts: '1772438400.000002', channel: 'C1', channel_type: 'channel' };
    await shop.mentions('wobbly', undefined);
    await shop.deliver(edits('<@UBOT> air 24C 48%', '<@UBOT> wobbly', changed));
    expect(await types()).toEqual(['AirRead']);
  });

  test('that had been recorded changes nothing, and whoever changed it is told so', async () => {
    shop = await openWorkshop();
    const of = { ts, channel: 'DUKARI', channel_type: 'im' };
    await shop.writes('air 24C 48%', 'UKARI', { ts });
    await shop.deliver(edits('air 25C 48%', 'air 24C 48%', of));
    expect(await types()).toEqual(['AirRead']);
    expect(told().at(-1)).toContain('amend or undo');
    // A link that Slack unfolds changes a message too, but not its words.
    await shop.deliver(edits('air 24C 48%', 'air 24C 48%', of));
    expect(told().filter((text) => text.includes('amend'))).toHaveLength(1);
  });
});

describe('somebody mentioned', () => {
  const people = [
    { name: 'kari', role: 'lead', slack: 'UKARI' },
    { name: 'Jo Invented', role: 'crew', slack: 'UJOS' },
    { name: '12', role: 'crew', slack: 'UTWELVE' },
  ];
  const crews = [{ crew: 'crew', file: { name: 'bay 2', zone: 'UTC', people, slackChannels: ['C1'] } }];

  test.each([
    ['fit <@UJOS> 2026-12-01', '"Jo Invented"'],
    ['medical <@UTWELVE|twelve> until 2026-12-01', '"12"'],
    ['training <@UJOS> 2027-01-31', '"Jo Invented"'],
    ['handover <@UTWELVE>', '"12"'],
    ['set sprayers <@UJOS> <@UTWELVE>', '["Jo Invented","12"]'],
    ['near miss <@UJOS> slipped on the hose', 'Jo Invented'],
  ])('%s is one name, whatever it is', async (line, name) => {
    shop = await openWorkshop({ crews });
    await shop.types(line);
    expect(JSON.stringify((await events()).map(({ body }) => body))).toContain(name);
  });

  test('sprays, stays near and reads the brief by that name', async () => {
    shop = await openWorkshop({ crews });
    await shop.types('brief in booth spray <@UJOS> outside kari near <@UTWELVE>');
    expect(JSON.stringify(await events())).toContain('"Jo Invented"');
    await shop.types('ack <@UJOS>');
    await shop.types('near <@UTWELVE> out');
    expect(await types()).toEqual(['SessionBriefed', 'BriefAcknowledged', 'PeoplePlaced']);
  });

  test('who is none of the crew does not become one by it', async () => {
    shop = await openWorkshop({ crews });
    shop.fake.users.set('UOUT', { name: 'Otto' });
    await shop.types('near miss <@UOUT> walked through the spray');
    await shop.types('handover <@UOUT>');
    const known = (await shop.wired.get('crew')?.overview.crew())?.people.map(({ name }) => name);
    expect(known).toEqual(['kari', 'Jo Invented', '12']);
    expect(shop.fake.whispers.at(-1)?.text).toContain('Otto');
  });
});

describe('words that every object has', () => {
  test('are answered in Slack like any other, and nothing of them is recorded', async () => {
    shop = await openWorkshop();
    await shop.writes('set constructor\nset __proto__\nset booth -0 __proto__ 4m2\nair 24C 48%');
    expect(await types()).toEqual(['AirRead']);
    expect(told()).toHaveLength(4);
    expect(told().join()).not.toContain('Not recorded');
  });
});
