// Lo que se pide de la superficie bajo una capa, y lo medido fuera de ello.

import type { SurfaceGrade } from '../../../../core/grades.ts';
import type { SurfaceAsker, SurfaceBreach, SurfaceFigure } from '../../../../core/part/surface-limits.ts';
import type { Figures } from '../../figures.ts';
import { gradeNames } from '../english/steel.ts';
import { capital } from './names.ts';
import type { Spoken } from './spoken.ts';

export const grades = (asked: readonly SurfaceGrade[]): string =>
  new Intl.ListFormat('es', { type: 'disjunction' }).format(asked.map((grade) => gradeNames[grade]));

export const asker = (say: Spoken, by: SurfaceAsker): string =>
  by.is === 'sheet' ? by.name : `${say.the('job')} ${by.job}`;

export const spanishFigureNames = (say: Spoken): Readonly<Record<SurfaceFigure, string>> => ({
  ...{ grade: 'grado', profile: say.one('profile'), salts: 'sales', dust: 'polvo que queda' },
  ...{ 'dust-size': 'tamaño del polvo que queda', 'water-break': 'ensayo de rotura de agua' },
});

/** What was measured outside what is asked. */
export function spanishSurfaceBreach(say: Spoken, breach: SurfaceBreach, figures: Figures): string {
  const by = asker(say, breach.by);
  switch (breach.of) {
    case 'grade':
      return `Preparada a ${gradeNames[breach.grade]}: ${by} pide ${grades(breach.asked)}`;
    case 'profile':
      return `${capital(say.one('profile'))} ${figures.film(breach.micrometres)}: ${by} pide de ${figures.film(breach.leastMicrometres)} a ${figures.film(breach.mostMicrometres)}`;
    case 'salts':
      return `Sales ${figures.salts(breach.milligramsPerSquareMetre)}: ${by} admite como mucho ${figures.salts(breach.mostMilligramsPerSquareMetre)}`;
    case 'dust':
      return `Polvo ${figures.count(breach.rating)}: ${by} admite como mucho ${figures.count(breach.mostRating)}`;
    case 'dust-size':
      return `Polvo de tamaño ${figures.count(breach.size)}: ${by} admite como mucho ${figures.count(breach.mostSize)}`;
    case 'water-break':
      return `El agua se rompe en ella: ${by} pide que aguante (ASTM F22)`;
  }
}
