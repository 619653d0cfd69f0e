// How many areas, spots and gauge readings SSPC-PA 2 wants of a coated surface.

import { type SquareMetres, squareFeetFromSquareMetres, squareMetresFromSquareFeet } from '../units.ts';
import { outOfRange, type Result } from './refusal.ts';

/** SSPC-PA 2 (2012) 3.2: at least three readings inside a circle of about 4 cm. */
export const leastReadingsOfSpot = 3;
/** SSPC-PA 2: five spots over about 100 ft2 (10 m2). */
export const spotsOfArea = 5;

export interface FilmCount {
  readonly areas: number;
  readonly spots: number;
  readonly gaugeReadings: number;
}

/** A hundred hectares: more than any structure. */
const largestArea = 1e6;
/** A square foot more than a limit is more; a rounding of the conversion is not. */
const roundingFeet = 1e-6;

/**
 * How many areas, spots and readings a coated area needs: every 100 ft2 up to 300 ft2; three up to 1,000 ft2; then one
 * more for each further 1,000 ft2 or part. The square feet decide; the rule's round metres would ask for fewer.
 */
export function filmCount(coated: SquareMetres): Result<FilmCount> {
  const refused = outOfRange('coated area', coated, squareMetresFromSquareFeet(2 * roundingFeet), largestArea);
  if (refused !== undefined) return refused;
  const feet = squareFeetFromSquareMetres(coated) - roundingFeet;
  const areas = feet <= 300 ? Math.ceil(feet / 100) : 3 + Math.max(0, Math.ceil((feet - 1000) / 1000));
  return {
    areas,
    spots: areas * spotsOfArea,
    gaugeReadings: areas * spotsOfArea * leastReadingsOfSpot,
  };
}
