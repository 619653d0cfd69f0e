// Dry film by ISO 19840 on rough steel: single readings, corrected for the profile, against a nominal film. For 40
// micrometres and more; a thinner film needs the job's own rule.

import { type Fraction, fraction, type Micrometres, micrometres, type SquareMetres } from '../units.ts';
import { eightyPerCent, isAbove, isBelow, meanOf, refuseReadings, shareOf } from './film-readings.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** ISO 19840:2012, as its catalogue abstract gives the scope. */
export const thinnestNominal: Micrometres = micrometres(40);

/** How the gauge was set decides whether the profile still has to come off the reading. */
export type Profile = 'gauge-set-on-profile' | 'fine' | 'medium' | 'coarse' | 'not-known';

/** ISO 19840, from memory: taken off each reading of a gauge that was set on smooth plate. */
const profileCorrections: Readonly<Record<Profile, number>> = {
  'gauge-set-on-profile': 0,
  fine: 10,
  medium: 25,
  coarse: 40,
  'not-known': 25,
};

/** What comes off each reading. */
export const profileOff = (profile: Profile): Micrometres => micrometres(profileCorrections[profile]);

/** The reading less the profile. */
export function correctedReading(reading: Micrometres, profile: Profile): Result<Micrometres> {
  return refuseReadings([reading]) ?? micrometres(reading - profileOff(profile));
}

/** ISO 19840, from memory: readings for an inspection area up to so many square metres. */
const readingsUpTo: readonly { readonly squareMetres: number; readonly readings: number }[] = [
  { squareMetres: 1, readings: 5 },
  { squareMetres: 3, readings: 10 },
  { squareMetres: 10, readings: 15 },
  { squareMetres: 30, readings: 20 },
  { squareMetres: 100, readings: 30 },
];

/** How many readings an inspection area needs; above 100 m2 ten more for each further 100 m2 or part. */
export function readingsNeeded(area: SquareMetres): Result<number> {
  const refused = outOfRange('inspection area', area, 1e-6, 1e6);
  if (refused !== undefined) return refused;
  const row = readingsUpTo.find((candidate) => area <= candidate.squareMetres);
  return row === undefined ? 30 + 10 * Math.ceil((area - 100) / 100) : row.readings;
}

/** ISO 19840, from memory: so many of them may be read again. */
export const mostReadAgain: Fraction = fraction(0.2);

/** What no single reading may be below. */
export const nominalFloor = ({ nominalMicrometres }: Pick<NominalRule, 'nominalMicrometres'>): Micrometres =>
  shareOf(nominalMicrometres, eightyPerCent);

export interface NominalRule {
  readonly nominalMicrometres: Micrometres;
  /** Often three times the nominal film; the specification says. */
  readonly mostMicrometres: Micrometres;
}

export type NominalFinding =
  | { readonly what: 'too-few-readings'; readonly given: number; readonly needed: number }
  | { readonly what: 'mean-below'; readonly measuredMicrometres: Micrometres; readonly limitMicrometres: Micrometres }
  | {
      readonly what: 'reading-below';
      readonly measuredMicrometres: Micrometres;
      readonly limitMicrometres: Micrometres;
    }
  | {
      readonly what: 'reading-above';
      readonly measuredMicrometres: Micrometres;
      readonly limitMicrometres: Micrometres;
    }
  /** Readings from 80 % of nominal up to it; they must stay below a fifth of all. */
  | { readonly what: 'too-many-thin'; readonly thin: number; readonly of: number };

export interface NominalVerdict {
  readonly accepted: boolean;
  readonly meanMicrometres: Micrometres;
  readonly findings: readonly NominalFinding[];
}

/**
 * Corrected readings of an inspection area against the four rules of NEN-ISO 19840:2005 as a Dutch industry association
 * quotes them. 'Less than 20 %' is taken at its word: two thin readings of ten fail. Refuses a film below 40 um.
 */
export function judgeNominal(
  corrected: readonly Micrometres[],
  area: SquareMetres,
  rule: NominalRule,
): Result<NominalVerdict> {
  const { nominalMicrometres: nominal } = rule;
  const needed = readingsNeeded(area);
  if (typeof needed !== 'number') return needed;
  const refused = refuseRule(rule) ?? refuseReadings(corrected);
  if (refused !== undefined) return refused;
  const floor = shareOf(nominal, eightyPerCent);
  const mean = micrometres(meanOf(corrected));
  const thin = corrected.filter((reading) => isBelow(reading, nominal) && !isBelow(reading, floor)).length;
  const findings: NominalFinding[] = [];
  if (corrected.length < needed) findings.push({ what: 'too-few-readings', given: corrected.length, needed });
  if (isBelow(mean, nominal)) {
    findings.push({ what: 'mean-below', measuredMicrometres: mean, limitMicrometres: nominal });
  }
  for (const reading of corrected) {
    if (isBelow(reading, floor)) {
      findings.push({ what: 'reading-below', measuredMicrometres: reading, limitMicrometres: floor });
    }
    if (isAbove(reading, rule.mostMicrometres)) {
      findings.push({ what: 'reading-above', measuredMicrometres: reading, limitMicrometres: rule.mostMicrometres });
    }
  }
  // Whole numbers, so that one in five is one in five.
  if (thin * 5 >= corrected.length) findings.push({ what: 'too-many-thin', thin, of: corrected.length });
  return { accepted: findings.length === 0, meanMicrometres: mean, findings };
}

function refuseRule(rule: NominalRule): Refusal | undefined {
  const { nominalMicrometres: nominal, mostMicrometres: most } = rule;
  const refused = outOfRange('nominal film', nominal, 0.01, 100_000) ?? outOfRange('most film', most, nominal, 100_000);
  if (refused !== undefined) return refused;
  if (nominal >= thinnestNominal) return undefined;
  return { failed: 'does-not-apply', what: 'nominal film', given: nominal, limit: thinnestNominal };
}
