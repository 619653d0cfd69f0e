// What a `why` asks about: alone the last card, a figure as it is shown or called, an objection, a hold; in each tongue, and of what a
// bell told. Invented parts; figures by the demo's sheet.

import { expect, it } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { sessionTalk, sprayCrew, talkAfter } from './session-talk.ts';

const mixed = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g'];

it('given a figure as the card shows it, when it is asked why, then the sum comes to it', async () => {
  const { say } = await talkAfter(...mixed);
  const { card } = await say('why 09:42');
  expect(card.title).toBe('Why: Stirring done at 09:42');
  expect(card.lines).toContain('then 1 h 42 min, 24 °C: ÷ 1 h 42 min = 100 %');
  expect(card.lines).toContain('Read: air 24 °C 48 % (omar, 08:00).');
});

it('given a reading that moved a clock, when the older figure is asked, then what it is now is told too', async () => {
  const { say } = await talkAfter(...mixed, 'wait 30m', '@kari: air 20C 48%');
  expect((await say('why stir-done-at')).card.lines).toContain('By the record as it is now: 09:48.');
});

it('given why answered, when another figure of the same card is asked, then the card is still the one asked about', async () => {
  const { say } = await talkAfter(...mixed);
  await say('why 09:42');
  expect((await say('how come −0.25 %')).card.title).toBe('Why: Ratio off by −0.25 %');
});

it('given an objection, when it is asked why not, then its rule, its figure and who may lift it are told', async () => {
  const { say } = await talkAfter(...mixed, 'filter 1');
  const { card } = await say('why not');
  expect(card.lines).toContain("Asked by the product's sheet.");
  expect(card.lines).toContain('A lead may allow it beforehand, with a reason.');
  expect(card.lines.join()).toContain('blend.time');
});

it('given air that is too damp, when it is asked why not, then the humidity is the figure behind it', async () => {
  const { say } = await talkAfter('air 20C 88%', 'mix 1kg');
  expect((await say('why')).card.lines).toContain('Read: air 20 °C 88 % (omar, 08:00).');
});

it('given a cure that nobody has measured, when its end is asked, then warming counts nothing and the rest comes to the whole', async () => {
  const { say } = await talkAfter(
    ...[
      'part impeller-7 cast-iron 12mm max 120C',
      ...mixed,
      'wait 103m',
      'already filter 1',
      'already coat impeller-7 1 flow',
    ],
    ...['wait 16m', 'dry impeller-7', 'cure impeller-7 oven 90C'],
  );
  const { lines } = (await say('why cure-done-at')).card;
  expect(lines.filter((line) => line.startsWith('then ')).at(-1)).toBe('then 1 h, 90 °C: ÷ 1 h = 100 %');
  expect(lines.filter((line) => line.startsWith('then ')).at(0)).toContain('nothing counted');
});

it('given a held part, when it is asked why, then who held it and for what', async () => {
  const { say } = await talkAfter('part impeller-7 steel 6mm', 'hold impeller-7 orange peel');
  for (const line of ['why', 'why is impeller-7 held', 'why held']) {
    expect((await say(line)).card.title).toBe('Why impeller-7 is held');
  }
});

it('given a bell, when it is asked why alone, then the clock that rang is told', async () => {
  const { say } = await talkAfter(...mixed, 'wait 2h25m');
  expect((await say('why')).card.title).toBe('Why: Pot life ends 12:33');
});

it('given a restart after an objection, when it is asked why, then it is still known what was asked', async () => {
  const store = openSqliteStore(':memory:');
  const before = sessionTalk(store);
  for (const line of [...mixed, 'filter 1']) await before.say(line);
  const after = sessionTalk(store, sprayCrew, undefined, epochMs(before.now() + 60_000));
  expect((await after.say('why not')).card.title).toBe('Why not');
  after.close();
});

it('given no card and nothing called so, then nothing is recorded and what can be asked is offered', async () => {
  const { say } = await talkAfter(...mixed);
  const { card, recorded } = await say('why zorro');
  expect(recorded).toBe(false);
  expect(card.actions.map(({ line }) => line)).toContain('why pot-life-ends');
});
