// A dry film that is told spot by spot, in English: what is asked next, what a spot came to, and what its rule wants.

import type { FactOf } from '../../../../core/history.ts';
import type { Unclear } from '../../../../core/objections.ts';
import type { Beyond } from '../../../../core/part/film-acceptance.ts';
import type { SetJudged, SpotJudged } from '../../../../core/part/film-set-judge.ts';
import type { FilmTerms, TakenOff } from '../../../../core/part/film-terms.ts';
import type { Micrometres, SquareMetres } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';

const found: Readonly<Record<string, string>> = {
  'spot-below': 'its mean is below',
  'spot-above': 'its mean is above',
  'reading-below': 'below',
  'reading-above': 'above',
};

const off = (taken: TakenOff, figures: Figures): string => {
  switch (taken.is) {
    case 'profile':
      return `profile ${figures.film(taken.micrometres)} off`;
    case 'base':
      return `base metal ${figures.film(taken.micrometres)} off`;
    case 'set-on-profile':
    case 'none':
      return '';
  }
};

/** `mean 100 µm, profile 25 µm off: 75 µm`. */
function came(read: Micrometres, counted: Micrometres, taken: TakenOff, figures: Figures): string {
  const less = off(taken, figures);
  return less === '' ? figures.film(counted) : `${figures.film(read)}, ${less}: ${figures.film(counted)}`;
}

export const englishSpots = {
  title: (part: string, from: number, to: number, of: number) =>
    from === to
      ? `${part}: spot ${to}${to > of ? `, beyond the ${of} asked` : ` of ${of}`}`
      : `${part}: spots ${from} to ${to} of ${of}`,
  beside: (part: string, spot: number, near: number) => `${part}: spot ${spot}, beside ${near}`,
  asks: (spot: number, of: number) => `Spot ${spot} of ${of}?`,
  asksOf: (part: string, spot: number, of: number) => `${part}: spot ${spot} of ${of}?`,
  asksFilm: (part: string) => `${part}: dry film?`,
  asksReadings: 'Which readings? Numbers alone will do.',
  button: (spot: number, of: number) => `Spot ${spot} of ${of}…`,
  besideButton: (spot: number) => `Beside spot ${spot}…`,
  dropButton: (reading: Micrometres, figures: Figures) => `Leave ${figures.film(reading)} out, read again…`,
  stillToTell: (spots: readonly number[], figures: Figures) =>
    `Still to tell: ${spots.length === 1 ? 'spot' : 'spots'} ${figures.list(spots.map(String))}. The set is not whole without.`,
  newSet: 'Another set',
  ofSet: (set: number, told: string) => `Set ${set}: ${told}`,
  areaButton: 'Its area…',
  putRight: (spot: number, readings: readonly Micrometres[], figures: Figures) =>
    `Spot ${spot} was ${figures.films(readings)}`,
  /** Of a spot of several readings, or of one. */
  spot: ({ number, readings, mean, lacks, beyond }: SpotJudged, taken: TakenOff, figures: Figures): string => {
    const read = figures.films(readings);
    if (mean === undefined)
      return `Spot ${number}: ${read}. ${lacks} more ${lacks === 1 ? 'reading' : 'readings'} for it.`;
    const fails = beyond.map(({ what, limit }: Beyond) => `${found[what] ?? what} ${figures.film(limit)}`);
    const verdict = fails.length === 0 ? '' : `: ${figures.list([...new Set(fails)])}, it fails`;
    const is = came(mean.read, mean.counted, taken, figures);
    return readings.length === 1
      ? `Spot ${number}: ${is}${verdict}.`
      : `Spot ${number}: ${read}. Mean ${is}${verdict}.`;
  },
  soFar: ({ told, terms, mean }: SetJudged, figures: Figures) =>
    `${told} of ${terms.spots} spots told${mean === undefined ? '' : `, mean so far ${figures.film(mean)}`}.`,
  whole: ({ terms, mean, off: taken }: SetJudged, figures: Figures) =>
    mean === undefined
      ? ''
      : `All ${terms.spots} spots told. Mean ${figures.film(mean)}${off(taken, figures) === '' ? '' : `, with ${off(taken, figures)} each`}.`,
  measure: (spot: number, told: number, of: number) => `measure spot ${spot} of its dry film (${told} of ${of} told)`,
  told: (told: number, of: number) => `Dry film: ${told} of ${of} spots told`,
  half: (told: number, of: number) =>
    `Its dry film is told by half: ${told} of ${of} spots. Half a set proves nothing.`,
  lacking: (told: number, of: number) => `dry film (${told} of ${of} spots told)`,
  dropped: (spot: number, readings: readonly Micrometres[], counts: boolean, figures: Figures) =>
    `Spot ${spot}, left out and kept in the record: ${figures.films(readings)}.${counts ? ' Its rule does not let that many be left out: they count.' : ''}`,
  noneOff: (profile: Micrometres, figures: Figures) =>
    `The profile was measured, ${figures.film(profile)}; nothing is taken off for it. Where the gauge was set on smooth plate, say base with what it shows on the bare steel.`,
  setOnProfile: 'The gauge is set on the profile: nothing is taken off.',
  baseNotTaken: 'Its rule takes off what it gives for the profile, and no base metal reading besides.',
  terms: (
    { rule, spots, readingsOfSpot, named }: FilmTerms,
    area: SquareMetres | undefined,
    figures: Figures,
  ): string => {
    const of = area === undefined ? '' : ` for ${figures.area(area)}`;
    switch (rule.rule) {
      case 'own':
        return `The sheet's own rule: ${spots} readings, ${figures.film(rule.leastMicrometres)} to ${figures.film(rule.mostMicrometres)}.`;
      case 'iso-19840':
        return `ISO 19840: ${spots} spots${of} (its table, from memory), a reading each. None below 80 % of ${figures.film(rule.nominalMicrometres)}, none above ${figures.film(rule.mostMicrometres)}, their mean no less than ${figures.film(rule.nominalMicrometres)}.`;
      case 'pa-2':
        return `SSPC-PA 2, level ${named.by === 'pa-2' ? named.level : ''}: ${spots} spots${of}, at least ${readingsOfSpot} readings each, five spots to an area. The film asked for: ${figures.film(rule.leastMicrometres)} to ${figures.film(rule.mostMicrometres)}.`;
    }
  },
  limits: (least: Micrometres, most: Micrometres | undefined, figures: Figures) =>
    `A spot's mean: from ${figures.film(least)}${most === undefined ? '' : ` to ${figures.film(most)}`}.`,
  areaNotTold: (spots: number) =>
    `Nobody has said its area: ${spots} spots are the fewest, and nothing passes until it is said.`,
  goBeside: (spot: number) =>
    `Spot ${spot} fails: read beside it, about 1.5 m on in eight directions, until it is within again; that marks what is to be put right (SSPC-PA 2, from memory). Those readings are no part of the mean.`,
};

export function englishSpotTold({ spot, readings }: Extract<Unclear, { code: 'spot-told' }>, figures: Figures): string {
  return `Spot ${spot} of this set is told: ${figures.films(readings)}. Was that wrong, or is this another set?`;
}

/** As the trace and the traveller tell it. */
export function englishSpotRead(
  { set, spot = 1, each, near, micrometres, dropped, baseMicrometres }: FactOf<'FilmRead'>,
  figures: Figures,
): string {
  const besides = [
    dropped === undefined ? '' : `left out ${figures.films(dropped)}`,
    baseMicrometres === undefined ? '' : `base metal ${figures.film(baseMicrometres)}`,
  ].filter((text) => text !== '');
  const where =
    near === undefined
      ? each === true
        ? `spots ${spot} to ${spot + micrometres.length - 1}`
        : `spot ${spot}`
      : `spot ${spot}, beside ${near}`;
  return [`dry film, set ${set} ${where}: ${figures.films(micrometres)}`, ...besides].join(', ');
}
