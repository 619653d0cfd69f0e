// What to weigh of each part, on which scale, why a scale will not do, and what so much in one pot does to its life, in English.

import {
  endOf,
  type InBothUnits,
  type PairShown,
  partOf,
  type RangeShown,
  type Shown,
} from '../../../../core/calc/weighable.ts';
import type { MaterialObjection } from '../../../../core/can/can-objections.ts';
import type { Component } from '../../../../core/components.ts';
import type { Scale } from '../../../../core/crew/scales.ts';
import { usualScale } from '../../../../core/setting-kinds.ts';
import type { EpochMs, Grams, Minutes } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';

export const englishComponents: Readonly<Record<Component, string>> = { 'part-a': 'Part A', 'part-b': 'Part B' };

const theScale = (name: string): string => (name === usualScale ? 'The scale' : `The scale ${name}`);

export const englishWeighing = {
  nextB: (pour: InBothUnits<RangeShown>, figures: Figures) =>
    `Next: Part B, ${figures.toWeigh(endOf(pour, 'exact'))}; from ${figures.toWeigh(endOf(pour, 'least'))} to ${figures.toWeigh(endOf(pour, 'most'))} will do. Its contact with A starts the clocks.`,
  scaleSet: (scale: string, step: Grams, most: Grams | undefined, figures: Figures) =>
    `${scale === usualScale ? '' : `${scale}: `}${figures.scaleStep(step)}${most === undefined ? '' : `, up to ${figures.mass(most)}`}`,
  onScales: (a: Scale, b: Scale, figures: Figures) =>
    `Part A on ${a.scale} (${figures.scaleStep(a.stepGrams)}), Part B on ${b.scale} (${figures.scaleStep(b.stepGrams)}). The vessel's own weight is not reckoned.`,
  weighToStep: (step: Grams, tolerancePercent: number, figures: Figures) =>
    `So little wants a scale that shows ${figures.scaleStep(step)} (of the usual steps: common practice): a coarser one does not keep to the sheet's ${figures.percent(tolerancePercent, 1)}.`,
  noScaleHolds: (smallest: Grams, tolerancePercent: number, figures: Figures) =>
    `No usual scale weighs so little within the sheet's ${figures.percent(tolerancePercent, 1)}. The least that one does: ${figures.asRead(smallest)}.`,
  noScaleCarries: (scale: Scale, figures: Figures) =>
    `No scale here carries that: weigh it in portions. ${theScale(scale.scale)} takes ${figures.mass(scale.mostGrams ?? scale.stepGrams)}.`,
  coarseForIt: (scale: Scale, figures: Figures) =>
    `${theScale(scale.scale)} shows ${figures.scaleStep(scale.stepGrams)}: too coarse for that. Take a finer one.`,
  planBatch: (n: number, total: Grams, pair: InBothUnits<PairShown>, figures: Figures) =>
    `Batch ${n}: mix ${figures.mass(total)}: A ${figures.toWeigh(partOf(pair, 'partA'))}, B ${figures.toWeigh(partOf(pair, 'partB'))}`,
  repairAdd: (amount: InBothUnits<Shown>, component: Component, until: EpochMs, figures: Figures) =>
    `To bring it back: add ${figures.toWeigh(amount)} of ${englishComponents[component]}, until ${figures.timeDown(until)}. Stirring starts again for the whole, pot life does not.`,
  repairNoRoom: 'No repair in this vessel: ask a lead. This mix is waste, unless a bigger vessel takes it.',
  repairRoomUnknown: (needed: Grams, figures: Figures) =>
    `The sheet gives no densities: look whether the vessel holds ${figures.mass(needed)}, with room to stir.`,
  potLifeByMass: (percent: number, figures: Figures) =>
    `So much in one pot: the sheet gives it ${figures.percent(percent)} of the usual pot life.`,
  potLifeAhead: (life: Minutes, isAirKnown: boolean, figures: Figures) =>
    `Once B is in, such a pot lives ${figures.minutesDown(life)}${isAirKnown ? ' in this air' : ' at worst: no air is read'}.`,
  potLifeTested: (tested: Grams, figures: Figures) =>
    `The sheet's pot life is for ${figures.mass(tested)}. A bigger pot lives shorter; the sheet gives no figure.`,
  potLifeBeyondMass: 'More than the sheet speaks of: its shortest pot life stands.',
};

export type ScaleTooCoarse = Extract<MaterialObjection, { code: 'scale-too-coarse' }>;

export const englishScaleTooCoarse = (objection: ScaleTooCoarse, figures: Figures): string =>
  `${theScale(objection.scale)} shows ${figures.scaleStep(objection.stepGrams)}: too coarse for so little, within the sheet's ${figures.percent(objection.tolerancePercent, 1)}.${objection.smallestGrams === undefined ? ' Take a finer one.' : ` The smallest mix that it weighs: ${figures.asRead(objection.smallestGrams)}.`}`;
