// Wet film and dry film: what a coating of so much volume solids builds, and how far a litre goes. A thinner adds wet
// film and nothing else.

import {
  type Fraction,
  type Micrometres,
  micrometres,
  type SquareMetresPerLitre,
  squareMetresPerLitre,
} from '../units.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** The share of the wet coating, before thinning, that stays in the dry film; and thinner per volume of coating. */
export interface FilmMake {
  readonly volumeSolids: Fraction;
  /** 0.1 is one litre of thinner into ten of coating. */
  readonly thinnerShare: Fraction;
}

/** WFT = DFT (1 + t) / VS, from the definition of volume solids. */
export function wetFilmFor(dryFilm: Micrometres, make: FilmMake): Result<Micrometres> {
  return (
    refuseFilm('dry film', dryFilm) ??
    refuseMake(make) ??
    micrometres((dryFilm * (1 + make.thinnerShare)) / make.volumeSolids)
  );
}

/** DFT = WFT VS / (1 + t). */
export function dryFilmFrom(wetFilm: Micrometres, make: FilmMake): Result<Micrometres> {
  return (
    refuseFilm('wet film', wetFilm) ??
    refuseMake(make) ??
    micrometres((wetFilm * make.volumeSolids) / (1 + make.thinnerShare))
  );
}

/** Square metres of dry film from a litre of unthinned coating, nothing lost: 1000 VS / DFT, DFT in micrometres. */
export function theoreticalCoverage(dryFilm: Micrometres, volumeSolids: Fraction): Result<SquareMetresPerLitre> {
  return (
    refuseFilm('dry film', dryFilm) ??
    refuseSolids(volumeSolids) ??
    squareMetresPerLitre((1000 * volumeSolids) / dryFilm)
  );
}

/** From a monolayer's neighbourhood to ten centimetres: outside it a unit was mistaken. */
export function refuseFilm(what: string, film: Micrometres): Refusal | undefined {
  return outOfRange(what, film, 0.01, 100_000);
}

export function refuseMake(make: FilmMake): Refusal | undefined {
  return refuseSolids(make.volumeSolids) ?? outOfRange('thinner share', make.thinnerShare, 0, 1);
}

/** A clear coat of one per cent solids is the thinnest that anybody sells as a coating. */
function refuseSolids(volumeSolids: Fraction): Refusal | undefined {
  return outOfRange('volume solids', volumeSolids, 0.01, 1);
}
