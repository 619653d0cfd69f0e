// Names of people on a line: a word that means nothing else, or anything in quotes.

import type { PersonName } from '../../core/ids.ts';
import { type Hearing, meansAnother } from './hearing.ts';
import { fillers, insides, notNames, placings } from './tongues/english/line-words.ts';
import { isPlaceRoot } from './trade-words.ts';
import type { Token } from './typed/token.ts';

const nameShape = /^\p{L}[\p{L}\p{N}._-]*$/u;

function isPlainName(word: string, { every }: Hearing): boolean {
  return (
    nameShape.test(word) &&
    !placings.has(word) &&
    !insides.has(word) &&
    !isPlaceRoot(word) &&
    !fillers.has(word) &&
    !notNames.has(word) &&
    !meansAnother(word, every) &&
    word !== 'nobody' &&
    word !== 'already'
  );
}

/** As typed: whom it means, whatever its capitals, is the crew's to say. */
export function personTyped(token: Token | undefined, hearing: Hearing): PersonName | undefined {
  if (token?.kind === 'quoted') return token.words === '' ? undefined : token.words;
  if (token?.kind !== 'word' || !isPlainName(token.word, hearing)) return undefined;
  return token.text;
}

/** In quotes where it could be read as anything else. */
export function writeName(name: PersonName, hearing: Hearing): string {
  return name === name.toLowerCase() && isPlainName(name, hearing) && /^[a-z][a-z0-9-]*$/.test(name)
    ? name
    : JSON.stringify(name);
}
