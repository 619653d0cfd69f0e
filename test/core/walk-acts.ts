// What a crew might say next: by phase, so that a coat is reached at all, and now and then what makes no sense. Draws are
// plain whole numbers, taken in turn.

import { type Batch, phaseOf } from '../../core/batch/batch.ts';
import { blendDueAt, potLifeTimes } from '../../core/batch/batch-clocks.ts';
import type { Command } from '../../core/commands.ts';
import { goesOnFrom, restingOn } from '../../core/corrections/rests-on.ts';
import { isAct } from '../../core/history.ts';
import { methods } from '../../core/methods.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import { cureDueAt, flashTimes } from '../../core/part/part-clocks.ts';
import { gears } from '../../core/session/session-commands.ts';
import { airLog, batchOf, entriesIn, type Shop } from '../../core/shop.ts';
import { askedSteps } from '../../core/steps/step-rows.ts';
import {
  celsius,
  type EpochMs,
  epochMs,
  grams,
  litres,
  micrometres,
  millimetres,
  minutes,
  minutesAfter,
  percent,
  revolutionsPerMinute,
} from '../../core/units.ts';
import type { AmendTarget } from '../../core/verbs/correction-verbs.ts';
import type { Amount, PartDetails } from '../../core/verbs/said.ts';
import { canActs, canEdges, vesselOf } from './walk-cans.ts';
import { heldAgain, partActs, settled } from './walk-part-acts.ts';
import {
  crewActs,
  loadActs,
  roughCoats,
  saidNew,
  surfaceActs,
  surfaceEdges,
  surfaceLate,
  touchUps,
} from './walk-parts.ts';
import { sessionActs, sessionEdges } from './walk-session.ts';

/** The next draw, below `n`. */
export type Draw = (n: number) => number;

export function oneOf<T>(draw: Draw, choices: readonly [T, ...T[]]): T {
  return choices[draw(choices.length)] ?? choices[0];
}

export type Say = (draw: Draw) => Command;

/** What a walk is mostly about, so that what is rare at random is met all the same. */
export type Focus = 'any' | 'material' | 'parts' | 'spray';

export function nextAct(shop: Shop, now: EpochMs, draw: Draw, focus: Focus = 'any'): Command {
  const turning = atAnEdge(shop, now);
  const atOnce = draw(2) === 0 ? turning[draw(Math.max(1, turning.length))] : undefined;
  if (atOnce !== undefined) return atOnce(draw);
  const held = [...shop.parts.values()].flatMap(heldAgain);
  const again = held.length > 0 ? held : [...shop.parts.values()].flatMap(settled);
  const moved = again.length > 0 && draw(3) === 0 ? again[draw(again.length)] : undefined;
  if (moved !== undefined) return moved(draw);
  const out = [...shop.parts.values()].filter((part) => ['cured', 'released'].includes(phaseOfPart(part).is));
  // What is out of cure is mostly released, and by somebody else once more.
  const leaving = out.length > 0 && draw(4) === 0 ? out[draw(out.length)] : undefined;
  if (leaving !== undefined) return { verb: 'release', parts: [leaving.name] };
  // A slip of the thumb on a part that is warm.
  const warm = [...shop.parts.values()].filter(({ cure, temperatures }) => {
    return cure?.way === 'oven' && cure.run.to === undefined && (temperatures.at(-1)?.celsius ?? 0) > 60;
  });
  const slipped = warm.length > 0 && draw(4) === 0 ? warm[draw(warm.length)] : undefined;
  if (slipped !== undefined) return { verb: 'temp', part: slipped.name, celsius: celsius(9) };
  const room = roomActs(shop);
  const batches = [...shop.batches.values()];
  const pots = batches.slice(-3).flatMap((batch) => potActs(batch));
  const inUse = batches.findLast((batch) => ['filtered', 'blending', 'to-weigh'].includes(phaseOf(batch).is));
  const parts = [...shop.parts.values()];
  const each = parts.flatMap(partActs);
  // Whoever has just coated goes on with that part.
  const latest = parts.toSorted((a, b) => (a.coats.at(-1)?.seq ?? 0) - (b.coats.at(-1)?.seq ?? 0)).slice(-1);
  const last = latest.flatMap(partActs);
  const straight = inUse === undefined ? [mix] : straightOn(inUse);
  const cans = canActs(shop);
  const people = [...crewActs(shop), ...loadActs(shop)];
  if (focus === 'spray') {
    const round = sessionActs(shop, now);
    const spraying = [round, round, round, round, round, round, round, straight, straight, room, people];
    const chosen = spraying[draw(spraying.length)] ?? room;
    return chosen[draw(chosen.length)]?.(draw) ?? { verb: 'ok' };
  }
  if (focus === 'parts') {
    const wet = parts.flatMap((part) => batches.slice(-1).flatMap((batch) => touchUps(part, batch)));
    const rough = roughCoats(shop);
    const more = [
      ...[loadActs(shop), surfaceActs(shop)],
      ...(wet.length > 0 ? [wet, wet] : []),
      ...(rough.length > 0 ? [rough, rough] : []),
    ];
    const ofParts = [straight, straight, straight, each, last, last, last, last, room, ...more];
    const chosen = ofParts[draw(ofParts.length)] ?? room;
    return chosen[draw(chosen.length)]?.(draw) ?? { verb: 'ok' };
  }
  const about = focus === 'material' ? Array.from({ length: 12 }, () => cans) : [];
  const kinds = [
    ...about,
    surfaceActs(shop),
    people,
    cans,
    cans,
    room,
    straight,
    straight,
    pots,
    pots,
    each,
    last,
    last,
    [correction(shop)],
  ];
  const said = kinds[draw(kinds.length)] ?? room;
  const say = said[draw(said.length)] ?? room[draw(room.length)];
  return say === undefined ? { verb: 'ok' } : say(draw);
}

/** What matters most within a second of an edge: a coat as the pot dies or the window turns, an oven as the flash ends. */
function atAnEdge(shop: Shop, now: EpochMs): readonly Say[] {
  const isNear = (at: EpochMs | undefined) => at !== undefined && Math.abs(at - now) <= 1_000;
  const pots = [...shop.batches.values()].filter(({ emptied }) => emptied === undefined);
  const dying = pots.filter((batch) => isNear(potLifeTimes(batch, airLog(shop, batch.place))?.endAt));
  const turning = [...shop.parts.values()].filter((part) => partEdges(shop, part).some(isNear));
  const coats = pots.flatMap((batch) =>
    turning.map(
      (part): Say =>
        () => ({ verb: 'coat', parts: [part.name], batch: batch.number, method: 'brush' }),
    ),
  );
  const ovens = turning.map(
    (part): Say =>
      () => ({ verb: 'cure', parts: [part.name], way: { kind: 'oven' } }),
  );
  const lastCoats = dying.map((batch) => acts(batch).coat);
  return lastCoats.length > 0 ? lastCoats : [...coats, ...ovens, ...surfaceLate(shop, now).slice(-1)];
}

/** What a good crew does next with a pot. */
function straightOn(batch: Batch): readonly Say[] {
  const { weigh, coat, short } = acts(batch);
  switch (phaseOf(batch).is) {
    case 'to-weigh':
      return [weigh];
    case 'blending':
      return batch.sheet.blend.way === 'stir' ? [short('filter')] : [coat];
    default:
      return [coat];
  }
}

const someAir = (draw: Draw) => ({
  celsius: celsius(oneOf(draw, [24, 24, 20, 15, 30, 23, 12, 33, 8])),
  relativeHumidityPercent: percent(oneOf(draw, [48, 48, 48, 60, 90])),
});

function roomActs(shop: Shop): readonly Say[] {
  const mixes = [...shop.batches.values()].filter(({ emptied }) => emptied === undefined).length < 3 ? 4 : 1;
  return [
    ...Array.from({ length: mixes }, (): Say => mix),
    (draw) => ({ verb: 'air', air: someAir(draw) }),
    (draw) => ({ verb: 'air', air: someAir(draw) }),
    (draw) => ({ verb: 'air', air: { relativeHumidityPercent: percent(40 + draw(30)) } }),
    (draw) => ({
      verb: 'surface',
      celsius: celsius(oneOf(draw, [20, 22, 11])),
      ...(draw(12) === 0 && { place: 'shed' }),
    }),
    (draw) => ({ verb: 'night', lowestCelsius: celsius(oneOf(draw, [16, 14, 20])) }),
    () => ({ verb: 'ok' }),
    (draw) => (draw(6) === 0 ? severalIn(draw) : { verb: 'part', part: partName(draw), details: someDetails(draw) }),
    (draw) => ({
      verb: 'set',
      setting: oneOf(draw, [
        { name: 'sheet', sheet: 'own-build' },
        { name: 'sheet', sheet: 'own-clear' },
        { name: 'sheet', sheet: 'own-faulty' },
        { name: 'sheet', sheet: 'demo-clear' },
        { name: 'digest', hour: 17 },
        { name: 'digest', hour: 9 },
        { name: 'units', units: 'us' },
      ]),
    }),
  ];
}

/** Some of them may be there already. */
const severalIn = (draw: Draw): Command => {
  const [part, ...more] = oneOf<readonly string[]>(draw, [
    ['impeller-7', 'impeller-8'],
    ['valve-4', 'lid-1'],
    ['rail-2', 'valve-4'],
  ]);
  const others = more.map((each) => ({ part: each, details: {} }));
  return { verb: 'part', part: part ?? '', details: {}, more: others, ...(draw(3) === 0 && { isAsked: true }) };
};

/** Six names: near enough for slips, few enough to come back. */
const partName = (draw: Draw) => oneOf(draw, ['impeller-7', 'impeller-8', 'impelle-7', 'rail-2', 'lid-1', 'valve-4']);

function someDetails(draw: Draw): PartDetails {
  return oneOf<PartDetails>(draw, [
    { highestCelsius: celsius(80) },
    { highestCelsius: celsius(85), job: '88' },
    { wallMillimetres: millimetres(12), metal: 'cast-iron', serial: '4411' },
    { customer: 'invented' },
    {},
  ]);
}

function mix(draw: Draw): Command {
  const sheet = oneOf(draw, ['own-clear', 'own-clear', 'own-build', 'own-build', 'own-faulty', 'no-litres', 'none']);
  const amount = oneOf<Amount>(draw, [
    { kind: 'mass', grams: grams(2400) },
    { kind: 'mass', grams: grams(2400) },
    { kind: 'volume', litres: litres(5) },
    { kind: 'mass', grams: grams(45_000) },
  ]);
  const said = oneOf(draw, [undefined, someAir(draw), someAir(draw), { celsius: celsius(22) }]);
  const named = draw(3) === 0 ? {} : { sheet };
  return { verb: 'mix', amount, ...named, ...vesselOf(draw), ...(said === undefined ? {} : { air: said }) };
}

function acts(batch: Batch) {
  const named = { batch: batch.number };
  const build = batch.sheet.id === 'own-build';
  const [partAGrams, partBGrams] = build ? [5400, 1050] : [1200, 1200];
  const weigh: Say = (draw) => ({
    verb: 'weigh',
    ...(draw(3) === 0 ? {} : named),
    partAGrams: grams(partAGrams),
    partBGrams: grams(partBGrams * oneOf(draw, [1, 1, 1, 1.01, 1.1])),
  });
  const coat: Say = (draw) => ({
    verb: 'coat',
    // A railing takes coat upon coat of the build.
    parts: build && draw(3) > 0 ? ['rail-2'] : draw(6) === 0 ? ['lid-1', 'valve-4'] : [partName(draw)],
    ...(draw(4) === 0 ? {} : named),
    ...saidNew(draw),
    method: build && draw(3) > 0 ? 'brush' : oneOf(draw, methods),
  });
  const short =
    (verb: 'stir' | 'stop' | 'filter' | 'thick' | 'gel' | 'empty'): Say =>
    () => ({ verb, ...named });
  /** Of most pots more is told. */
  const isTold = batch.number % 3 !== 0;
  const filter: Say = () => ({
    ...{ verb: 'filter', ...named },
    ...(isTold ? { filterMicrometres: micrometres(5) } : {}),
  });
  const stir: Say = () => ({
    ...{ verb: 'stir', ...named },
    ...(isTold ? { revolutionsPerMinute: revolutionsPerMinute(450) } : {}),
  });
  const empty: Say = (draw) => ({ verb: 'empty', ...named, leftGrams: grams(draw(500)) });
  const answer: Say = (draw) => ({
    verb: 'confirm',
    ...named,
    step: askedSteps[draw(6)] ?? 'papers',
    kept: draw(3) === 0,
  });
  return { weigh, coat, short, filter, stir, empty, answer };
}

function potActs(batch: Batch): readonly Say[] {
  const { weigh, coat, short, filter, stir, empty, answer } = acts(batch);
  const clean: Say = (draw) => ({ verb: 'flush', session: batch.number, gear: gears[draw(gears.length)] ?? 'gun' });
  switch (phaseOf(batch).is) {
    case 'to-weigh':
      return [weigh, weigh, weigh, short('stir'), short('filter'), coat, answer];
    case 'blending':
      return [short('stop'), filter, filter, filter, coat, coat, weigh, short('thick')];
    case 'paused':
      return [stir, stir, filter, short('gel'), coat];
    case 'filtered':
      return [coat, coat, coat, coat, coat, short('filter'), short('filter'), clean, short('gel'), empty, weigh];
    case 'dead':
      return [() => ({ verb: 'hot', batch: batch.number }), coat, short('stir'), empty, empty];
    case 'emptied':
      return [clean, coat, coat, short('filter'), short('filter'), short('stir'), short('stir')];
    default:
      return [coat];
  }
}

/** Undo, an amendment of anything, or what no crew has. */
function correction(shop: Shop): Say {
  return (draw) => {
    const batch = [...shop.batches.keys()].at(-1) ?? 1;
    const part = [...shop.parts.keys()].at(draw(3)) ?? 'impeller-7';
    const target = oneOf<AmendTarget>(draw, [
      { verb: 'weigh', batch },
      { verb: 'filter', batch },
      { verb: 'thick', batch },
      { verb: 'empty', batch },
      { verb: 'air' },
      { verb: 'air' },
      { verb: 'night' },
      { verb: 'coat', part },
      { verb: 'coat', part },
      { verb: 'cure', part },
      { verb: 'temp', part },
      { verb: 'film', part },
      { verb: 'release', part },
      { verb: 'hold', part },
      { verb: 'dry', part: 'nobody-1' },
    ]);
    const entries = [...(shop.batches.get(batch)?.entries ?? []), ...(shop.parts.get(part)?.entries ?? [])];
    const near = entries[draw(Math.max(1, entries.length))]?.happenedAt;
    const moved = near === undefined ? {} : { at: minutesAfter(near, minutes(oneOf(draw, [0, 5, -5, 30, 120, -600]))) };
    const wrong = {
      ...{ partBGrams: grams(1300), leftGrams: grams(7) },
      ...{ filterMicrometres: micrometres(1), revolutionsPerMinute: revolutionsPerMinute(350) },
    };
    return oneOf<Command>(draw, [
      { verb: 'undo' },
      // A tap of an older card, now and then of one that told what rests on it.
      { verb: 'undo', entry: entries.at(-1)?.seq ?? 1, ...(draw(2) === 0 ? { despite: 999 } : {}) },
      { verb: 'amend', of: target, change: { celsius: celsius(oneOf(draw, [15, 28, 95])) }, why: 'misread' },
      { verb: 'amend', of: target, change: wrong, why: 'wrong scale' },
      { verb: 'amend', of: target, change: moved, why: 'told late' },
      { verb: 'amend', of: target, change: moved, why: 'told late' },
      { verb: 'filter', batch: 99 },
      { verb: 'stop' },
      { verb: 'dry', parts: ['nobody-1'] },
      { verb: 'temp', celsius: celsius(90) },
      { verb: 'mix', amount: { kind: 'volume', litres: litres(0) } },
    ]);
  };
}

/** Whose last act has something resting on it that nobody else has gone on from: their undo is the one that asks. */
export function whoseActIsRestedOn(shop: Shop): string | undefined {
  const acts = entriesIn(shop, isAct);
  const last = new Map(acts.map((entry) => [entry.by, entry]));
  return [...last].find(
    ([by, entry]) =>
      restingOn(shop, acts, [entry]).length > 0 &&
      !acts.some((other) => other.seq > entry.seq && other.by !== by && goesOnFrom(other, entry)),
  )?.[0];
}

/** Times at which something turns: to be met a millisecond before, at, and after. */
export function edgesIn(shop: Shop): readonly EpochMs[] {
  const pots = [...shop.batches.values()].flatMap((batch) => {
    const air = airLog(shop, batch.place);
    const pot = potLifeTimes(batch, air);
    return [blendDueAt(batch, air), pot?.halfAt, pot?.marginAt, pot?.endAt, batch.filteredAt, batch.emptied?.at];
  });
  const parts = [...shop.parts.values()].flatMap((part) => partEdges(shop, part));
  return [...pots, ...parts, ...canEdges(shop), ...surfaceEdges(shop), ...sessionEdges(shop)]
    .filter((at) => at !== undefined)
    .map((at) => epochMs(Math.round(at)));
}

function partEdges(shop: Shop, part: Part): readonly (EpochMs | undefined)[] {
  const sheet = batchOf(shop, part)?.sheet;
  const coatedAt = part.coats.at(-1)?.at;
  if (sheet === undefined || coatedAt === undefined) return [];
  const { leastAt, mostAt } = flashTimes(sheet, coatedAt);
  const window = sheet.recoat.rule === 'window' ? [sheet.recoat.opensMinutes, sheet.recoat.closesMinutes] : [];
  return [leastAt, mostAt, cureDueAt(part, sheet, airLog(shop)), ...window.map((at) => minutesAfter(coatedAt, at))];
}
