// Salts on a part's steel as somebody told them: in mg/m2, or as the conductivity of a patch test, which becomes mg/m2 by
// ISO 8502-9. What is told already has the water's own conductivity taken off.

import { saltConstant, saltDensity } from './calc/salts.ts';
import { isFailed } from './failed.ts';
import type { FactOf } from './history.ts';
import {
  type Litres,
  litres,
  type MicrosiemensPerCentimetre,
  type MilligramsPerSquareMetre,
  microsiemensPerCentimetre,
  millilitres,
  type SquareCentimetres,
  squareCentimetres,
} from './units.ts';

/** Of the patches that instrument manuals describe after ISO 8502-6 and -9: 1250 mm2 and 3 mL. */
export const standardPatch = { squareCentimetres: squareCentimetres(12.5), litres: litres(0.003) };

export interface PatchTold {
  readonly conductivity: MicrosiemensPerCentimetre;
  readonly water: Litres;
  readonly patch: SquareCentimetres;
  /** Salt mass to conductivity, kg/(m2 S). */
  readonly constant: number;
  readonly salts: MilligramsPerSquareMetre;
}

type Told = Pick<
  FactOf<'SurfacePrepared'>,
  'saltsMicrosiemensPerCentimetre' | 'extractLitres' | 'patchSquareCentimetres'
>;

/** As the mixture of salts of the standard, which gives the larger figure. */
export function patchTold(told: Told): PatchTold | undefined {
  const { saltsMicrosiemensPerCentimetre: conductivity } = told;
  const {
    extractLitres: water = standardPatch.litres,
    patchSquareCentimetres: patch = standardPatch.squareCentimetres,
  } = told;
  if (conductivity === undefined) return undefined;
  const before = microsiemensPerCentimetre(0);
  const salts = saltDensity({ patch, water: millilitres(water * 1000), before, after: conductivity }, 'iso-mix');
  return isFailed(salts) ? undefined : { conductivity, water, patch, constant: saltConstant['iso-mix'], salts };
}

/** What was said in mg/m2 stands as it was said. */
export const saltsTold = (
  told: Told & Pick<FactOf<'SurfacePrepared'>, 'saltsMilligramsPerSquareMetre'>,
): MilligramsPerSquareMetre | undefined => told.saltsMilligramsPerSquareMetre ?? patchTold(told)?.salts;
