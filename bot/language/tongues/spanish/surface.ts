// Cómo se preparó una superficie: su grado, lo que se quitó y con qué.

import type { PrepWay } from '../../../../core/grades.ts';
import { gradeNames, type SurfaceWords } from '../english/surface.ts';
import { spanishSolvents } from './names.ts';

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

export const spanishSurface: SurfaceWords = {
  contaminants,
  preparation: ({ grade, removed = [], solvents = [], prepWays = [], grit }, figures) =>
    [
      grade === undefined ? '' : gradeNames[grade],
      removed.length === 0 ? '' : `sin ${figures.list(removed.flatMap((each) => contaminants[each]))}`,
      prepWays.length === 0 ? '' : figures.list(prepWays.map((each) => ways[each])),
      grit === undefined ? '' : grit.toUpperCase(),
      solvents.length === 0 ? '' : `con ${figures.list(solvents.map((each) => spanishSolvents[each]))}`,
    ]
      .filter((text) => text !== '')
      .join(', '),
};
