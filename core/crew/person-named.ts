// Whom a typed name means: thumbs leave out capitals and accents, `lia` is Lía.

import type { PersonName } from '../ids.ts';

/** As the crew writes it. Where two are alike but for an accent, only the exact one is meant. */
export function personNamed(
  people: readonly { readonly name: PersonName }[],
  typed: PersonName,
): PersonName | undefined {
  const exact = people.find(({ name }) => name === typed);
  const [alike, ...others] = people.filter(({ name }) => plain(name) === plain(typed));
  return (exact ?? (others.length === 0 ? alike : undefined))?.name;
}

const plain = (name: PersonName): string => name.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
