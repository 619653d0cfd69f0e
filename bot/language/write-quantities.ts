// Figures as the reader takes them back without a doubt: no exponent, never three digits after a point where a
// thousands mark could be meant.

import { gramsFromKilograms } from '../../core/units.ts';
import type { AirSaid, Amount } from '../../core/verbs/said.ts';
import { numberedEvery } from './gauge/column-numbers.ts';

const couldBeThousands = /^-?[1-9]\d{0,2}\.\d{3}$/;

export function written(value: number, unit: string): string {
  const plain = String(value);
  const text = plain.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : plain;
  return `${couldBeThousands.test(text) ? `${text}0` : text}${unit}`;
}

export function writeAmount(amount: Amount): string {
  if (amount.kind === 'volume') return written(amount.litres, 'L');
  const kilograms = amount.grams / 1000;
  return kilograms >= 1 && gramsFromKilograms(kilograms) === amount.grams
    ? written(kilograms, 'kg')
    : written(amount.grams, 'g');
}

export function writeAir(air: AirSaid | undefined): readonly string[] {
  if (air === undefined) return [];
  const { celsius, relativeHumidityPercent } = air;
  return [
    ...(celsius === undefined ? [] : [written(celsius, 'C')]),
    ...(relativeHumidityPercent === undefined ? [] : [written(relativeHumidityPercent, '%')]),
  ];
}

/** The last unit covers all; where some could be taken for numbers of spots, each has its own. */
export function writeFilms(films: readonly number[]): string {
  const mayNumber = numberedEvery(films) !== undefined;
  return films.map((film, i) => written(film, mayNumber || i === films.length - 1 ? 'um' : '')).join(' ');
}
