// Cross-cut adhesion: the share of the lattice that came away, as a rating on the two usual scales. They disagree at
// exactly five per cent, and run opposite ways.

import type { Percent } from '../units.ts';
import { outOfRange, type Result } from './refusal.ts';

export type AstmRating = '5B' | '4B' | '3B' | '2B' | '1B' | '0B';
export type IsoRating = 0 | 1 | 2 | 3 | 4 | 5;

/** ASTM D3359 method B: 4B is less than 5 % removed, 0B more than 65 %; a shared end takes the worse rating. */
export function astmCrossCut(removed: Percent): Result<AstmRating> {
  const refused = outOfRange('area removed', removed, 0, 100);
  if (refused !== undefined) return refused;
  if (removed === 0) return '5B';
  if (removed < 5) return '4B';
  if (removed < 15) return '3B';
  if (removed < 35) return '2B';
  return removed <= 65 ? '1B' : '0B';
}

/** ISO 2409: class 1 is not more than 5 %; a shared end belongs to the better class, as its words have it. */
export function isoCrossCut(removed: Percent): Result<IsoRating> {
  const refused = outOfRange('area removed', removed, 0, 100);
  if (refused !== undefined) return refused;
  if (removed === 0) return 0;
  if (removed <= 5) return 1;
  if (removed <= 15) return 2;
  if (removed <= 35) return 3;
  return removed <= 65 ? 4 : 5;
}

/** From 0, where nothing came away, to 5: the two digits of a pair make five. */
export const adhesionClass = (rating: AstmRating | `${IsoRating}`): number =>
  rating.endsWith('B') ? 5 - Number(rating.slice(0, -1)) : Number(rating);

/**
 * Whether a rating is below the usual cut: 2B and worse, 3 and worse on ISO 2409.
 * Common practice, no source: neither standard says what is acceptable.
 */
export const crossCutFails = (rating: AstmRating | `${IsoRating}`): boolean => adhesionClass(rating) > 2;
