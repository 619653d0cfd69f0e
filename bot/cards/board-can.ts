// A can on the board, for as long as it stands without gas over it or is in doubt: a can under gas waits for nobody.

import type { Can } from '../../core/can/can.ts';
import { canStream } from '../../core/ids.ts';
import { statusOf } from '../../core/status.ts';
import { type BoardItem, clockOnBoard } from './board-item.ts';
import { gasWords } from './can-cards.ts';
import type { Telling } from './card-context.ts';
import { nextTaps } from './next-taps.ts';
import { mostUrgent, toneOf } from './urgency.ts';

export function canOnBoard(telling: Telling, can: Can): readonly BoardItem[] {
  const status = statusOf.can(telling, can);
  const { phase } = status;
  if (phase.is !== 'doubtful' && phase.is !== 'lid-off' && phase.is !== 'reacts') return [];
  const clocks = status.clocks.flatMap((clock) => (clock.id === 'lid-off' ? [clockOnBoard(telling, clock)] : []));
  // Under gas again, one in doubt waits for whoever looks at it.
  const urgency = mostUrgent([
    { is: phase.is === 'reacts' ? 'over' : 'waits' },
    ...clocks.map((clock) => clock.urgency),
  ]);
  return [
    {
      id: canStream(can.number),
      name: telling.words.page.can(can.number),
      what: [telling.words.material.component[can.component], can.lot].filter(Boolean).join(', '),
      phase: gasWords(telling, phase),
      tone: toneOf(urgency),
      urgency,
      clocks,
      taps: nextTaps(telling, status.next()),
    },
  ];
}
