// A place that nobody has named before is asked about, once: with the near known ones, since a reading in the wrong room moves the
// wrong clocks. What shops usually call their places needs no question, unless a known name is near.

import { type Decision, unclear } from './decision.ts';
import { defaultPlace, type PlaceName } from './ids.ts';
import { nearNames } from './part/near-names.ts';
import { allSaid } from './settled.ts';
import { liveBatches, openSessions, type Shop } from './shop.ts';
import { isUsualPlace } from './usual-places.ts';

interface Named {
  readonly place?: PlaceName;
  /** Said to be new. */
  readonly asNew?: boolean;
}

/** The question back; `undefined` where the place is known, said to be new, or nobody named one. */
export function askedAsPlace(shop: Shop, { place, asNew = false }: Named): Decision | undefined {
  const known = placesKnown(shop);
  if (place === undefined || asNew || known.has(place)) return undefined;
  const near = nearNames(place, [...known]);
  return near.length === 0 && isUsualPlace(place) ? undefined : unclear({ code: 'new-place', place, near });
}

const placesKnown = (shop: Shop): ReadonlySet<PlaceName> =>
  new Set([
    defaultPlace,
    ...shop.places.keys(),
    ...liveBatches(shop).flatMap(({ place }) => place ?? []),
    ...openSessions(shop).map(({ place }) => place),
    ...allSaid(shop.crew, 'booth').map(({ place }) => place),
    ...allSaid(shop.crew, 'confined').map(({ place }) => place),
  ]);
