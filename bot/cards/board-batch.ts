// A batch on the board: its blend and its pot life.

import type { Batch } from '../../core/batch/batch.ts';
import { batchStream } from '../../core/ids.ts';
import { type BatchNow, statusOf } from '../../core/status.ts';
import { atWorstLines, batchTaps, potState } from './batch-cards.ts';
import { type BoardItem, clockOnBoard } from './board-item.ts';
import type { Telling } from './card-context.ts';
import { mostUrgent, toneOf, type Urgency } from './urgency.ts';

export function batchOnBoard(telling: Telling, batch: Batch): BoardItem {
  const status = statusOf.batch(telling, batch);
  const clocks = status.clocks.map((clock) => clockOnBoard(telling, clock));
  const urgency = mostUrgent([ofPhase(status.phase), ...clocks.map((clock) => clock.urgency)]);
  return {
    id: batchStream(batch.number),
    name: telling.words.page.batch(batch.number),
    what: `${batch.sheet.name}, ${telling.figures.mass(batch.plannedGrams)}`,
    phase: [potState(telling, status), ...atWorstLines(telling, batch)].join('. '),
    tone: toneOf(urgency),
    urgency,
    clocks,
    taps: batchTaps(telling, status),
  };
}

function ofPhase(phase: BatchNow['phase']): Urgency {
  switch (phase.is) {
    case 'to-weigh':
      return { is: 'ready' };
    case 'paused':
      return { is: 'waits' };
    case 'over':
    case 'dead':
      // Its life ended then; the pot still stands there and may heat.
      return { is: 'over', endsAt: phase.at };
    case 'blending':
    case 'filtered':
    case 'emptied':
      return { is: 'runs' };
  }
}
