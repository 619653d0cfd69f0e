// A batch on the board: its blend and its pot life.

import { type Batch, type BatchPhase, phaseOf } from '../../core/batch/batch.ts';
import { blendClock, blendDueAt, potLifeClock, potLifeTimes } from '../../core/batch/batch-clocks.ts';
import { batchStream } from '../../core/ids.ts';
import { airLog } from '../../core/shop.ts';
import { batchTaps } from './batch-cards.ts';
import { atLeastClock, atMostClock, type BoardClock, type BoardItem, toneOfClocks } from './board-item.ts';
import type { Telling } from './card-context.ts';
import { mostUrgent, type Urgency } from './urgency.ts';

export function batchOnBoard(t: Telling, batch: Batch): BoardItem {
  const state = phaseOf(batch);
  const phase = state.is;
  const clocks = [...blendOnBoard(t, batch), ...potOnBoard(t, batch)];
  return {
    id: batchStream(batch.number),
    name: t.words.page.batch(batch.number),
    what: `${batch.sheet.name}, ${t.f.mass(batch.plannedGrams)}`,
    phase: t.words.phases[phase],
    tone: phase === 'dead' ? 'stop' : toneOfClocks(clocks),
    urgency: mostUrgent([ofPhase(state), ...clocks.map(({ urgency }) => urgency)]),
    clocks,
    taps: batchTaps(t, batch),
  };
}

function ofPhase(phase: BatchPhase): Urgency {
  switch (phase.is) {
    case 'to-weigh':
    case 'paused':
      return { is: 'waits' };
    case 'dead':
      // Its life ended when somebody saw it; the pot still stands there and may heat.
      return { is: 'over', endsAt: phase.at };
    case 'blending':
    case 'filtered':
    case 'emptied':
      return { is: 'runs' };
  }
}

/** Until the mix is filtered: after that nobody waits for its stirring. */
function blendOnBoard(t: Telling, batch: Batch): readonly BoardClock[] {
  const phase = phaseOf(batch).is;
  if (phase !== 'blending' && phase !== 'paused') return [];
  const air = airLog(t.shop, batch.place);
  const clock = blendClock(batch, air, t.now);
  return [
    atLeastClock(t, {
      id: batch.sheet.blend.way,
      progress: clock.dose.progress,
      dueAt: blendDueAt(batch, air),
      done: clock.doneAt !== undefined && clock.doneAt <= t.now,
      runs: clock.running,
      noCredit: clock.withoutFigure !== undefined,
    }),
  ];
}

function potOnBoard(t: Telling, batch: Batch): readonly BoardClock[] {
  const phase = phaseOf(batch).is;
  const air = airLog(t.shop, batch.place);
  const pot = potLifeTimes(batch, air);
  if (pot === undefined || phase === 'dead' || phase === 'emptied') return [];
  const { progress } = potLifeClock(batch, air, t.now).dose;
  return [atMostClock(t, { id: 'pot', progress, nearAt: pot.marginAt, endAt: pot.endAt })];
}
