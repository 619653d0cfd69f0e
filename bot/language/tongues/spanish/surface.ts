// Cómo se preparó una superficie: su grado, lo que se quitó y con qué.

import type { ReleaseLimits, SurfaceLimits } from '../../../../core/crew/job-limits.ts';
import type { PrepWay } from '../../../../core/grades.ts';
import type { SurfaceAsked } from '../../../../core/part/surface-limits.ts';
import type { PatchTold } from '../../../../core/patch-test.ts';
import type { Figures } from '../../figures.ts';
import { gradeNames } from '../english/steel.ts';
import type { SurfaceWords } from '../english/surface.ts';
import { capital, spanishSolvents } from './names.ts';
import { spanishReleaseLimits } from './release.ts';
import type { Spoken } from './spoken.ts';
import { asker, grades } from './steel.ts';

const contaminants: SurfaceWords['contaminants'] = {
  grease: ['aceite', 'grasa'],
  dust: ['polvo'],
  rust: ['óxido'],
  'old-coat': ['pintura vieja'],
};

const ways: Readonly<Record<PrepWay, string>> = {
  blasting: 'chorreada',
  grinding: 'amolada',
  sanding: 'lijada',
  wiping: 'limpiada con paño',
};

/** What a job asks for. */
export function spanishSurfaceLimits(
  say: Spoken,
  { grades: asked, profile, ...most }: SurfaceLimits & ReleaseLimits,
  figures: Figures,
) {
  const { mostSaltsMilligramsPerSquareMetre: salts, mostDustRating: dust, mostDustSize: size, waterBreak } = most;
  const limits = [
    asked === undefined ? '' : grades(asked),
    profile === undefined
      ? ''
      : `${say.one('profile')} de ${figures.film(profile.leastMicrometres)} a ${figures.film(profile.mostMicrometres)}`,
    salts === undefined ? '' : `sales como mucho ${figures.salts(salts)}`,
    dust === undefined ? '' : `polvo como mucho ${figures.count(dust)}`,
    size === undefined ? '' : `polvo de tamaño ${figures.count(size)} como mucho`,
    waterBreak === undefined ? '' : 'ensayo de rotura de agua',
    ...spanishReleaseLimits(say, most, figures),
  ].filter((text) => text !== '');
  return limits.length === 0 ? 'nada más' : limits.join(', ');
}

/** What is asked of a surface, and by whom. */
export const spanishSurfaceAsked = (say: Spoken, { by, limits }: SurfaceAsked, figures: Figures): string =>
  `${capital(asker(say, by))} pide ${spanishSurfaceLimits(say, limits, figures)}`;

/** What a patch test comes to, with its sum. */
function spanishPatchTest({ conductivity, water, patch, constant, salts }: PatchTold, figures: Figures): string {
  const sum = `${figures.count(constant)} × ${figures.syringe(water)} × ${figures.conductivity(conductivity)} ÷ ${figures.decimal(patch)} cm²`;
  return `Sales: ${sum} = ${figures.salts(salts)}, ${figures.saltsPerSquareCentimetre(salts)} (ISO 8502-9), descontada antes la conductividad propia del agua. ¿Otra cantidad de agua en el parche? Dígala con la lectura: extracto 15mL.`;
}

export const spanishSurface: Omit<SurfaceWords, 'limits' | 'breach' | 'asked' | 'figureNames'> = {
  contaminants,
  patchTest: spanishPatchTest,
  toRemove: (what, sheet, figures) =>
    `Antes de su capa, según ${sheet}, sin ${figures.list(what.flatMap((each) => contaminants[each]))}.`,
  offToo: (what, sheet, figures) =>
    `¿Sin ${figures.list(what.flatMap((each) => contaminants[each]))} también? ${sheet} lo pide.`,
  offTooTap: (what, figures) => `Sin ${figures.list(what.flatMap((each) => contaminants[each]))} también`,
  onPaper: (how, missing, figures) =>
    `Superficie: ${[how, missing.length === 0 ? '' : `sin dato: ${figures.list(missing)}`].filter((text) => text !== '').join('; ')}`,
  notGiven: 'sin dato',
  preparation: ({ grade, removed = [], solvents = [], prepWays = [], grit, salts, waterBreak }, figures) =>
    [
      grade === undefined ? '' : gradeNames[grade],
      removed.length === 0 ? '' : `sin ${figures.list(removed.flatMap((each) => contaminants[each]))}`,
      prepWays.length === 0 ? '' : figures.list(prepWays.map((each) => ways[each])),
      grit === undefined ? '' : grit.toUpperCase(),
      solvents.length === 0 ? '' : `con ${figures.list(solvents.map((each) => spanishSolvents[each]))}`,
      salts === undefined ? '' : `sales ${figures.salts(salts)}`,
      waterBreak === undefined ? '' : waterBreak === 'held' ? 'el agua aguanta' : 'el agua se rompe',
    ]
      .filter((text) => text !== '')
      .join(', '),
};
