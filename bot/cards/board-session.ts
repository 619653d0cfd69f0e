// A spray session on the board: who sprays where, and whether the gun runs.

import { sessionStream } from '../../core/ids.ts';
import type { Session } from '../../core/session/session.ts';
import { statusOf } from '../../core/status.ts';
import type { BoardItem } from './board-item.ts';
import type { Telling } from './card-context.ts';
import { nextTaps } from './next-taps.ts';
import { sessionState } from './session-lines.ts';
import { toneOf, type Urgency } from './urgency.ts';

export function sessionOnBoard(telling: Telling, session: Session): BoardItem {
  const { phase, next } = statusOf.session(telling, session);
  // While the gun runs people are exposed: before anything that only dries. Else it waits to be gone on with or closed.
  const urgency: Urgency = phase.is === 'sprays' ? { is: 'soon', endsAt: phase.from } : { is: 'ready' };
  return {
    id: sessionStream(session.number),
    name: telling.words.page.spraying(session.place),
    what: telling.figures.list(session.sprayers),
    phase: sessionState(telling, phase),
    tone: toneOf(urgency),
    urgency,
    clocks: [],
    taps: nextTaps(telling, next()),
  };
}
