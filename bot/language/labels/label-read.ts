// A label in its pieces, each by what stands before it.

import type { EpochMs } from '../../../core/units.ts';
import type { LineContext } from '../reading.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { amountAt, countAt, lastDayAt, type Reader, timeAt } from './label-figures.ts';
import type { LabelKind, LabelPhrase } from './label-table.ts';

export type Label = Printed &
  Spoken & { /** Where in the line each part is named. */ readonly starts: readonly number[] };

interface Printed {
  readonly components: ReadonlySet<string>;
  readonly lots: ReadonlySet<string>;
  readonly amounts: readonly string[];
  /** `4 cans`. */
  readonly counts: readonly number[];
  /** ISO. */
  readonly lastDays: ReadonlySet<string>;
  /** When it was opened or came, where that is told. */
  readonly times: readonly EpochMs[];
}

/** What stands there besides. */
interface Spoken {
  readonly says: ReadonlySet<LabelKind>;
  readonly talk: readonly Said[];
  /** What of it nobody prints on a label. */
  readonly rest: readonly string[];
  /** What is said of the gas, with its name. */
  readonly ofGas: readonly Said[];
}

export interface Said {
  readonly typed: string;
  readonly of: LabelKind | undefined;
}

/** More is a page. */
const mostPieces = 60;

/** A colon inside an hour parts nothing. */
const eachPiece = /(?:[^\s,;:|()=#"]|(?<=\d):(?=\d\d))+/g;

export function labelIn(line: string, context: LineContext): Label | undefined {
  const found = [...line.matchAll(eachPiece)];
  const pieces = found.map(([piece]) => piece.replace(/(?<=.)(?:[.!]+|['’]s)$/, ''));
  if (pieces.length > mostPieces) return undefined;
  const on: Reader = { pieces, words: pieces.map((piece) => withoutAccents(piece.toLowerCase())), context };
  const isBreak = (at: number): boolean => {
    const from = (found[at]?.index ?? 0) + (pieces[at]?.length ?? 0);
    return /[,;:.!|]/.test(line.slice(from, found[at + 1]?.index ?? line.length));
  };
  const values: Value[] = [];
  const starts: number[] = [];
  // What is said in one breath, from one figure or break to the next.
  const runs: Said[][] = [[]];
  for (let at = 0; at < pieces.length; ) {
    const phrase = phraseAt(on, at);
    const behind = at + (phrase?.words.length ?? 0);
    const value = valueAt(on, phrase, behind) ?? valueAt(on, undefined, at);
    const to = value?.to ?? Math.max(behind, at + 1);
    const typed = pieces.slice(at, to).join(' ');
    if (value !== undefined && 'component' in value) starts.push(found[at]?.index ?? 0);
    if (value !== undefined) values.push(value);
    else if (/[\p{L}\d]/u.test(typed)) runs.at(-1)?.push({ typed, of: phrase?.of });
    if (value !== undefined || isOfAct(phrase?.of) || isBreak(to - 1)) runs.push([]);
    at = to;
  }
  return { ...ofValues(values), ...ofRuns(runs), starts };
}

export const isOfAct = (of: LabelKind | undefined): boolean => of === 'asOpen' || of === 'asReceived';

function ofRuns(runs: readonly (readonly Said[])[]): Spoken {
  const isOfGas = (run: readonly Said[]): boolean => run.some(({ of }) => of === 'gas');
  const talk = runs.filter((run) => !isOfGas(run)).flat();
  return {
    says: new Set(runs.flat().flatMap(({ of }) => of ?? [])),
    talk,
    rest: talk.flatMap(({ typed, of }) => (of === undefined ? [typed] : [])),
    ofGas: runs.filter(isOfGas).flat(),
  };
}

function ofValues(values: readonly Value[]): Printed {
  const each = <T>(of: (value: Value) => readonly T[]): readonly T[] => values.flatMap(of);
  const lots = each((value) => ('lot' in value && value.isElse !== true ? [value.lot ?? ''] : []));
  const lotsElse = each((value) => ('lot' in value && value.isElse === true ? [value.lot ?? ''] : []));
  return {
    components: new Set(each((value) => ('component' in value ? [value.component] : []))),
    lots: new Set(lots.length > 0 ? lots : lotsElse),
    amounts: each((value) => ('amount' in value ? [value.amount] : [])),
    counts: each((value) => ('count' in value ? [value.count] : [])),
    lastDays: new Set(each((value) => ('lastDay' in value ? [value.lastDay] : []))),
    times: each((value) => ('time' in value ? [value.time] : [])),
  };
}

/** The longest. */
function phraseAt({ words, context }: Reader, at: number): LabelPhrase | undefined {
  return context.hearing.labelled.byFirst
    .get(words[at] ?? '')
    ?.find((phrase) => phrase.words.every((word, i) => words[at + i] === word));
}

type Value = { readonly to: number } & (
  | { readonly component: string; readonly lot?: string; readonly isElse?: boolean }
  | { readonly lot: string; readonly isElse?: boolean }
  | { readonly amount: string }
  | { readonly count: number }
  | { readonly lastDay: string }
  | { readonly time: EpochMs }
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
  return amountAt(on, at) ?? countAt(on, at) ?? lastDayAt(on, at, false) ?? timeAt(on, at);
}
