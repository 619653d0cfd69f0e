// Who put a coat on: whoever was said to; of a sprayed one else the sprayer of its session, where only one was named. Whoever
// typed it is no sprayer by that.

import { before } from './as-it-stands.ts';
import type { Entry } from './history.ts';
import { nounOf, numberIn, type PersonName } from './ids.ts';
import { methodRows } from './methods.ts';
import { foldSession } from './session/session.ts';
import type { Shop } from './shop.ts';

/** `person`: nobody said who sprayed where it is `undefined`; of another method whoever typed it. */
export interface Applied {
  readonly person: PersonName | undefined;
  readonly typedBy: PersonName;
}

export function whoApplied({ sessions }: Pick<Shop, 'sessions'>, entry: Entry): Applied {
  const { fact, by: typedBy, alsoUnder } = entry;
  if (fact.type !== 'CoatApplied') return { person: typedBy, typedBy };
  if (fact.appliedBy !== undefined) return { person: fact.appliedBy, typedBy };
  if (!methodRows[fact.method].atomised) return { person: typedBy, typedBy };
  const stream = alsoUnder.find((other) => nounOf(other) === 'session');
  const session = stream === undefined ? undefined : sessions.get(numberIn(stream));
  const [only, another] = session === undefined ? [] : (foldSession(before(session.entries, entry))?.sprayers ?? []);
  return { person: another === undefined ? only : undefined, typedBy };
}
