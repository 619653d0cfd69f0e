// Nothing new begins in a place where an alarm is on, and no pot or can is gone on with, until somebody says that all is clear; nor where a gas monitor last showed
// too much or too little, until it was read within its limit.

import type { Decision, Said } from '../decision.ts';
import { isFor } from '../event-readers.ts';
import type { Entry, Fact, NewEvent } from '../history.ts';
import { defaultPlace, nameIn, nounOf, numberIn, type PlaceName } from '../ids.ts';
import type { Objection } from '../objections.ts';
import { foldPlace, type GasBeyond, gasesBeyond } from '../place/place.ts';
import { editionOfToday } from '../rule-editions.ts';
import { judge, objectionsTo, type Rule } from '../rules.ts';
import type { Shop } from '../shop.ts';
import { alarmHolding, foldAlarms, isEverywhere, type OpenAlarm } from './open-alarms.ts';

interface PlaceCase {
  readonly place: PlaceName;
  readonly alarm?: OpenAlarm | undefined;
  readonly beyond: readonly GasBeyond[];
}

export const alarmRules: readonly Rule<PlaceCase>[] = [
  {
    code: 'alarm-on',
    since: 5,
    source: 'employer',
    liftedBy: 'nobody',
    check: ({ alarm }) => {
      if (alarm === undefined) return undefined;
      const { what, by, at, place } = alarm;
      return { code: 'alarm-on', what, by, at, place, isEverywhere: isEverywhere(alarm) };
    },
  },
  {
    code: 'gas-beyond',
    since: 6,
    source: 'employer',
    liftedBy: 'nobody',
    check: ({ beyond: [reading], place }) =>
      reading === undefined ? undefined : { code: 'gas-beyond', reading, place },
  },
];

/** The decision, unless what it begins would begin where an alarm is on. */
export function heldByAlarm(shop: Shop, said: Said, decision: Decision): Decision {
  if (decision.kind !== 'accepted') return decision;
  const { events } = decision;
  // Told late, what was on then counts, whether or not it is over by now.
  const onThen = foldAlarms(shop.crew.alarmEntries.filter(({ happenedAt }) => happenedAt <= said.at));
  const cases = [...new Set(events.flatMap((event) => placesOf(shop, event)))].map((place) => ({
    ...{ place, alarm: alarmHolding(onThen, place, said.at, editionOfToday) },
    beyond: gasesBeyond(shop.places.get(place), said.at),
  }));
  if (cases.every(({ alarm, beyond }) => alarm === undefined && beyond.length === 0)) return decision;
  return judge(shop, said, alarmRules, cases, (saidWith) =>
    events.map((event) => ({
      ...event,
      saidWith: { ...event.saidWith, despite: [...(event.saidWith?.despite ?? []), ...saidWith.despite] },
    })),
  );
}

/** What keeps people out of a place is named before whatever else speaks against the act. `asHappened`: what the act would leave. */
export function nameAlarmFirst(shop: Shop, said: Said, decision: Decision, asHappened: () => Decision): Decision {
  const isQuiet = shop.crew.alarms.length === 0 && [...shop.places.values()].every(({ gas }) => gas === undefined);
  if (decision.kind !== 'objected' || isQuiet || isOfAlarm(decision.objections)) return decision;
  const happened = asHappened();
  // A decision, such as a check of a can, is never told as having happened.
  if (happened.kind !== 'accepted') return decision;
  const held = heldByAlarm(shop, { ...said, stance: { is: 'asked' } }, happened);
  return held.kind === 'objected' ? { ...held, objections: [...held.objections, ...decision.objections] } : decision;
}

/** Nobody goes in there, be it to switch on a fan. */
export const isOfAlarm = (objections: readonly Objection[]): boolean =>
  objections.some(({ code }) => code === 'alarm-on' || code === 'gas-beyond');

/** The same of what had begun there all the same. */
export function againstBegun(shop: Shop, entry: Entry): readonly Objection[] {
  const { alarmEntries } = shop.crew;
  if (!isFor('begins', entry.fact) || (goesOn(entry.fact) && entry.edition < 6)) return [];
  const open = foldAlarms(earlierThan(entry, alarmEntries));
  const begun = {
    body: entry.fact,
    streams: [entry.stream, ...entry.alsoUnder],
    happenedAt: entry.happenedAt,
  } as const;
  return placesOf(shop, begun).flatMap((place) => {
    const alarm = alarmHolding(open, place, entry.happenedAt, entry.edition);
    const readings = shop.places.get(place);
    const beyond =
      readings?.gas === undefined
        ? []
        : gasesBeyond(foldPlace(place, earlierThan(entry, readings.entries)), entry.happenedAt);
    return objectionsTo(alarmRules, { place, alarm, beyond }, entry.edition);
  });
}

/** Those of other streams that had happened before it, as they stand now; within the same moment what was said before it. */
const earlierThan = ({ happenedAt, seq }: Entry, others: readonly Entry[]): readonly Entry[] =>
  others.filter((other) => other.happenedAt < happenedAt || (other.happenedAt === happenedAt && other.seq < seq));

/** Work on a pot or can that is there. Before edition 6 nobody was asked about it. */
const goesOn = ({ type }: Fact): boolean =>
  [
    ...['PartsWeighed', 'PartWeighed', 'PartAdded', 'StirrerStarted', 'MixFiltered'],
    ...['CanOpened', 'CanStirred'],
  ].includes(type);

/** Nowhere for what ends or is looked at: to stop a stirrer, to flush or to empty is never held up. */
function placesOf({ batches, sessions }: Shop, { body, streams }: NewEvent): readonly PlaceName[] {
  if (body.type === 'Amended' || !isFor('begins', body)) return [];
  switch (body.type) {
    case 'BatchOpened':
    case 'SessionBriefed':
    case 'SprayStarted':
      return [body.place];
    case 'PartsWeighed':
    case 'PartWeighed':
    case 'PartAdded':
    case 'StirrerStarted':
    case 'MixFiltered':
      return [batches.get(numberIn(streams[0]))?.place ?? defaultPlace];
    case 'CanOpened':
    case 'CanStirred':
      // Nobody says where a can stands.
      return [defaultPlace];
    case 'CureStarted':
      return [body.way];
    case 'CoatApplied': {
      const under = streams.flatMap((stream) => (nounOf(stream) === 'session' ? [Number(nameIn(stream))] : []));
      const places = [
        body.place,
        batches.get(body.batch)?.place,
        ...under.map((number) => sessions.get(number)?.place),
      ];
      return places.filter((place) => place !== undefined);
    }
  }
}
