// A wall as plate is sold in inches.

import { inchesFromMillimetres, type Millimetres } from '../../core/units.ts';
import type { NumberFormat } from './number-formats.ts';

/** By the fraction that plate is sold by, else by the millimetres of which it is; only what is neither has decimals. */
export function wallInches(wall: Millimetres, number: (digits: number) => NumberFormat, inch: string): string {
  const parts = inchesFromMillimetres(wall) * 32;
  const whole = Math.round(parts);
  if (whole > 0 && Math.abs(parts - whole) < 1e-6) return `${inLowestTerms(whole, 32)} ${inch}`;
  const tenths = wall * 10;
  if (Math.abs(tenths - Math.round(tenths)) < 1e-6) return `${number(1).format(wall)} mm`;
  return `${number(3).format(inchesFromMillimetres(wall))} ${inch}`;
}

/** `1 1/4`, `3/16`, `2`. */
function inLowestTerms(parts: number, of: number): string {
  if (of > 1 && parts % 2 === 0) return inLowestTerms(parts / 2, of / 2);
  const whole = Math.floor(parts / of);
  const rest = parts - whole * of;
  return [...(whole > 0 ? [`${whole}`] : []), ...(rest > 0 ? [`${rest}/${of}`] : [])].join(' ');
}
