import { expect, test } from 'vitest';
import { chat, factsOf, repliesIn, ringsIn } from './chat.ts';

/** An invented shift. Each line with what its answer must be: kind, and the facts that carry the times. */
const shift: readonly (readonly [line: string, kind: string, facts?: Readonly<Record<string, number | string>>])[] = [
  ['air 24C 48%', 'reply', { 'air-temperature': 24, humidity: 48 }],
  ['mix 2.4kg', 'reply', { 'part-a': 1200, 'part-b': 1200, 'stir-wanted': 102 }],
  ['wait 5m', 'reply'],
  // 102 min at 24 degC (120 at 15, 90 at 30: the demo sheet); pot life 288 min there, the last 30 to empty and flush.
  [
    'weigh 1 1201g 1198g',
    'reply',
    {
      'ratio-error': 1198 / 1201 - 1,
      'stir-done-at': '2026-03-02T09:47:00Z',
    },
  ],
  ['wait 51m', 'reply'],
  // Half stirred at 08:56; the other half takes 60 min at 15 degC: done at 09:56 instead of 09:47.
  ['air 15C 50%', 'reply', { 'air-temperature': 15 }],
  ['wait until 09:50', 'reply'],
  // Six minutes short: the sheet forbids it.
  ['filter 1', 'objection'],
  ['wait until 10:00', 'reply'],
  ['stop 1', 'reply', { 'stir-done-at': '2026-03-02T09:56:00Z' }],
  ['filter 1', 'reply'],
  ['wait until 10:10', 'reply'],
  // Flash-off 10 to 15 min (common practice, no source).
  ['coat new impeller-7, flange-2 1 roller', 'reply', { 'flash-least-at': '2026-03-02T10:20:00Z' }],
  ['coat new plate-3 1 dip', 'reply', { 'flash-most-at': '2026-03-02T10:25:00Z' }],
  ['wait 10m', 'reply'],
  ['dry impeller-7', 'reply'],
  ['dry plate-3', 'reply'],
  ['wait 2m', 'reply'],
  // 1 h at 90 degC on the part itself, or 24 h in the room (common practice, no source).
  ['cure impeller-7 oven 90C', 'reply'],
  ['cure plate-3 room', 'reply', { 'cure-done-at': '2026-03-03T10:22:00Z' }],
  ['wait 20m', 'reply'],
  ['temp impeller-7 90C', 'reply', { 'part-temperature': 90, 'cure-done-at': '2026-03-02T11:42:00Z' }],
  ['wait 60m', 'reply'],
  ['temp impeller-7 91C', 'reply', { 'cure-given': 60 }],
  ['out impeller-7', 'reply', { 'cure-given': 60 }],
  ['wait until 16:00', 'reply'],
  ['coat new valve-9 1 brush', 'objection'],
  ['tap happened', 'reply', { 'flash-least-at': '2026-03-02T16:10:00Z' }],
  ['day', 'reply', { batches: 1, 'part-a-total': 1201, 'part-b-total': 1198, parts: 4, deviations: 1 }],
  ['wait until 2026-03-03T10:30', 'reply'],
  ['night 17C', 'reply'],
  ['out plate-3', 'reply'],
  ['day 2026-03-02', 'reply', { batches: 1, parts: 4, 'air-lowest': 15, 'air-highest': 24 }],
];

test('a whole shift: every line gets its answer, and every bell rings at its own time', async () => {
  const ran = await chat(shift.map(([line]) => line));
  expect(ran.code).toBe(0);
  const replies = repliesIn(ran);
  expect(replies.map(({ in: line, kind }) => `${line} ${kind}`)).toEqual(
    shift.map(([, kind], i) => `${i + 1} ${kind}`),
  );
  shift.forEach(([line, , facts = {}], i) => {
    expect(factsOf(replies[i]), line).toMatchObject(facts);
  });
  expect(ringsIn(ran)).toEqual([
    '09:56 batch/1/stir-done',
    '10:20 part/flange-2/flash-least',
    '10:20 part/impeller-7/flash-least',
    '10:20 part/plate-3/flash-least',
    // Nobody touched flange-2.
    '10:25 part/flange-2/flash-most',
    // 20 min after the last coat by each method, nobody has said that its gear is clean.
    '10:30 batch/1/gear/dip-tank',
    '10:30 batch/1/gear/roller',
    // Half the pot: 51 of 288 min at 24 degC, then 480 at 15 degC: 0.5 - 51/288 of 480 is 155 min.
    '11:31 batch/1/pot-half',
    '11:42 part/impeller-7/cure-done',
    // The demo sheet lets it serve an hour after its cure.
    '12:42 part/impeller-7/after-service',
    // Air is read again when the last reading is 4 h old.
    '12:56 place/room/air-due',
    // From there the pot runs at the sheet's fastest (200 min at 30 degC): 0.323 of it left is 64.6 min.
    '13:30 batch/1/pot-margin',
    '13:40 batch/1/pot-margin/2',
    '14:00 batch/1/pot-end',
    '14:10 batch/1/pot-end/2',
    '16:10 part/valve-9/flash-least',
    '16:15 part/valve-9/flash-most',
    '16:20 batch/1/gear/brush',
    '17:00 crew/digest/2026-03-02',
    // The hold has nobody who sees to it but the lead.
    '07:00 crew/held/lead',
    '07:00 crew/morning/2026-03-03',
    // Over by the clock, not proved: nobody knew the night's lowest.
    '10:22 part/plate-3/cure-done',
  ]);
});

test('the coat past pot life is objected to, then recorded as it happened, marked, and stands in the day', async () => {
  const ran = await chat([
    'air 24C 48%',
    'mix 1kg',
    'weigh 1 500g 500g',
    'wait 2h',
    'filter 1',
    'wait 5h',
    'coat new valve-9 1 brush',
    'tap happened',
    'day',
  ]);
  const replies = repliesIn(ran);
  expect(replies.at(6)).toMatchObject({ kind: 'objection', code: 'past-pot-life', recorded: false });
  expect(replies.at(7)).toMatchObject({ kind: 'reply', recorded: true });
  expect(factsOf(replies.at(8))).toMatchObject({ deviations: 1, parts: 1 });
});

test('the same shift without --json is told in sentences, and never says that something is safe', async () => {
  const ran = await chat(
    shift.map(([line]) => line),
    { json: false },
  );
  expect(ran.code).toBe(0);
  expect(ran.out).toContain('09:56');
  expect(ran.out).toMatch(/impeller-7/);
  expect(ran.out).not.toMatch(/\bsafe\b|good to go|\bcleared\b|\bOK to\b/i);
});
