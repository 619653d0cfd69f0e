// A label in its pieces, each by what stands before it.

import { isFailed } from '../../../core/failed.ts';
import type { LineContext } from '../reading.ts';
import { lastDayOf, lastDayShort } from '../times/expiry-typed.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { LabelKind, LabelPhrase } from './label-table.ts';

export interface Label {
  readonly components: ReadonlySet<string>;
  readonly lots: ReadonlySet<string>;
  readonly amounts: readonly string[];
  /** `4 cans`. */
  readonly counts: readonly number[];
  /** ISO. */
  readonly lastDays: ReadonlySet<string>;
  readonly says: ReadonlySet<LabelKind>;
  /** What stands there besides. */
  readonly rest: readonly string[];
}

/** More is a page. */
const mostPieces = 60;

export function labelIn(line: string, context: LineContext): Label | undefined {
  const pieces = (line.match(/[^\s,;:|()=#"]+/g) ?? []).map((piece) => piece.replace(/(?<=.)(?:[.!]+|['’]s)$/, ''));
  if (pieces.length > mostPieces) return undefined;
  const on: Reader = { pieces, words: pieces.map((piece) => withoutAccents(piece.toLowerCase())), context };
  const found = { components: new Set<string>(), lots: new Set<string>(), lotsElse: new Set<string>() };
  const [amounts, counts, rest]: [string[], number[], string[]] = [[], [], []];
  const [lastDays, says] = [new Set<string>(), new Set<LabelKind>()];
  for (let at = 0; at < pieces.length; ) {
    const phrase = phraseAt(on, at);
    const behind = at + (phrase?.words.length ?? 0);
    const value = valueAt(on, phrase, behind) ?? valueAt(on, undefined, at);
    if (value === undefined) {
      if (phrase === undefined && /[\p{L}\d]/u.test(pieces[at] ?? '')) rest.push(pieces[at] ?? '');
      if (phrase !== undefined) says.add(phrase.of);
      at = Math.max(behind, at + 1);
      continue;
    }
    if ('component' in value) found.components.add(value.component);
    if ('lot' in value) found[value.isElse === true ? 'lotsElse' : 'lots'].add(value.lot);
    if ('amount' in value) amounts.push(value.amount);
    if ('count' in value) counts.push(value.count);
    if ('lastDay' in value) lastDays.add(value.lastDay);
    at = value.to;
  }
  const lots = found.lots.size > 0 ? found.lots : found.lotsElse;
  return { components: found.components, lots, amounts, counts, lastDays, says, rest };
}

interface Reader {
  readonly pieces: readonly string[];
  /** As they are looked up. */
  readonly words: readonly string[];
  readonly context: LineContext;
}

/** The longest. */
function phraseAt({ words, context }: Reader, at: number): LabelPhrase | undefined {
  return context.hearing.labelled.byFirst
    .get(words[at] ?? '')
    ?.find((phrase) => phrase.words.every((word, i) => words[at + i] === word));
}

type Value = { readonly to: number } & (
  | { readonly component: string; readonly lot?: string; readonly isElse?: true }
  | { readonly lot: string; readonly isElse?: boolean }
  | { readonly amount: string }
  | { readonly count: number }
  | { readonly lastDay: string }
);

/** What stands at `at`, behind the phrase where there is one. */
function valueAt(on: Reader, phrase: LabelPhrase | undefined, at: number): Value | undefined {
  const piece = on.pieces[at] ?? '';
  switch (phrase?.of) {
    case 'component':
      return /^[ab]$/i.test(piece) ? { component: piece.toUpperCase(), to: at + 1 } : undefined;
    case 'lot':
    case 'lotElse':
      return /^(?=.*\d)[\p{L}\d][\p{L}\d./-]*$/u.test(piece) && amountAt(on, at) === undefined
        ? { lot: piece, isElse: phrase.of === 'lotElse', to: at + 1 }
        : undefined;
    case 'expiry':
      return lastDayAt(on, at, true);
    case undefined:
      return alone(on, at);
    default:
      return undefined;
  }
}

function alone(on: Reader, at: number): Value | undefined {
  const piece = on.pieces[at] ?? '';
  // A small one may be an article.
  if (piece === 'A' || piece === 'B') return { component: piece, to: at + 1 };
  const [, component, lot] = /^([AB])-(\w*\d[\w-]*)$/.exec(piece) ?? [];
  if (component !== undefined && lot !== undefined) return { component, lot, to: at + 1 };
  return amountAt(on, at) ?? countAt(on, at) ?? lastDayAt(on, at, false);
}

/** `4 cans`, `4 new cans`, `4 x 5 kg`. */
function countAt(on: Reader, at: number): Value | undefined {
  const [, count] = /^(\d{1,2})x?$/i.exec(on.pieces[at] ?? '') ?? [];
  if (count === undefined) return undefined;
  const { said } = on.context.hearing;
  const [next = '', after = ''] = on.words.slice(at + 1, at + 3);
  if (next === 'x' || (/x$/i.test(on.pieces[at] ?? '') && amountAt(on, at + 1) !== undefined))
    return { count: Number(count), to: next === 'x' ? at + 2 : at + 1 };
  const isOfCans = [next, after].some((word) => said.cans.has(word) || said.cans.has(word.replace(/s$/, '')));
  return isOfCans ? { count: Number(count), to: at + 1 } : undefined;
}

/** `5.0 kg`, `11lb`. */
function amountAt({ pieces, words, context }: Reader, at: number): Value | undefined {
  const [, figure, glued = ''] = /^(\d{1,5}(?:[.,]\d{1,3})?)(\p{L}{0,9})$/u.exec(pieces[at] ?? '') ?? [];
  if (figure === undefined) return undefined;
  const unit = context.hearing.units.get(withoutAccents((glued === '' ? (words[at + 1] ?? '') : glued).toLowerCase()));
  if (unit === undefined || unit === 'degree' || (unit.is !== 'mass' && unit.is !== 'volume')) return undefined;
  return { amount: `${figure}${unit.name}`, to: glued === '' ? at + 2 : at + 1 };
}

/** `isMarked`: behind the word for it a day without its century will do. */
function lastDayAt({ pieces, words, context }: Reader, at: number, isMarked: boolean): Value | undefined {
  const { dayJoints } = context.hearing.labelled;
  for (let from = at; from < at + 3; from++) {
    if (from > at && !dayJoints.has(words[from - 1] ?? '')) break;
    const kept = pieces
      .map((piece, i) => ({ piece: piece.replace(/^(\d{1,2})\.(\d{2}|\d{4})$/, '$1/$2'), i }))
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
