// `7 is at 91, 8 at 90`: several parts, each with the figure behind it. Of more figures than that it is not said which is whose, and
// no part is given another's.

import type { PartName } from '../../../core/ids.ts';
import type { LineContext } from '../reading.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import { actRows } from './act-rows.ts';
import type { Clause } from './clause.ts';
import { readAs } from './figures-for.ts';
import { partsNumbered } from './things.ts';

/** Each part, and the line that gives it its own. */
export interface EachItsOwn {
  readonly parts: readonly PartName[];
  readonly lines: readonly string[];
  /** Nothing else could be meant. */
  readonly isCertain?: true;
}

type Told = readonly [is: 'part' | 'figure', text: string];

export function eachItsOwn(act: SaidAct, { pieces }: Clause, context: LineContext): EachItsOwn | 'unclear' | undefined {
  const pots = act === 'weigh' ? potsWeighed(pieces, context) : [];
  if (pots.length > 1) return { parts: [], lines: pots };
  const rinses = rinsesOf(act, pieces);
  if (rinses.length > 1) return { parts: [], lines: rinses, isCertain: true };
  const { isOfOne, figures = [] } = actRows[act];
  const [row] = figures;
  if (isOfOne !== true || row === undefined || row.most > 1) return undefined;
  const live = context.live?.();
  let isDue = true;
  const told = pieces.flatMap((piece): readonly Told[] => {
    if (piece.is === 'parts') return piece.names.map((name) => ['part', name]);
    // `5's surface is 20, 6's is 21`: by its number, where a part is due.
    const [only, other] = live === undefined || !isDue ? [] : partsNumbered(piece, live);
    const isPart = only !== undefined && other === undefined;
    if (piece.is === 'number') isDue = !isPart;
    if (isPart) return [['part', only]];
    const figure = readAs(row, piece, context);
    isDue ||= figure !== undefined;
    return figure === undefined ? [] : [['figure', figure]];
  });
  const parts = told.flatMap(([is, text]) => (is === 'part' ? [text] : []));
  const said = told.flatMap(([is, text]) => (is === 'figure' ? [text] : []));
  if (parts.length < 2 || said.length < 2) return undefined;
  const isEach = parts.length === said.length && told.every(([is], i) => is === (i % 2 === 0 ? 'part' : 'figure'));
  return isEach ? { parts, lines: parts.map((part, i) => `${act} ${part} ${said[i]}`) } : 'unclear';
}

/** `acetone, then ipa`: a flush with each, in their order; of a figure it is not said whose it is. */
function rinsesOf(act: SaidAct, pieces: Clause['pieces']): readonly string[] {
  const { takes = [], on } = actRows[act];
  if (on !== 'nothing' || !takes.includes('solvent') || pieces.some(({ is }) => is === 'figure' || is === 'number'))
    return [];
  const words = pieces.flatMap((piece) => (piece.is === 'solvent' ? [piece.word] : []));
  return [...new Set(words)].map((word) => `${act} ${word}`);
}

/** `1 was 1200 and 1201, 2 was 599 and 600`: each pot that waits for its two weights, with them. */
export function potsWeighed(pieces: Clause['pieces'], context: LineContext): readonly string[] {
  const [row] = actRows.weigh.figures ?? [];
  const raw = new Set(context.live?.().batches.flatMap(({ number, phase }) => (phase === 'to-weigh' ? [number] : [])));
  const told = pieces.flatMap((piece): readonly (number | string)[] => {
    if (piece.is === 'batch') return [piece.number];
    if (piece.is === 'number' && raw.has(piece.value)) return [piece.value];
    const weight = row === undefined ? undefined : readAs(row, piece, context);
    return weight === undefined ? [] : [weight];
  });
  const isEach = told.length % ofPot === 0 && told.every((one, i) => (typeof one === 'number') === (i % ofPot === 0));
  return isEach
    ? told.flatMap((_, i) => (i % ofPot === 0 ? [['weigh', ...told.slice(i, i + ofPot)].join(' ')] : []))
    : [];
}

/** Its number, its A and its B. */
const ofPot = 3;
