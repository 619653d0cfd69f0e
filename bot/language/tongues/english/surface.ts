// How a surface was prepared, in English: its grade, what was taken off, with what.

import type { SolventId } from '../../../../core/calc/solvents.ts';
import type { ReleaseLimits, SurfaceLimits } from '../../../../core/crew/job-limits.ts';
import type { Contaminant, Grit, PrepWay, SurfaceGrade, WaterBreak } from '../../../../core/grades.ts';
import type { SurfaceAsked } from '../../../../core/part/surface-limits.ts';
import type { PatchTold } from '../../../../core/patch-test.ts';
import type { MilligramsPerSquareMetre } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { englishReleaseLimits } from './release.ts';
import { englishSolvents } from './solvents.ts';
import { asker, englishFigureNames, englishSurfaceBreach, gradeNames, grades } from './steel.ts';

const contaminants: Readonly<Record<Contaminant, readonly string[]>> = {
  grease: ['oil', 'grease'],
  dust: ['dust'],
  rust: ['rust'],
  'old-coat': ['the old coat'],
};

const ways: Readonly<Record<PrepWay, string>> = {
  blasting: 'blasted',
  grinding: 'ground',
  sanding: 'sanded',
  wiping: 'wiped',
};

/** What was said, of one line or of all before a coat. */
interface Preparation {
  readonly grade?: SurfaceGrade | undefined;
  readonly removed?: readonly Contaminant[] | undefined;
  readonly solvents?: readonly SolventId[] | undefined;
  readonly prepWays?: readonly PrepWay[] | undefined;
  readonly grit?: Grit | undefined;
  /** By a patch test. */
  readonly salts?: MilligramsPerSquareMetre | undefined;
  readonly waterBreak?: WaterBreak | undefined;
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

function limits({ grades: asked, profile, ...most }: SurfaceLimits & ReleaseLimits, figures: Figures): string {
  const { mostSaltsMilligramsPerSquareMetre: salts, mostDustRating: dust, mostDustSize: size, waterBreak } = most;
  const found = [
    asked === undefined ? '' : grades(asked),
    profile === undefined
      ? ''
      : `profile ${figures.film(profile.leastMicrometres)} to ${figures.film(profile.mostMicrometres)}`,
    salts === undefined ? '' : `salts at most ${figures.salts(salts)}`,
    dust === undefined ? '' : `dust at most ${figures.count(dust)}`,
    size === undefined ? '' : `dust of size ${figures.count(size)} at most`,
    waterBreak === undefined ? '' : 'water-break test',
    ...englishReleaseLimits(most, figures),
  ].filter((text) => text !== '');
  return found.length === 0 ? 'nothing more' : found.join(', ');
}

/** What a patch test comes to, with its sum. */
function patchTest({ conductivity, water, patch, constant, salts }: PatchTold, figures: Figures): string {
  const sum = `${figures.count(constant)} × ${figures.syringe(water)} × ${figures.conductivity(conductivity)} ÷ ${figures.decimal(patch)} cm²`;
  return `Salts: ${sum} = ${figures.salts(salts)}, ${figures.saltsPerSquareCentimetre(salts)} (ISO 8502-9), the water’s own conductivity taken off before. Other water on the patch? Say extract 15mL with it.`;
}

export const englishSurface = {
  patchTest,
  contaminants,
  /** What a job asks for. */
  limits,
  /** What is asked of a surface, and by whom. */
  asked: ({ by, limits: of }: SurfaceAsked, figures: Figures): string => `${asker(by)} asks for ${limits(of, figures)}`,
  /** Said before the first preparation. */
  toRemove: (what: readonly Contaminant[], sheet: string, figures: Figures): string =>
    `Before its coat, off it by ${sheet}: ${figures.list(what.flatMap((each) => contaminants[each]))}.`,
  /** Of what nobody has said to be off. */
  offToo: (what: readonly Contaminant[], sheet: string, figures: Figures): string =>
    `${capital(figures.list(what.flatMap((each) => contaminants[each])))} off too? ${sheet} asks for it.`,
  offTooTap: (what: readonly Contaminant[], figures: Figures): string =>
    `${capital(figures.list(what.flatMap((each) => contaminants[each])))} off too`,
  /** On paper: what is known of it, and of what is asked the rest. */
  onPaper: (how: string, missing: readonly string[], figures: Figures): string =>
    `Surface: ${[how, missing.length === 0 ? '' : `not given: ${figures.list(missing)}`].filter((text) => text !== '').join('; ')}`,
  /** On paper, where nobody said anything. */
  notGiven: 'not given',
  figureNames: englishFigureNames,
  breach: englishSurfaceBreach,
  /** All that was said of it. */
  preparation: (
    { grade, removed = [], solvents = [], prepWays = [], grit, salts, waterBreak }: Preparation,
    figures: Figures,
  ): string =>
    [
      grade === undefined ? '' : gradeNames[grade],
      removed.length === 0 ? '' : `${figures.list(removed.flatMap((each) => contaminants[each]))} off`,
      prepWays.length === 0 ? '' : figures.list(prepWays.map((each) => ways[each])),
      grit === undefined ? '' : grit.toUpperCase(),
      solvents.length === 0 ? '' : `with ${figures.list(solvents.map((each) => englishSolvents[each]))}`,
      salts === undefined ? '' : `salts ${figures.salts(salts)}`,
      waterBreak === undefined ? '' : `water ${waterBreak}`,
    ]
      .filter((text) => text !== '')
      .join(', '),
};
export type SurfaceWords = typeof englishSurface;
