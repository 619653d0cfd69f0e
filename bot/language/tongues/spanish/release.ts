// What a job asks for before a release, in Spanish, and what of it is lacking.

import type { ReleaseLimits } from '../../../../core/crew/job-limits.ts';
import type { ReleaseObjection } from '../../../../core/part/part-objections.ts';
import type { ReleaseLacking } from '../../../../core/part/release-asked.ts';
import type { Figures } from '../../figures.ts';
import { capital } from './names.ts';
import type { Spoken } from './spoken.ts';
import { spanishSpots } from './spots.ts';

export function spanishReleaseLimits(limits: ReleaseLimits, figures: Figures): readonly string[] {
  const { film, filmBaseMicrometres: base, leastAdhesion, leastDoubleRubs, secondEyes } = limits;
  return [
    film === true ? `espesor seco${base === undefined ? '' : `, menos ${figures.film(base)} del metal base`}` : '',
    leastAdhesion === undefined ? '' : `adherencia ${leastAdhesion} o mejor`,
    leastDoubleRubs === undefined ? '' : `${leastDoubleRubs} dobles frotes`,
    secondEyes === true ? 'que la libere quien no la pintó' : '',
  ].filter((text) => text !== '');
}

export function spanishLacking(say: Spoken, lacking: ReleaseLacking): string {
  switch (lacking.of) {
    case 'film':
      if (lacking.half !== undefined) return spanishSpots(say).lacking(lacking.half.told, lacking.half.needed);
      return lacking.read ? 'un espesor seco que su regla pueda juzgar' : 'espesor seco';
    case 'adhesion':
      return `adherencia ${lacking.least} o mejor${lacking.worst === undefined ? '' : ` (dio ${lacking.worst})`}`;
    case 'rub':
      return `${lacking.least} dobles frotes${lacking.most === undefined ? '' : ` (hechos: ${lacking.most})`}`;
  }
}

export const spanishStillAsked = (
  say: Spoken,
  job: string,
  lacking: readonly ReleaseLacking[],
  figures: Figures,
): string =>
  `Antes de liberarla, ${say.the('job')} ${job} pide aún: ${figures.list(lacking.map((each) => spanishLacking(say, each)))}.`;

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
