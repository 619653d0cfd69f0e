// What parts that come in are called where a sentence names them by a word and numbers: `valve 1 to 5`, `gear 1 thru gear 4`,
// `bracket 1, 2 and 3`, `twelve brackets, 1 to 12`. Which words stand for one of them and which for several, and how many they are said to be.

import { mayNamePart } from '../names-typed.ts';
import { type Atoms, atomsOf } from '../parts-said/atoms.ts';
import { articlesFrom, jointAt, numbersListed, wholeAt } from '../parts-said/numbers-listed.ts';
import { oneOf } from '../parts-said/one-of-many.ts';
import type { LineContext } from '../reading.ts';
import { isMetalWord } from '../trade-words.ts';
import type { Token, Word } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';

export interface Line {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly atoms: Atoms;
  readonly context: LineContext;
}

export const lineOf = (text: string, tokens: readonly Token[], context: LineContext): Line => ({
  ...{ text, tokens, context },
  atoms: atomsOf(text, tokens),
});

export interface Counted {
  readonly count: number;
  /** What one of them is called. */
  readonly one: string | undefined;
}

/** More words stand between a count and what is counted: `six more of the steel brackets`. */
const mostBetween = 4;

/** `four valve bodies`, `6 more impellers`: the number at this token, and of what. */
export function countedAt({ tokens, context }: Line, at: number): Counted | undefined {
  const token = tokens[at];
  const next = tokens[at + 1];
  if (token?.kind !== 'number' || next?.kind !== 'word' || !/^[1-9]\d{0,2}$/.test(token.text)) return undefined;
  const behind = tokens.slice(at + 1, at + 1 + mostBetween);
  const end = behind.findIndex((each) => each.kind !== 'word' || /\d/.test(each.text));
  const words = (end === -1 ? behind : behind.slice(0, end)).filter((each) => each.kind === 'word');
  const many = words.find((word) => isThing(word, context) && isPlural(word.text, context));
  return { count: Number(token.text), one: many && oneOf(many.text, context) };
}

export interface Numbered {
  /** As a line of `part` has them, one word for those from one number to another. */
  readonly names: readonly string[];
  /** What one of them is called. */
  readonly one: string;
  readonly count: number;
  /** From this one on, where they are told by the first and the last. */
  readonly first: string | undefined;
  /** Nothing of it may be meant otherwise. */
  readonly isSure: boolean;
  readonly to: number;
}

/** Numbers behind the word for what they are of, or behind how many of what they are. */
export function numberedAt(line: Line, at: number, counted: Counted | undefined): Numbered | undefined {
  const { tokens, atoms, context } = line;
  const token = tokens[at];
  const isNoun = token?.kind === 'word' && isThing(token, context, counted?.one);
  const from = atoms.firstOf[isNoun ? at + 1 : at];
  const one = isNoun ? oneOf(token.text, context) : counted?.one;
  if (
    from === undefined ||
    one === undefined ||
    (!isNoun && token?.kind !== 'number' && !/^\d/.test(token?.text ?? ''))
  )
    return undefined;
  const told = numbersAt(line, from, one);
  const to = told && atoms.all[told.to - 1]?.ends;
  if (told === undefined || to === undefined) return undefined;
  const start = isNoun ? at + 1 : at;
  // `brought 4 frames` counts them, and behind their count one number alone says nothing of a name.
  const isName = isNoun && countedAt(line, start)?.one === undefined;
  if (told.numbers.length < 2 && !isName) return undefined;
  const typed = /\d+/.exec(line.text.slice(tokens[start]?.start))?.[0] ?? '';
  // `the shares of the plough, 1 to 14`: which of the words is their name is not said.
  const isBehind = /^[^\d,;:]*\d/.test(line.text.slice(token?.end));
  const name = (number: number): string => `${one}-${String(number).padStart(typed.length, '0')}`;
  const [first = 0] = told.numbers;
  const last = told.numbers.at(-1) ?? first;
  return {
    names: told.isStretch ? [`${name(first)}..${name(last)}`] : told.numbers.map(name),
    ...{ one, to },
    count: told.numbers.length,
    first: told.isStretch ? typed : undefined,
    isSure: isNoun && isBehind && told.isSure && one === token.text.toLowerCase(),
  };
}

interface Numbers {
  readonly numbers: readonly number[];
  readonly to: number;
  readonly isSure: boolean;
  readonly isStretch: boolean;
}

/** Each once and rising; of a stretch nothing stands besides. */
function numbersAt({ atoms: { all }, context }: Line, from: number, one: string): Numbers | undefined {
  const { lists } = context.hearing.said;
  const told = numbersListed(all, { at: from, isPlural: false }, lists);
  const [first] = told?.numbers ?? [];
  if (told === undefined || first === undefined) return undefined;
  // `gear 1 thru gear 4`
  const joint = told.numbers.length === 1 ? jointAt(all, told.to, lists) : undefined;
  const again = joint?.is === 'to' ? articlesFrom(all, joint.to, lists, false) : -1;
  const last = isOf(all[again]?.text ?? '', one, context) ? wholeAt(all, again + 1) : undefined;
  if (last !== undefined && last > first) {
    const numbers = Array.from({ length: last - first + 1 }, (_, i) => first + i);
    return { numbers, to: again + 2, isSure: told.isSure, isStretch: true };
  }
  const isWhole = (told.numbers.at(-1) ?? first) - first === told.numbers.length - 1;
  return told.isStretch && !isWhole ? undefined : told;
}

const isOf = (word: string, one: string, context: LineContext): boolean =>
  word !== '' && [word, oneOf(word, context)].includes(withoutAccents(one));

/** Of people, of cans, of metals and of what has words of its own nothing is booked. */
function isThing(token: Word, context: LineContext, counted?: string): boolean {
  const { hearing } = context;
  const word = withoutAccents(token.text.toLowerCase());
  if (!/^\p{L}{3,}$/u.test(word) || isMetalWord(token.word) || hearing.said.light.has(word)) return false;
  const one = oneOf(word, context);
  if (!mayNamePart(`${one}-1`, hearing) || isSaidOfComing(word, context)) return false;
  return (
    (mayNamePart(word, hearing) && !hearing.said.byFirst.has(word)) ||
    one === counted ||
    hearing.said.lists.nouns.has(one)
  );
}

/** `came 2`, `numbered 1 to 8`. */
const isSaidOfComing = (word: string, { hearing }: LineContext): boolean =>
  hearing.tongues.some(({ partsIn: { arrived, numbered } }) => `${arrived}, ${numbered}`.split(/,? /).includes(word));

const isPlural = (text: string, context: LineContext): boolean => oneOf(text, context) !== text.toLowerCase();

/** The first number that no part of this name has. */
export const nextOf = (one: string, { parts }: LineContext): number =>
  1 +
  Math.max(0, ...parts.flatMap((part) => (part.startsWith(`${one}-`) ? [Number(/\d+$/.exec(part)?.[0] ?? 0)] : [])));
