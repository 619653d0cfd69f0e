// `hold impeller-7 orange peel`, `discard 3 gelled in the can`: one can, or parts, then why, in the speaker's own words. No
// fields are read off such a line, since where the names end is where the words begin.

import type { SlotName } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { PartName } from '../../../core/ids.ts';
import { known } from '../../../core/known.ts';
import type { EpochMs } from '../../../core/units.ts';
import { looksLikePart, partNamed } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import { trailingTime } from '../time-and-permission.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { canMarks, fillers } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, type ActRead, leftOver, type Said } from './act-line.ts';
import { commasApart } from './commas-apart.ts';
import { countFrom } from './figure-of-slot.ts';
import { type FreeText, freeTextFrom } from './free-text.ts';
import { partsOfRange, rangesJoined } from './part-ranges.ts';
import { commandOf } from './read-fields.ts';
import { partOfTwoPieces, partOfWords } from './sort-pieces.ts';

interface Named {
  readonly said: Said;
  readonly at?: EpochMs;
  /** Where the reason begins. */
  readonly reasonFrom: number;
}

export function readDiscard(act: ActLine): ActRead | Fault {
  const index = act.tokens.findIndex(
    (token) => token.kind !== 'word' || !(canMarks.has(token.word) || fillers.has(token.word)),
  );
  const token = act.tokens[index];
  if (token === undefined) return lacking('can');
  if (token.kind !== 'number') return { ...leftOver(token), needs: ['can'] };
  const can = countFrom(token, 'can');
  if (typeof can !== 'number') return { ...can, needs: ['can'] };
  const time = saidTimeFrom(act.tokens, index + 1, act.context);
  if (time !== undefined && isFailed(time)) return time;
  return withReason('discard', act, { said: { can }, reasonFrom: time?.to ?? index + 1, ...atOf(time) });
}

export function readHold(typed: ActLine): ActRead | Fault {
  const act = { ...typed, tokens: rangesJoined(typed.tokens.flatMap(commasApart), typed.context) };
  const held = partsHeld(act);
  return isFailed(held) ? held : withReason('hold', act, held);
}

const lacking = (slot: SlotName): Fault => ({ failed: 'incomplete', needs: [slot] });
const atOf = (time: { readonly at: EpochMs } | undefined) => time && { at: time.at };

function withReason(verb: 'discard' | 'hold', act: ActLine, named: Named): ActRead | Fault {
  const reason = reasonOf(act, named);
  if (isFailed(reason)) return reason;
  if (reason.words === '') return lacking('reason');
  const command = commandOf(verb, { ...named.said, why: reason.words });
  return { command, ...known({ at: named.at }), ...reason.how };
}

function partsHeld(act: ActLine): Named | Fault {
  const parts: PartName[] = [];
  let at: EpochMs | undefined;
  let asNew = false;
  let i = 0;
  for (; i < act.tokens.length; i++) {
    const token = act.tokens[i];
    if (token === undefined || token.kind === 'quoted') break;
    if (parts.length === 0 && wordIn(token) === 'new') {
      asNew = true;
      continue;
    }
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
    const range = token.kind === 'word' ? partsOfRange(token.word, act.context.hearing) : undefined;
    if (range !== undefined) {
      parts.push(...range.filter((name) => !parts.includes(name)));
      continue;
    }
    const inWords = parts.length === 0 ? partOfWords(act, i) : undefined;
    if (inWords !== undefined) return inWords;
    const part = token.kind === 'word' ? partNamed(token.word, act.context) : undefined;
    if (parts.length === 0 && part === undefined) return leftOver(token);
    if (part === undefined || (parts.length > 0 && !isPart(part, act))) break;
    if (!parts.includes(part)) parts.push(part);
  }
  if (parts.length === 0) return lacking('parts');
  return { said: { parts, ...(asNew && { asNew }) }, reasonFrom: i, ...known({ at }) };
}

/** `and` between two parts, `for` before the reason (in Spanish the `por` that is `by` elsewhere), `part` before the first. */
function isJoint(token: Token, next: Token | undefined, parts: number, act: ActLine): boolean {
  if (token.kind !== 'word') return false;
  if (parts === 0) return fillers.has(token.word) || token.word === 'part' || token.word === 'a';
  if (['for', 'by', 'because'].includes(token.word)) return true;
  // `because of runs`
  if (token.word === 'of' && act.tokens.some((each) => wordIn(each) === 'because')) return true;
  return fillers.has(token.word) && next?.kind === 'word' && isPart(next.word, act);
}

function isPart(word: string, act: ActLine): boolean {
  return act.context.parts.includes(word) || looksLikePart(word);
}

/** A time or `already` at the very end belongs to the act and not to its reason. */
function reasonOf(act: ActLine, held: Named): FreeText | Fault {
  const own = freeTextFrom(act, held.reasonFrom);
  if (isFailed(own) || own.quoted || own.words === '') return own;
  const last = act.tokens.at(-1);
  const isAlready = wordIn(last) === 'already';
  const spoken = isAlready ? act.tokens.slice(0, -1) : act.tokens;
  const timeFrom = held.at === undefined ? trailingTime(spoken, held.reasonFrom, act.context) : undefined;
  const time = timeFrom === undefined ? undefined : saidTimeFrom(spoken, timeFrom, act.context);
  const kept = timeFrom === undefined ? spoken : spoken.slice(0, timeFrom);
  const first = kept[held.reasonFrom];
  const end = kept.at(-1);
  return {
    words: first === undefined || end === undefined ? '' : act.line.slice(first.start, end.end),
    quoted: false,
    how: {
      ...(time !== undefined && !isFailed(time) && { at: time.at }),
      ...(isAlready && { stance: { is: 'happened' } }),
    },
  };
}
