// Air for an oven load that is still wet with solvent: the rule's figure, and the solvent's own where it asks for
// more. Volumes at 70 degF, sea level; `flowAtTemperature` turns them into what a fan on a hot stack must move.

import { isFailed } from '../failed.ts';
import {
  type Celsius,
  type CubicMetres,
  type CubicMetresPerHour,
  celsius,
  cubicFeetFromCubicMetres,
  cubicMetresFromCubicFeet,
  cubicMetresPerHour,
  fraction,
  usGallonsFromLitres,
} from '../units.ts';
import { outOfRange, type Result } from './refusal.ts';
import { airToStayBelow, type Evaporating, lowestLel, shareOfLel, vapourOf } from './vapour.ts';

/** NFPA 86, from memory. The Philippine code's 3 m3/min a litre is 401 and asks for less. */
const batchCubicFeetPerMinutePerGallon = 440;
const ruleCubicFeetPerGallon = 10_000;
/** NFPA 86, from memory: the limit of hot vapour is lower by 1.4 from 250 to 500 degF. */
const hotFactor = 1.4;
const hotFromCelsius = 121;
export const hottestCelsius = celsius(260);

/**
 * Flow for a batch oven loaded with so much solvent, which leaves in a rush at first: the rule's flow by litres. A solvent
 * that needs more air than the 10,000 ft3 a gallon behind the rule gets more flow in the same proportion (our caution).
 */
export function batchOvenFlow(load: readonly Evaporating[], oven: Celsius): Result<CubicMetresPerHour> {
  const factor = heatFactor(oven);
  if (isFailed(factor)) return factor;
  let cubicFeetPerMinute = 0;
  for (const part of load) {
    const own = ownAir(part);
    if (isFailed(own)) return own;
    const byRule = batchCubicFeetPerMinutePerGallon * usGallonsFromLitres(part.litres);
    const byOwn = batchCubicFeetPerMinutePerGallon * (cubicFeetFromCubicMetres(own) / ruleCubicFeetPerGallon);
    cubicFeetPerMinute += Math.max(byRule, byOwn) * factor;
  }
  return cubicMetresPerHour(cubicMetresFromCubicFeet(cubicFeetPerMinute) * 60);
}

function heatFactor(oven: Celsius): Result<number> {
  const refusal = outOfRange('oven-temperature', oven, 0, hottestCelsius);
  return refusal ?? (oven >= hotFromCelsius ? hotFactor : 1);
}

function ownAir(part: Evaporating): Result<CubicMetres> {
  const lel = lowestLel(part.solvent);
  if (isFailed(lel)) return lel;
  const vapour = vapourOf(part);
  if (isFailed(vapour)) return vapour;
  return airToStayBelow(vapour, lel.percent, fraction(shareOfLel.oshaSpray));
}
