// `hold impeller-7 orange peel`, `discard 3 gelled in the can`: one can, or parts, then why, in the speaker's own words. No
// fields are read off such a line, since where the names end is where the words begin.

import type { SlotName } from '../../../core/commands.ts';
import { type ReturnsTo, returnsTo } from '../../../core/disposition.ts';
import { isFailed } from '../../../core/failed.ts';
import type { PartName, PersonName } from '../../../core/ids.ts';
import { known } from '../../../core/known.ts';
import { nameAmong } from '../../../core/person-named.ts';
import type { EpochMs } from '../../../core/units.ts';
import { looksLikePart, partNamed } from '../names-typed.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault } from '../reading.ts';
import { type How, mannerOf, trailingTime } from '../time-and-permission.ts';
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
  if (isFailed(held)) return held;
  const own = ownersApart(act, held.reasonFrom);
  const read = withReason('hold', { ...act, tokens: own.tokens }, { ...held, said: { ...held.said, ...own.said } });
  return isFailed(read) ? read : { ...read, ...own.how };
}

/** `scrap impeller-7 cracked`, `rework impeller-7`: the reason may be asked for afterwards. */
export const readDisposed =
  (verb: 'rework' | 'scrap') =>
  (typed: ActLine): ActRead | Fault => {
    const act = { ...typed, tokens: rangesJoined(typed.tokens.flatMap(commasApart), typed.context) };
    // `scrap 3 gelled in the can`
    const number = verb === 'scrap' ? numberScrapped(act) : undefined;
    if (number !== undefined) return number === 'can' ? readDiscard(typed) : number;
    const parts = knownParts(act);
    return isFailed(parts) ? parts : decidedWith(verb, act, parts);
  };

/** `return impeller-7 to the customer wrong alloy`, `return customer impeller-7`. */
export function readReturn(typed: ActLine): ActRead | Fault {
  const all = rangesJoined(typed.tokens.flatMap(commasApart), typed.context);
  const first = returned(all[0]);
  const act = { ...typed, tokens: first === undefined ? all : all.slice(1) };
  const parts = knownParts(act);
  if (isFailed(parts)) return parts;
  const { tokens } = act;
  let from = parts.reasonFrom;
  while (fillers.has(wordIn(tokens[from])) && returned(tokens[from]) === undefined) from += 1;
  const to = first ?? returned(tokens[from]);
  const reasonFrom = to === undefined || first !== undefined ? parts.reasonFrom : from + 1;
  return decidedWith('return', act, { ...parts, said: { ...parts.said, ...known({ to }) }, reasonFrom });
}

/** Names that the shop has, or that look like one: `scrap the rest` is of no part. */
export function knownParts(act: ActLine): Named | Fault {
  const named = partsHeld(act);
  if (isFailed(named)) return named;
  const strange = [named.said.parts].flat().find((part) => !isPart(String(part), act));
  const token = act.tokens.find(({ text }) => text === strange) ?? act.tokens[0];
  return strange === undefined || token === undefined ? named : leftOver(token);
}

const returned = (token: Token | undefined): ReturnsTo | undefined => returnsTo.find((each) => each === wordIn(token));

/** A number alone is a can's where there is one and no part is known by it: of two that it may be nothing is thrown away. */
function numberScrapped({ tokens, context }: ActLine): 'can' | Fault | undefined {
  const first = tokens.find((token) => token.kind !== 'word' || !fillers.has(token.word));
  if (canMarks.has(wordIn(first))) return 'can';
  if (first?.kind !== 'number') return undefined;
  if (tokens.some((token) => canMarks.has(wordIn(token)))) return 'can';
  const number = countFrom(first);
  const live = context.live?.();
  const isPart = context.parts.some((name) => Number(/\d+$/.exec(name)?.[0]) === number);
  const isCan = live === undefined || live.cans.some((can) => can.number === number);
  return isCan && !isPart ? 'can' : leftOver(first);
}

function decidedWith(verb: 'rework' | 'scrap' | 'return', act: ActLine, named: Named): ActRead | Fault {
  const manner = mannerAlone(act, named.reasonFrom);
  if (manner !== undefined) return { command: commandOf(verb, named.said), ...known({ at: named.at }), ...manner };
  const reason = reasonOf(act, named);
  if (isFailed(reason)) return reason;
  const why = reason.words === '' ? undefined : reason.words;
  const command = commandOf(verb, { ...named.said, ...known({ why }) });
  return { command, ...known({ at: named.at }), ...reason.how };
}

/** `see-to impeller-7 bea sand and recoat`: who, what is to be done, or both. */
export function readSeeTo(typed: ActLine): ActRead | Fault {
  const act = { ...typed, tokens: rangesJoined(typed.tokens.flatMap(commasApart), typed.context) };
  const held = partsHeld(act);
  if (isFailed(held)) return held;
  const [first, next] = act.tokens.slice(held.reasonFrom);
  const isLabelled = wordIn(first) === 'owner';
  const owner = personKnown(isLabelled ? next : first, act);
  const from = held.reasonFrom + (owner === undefined ? 0 : isLabelled ? 2 : 1);
  const toDo = toDoFrom(act, from);
  if (isFailed(toDo)) return toDo;
  if (owner === undefined && toDo.words === '') return lacking('owner');
  const command = commandOf('see-to', { ...held.said, ...known({ owner, toDo: toDo.words || undefined }) });
  return { command, ...toDo.how };
}

/** With or without the word for it; what only says when and how is no part of it. */
function toDoFrom(act: ActLine, from: number): FreeText | Fault {
  const manner = mannerAlone(act, from);
  if (manner !== undefined) return { words: '', quoted: false, how: manner };
  return freeTextFrom(act, wordIn(act.tokens[from]) === 'to-do' ? from + 1 : from);
}

/** `already`, `at 9:40`, a leave: where from there on the line says nothing else. */
function mannerAlone({ tokens, line, context }: ActLine, from: number): How | undefined {
  const manner = mannerOf(tokens.slice(from), line, context);
  return isFailed(manner) || manner.tokens.length > 0 ? undefined : manner.how;
}

const personKnown = (token: Token | undefined, { context }: ActLine): PersonName | undefined => {
  const typed = personTyped(token, context.hearing);
  return typed === undefined ? undefined : nameAmong(context.people ?? [], typed);
};

interface OwnersApart {
  /** Up to them. */
  readonly tokens: readonly Token[];
  readonly said: Said;
  readonly how: FreeText['how'];
}

/** At the end of a hold, `owner bea to-do sand and recoat`; anything else behind these words is part of the reason. */
function ownersApart(act: ActLine, reasonFrom: number): OwnersApart {
  const { tokens } = act;
  const toDoAt = tokens.findIndex((token, i) => i > reasonFrom && wordIn(token) === 'to-do');
  const ownerAt = tokens.findIndex(
    (token, i) =>
      i > reasonFrom &&
      wordIn(token) === 'owner' &&
      personKnown(tokens[i + 1], act) !== undefined &&
      (toDoAt === i + 2 || mannerAlone(act, i + 2) !== undefined),
  );
  const owner = ownerAt < 0 ? undefined : personKnown(tokens[ownerAt + 1], act);
  const toDo = toDoAt < 0 ? undefined : freeTextFrom(act, toDoAt + 1);
  const told = toDo === undefined || isFailed(toDo) || toDo.words === '' ? undefined : toDo;
  const ends = [ownerAt, told === undefined ? -1 : toDoAt].filter((at) => at >= 0);
  return {
    tokens: tokens.slice(0, Math.min(tokens.length, ...ends)),
    said: known({ owner, toDo: told?.words }),
    how: told?.how ?? (ownerAt < 0 ? {} : (mannerAlone(act, ownerAt + 2) ?? {})),
  };
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

/** The names that stand in front, and where the rest begins. */
export function partsHeld(act: ActLine): Named | Fault {
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
