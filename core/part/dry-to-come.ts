// What wet film will be once it is dry, by the sheet's solids, and how that lies to the film that the sheet asks for.

import { isAbove, isBelow, meanOf } from '../calc/film-readings.ts';
import { expectedDryFilm } from '../calc/wet-film.ts';
import { isFailed } from '../failed.ts';
import type { Sheet } from '../products/sheet.ts';
import { fraction, type Micrometres, micrometres, type Percent } from '../units.ts';

export interface DryToCome {
  readonly meanMicrometres: Micrometres;
  readonly leastMicrometres: Micrometres;
  readonly mostMicrometres: Micrometres;
  readonly solidsPercent: Percent;
  readonly sheet: { readonly leastMicrometres: Micrometres; readonly mostMicrometres: Micrometres };
  readonly lies: 'within' | 'thinner' | 'thicker' | 'both';
}

/** Of film that nobody thinned; `undefined` where the sheet gives no solids. */
export function dryToCome(wet: readonly Micrometres[], sheet: Sheet | undefined): DryToCome | undefined {
  const film = sheet?.film;
  if (film === undefined || wet.length === 0) return undefined;
  const make = { volumeSolids: fraction(film.volumeSolidsPercent / 100), thinnerShare: fraction(0) };
  const between = (wetted: number, dry: number) =>
    expectedDryFilm({ wettedMicrometres: micrometres(wetted), dryMicrometres: micrometres(dry) }, make);
  const range = between(Math.min(...wet), Math.max(...wet));
  const mean = between(meanOf(wet), meanOf(wet));
  if (isFailed(range) || isFailed(mean) || range.mostMicrometres === undefined) return undefined;
  const { leastMicrometres, mostMicrometres } = range;
  const isThin = isBelow(leastMicrometres, film.lowestDryMicrometres);
  const isThick = isAbove(mostMicrometres, film.highestDryMicrometres);
  return {
    meanMicrometres: mean.leastMicrometres,
    ...{ leastMicrometres, mostMicrometres },
    solidsPercent: film.volumeSolidsPercent,
    sheet: { leastMicrometres: film.lowestDryMicrometres, mostMicrometres: film.highestDryMicrometres },
    lies: isThin ? (isThick ? 'both' : 'thinner') : isThick ? 'thicker' : 'within',
  };
}
