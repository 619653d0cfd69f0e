// Until somebody says that all is clear, nothing new begins where an alarm is on.

import { before } from '../as-it-stands.ts';
import type { Decision, Said } from '../decision.ts';
import { isFor } from '../event-readers.ts';
import type { Entry, NewEvent } from '../history.ts';
import { nameIn, nounOf, type PlaceName } from '../ids.ts';
import type { Objection } from '../objections.ts';
import { judge, objectionsTo, type Rule } from '../rules.ts';
import type { Shop } from '../shop.ts';
import { alarmIn, foldAlarms, type OpenAlarm } from './open-alarms.ts';

interface AlarmCase {
  readonly alarm: OpenAlarm;
  readonly place: PlaceName;
}

export const alarmRules: readonly Rule<AlarmCase>[] = [
  {
    code: 'alarm-on',
    since: 5,
    source: 'employer',
    liftedBy: 'nobody',
    check: ({ alarm: { what, by, at }, place }) => ({ code: 'alarm-on', what, by, at, place }),
  },
];

/** The decision, unless what it begins would begin where an alarm is on. */
export function heldByAlarm(shop: Shop, said: Said, decision: Decision): Decision {
  if (decision.kind !== 'accepted' || shop.crew.alarms.length === 0) return decision;
  const { events } = decision;
  const cases = [...new Set(events.flatMap((event) => placesOf(shop, event)))].flatMap((place): AlarmCase[] => {
    const alarm = alarmIn(shop.crew.alarms, place, said.at);
    return alarm === undefined ? [] : [{ alarm, place }];
  });
  if (cases.length === 0) return decision;
  return judge(shop, said, alarmRules, cases, (saidWith) =>
    events.map((event) => ({
      ...event,
      saidWith: { ...event.saidWith, despite: [...(event.saidWith?.despite ?? []), ...saidWith.despite] },
    })),
  );
}

/** The same of what had begun there all the same. */
export function againstBegun(shop: Shop, entry: Entry): readonly Objection[] {
  const { alarmEntries } = shop.crew;
  if (alarmEntries.length === 0 || !isFor('begins', entry.fact)) return [];
  const open = foldAlarms(before(alarmEntries, entry));
  const begun = {
    body: entry.fact,
    streams: [entry.stream, ...entry.alsoUnder],
    happenedAt: entry.happenedAt,
  } as const;
  return placesOf(shop, begun).flatMap((place) => {
    const alarm = alarmIn(open, place, entry.happenedAt);
    return alarm === undefined ? [] : objectionsTo(alarmRules, { alarm, place }, entry.edition);
  });
}

/** Nowhere for what only goes on, ends or is looked at: to stop a stirrer, to flush or to empty is never held up. */
function placesOf({ batches, sessions }: Shop, { body, streams }: NewEvent): readonly PlaceName[] {
  if (body.type === 'Amended' || !isFor('begins', body)) return [];
  switch (body.type) {
    case 'BatchOpened':
    case 'SessionBriefed':
    case 'SprayStarted':
      return [body.place];
    case 'CureStarted':
      return [body.way];
    case 'CoatApplied': {
      const under = streams.flatMap((stream) => (nounOf(stream) === 'session' ? [Number(nameIn(stream))] : []));
      const places = [batches.get(body.batch)?.place, ...under.map((number) => sessions.get(number)?.place)];
      return places.filter((place) => place !== undefined);
    }
  }
}
