// What a job asks for before a release, in Spanish, and what of it is lacking.

import type { JobFilmRule, ReleaseLimits } from '../../../../core/crew/job-limits.ts';
import type { ReleaseObjection } from '../../../../core/part/part-objections.ts';
import type { ReleaseLacking } from '../../../../core/part/release-asked.ts';
import type { Figures } from '../../figures.ts';
import type { LackingWords } from '../english/release.ts';
import { spanishFilmTests } from './film-tests.ts';
import { capital } from './names.ts';
import type { Spoken } from './spoken.ts';
import { spanishSpots } from './spots.ts';
import { spanishFigureNames, spanishSurfaceBreach } from './steel.ts';

export function spanishReleaseLimits(say: Spoken, limits: ReleaseLimits, figures: Figures): readonly string[] {
  const { film, filmRule, filmBaseMicrometres: base, leastAdhesion, leastDoubleRubs, tests = [], secondEyes } = limits;
  return [
    film === true
      ? `espesor seco${filmRule === undefined ? '' : ` (${ruleAsked(filmRule, figures)})`}${base === undefined ? '' : `, menos ${figures.film(base)} del metal base`}`
      : '',
    leastAdhesion === undefined ? '' : `adherencia ${leastAdhesion} o mejor`,
    leastDoubleRubs === undefined ? '' : `${leastDoubleRubs} dobles frotes`,
    ...tests.map((test) => spanishFilmTests(say).asked(test, figures)),
    secondEyes === true ? 'que la libere quien no la pintó' : '',
  ].filter((text) => text !== '');
}

function ruleAsked({ rule, level, spots, ...film }: JobFilmRule, figures: Figures): string {
  const names = { 'pa-2': 'SSPC-PA 2', 'iso-19840': 'ISO 19840' };
  const { leastMicrometres: least, mostMicrometres: most } = film;
  return [
    ...(rule === undefined ? [] : [names[rule]]),
    ...(level === undefined ? [] : [`nivel ${level}`]),
    ...(least === undefined
      ? []
      : [most === undefined ? figures.film(least) : `de ${figures.film(least)} a ${figures.film(most)}`]),
    ...(spots === undefined ? [] : [`${spots} puntos`]),
  ].join(', ');
}

export function spanishLacking(say: Spoken, lacking: ReleaseLacking, figures: Figures): string {
  switch (lacking.of) {
    case 'film':
      if (lacking.half !== undefined) return spanishSpots(say).lacking(lacking.half.told, lacking.half.needed);
      return lacking.read ? 'un espesor seco que su regla pueda juzgar' : 'espesor seco';
    case 'adhesion':
      return `adherencia ${lacking.least} o mejor${lacking.worst === undefined ? '' : ` (dio ${lacking.worst})`}`;
    case 'rub':
      return `${lacking.least} dobles frotes${lacking.most === undefined ? '' : ` (hechos: ${lacking.most})`}`;
    case 'prep':
      return `${spanishFigureNames(say)[lacking.figure]}${lacking.breach === undefined ? '' : ` (${spanishSurfaceBreach(say, lacking.breach, figures)})`}`;
    case 'wet':
    case 'pull-off':
    case 'gloss':
    case 'hardness':
    case 'holidays':
    case 'visual':
      return spanishFilmTests(say).lacking(lacking.asked, lacking.read, figures);
  }
}

/** Before its coat: of the steel alone. */
export const spanishAskedBefore = (
  say: Spoken,
  job: string,
  lacking: readonly ReleaseLacking[],
  figures: Figures,
): string =>
  `Antes de su capa, ${say.the('job')} ${job} pide aún: ${figures.list(lacking.map((each) => spanishLacking(say, each, figures)))}.`;

export const spanishStillAsked = (
  say: Spoken,
  job: string,
  lacking: readonly ReleaseLacking[],
  figures: Figures,
): string =>
  `Antes de liberarla, ${say.the('job')} ${job} pide aún: ${figures.list(lacking.map((each) => spanishLacking(say, each, figures)))}.`;

export function spanishReleaseObjection(say: Spoken, objection: ReleaseObjection, figures: Figures): string {
  switch (objection.code) {
    case 'not-given':
      return spanishStillAsked(say, objection.job, objection.lacking, figures);
    case 'film-half':
      return spanishSpots(say).half(objection.told, objection.needed);
    case 'second-eyes':
      return `${capital(say.the('job'))} ${objection.job} pide que la libere otra persona: en su capa intervino ${figures.list([...objection.coatedBy])}. Nadie lo suple; la pieza espera.`;
  }
}

export const spanishLackingTold = (say: Spoken): LackingWords => ({
  one: (lacking, figures) => spanishLacking(say, lacking, figures),
  title: (part, count, job) =>
    `${part}: ${count === 1 ? 'falta 1 cosa' : `faltan ${count} cosas`} de lo que pide ${say.the('job')} ${job}`,
  nothing: (part, job) => `${part}: no falta nada de lo que pide ${say.the('job')} ${job}. Eso no la libera.`,
  noneAsked: (part) => `${part}: ninguna ${say.one('job')} pide nada de ella, según consta`,
  several: 'Lo que falta, o está retenido',
  nothingAnywhere: 'No falta nada de lo que se pide y no hay nada retenido, según consta',
  whoTells: `Lo dice quien lo mide; tras una que no pasó, la repetición vale si la dice ${say.one('lead')}, con el motivo.`,
  releasers: (people, areOthers, figures) =>
    people.length === 0
      ? 'Aquí nadie puede liberarla: quienes dirigen intervinieron en su capa.'
      : `Puede liberarla: ${figures.list([...people])}${areOthers ? ' (no quien la pintó)' : ''}.`,
});
