// A spray session on the board: who sprays where, and whether the gun runs.

import { sessionStream } from '../../core/ids.ts';
import type { Session } from '../../core/session/session.ts';
import type { BoardItem } from './board-item.ts';
import type { Telling } from './card-context.ts';
import { sessionTaps } from './session-lines.ts';

export function sessionOnBoard(t: Telling, session: Session): BoardItem {
  const { page } = t.words;
  const last = session.spraying.at(-1);
  const sprays = last !== undefined && last.to === undefined;
  return {
    id: sessionStream(session.number),
    name: page.spraying(session.place),
    what: t.f.list(session.sprayers),
    phase: sprays ? page.sprays : last === undefined ? page.briefed : page.gunStill,
    tone: sprays ? 'warn' : 'plain',
    // While the gun runs people are exposed: before anything that only dries. Else it waits to be gone on with or closed.
    urgency: sprays ? { is: 'soon', endsAt: last.from } : { is: 'waits' },
    clocks: [],
    taps: sessionTaps(t, session),
  };
}
