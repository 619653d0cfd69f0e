// A part by its order, `3rd one`, `la tercera pieza`: only where its number and its place in the row say the same one.

import type { PartName } from '../../core/ids.ts';
import { inNaturalOrder } from '../../core/natural-order.ts';
import { partsKnown } from './parts-said/parts-known.ts';
import type { LineContext } from './reading.ts';
import type { Token } from './typed/token.ts';
import { withoutAccents } from './typed/without-accents.ts';

export interface PartRanked {
  readonly name: PartName;
  /** Index of the token behind it. */
  readonly to: number;
}

export function partRanked(
  tokens: readonly Token[],
  at: number,
  { hearing, live }: LineContext,
): PartRanked | undefined {
  const [first = '', second = ''] = tokens.slice(at, at + 2).map(({ text }) => withoutAccents(text.toLowerCase()));
  const nth = hearing.said.lists.ones.has(second) ? hearing.ordinals.get(first) : undefined;
  if (nth === undefined) return undefined;
  const names = (live?.().parts ?? []).map(({ name }) => name).toSorted(inNaturalOrder);
  const [only, ...others] = partsKnown(names).numbers.get(nth) ?? [];
  const name = names[nth - 1];
  return name !== undefined && only === name && others.length === 0 ? { name, to: at + 2 } : undefined;
}
