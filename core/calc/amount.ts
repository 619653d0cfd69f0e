// Bounds for amounts that nature does not bound. No shop has a thousand million of anything, and between these ends no
// product or quotient in these sums leaves the range of a number: what lies outside is a slip, and is refused.

import { outOfRange, type Refusal } from './refusal.ts';

const largest = 1e9;
const smallest = 1e-9;

/** Refuses what is not an amount (none up to a thousand million). */
export function notAnAmount(what: string, given: number): Refusal | undefined {
  return outOfRange(what, given, 0, largest);
}

/** Refuses what is not an amount above nothing: a size to divide by. */
export function notASize(what: string, given: number): Refusal | undefined {
  return outOfRange(what, given, smallest, largest);
}

/** The first refusal that a list of things gives, item by item. */
export function firstRefusal<T>(items: readonly T[], refuse: (item: T) => Refusal | undefined): Refusal | undefined {
  for (const item of items) {
    const refusal = refuse(item);
    if (refusal !== undefined) return refusal;
  }
  return undefined;
}
