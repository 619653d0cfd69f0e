// `a-01..a-04`, `a-01 to a-04`: the parts from one number to another under the same letters, each by its own name.

import type { PartName } from '../../../core/ids.ts';
import type { Hearing } from '../hearing.ts';
import { mayNamePart } from '../names-typed.ts';
import { type Token, type Word, wordIn } from '../typed/token.ts';

/** More than anybody racks at once; a longer range is a slip. */
const mostParts = 100;

const shape = /^(?<stem>.*\D)(?<from>\d+)\.{2,3}(?<again>.*\D)?(?<to>\d+)$/u;

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

const toWords: ReadonlySet<string> = new Set(['to', 'through', 'thru', 'until', 'a']);

/** `a-01 to a-04` as the one word that it stands for, where both ends are numbers under the same letters. */
export function rangesJoined(tokens: readonly Token[], hearing: Hearing): readonly Token[] {
  if (!tokens.some(isTo)) return tokens;
  const joined: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const first = tokens[i];
    const range = isTo(tokens[i + 1]) ? rangeFrom(first, tokens[i + 2], hearing) : undefined;
    if (range !== undefined) i += 2;
    const token = range ?? first;
    if (token !== undefined) joined.push(token);
  }
  return joined;
}

const isTo = (token: Token | undefined): boolean => toWords.has(wordIn(token));

function rangeFrom(first: Token | undefined, last: Token | undefined, hearing: Hearing): Word | undefined {
  if (!isWord(first) || !isWord(last)) return undefined;
  const word = `${first.word}..${last.word}`;
  if (partsOfRange(word, hearing) === undefined) return undefined;
  return { kind: 'word', word, text: `${first.text}..${last.text}`, start: first.start, end: last.end };
}

const isWord = (token: Token | undefined): token is Word => token?.kind === 'word';
