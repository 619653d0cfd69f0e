// Rows of the record that do not read any more: one bit flipped, a body cut off. Nobody else's bells fall silent for them,
// nothing is guessed of what stood in them, and whoever leads is told once.

import { afterEach, describe, expect, it } from 'vitest';
import { openRecordsShop, type RecordsShop } from './records-shop.ts';

const opened: RecordsShop[] = [];
afterEach(() => {
  for (const shop of opened.splice(0)) shop.close();
});

/** Two pots and a part, all of them at work; omar leads. */
const twoPots = [
  '07:50 air 24C 48%',
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1200g 1200g',
  '08:10 mix 1kg',
  '08:10 weigh 2 500g 500g',
  '08:11 part imp-1 steel 6mm',
  '08:12 part imp-2 steel 6mm',
];

async function shopWith(lines: readonly string[]): Promise<RecordsShop> {
  const shop = openRecordsShop();
  opened.push(shop);
  for (const line of lines) {
    const answer = await shop.say(line);
    if (!answer.recorded) throw new Error(`given "${line}", but it was not recorded: ${answer.text}`);
  }
  return shop;
}

/** The first letter of its type is one off: one flipped bit makes `@irRead` of `AirRead`. What stands beside the body stays. */
const flipped = (where: string) => `
  update event set body = substr(body, 1, 9) || char(unicode(substr(body, 10, 1)) - 1) || substr(body, 11) where ${where}`;

/** As it stands in the file after the harm, opened by a new process. */
function brokenAt(shop: RecordsShop, where: string): RecordsShop {
  shop.tamper(flipped(where));
  const again = openRecordsShop(shop.folder, shop.file);
  opened.push(again);
  return again;
}

const keysRung = (shop: RecordsShop) => shop.rung().flatMap(({ key }) => key ?? []);
const notices = (shop: RecordsShop) => shop.rung().filter(({ code }) => code === 'not-read');

describe('a reading of the air that does not read', () => {
  it('silences nobody: pots ring by what is known, the day is told, and the next reading counts', async () => {
    const shop = brokenAt(await shopWith(twoPots), `type = 'AirRead'`);

    await shop.until('08:30');
    expect(await shop.say('08:30 air 24C 48%')).toMatchObject({ kind: 'reply', recorded: true });
    expect(await shop.say('08:31 part imp-3 steel')).toMatchObject({ recorded: true });
    await shop.until('17:30');

    expect(keysRung(shop)).toEqual(
      expect.arrayContaining(['batch/1/stir-done', 'batch/2/stir-done', 'batch/1/pot-end', 'crew/digest/2026-03-02']),
    );
    // Half an hour of stirring at an air that nobody knows counts for nothing.
    const stirred = shop.rung().find(({ key }) => key === 'batch/1/stir-done');
    expect(stirred?.at.slice(11, 16)).toBe('10:12');
    expect(shop.logged().filter((line) => line.includes('store-failed'))).toEqual([]);
  });

  it('is told to the lead once, by its number and what follows, and stands in the log', async () => {
    const shop = brokenAt(await shopWith(twoPots), `type = 'AirRead'`);

    for (const minute of ['08:20', '08:21', '08:22', '09:00']) await shop.until(minute);
    await shop.say('09:01 air 24C 48%');

    expect(notices(shop)).toHaveLength(1);
    expect(notices(shop)[0]).toMatchObject({ kind: 'error', to: ['omar'], recorded: false });
    expect(notices(shop)[0]?.text).toContain('Event 1 (AirRead, place/room) does not read any more.');
    expect(notices(shop)[0]?.text).toContain('What was read of room before it counts as not read: read it now.');
    expect(shop.logged().filter((line) => line.includes('event-not-read'))).toHaveLength(1);
    expect(shop.logged().join()).toMatch(/event 1 \(place\/room, version 1\) of type AirRead does not parse/);
  });
});

describe('a weighing that does not read', () => {
  const weighingOf1 = `type = 'PartsWeighed' and stream = 'batch/1'`;

  it('leaves the bells of its pot as they were planned, and every other as it is', async () => {
    const before = await shopWith(twoPots);
    const shop = brokenAt(before, weighingOf1);

    await shop.until('16:00');

    const rung = keysRung(shop);
    expect(rung.filter((key) => key === 'batch/1/stir-done')).toHaveLength(1);
    expect(rung.filter((key) => key === 'batch/1/pot-end')).toHaveLength(1);
    expect(rung).toEqual(expect.arrayContaining(['batch/2/stir-done', 'batch/2/pot-end']));
    const [of1, of2] = ['batch/1/stir-done', 'batch/2/stir-done'].map((key) =>
      shop.rung().find((answer) => answer.key === key),
    );
    expect(of1?.text).toContain('(PartsWeighed, batch/1) does not read any more.');
    expect(of2?.text).not.toContain('does not read');
  });

  it.each([
    'stir 1',
    'filter 1',
    'empty 1 200g',
    'coat new imp-1 1 brush',
    'weigh 1 1200g 1200g',
    'snooze 1 10m',
    'coat imp-1',
  ])('lets nothing be recorded on it: %s', async (line) => {
    const shop = brokenAt(await shopWith(twoPots), weighingOf1);

    const answer = await shop.say(`08:20 @kari: ${line}`);

    expect(answer.recorded).toBe(false);
    // Where nothing is named it is asked which pot: the broken one is not passed over.
    const isAsked = answer.kind === 'misread' || answer.kind === 'objection';
    expect(isAsked || answer.text.includes('(PartsWeighed, batch/1) does not read any more.')).toBe(true);
  });

  it('goes on with everything else', async () => {
    const shop = brokenAt(await shopWith(twoPots), weighingOf1);

    for (const line of ['stop 2 already', 'filter 2 already', 'coat new imp-2 2 brush already', 'mix 1kg']) {
      expect(await shop.say(`09:30 ${line}`)).toMatchObject({ recorded: true });
    }
    expect((await shop.say('09:31 now')).text).toContain('(PartsWeighed, batch/1) does not read any more.');
    const { items } = await shop.board();
    const ofBatch = (number: number) => items.find(({ id }) => id === `batch/${number}`);
    expect(ofBatch(1)).toMatchObject({ tone: 'stop', clocks: [], taps: [] });
    expect(ofBatch(2)?.clocks.length).toBeGreaterThan(0);
    // Nothing is offered on it that would not be recorded.
    expect((await shop.standing('batch/1')).actions).toEqual([]);
    expect((await shop.standing('batch/2')).actions).not.toEqual([]);
  });

  it('holds back the release of what was coated from it, and its paper', async () => {
    const coated = [
      ...twoPots,
      '10:00 filter 1 already',
      '10:01 coat new imp-1 1 brush already',
      '11:00 dry imp-1 already',
    ];
    const cured = [
      ...coated,
      '11:01 cure imp-1 oven 90C',
      '11:02 temp imp-1 91C',
      '12:02 temp imp-1 90C',
      '12:03 temp imp-1 90C',
      '12:03 out imp-1',
    ];
    const shop = brokenAt(await shopWith(cured), weighingOf1);

    const released = await shop.say('12:10 release imp-1');
    expect(released).toMatchObject({ kind: 'error', recorded: false });
    expect(released.text).toContain('(PartsWeighed, batch/1)');
    expect(await shop.say('12:11 traveller imp-1')).toMatchObject({ kind: 'error' });
    // What happened to the part itself is a fact.
    expect(await shop.say('12:12 film imp-1 12 14 13um')).toMatchObject({ recorded: true });
  });

  it('is not undone around: the last act stays the last', async () => {
    const shop = brokenAt(
      await shopWith([...twoPots, '08:13 @kari: part imp-4 steel', '08:14 @kari: stop 1']),
      weighingOf1,
    );

    expect(await shop.say('08:20 @kari: undo')).toMatchObject({ recorded: false });
    expect((await shop.say('08:21 trace imp-4')).kind).toBe('reply');
  });
});

describe('a cry about a pot that does not read', () => {
  it('is recorded and tells, though nothing else can be said of that pot', async () => {
    const shop = brokenAt(await shopWith(twoPots), `type = 'PartsWeighed' and stream = 'batch/1'`);
    const cried = await shop.say('09:31 hot pot 1');
    expect(cried).toMatchObject({ recorded: true, card: { title: 'A pot is heating', tone: 'stop' } });
  });
});

describe('others that do not read', () => {
  it('a bell that rang: it rings once more, and its batch goes on', async () => {
    const before = await shopWith(twoPots);
    await before.until('10:05');
    const rang = `type = 'Rang' and stream = 'batch/1' and body like '%stir-done%'`;
    const shop = brokenAt(before, rang);

    await shop.until('10:10');

    expect(await shop.say('10:11 stop 1')).toMatchObject({ recorded: true });
    expect(notices(shop)[0]?.text).toContain('A bell may ring once more than it should.');
  });

  it('a setting of the crew: the others hold, and the lead is told to look', async () => {
    const shop = brokenAt(
      await shopWith(['07:50 set digest 16', '07:51 set air-limit 2h', '07:52 air 24C 48%']),
      `body like '%air-limit%'`,
    );

    await shop.until('16:30');

    expect(keysRung(shop)).toContain('crew/digest/2026-03-02');
    expect(notices(shop)[0]?.text).toContain('look through the crew settings');
  });

  it('the opening of the newest batch: its number is not given again', async () => {
    const before = await shopWith(twoPots);
    before.tamper(`update event set body = substr(body, 1, 40) where type = 'BatchOpened' and stream = 'batch/2'`);
    const shop = openRecordsShop(before.folder, before.file);
    opened.push(shop);

    expect((await shop.say('08:30 mix 1kg')).text).toContain('Batch 3');
    expect(await shop.say('08:31 stir 2')).toMatchObject({ kind: 'error', recorded: false });
    await shop.until('12:00');
    expect(keysRung(shop)).toEqual(expect.arrayContaining(['batch/1/stir-done', 'batch/2/stir-done']));
  });

  it('a body that reads and is not what was sealed: nothing stops, and verify says which', async () => {
    const before = await shopWith(twoPots);
    before.tamper(`update event set body = replace(body, '24', '25') where type = 'AirRead'`);
    const shop = openRecordsShop(before.folder, before.file);
    opened.push(shop);

    await shop.until('10:30');

    expect(keysRung(shop)).toContain('batch/2/stir-done');
    expect(notices(shop)).toEqual([]);
    expect((await shop.say('10:31 verify')).text).toContain('Event 1 (AirRead, place/room) was changed');
  });
});
