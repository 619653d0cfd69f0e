// What was noted with an act, as facts of its card: each by its slot's label, where the card has not told it already.

import type { Recorded } from '../../core/execute.ts';
import { isOwnKey } from '../../core/own-key.ts';
import { notedIn } from '../../core/verbs/noted.ts';
import { firstUpper } from '../language/first-upper.ts';
import { notedFigure } from '../language/noted-figures.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';

export function notedFacts(telling: Telling, { envelopes }: Recorded, told: readonly CardFact[]): readonly CardFact[] {
  const facts = envelopes
    .flatMap(({ body }) => notedIn(body))
    .map((noted): CardFact => {
      const { name, unit } = noted.slot;
      const label = isOwnKey(telling.words.facts, name)
        ? telling.words.facts[name]
        : firstUpper(telling.words.slots[name]);
      return {
        id: name,
        label,
        value: noted.value,
        unit: unit === 'C' ? 'degC' : (unit ?? 'count'),
        shown: notedFigure(noted, telling.figures),
      };
    });
  return [...new Map(facts.map((fact) => [fact.id, fact])).values()].filter(
    ({ id }) => !told.some((fact) => fact.id === id),
  );
}
