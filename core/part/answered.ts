// Readings in whose place another counts, since whoever may release said why.

import type { Entry, Fact, FactOf } from '../history.ts';
import { known } from '../known.ts';
import { filmKey, readingKey } from './failed-reading.ts';
import type { FailedReading } from './part-events.ts';

/** What is read of a part and of the coat that is on it. */
export type Reading = FactOf<'FilmRead' | 'AdhesionTested' | 'SolventRubbed' | 'FilmTested' | 'PartTemperatureRead'>;

export const isReading = (fact: Fact): fact is Reading =>
  fact.type === 'FilmRead' ||
  fact.type === 'AdhesionTested' ||
  fact.type === 'SolventRubbed' ||
  fact.type === 'FilmTested' ||
  fact.type === 'PartTemperatureRead';

export function answeredIn({ entries }: { readonly entries: readonly Entry[] }): ReadonlySet<number> {
  const answered = new Set<number>();
  for (const [i, { fact }] of entries.entries()) {
    if (fact.type !== 'FailureAnswered') continue;
    const keys = new Set(fact.failed.map(keyOf));
    for (const earlier of entries.slice(0, i)) {
      const reading = isReading(earlier.fact) ? readingOf(earlier.fact) : undefined;
      if (reading !== undefined && keys.has(keyOf(reading))) answered.add(earlier.seq);
    }
  }
  return answered;
}

/** Of a spot its own readings name it, whatever mean it came to. */
const keyOf = (reading: FailedReading): string => (reading.of === 'film' ? filmKey(reading) : readingKey(reading));

/** Without why it was tested again. */
export function testRead({ type: _, retest: _why, ...reading }: FactOf<'FilmTested'>) {
  return reading;
}

/** As it would be named if it failed; of a temperature that is the limit's to say. */
function readingOf(fact: Reading): FailedReading | undefined {
  switch (fact.type) {
    case 'FilmRead':
      return fact.state === 'dry'
        ? { of: 'film', micrometres: fact.micrometres, ...known({ set: fact.set, spot: fact.spot }) }
        : { of: 'wet', micrometres: fact.micrometres };
    case 'AdhesionTested':
      return { of: 'adhesion', rating: fact.rating, ...known({ coupon: fact.coupon }) };
    case 'SolventRubbed':
      return fact.result === 'through'
        ? { of: 'rub', doubleRubs: fact.doubleRubs, ...known({ coupon: fact.coupon }) }
        : undefined;
    case 'FilmTested':
      return testRead(fact);
    case 'PartTemperatureRead':
      return undefined;
  }
}
