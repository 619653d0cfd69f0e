// The program is down over a bell's time, then up again: what rings says how late it is, and only what is still true.
// Every bell of a batch, a part and a place. All figures are those of the demo sheets, invented.

import { describe, expect, it } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { minutes, minutesAfter } from '../../../core/units.ts';
import { type ReminderKind, reminderKinds } from '../../../core/wanted-reminder.ts';
import { sessionTalk, sprayCrew } from './session-talk.ts';

const clear = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g'];
const filtered = [...clear, 'wait 103m', 'filter 1'];
const build = ['air 25C 48%', 'mix 6.45kg demo-build', 'weigh 1 5400g 1050g'];
const coated = [...build, 'wait 20m', 'coat new rail-2 1 brush', 'empty 1'];
const cast = [...clear, 'wait 103m', 'filter 1', 'part hub-1 cast-iron 12mm', 'coat hub-1 1 brush', 'empty 1'];
const oven = [...cast, 'wait 15m', 'dry hub-1', 'cure hub-1 oven 90C'];
const room = [...coated, 'wait 70m', 'dry rail-2', 'cure rail-2 room'];

const proved = ['temp hub-1 90C', 'wait 60m', 'temp hub-1 90C', 'out hub-1'];
const released = [...oven, ...proved, 'release hub-1'];
const readOn = Array.from({ length: 8 }, () => ['wait 3h', 'air 24C 48%']).flat();
const inRoom = [...cast, 'wait 15m', 'dry hub-1', 'cure hub-1 room', ...readOn, 'out hub-1', 'release hub-1'];

/** All that is heard after `hours` of nothing. */
async function heardAfter(lines: readonly string[], hours: number) {
  const store = openSqliteStore(':memory:');
  const before = sessionTalk(store);
  for (const line of lines) await before.say(line);
  const up = sessionTalk(store, sprayCrew, shipped, minutesAfter(before.now(), minutes(hours * 60)));
  await up.say('now');
  return up.heard;
}

/** What is heard of that bell after `hours` of nothing. */
async function rungAfter(lines: readonly string[], key: string, hours: number) {
  const heard = await heardAfter(lines, hours);
  const rung = heard.find((answer) => answer.key === key);
  if (rung === undefined) throw new Error(`${key} did not ring: ${heard.map((answer) => answer.key)}`);
  return rung;
}

interface Outage {
  readonly rings: ReminderKind;
  readonly of: 'batch/1' | 'can/1' | 'part/rail-2' | 'part/hub-1' | 'place/room';
  /** Of which gear. */
  readonly gear?: 'brush';
  readonly given: readonly string[];
  readonly hours?: number;
  readonly says: readonly string[];
  readonly never?: RegExp;
}

const canOpen = 'open A lot 7731 5kg gas';

const noWork = /filter\b|Touch it|finish now|Start it|Cover it|half the pot life|stirring done|It can be applied/i;

const outages: readonly Outage[] = [
  {
    ...{ rings: 'stir-done', of: 'batch/1', given: clear },
    ...{
      says: ['Batch 1: pot life over', 'Stop the stirrer.', 'Apply no more of it. Warm to the hand?'],
      never: noWork,
    },
  },
  {
    ...{ rings: 'stir-done', of: 'batch/1', given: [...clear, 'wait 1h'], hours: 2 },
    says: ['Batch 1: stirring done', 'Stop the stirrer, then filter.'],
  },
  {
    ...{ rings: 'induction-done', of: 'batch/1', given: build },
    ...{ says: ['Batch 1: pot life over', 'Apply no more of it.'], never: noWork },
  },
  {
    ...{ rings: 'stir-paused', of: 'batch/1', given: [...clear, 'wait 20m', 'stop 1'] },
    ...{ says: ['Batch 1: pot life over'], never: /stirrer|Start it/ },
  },
  {
    ...{ rings: 'stir-paused', of: 'batch/1', given: [...clear, 'wait 20m', 'stop 1'], hours: 1 },
    says: ['Batch 1: stirrer still off', 'Start it again'],
  },
  {
    ...{ rings: 'uncovered', of: 'batch/1', given: [...clear, 'uncover 1'] },
    ...{ says: ['Batch 1: pot life over', 'Stop the stirrer.'], never: noWork },
  },
  { rings: 'gear', of: 'batch/1', gear: 'brush', given: cast, says: ['clean the gear', 'To clean at once: brush.'] },
  { rings: 'pot-half', of: 'batch/1', given: filtered, says: ['Batch 1: pot life over'], never: noWork },
  {
    ...{ rings: 'pot-half', of: 'batch/1', given: clear, hours: 4.2 },
    ...{ says: ['Batch 1: finish now', 'Time left to empty the pot'], never: /half the pot/ },
  },
  {
    rings: 'pot-margin',
    of: 'batch/1',
    given: [...filtered, 'wait 1h'],
    says: ['Batch 1: pot life over'],
    never: noWork,
  },
  {
    rings: 'pot-end',
    of: 'batch/1',
    given: [...filtered, 'wait 145m', 'ok'],
    says: ['Batch 1: pot life over', 'Empty and flush'],
    never: noWork,
  },
  {
    ...{ rings: 'surface-ends', of: 'part/rail-2', given: [...build, 'prep new rail-2 sa2.5'] },
    ...{ says: ['outlived its time', 'Prepare it again before it is coated.'], never: /half an hour|Coat it/ },
  },
  { rings: 'flash-least', of: 'part/hub-1', given: cast, says: ['Touch it. If it is dry, say dry.'] },
  { rings: 'flash-most', of: 'part/hub-1', given: cast, says: ['Still not said dry. Look at it.'] },
  {
    ...{ rings: 'recoat-opens', of: 'part/rail-2', given: [...coated, 'wait 70m', 'dry rail-2'] },
    says: ['recoat window open', 'It may have its next coat.'],
  },
  {
    ...{ rings: 'recoat-opens', of: 'part/rail-2', given: [...coated, 'wait 70m', 'dry rail-2'], hours: 80 },
    ...{ says: ['recoat window has closed', 'No further coat by the sheet.'], never: /may have|Coat now/ },
  },
  {
    ...{ rings: 'recoat-closes', of: 'part/rail-2', given: [...coated, 'wait 69h', 'dry rail-2'] },
    ...{ says: ['recoat window has closed'], never: /two hours|Coat now/ },
  },
  {
    ...{ rings: 'recoat-closes', of: 'part/rail-2', given: [...coated, 'wait 69h', 'dry rail-2'], hours: 2 },
    ...{ says: ['recoat window closes soon', 'Coat now, or leave it.'], never: /two hours/ },
  },
  { rings: 'temp-due', of: 'part/hub-1', given: oven, says: ['not measured', 'Read the part itself and say temp'] },
  {
    rings: 'stage-handle',
    of: 'part/rail-2',
    given: room,
    hours: 250,
    says: ['Feel it first', 'given is not released'],
  },
  { rings: 'stage-service', of: 'part/rail-2', given: room, hours: 250, says: ['Given is not released'] },
  { rings: 'stage-full', of: 'part/rail-2', given: room, hours: 250, says: ['Given is not released'] },
  ...(['after-service', 'after-improves'] as const).map((rings) => ({
    ...{ rings, of: 'part/hub-1' as const, given: [...released, 'wait 1m'], hours: 170, says: ['by the sheet'] },
    never: /Cure time given/,
  })),
  {
    ...{ rings: 'after-full', of: 'part/hub-1', given: inRoom, hours: 150 },
    says: ['full properties by the sheet', 'says nothing of its release'],
  },
  { rings: 'cure-done', of: 'part/hub-1', given: oven, says: ['not proved', 'Say temp'] },
  {
    ...{ rings: 'blanket', of: 'can/1', given: [canOpen] },
    ...{ says: ['Can 1: in doubt', 'Nothing is poured from it'], never: /gas over it now/ },
  },
  { rings: 'blanket', of: 'can/1', given: [canOpen], hours: 0.2, says: ['Can 1: gas over it now', 'Lid off since'] },
  {
    ...{ rings: 'stir-done', of: 'can/1', given: [canOpen, 'prestir 1'] },
    ...{ says: ['Can 1: in doubt', 'Nothing is poured from it'], never: /Pour now/ },
  },
  {
    ...{ rings: 'stir-done', of: 'can/1', given: [canOpen, 'prestir 1'], hours: 0.2 },
    says: ['Can 1: stirred long enough', 'Pour now'],
  },
  { rings: 'air-due', of: 'place/room', given: clear, says: ['The last reading is too old.'], never: /about to be/ },
];

describe('after the program was down', () => {
  it.each(outages)('given $rings of $of, then it says how late it is and only what is still true', async (outage) => {
    const { rings, of, gear, given, hours = 10, says, never } = outage;
    const { text, card } = await rungAfter(given, `${of}/${rings}${gear === undefined ? '' : `/${gear}`}`, hours);
    for (const said of says) expect(text).toContain(said);
    if (never !== undefined) expect(text).not.toMatch(never);
    expect(text).toMatch(/Late by .+: the bell was not running\./);
    expect(card.facts.map(({ id }) => id)).toEqual(expect.arrayContaining(['due-at', 'late-minutes']));
  });

  it.each(['thick 1', 'gel 1', 'empty 1'])(
    'given a pot of which "%s" was said, then nothing of it rings',
    async (line) => {
      await expect(rungAfter([...clear, line], 'batch/1/stir-done', 10)).rejects.toThrow('did not ring');
    },
  );

  it.each(['blanket 1', 'discard 1 gelled', 'shut 1 gas'])(
    'given a can of which "%s" was said, then nothing of it rings',
    async (line) => {
      await expect(rungAfter([canOpen, line], 'can/1/blanket', 10)).rejects.toThrow('did not ring');
    },
  );

  const inBooth = ['set booth booth 4m2', 'brief 1 in booth spray omar', 'ack', 'fan on 0.6m/s', 'supplied yes'];
  const sprayed = [...filtered, ...inBooth, 'spray on already', 'wait 5m', 'spray off'];

  it.each([
    ['a pot that nobody stopped stirring', 'batch/1', clear, ['batch/1/stir-done']],
    ['a pot that was filtered', 'batch/1', filtered, ['batch/1/pot-half']],
    ['a can left open', 'can/1', [canOpen], ['can/1/blanket']],
    ['a gun that came to rest', 'session/2/flush', sprayed, ['session/2/flush/2']],
    ['its vessels', 'session/2/vessels', sprayed, ['session/2/vessels/1']],
    [
      'a gun that still sprays',
      'session/2',
      [...filtered, ...inBooth, 'spray on already'],
      ['session/2/air-recheck', 'session/2/spell-end'],
    ],
  ] as const)(
    'given %s, then each thing is said once, not once for each bell that is overdue',
    async (_, of, lines, keys) => {
      const rung = (await heardAfter(lines, 10)).flatMap(({ key }) =>
        key?.startsWith(of) && !key.includes('gear') ? [key] : [],
      );
      expect(rung).toEqual(keys);
    },
  );

  it('given the pot to be sprayed is over, then nobody is briefed for it', async () => {
    const { text } = await rungAfter([...clear, 'brief 1 in booth spray omar at 10:00'], 'session/2/brief', 10);
    expect(text).toContain('Batch 1: pot life over');
    expect(text).not.toMatch(/brief now|Read the lines below/);
  });

  it('given a pot whose bell said late that it is over, then nobody answering, then the lead hears it too', async () => {
    const store = openSqliteStore(':memory:');
    const before = sessionTalk(store);
    for (const line of ['@kari: air 24C 48%', '@kari: mix 2.4kg', '@kari: weigh 1 1200g 1200g', 'wait 103m']) {
      await before.say(line);
    }
    await before.say('@kari: filter 1');
    const up = sessionTalk(store, sprayCrew, shipped, minutesAfter(before.now(), minutes(600)));
    await up.say('wait 30m');
    expect(up.heard.filter(({ key }) => key?.startsWith('batch/1/pot')).map(({ to }) => to)).toEqual([
      ['kari'],
      ['omar'],
      ['rosa'],
    ]);
  });

  it('every bell of a batch, a part and a place is tried', () => {
    const ofOthers = /^(handover|cry|can-|brief|spell|air-recheck|flush|vessels|fan|bell|own|morning|held|digest)/;
    const wanted = reminderKinds.filter((kind) => !ofOthers.test(kind));
    expect(new Set(outages.map(({ rings }) => rings))).toEqual(new Set(wanted));
  });
});
