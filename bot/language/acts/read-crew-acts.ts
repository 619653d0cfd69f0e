// What people say of themselves and of a bell: `shift on`, `handover kari`, `ok`.

import type { CommandOf } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Fault } from '../reading.ts';
import { isRingKey } from '../ring-key.ts';
import { betweenNames } from '../tongues/english/line-words.ts';
import { isIgnoredOn } from '../verbs-typed.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { type NameToken, sortPieces } from './sort-pieces.ts';

export function readShift(act: ActLine): CommandOf<'shift'> | Fault {
  const [first, second] = act.tokens;
  if (second !== undefined) return leftOver(second);
  const word = first?.kind === 'word' ? first.word : '';
  // `entro de turno`: the verb itself says which.
  const { says } = act.verb;
  if (first === undefined && says !== undefined) return { verb: 'shift', on: says === 'yes' };
  if (first === undefined) {
    return { failed: 'incomplete', needs: ['on-or-off'], tries: ['on', 'off'].map((way) => `${act.line} ${way}`) };
  }
  if (word !== 'on' && word !== 'off') return { failed: 'left-over', token: first, needs: ['on-or-off'] };
  return { verb: 'shift', on: word === 'on' };
}

/** A name may have two words; in quotes it is as it stands. */
export function readHandover(act: ActLine): CommandOf<'handover'> | Fault {
  const tokens = act.tokens.filter(
    (token) =>
      token.kind !== 'word' ||
      !(betweenNames.has(token.word) || isIgnoredOn('handover', token.word, act.context.hearing)),
  );
  const names = tokens.filter((token) => token.kind === 'word' || token.kind === 'quoted');
  const stray = tokens.find((token) => token.kind !== 'word' && token.kind !== 'quoted');
  if (stray !== undefined) return { failed: 'left-over', token: stray, needs: ['person'] };
  if (names.length === 0) return { failed: 'incomplete', needs: ['person'] };
  return {
    verb: 'handover',
    to: names.map((token) => (token.kind === 'quoted' ? token.words : token.text)).join(' '),
  };
}

/** `ok`, or bells by their keys; a key of several words stands in quotes. */
export function readOk(act: ActLine): CommandOf<'ok'> | Fault {
  const gathered = sortPieces(act);
  if (isFailed(gathered)) return gathered;
  const keys: string[] = [];
  for (const word of gathered.words) {
    const key = keyOf(word);
    if (key === undefined) return leftOver(word);
    keys.push(key);
  }
  const [key, ...also] = keys;
  if (key === undefined) return { verb: 'ok' };
  return { verb: 'ok', key, ...(also.length > 0 && { also }) };
}

function keyOf(token: NameToken): string | undefined {
  const key = token.kind === 'quoted' ? token.words : token.word;
  return isRingKey(key) ? key : undefined;
}
