// What a batch allows when. The order of the rows is the order in which the reasons are told.

import type { TemperatureLog } from '../calc/clock.ts';
import { ratioError, type Weights } from '../calc/mixing.ts';
import { coatRecalled } from '../can/can-rules.ts';
import type { Verb } from '../commands.ts';
import type { Scale } from '../crew/scales.ts';
import { isFailed } from '../failed.ts';
import type { FilterTold } from '../filters.ts';
import { mayHeat } from '../heat-care.ts';
import type { Recall } from '../lot-recalls.ts';
import type { Method } from '../methods.ts';
import type { Objection } from '../objections.ts';
import { mixRatio, type Sheet } from '../products/sheet.ts';
import { type AirRead, airObjection } from '../products/sheet-air.ts';
import { hadHappened, type Rule } from '../rules.ts';
import { type EpochMs, type Grams, grams, type Litres, type Minutes } from '../units.ts';
import type { Batch } from './batch.ts';
import { blendClock, potLifeTimes } from './batch-clocks.ts';
import { filterAsSheet, isFilteredOtherwise } from './filtering.ts';
import { toWeigh } from './to-weigh.ts';
import { vesselTooSmallFor } from './vessel.ts';

export interface MixCase extends AirRead {
  readonly sheet: Sheet;
  readonly grams: Grams;
  readonly vesselLitres: Litres | undefined;
  readonly lastReadAt: EpochMs | undefined;
  readonly limitMinutes: Minutes;
  /** Those that the shop had told of by then. */
  readonly scales: readonly Scale[];
}

export const mixRules: readonly Rule<MixCase>[] = [
  {
    code: 'air-needed',
    source: 'sheet',
    liftedBy: 'lead',
    // The clocks live on the temperature. A humidity that nobody read is told on the card and stops nothing.
    check: ({ celsius, relativeHumidityPercent, lastReadAt, limitMinutes }) => {
      if (celsius !== undefined) return undefined;
      const missing = relativeHumidityPercent === undefined ? 'both' : 'temperature';
      return { code: 'air-needed', missing, lastReadAt, limitMinutes };
    },
  },
  {
    code: 'air-outside',
    source: 'sheet',
    liftedBy: 'supervisor',
    check: (read, edition) => airObjection(read.sheet, read, edition),
  },
  {
    code: 'more-than-sheet-mixes',
    source: 'sheet',
    liftedBy: 'lead',
    check: ({ sheet, grams }) =>
      sheet.mostMixGrams !== undefined && grams > sheet.mostMixGrams.value
        ? { code: 'more-than-sheet-mixes', grams, mostGrams: sheet.mostMixGrams.value }
        : undefined,
  },
  {
    code: 'vessel-too-small',
    since: 3,
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ sheet, grams, vesselLitres }) => vesselTooSmallFor(sheet, vesselLitres, grams),
  },
  {
    // So little that its own steps take it out of the sheet's tolerance.
    code: 'scale-too-coarse',
    since: 6,
    source: 'sheet',
    liftedBy: 'lead',
    check: ({ sheet, grams, scales }) => toWeigh(sheet, grams, scales)?.tooCoarse,
  },
];

/** Something about to be done at `at` to or with a batch, as it was before. */
export interface BatchCase {
  readonly batch: Batch;
  readonly air: TemperatureLog;
  readonly at: EpochMs;
  /** Where something is said to be caught. */
  readonly caughtGrams?: Grams;
  /** Where it is filtered: what was told of that. */
  readonly filter?: FilterTold;
}

/** What speaks against such a mix. The ends count as within: 1020 g on 1000 g is 2 %, though its binary fraction is more. */
export function offRatio({ ratio }: Sheet, weighed: Weights): Objection | undefined {
  const { tolerancePercent } = ratio;
  const error = ratioError(mixRatio(ratio), weighed);
  const errorPercent = isFailed(error) ? Number.POSITIVE_INFINITY : error * 100;
  return Math.abs(errorPercent) <= tolerancePercent + 1e-9
    ? undefined
    : { code: 'ratio-out', errorPercent, tolerancePercent };
}

export const potIsThere: readonly Rule<BatchCase>[] = [
  {
    code: 'pot-empty',
    source: 'the order of the work',
    liftedBy: 'nobody',
    check: ({ batch: { emptied }, at }) =>
      hadHappened(emptied?.at, at) ? { code: 'pot-empty', at: emptied?.at ?? at } : undefined,
  },
  {
    code: 'pot-dead',
    source: 'common practice, no source',
    liftedBy: 'nobody',
    check: ({ batch: { number, thickened }, at }) =>
      thickened !== undefined && thickened.at <= at
        ? { code: 'pot-dead', batch: number, seen: thickened.seen, at: thickened.at }
        : undefined,
  },
];

export const weighed: Rule<BatchCase> = {
  code: 'not-weighed',
  source: 'the order of the work',
  liftedBy: 'nobody',
  check: ({ batch, at }) => (hadHappened(batch.weighing?.at, at) ? undefined : { code: 'not-weighed' }),
};

const potLives: Rule<BatchCase> = {
  code: 'past-pot-life',
  source: 'sheet',
  liftedBy: 'nobody',
  check: ({ batch, air, at }) => {
    const end = potLifeTimes(batch, air)?.endAt;
    return end !== undefined && end <= at ? { code: 'past-pot-life', endedAt: end } : undefined;
  },
};

const blended: Rule<BatchCase> = {
  code: 'blend-not-done',
  source: 'sheet',
  liftedBy: 'lead',
  check: ({ batch, air, at }) => {
    if (batch.weighing === undefined) return undefined;
    const clock = blendClock(batch, air, at);
    if (hadHappened(clock.doneAt, at)) return undefined;
    return {
      code: 'blend-not-done',
      way: batch.sheet.blend.way,
      progress: clock.dose.progress,
      givenMinutes: clock.dose.ranMinutes,
      dueAt: clock.dueAt,
      withoutFigure: clock.withoutFigure,
    };
  },
};

/** A pot off its ratio never hardens as the sheet says; it shows a week later as soft film. */
const withinRatio: Rule<BatchCase> = {
  code: 'ratio-out',
  source: 'sheet',
  liftedBy: 'supervisor',
  check: ({ batch: { weighing, sheet }, at }) =>
    weighing !== undefined && hadHappened(weighing.at, at) ? offRatio(sheet, weighing) : undefined,
};

/** What makes waste of a pot, or holds all of it until somebody settles that. */
export const potHolds: readonly Rule<BatchCase>[] = [...potIsThere, potLives, withinRatio];

export const stirRules: readonly Rule<BatchCase>[] = [...potIsThere, weighed, potLives];

/** Nothing turns by the record: said twice, before the weighing, or after the pot was emptied. */
export const stopRules: readonly Rule<BatchCase>[] = [
  {
    code: 'stirrer-off',
    source: 'the order of the work',
    liftedBy: 'lead',
    check: ({ batch, at }) =>
      batch.stirring.some((run) => run.from <= at && (run.to === undefined || run.to > at))
        ? undefined
        : { code: 'stirrer-off' },
  },
];

/** What drained from a coat may be caught from any pot that was mixed. */
export const catchRules: readonly Rule<BatchCase>[] = [
  ...potIsThere,
  weighed,
  {
    // What was filtered is in the pot again, and may be caught again.
    code: 'caught-more-than-mixed',
    source: 'the order of the work',
    liftedBy: 'nobody',
    since: 4,
    check: ({ batch: { weighing, inVessel, caught }, at, caughtGrams = grams(0) }) => {
      const sum = (all: readonly { readonly grams: Grams }[]) => all.reduce((total, each) => total + each.grams, 0);
      const mixed = sum(Object.values(inVessel));
      const outside = caughtGrams + sum(caught.filter((each) => isUnfiltered(each, at)));
      return weighing !== undefined && outside > mixed
        ? { code: 'caught-more-than-mixed', grams: grams(outside), mixedGrams: grams(mixed) }
        : undefined;
    },
  },
];

export const filterRules: readonly Rule<BatchCase>[] = [
  ...potIsThere,
  weighed,
  {
    code: 'already-filtered',
    source: 'the order of the work',
    liftedBy: 'lead',
    check: ({ batch, at }) =>
      hadHappened(batch.filteredAt, at) &&
      !batch.caught.some((each) => isUnfiltered(each, at)) &&
      !isFilteredOtherwise(batch)
        ? { code: 'already-filtered', at: batch.filteredAt }
        : undefined,
  },
  filterAsSheet,
  withinRatio,
  blended,
  potLives,
];

/** What was caught by then and had not been filtered since. */
function isUnfiltered({ at: caughtAt, filteredAt }: Batch['caught'][number], at: EpochMs): boolean {
  return caughtAt <= at && !hadHappened(filteredAt, at);
}

export interface BatchForCoatCase extends BatchCase {
  readonly method: Method;
  /** Of what it was filled from. */
  readonly recalled: Recall | undefined;
}

/** What goes on reacting is not carried about: what is told on its card stands instead. */
const emptyRules: readonly Rule<BatchCase>[] = [
  {
    code: 'pot-dead',
    source: 'common practice, no source',
    liftedBy: 'nobody',
    since: 7,
    check: ({ batch: { number, thickened }, at }) =>
      thickened !== undefined && thickened.at <= at && mayHeat(thickened.seen)
        ? { code: 'pot-dead', batch: number, seen: thickened.seen, at: thickened.at }
        : undefined,
  },
];

/** Of the short acts on a pot: what decides one, the help and the objection cards read the same row. */
export const potRules = {
  stir: stirRules,
  stop: stopRules,
  filter: filterRules,
  catch: catchRules,
  empty: emptyRules,
} as const satisfies Readonly<Partial<Record<Verb, readonly Rule<BatchCase>[]>>>;

/** What the batch says to a coat; what the part says stands in part-rules. */
export const coatFromBatchRules: readonly Rule<BatchForCoatCase>[] = [
  coatRecalled,
  ...potIsThere,
  weighed,
  withinRatio,
  potLives,
  blended,
  {
    code: 'not-filtered',
    source: 'sheet',
    liftedBy: 'lead',
    check: ({ batch, at }) =>
      batch.sheet.filter !== undefined && batch.weighing !== undefined && !hadHappened(batch.filteredAt, at)
        ? { code: 'not-filtered' }
        : undefined,
  },
  {
    code: 'caught-not-filtered',
    source: 'common practice, no source',
    liftedBy: 'lead',
    check: ({ batch, at }) => {
      const last = batch.caught.findLast((each) => isUnfiltered(each, at));
      return last === undefined ? undefined : { code: 'caught-not-filtered', grams: last.grams, at: last.at };
    },
  },
  {
    code: 'method-not-on-sheet',
    source: 'sheet',
    liftedBy: 'lead',
    check: ({ batch: { sheet }, method }) =>
      sheet.methods.includes(method) ? undefined : { code: 'method-not-on-sheet', method, methods: sheet.methods },
  },
];
