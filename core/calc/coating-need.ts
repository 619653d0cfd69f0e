// How much must be mixed: from parts, areas and the film wanted to wet volume, with what is lost on the way. Nothing here knows the pot life: `pot-reach.ts` does.

import {
  type Fraction,
  type Litres,
  litres,
  type Micrometres,
  micrometres,
  type SquareMetres,
  squareMetres,
} from '../units.ts';
import { refuseVolume } from './density.ts';
import { type FilmMake, refuseFilm, refuseMake } from './film-build.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

/** A hectare: no crew of eight coats more from one mix. */
export const largestArea = 10_000;

export interface PartsOfOneArea {
  readonly count: number;
  readonly eachSquareMetres: SquareMetres;
}

export interface Losses {
  /** The share of what leaves the gun, brush or dip tank that stays on the part. */
  readonly transferEfficiency: Fraction;
  /**
   * Film swallowed by the valleys of a blasted surface, litres of dry film a square metre: from memory 0.02 to 0.06,
   * no source; the crew's own figure, 0 for a smooth part.
   */
  readonly profileLitresPerSquareMetre: number;
  /** Left wet in the gear, thinned as it is sprayed. */
  readonly hoseLitres: Litres;
  readonly gunLitres: Litres;
  readonly filterLitres: Litres;
}

export interface Need {
  readonly squareMetres: SquareMetres;
  /** Where the mixed, unthinned coating goes; the five add up to `mixedLitres`. */
  readonly filmLitres: Litres;
  readonly profileLitres: Litres;
  readonly oversprayLitres: Litres;
  readonly gearLitres: Litres;
  readonly mixedLitres: Litres;
  /** On top of the mix. */
  readonly thinnerLitres: Litres;
}

/** The area of all parts, uncounted parts refused. */
export function totalArea(parts: readonly PartsOfOneArea[]): Result<SquareMetres> {
  let area = 0;
  for (const part of parts) {
    const refused =
      outOfRange('count of parts', part.count, 0, 1e6) ??
      outOfRange('area of a part', part.eachSquareMetres, 0, largestArea);
    if (refused !== undefined) return refused;
    area += part.count * part.eachSquareMetres;
  }
  return outOfRange('area', area, 0, largestArea) ?? squareMetres(area);
}

/** Mixed coating for an area at a dry film, in litres of A and B together before thinning. */
export function coatingNeed(area: SquareMetres, dryFilm: Micrometres, make: FilmMake, losses: Losses): Result<Need> {
  const refused =
    outOfRange('area', area, 0, largestArea) ??
    refuseFilm('dry film', dryFilm) ??
    refuseMake(make) ??
    refuseLosses(losses);
  if (refused !== undefined) return refused;
  const filmLitres = (area * dryFilm) / (1000 * make.volumeSolids);
  const profileLitres = (area * losses.profileLitresPerSquareMetre) / make.volumeSolids;
  const oversprayLitres = (filmLitres + profileLitres) * (1 / losses.transferEfficiency - 1);
  const gearLitres = (losses.hoseLitres + losses.gunLitres + losses.filterLitres) / (1 + make.thinnerShare);
  const mixedLitres = filmLitres + profileLitres + oversprayLitres + gearLitres;
  return {
    squareMetres: area,
    filmLitres: litres(filmLitres),
    profileLitres: litres(profileLitres),
    oversprayLitres: litres(oversprayLitres),
    gearLitres: litres(gearLitres),
    mixedLitres: litres(mixedLitres),
    thinnerLitres: litres(mixedLitres * make.thinnerShare),
  };
}

/** The film that went on, on average, from what left the pot: the planning sum read backwards. */
export function dryFilmFromUse(
  usedLitres: Litres,
  area: SquareMetres,
  make: FilmMake,
  losses: Losses,
): Result<Micrometres> {
  const refused =
    refuseVolume('used', usedLitres) ??
    outOfRange('area', area, 1e-4, largestArea) ??
    refuseMake(make) ??
    refuseLosses(losses);
  if (refused !== undefined) return refused;
  const gearLitres = (losses.hoseLitres + losses.gunLitres + losses.filterLitres) / (1 + make.thinnerShare);
  const onPart = (usedLitres - gearLitres) * losses.transferEfficiency;
  const film = ((onPart * make.volumeSolids) / area - losses.profileLitresPerSquareMetre) * 1000;
  return micrometres(Math.max(0, film));
}

export function refuseLosses(losses: Losses): Refusal | undefined {
  return (
    // Below one part in a hundred on the part, somebody sprays past it.
    outOfRange('transfer efficiency', losses.transferEfficiency, 0.01, 1) ??
    outOfRange('profile', losses.profileLitresPerSquareMetre, 0, 1) ??
    refuseVolume('hose', losses.hoseLitres) ??
    refuseVolume('gun', losses.gunLitres) ??
    refuseVolume('filter', losses.filterLitres)
  );
}
