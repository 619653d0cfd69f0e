// From which cans a pot was filled, as far as somebody said.

import type { Entry } from '../history.ts';
import type { CanNumber } from '../ids.ts';
import type { FromCan } from './can-events.ts';

/** Of which the record is a pot's. */
interface Filled {
  readonly entries: readonly Pick<Entry, 'fact'>[];
}

export const pouredInto = ({ entries }: Filled): readonly FromCan[] =>
  entries.flatMap(({ fact }) => ('fromCans' in fact ? (fact.fromCans ?? []) : []));

export const pouredFrom = (pot: Filled): readonly CanNumber[] => [...new Set(pouredInto(pot).map(({ can }) => can))];
