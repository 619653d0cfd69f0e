// What a sentence tells of parts that come in: their names, what is booked of them, and the talk round it.

import { partsOfRange } from '../acts/part-ranges.ts';
import { mayNamePart } from '../names-typed.ts';
import { oneOf } from '../parts-said/one-of-many.ts';
import type { LineContext } from '../reading.ts';
import { canMarks } from '../tongues/english/line-words.ts';
import { isMetalWord, metalNamed } from '../trade-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { type Label, labelled, labels } from './labels-put.ts';
import { type Counted, countedAt, type Line, lineOf, nextOf, numberedAt } from './names-told.ts';
import { usualUnits } from './part-columns.ts';

export interface Told {
  /** Lines of `part`: two where as many are told as do not go from the first number to the last, each as it may be meant. */
  readonly lines: readonly string[];
  /** It is called so in one word, its papers are told or how many they are, and each figure has its own unit. */
  readonly isCertain: boolean;
  /** Its serial or its job is told. */
  readonly hasPapers: boolean;
  /** By nothing but how many they are. */
  readonly isOnlyCounted: boolean;
  /** No part of the shop is called as those are that are counted. */
  readonly isFirst: boolean;
  readonly isOfJob: boolean;
  /** As many of them are named as they are said to be. */
  readonly isCounted: boolean;
  /** Its name with its papers and more, and hardly a word besides. */
  readonly isListed: boolean;
  /** It begins with them, or with how many they are. */
  readonly isNamedFirst: boolean;
  /** What stands there besides. */
  readonly talk: readonly string[];
  /** All of it without the names. */
  readonly unnamed: string;
}

/** `undefined` where it names none, or has a figure that is of nothing that is booked. */
export function toldIn(typed: string, context: LineContext): Told | undefined {
  const all = foundIn(typed, context);
  if (all === undefined) return undefined;
  const { line, found } = all;
  const { details, metals, talk, isCertain } = found;
  const named = namesIn(found, context);
  if (named.ways.length === 0) return undefined;
  const metal = metalNamed(metals);
  const hasPapers = details.has('serial') || details.has('job');
  const isCounted = named.is === 'told' && (found.counted?.count ?? 0) > 1;
  return {
    lines: named.ways.map((names) =>
      ['part', ...names, ...details.values(), ...(metal === undefined ? [] : [metal])].join(' '),
    ),
    isOnlyCounted: named.is === 'counted',
    isFirst: found.counted?.one !== undefined && nextOf(found.counted.one, context) === 1,
    isOfJob: details.has('job'),
    isCounted,
    hasPapers,
    isListed: details.has('serial') && details.has('job') && details.size + metals.length > 2 && talk.length < 2,
    isCertain:
      isCertain && named.is === 'told' && (hasPapers || isCounted) && (metals.length === 0 || metal !== undefined),
    isNamedFirst: beginsWithThem(all),
    talk,
    unnamed: line.tokens.flatMap((token, i) => (found.named.has(i) ? [] : [token.text])).join(' '),
  };
}

/** What a sentence tells of parts that are booked already, whichever they are. */
export interface ToldBesides extends Pick<Told, 'talk' | 'isCertain' | 'isNamedFirst'> {
  /** As a line of `part` has them. */
  readonly details: readonly string[];
}

/** `undefined` where nothing of how it is made is told, or a figure that is of nothing of it. */
export function toldBesides(typed: string, context: LineContext): ToldBesides | undefined {
  const all = foundIn(typed, context);
  if (all === undefined) return undefined;
  const { details, metals, talk, isCertain } = all.found;
  const metal = metalNamed(metals);
  const isMade = metals.length > 0 || ['area', 'length', 'max'].some((each) => details.has(each));
  if (!isMade || (metal === undefined && metals.length > 0)) return undefined;
  return {
    details: [...details.values(), ...(metal === undefined ? [] : [metal])],
    isNamedFirst: beginsWithThem(all),
    ...{ talk, isCertain },
  };
}

interface Whole {
  readonly line: Line;
  readonly found: Found;
}

const beginsWithThem = ({ line, found }: Whole): boolean => found.named.has(0) || line.tokens[0]?.kind === 'number';

function foundIn(typed: string, context: LineContext): Whole | undefined {
  const text = labelled(typed, context.hearing);
  const line = lineOf(text, tokenize(text, context.hearing), context);
  const found: Found = {
    ...{ names: [], named: new Set(), details: new Map(), metals: [], talk: [], isCertain: true },
    hasName: line.tokens.some((token) => isName(token, context)),
  };
  for (let at = 0; at < line.tokens.length; ) {
    const to = takenFrom(line, at, found);
    if (to === undefined) return undefined;
    at = to;
  }
  return { line, found };
}

interface Found {
  /** One is called by a name in one word. */
  readonly hasName: boolean;
  readonly names: string[];
  /** What those are called that are told by a word and numbers. */
  one?: string;
  /** Where names and numbers of them stand. */
  readonly named: Set<number>;
  readonly details: Map<string, string>;
  readonly metals: string[];
  readonly talk: string[];
  /** Where its last word stands. */
  talkedAt?: number;
  counted?: Counted;
  isCertain: boolean;
}

interface Named {
  /** The names of each way that they may be meant. */
  readonly ways: readonly (readonly string[])[];
  readonly is: 'told' | 'counted' | 'at-odds';
}

/** As they are told; where they are more or fewer than they are said to be, as many from the first on besides. */
function namesIn({ names, counted }: Found, context: LineContext): Named {
  if (names.length === 0) {
    if (counted?.one === undefined || counted.count < 2) return { ways: [], is: 'counted' };
    return { ways: [[rowOf(counted.one, nextOf(counted.one, context), counted.count)]], is: 'counted' };
  }
  const count = names.reduce((sum, name) => sum + (partsOfRange(name, context.hearing)?.length ?? 1), 0);
  if (counted === undefined || counted.count === count) return { ways: [names], is: 'told' };
  const [only = '', another] = names;
  const { one, first } = /^(?<one>.*\D)-(?<first>\d+)\.\./u.exec(only)?.groups ?? {};
  const isOfThese = another === undefined && one !== undefined && one === counted.one && counted.count > 1;
  return { ways: isOfThese ? [names, [rowOf(one, first ?? '', counted.count)]] : [names], is: 'at-odds' };
}

const rowOf = (one: string, first: string | number, count: number): string => {
  const last = String(Number(first) + count - 1).padStart(String(first).length, '0');
  return `${one}-${first}..${one}-${last}`;
};

/** `I have three brackets to paint`: over what stands between them two words are no `have to`. */
function talkAt(found: Found, at: number, word: string): void {
  const last = found.talk.pop();
  if (last !== undefined) found.talk.push(found.talkedAt === at - 1 ? last : `${last},`);
  found.talk.push(word);
  found.talkedAt = at;
}

/** Where the next piece begins; `undefined` at a figure that is of nothing here. */
function takenFrom(line: Line, at: number, found: Found): number | undefined {
  const { tokens, context } = line;
  const token = tokens[at];
  if (token === undefined) return at + 1;
  const label = labels.find((each) => each === wordIn(token));
  if (label !== undefined) return behindLabel(label, tokens, at, found, context);
  if (token.kind === 'quantity') {
    const of = token.quantity.is;
    return (of === 'length' || of === 'area') && isNoted(of, token.text, found) ? at + 1 : undefined;
  }
  if (token.kind !== 'word' && token.kind !== 'number') return undefined;
  const numbered = numberedFrom(line, at, found);
  if (numbered !== undefined) return numbered;
  if (token.kind === 'number') return isCount(line, at, found) ? at + 1 : undefined;
  if (isName(token, context)) {
    const last = rangeFrom(line, at);
    found.names.push(last === undefined ? token.text.toLowerCase() : last.range);
    standAt(found, at, last?.to ?? at + 1);
    return last?.to ?? at + 1;
  }
  if (isMetalWord(token.word)) found.metals.push(token.word);
  else if (/\d/.test(token.text) || token.word === 'lot' || canMarks.has(token.word)) return undefined;
  // What is counted is what comes in, and no talk.
  else if (found.counted?.one !== oneOf(token.text, context))
    talkAt(found, at, withoutAccents(token.text.toLowerCase()));
  return at + 1;
}

/** `flange 2`, where no other name stands; `rail 1, rail 2 and rail 3`. */
function numberedFrom(line: Line, at: number, found: Found): number | undefined {
  if (found.hasName || (found.names.length > 0 && found.one === undefined)) return undefined;
  const numbered = numberedAt(line, at, found.counted);
  if (numbered === undefined || (found.one !== undefined && numbered.one !== found.one)) return undefined;
  found.one = numbered.one;
  found.names.push(...numbered.names);
  found.isCertain &&= numbered.isSure && numbered.count > 1;
  standAt(found, at, numbered.to);
  return numbered.to;
}

function standAt({ named }: Found, from: number, to: number): void {
  for (let i = from; i < to; i++) named.add(i);
}

/** `valve-1 to valve-4`, `valve-1 up to valve-10`, `de la válvula-1 hasta la 10`. */
function rangeFrom({ tokens, context }: Line, at: number): { readonly range: string; readonly to: number } | undefined {
  const first = tokens[at];
  const behind = behindJoint(tokens, at + 1, context);
  const to = behind !== undefined && isArticle(tokens[behind], context) ? behind + 1 : behind;
  const last = to === undefined ? undefined : tokens[to];
  if (first === undefined || to === undefined || last === undefined) return undefined;
  const again = last.kind === 'number' ? first.text.replace(/\d+$/, last.text) : last.text;
  if (last.kind !== 'number' && !isName(last, context)) return undefined;
  const range = `${first.text}..${again}`.toLowerCase();
  return partsOfRange(range, context.hearing) === undefined ? undefined : { range, to: to + 1 };
}

/** Index of what stands behind the word for it. */
function behindJoint(tokens: readonly Token[], at: number, { hearing }: LineContext): number | undefined {
  const joint = tokens[at]?.text.toLowerCase() ?? '';
  if (joint === '-' || hearing.said.lists.to.some((phrase) => phrase.join(' ') === joint)) return at + 1;
  const said = hearing.said.lists.to
    .filter((phrase) => phrase.every((word, i) => tokens[at + i]?.text.toLowerCase() === word))
    .toSorted((one, other) => other.length - one.length)[0];
  return said && at + said.length;
}

const isArticle = (token: Token | undefined, { hearing }: LineContext): boolean =>
  token !== undefined && hearing.said.articles.has(token.text.toLowerCase());

function isNoted(detail: string, text: string, { details }: Found): boolean {
  const isFirst = !details.has(detail);
  if (isFirst) details.set(detail, text);
  return isFirst;
}

/** What stands behind its label; a temperature may stand before it, `250F max`. */
function behindLabel(
  label: Label,
  tokens: readonly Token[],
  at: number,
  found: Found,
  { units = 'metric' }: LineContext,
): number | undefined {
  const value = tokens[at + 1];
  switch (label) {
    case 'serial':
    case 'job':
      return value !== undefined && /\d/.test(value.text) && isNoted(label, `${label} ${value.text}`, found)
        ? at + 2
        : undefined;
    case 'max': {
      if (value?.kind === 'quantity' && value.quantity.is === 'temperature')
        return isNoted(label, `max ${value.text}`, found) ? at + 2 : undefined;
      if (value?.kind !== 'number') return at + 1;
      // `200 degrees` are of the crew's own.
      found.isCertain &&= /\d ?\p{L}/u.test(value.text);
      return isNoted(label, `max ${/^[-\d.,]+/.exec(value.text)?.[0]}${usualUnits.highest?.[units]}`, found)
        ? at + 2
        : undefined;
    }
    default: {
      const never: never = label;
      return never;
    }
  }
}

const isName = (token: Token, { hearing }: LineContext): boolean =>
  token.kind === 'word' && /\d/.test(token.word) && /^\p{L}/u.test(token.word) && mayNamePart(token.word, hearing);

/** Of what is told before its name. */
function isCount(line: Line, at: number, found: Found): boolean {
  const counted = found.counted !== undefined || found.names.length > 0 ? undefined : countedAt(line, at);
  if (counted !== undefined) found.counted = counted;
  return counted !== undefined;
}
