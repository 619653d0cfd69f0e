// Film readings as figures: mean, lowest, highest.

import type { Micrometres } from '../../core/units.ts';
import { micrometres } from '../../core/units.ts';
import type { CardFact } from './card.ts';
import { filmFact, type Telling } from './card-context.ts';

export function filmFacts(telling: Telling, readings: readonly Micrometres[]): readonly CardFact[] {
  if (readings.length === 0) return [];
  const mean = readings.reduce<number>((sum, reading) => sum + reading, 0) / readings.length;
  return [
    filmFact(telling, 'film-mean', micrometres(mean)),
    filmFact(telling, 'film-lowest', micrometres(Math.min(...readings))),
    filmFact(telling, 'film-highest', micrometres(Math.max(...readings))),
  ];
}
