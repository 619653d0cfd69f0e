// Figures that are noted with an act, as they are told: by their slot's label, in the units of whoever reads.

import type { Fact } from '../../core/history.ts';
import {
  celsius,
  grams,
  litres,
  megapascals,
  metresPerSecond,
  micrometres,
  microsiemensPerCentimetre,
  milligramsPerSquareMetre,
  millimetres,
  minutes,
  partsPerMillion,
  squareMetres,
} from '../../core/units.ts';
import { type Noted, notedIn } from '../../core/verbs/noted.ts';
import type { SlotRow } from '../../core/verbs/slot-row.ts';
import type { Figures } from './figures.ts';
import type { Slot } from './slots.ts';

type Labels = Readonly<Record<Slot, string>>;

/** What happened, with what was noted of it. */
export function withNoted(said: string, fact: Fact, figures: Figures, labels: Labels): string {
  return [said, ...notedIn(fact).map((noted) => `${labels[noted.slot.name]} ${notedFigure(noted, figures)}`)].join(
    ', ',
  );
}

export const notedFigure = ({ slot: { unit }, value }: Noted, figures: Figures): string =>
  figureIn(unit, value, figures);

export function figureIn(unit: SlotRow['unit'], value: number, figures: Figures): string {
  switch (unit) {
    case 'g':
      return figures.mass(grams(value));
    case 'L':
      return value < 0.1 ? figures.syringe(litres(value)) : figures.volume(litres(value));
    case 'C':
      return figures.temperature(celsius(value));
    case '%':
      return figures.percent(value);
    case 'mm':
      return figures.wall(millimetres(value));
    case 'm2':
      return figures.area(squareMetres(value));
    case 'um':
      return figures.film(micrometres(value));
    case 'min':
      return figures.minutesUp(minutes(value));
    case 'm/s':
      return figures.speed(metresPerSecond(value));
    case 'mg/m3':
      return `${figures.decimal(value)} mg/m³`;
    case 'mg/m2':
      return figures.salts(milligramsPerSquareMetre(value));
    case 'uS/cm':
      return figures.conductivity(microsiemensPerCentimetre(value));
    case 'ppm':
      return figures.ppm(partsPerMillion(value));
    case 'MPa':
      return figures.pressure(megapascals(value));
    case 'GU':
      return `${figures.decimal(value)} GU`;
    case 'V':
      return `${figures.count(value)} V`;
    case 'rpm':
      return `${figures.count(value)} rpm`;
    case undefined:
      return figures.count(value);
    default: {
      const never: never = unit;
      return never;
    }
  }
}
