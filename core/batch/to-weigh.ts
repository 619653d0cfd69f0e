// What to weigh of each part, as the scale at hand can show it and the sheet's tolerance still holds; in grams and, for who
// works in those, in ounces. No scale told of is weighed to the steps that are common.

import { splitMass } from '../calc/mixing.ts';
import type { Pour, RatioTolerance } from '../calc/mixing-tolerance.ts';
import {
  commonSteps,
  decimalsOf,
  type InBothUnits,
  type PairShown,
  pairShown,
  pairShownAtAny,
  type RangeShown,
  rangeShown,
  rangeShownAtAny,
  smallestMix,
} from '../calc/weighable.ts';
import { type Scale, scaleFor } from '../crew/scales.ts';
import { isFailed } from '../failed.ts';
import type { Objection } from '../objections.ts';
import { mixRatio, type Sheet } from '../products/sheet.ts';
import { fraction, type Grams, ouncesFromGrams } from '../units.ts';

export interface ToWeigh {
  readonly pair: InBothUnits<PairShown>;
  /** `undefined` where none is told of. */
  readonly scales: { readonly partA: Scale; readonly partB: Scale } | undefined;
  readonly tooCoarse: Extract<Objection, { code: 'scale-too-coarse' }> | undefined;
}

export function toleranceOf({ ratio }: Sheet): RatioTolerance {
  const share = fraction(ratio.tolerancePercent / 100);
  return { under: share, over: share };
}

export function toWeigh(sheet: Sheet, total: Grams, scales: readonly Scale[]): ToWeigh | undefined {
  const ratio = mixRatio(sheet.ratio);
  const tolerance = toleranceOf(sheet);
  const split = splitMass(total, ratio);
  if (isFailed(split)) return undefined;
  const common = (steps: readonly Grams[]) => pairShownAtAny(ratio, tolerance, split.partAGrams, steps);
  const [inGrams, inOunces] = [common(commonSteps.grams), common(commonSteps.ounces)];
  if (inGrams === undefined || inOunces === undefined) return undefined;
  const pair = { grams: inGrams, ounces: inOunces };
  const [partA, partB] = [scaleFor(scales, split.partAGrams), scaleFor(scales, split.partBGrams)];
  if (partA === undefined || partB === undefined) return { pair, scales: undefined, tooCoarse: undefined };
  const steps = { partAGrams: partA.stepGrams, partBGrams: partB.stepGrams };
  const onScales = pairShown(ratio, tolerance, split.partAGrams, steps);
  if (!onScales.holds) {
    const { scale, stepGrams } = partA.stepGrams > partB.stepGrams ? partA : partB;
    const smallestGrams = smallestOn(sheet, scales, smallestMix(ratio, tolerance, steps));
    const { tolerancePercent } = sheet.ratio;
    const tooCoarse = { code: 'scale-too-coarse', scale, stepGrams, tolerancePercent, smallestGrams } as const;
    return { pair, scales: { partA, partB }, tooCoarse };
  }
  const shownIn = (unit: Unit) => (isIn(unit, partA) && isIn(unit, partB) ? onScales : pair[unit]);
  return {
    pair: { grams: shownIn('grams'), ounces: shownIn('ounces') },
    scales: { partA, partB },
    tooCoarse: undefined,
  };
}

/** A bigger mix may want another scale, or be more than the sheet mixes: then there is none. */
function smallestOn(sheet: Sheet, scales: readonly Scale[], smallest: Grams): Grams | undefined {
  if (sheet.mostMixGrams !== undefined && smallest > sheet.mostMixGrams.value) return undefined;
  const split = splitMass(smallest, mixRatio(sheet.ratio));
  if (isFailed(split)) return undefined;
  const [partA, partB] = [scaleFor(scales, split.partAGrams), scaleFor(scales, split.partBGrams)];
  if (partA === undefined || partB === undefined) return undefined;
  const steps = { partAGrams: partA.stepGrams, partBGrams: partB.stepGrams };
  return pairShown(mixRatio(sheet.ratio), toleranceOf(sheet), split.partAGrams, steps).holds ? smallest : undefined;
}

export interface PourShown extends InBothUnits<RangeShown> {
  /** The scale that would take it, where its steps are too wide for it. */
  readonly tooCoarse: Scale | undefined;
}

/** How much of one part belongs on the other, from the least to the most. */
export function pourShown(pour: Pour, scales: readonly Scale[]): PourShown | undefined {
  const [inGrams, inOunces] = [rangeShownAtAny(pour, commonSteps.grams), rangeShownAtAny(pour, commonSteps.ounces)];
  if (inGrams === undefined || inOunces === undefined) return undefined;
  const scale = scaleFor(scales, pour.exactGrams);
  const onScale = scale && rangeShown(pour, scale.stepGrams);
  const common = { grams: inGrams, ounces: inOunces };
  const shownIn = (unit: Unit) => (scale && onScale?.holds && isIn(unit, scale) ? onScale : common[unit]);
  return {
    grams: shownIn('grams'),
    ounces: shownIn('ounces'),
    tooCoarse: onScale === undefined || onScale.holds ? undefined : scale,
  };
}

type Unit = keyof InBothUnits<unknown>;

/** Whether what a scale shows are full figures of this unit: one in ounces shows none of grams. */
function isIn(unit: Unit, { stepGrams }: Scale): boolean {
  return decimalsOf(unit === 'grams' ? stepGrams : ouncesFromGrams(stepGrams)) !== undefined;
}
