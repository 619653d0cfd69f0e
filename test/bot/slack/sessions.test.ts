// A spray session in Slack: its brief is its one message, what follows stands in its thread. And a used tap gives way to
// what came of it wherever it stands, with or without a batch.

import { afterEach, describe, expect, test } from 'vitest';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const session = () => {
  const found = shop.fake.inChannel('C1').find(({ key }) => key?.includes('standing/session') === true);
  if (found === undefined) throw new Error('no session has a message');
  return found;
};
const inThread = () => shop.fake.inThread(session().ts).map(({ text }) => text.split('\n')[0]);
const bell = (title: string) => {
  const found = shop.fake.messages.findLast(({ text }) => text.startsWith(title));
  if (found === undefined) throw new Error(`no ${title}`);
  return found;
};
const hasTaps = ({ blocks }: { readonly blocks: readonly { readonly type: string }[] }) =>
  blocks.some(({ type }) => type === 'actions');

async function briefed(): Promise<void> {
  shop = await openWorkshop();
  await shop.types('mix 2.4kg 24C 48%');
  await shop.types('set booth room 4m2');
  await shop.types('brief 1 spray kari');
}

describe('a spray session', () => {
  test('is one message in the channel, its acts in its thread, its taps what is allowed now', async () => {
    await briefed();
    expect(session().text.split('\n')[0]).toBe('Session 2: briefed');
    expect(session().text).toContain('[I have read it]');
    const before = shop.fake.inChannel('C1').length;
    await shop.taps(session(), 'I have read it');
    await shop.types('fan on 0.6m/s');
    await shop.types('supplied yes');
    await shop.types('spray on');
    expect(shop.fake.inChannel('C1')).toHaveLength(before);
    expect(inThread()).toEqual([
      'Session 2: brief read',
      'Session 2: extraction',
      'Session 2: supplied air',
      'Session 2: spraying starts',
    ]);
    expect(session().text).toContain('Session 2: gun runs');
    expect(session().text).toContain('Read by kari, 08:00');
    expect(session().text).not.toContain('[I have read it]');
    expect(session().text.split('\n').at(-1)).toBe('[Spraying stops]');
  });

  test('need not be named in its own thread, even where two are open', async () => {
    await briefed();
    const first = session().ts;
    await shop.types('brief spray jo', 'UJO');
    await shop.mentions('ack', first);
    expect(session().text).toContain('Read by kari, 08:00');
  });

  test('objects in its thread', async () => {
    await briefed();
    await shop.types('spray on');
    expect(inThread()).toEqual(['Not yet <@UKARI>']);
  });

  test('keeps its hazards and its taps in the text that a screen reader reads', async () => {
    await briefed();
    const lines = session().text.split('\n');
    // The flush that the code disputes; the hazards of all spraying are one tap away.
    expect(lines.filter((line) => line.startsWith('! ')).length).toBe(1);
    expect(lines.at(-1)).toContain('[All lines]');
    expect(session().text).not.toContain('! …');
    expect(lines.at(-1)).toMatch(/^\[I have read it\]/);
  });

  test('when its bell is heard, that bell gives way to who heard it', async () => {
    await briefed();
    for (const said of ['ack', 'fan on 0.6m/s', 'supplied yes', 'spray on']) await shop.types(said);
    await shop.passes(20);
    const look = bell('Session 2: look again');
    expect(look.thread).toBe(session().ts);
    await shop.taps(look, 'Heard');
    expect(look.text).toContain('kari: Heard, 08:20');
    expect(hasTaps(look)).toBe(false);
  });

  test('when it is over offers nothing more', async () => {
    await briefed();
    for (const said of ['ack', 'fan on 0.6m/s', 'supplied yes', 'spray on', 'spray off']) await shop.types(said);
    for (const said of ['flush gun', 'flush vessels', 'rags', 'close']) await shop.types(said);
    expect(session().text.split('\n')[0]).toBe('Session 2: closed');
    expect(hasTaps(session())).toBe(false);
    expect(shop.fake.inThread(session().ts).slice(0, -1).some(hasTaps)).toBe(false);
  });

  test('taken back says so', async () => {
    await briefed();
    await shop.types('undo');
    expect(session().text).toBe('Session 2: taken back');
  });
});

describe('a tap outside any batch', () => {
  test('on the bell for the air gives way to the reading and to who took it', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.passes(300);
    const air = bell('Read the air');
    await shop.taps(air, 'Air…', 'UJO');
    await shop.fills({ 'air-temperature': '22', humidity: '50' }, 'UJO');
    expect(air.text).toContain('jo: Air, 13:00');
    expect(hasTaps(air)).toBe(false);
  });

  test('that nobody used is taken away when the air was read elsewhere', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.passes(300);
    const air = bell('Read the air');
    expect(hasTaps(air)).toBe(true);
    await shop.types('air 22C 50%');
    expect(hasTaps(air)).toBe(false);
    expect(air.text).not.toContain('[Air…]');
  });

  test('of an objection that has no batch yet gives way as well', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg');
    const objection = bell('Not yet');
    await shop.taps(objection, 'It already happened', 'UJO');
    expect(objection.text).toContain('jo: It already happened, 08:00');
    expect(hasTaps(objection)).toBe(false);
  });

  test('of a can is taken away when the can moved on', async () => {
    shop = await openWorkshop();
    await shop.types('open A lot 7731 5kg exp 2026-12 gas');
    const can = bell('Can 1');
    expect(hasTaps(can)).toBe(true);
    await shop.types('discard 1 gelled in the can');
    expect(hasTaps(can)).toBe(false);
  });

  test('in a direct message gives way as well', async () => {
    shop = await openWorkshop();
    await shop.writes('airr 24C 48%', 'UJO');
    const misread = shop.fake.inChannel('DUJO').at(-1);
    if (misread === undefined) throw new Error('nothing was answered');
    await shop.taps(misread, 'Air 24 °C 48 %', 'UJO');
    expect(misread.text).toContain('jo: Air 24 °C 48 %, 08:00');
    expect(hasTaps(misread)).toBe(false);
  });
});
