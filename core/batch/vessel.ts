// Whether the mix goes into its vessel with room left, and whether the vessel is of what the sheet names.

import { mixedVolume } from '../calc/density.ts';
import { splitMass } from '../calc/mixing.ts';
import { isFailed } from '../failed.ts';
import type { Objection } from '../objections.ts';
import { mixRatio, type Sheet } from '../products/sheet.ts';
import { type Grams, type Litres, litres } from '../units.ts';
import type { VesselMaterial } from '../vessels.ts';

/** How full it may be. Where the sheet does not say, a tenth stays free for the vortex and the stirrer: our own figure, no source. */
export function roomIn(vessel: Litres, { steps }: Pick<Sheet, 'steps'>): Litres {
  return litres((vessel * (steps?.vessel?.mostFullPercent ?? 90)) / 100);
}

/** `undefined` too where nobody said how big it is, or the sheet gives no densities. */
export function vesselTooSmall(
  sheet: Sheet,
  vesselLitres: Litres | undefined,
  { partAGrams, partBGrams }: { readonly partAGrams: Grams; readonly partBGrams: Grams },
): Objection | undefined {
  if (vesselLitres === undefined || sheet.ratio.densities === undefined) return undefined;
  const mixedLitres = mixedVolume(partAGrams, partBGrams, sheet.ratio.densities);
  return !isFailed(mixedLitres) && mixedLitres > roomIn(vesselLitres, sheet)
    ? { code: 'vessel-too-small', vesselLitres, mixedLitres }
    : undefined;
}

/** Of a mix that is still to be weighed. */
export function vesselTooSmallFor(
  sheet: Sheet,
  vesselLitres: Litres | undefined,
  plannedGrams: Grams,
): Objection | undefined {
  const split = splitMass(plannedGrams, mixRatio(sheet.ratio));
  return isFailed(split) ? undefined : vesselTooSmall(sheet, vesselLitres, split);
}

/** `undefined` where the sheet names no materials, or nobody said of what it is. */
export function isVesselKept({ steps }: Sheet, material: VesselMaterial | undefined): boolean | undefined {
  return material === undefined ? undefined : steps?.vessel?.materials.includes(material);
}
