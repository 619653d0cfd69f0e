// What the reader is told of the shop and of whoever speaks.

import { type CrewFile, personIn } from '../../core/crew/crew.ts';
import { countdowns } from '../../core/crew/open-alarms.ts';
import { roleShort } from '../../core/crew/who-may.ts';
import { figuresFit } from '../../core/figures-fit.ts';
import type { PartName, PersonName } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import { sheetNames } from '../../core/products/shelf.ts';
import { liveBatches, liveParts, openSessions, type Shop } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';
import { partsGone } from '../language/asked/parts-gone.ts';
import type { Hearing } from '../language/hearing.ts';
import type { LineContext } from '../language/reading.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { liveNow } from './live-now.ts';

/** Their own language, and the one that the crew reads together. */
export function hearingOf(tongues: Tongues, crew: CrewFile, as: PersonName): Hearing {
  return tongues.hearingIn(personIn(crew, as).language, personIn(crew, '').language);
}

interface LookedUp {
  /** Where a line alone says too little. */
  readonly last?: LineContext['last'];
  /** Of every part that the record has. */
  readonly partsEver?: () => readonly PartName[];
}

export function lineContext(
  tongues: Tongues,
  shop: Shop,
  as: PersonName,
  now: EpochMs,
  { last, partsEver }: LookedUp = {},
): LineContext {
  const { language, units } = personIn(shop.crew, as);
  const parts = liveParts(shop).map((part) => part.name);
  return {
    hearing: hearingOf(tongues, shop.crew, as),
    units,
    country: tongues.profileOf(language, units),
    now,
    zone: shop.crew.zone,
    ...sheetNames(shop.shelf),
    batches: liveBatches(shop).map((batch) => batch.number),
    parts,
    ...known({ gone: partsEver && partsGone(partsEver, parts) }),
    places: [...new Set([...shop.places.keys(), ...openSessions(shop).map(({ place }) => place)])],
    instruments: shop.crew.instruments.filter(({ isRetired }) => !isRetired),
    people: shop.crew.people.map(({ name }) => name),
    mayCallOff: countdowns(shop.crew.alarms, now).length > 0,
    held:
      roleShort(shop.crew, as, 'lead') === undefined
        ? liveParts(shop).flatMap(({ name, verdict }) => (verdict?.is === 'held' ? [name] : []))
        : [],
    fits: (command) => figuresFit(shop, command, as),
    ...known({ last }),
    live: () => liveNow(shop, now),
  };
}
