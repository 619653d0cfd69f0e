// The one step that this person does now, of all that runs in the shop; or of one thing alone, for the last line of its card.

import { type Can, isGasSensitive } from '../can/can.ts';
import { components } from '../components.ts';
import { alarmsOn } from '../crew/open-alarms.ts';
import { isFailed } from '../failed.ts';
import {
  batchStream,
  canStream,
  defaultPlace,
  nameIn,
  nounOf,
  numberIn,
  type PersonName,
  partStream,
  type StreamId,
} from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import { standing } from '../settled.ts';
import { airServingIn, liveBatches, liveCans, liveParts, openSessions, sheetFor } from '../shop.ts';
import { statusOf } from '../status.ts';
import { canGuidance } from './can-guidance.ts';
import { firstOf, type Guidance } from './guidance.ts';
import { partGuidance } from './part-guidance.ts';
import { potGuidance } from './pot-guidance.ts';
import { sessionGuidance } from './session-guidance.ts';

/** `isWanted`: of all that runs only what this says; left out, all of it. */
export function guideFor(
  moment: Moment,
  name: PersonName,
  isWanted: (stream: StreamId) => boolean = () => true,
): Guidance {
  return stayingOut(moment) ?? firstOf(ofAll(moment, name, isWanted)) ?? toMix(moment);
}

/** While an alarm is on, wherever, nobody is led on in the work. */
function stayingOut({ shop, now }: Moment): Guidance | undefined {
  if (!alarmsOn(shop.crew.alarms, now).some(({ isDrill }) => !isDrill)) return undefined;
  return { doing: { is: 'stay-out' }, lasts: { by: 'nothing' }, never: { is: 'go-in' }, weight: 'danger' };
}

const ofAll = (moment: Moment, name: PersonName, isWanted: (stream: StreamId) => boolean): readonly Guidance[] => [
  ...openSessions(moment.shop).flatMap((session) => sessionGuidance(statusOf.session(moment, session), name)),
  // Emptied ones too, for as long as their gear waits.
  ...[...moment.shop.batches.values()]
    .filter(({ number }) => isWanted(batchStream(number)))
    .flatMap((batch) => potGuidance(moment, statusOf.batch(moment, batch))),
  ...liveCans(moment.shop)
    .filter(({ number }) => isWanted(canStream(number)))
    .flatMap((can) => canGuidance(moment, statusOf.can(moment, can))),
  ...statusOf
    .parts(
      moment,
      liveParts(moment.shop).filter((part) => isWanted(partStream(part.name))),
    )
    .flatMap((part) => partGuidance(moment, part)),
  ...airGuidance(moment),
];

/** Beyond so many it is not looked for what else there is to do: an answer does not wait for that. Our own figure. */
const fewNouns = 30;

/** After an act on these: what they want now, else what the shop does; `undefined` where that is much to look through. */
export function guideAfter(moment: Moment, name: PersonName, streams: readonly StreamId[]): Guidance | undefined {
  const { shop } = moment;
  const touched = stayingOut(moment) ?? firstOf(streams.flatMap((stream) => ofStream(moment, name, stream)));
  if (touched !== undefined) return touched;
  const nouns = shop.batches.size + shop.cans.size + shop.parts.size + shop.sessions.size;
  return nouns > fewNouns ? undefined : guideFor(moment, name);
}

function ofStream(moment: Moment, name: PersonName, stream: StreamId): readonly Guidance[] {
  const { shop } = moment;
  switch (nounOf(stream)) {
    case 'batch': {
      const batch = shop.batches.get(numberIn(stream));
      return batch === undefined ? [] : potGuidance(moment, statusOf.batch(moment, batch));
    }
    case 'can': {
      const can = shop.cans.get(numberIn(stream));
      return can === undefined ? [] : [...canGuidance(moment, statusOf.can(moment, can)), ...ofPotsFrom(moment, can)];
    }
    case 'part': {
      const part = shop.parts.get(nameIn(stream));
      return part === undefined ? [] : partGuidance(moment, statusOf.part(moment, part));
    }
    case 'session': {
      const session = shop.sessions.get(numberIn(stream));
      return session === undefined ? [] : sessionGuidance(statusOf.session(moment, session), name);
    }
    case 'place':
    case 'crew':
    case 'instrument':
      return [];
  }
}

/** Of pots that wait for what is in the can. */
const ofPotsFrom = (moment: Moment, can: Can): readonly Guidance[] =>
  liveBatches(moment.shop)
    .filter(({ weighing, sheet }) => weighing === undefined && sheet.id === can.sheet.id)
    .flatMap((batch) => potGuidance(moment, statusOf.batch(moment, batch)));

/** Whatever is mixed or coated next is judged by it. */
function airGuidance({ shop, now }: Moment): readonly Guidance[] {
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

/** Of what is in cans that are known. A crew that mixes and keeps no record of its cans is asked for none. */
function toMix({ shop }: Moment): Guidance {
  const idle = { lasts: { by: 'nothing' }, weight: 'idle' } as const;
  const known = [...liveCans(shop), ...shop.crew.sealed.filter(({ left }) => left > 0)];
  const lacking = components.find((component) => !known.some((can) => can.component === component));
  const keepsNone = shop.cans.size === 0 && shop.crew.sealed.length === 0 && shop.batches.size > 0;
  if (lacking === undefined || keepsNone) return { ...idle, doing: { is: 'mix' }, never: { is: 'mix-too-much' } };
  const sheet = sheetFor(shop);
  const needsGas = isFailed(sheet) || isGasSensitive({ component: lacking, sheet });
  return {
    ...idle,
    doing: { is: 'name-can', component: lacking },
    never: { is: needsGas ? 'open-without-gas' : 'pour-unweighed' },
  };
}
