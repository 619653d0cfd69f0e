// The day's spray sessions, near misses and words of need, in a line each.

import type { DaySpraying } from '../../core/records/day-spraying.ts';
import { litres } from '../../core/units.ts';
import type { Telling } from './card-context.ts';
import { stillOpen } from './session-lines.ts';

export function daySprayingLines(t: Telling, { sessions, told }: DaySpraying): readonly string[] {
  const words = t.words.session;
  return [
    ...sessions.map((session) => {
      const logged = session.flushes.reduce((sum, flush) => sum + (flush.litres ?? 0), 0);
      const open = stillOpen(t, session);
      return words.daySession(
        session.number,
        t.f.list([...session.sprayers, ...session.stays]),
        logged === 0 ? '' : t.f.volume(litres(logged)),
        t.f.list(open),
      );
    }),
    ...told.map(({ at, by, fact }) => words.dayTold(t.f.timeDown(at), by, t.words.fact(fact, t.f))),
  ];
}
