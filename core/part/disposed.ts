// What a part is once it is decided what becomes of it.

import type { Entry, FactOf } from '../history.ts';

/** Of whatever coats are made of. */
interface Coated<Coat> {
  readonly coats: readonly Coat[];
  readonly earlier: readonly Coat[];
  readonly reworked: { readonly under: Coat | undefined } | undefined;
}

export function becomes<Coat>(part: Coated<Coat>, fact: FactOf<'PartDisposed'>, entry: Entry) {
  const { happenedAt: at, by, seq } = entry;
  const { as, why, to, person = '', document = '', date = '' } = fact;
  switch (as) {
    case 'rework':
      return {
        earlier: [...part.earlier, ...part.coats],
        reworked: { at, by, why, seq, under: part.coats.at(-1) ?? part.reworked?.under },
        ...{ prepared: undefined, coats: [], dryAt: undefined, cure: undefined },
        ...{ surfaces: [], temperatures: [], films: [] },
        ...{ verdict: undefined, leftAt: undefined, concession: undefined },
      };
    case 'concession':
      return { verdict: undefined, concession: { at, by, person, document, date } };
    case 'scrap':
      return { verdict: { is: 'scrapped' as const, at, by, why } };
    case 'return':
      return { verdict: { is: 'returned' as const, at, by, why, to } };
  }
}
