// How fast air must move into a spray booth: 29 CFR 1910.94 Table G-10, and the fire rule of 1910.107(b)(5) beside it.

import { type MetresPerSecond, metresPerSecond, metresPerSecondFromFeetPerMinute } from '../units.ts';
import { isRefused, outOfRange, type Result } from './refusal.ts';

/** Electrostatic and automatic airless with nobody inside, or any gun that air drives. */
export type SprayOperation = 'electrostatic' | 'air-operated';
export type BoothSize = 'large' | 'small';

export interface FaceVelocity {
  readonly design: MetresPerSecond;
  readonly lowest: MetresPerSecond;
  readonly highest: MetresPerSecond;
}

const feetPerMinute = metresPerSecondFromFeetPerMinute;

const row = (design: number, lowest: number, highest: number): FaceVelocity => ({
  design: feetPerMinute(design),
  lowest: feetPerMinute(lowest),
  highest: feetPerMinute(highest),
});

/** Cross-drafts up to so much; above 100 ft/min they should not be permitted (note 2 of the table). */
const still = feetPerMinute(0);
const draughty = feetPerMinute(50);
const draughtiest = feetPerMinute(100);

const electrostatic = { large: row(50, 50, 75), small: row(100, 75, 125) } as const;
const airOperated = { large: row(100, 75, 125), small: row(150, 125, 175) } as const;
const airOperatedInDraught = { large: row(150, 125, 175), small: row(200, 150, 250) } as const;

/** Design velocity and accepted range. Refuses a cross-draft that the table does not cover. */
export function faceVelocity(
  operation: SprayOperation,
  size: BoothSize,
  crossDraft: MetresPerSecond,
): Result<FaceVelocity> {
  switch (operation) {
    case 'electrostatic':
      return outOfRange('cross-draft', crossDraft, 0, still) ?? electrostatic[size];
    case 'air-operated': {
      const refusal = outOfRange('cross-draft', crossDraft, 0, draughtiest);
      return refusal ?? (crossDraft > draughty ? airOperatedInDraught : airOperated)[size];
    }
    default: {
      const missing: never = operation;
      throw new RangeError(`no such spray operation: ${missing}`);
    }
  }
}

/** Least average velocity over an open face, 1910.107(b)(5)(i). */
export const leastFaceVelocity = {
  electrostatic: feetPerMinute(60),
  'air-operated': feetPerMinute(100),
} as const satisfies Record<SprayOperation, MetresPerSecond>;

/** What a measured velocity must reach: the higher of the table's lower end and the fire rule's least. */
export function requiredFaceVelocity(
  operation: SprayOperation,
  size: BoothSize,
  crossDraft: MetresPerSecond,
): Result<MetresPerSecond> {
  const tabled = faceVelocity(operation, size, crossDraft);
  if (isRefused(tabled)) return tabled;
  const least = leastFaceVelocity[operation];
  return metresPerSecond(Math.max(tabled.lowest, least));
}

/** No open flame or spark within this distance of spraying unless partitioned off: 20 ft, 1910.107(c)(2). */
export const ignitionClearanceFeet = 20;
