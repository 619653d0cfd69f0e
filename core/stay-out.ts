// What keeps everybody out of a place for now: an alarm that holds new work there, or a gas that was last read beyond its limit. Nothing is asked
// for in there until both are over.

import { alarmHolding, countdownMs, isHeldBy, type OpenAlarm } from './crew/open-alarms.ts';
import type { Entry } from './history.ts';
import type { PlaceName } from './ids.ts';
import { type GasBeyond, gasesBeyond } from './place/place.ts';
import { type Edition, editionOfToday } from './rule-editions.ts';
import type { Shop } from './shop.ts';
import { type EpochMs, epochMs } from './units.ts';

export interface StayOut {
  readonly alarm: OpenAlarm | undefined;
  readonly beyond: readonly GasBeyond[];
}

/** A plan holds until something is said: by then a countdown has rung, unless somebody called it off. */
const untilSaid = epochMs(Number.MAX_SAFE_INTEGER);

/** `undefined` where nothing does. */
export function stayOutOf(
  { crew, places }: Pick<Shop, 'crew' | 'places'>,
  place: PlaceName,
  at: EpochMs = untilSaid,
): StayOut | undefined {
  const alarm = alarmHolding(crew.alarms, place, at, editionOfToday);
  const beyond = gasesBeyond(places.get(place), at);
  return alarm === undefined && beyond.length === 0 ? undefined : { alarm, beyond };
}

/** With all that tells which places it holds. */
export interface RungAlarm extends Pick<OpenAlarm, 'place' | 'batch' | 'can'> {
  readonly at: EpochMs;
}

/** Each that has rung, over or not; no drill, and no cry that was called off in time. */
export function alarmsRung(entries: readonly Entry[]): readonly RungAlarm[] {
  return entries.flatMap(({ fact, happenedAt: at }) => {
    if (fact.type === 'AlarmRaised') return [{ at, place: fact.place, batch: fact.batch, can: fact.can }];
    if (fact.type !== 'CryHeard') return [];
    const calledOff = entries.some(
      ({ fact: { type }, happenedAt }) =>
        type === 'AlarmCalledOff' && happenedAt >= at && happenedAt < at + countdownMs,
    );
    return calledOff ? [] : [{ at, place: fact.place }];
  });
}

/** One that held this place, after `from` and by `to`; until edition 6 only one that named it. */
export const hasRungIn = (
  rung: readonly RungAlarm[],
  place: PlaceName,
  { from, to }: { readonly from: EpochMs; readonly to: EpochMs },
  edition: Edition,
): boolean =>
  rung.some(
    (alarm) =>
      (edition < 7 ? alarm.place === place : isHeldBy(alarm, place, edition)) && alarm.at > from && alarm.at <= to,
  );
