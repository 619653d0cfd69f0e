// The day's spray sessions, near misses and words of need, in a line each.

import { methodRows } from '../../core/methods.ts';
import type { DayRecord } from '../../core/records/day.ts';
import { litres } from '../../core/units.ts';
import { whoApplied } from '../../core/who-applied.ts';
import { briefsOffLines } from './briefs-off.ts';
import type { Telling } from './card-context.ts';
import { exposureDayLines } from './exposure-card.ts';
import { stillOpen } from './session-lines.ts';

export function daySprayingLines(telling: Telling, day: DayRecord): readonly string[] {
  const words = telling.words.session;
  const { sessions, alarms, batches, span } = day;
  const thatDay = batches.flatMap(({ batch }) =>
    batch.entries.filter(({ happenedAt }) => span.from <= happenedAt && happenedAt < span.to),
  );
  return [
    ...briefsOffLines(telling, thatDay),
    ...sprayerLines(telling, day),
    ...sessions.flatMap((session) => {
      const logged = session.flushes.reduce((sum, flush) => sum + (flush.litres ?? 0), 0);
      const read = session.acknowledged.map(({ person, at, witness }) =>
        words.acknowledged(person, at, witness, telling.figures),
      );
      const line = words.daySession(
        session.number,
        [...session.sprayers, ...session.stays],
        logged === 0 ? undefined : litres(logged),
        stillOpen(session),
        telling.figures,
      );
      return [line, ...read.map((each) => `  ${each}`)];
    }),
    ...monitorReadings(telling, span),
    ...exposureDayLines(telling, span),
    ...alarms.map(({ happenedAt, by, fact }) =>
      words.dayTold(happenedAt, by, telling.words.fact(fact, telling.figures), telling.figures),
    ),
  ];
}

/** What each of them sprayed, and what nobody is said to have. */
function sprayerLines(telling: Telling, { coats }: DayRecord): readonly string[] {
  const sprayed = coats
    .filter(({ fact }) => methodRows[fact.method].atomised)
    .map((entry) => ({ part: entry.fact.part, by: whoApplied(telling.shop, entry).person }));
  return [...new Set(sprayed.map(({ by }) => by))].map((person) => {
    const parts = new Set(sprayed.flatMap(({ part, by }) => (by === person ? [part] : [])));
    return telling.words.session.daySprayed(person, [...parts], telling.figures);
  });
}

/** Off the gas monitor, in every place of that day, in the order of time. */
function monitorReadings(telling: Telling, { from, to }: DayRecord['span']): readonly string[] {
  const { fact: told, session: words } = telling.words;
  return [...telling.shop.places.values()]
    .flatMap(({ name, entries }) => entries.map((entry) => ({ name, ...entry })))
    .filter(({ fact, happenedAt }) => fact.type === 'GasRead' && from <= happenedAt && happenedAt < to)
    .toSorted((a, b) => a.happenedAt - b.happenedAt || a.seq - b.seq)
    .map(({ name, happenedAt, by, fact }) =>
      words.dayTold(happenedAt, by, words.monitor.read(name, told(fact, telling.figures)), telling.figures),
    );
}
