// The record proved, and broken on purpose: an edited payload, a row gone from the middle, a row put in place of
// another, a cut tail, a hash from paper that no longer stands.

import { copyFileSync } from 'node:fs';
import { afterEach, expect, it } from 'vitest';
import { hashOf } from '../../../core/seal-sums.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { givenTheMorning, openRecordsShop, type RecordsShop } from './records-shop.ts';

let shop: RecordsShop | undefined;
afterEach(() => shop?.close());

it('given a morning, then each event makes its own hash and follows from the one before', async () => {
  shop = await givenTheMorning();
  const { card } = await shop.say('12:00 verify');
  expect(card.tone).toBe('good');
  expect(card.facts.find(({ id }) => id === 'events')?.value).toBeGreaterThan(20);
});

it('given a weight edited in the file, then verify names the event', async () => {
  shop = await givenTheMorning();
  shop.tamper(`update event set body = replace(body, '1212', '1200') where type = 'PartsWeighed'`);
  const { card } = await shop.say('12:00 verify');
  expect(card.tone).toBe('stop');
  expect(card.lines.join('\n')).toMatch(/Event \d+ \(PartsWeighed, batch\/3\) was changed/);
});

it('given a row taken out of the middle, then verify says which is gone', async () => {
  shop = await givenTheMorning();
  shop.tamper(`delete from event where seq = 7`);
  expect((await shop.say('12:00 verify')).card.lines).toContain('Event 7 is gone.');
});

it('given a row put in place of another with a hash of its own, then it does not follow', async () => {
  shop = await givenTheMorning();
  const store = openSqliteStore(shop.file);
  const [, second] = await store.eventsAfter('crew', 0);
  store.close();
  if (second === undefined) throw new Error('the second event is missing');
  const forged = hashOf({ ...second, by: 'nobody' });
  shop.tamper(`update event set by_person = 'nobody', hash = '${forged}' where seq = 2`);
  const { card } = await shop.say('12:00 verify');
  // The third still names the hash that the second had.
  expect(card.lines.join('\n')).toMatch(/Event 3 .* does not follow from the one before it/);
});

it('given the last five rows cut off, then what was filed under streams still knows of them', async () => {
  shop = await givenTheMorning();
  shop.tamper(`delete from event where seq > (select max(seq) - 5 from event)`);
  expect((await shop.say('12:00 verify')).card.lines.join('\n')).toMatch(/its tail was cut/);
});

it('given a cut that takes the filing too, then the hash on the digest stands nowhere any more', async () => {
  shop = await givenTheMorning();
  await shop.until('17:00');
  const digest = shop.rung().find(({ kind }) => kind === 'digest');
  // The card has its beginning.
  const hash = /[0-9a-f]{16}/.exec(digest?.text ?? '')?.[0] ?? '';
  expect((await shop.say(`17:05 verify ${hash.slice(0, 12)}`)).card.tone).toBe('good');
  shop.tamper(`
    drop trigger filed_kept;
    delete from event where seq > 10;
    delete from filed where seq > 10;`);
  const bare = await shop.say('17:06 verify');
  expect(bare.card.tone).toBe('good');
  const asked = await shop.say(`17:06 verify ${hash}`);
  expect(asked.card.tone).toBe('stop');
  expect(asked.card.lines.join('\n')).toContain(`${hash} stands nowhere in this record`);
});

it('given a row that is no event any more, then the next one is recorded all the same, and verify names it', async () => {
  const broken = await givenTheMorning();
  broken.tamper(`update event set body = '{"type":"AirRead","celsius":"warm"}' where type = 'AirRead'`);
  shop = openRecordsShop(broken.folder, broken.file);
  expect(await shop.say('12:00 air 25C 50%')).toMatchObject({ kind: 'reply', recorded: true });
  const { card } = await shop.say('12:01 verify');
  expect(card.lines.join('\n')).toMatch(/\(AirRead, place\/room\) was changed/);
  broken.close();
});

it('given a copy taken while in use, then it is the same record, starts by itself, and proves', async () => {
  const first = await givenTheMorning();
  const { card } = await first.say('12:00 backup friday.sqlite');
  expect([card.title, card.copy]).toEqual(['Copied: friday.sqlite', 'friday.sqlite']);
  const copy = `${first.folder}/copies/friday.sqlite`;
  await first.say('12:05 air 26C 50%');
  const moved = `${first.folder}/restored.sqlite`;
  copyFileSync(copy, moved);
  shop = openRecordsShop(first.folder, moved);
  expect((await shop.say('12:10 verify')).card.tone).toBe('good');
  expect((await shop.say('12:10 trace impeller-7')).text).toContain('released');
  // Said after the copy was taken.
  expect((await shop.say('12:10 day')).text).not.toContain('26 °C');
  first.close();
});

it('given somebody of the crew, then a copy of the whole record is not theirs to take', async () => {
  shop = await givenTheMorning();
  expect((await shop.say('12:00 @kari: backup friday.sqlite')).card.tone).toBe('stop');
});

it('given the edition, the shape or the sum of an event changed in the file, then verify names the event', async () => {
  for (const change of [`edition = 12`, `shape = 7`, `seal = 'sha256/1'`, `seal = 'of another'`]) {
    shop = await givenTheMorning();
    shop.tamper(`update event set ${change} where seq = 3`);
    const { card } = await shop.say('12:00 verify');
    expect(card.tone, change).toBe('stop');
    expect(card.lines.join('\n'), change).toMatch(/Event 3 .* was changed/);
    shop.close();
    shop = undefined;
  }
});
