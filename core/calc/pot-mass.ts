// How a pot's life shortens with what is in the pot: a mix warms itself, and the more so the more of it there is. By the
// sheet's own points, a straight line between them. Past the last the smallest factor stands, and the answer says so.

import { type Grams, minutes } from '../units.ts';
import { refuseMass } from './density.ts';
import type { RateLaw } from './rate-law.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

export interface MassPoint {
  readonly grams: Grams;
  /** On the sheet's time: 1 leaves it as it is. */
  readonly factor: number;
}

export interface MassFactor {
  readonly factor: number;
  /** `false`: heavier than the sheet speaks of. Lighter than its first point is that point's. */
  readonly withinPoints: boolean;
}

/** The factor for so much in one pot; points in order of mass, one at least, factors not rising. */
export function potLifeFactor(points: readonly MassPoint[], mass: Grams): Result<MassFactor> {
  const refused = refuseMass('mass in the pot', mass) ?? refusePoints(points);
  if (refused !== undefined) return refused;
  const next = points.findIndex((point) => point.grams >= mass);
  const above = points[next];
  const below = points[next - 1];
  if (above === undefined) return { factor: Math.min(...points.map(({ factor }) => factor)), withinPoints: false };
  if (below === undefined) return { factor: above.factor, withinPoints: true };
  const share = (mass - below.grams) / (above.grams - below.grams);
  return { factor: below.factor + share * (above.factor - below.factor), withinPoints: true };
}

/** The same law with all its times multiplied: 0.5 halves them at every temperature. */
export function lawTimes(law: RateLaw, factor: number): RateLaw {
  if (law.kind !== 'table') return { ...law, minutes: minutes(law.minutes * factor) };
  return { ...law, points: law.points.map((point) => ({ ...point, minutes: minutes(point.minutes * factor) })) };
}

function refusePoints(points: readonly MassPoint[]): Refusal | undefined {
  if (points.length === 0) return { failed: 'no-figure', what: 'pot life by mass' };
  for (const point of points) {
    // A hundredth of the sheet's time is no pot life any more.
    const refused =
      refuseMass('point of the pot life', point.grams) ?? outOfRange('factor of the pot life', point.factor, 0.01, 1);
    if (refused !== undefined) return refused;
  }
  return undefined;
}
