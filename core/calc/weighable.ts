// Amounts as a scale can show them. A scale shows steps, and what it shows may be half a step off on either side: an
// amount is weighable where following it stays within the sheet's tolerance all the same.

import { isFailed } from '../failed.ts';
import { type Grams, grams, gramsFromOunces } from '../units.ts';
import { type MixRatio, partsByWeight, type Weights } from './mixing.ts';
import type { RatioTolerance } from './mixing-tolerance.ts';

/** What scales of a workshop show, and those of a bench for little: common practice, no source. The coarsest first. */
export const commonSteps = {
  grams: [1, 0.1, 0.01, 0.001].map(grams),
  ounces: [0.1, 0.01, 0.001, 0.0001].map(gramsFromOunces),
};

/** The same by a scale in grams and by one in ounces. */
export interface InBothUnits<T> {
  readonly grams: T;
  readonly ounces: T;
}

/** So far rounded, and told to that step. */
export interface Shown {
  readonly grams: Grams;
  readonly stepGrams: Grams;
}

export interface PairShown {
  readonly partA: Shown;
  readonly partB: Shown;
  /** Whoever follows it stays within the tolerance. */
  readonly holds: boolean;
}

/** The step of the scale under each part. */
export type Steps = Weights;

/** Both to their scale's step, B by the A that is shown. */
export function pairShown(ratio: MixRatio, tolerance: RatioTolerance, exactA: Grams, steps: Steps): PairShown {
  const perA = partBPerA(ratio);
  const partA = shownAt(exactA, steps.partAGrams);
  const partB = shownAt(grams(partA.grams * perA), steps.partBGrams);
  return { partA, partB, holds: holds(perA, tolerance, partA, partB) };
}

/** To the coarsest of these steps that holds; where none does, to the finest. */
export function pairShownAtAny(
  ratio: MixRatio,
  tolerance: RatioTolerance,
  exactA: Grams,
  steps: readonly Grams[],
): PairShown | undefined {
  const tried = steps.map((step) => pairShown(ratio, tolerance, exactA, { partAGrams: step, partBGrams: step }));
  return tried.find((pair) => pair.holds) ?? tried.at(-1);
}

/** The least mix that such scales weigh within the tolerance, however its rounding falls. */
export function smallestMix(ratio: MixRatio, { under, over }: RatioTolerance, steps: Steps): Grams {
  const perA = partBPerA(ratio);
  const { partAGrams: stepA, partBGrams: stepB } = steps;
  // B is off by half a step in rounding and half in reading; A by half in reading, and half in rounding on top.
  const tooMuch = (stepB / perA + ((1 + over) * stepA) / 2) / over;
  const tooLittle = (stepB / perA + ((1 - under) * stepA) / 2) / under;
  return toThreeFigures(grams((Math.max(tooMuch, tooLittle) + stepA / 2) * (1 + perA)));
}

export interface Range {
  readonly leastGrams: Grams;
  readonly exactGrams: Grams;
  readonly mostGrams: Grams;
}

export interface RangeShown {
  readonly least: Shown;
  readonly exact: Shown;
  readonly most: Shown;
  /** What is shown as wanted lies between the ends, and half a step off it does too. */
  readonly holds: boolean;
}

/** Its ends are rounded inwards. */
export function rangeShown({ leastGrams, exactGrams, mostGrams }: Range, stepGrams: Grams): RangeShown {
  const exact = shownAt(exactGrams, stepGrams);
  const half = stepGrams / 2;
  return {
    least: { grams: roundedUp(leastGrams, stepGrams), stepGrams },
    exact,
    most: { grams: roundedDown(mostGrams, stepGrams), stepGrams },
    holds: exact.grams - half >= leastGrams - negligible && exact.grams + half <= mostGrams + negligible,
  };
}

export function rangeShownAtAny(range: Range, steps: readonly Grams[]): RangeShown | undefined {
  const tried = steps.map((step) => rangeShown(range, step));
  return tried.find((shown) => shown.holds) ?? tried.at(-1);
}

/** Far finer than any scale: what binary fractions make of 0.1. */
const negligible = 1e-9;

function partBPerA(ratio: MixRatio): number {
  const parts = partsByWeight(ratio);
  return isFailed(parts) ? Number.NaN : parts.partsB / parts.partsA;
}

function holds(perA: number, { under, over }: RatioTolerance, partA: Shown, partB: Shown): boolean {
  const [a, b] = [partA.grams, partB.grams];
  const [halfA, halfB] = [partA.stepGrams / 2, partB.stepGrams / 2];
  if (!(a > halfA)) return false;
  const most = (b + halfB) / (a - halfA) / perA - 1;
  const least = 1 - (b - halfB) / (a + halfA) / perA;
  return most <= over + negligible && least <= under + negligible;
}

function shownAt(exact: Grams, stepGrams: Grams): Shown {
  return { grams: inSteps(Math.round(exact / stepGrams), stepGrams), stepGrams };
}

/** Up. */
const toThreeFigures = (mass: Grams): Grams => roundedUp(mass, grams(10 ** (Math.floor(Math.log10(mass)) - 2)));

const roundedUp = (mass: Grams, step: Grams): Grams => inSteps(Math.ceil(mass / step - negligible), step);
const roundedDown = (mass: Grams, step: Grams): Grams => inSteps(Math.floor(mass / step + negligible), step);

/** 3 steps of 0.1 g are 0.3 g, not 0.30000000000000004. */
const inSteps = (count: number, step: Grams): Grams => grams(Number((count * step).toPrecision(12)));

const mostDecimals = 4;

/** Of what a scale with this step shows; `undefined` where its steps are no full figures of the unit. */
export function decimalsOf(step: number): number | undefined {
  for (let digits = 0; digits <= mostDecimals; digits++) {
    const whole = step * 10 ** digits;
    if (Math.round(whole) > 0 && Math.abs(whole - Math.round(whole)) < 1e-6) return digits;
  }
  return undefined;
}

export const endOf = (
  { grams, ounces }: InBothUnits<RangeShown>,
  end: 'least' | 'exact' | 'most',
): InBothUnits<Shown> => ({ grams: grams[end], ounces: ounces[end] });

export const partOf = (pair: InBothUnits<PairShown>, part: 'partA' | 'partB'): InBothUnits<Shown> => ({
  grams: pair.grams[part],
  ounces: pair.ounces[part],
});
