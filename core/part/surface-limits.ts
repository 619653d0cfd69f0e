// What is asked of a part's steel before its coat, by the sheet and by the job that the part came in under, and what was
// measured outside it. Both hold: a job that asks for less lifts nothing of the sheet.

import type { Crew } from '../crew/crew.ts';
import { jobLimits, type SurfaceLimits } from '../crew/job-limits.ts';
import { isAsClean, type SurfaceGrade } from '../grades.ts';
import { known } from '../known.ts';
import type { Sheet } from '../products/sheet.ts';
import type { EpochMs, Micrometres, MilligramsPerSquareMetre } from '../units.ts';
import type { Part, Prepared } from './part.ts';

export type SurfaceAsker =
  | { readonly is: 'sheet'; readonly name: Sheet['name'] }
  | { readonly is: 'job'; readonly job: string };

export interface SurfaceAsked {
  readonly by: SurfaceAsker;
  readonly limits: SurfaceLimits;
}

export type SurfaceBreach = { readonly by: SurfaceAsker } & (
  | { readonly of: 'grade'; readonly grade: SurfaceGrade; readonly asked: readonly SurfaceGrade[] }
  | {
      readonly of: 'profile';
      readonly micrometres: Micrometres;
      readonly leastMicrometres: Micrometres;
      readonly mostMicrometres: Micrometres;
    }
  | {
      readonly of: 'salts';
      readonly milligramsPerSquareMetre: MilligramsPerSquareMetre;
      readonly mostMilligramsPerSquareMetre: MilligramsPerSquareMetre;
    }
  | { readonly of: 'dust'; readonly rating: number; readonly mostRating: number }
  | { readonly of: 'dust-size'; readonly size: number; readonly mostSize: number }
  /** Water broke on it. */
  | { readonly of: 'water-break' }
);

/** All that is asked of it at that time. */
export function surfaceAsked(
  { crew }: { readonly crew: Pick<Crew, 'entries'> },
  part: Part | undefined,
  sheet: Sheet,
  at: EpochMs,
): readonly SurfaceAsked[] {
  const { job } = part?.details ?? {};
  const limits = jobLimits(crew, job, at);
  const all: readonly SurfaceAsked[] = [
    askedBySheet(sheet),
    ...(job === undefined || limits === undefined
      ? []
      : [{ by: { is: 'job', job }, limits: ofSteel(limits) } as const]),
  ];
  return all.filter(({ limits }) => figuresAsked(limits).length > 0);
}

/** A job asks of the steel and of the coated part in one line. */
const ofSteel = ({
  grades,
  profile,
  mostSaltsMilligramsPerSquareMetre,
  mostDustRating,
  mostDustSize,
  waterBreak,
}: SurfaceLimits): SurfaceLimits =>
  known({ grades, profile, mostSaltsMilligramsPerSquareMetre, mostDustRating, mostDustSize, waterBreak });

export type SurfaceFigure = SurfaceBreach['of'];

/** Of which figures something is asked. */
export function figuresAsked(limits: SurfaceLimits): readonly SurfaceFigure[] {
  return [
    ...(limits.grades === undefined ? [] : ['grade' as const]),
    ...(limits.profile === undefined ? [] : ['profile' as const]),
    ...(limits.mostSaltsMilligramsPerSquareMetre === undefined ? [] : ['salts' as const]),
    ...(limits.mostDustRating === undefined ? [] : ['dust' as const]),
    ...(limits.mostDustSize === undefined ? [] : ['dust-size' as const]),
    ...(limits.waterBreak === undefined ? [] : ['water-break' as const]),
  ];
}

/** Whether anybody told it. */
export function isGiven(prepared: Prepared | undefined, figure: SurfaceFigure): boolean {
  switch (figure) {
    case 'grade':
      return prepared?.grade !== undefined;
    case 'profile':
      return prepared?.profileMicrometres !== undefined;
    case 'salts':
      return prepared?.saltsMilligramsPerSquareMetre !== undefined;
    case 'dust':
      return prepared?.dustRating !== undefined;
    case 'dust-size':
      return prepared?.dustSize !== undefined || prepared?.dustRating === 0;
    case 'water-break':
      return prepared?.waterBreak !== undefined;
  }
}

function askedBySheet({ name, surface }: Pick<Sheet, 'name' | 'surface'>): SurfaceAsked {
  const { grade, profile, salts, dust } = surface ?? {};
  return {
    by: { is: 'sheet', name },
    limits: known({
      grades: grade?.anyOf,
      profile,
      mostSaltsMilligramsPerSquareMetre: salts?.mostMilligramsPerSquareMetre,
      mostDustRating: dust?.mostRating,
    }),
  };
}

/** What was not measured breaks nothing. */
export function surfaceBreaches(
  asked: readonly SurfaceAsked[],
  prepared: Prepared | undefined,
): readonly SurfaceBreach[] {
  return prepared === undefined ? [] : asked.flatMap((each) => breachesOf(each, prepared));
}

function breachesOf({ by, limits }: SurfaceAsked, prepared: Prepared): readonly SurfaceBreach[] {
  const { grade, profileMicrometres: micrometres, saltsMilligramsPerSquareMetre: salts, dustRating: rating } = prepared;
  const { dustSize: size } = prepared;
  const { grades: asked, profile, mostSaltsMilligramsPerSquareMetre: mostSalts, mostDustRating: mostRating } = limits;
  const { mostDustSize: mostSize } = limits;
  const isIn = (read: Micrometres, { leastMicrometres, mostMicrometres }: NonNullable<typeof profile>): boolean =>
    read >= leastMicrometres && read <= mostMicrometres;
  return [
    ...(grade === undefined || asked === undefined || asked.some((each) => isAsClean(grade, each))
      ? []
      : [{ by, of: 'grade', grade, asked } as const]),
    ...(micrometres === undefined || profile === undefined || isIn(micrometres, profile)
      ? []
      : [{ by, of: 'profile', micrometres, ...profile } as const]),
    ...(salts === undefined || mostSalts === undefined || salts <= mostSalts
      ? []
      : [{ by, of: 'salts', milligramsPerSquareMetre: salts, mostMilligramsPerSquareMetre: mostSalts } as const]),
    ...(rating === undefined || mostRating === undefined || rating <= mostRating
      ? []
      : [{ by, of: 'dust', rating, mostRating } as const]),
    ...(size === undefined || mostSize === undefined || size <= mostSize
      ? []
      : [{ by, of: 'dust-size', size, mostSize } as const]),
    ...(limits.waterBreak === true && prepared.waterBreak === 'broke' ? [{ by, of: 'water-break' } as const] : []),
  ];
}
