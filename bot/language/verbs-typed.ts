// From the first words of a line to its row in the vocabulary.

import { type Hearing, meaningOf } from './hearing.ts';
import { smallInVerb } from './tongues/english/line-words.ts';
import type { Token, Word } from './typed/token.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';
import type { VocabularyName } from './vocabulary.ts';

/** True for a word that only rounds a sentence off on this row. */
export const isIgnoredOn = (name: VocabularyName, word: string, { rows }: Hearing): boolean =>
  rows.get(name)?.ignores.has(word) ?? false;

/** The spelling that the readers know, on this row. */
export const meaningOn = (name: VocabularyName, word: string, hearing: Hearing): string =>
  hearing.rows.get(name)?.means.get(withoutAccents(word)) ?? meaningOf(word, hearing);

/** The pieces of a line by what they mean on this row. */
export function meantOn(name: VocabularyName, tokens: readonly Token[], { rows }: Hearing): readonly Token[] {
  const means = rows.get(name)?.means;
  if (means === undefined || means.size === 0) return tokens;
  return tokens.map((token) => {
    const word = token.kind === 'word' ? means.get(asTyped(token)) : undefined;
    return word === undefined || token.kind !== 'word' ? token : { ...token, word };
  });
}

export function verbNamed(word: string, { verbs }: Hearing): VerbNamed | undefined {
  return verbs.get(word) ?? verbs.get(withoutAccents(word));
}

/** `wet film`, `got it`. */
function verbOfTwoWords(first: Word, second: Word, { verbs, firstOfTwo }: Hearing): VerbNamed | undefined {
  const typed = asTyped(first);
  if (firstOfTwo.has(first.word)) {
    const verb = verbs.get(`${first.word} ${second.word}`);
    if (verb !== undefined) return verb;
  }
  return firstOfTwo.has(typed) ? verbs.get(`${typed} ${asTyped(second)}`) : undefined;
}

export interface VerbAt extends VerbNamed {
  /** Index of the token after it. */
  readonly to: number;
}

/** `first shift done`, `show me how`: three words or four, as they stand. */
function verbOfMoreWords(tokens: readonly Token[], from: number, { verbs, firstOfMore }: Hearing): VerbAt | undefined {
  const first = tokens[from];
  if (first?.kind !== 'word' || !firstOfMore.has(asTyped(first))) return undefined;
  for (const count of [4, 3]) {
    const said = tokens.slice(from, from + count).map((token) => (token.kind === 'word' ? asTyped(token) : ''));
    const verb = said.length === count ? verbs.get(said.join(' ')) : undefined;
    if (verb !== undefined) return { ...verb, to: from + count };
  }
  return undefined;
}

/** What may stand inside a verb of two words: `parar la pistola`, `agitador en marcha`. */
const mostSmallWords = 2;

/** The verb that begins at token `from`, of more words before one. */
export function verbAt(tokens: readonly Token[], from: number, hearing: Hearing): VerbAt | undefined {
  const first = tokens[from];
  if (first?.kind !== 'word') return undefined;
  const long = verbOfMoreWords(tokens, from, hearing);
  if (long !== undefined) return long;
  for (let next = from + 1; next <= from + 1 + mostSmallWords; next++) {
    const other = tokens[next];
    if (other?.kind !== 'word') break;
    const pair = verbOfTwoWords(first, other, hearing);
    if (pair !== undefined) return { ...pair, to: next + 1 };
    if (!smallInVerb.has(other.word)) break;
  }
  const verb = verbOfWord(first, hearing);
  return verb === undefined ? undefined : { ...verb, to: from + 1 };
}

/** By what the word means, else by the word itself: `resumen` is a setting's name and asks for the day. */
export function verbOfWord(word: Word, hearing: Hearing): VerbNamed | undefined {
  return verbNamed(word.word, hearing) ?? hearing.verbs.get(asTyped(word));
}

const asTyped = ({ text }: Word): string => withoutAccents(text.toLowerCase());
