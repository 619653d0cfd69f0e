// The figures of a label by what they look like: how much is in a can, how many came, how long it lasts; and when it was opened.

import { isFailed } from '../../../core/failed.ts';
import type { EpochMs } from '../../../core/units.ts';
import type { LineContext } from '../reading.ts';
import { lastDayOf, lastDayShort } from '../times/expiry-typed.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';

export interface Reader {
  readonly pieces: readonly string[];
  /** As they are looked up. */
  readonly words: readonly string[];
  readonly context: LineContext;
}

type Found<Value> = ({ readonly to: number } & Value) | undefined;

/** `4 cans`, `4 new cans`, `4 x 5 kg`. */
export function countAt(on: Reader, at: number): Found<{ readonly count: number }> {
  const [, count] = /^(\d{1,2})x?$/i.exec(on.pieces[at] ?? '') ?? [];
  if (count === undefined) return undefined;
  const { said, labelled } = on.context.hearing;
  const isVessel = (word: string): boolean => said.cans.has(word) || labelled.vessels.has(word);
  const [next = '', after = ''] = on.words.slice(at + 1, at + 3);
  if (next === 'x' || (/x$/i.test(on.pieces[at] ?? '') && amountAt(on, at + 1) !== undefined))
    return { count: Number(count), to: next === 'x' ? at + 2 : at + 1 };
  const isOfCans = [next, after].some((word) => isVessel(word) || isVessel(word.replace(/s$/, '')));
  return isOfCans ? { count: Number(count), to: at + 1 } : undefined;
}

/** `5.0 kg`, `11lb`. */
export function amountAt({ pieces, words, context }: Reader, at: number): Found<{ readonly amount: string }> {
  const [, figure, glued = ''] = /^(\d{1,5}(?:[.,]\d{1,3})?)(\p{L}{0,9})$/u.exec(pieces[at] ?? '') ?? [];
  if (figure === undefined) return undefined;
  const unit = context.hearing.units.get(withoutAccents((glued === '' ? (words[at + 1] ?? '') : glued).toLowerCase()));
  if (unit === undefined || unit === 'degree' || (unit.is !== 'mass' && unit.is !== 'volume')) return undefined;
  return { amount: `${figure}${unit.name}`, to: glued === '' ? at + 2 : at + 1 };
}

/** `12.26` as `12/26`; `31/12/26` of this century, behind the word for it. */
const inFull = (piece: string, isMarked: boolean): string =>
  isMarked && shortDay.test(piece)
    ? piece.replace(shortDay, '$1/$2/20$3')
    : piece.replace(/^(\d{1,2})\.(\d{2}|\d{4})$/, '$1/$2');

const shortDay = /^(\d{1,2})[/.](\d{1,2})[/.](\d\d)$/;

/** `isMarked`: behind the word for it a day without its century will do. */
export function lastDayAt(
  { pieces, words, context }: Reader,
  at: number,
  isMarked: boolean,
): Found<{ readonly lastDay: string }> {
  const { dayJoints } = context.hearing.labelled;
  for (let from = at; from < at + 3; from++) {
    if (from > at && !dayJoints.has(words[from - 1] ?? '')) break;
    const kept = pieces
      .map((piece, i) => ({ piece: inFull(piece, isMarked), i }))
      .filter(({ i }) => i >= from && i < from + 4 && !dayJoints.has(words[i] ?? ''));
    const line = kept.map(({ piece }) => piece).join(' ');
    const tokens = tokenize(line, context.hearing);
    const isShort = isMarked || /^\d{1,2}[/-]\d{2}(?!\S)/.test(line);
    const day =
      lastDayOf(tokens, 0, { line, context }) ?? (isShort ? lastDayShort(tokens, 0, { line, context }) : undefined);
    if (day === undefined || isFailed(day)) continue;
    const end = tokens[day.to - 1]?.end ?? line.length;
    const taken = line.slice(0, end).trim().split(' ').length;
    return { lastDay: day.date, to: (kept[taken - 1]?.i ?? at) + 1 };
  }
  return undefined;
}

/** `ten minutes ago`, `at 9:40`, put in figures; a time to come is none. */
export function timeAt({ pieces, context }: Reader, at: number): Found<{ readonly time: EpochMs }> {
  const line = pieces.slice(at, at + mostOfTime).join(' ');
  const tokens = tokenize(line, context.hearing);
  const time = saidTimeFrom(tokens, 0, context);
  if (time === undefined || isFailed(time)) return undefined;
  const end = tokens[time.to - 1]?.end ?? line.length;
  return { time: time.at, to: at + line.slice(0, end).trim().split(' ').length };
}

/** `at half past nine yesterday`. */
const mostOfTime = 6;
