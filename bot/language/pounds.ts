// A mass in pounds and ounces: 2 lb 10.3 oz.

import { type Grams, ouncesFromGrams } from '../../core/units.ts';
import type { NumberFormat } from './number-formats.ts';

/** Of less than a pound finer than a tenth. */
export const ounceDigitsOf = (mass: Grams): number =>
  ouncesFromGrams(mass) >= 16 ? 1 : ouncesFromGrams(mass) >= 1 ? 2 : 3;

export function poundsAndOunces(mass: Grams, digits: number, number: (digits: number) => NumberFormat): string {
  const inOunce = 10 ** digits;
  const whole = Math.round(ouncesFromGrams(mass) * inOunce);
  const pounds = Math.trunc(whole / (16 * inOunce));
  const ounces = whole - pounds * 16 * inOunce;
  const parts = [...(pounds === 0 ? [] : [`${pounds} lb`]), `${number(digits).format(ounces / inOunce)} oz`];
  return (ounces === 0 && pounds > 0 ? parts.slice(0, 1) : parts).join(' ');
}
