// A part on the board: flash-off, recoat window, cure.

import { isAct } from '../../core/history.ts';
import { partStream } from '../../core/ids.ts';
import type { NounClock } from '../../core/noun-clock.ts';
import type { PartClockId, PartStatus } from '../../core/part/part-status.ts';
import type { PartNow } from '../../core/status.ts';
import { type BoardClockId, type BoardItem, clockOnBoard } from './board-item.ts';
import type { Telling } from './card-context.ts';
import { halfLines, heldLines, partTaps } from './part-cards.ts';
import { partPhaseTold } from './part-phase.ts';
import { mostUrgent, toneOf, type Urgency } from './urgency.ts';

export function partOnBoard(telling: Telling, status: PartNow): BoardItem {
  const { part, phase } = status;
  const clocks = status.clocks.filter((clock) => isShown(clock, status)).map((clock) => clockOnBoard(telling, clock));
  const { metal, serial } = part.details;
  const [held] = heldLines(telling, status);
  const ofPart = held === undefined ? ofPhase(phase.is) : { is: 'waits' as const };
  const urgency = mostUrgent([ofPart, ...clocks.map((clock) => clock.urgency)]);
  return {
    id: partStream(part.name),
    name: part.name,
    what: [metal === undefined ? '' : telling.words.names.metal(metal), serial].filter(Boolean).join(', '),
    phase: [held ?? partPhaseTold(telling, part), ...halfLines(telling, status)].join('. '),
    tone: toneOf(urgency),
    urgency,
    clocks,
    taps: partTaps(telling, status),
    lastAct: part.entries.findLast(isAct)?.seq ?? 0,
  };
}

function ofPhase(phase: PartStatus['phase']['is']): Urgency {
  switch (phase) {
    case 'cured':
      return { is: 'given' };
    case 'dry':
      return { is: 'ready' };
    case 'bare':
    case 'flashing':
    case 'curing':
    case 'released':
    case 'left':
    case 'rework':
    case 'scrapped':
    case 'returned':
      return { is: 'runs' };
  }
}

/** A clock that somebody waits for now: what is over is behind the part, and one clock is shown of those that follow on. */
function isShown(
  clock: NounClock<PartClockId>,
  { phase, clocks }: PartStatus,
): clock is NounClock<PartClockId & BoardClockId> {
  const isGiven = (id: PartClockId) => clocks.some((other) => other.id === id && other.progress === 1);
  const flashes = phase.is === 'flashing' || phase.is === 'dry';
  switch (clock.id) {
    case 'surface':
      return true;
    case 'flash':
      return phase.is === 'flashing' || !isGiven('flash');
    case 'flash-most':
      return phase.is === 'flashing' && isGiven('flash');
    case 'recoat-opens':
      return flashes && !isGiven('recoat-opens');
    case 'recoat-closes':
      return flashes && isGiven('recoat-opens');
    case 'cure':
      return phase.is === 'curing';
    case 'open':
    case 'warm':
    case 'stage-handle':
    case 'stage-service':
    case 'stage-full':
      return false;
  }
}
