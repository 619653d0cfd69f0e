// A can on the board, for as long as it stands without gas over it or is in doubt: a can under gas waits for nobody.

import type { Can } from '../../core/can/can.ts';
import { blanketTimes, doubtfulSince } from '../../core/can/can-clocks.ts';
import { canStream } from '../../core/ids.ts';
import { atMostClock, type BoardItem, passed } from './board-item.ts';
import { canTaps } from './can-cards.ts';
import type { Telling } from './card-context.ts';
import { mostUrgent } from './urgency.ts';

export function canOnBoard(t: Telling, can: Can): readonly BoardItem[] {
  const { page, material } = t.words;
  const times = blanketTimes(can);
  const doubtful = doubtfulSince(can, t.now);
  if (times === undefined && doubtful === undefined) return [];
  const clock =
    times === undefined
      ? []
      : [
          atMostClock(t, {
            id: 'lid-off',
            progress: passed(times.since, times.doubtfulAt, t.now),
            nearAt: times.ringAt,
            endAt: times.doubtfulAt,
          }),
        ];
  const phase =
    doubtful !== undefined
      ? material.gas.doubtful(t.f.timeDown(doubtful))
      : material.gas['lid-off'](t.f.timeDown(times?.since ?? t.now));
  return [
    {
      id: canStream(can.number),
      name: page.can(can.number),
      what: [material.component[can.component], can.lot].filter(Boolean).join(', '),
      phase,
      tone: doubtful !== undefined ? 'stop' : 'warn',
      // Under gas again, one in doubt waits for whoever looks at it.
      urgency: mostUrgent([{ is: 'waits' }, ...clock.map(({ urgency }) => urgency)]),
      clocks: clock,
      taps: canTaps(t, can),
    },
  ];
}
