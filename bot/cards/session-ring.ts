// What a session's bells show: the brief itself ahead of its time, the flush with its sequence, the rest in a line.

import { mayHeat } from '../../core/heat-care.ts';
import type { Session } from '../../core/session/session.ts';
import { statusOf } from '../../core/status.ts';
import type { ReminderKind } from '../../core/wanted-reminder.ts';
import type { RingWords } from '../language/tongues/english/rings.ts';
import { flushBellLine } from './before-spraying.ts';
import type { Card, CardAction, CardFact } from './card.ts';
import type { Telling } from './card-context.ts';
import { potOverLines } from './dead-pot.ts';
import { briefCard } from './session-cards.ts';
import { airLines, flushing, sessionTaps } from './session-lines.ts';

interface Shown {
  /** Of something else than the session, where only that is still true. */
  readonly name?: string;
  readonly rings?: RingWords;
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
      const over = potOver(telling, session);
      if (over !== undefined) return { ...over, facts: [], taps, hazards: [] };
      const { facts, lines, hazards } = briefCard(telling, session);
      return { facts, lines: [telling.words.rings.brief.act, ...lines], taps, hazards };
    }
    case 'flush':
    case 'vessels': {
      // Flash points were told when the gun came to rest.
      const lines =
        kind === 'flush'
          ? [flushBellLine(telling, session)]
          : [telling.words.rings.vessels.act, ...potLeftAlone(telling, session)];
      return { facts: [], taps: sessionTaps(telling, session, flushing), hazards: [], lines };
    }
    case 'air-recheck':
    case 'spell-end':
      return { facts: [], lines: [telling.words.rings[kind].act, ...airLines(telling, session)], taps, hazards: [] };
    default:
      return { facts: [], taps, hazards: [] };
  }
}

/** Nobody is briefed to spray what is over by the time at which it rings. */
function potOver(telling: Telling, { batch: number }: Session) {
  const batch = number === undefined ? undefined : telling.shop.batches.get(number);
  if (batch === undefined || statusOf.batch(telling, batch).phase.is !== 'over') return undefined;
  return { name: String(batch.number), rings: telling.words.rings['pot-end'], lines: potOverLines(telling, batch) };
}

/** A pot that may heat is no vessel to flush. */
function potLeftAlone(telling: Telling, { batch: number }: Session): readonly string[] {
  const seen = number === undefined ? undefined : telling.shop.batches.get(number)?.thickened?.seen;
  if (number === undefined || !mayHeat(seen)) return [];
  return [telling.words.replies.notThatPot(number, seen)];
}
