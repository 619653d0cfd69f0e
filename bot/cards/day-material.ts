// The day's material, as lines and figures of the day's card.

import type { DayMaterial } from '../../core/records/day-material.ts';
import { grams } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import { countFact, massFact, type Telling } from './card-context.ts';

export function dayMaterialFacts(t: Telling, { cans, pots }: DayMaterial): readonly CardFact[] {
  const total = (masses: readonly number[]) => grams(masses.reduce((sum, mass) => sum + mass, 0));
  return [
    ...(cans.length === 0 ? [] : [countFact(t, 'cans', cans.length)]),
    ...(pots.length === 0 ? [] : [massFact(t, 'mixed-total', total(pots.map(({ mixedGrams }) => mixedGrams)))]),
    ...positive(t, 'caught-total', total(pots.map(({ caughtGrams }) => caughtGrams))),
    ...positive(t, 'left-over-total', total(pots.map(({ leftOverGrams }) => leftOverGrams))),
  ];
}

function positive(t: Telling, id: 'caught-total' | 'left-over-total', mass: ReturnType<typeof grams>) {
  return mass > 0 ? [massFact(t, id, mass)] : [];
}

export function dayMaterialLines(t: Telling, { cans, pots }: DayMaterial): readonly string[] {
  const { material } = t.words;
  return [
    ...cans.map(({ can, takenGrams, leftGrams }) =>
      material.dayCan(can.number, can.component, can.lot, takenGrams, leftGrams, t.f),
    ),
    ...pots.flatMap(({ batch, mixedGrams, caughtGrams, leftOverGrams, uncoveredMinutes }) => [
      ...batch.additions.map((added) => material.dayAdded(batch.number, added.grams, added.component, t.f)),
      ...(uncoveredMinutes >= 1 ? [material.dayUncovered(batch.number, uncoveredMinutes, t.f)] : []),
      ...(caughtGrams > 0 || leftOverGrams > 0
        ? [material.dayYield(batch.number, mixedGrams, caughtGrams, leftOverGrams, t.f)]
        : []),
    ]),
  ];
}
