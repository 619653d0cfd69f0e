// What a part bears, before it goes into an oven: asked where the sheet asks for it and this crew notes it of its parts.

import type { Sheet } from '../products/sheet.ts';
import { liveParts, type Shop } from '../shop.ts';
import type { Celsius } from '../units.ts';
import type { Part } from './part.ts';

/** The oven's temperature, else the sheet's, where nobody has told whether this part bears it. */
export function heatToAsk(shop: Shop, { details, cure }: Part, { steps, cure: { oven } }: Sheet): Celsius | undefined {
  if (steps?.partBears === undefined || oven === undefined || details.highestCelsius !== undefined) return undefined;
  const isNoted = liveParts(shop).some((other) => other.details.highestCelsius !== undefined);
  return isNoted ? (cure?.setCelsius ?? oven.atCelsius) : undefined;
}
