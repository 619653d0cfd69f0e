// What a job asks for before a release, in English, and what of it is lacking.

import type { JobFilmRule, ReleaseLimits } from '../../../../core/crew/job-limits.ts';
import type { PartName, PersonName } from '../../../../core/ids.ts';
import type { ReleaseObjection } from '../../../../core/part/part-objections.ts';
import type { ReleaseLacking } from '../../../../core/part/release-asked.ts';
import type { Figures } from '../../figures.ts';
import { englishFilmTests } from './film-tests.ts';
import { englishSpots } from './spots.ts';
import { englishFigureNames, englishSurfaceBreach } from './steel.ts';

export function englishReleaseLimits(limits: ReleaseLimits, figures: Figures): readonly string[] {
  const { film, filmRule, filmBaseMicrometres: base, leastAdhesion, leastDoubleRubs, tests = [], secondEyes } = limits;
  return [
    film === true
      ? `dry film${filmRule === undefined ? '' : ` (${ruleAsked(filmRule, figures)})`}${base === undefined ? '' : `, base metal ${figures.film(base)} off`}`
      : '',
    leastAdhesion === undefined ? '' : `adhesion ${leastAdhesion} or better`,
    leastDoubleRubs === undefined ? '' : `${leastDoubleRubs} double rubs`,
    ...tests.map((test) => englishFilmTests.asked(test, figures)),
    secondEyes === true ? 'release by somebody who did not coat it' : '',
  ].filter((text) => text !== '');
}

function ruleAsked({ rule, level, spots, ...film }: JobFilmRule, figures: Figures): string {
  const names = { 'pa-2': 'SSPC-PA 2', 'iso-19840': 'ISO 19840' };
  const { leastMicrometres: least, mostMicrometres: most } = film;
  return [
    ...(rule === undefined ? [] : [names[rule]]),
    ...(level === undefined ? [] : [`level ${level}`]),
    ...(least === undefined
      ? []
      : [most === undefined ? figures.film(least) : `${figures.film(least)} to ${figures.film(most)}`]),
    ...(spots === undefined ? [] : [`${spots} spots`]),
  ].join(', ');
}

export function englishLacking(lacking: ReleaseLacking, figures: Figures): string {
  switch (lacking.of) {
    case 'film':
      if (lacking.half !== undefined) return englishSpots.lacking(lacking.half.told, lacking.half.needed);
      return lacking.read ? 'a dry film that its rule can judge' : 'dry film';
    case 'adhesion':
      return `adhesion ${lacking.least} or better${lacking.worst === undefined ? '' : ` (read: ${lacking.worst})`}`;
    case 'rub':
      return `${lacking.least} double rubs${lacking.most === undefined ? '' : ` (done: ${lacking.most})`}`;
    case 'prep':
      return `${englishFigureNames[lacking.figure]}${lacking.breach === undefined ? '' : ` (${englishSurfaceBreach(lacking.breach, figures)})`}`;
    case 'wet':
    case 'pull-off':
    case 'gloss':
    case 'hardness':
    case 'holidays':
    case 'visual':
      return englishFilmTests.lacking(lacking.asked, lacking.read, figures);
  }
}

/** Before its coat: of the steel alone. */
export const englishAskedBefore = (job: string, lacking: readonly ReleaseLacking[], figures: Figures): string =>
  `Before its coat job ${job} still asks: ${figures.list(lacking.map((each) => englishLacking(each, figures)))}.`;

export const englishStillAsked = (job: string, lacking: readonly ReleaseLacking[], figures: Figures): string =>
  `Before its release job ${job} still asks: ${figures.list(lacking.map((each) => englishLacking(each, figures)))}.`;

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

/** What is missing of all that a job asks. */
export const englishLackingTold = {
  one: englishLacking,
  title: (part: PartName, count: number, job: string): string =>
    `${part}: ${count === 1 ? '1 thing is' : `${count} things are`} missing of what job ${job} asks`,
  nothing: (part: PartName, job: string): string =>
    `${part}: nothing is missing of what job ${job} asks. That is no release.`,
  noneAsked: (part: PartName): string => `${part}: no job asks anything of it, by the record`,
  several: 'Still missing, or on hold',
  nothingAnywhere: 'Nothing that a job asks is missing, and nothing is on hold, by the record',
  whoTells: 'Whoever measures it tells it; after one that failed a retest counts from a lead, with why.',
  releasers: (people: readonly PersonName[], areOthers: boolean, figures: Figures): string =>
    people.length === 0
      ? 'Nobody here may release it: each who leads had a hand in its coat.'
      : `May release: ${figures.list([...people])}${areOthers ? ' (not who coated it)' : ''}.`,
};
export type LackingWords = typeof englishLackingTold;
