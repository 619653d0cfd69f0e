// Dry film by SSPC-PA 2: gauge readings make a spot, spots make an area; and how far each may stray at the five levels
// of restriction.

import { isFailed } from '../failed.ts';
import { type Micrometres, micrometres } from '../units.ts';
import { leastReadingsOfSpot, spotsOfArea } from './film-count.ts';
import { isAbove, isBelow, meanOf, refuseReadings } from './film-readings.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** The spot's value: the mean of its readings; refuses fewer than three. */
export function spotMeasurement(readings: readonly Micrometres[]): Result<Micrometres> {
  if (readings.length < leastReadingsOfSpot) {
    return {
      failed: 'does-not-apply',
      what: 'readings of a spot',
      given: readings.length,
      limit: leastReadingsOfSpot,
    };
  }
  return refuseReadings(readings) ?? micrometres(meanOf(readings));
}

export type RestrictionLevel = 1 | 2 | 3 | 4 | 5;

export interface FilmRange {
  readonly leastMicrometres: Micrometres;
  readonly mostMicrometres: Micrometres;
}

interface LevelShares {
  /** Of the specified least film. */
  readonly spotLeast: number;
  /** Of the specified most film; infinite where unrestricted. */
  readonly spotMost: number;
  readonly areaMost: number;
}

/**
 * Level 3, the classic rule, and the strictness of level 1 were read in training slides and a newsletter of the
 * standard's publisher; 2, 4 and 5 are from memory, 4 uncertain. An area's mean is never below the least film.
 */
const levelShares: Readonly<Record<RestrictionLevel, LevelShares>> = {
  1: { spotLeast: 1, spotMost: 1, areaMost: 1 },
  2: { spotLeast: 1, spotMost: 1.2, areaMost: 1 },
  3: { spotLeast: 0.8, spotMost: 1.2, areaMost: 1 },
  4: { spotLeast: 0.8, spotMost: 1.5, areaMost: 1 },
  5: { spotLeast: 0.8, spotMost: Number.POSITIVE_INFINITY, areaMost: Number.POSITIVE_INFINITY },
};

export interface FilmLimits {
  readonly spotLeastMicrometres: Micrometres;
  /** `undefined`: unrestricted. */
  readonly spotMostMicrometres: Micrometres | undefined;
  readonly areaLeastMicrometres: Micrometres;
  readonly areaMostMicrometres: Micrometres | undefined;
}

export function filmLimits(range: FilmRange, level: RestrictionLevel): Result<FilmLimits> {
  const shares = levelShares[level];
  const most = (share: number) => (Number.isFinite(share) ? micrometres(range.mostMicrometres * share) : undefined);
  return (
    refuseRange(range) ?? {
      spotLeastMicrometres: micrometres(range.leastMicrometres * shares.spotLeast),
      spotMostMicrometres: most(shares.spotMost),
      areaLeastMicrometres: range.leastMicrometres,
      areaMostMicrometres: most(shares.areaMost),
    }
  );
}

export interface AreaFinding {
  readonly what: 'spot-below' | 'spot-above' | 'area-below' | 'area-above';
  readonly measuredMicrometres: Micrometres;
  readonly limitMicrometres: Micrometres;
}

export interface AreaVerdict {
  readonly accepted: boolean;
  readonly meanMicrometres: Micrometres;
  readonly findings: readonly AreaFinding[];
}

/** One area's five spots (or more) against the range; refuses fewer. All areas must be accepted for the whole. */
export function judgeArea(
  spots: readonly Micrometres[],
  range: FilmRange,
  level: RestrictionLevel,
): Result<AreaVerdict> {
  if (spots.length < spotsOfArea) {
    return { failed: 'does-not-apply', what: 'spots of an area', given: spots.length, limit: spotsOfArea };
  }
  const limits = filmLimits(range, level);
  if (isFailed(limits)) return limits;
  const refused = refuseReadings(spots);
  if (refused !== undefined) return refused;
  const mean = micrometres(meanOf(spots));
  const findings = [
    ...spots.flatMap((spot) => against('spot', spot, limits.spotLeastMicrometres, limits.spotMostMicrometres)),
    ...against('area', mean, limits.areaLeastMicrometres, limits.areaMostMicrometres),
  ];
  return { accepted: findings.length === 0, meanMicrometres: mean, findings };
}

function against(
  what: 'spot' | 'area',
  measuredMicrometres: Micrometres,
  least: Micrometres,
  most: Micrometres | undefined,
): readonly AreaFinding[] {
  if (isBelow(measuredMicrometres, least)) {
    return [{ what: `${what}-below`, measuredMicrometres, limitMicrometres: least }];
  }
  if (most !== undefined && isAbove(measuredMicrometres, most)) {
    return [{ what: `${what}-above`, measuredMicrometres, limitMicrometres: most }];
  }
  return [];
}

export function refuseRange(range: FilmRange): Refusal | undefined {
  return (
    outOfRange('least film', range.leastMicrometres, 0.01, 100_000) ??
    outOfRange('most film', range.mostMicrometres, range.leastMicrometres, 100_000)
  );
}
