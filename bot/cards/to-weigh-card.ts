// How much of each part to weigh: figures that keep to the sheet's ratio on the scale that takes them, and which that is.

import type { Batch } from '../../core/batch/batch.ts';
import { type ToWeigh, toleranceOf, toWeigh } from '../../core/batch/to-weigh.ts';
import { splitMass } from '../../core/calc/mixing.ts';
import { commonSteps, partOf, smallestMix } from '../../core/calc/weighable.ts';
import { carries, scalesAt } from '../../core/crew/scales.ts';
import { isFailed } from '../../core/failed.ts';
import { mixRatio } from '../../core/products/sheet.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { weighFact } from './facts.ts';

export interface ToWeighTold {
  readonly facts: readonly CardFact[];
  readonly lines: readonly string[];
}

export function toWeighCard(telling: Telling, { sheet, plannedGrams }: Batch): ToWeighTold {
  const split = splitMass(plannedGrams, mixRatio(sheet.ratio));
  const weigh = toWeigh(sheet, plannedGrams, scalesAt(telling.shop.crew, telling.now));
  if (isFailed(split) || weigh === undefined) return { facts: [], lines: [] };
  return {
    facts: [
      weighFact(telling, 'part-a', split.partAGrams, partOf(weigh.pair, 'partA')),
      weighFact(telling, 'part-b', split.partBGrams, partOf(weigh.pair, 'partB')),
    ],
    lines: scaleLines(telling, { sheet, plannedGrams }, weigh),
  };
}

/** Nothing where any scale of the trade will do. */
function scaleLines(
  { words: { material, ...words }, figures }: Telling,
  { sheet }: Pick<Batch, 'sheet' | 'plannedGrams'>,
  { pair, scales, tooCoarse }: ToWeigh,
): readonly string[] {
  if (tooCoarse !== undefined) return [words.objection(tooCoarse, figures)];
  const { tolerancePercent } = sheet.ratio;
  const { partA, partB, holds } = pair.grams;
  if (scales === undefined) {
    const [coarsest] = commonSteps.grams;
    if (!holds) {
      const step = partA.stepGrams;
      const steps = { partAGrams: step, partBGrams: step };
      const smallest = smallestMix(mixRatio(sheet.ratio), toleranceOf(sheet), steps);
      return [material.noScaleHolds(smallest, tolerancePercent, figures)];
    }
    return partA.stepGrams === coarsest ? [] : [material.weighToStep(partA.stepGrams, tolerancePercent, figures)];
  }
  const short = [
    carries(scales.partA, partA.grams) ? undefined : scales.partA,
    carries(scales.partB, partB.grams) ? undefined : scales.partB,
  ].find((scale) => scale !== undefined);
  if (short !== undefined) return [material.noScaleCarries(short, figures)];
  return scales.partA.scale === scales.partB.scale ? [] : [material.onScales(scales.partA, scales.partB, figures)];
}
