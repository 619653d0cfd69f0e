// Reads alarms (`eyes`, `fire by the booth`) and near misses (`near miss hose burst`). They are no rows that fields are read
// off, since nothing that follows the word of an alarm may stop the reading.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { BatchNumber } from '../../../core/ids.ts';
import type { Alarm } from '../../../core/session/session-commands.ts';
import type { Fault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { batchMarks, nearMissWords } from '../tongues/english/line-words.ts';
import type { ActLine, ActRead, ReaderToTheEnd } from './act-line.ts';
import { countFrom } from './figure-of-slot.ts';
import { freeTextFrom } from './free-text.ts';

interface AlarmRead extends ActRead {
  readonly command: CommandOf<Alarm>;
}

export function alarmReader(verb: Alarm): ReaderToTheEnd {
  return (typed): ActRead => {
    const { act, batch } = verb === 'hot' ? potApart(typed) : { act: typed };
    const read = readAlarm(verb, act);
    return batch === undefined ? read : { ...read, command: { ...read.command, verb, batch } };
  };
}

/** `hot 12`, `hot pot 12 smoking`: the batch, where a whole number comes first. */
function potApart(act: ActLine): { readonly act: ActLine; readonly batch?: BatchNumber } {
  const [mark] = act.tokens;
  const at = mark?.kind === 'word' && batchMarks.has(mark.word) ? 1 : 0;
  const token = act.tokens[at];
  const isTime = saidTimeFrom(act.tokens, at, act.context) !== undefined;
  const batch = token?.kind === 'number' && !isTime ? countFrom(token) : undefined;
  return typeof batch === 'number' ? { act: { ...act, tokens: act.tokens.slice(at + 1) }, batch } : { act };
}

function readAlarm(verb: Alarm, act: ActLine): AlarmRead {
  const manner = mannerOf(act.tokens, act.line, act.context);
  if (!isFailed(manner) && manner.tokens.length === 0) return { command: { verb }, ...manner.how };
  const own = freeTextFrom(act, 0);
  const raw = act.tokens[0] === undefined ? '' : act.line.slice(act.tokens[0].start);
  const words = isFailed(own) ? raw : own.words;
  const command: CommandOf<Alarm> = { verb, ...(words !== '' && { note: words }) };
  return isFailed(own) ? { command } : { command, ...own.how };
}

/** `anonymous near miss ...`, `near miss anonymous ...`. */
export function readNearMiss(act: ActLine): ActRead | Fault {
  const said = act.verb.anonymous;
  let anonymous = said ?? false;
  let from = 0;
  for (; from < act.tokens.length; from++) {
    const token = act.tokens[from];
    if (token?.kind !== 'word') break;
    if (token.word === 'anonymous') anonymous = true;
    else if (!(said && nearMissWords.has(token.word))) break;
  }
  const own = freeTextFrom(act, from);
  if (isFailed(own)) return own;
  if (own.words === '') return { failed: 'incomplete', needs: ['told'] };
  return { command: { verb: 'near-miss', text: own.words, anonymous }, ...own.how };
}
