// The day's spray sessions, near misses and words of need, in a line each.

import type { DayRecord } from '../../core/records/day.ts';
import { litres } from '../../core/units.ts';
import { briefsOffLines } from './briefs-off.ts';
import type { Telling } from './card-context.ts';
import { stillOpen } from './session-lines.ts';

export function daySprayingLines(telling: Telling, { sessions, alarms, batches, span }: DayRecord): readonly string[] {
  const words = telling.words.session;
  const thatDay = batches.flatMap(({ batch }) =>
    batch.entries.filter(({ happenedAt }) => span.from <= happenedAt && happenedAt < span.to),
  );
  return [
    ...briefsOffLines(telling, thatDay),
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
    ...alarms.map(({ happenedAt, by, fact }) =>
      words.dayTold(happenedAt, by, telling.words.fact(fact, telling.figures), telling.figures),
    ),
  ];
}
