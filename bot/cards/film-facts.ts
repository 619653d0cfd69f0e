// Film readings as figures: mean, lowest, highest.

import type { Micrometres } from '../../core/units.ts';
import { micrometres } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf } from './facts.ts';

export function filmFacts(telling: Telling, readings: readonly Micrometres[]): readonly CardFact[] {
  if (readings.length === 0) return [];
  const mean = readings.reduce<number>((sum, reading) => sum + reading, 0) / readings.length;
  return factsOf(telling, {
    'film-mean': micrometres(mean),
    'film-lowest': micrometres(Math.min(...readings)),
    'film-highest': micrometres(Math.max(...readings)),
  });
}
