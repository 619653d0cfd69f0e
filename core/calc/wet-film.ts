// A comb pressed into fresh film: the film lies between the last tooth that was wetted and the first that stayed dry,
// never at one number. A process check; dry film after cure is what is accepted or held.

import { isFailed } from '../failed.ts';
import { type Micrometres, micrometres } from '../units.ts';
import { dryFilmFrom, type FilmMake } from './film-build.ts';
import { outOfRange, type Result } from './refusal.ts';

/** ASTM D4414 reads a comb so (from memory). */
export interface CombReading {
  /** `undefined`: not even the first tooth was wetted. */
  readonly wettedMicrometres: Micrometres | undefined;
  /** `undefined`: every tooth was wetted, and the film may be any thicker. */
  readonly dryMicrometres: Micrometres | undefined;
}

export interface ExpectedDryFilm {
  readonly leastMicrometres: Micrometres;
  /** `undefined`: no upper end was read. */
  readonly mostMicrometres: Micrometres | undefined;
}

/** The range of dry film to expect; refuses a comb that was not read at all, and teeth the wrong way round. */
export function expectedDryFilm(comb: CombReading, make: FilmMake): Result<ExpectedDryFilm> {
  const { wettedMicrometres: wetted, dryMicrometres: dry } = comb;
  if (wetted === undefined && dry === undefined) return { failed: 'no-figure', what: 'comb' };
  if (wetted !== undefined && dry !== undefined) {
    const refused = outOfRange('first dry tooth', dry, wetted, 100_000);
    if (refused !== undefined) return refused;
  }
  const least = wetted === undefined ? micrometres(0) : dryFilmFrom(wetted, make);
  if (isFailed(least)) return least;
  const most = dry === undefined ? undefined : dryFilmFrom(dry, make);
  if (most !== undefined && isFailed(most)) return most;
  return { leastMicrometres: least, mostMicrometres: most };
}
