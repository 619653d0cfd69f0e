// How much of a pot can go on before it dies, and so the most that is worth mixing. Minutes are those that are left for
// applying: stirring, induction and filtering already taken off by the caller.

import { type Litres, litres, type Minutes } from '../units.ts';
import { refuseVolume } from './density.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

export interface Pace {
  /** Square metres that the crew coats in a minute. */
  readonly squareMetresPerMinute: number;
  /** Mixed coating that leaves the pot for each of them, overspray and profile included. */
  readonly litresPerSquareMetre: number;
  /** Left in hose, gun and filter, whatever the area. */
  readonly gearLitres: Litres;
}

/** The most to mix: what the usable minutes allow to be applied, and what stays in the gear. */
export function mostWorthMixing(usable: Minutes, pace: Pace): Result<Litres> {
  const refused = refuseMinutes(usable) ?? refusePace(pace);
  if (refused !== undefined) return refused;
  if (usable <= 0) return litres(0);
  return litres(usable * pace.squareMetresPerMinute * pace.litresPerSquareMetre + pace.gearLitres);
}

/** Overdrawn by a year or lasting a year: no pot. */
function refuseMinutes(usable: Minutes): Refusal | undefined {
  return outOfRange('usable minutes', usable, -366 * 24 * 60, 366 * 24 * 60);
}

function refusePace(pace: Pace): Refusal | undefined {
  return (
    outOfRange('square metres a minute', pace.squareMetresPerMinute, 1e-6, 1000) ??
    outOfRange('litres a square metre', pace.litresPerSquareMetre, 1e-6, 100) ??
    refuseVolume('gear', pace.gearLitres)
  );
}
