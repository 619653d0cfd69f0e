// `a-01..a-04`, `a-01 to a-04`, `rail 1-4`, `rails 1-4`: the parts from one number to another under the same letters, each by its own name.

import type { PartName } from '../../../core/ids.ts';
import type { Hearing } from '../hearing.ts';
import { mayNamePart } from '../names-typed.ts';
import { oneOf } from '../parts-said/one-of-many.ts';
import type { LineContext } from '../reading.ts';
import { type Token, type Word, wordIn } from '../typed/token.ts';

/** More than anybody books in, or racks, at once: a longer row or list is a slip. */
export const mostParts = 200;

/** `a-01-a-04` too: a long dash between two names is a hyphen by now. */
const shape = /^(?<stem>.*\D)(?<from>\d+)(?:\.{2,3}(?<again>.*\D)?|-\k<stem>)(?<to>\d+)$/u;

/** Its names in order; `undefined` where the word is no range of parts. */
export function partsOfRange(word: string, hearing: Hearing): readonly PartName[] | undefined {
  const { stem = '', from = '', again = stem, to = '' } = shape.exec(word)?.groups ?? {};
  const count = Number(to) - Number(from) + 1;
  if (stem !== again || !(count >= 2 && count <= mostParts)) return undefined;
  const names = Array.from(
    { length: count },
    (_, i) => `${stem}${String(Number(from) + i).padStart(from.length, '0')}`,
  );
  return names.every((name) => mayNamePart(name, hearing)) ? names : undefined;
}

/** A range of more parts than anybody means. */
export function isTooLong(word: string): boolean {
  const { stem = '', from = '', again = stem, to = '' } = shape.exec(word)?.groups ?? {};
  const count = Number(to) - Number(from) + 1;
  return stem !== '' && stem === again && count > mostParts;
}

const toWords: ReadonlySet<string> = new Set(['to', 'through', 'thru', 'until', 'a', '-']);

/** `a-01 to a-04` and `rail 1-4` as the one word that each stands for. */
export function rangesJoined(tokens: readonly Token[], context: LineContext): readonly Token[] {
  const joined: Token[] = [];
  let isAny = false;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    const range = rangeAt(tokens, i, context);
    if (range !== undefined) {
      isAny = true;
      joined.push(range.word);
      i = range.to - 1;
    } else if (token !== undefined) joined.push(token);
  }
  return isAny ? joined : tokens;
}

interface RangeAt {
  readonly word: Word;
  readonly to: number;
}

function rangeAt(tokens: readonly Token[], at: number, { hearing, parts }: LineContext): RangeAt | undefined {
  const first = tokens[at];
  const next = tokens[at + 1];
  if (first?.kind !== 'word' || next === undefined) return undefined;
  const ends = numbersAt(tokens, at + 1);
  const one = oneOf(first.word, { hearing, parts });
  // Of a word that the shop has parts of, which of them are meant is not for the spelling to say.
  const isKnown = parts.some((part) => isOf(part, first.word) || isOf(part, one));
  if (ends !== undefined && isStem(first.word, hearing) && !isKnown) {
    return joinedAs(`${one}-${ends.from}..${ends.until}`, first, tokens[ends.to - 1], ends.to, hearing);
  }
  const last = tokens[at + 2];
  if (!toWords.has(next.kind === 'word' ? next.word : wordIn(next)) || last?.kind !== 'word') return undefined;
  return joinedAs(`${first.word}..${last.word}`, first, last, at + 3, hearing);
}

const isStem = (word: string, hearing: Hearing): boolean => !/\d/.test(word) && mayNamePart(word, hearing);

const isOf = (part: PartName, word: string): boolean =>
  part.startsWith(word) && /^[-_./]?\d/.test(part.slice(word.length));

function joinedAs(
  word: string,
  first: Token,
  last: Token | undefined,
  to: number,
  hearing: Hearing,
): RangeAt | undefined {
  if (last === undefined || (!isTooLong(word) && partsOfRange(word, hearing) === undefined)) return undefined;
  return { word: { kind: 'word', word, text: word, start: first.start, end: last.end }, to };
}

interface Numbers {
  readonly from: string;
  readonly until: string;
  readonly to: number;
}

/** `1-40`, `1..40`, `1 to 40`, `01 a 40`. */
function numbersAt(tokens: readonly Token[], at: number): Numbers | undefined {
  const [, low, high] = /^(\d{1,6})(?:-|\.{2,3})(\d{1,6})$/.exec(tokens[at]?.text ?? '') ?? [];
  if (low !== undefined && high !== undefined) return { from: low, until: high, to: at + 1 };
  const [from, joint, until] = tokens.slice(at, at + 3);
  const isNumber = (token: Token | undefined): boolean => /^\d{1,6}$/.test(token?.text ?? '');
  if (from === undefined || until === undefined || !isNumber(from) || !isNumber(until)) return undefined;
  return toWords.has(wordIn(joint)) ? { from: from.text, until: until.text, to: at + 3 } : undefined;
}
