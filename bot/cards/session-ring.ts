// What a session's bells show: the brief itself ahead of its time, the flush with its sequence, the rest in a line.

import type { Session } from '../../core/session/session.ts';
import type { ReminderKind } from '../../core/wanted-reminder.ts';
import type { Card, CardAction, CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { mayHeat } from './dead-pot.ts';
import { briefCard, flushConflicts } from './session-cards.ts';
import { airLines, flushing, sessionTaps } from './session-lines.ts';

interface Shown {
  readonly facts: readonly CardFact[];
  /** In place of what to do, where there is more to say. */
  readonly lines?: readonly string[];
  readonly taps: readonly CardAction[];
  readonly hazards: Card['hazards'];
}

export function sessionRing(telling: Telling, session: Session, kind: ReminderKind): Shown {
  const taps = sessionTaps(telling, session);
  switch (kind) {
    case 'brief': {
      const { facts, lines, hazards } = briefCard(telling, session);
      return { facts, lines: [telling.words.rings.brief.act, ...lines], taps, hazards };
    }
    case 'flush':
    case 'vessels':
      return {
        facts: [],
        taps: sessionTaps(telling, session, flushing),
        hazards: flushConflicts(telling, session),
        lines: [telling.words.rings[kind].act, ...(kind === 'vessels' ? potLeftAlone(telling, session) : [])],
      };
    case 'air-recheck':
    case 'spell-end':
      return { facts: [], lines: [telling.words.rings[kind].act, ...airLines(telling, session)], taps, hazards: [] };
    default:
      return { facts: [], taps, hazards: [] };
  }
}

/** A pot that may heat is no vessel to flush. */
function potLeftAlone(telling: Telling, { batch: number }: Session): readonly string[] {
  const seen = number === undefined ? undefined : telling.shop.batches.get(number)?.thickened?.seen;
  if (number === undefined || !mayHeat(seen)) return [];
  return [telling.words.replies.notThatPot(number, seen)];
}
