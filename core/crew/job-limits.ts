// What a job asks of the steel of its parts before a coat, and of the parts before their release, as it stood at a time: said later, it
// says nothing of a coat or a release before it.

import type { TestAsked } from '../film-tests.ts';
import type { AdhesionRating, SurfaceGrade } from '../grades.ts';
import type { Entry } from '../history.ts';
import type { EpochMs, Micrometres, MilligramsPerSquareMetre } from '../units.ts';

/** What is left out is not asked for. */
export interface SurfaceLimits {
  /** One of these, or a cleaner one of the same series. */
  readonly grades?: readonly SurfaceGrade[] | undefined;
  readonly profile?: { readonly leastMicrometres: Micrometres; readonly mostMicrometres: Micrometres } | undefined;
  readonly mostSaltsMilligramsPerSquareMetre?: MilligramsPerSquareMetre | undefined;
  readonly mostDustRating?: number | undefined;
  /** ISO 8502-3, how big. */
  readonly mostDustSize?: number | undefined;
  /** That water sheets on it unbroken: ASTM F22. */
  readonly waterBreak?: true | undefined;
}

/** Before a release; what is left out is not asked for. */
export interface ReleaseLimits {
  /** A dry film, by the rule of its sheet. */
  readonly film?: true | undefined;
  /** By a rule of its own, in place of the sheet's. */
  readonly filmRule?: JobFilmRule | undefined;
  /** What the gauge shows on its bare steel. */
  readonly filmBaseMicrometres?: Micrometres | undefined;
  /** Cross-cut: this or a better one. */
  readonly leastAdhesion?: AdhesionRating | undefined;
  /** That it bears. */
  readonly leastDoubleRubs?: number | undefined;
  /** One of each at most. */
  readonly tests?: readonly TestAsked[] | undefined;
  /** Of somebody who did not coat it. */
  readonly secondEyes?: true | undefined;
}

/** What it leaves out is the sheet's own figure; the count of spots in place of the one by area. */
export interface JobFilmRule {
  /** Left out, the one that its sheet names. */
  readonly rule?: 'iso-19840' | 'pa-2' | undefined;
  readonly leastMicrometres?: Micrometres | undefined;
  readonly mostMicrometres?: Micrometres | undefined;
  readonly level?: 1 | 2 | 3 | 4 | 5 | undefined;
  readonly spots?: number | undefined;
}

/** Of a part that came in under none nothing is asked. */
export function jobLimits(
  { entries }: { readonly entries: readonly Entry[] },
  job: string | undefined,
  at: EpochMs,
): (SurfaceLimits & ReleaseLimits) | undefined {
  if (job === undefined) return undefined;
  const isOfJob = ({ fact, happenedAt }: Entry): boolean =>
    fact.type === 'SettingChanged' &&
    fact.setting.name === 'job' &&
    isSameJob(fact.setting.job, job) &&
    happenedAt <= at;
  const fact = entries.findLast(isOfJob)?.fact;
  return fact?.type === 'SettingChanged' && fact.setting.name === 'job' ? fact.setting : undefined;
}

export const isSameJob = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();
