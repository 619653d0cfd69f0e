// The one step that this person does now, of all that runs in the shop; or of one thing alone, for the last line of its card.

import { alarmsOn } from '../crew/open-alarms.ts';
import { defaultPlace, type PersonName } from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import { standing } from '../settled.ts';
import { airServingIn, liveBatches, liveCans, liveParts, openSessions, type Shop } from '../shop.ts';
import { statusOf } from '../status.ts';
import { canGuidance } from './can-guidance.ts';
import { firstOf, type Guidance } from './guidance.ts';
import { partGuidance } from './part-guidance.ts';
import { potGuidance } from './pot-guidance.ts';
import { sessionGuidance } from './session-guidance.ts';

export function guideFor(moment: Moment, name: PersonName): Guidance {
  const { shop, now } = moment;
  if (alarmsOn(shop.crew.alarms, now).some(({ isDrill }) => !isDrill)) {
    return { doing: { is: 'stay-out' }, lasts: { by: 'nothing' }, never: { is: 'go-in' }, weight: 'danger' };
  }
  const found = firstOf([
    ...openSessions(shop).flatMap((session) => sessionGuidance(statusOf.session(moment, session), name)),
    ...potsAndGear(shop).flatMap((batch) => potGuidance(moment, statusOf.batch(moment, batch))),
    ...liveCans(shop).flatMap((can) => canGuidance(moment, statusOf.can(moment, can))),
    ...statusOf.parts(moment, liveParts(shop)).flatMap((part) => partGuidance(moment, part)),
    ...airGuidance(moment),
  ]);
  return found ?? mixing(moment);
}

/** Emptied ones too, for as long as their gear waits. */
const potsAndGear = (shop: Shop) => [
  ...new Set([...liveBatches(shop), ...[...shop.batches.values()].filter(({ emptied }) => emptied !== undefined)]),
];

/** Whatever is mixed or coated next is judged by it. */
export function airGuidance({ shop, now }: Moment): readonly Guidance[] {
  const { celsius, relativeHumidityPercent } = airServingIn(shop, defaultPlace, now);
  if (celsius !== undefined && relativeHumidityPercent !== undefined) return [];
  const serves = standing(shop.crew, 'air-limit').minutes;
  const isWanted = liveBatches(shop).length > 0;
  return [
    {
      ...{ doing: { is: 'read-air' }, lasts: { by: 'reading', serves }, never: { is: 'mix-in-unread-air' } },
      weight: isWanted ? 'hands' : 'last',
    },
  ];
}

export function mixing(_moment: Moment): Guidance {
  return { doing: { is: 'mix' }, lasts: { by: 'nothing' }, never: { is: 'mix-too-much' }, weight: 'idle' };
}
