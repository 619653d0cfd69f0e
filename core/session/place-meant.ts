// Where it is sprayed, when nobody names a place.

import { defaultPlace } from '../ids.ts';
import type { Shop } from '../shop.ts';

/** The only booth that the crew has set, where nobody names one. */
export function placeOf(shop: Shop, named: string | undefined): string {
  const booths = [...shop.crew.spray.booths.keys()];
  return named ?? (booths.length === 1 ? booths[0] : undefined) ?? defaultPlace;
}
