// Whether a typed name is a person's: thumbs leave out capitals and accents, `lia` is Lía.

import type { PersonName } from '../ids.ts';

export function isSameName(one: PersonName, other: PersonName): boolean {
  return plain(one) === plain(other);
}

const plain = (name: PersonName): string => name.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
