// `discard 3 gelled in the can`: which can, and why.

import { isFailed } from '../../../core/failed.ts';
import type { Fault } from '../reading.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { canMarks, fillers } from '../tongues/english/line-words.ts';
import { type ActLine, type ActRead, leftOver } from './act-line.ts';
import { countFrom } from './figure-of-slot.ts';
import { reasonOf } from './read-hold.ts';

export function readDiscard(act: ActLine): ActRead | Fault {
  const index = act.tokens.findIndex(
    (token) => token.kind !== 'word' || !(canMarks.has(token.word) || fillers.has(token.word)),
  );
  const token = act.tokens[index];
  if (token === undefined) return { failed: 'incomplete', needs: ['can'] };
  if (token.kind !== 'number') return { ...leftOver(token), needs: ['can'] };
  const can = countFrom(token);
  if (typeof can !== 'number') return { ...can, needs: ['can'] };
  const time = saidTimeFrom(act.tokens, index + 1, act.context);
  if (time !== undefined && isFailed(time)) return time;
  const reasonFrom = time?.to ?? index + 1;
  const reason = reasonOf(act, { reasonFrom, ...(time !== undefined && { at: time.at }) });
  if (isFailed(reason)) return reason;
  if (reason.words === '') return { failed: 'incomplete', needs: ['reason'] };
  const at = reason.at ?? time?.at;
  return {
    command: { verb: 'discard', can, why: reason.words },
    ...(at !== undefined && { at }),
    ...(reason.stance !== undefined && { stance: reason.stance }),
  };
}
