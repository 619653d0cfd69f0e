// Whom a typed name means: thumbs leave out capitals and accents, `lia` is Lía. The one place where names of people are
// held against each other; whatever is filed has the name as the crew writes it.

import type { PersonName } from './ids.ts';

/** As the crew writes it. Where two are alike but for an accent, only the exact one is meant. */
export function personNamed(
  people: readonly { readonly name: PersonName }[],
  typed: PersonName,
): PersonName | undefined {
  return nameAmong(
    people.map(({ name }) => name),
    typed,
  );
}

/** The same among names alone: of those on a brief, whom the crew's list may not have. */
export function nameAmong(names: readonly PersonName[], typed: PersonName): PersonName | undefined {
  if (names.includes(typed)) return typed;
  const [alike, ...others] = names.filter((name) => areAlike(name, typed));
  return others.length === 0 ? alike : undefined;
}

/** The same but for capitals and accents: perhaps one person, perhaps two. */
export function areAlike(a: PersonName, b: PersonName): boolean {
  return withoutMarks(a) === withoutMarks(b);
}

/** Without capitals and accents. */
export function withoutMarks(name: PersonName): string {
  return name.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
}
