// The air and the steel that a coat is judged by: the air of the place, and the part's own surface where it was read.
// The spread to the dew point belongs to the part; the room's surface stands in only where nobody read the part's.

import type { PlaceName } from '../ids.ts';
import { type Part, surfaceServing } from '../part/part.ts';
import type { AirRead } from '../products/sheet-air.ts';
import { standing } from '../settled.ts';
import { airServingIn, type Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';

export interface CoatClimate extends AirRead {
  readonly surfaceOf: 'part' | 'place' | undefined;
}

export function coatClimate(shop: Shop, place: PlaceName, part: Part | undefined, at: EpochMs): CoatClimate {
  const limit = standing(shop.crew, 'air-limit').minutes;
  const { surfaceCelsius, ...air } = airServingIn(shop, place, at);
  const own = surfaceServing(part, at, limit);
  const surfaceOf = own !== undefined ? 'part' : surfaceCelsius !== undefined ? 'place' : undefined;
  return { ...air, surfaceCelsius: own ?? surfaceCelsius, surfaceOf };
}
