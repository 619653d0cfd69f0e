// The air that keeps an oven's vapour below a quarter of the lowest explosive limit, as its fan moves it: hot. What is in the
// oven is added up over all its loads; how much of a pot went on them nobody weighs, so that the whole pot counts.

import { batchOvenFlow, hottestCelsius } from '../calc/oven-air.ts';
import type { SolventId } from '../calc/solvents.ts';
import { lowestLel } from '../calc/vapour.ts';
import { flowAtTemperature } from '../calc/ventilation.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import { ovenLoads } from '../part/oven-load.ts';
import type { Sheet } from '../products/sheet.ts';
import { solventsIn } from '../session/session-air.ts';
import { batchOf, type Shop } from '../shop.ts';
import { type Celsius, type CubicMetresPerHour, type Grams, grams, type Litres, litres } from '../units.ts';

/** So much mix of one sheet, wet with solvent. */
export interface WetMix {
  readonly sheet: Sheet;
  readonly grams: Grams;
}

export interface OvenAir {
  readonly solventLitres: Litres;
  /** At the oven's temperature. */
  readonly flow: CubicMetresPerHour;
}

export type NoOvenAir =
  | { readonly why: 'no-solvents'; readonly sheet: string }
  /** Of which nobody has published what the sum needs. */
  | { readonly why: 'no-figure'; readonly solvents: readonly SolventId[] }
  | { readonly why: 'too-hot'; readonly hottestCelsius: Celsius };

export function ovenAir(wet: readonly WetMix[], oven: Celsius): OvenAir | Failed<NoOvenAir> {
  const silent = wet.find(({ sheet }) => sheet.spray === undefined || sheet.spray.solvents.length === 0);
  if (silent !== undefined) return failed({ why: 'no-solvents', sheet: silent.sheet.name });
  const load = wet.flatMap(({ sheet, grams }) => solventsIn(sheet, grams) ?? []);
  const cold = batchOvenFlow(load, oven);
  const flow = isFailed(cold) ? cold : flowAtTemperature(cold, oven);
  if (!isFailed(flow)) return { solventLitres: litres(load.reduce((sum, part) => sum + part.litres, 0)), flow };
  const without = load.filter(({ solvent }) => isFailed(lowestLel(solvent))).map(({ id }) => id);
  return without.length > 0
    ? failed({ why: 'no-figure', solvents: [...new Set(without)] })
    : failed({ why: 'too-hot', hottestCelsius });
}

/** Of every pot from which something is in the oven, all that was mixed and not thrown away. */
export function wetInOven(shop: Shop): readonly WetMix[] {
  const pots = new Set(
    ovenLoads(shop)
      .flat()
      .flatMap((part) => batchOf(shop, part) ?? []),
  );
  return [...pots].map(({ sheet, inVessel, emptied }) => {
    const mixed = (inVessel['part-a']?.grams ?? 0) + (inVessel['part-b']?.grams ?? 0);
    return { sheet, grams: grams(Math.max(0, mixed - (emptied?.leftGrams ?? 0))) };
  });
}
