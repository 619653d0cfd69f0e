// What a part bears, before it goes into an oven: where the sheet goes by it, and from the first part on of which this crew
// noted it, what nobody has told of a part is asked, and objects to the oven.

import type { Sheet } from '../products/sheet.ts';
import { batchOf, type Shop } from '../shop.ts';
import type { StepObjection } from '../steps/step-objection.ts';
import type { Celsius, EpochMs } from '../units.ts';
import type { Part } from './part.ts';

export type HeatNotKnown = Extract<StepObjection, { code: 'heat-not-known' }>;

/** The oven's temperature, else the sheet's, where nobody has told whether this part bears it. */
export function heatToAsk(shop: Shop, part: Part, at: EpochMs, setCelsius?: Celsius): Celsius | undefined {
  const sheet: Sheet | undefined = batchOf(shop, part)?.sheet;
  const { heatNotedAt } = shop.crew;
  const isNoted = heatNotedAt !== undefined && heatNotedAt <= at;
  if (sheet?.steps?.partBears === undefined || !isNoted || part.details.highestCelsius !== undefined) return undefined;
  return setCelsius ?? sheet.cure.oven?.atCelsius;
}

export function heatNotKnown(shop: Shop, part: Part, at: EpochMs, setCelsius?: Celsius): HeatNotKnown | undefined {
  const ovenCelsius = heatToAsk(shop, part, at, setCelsius);
  return ovenCelsius && { code: 'heat-not-known', part: part.name, ovenCelsius };
}
