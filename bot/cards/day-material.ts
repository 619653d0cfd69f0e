// The day's material, as lines and figures of the day's card.

import type { DayMaterial } from '../../core/records/day-material.ts';
import { grams } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import { countFact, massFact, type Telling } from './card-context.ts';

export function dayMaterialFacts(telling: Telling, { cans, pots }: DayMaterial): readonly CardFact[] {
  const total = (masses: readonly number[]) => grams(masses.reduce((sum, mass) => sum + mass, 0));
  return [
    ...(cans.length === 0 ? [] : [countFact(telling, 'cans', cans.length)]),
    ...(pots.length === 0 ? [] : [massFact(telling, 'mixed-total', total(pots.map(({ mixedGrams }) => mixedGrams)))]),
    ...positive(telling, 'caught-total', total(pots.map(({ caughtGrams }) => caughtGrams))),
    ...positive(telling, 'left-over-total', total(pots.map(({ leftOverGrams }) => leftOverGrams))),
  ];
}

function positive(telling: Telling, id: 'caught-total' | 'left-over-total', mass: ReturnType<typeof grams>) {
  return mass > 0 ? [massFact(telling, id, mass)] : [];
}

export function dayMaterialLines(telling: Telling, { cans, pots }: DayMaterial): readonly string[] {
  const { material } = telling.words;
  return [
    ...cans.map(({ can, pouredGrams, leftGrams }) =>
      material.dayCan(can.number, can.component, can.lot, pouredGrams, leftGrams, telling.figures),
    ),
    ...pots.flatMap(({ batch, mixedGrams, caughtGrams, leftOverGrams, uncoveredMinutes }) => [
      ...batch.additions.map((added) => material.dayAdded(batch.number, added.grams, added.component, telling.figures)),
      ...(uncoveredMinutes >= 1 ? [material.dayUncovered(batch.number, uncoveredMinutes, telling.figures)] : []),
      ...(caughtGrams > 0 || leftOverGrams > 0
        ? [material.dayYield(batch.number, mixedGrams, caughtGrams, leftOverGrams, telling.figures)]
        : []),
    ]),
  ];
}
