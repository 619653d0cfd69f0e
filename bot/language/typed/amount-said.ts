// An amount with its number in words: `dos kilos y medio`, `medio litro`, `kilo y medio`. Only of weights, volumes and
// durations whose unit is a word: elsewhere `una` is an article.

import type { Hearing } from '../hearing.ts';
import { withUnit } from './numeric-chunk.ts';
import type { Span, Token } from './token.ts';
import type { Unit } from './units-typed.ts';
import { withoutAccents } from './without-accents.ts';

interface Said {
  readonly token: Token;
  readonly chunks: number;
}

const plain = (span: Span | undefined): string => withoutAccents(span?.text.toLowerCase() ?? '');

export function amountSaid(spans: readonly Span[], from: number, line: string, hearing: Hearing): Said | undefined {
  const first = plain(spans[from]);
  const number = hearing.numbers.get(first);
  const unitAt = number === undefined ? from : from + 1;
  const unit = unitSaid(plain(spans[unitAt]), hearing);
  if (unit === undefined) return undefined;
  const half = isHalfAt(spans, unitAt + 1, hearing);
  // A unit alone is no amount.
  if (number === undefined && !half) return undefined;
  const to = half ? unitAt + 2 : unitAt;
  const value = (number ?? 1) + (half ? 0.5 : 0);
  const [start, end] = [spans[from]?.start ?? 0, spans[to]?.end ?? line.length];
  const span = { text: line.slice(start, end), start, end };
  return { token: withUnit(span, { value, whole: Number.isInteger(value) }, unit), chunks: to - from + 1 };
}

/** `2 kilos y medio`: half more of the amount that was last; how many chunks that took. */
export function halfMore(tokens: Token[], spans: readonly Span[], at: number, line: string, hearing: Hearing): number {
  const last = tokens.at(-1);
  if (last?.kind !== 'quantity' || unitSaid(plain(spans[at]), hearing) === undefined) return 0;
  if (!Number.isInteger(last.value) || !isHalfAt(spans, at + 1, hearing)) return 0;
  const end = spans[at + 2]?.end ?? last.end;
  const span = { text: line.slice(last.start, end), start: last.start, end };
  tokens[tokens.length - 1] = withUnit(span, { value: last.value + 0.5, whole: false }, last.unit);
  return 2;
}

const isHalfAt = (spans: readonly Span[], at: number, { andHalf }: Hearing): boolean =>
  andHalf.has(`${plain(spans[at])} ${plain(spans[at + 1])}`);

const inWords: ReadonlySet<Unit['is']> = new Set(['mass', 'volume', 'duration']);

/** Spelt out: a letter alone is no word. */
function unitSaid(word: string, { units }: Hearing): Unit | undefined {
  const unit = word.length < 4 ? undefined : units.get(word);
  return unit === undefined || unit === 'degree' || !inWords.has(unit.is) ? undefined : unit;
}
