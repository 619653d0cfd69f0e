// `hold impeller-7 orange peel`: one part or several, then the reason in the speaker's own words.

import { isFailed } from '../../../core/failed.ts';
import type { PartName } from '../../../core/ids.ts';
import type { EpochMs } from '../../../core/units.ts';
import { looksLikePart, partNamed } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import { trailingTime } from '../time-and-permission.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { fillers } from '../tongues/english/line-words.ts';
import type { Token } from '../typed/token.ts';
import { type ActLine, type ActRead, leftOver } from './act-line.ts';
import { commasApart } from './commas-apart.ts';
import { type FreeText, freeTextFrom } from './free-text.ts';
import { partsOfRange, rangesJoined } from './part-ranges.ts';
import { partOfTwoPieces } from './sort-pieces.ts';

interface Held {
  readonly parts: readonly PartName[];
  readonly at?: EpochMs;
  /** Where the reason begins. */
  readonly reasonFrom: number;
}

export function readHold(typed: ActLine): ActRead | Fault {
  const act = { ...typed, tokens: rangesJoined(typed.tokens.flatMap(commasApart)) };
  const held = partsHeld(act);
  if (isFailed(held)) return held;
  if (held.parts.length === 0) return { failed: 'incomplete', needs: ['parts'] };
  const reason = reasonOf(act, held);
  if (isFailed(reason)) return reason;
  if (reason.words === '') return { failed: 'incomplete', needs: ['reason'] };
  const at = reason.at ?? held.at;
  return {
    command: { verb: 'hold', parts: held.parts, why: reason.words },
    ...(at !== undefined && { at }),
    ...(reason.stance !== undefined && { stance: reason.stance }),
  };
}

function partsHeld(act: ActLine): Held | Fault {
  const parts: PartName[] = [];
  let at: EpochMs | undefined;
  let i = 0;
  for (; i < act.tokens.length; i++) {
    const token = act.tokens[i];
    if (token === undefined || token.kind === 'quoted') break;
    const time = saidTimeFrom(act.tokens, i, act.context);
    if (time !== undefined) {
      if (isFailed(time)) return time;
      if (at !== undefined) return leftOver(token);
      at = time.at;
      i = time.to - 1;
      continue;
    }
    if (isJoint(token, act.tokens[i + 1], parts.length, act)) continue;
    const joined = token.kind === 'number' ? partOfTwoPieces(act, i, token) : undefined;
    if (joined !== undefined) return joined;
    const range = token.kind === 'word' ? partsOfRange(token.word) : undefined;
    if (range !== undefined) {
      parts.push(...range.filter((name) => !parts.includes(name)));
      continue;
    }
    const part = token.kind === 'word' ? partNamed(token.word) : undefined;
    if (parts.length === 0 && part === undefined) return leftOver(token);
    if (part === undefined || (parts.length > 0 && !isPart(part, act))) break;
    if (!parts.includes(part)) parts.push(part);
  }
  return { parts, reasonFrom: i, ...(at !== undefined && { at }) };
}

/** `and` between two parts, `for` before the reason, `part` before the first. */
function isJoint(token: Token, next: Token | undefined, parts: number, act: ActLine): boolean {
  if (token.kind !== 'word') return false;
  if (parts === 0) return fillers.has(token.word) || token.word === 'part' || token.word === 'a';
  if (token.word === 'for' || token.word === 'because') return true;
  return fillers.has(token.word) && next?.kind === 'word' && isPart(next.word, act);
}

function isPart(word: string, act: ActLine): boolean {
  return act.context.parts.includes(word) || looksLikePart(word);
}

/** A time or `already` at the very end belongs to the act and not to its reason. */
export function reasonOf(act: ActLine, held: Pick<Held, 'at' | 'reasonFrom'>): FreeText | Fault {
  const own = freeTextFrom(act, held.reasonFrom);
  if (isFailed(own) || own.quoted || own.words === '') return own;
  const last = act.tokens.at(-1);
  const isAlready = last?.kind === 'word' && last.word === 'already';
  const spoken = isAlready ? act.tokens.slice(0, -1) : act.tokens;
  const timeFrom = held.at === undefined ? trailingTime(spoken, held.reasonFrom, act.context) : undefined;
  const time = timeFrom === undefined ? undefined : saidTimeFrom(spoken, timeFrom, act.context);
  const kept = timeFrom === undefined ? spoken : spoken.slice(0, timeFrom);
  const first = kept[held.reasonFrom];
  const end = kept.at(-1);
  return {
    words: first === undefined || end === undefined ? '' : act.line.slice(first.start, end.end),
    quoted: false,
    ...(time !== undefined && 'at' in time && { at: time.at }),
    ...(isAlready && { stance: { is: 'happened' } as const }),
  };
}
