// How long Part A is stirred in its own can before the pour: by quantity, a straight line between the sheet's points.
// A settled can gives a wrong portion, so past the points the longest of them stands, and the answer says so.

import { type Grams, type Minutes, minutes } from '../units.ts';
import { refuseMass } from './density.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

export interface PreStirPoint {
  readonly partAGrams: Grams;
  readonly minutes: Minutes;
}

export interface PreStir {
  readonly minutes: Minutes;
  /** `false`: the quantity lies outside the sheet's points, and this is their longest. */
  readonly withinPoints: boolean;
}

/** Minutes for so much Part A; points in any order, one at least. */
export function preStir(points: readonly PreStirPoint[], partA: Grams): Result<PreStir> {
  const refused = refuseMass('Part A', partA) ?? refusePoints(points);
  if (refused !== undefined) return refused;
  const rising = points.toSorted((one, other) => one.partAGrams - other.partAGrams);
  const next = rising.findIndex((point) => point.partAGrams >= partA);
  const above = rising[next];
  const below = rising[next - 1];
  if (above?.partAGrams === partA) return { minutes: above.minutes, withinPoints: true };
  if (above === undefined || below === undefined) {
    return { minutes: minutes(Math.max(...points.map((point) => point.minutes))), withinPoints: false };
  }
  const share = (partA - below.partAGrams) / (above.partAGrams - below.partAGrams);
  return { minutes: minutes(below.minutes + share * (above.minutes - below.minutes)), withinPoints: true };
}

/** A day of stirring by hand is no figure of any sheet. */
const longestMinutes = 24 * 60;

function refusePoints(points: readonly PreStirPoint[]): Refusal | undefined {
  if (points.length === 0) return { failed: 'no-figure', what: 'pre-stir' };
  for (const point of points) {
    const refused =
      refuseMass('point of the pre-stir', point.partAGrams) ??
      outOfRange('minutes of the pre-stir', point.minutes, 0, longestMinutes);
    if (refused !== undefined) return refused;
  }
  return undefined;
}
