// `remind 15m check the gun`: how long from now, then what of, in the speaker's own words.

import { isFailed } from '../../../core/failed.ts';
import type { Fault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import { fillers } from '../tongues/english/line-words.ts';
import type { ActLine, ActRead } from './act-line.ts';
import { figureFor } from './figure-of-slot.ts';
import { freeTextFrom } from './free-text.ts';
import { commandOf } from './read-fields.ts';

export function readRemind(act: ActLine): ActRead | Fault {
  const at = act.tokens.findIndex((token) => token.kind !== 'word' || !fillers.has(token.word));
  const token = act.tokens[at];
  if (token === undefined) return { failed: 'incomplete', needs: ['remind-time'] };
  const minutes = figureFor('remind-time', token, act.line);
  if (typeof minutes !== 'number') return minutes;
  // `remind 15m permit "…"`: no words of one's own, only how it is meant.
  const manner = mannerOf(act.tokens.slice(at + 1), act.line, act.context);
  if (!isFailed(manner) && manner.tokens.length === 0)
    return { command: commandOf('remind', { minutes, text: '' }), ...manner.how };
  const own = freeTextFrom(act, at + 1);
  return isFailed(own) ? own : { command: commandOf('remind', { minutes, text: own.words }), ...own.how };
}
