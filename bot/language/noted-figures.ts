// Figures that are noted with an act, as they are told: by their slot's label, in the units of whoever reads.

import type { Fact } from '../../core/history.ts';
import {
  celsius,
  grams,
  litres,
  metresPerSecond,
  micrometres,
  millimetres,
  minutes,
  squareMetres,
} from '../../core/units.ts';
import { type Noted, notedIn } from '../../core/verbs/noted.ts';
import type { Figures } from './figures.ts';
import type { Slot } from './slots.ts';

type Labels = Readonly<Record<Slot, string>>;

/** What happened, with what was noted of it. */
export function withNoted(said: string, fact: Fact, f: Figures, labels: Labels): string {
  return [said, ...notedIn(fact).map((noted) => `${labels[noted.slot.name]} ${notedFigure(noted, f)}`)].join(', ');
}

export function notedFigure({ slot: { unit }, value }: Noted, f: Figures): string {
  switch (unit) {
    case 'g':
      return f.mass(grams(value));
    case 'L':
      return f.volume(litres(value));
    case 'C':
      return f.temperature(celsius(value));
    case '%':
      return f.percent(value);
    case 'mm':
      return f.wall(millimetres(value));
    case 'm2':
      return f.area(squareMetres(value));
    case 'um':
      return f.film(micrometres(value));
    case 'min':
      return f.minutesUp(minutes(value));
    case 'm/s':
      return f.speed(metresPerSecond(value));
    case 'mg/m2':
      return `${f.decimal(value)} mg/m²`;
    case undefined:
      return f.count(value);
    default: {
      const never: never = unit;
      return never;
    }
  }
}
