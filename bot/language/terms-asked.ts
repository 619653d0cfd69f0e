// Which word of the trade a `what is` asks about, by the names that each tongue has for it.

import { isOwnKey } from '../../core/own-key.ts';
import type { Hearing } from './hearing.ts';
import { nearest } from './suggestions.ts';
import { glossaryRows, type TermId } from './tongues/glossary.ts';
import { withoutAccents } from './typed/without-accents.ts';

const folded = (text: string): string =>
  withoutAccents(text.toLowerCase())
    .replace(/[-\s]+/g, ' ')
    .trim();

const isTerm = (id: string): id is TermId => isOwnKey(glossaryRows, id);

/** Made once a set of tongues. */
const named = new WeakMap<Hearing, ReadonlyMap<string, TermId>>();

function namesIn(hearing: Hearing): ReadonlyMap<string, TermId> {
  const known = named.get(hearing);
  if (known !== undefined) return known;
  const names = new Map<string, TermId>();
  for (const { termNames } of hearing.tongues) {
    for (const id of Object.keys(termNames).filter(isTerm)) {
      for (const name of [id, ...termNames[id].split(', ')]) names.set(folded(name), id);
    }
  }
  named.set(hearing, names);
  return names;
}

export const termNamed = (said: string, hearing: Hearing): TermId | undefined => namesIn(hearing).get(folded(said));

/** Names near to it: a slip of the thumb, or one that holds a word of it. */
export function termsNear(said: string, hearing: Hearing): readonly string[] {
  const names = [...namesIn(hearing).keys()];
  const words = folded(said)
    .split(' ')
    .filter((word) => word.length > 3);
  const holding = names.filter((name) => words.some((word) => name.split(' ').includes(word)));
  return [...new Set([...nearest(folded(said), names), ...holding])].slice(0, 3);
}
