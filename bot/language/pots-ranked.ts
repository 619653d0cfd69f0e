// A pot by its order or its size among those that there are: `second pot`, `the big one`, `la mezcla chica`.

import type { BatchNumber } from '../../core/ids.ts';
import type { LineContext } from './reading.ts';
import type { Token } from './typed/token.ts';
import { withoutAccents } from './typed/without-accents.ts';

export interface PotRanked {
  readonly number: BatchNumber;
  /** Index of the token behind it. */
  readonly to: number;
}

/** Only where none of them is over: else which is the first, or the largest, is not plain. */
export function potRanked(tokens: readonly Token[], at: number, context: LineContext): PotRanked | undefined {
  const pots = context.live?.().batches ?? [];
  if (pots.length < 2 || pots.some(({ phase }) => phase === 'over')) return undefined;
  const [first = '', second = ''] = tokens.slice(at, at + 2).map(({ text }) => withoutAccents(text.toLowerCase()));
  const { said, ordinals } = context.hearing;
  const nth = said.pots.has(second) ? ordinals.get(first) : undefined;
  const bySize = sizeSaid(first, second, context);
  const number =
    nth === undefined
      ? bySize && ofSize(bySize, pots)
      : pots.map((each) => each.number).toSorted((one, other) => one - other)[nth - 1];
  return number === undefined ? undefined : { number, to: at + 2 };
}

type Size = 'largest' | 'smallest';

/** `big pot`, `big one`; `mezcla grande`, `la grande`. */
function sizeSaid(first: string, second: string, { hearing: { said } }: LineContext): Size | undefined {
  const sizeOf = (word: string): Size | undefined =>
    said.largest.has(word) ? 'largest' : said.smallest.has(word) ? 'smallest' : undefined;
  if (said.pots.has(second) || said.lists.ones.has(second)) return sizeOf(first);
  return said.pots.has(first) || said.articles.has(first) ? sizeOf(second) : undefined;
}

function ofSize(
  size: Size,
  pots: readonly { readonly number: BatchNumber; readonly grams?: number }[],
): BatchNumber | undefined {
  if (pots.some(({ grams }) => grams === undefined)) return undefined;
  const ranked = pots.toSorted((one, other) => (one.grams ?? 0) - (other.grams ?? 0));
  const [most, next] = size === 'largest' ? ranked.toReversed() : ranked;
  return most?.grams === next?.grams ? undefined : most?.number;
}
