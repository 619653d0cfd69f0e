// What is asked of the steel under a coat, and what was measured outside it, in English.

import type { SurfaceGrade } from '../../../../core/grades.ts';
import type { SurfaceAsker, SurfaceBreach, SurfaceFigure } from '../../../../core/part/surface-limits.ts';
import type { Figures } from '../../figures.ts';

/** As the standards print them. */
export const gradeNames: Readonly<Record<SurfaceGrade, string>> = {
  sa3: 'Sa 3',
  'sa2.5': 'Sa 2½',
  sa2: 'Sa 2',
  sa1: 'Sa 1',
  st3: 'St 3',
  st2: 'St 2',
  sp1: 'SP 1',
  sp2: 'SP 2',
  sp3: 'SP 3',
  sp5: 'SP 5',
  sp6: 'SP 6',
  sp7: 'SP 7',
  sp8: 'SP 8',
  sp10: 'SP 10',
  sp11: 'SP 11',
  sp15: 'SP 15',
};

export const asker = (by: SurfaceAsker): string => (by.is === 'sheet' ? by.name : `job ${by.job}`);
export const grades = (asked: readonly SurfaceGrade[]): string =>
  new Intl.ListFormat('en-GB', { type: 'disjunction' }).format(asked.map((grade) => gradeNames[grade]));

export const englishFigureNames: Readonly<Record<SurfaceFigure, string>> = {
  ...{ grade: 'grade', profile: 'profile', salts: 'salts', dust: 'dust left', 'dust-size': 'size of the dust left' },
  'water-break': 'water-break test',
};

/** What was measured outside what is asked. */
export function englishSurfaceBreach(breach: SurfaceBreach, figures: Figures): string {
  const by = asker(breach.by);
  switch (breach.of) {
    case 'grade':
      return `Prepared to ${gradeNames[breach.grade]}: ${by} asks for ${grades(breach.asked)}`;
    case 'profile':
      return `Profile ${figures.film(breach.micrometres)}: ${by} asks for ${figures.film(breach.leastMicrometres)} to ${figures.film(breach.mostMicrometres)}`;
    case 'salts':
      return `Salts ${figures.salts(breach.milligramsPerSquareMetre)}: ${by} allows ${figures.salts(breach.mostMilligramsPerSquareMetre)} at most`;
    case 'dust':
      return `Dust ${figures.count(breach.rating)}: ${by} allows ${figures.count(breach.mostRating)} at most`;
    case 'dust-size':
      return `Dust of size ${figures.count(breach.size)}: ${by} allows ${figures.count(breach.mostSize)} at most`;
    case 'water-break':
      return `Water broke on it: ${by} asks that it holds (ASTM F22)`;
  }
}
