// The day's material, as lines and figures of the day's card.

import type { DayMaterial } from '../../core/records/day-material.ts';
import { type Grams, grams } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf } from './facts.ts';
import { filterLines } from './step-lines.ts';
import { gasAfterWords } from './trace-cards.ts';

export function dayMaterialFacts(telling: Telling, { cans, pots }: DayMaterial): readonly CardFact[] {
  const total = (masses: readonly number[]) => grams(masses.reduce((sum, mass) => sum + mass, 0));
  const positive = (mass: Grams) => (mass > 0 ? mass : undefined);
  return factsOf(telling, {
    cans: cans.length === 0 ? undefined : cans.length,
    'mixed-total': pots.length === 0 ? undefined : total(pots.map(({ mixedGrams }) => mixedGrams)),
    'caught-total': positive(total(pots.map(({ caughtGrams }) => caughtGrams))),
    'left-over-total': positive(total(pots.map(({ leftOverGrams }) => leftOverGrams ?? 0))),
  });
}

export function dayMaterialLines(telling: Telling, { cans, pots }: DayMaterial): readonly string[] {
  const { material } = telling.words;
  return [
    ...cans.map(({ can, pouredGrams, leftGrams, gas }) =>
      [
        material.dayCan(can.number, can.component, can.lot, pouredGrams, leftGrams, telling.figures),
        ...gasAfterWords(telling, gas),
      ].join(', '),
    ),
    ...pots.flatMap(({ batch, uncoveredMinutes, ...pot }) => [
      ...batch.additions.map((added) => material.dayAdded(batch.number, added.grams, added.component, telling.figures)),
      ...(uncoveredMinutes >= 1 ? [material.dayUncovered(batch.number, uncoveredMinutes, telling.figures)] : []),
      ...filterLines(telling, batch, batch.number),
      ...(pot.caughtGrams > 0 || (pot.leftOverGrams ?? 0) > 0
        ? [material.dayYield(batch.number, pot, telling.figures)]
        : []),
    ]),
  ];
}
