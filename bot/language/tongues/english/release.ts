// What a job asks for before a release, in English, and what of it is lacking.

import type { ReleaseLimits } from '../../../../core/crew/job-limits.ts';
import type { ReleaseObjection } from '../../../../core/part/part-objections.ts';
import type { ReleaseLacking } from '../../../../core/part/release-asked.ts';
import type { Figures } from '../../figures.ts';
import { englishSpots } from './spots.ts';

export function englishReleaseLimits(limits: ReleaseLimits, figures: Figures): readonly string[] {
  const { film, filmBaseMicrometres: base, leastAdhesion, leastDoubleRubs, secondEyes } = limits;
  return [
    film === true ? `dry film${base === undefined ? '' : `, base metal ${figures.film(base)} off`}` : '',
    leastAdhesion === undefined ? '' : `adhesion ${leastAdhesion} or better`,
    leastDoubleRubs === undefined ? '' : `${leastDoubleRubs} double rubs`,
    secondEyes === true ? 'release by somebody who did not coat it' : '',
  ].filter((text) => text !== '');
}

export function englishLacking(lacking: ReleaseLacking): string {
  switch (lacking.of) {
    case 'film':
      if (lacking.half !== undefined) return englishSpots.lacking(lacking.half.told, lacking.half.needed);
      return lacking.read ? 'a dry film that its rule can judge' : 'dry film';
    case 'adhesion':
      return `adhesion ${lacking.least} or better${lacking.worst === undefined ? '' : ` (read: ${lacking.worst})`}`;
    case 'rub':
      return `${lacking.least} double rubs${lacking.most === undefined ? '' : ` (done: ${lacking.most})`}`;
  }
}

export const englishStillAsked = (job: string, lacking: readonly ReleaseLacking[], figures: Figures): string =>
  `Before its release job ${job} still asks: ${figures.list(lacking.map(englishLacking))}.`;

export function englishReleaseObjection(objection: ReleaseObjection, figures: Figures): string {
  switch (objection.code) {
    case 'not-given':
      return englishStillAsked(objection.job, objection.lacking, figures);
    case 'film-half':
      return englishSpots.half(objection.told, objection.needed);
    case 'second-eyes':
      return `Job ${objection.job} asks that somebody else releases it: ${figures.list([...objection.coatedBy])} had a hand in its coat. Nobody stands in for that; it waits.`;
  }
}
