// The strict line of one clause: its act, and the things and figures that were heard, in the order in which a strict line has them.
// What is live decides where a thing is named only half.

import type { PartName } from '../../../core/ids.ts';
import { minutes, minutesAfter } from '../../../core/units.ts';
import type { LiveNow } from '../live-now.ts';
import type { LineContext } from '../reading.ts';
import { isoLocal } from '../times/wall-clock.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import { type ActRow, actRows } from './act-rows.ts';
import type { Clause } from './clause.ts';
import { figuresFor } from './figures-for.ts';
import { type Piece, wordOf } from './piece.ts';

export interface Composed {
  /** Several, where one of several things may be meant. */
  readonly lines: readonly string[];
  /** Every word of the clause is accounted for, and nothing was assumed. */
  readonly isSure: boolean;
  readonly parts: readonly PartName[];
  readonly batch?: number;
}

/** What a clause before it named: `film on 9 is 12um, release it`. */
export type Before = Pick<Composed, 'parts' | 'batch'>;

interface Heard {
  readonly row: ActRow;
  readonly pieces: readonly Piece[];
  readonly live: LiveNow;
  readonly before: Before | undefined;
  /** `it`, `them`. */
  readonly isNamedBefore: boolean;
  /** Bare numbers that named a thing. */
  readonly used: Set<Piece>;
}

export function composed(
  act: SaidAct,
  clause: Clause,
  before: Before | undefined,
  context: LineContext,
): Composed | undefined {
  const row = actRows[act];
  const live = liveOf(context);
  const isNamedBefore = clause.claims.some((claim) => claim?.is === 'pronoun');
  const heard: Heard = { row, pieces: clause.pieces, live, before, isNamedBefore, used: new Set() };
  const things = thingsOf(heard);
  if (things === undefined) return undefined;
  const figures = figuresFor(
    row,
    clause.pieces.filter((piece) => !heard.used.has(piece)),
    context,
  );
  if (figures === undefined) return undefined;
  const method = methodOf(act, heard);
  const manner = mannerOf(clause.pieces, row, context);
  if (hasStranger(clause.pieces, row)) return undefined;
  const isUnknown = clause.claims.some((claim) => claim === undefined);
  // Words that nobody knows, and nothing named: it speaks of something else.
  if (isUnknown && things.isUnnamed && figures.texts.length === 0) return undefined;
  const isLost = clause.pieces.some(
    (piece) => piece.is === 'figure' && !figures.used.has(piece) && piece.of !== 'duration',
  );
  // A figure that the act does not take: then it was another act.
  if (isLost && row.takes?.includes('reason') !== true) return undefined;
  const reason = row.takes?.includes('reason') === true ? reasonIn(clause) : '';
  if (row.takes?.includes('reason') === true && reason === '') return undefined;
  const tail = [...figures.texts, method.text, ...manner, reason];
  const [verb, way] = act.startsWith('cure ') ? act.split(' ') : [act, ''];
  const lines = things.options.map((thing) => [verb, thing, way, ...tail].filter((text) => text !== '').join(' '));
  const isWhole =
    reason !== '' ||
    (clause.claims.every((claim) => claim !== undefined) &&
      !clause.claims.some(isRough) &&
      !clause.pieces.some(isSlip));
  const isTaken = figures.isWhole && isAllTaken(heard, figures.used) && !things.isAssumed && !method.isAssumed;
  return {
    lines,
    isSure: isWhole && isTaken && lines.length === 1,
    parts: things.parts,
    ...(things.batch !== undefined && { batch: things.batch }),
  };
}

const isSlip = (piece: Piece): boolean => piece.is === 'parts' && piece.isSlip === true;
const isRough = (claim: Clause['claims'][number]): boolean => claim?.is === 'roughly';

const liveOf = ({ live, parts, batches }: LineContext): LiveNow =>
  live?.() ?? {
    parts: parts.map((name) => ({ name, phase: 'bare' })),
    batches: batches.map((number) => ({ number, phase: 'filtered' })),
    cans: [],
  };

interface Things {
  readonly options: readonly string[];
  readonly parts: readonly PartName[];
  readonly batch?: number;
  readonly isAssumed: boolean;
  /** The line names none: it is whatever is live. */
  readonly isUnnamed?: true;
}

/** A pot in a line about a can: then it is another act. */
function hasStranger(pieces: readonly Piece[], { on, takes = [] }: ActRow): boolean {
  return pieces.some(({ is }) => {
    if (takes.includes('reason')) return false;
    if (is === 'parts' || is === 'one-of') return on !== 'parts';
    if (is === 'batch') return on !== 'batch' && !takes.includes('batch');
    return is === 'can' && on !== 'can';
  });
}

function thingsOf(heard: Heard): Things | undefined {
  switch (heard.row.on) {
    case 'parts':
      return partsOf(heard);
    case 'batch':
      return batchOf(heard);
    case 'can':
      return canOf(heard);
    case 'nothing': {
      const batch = heard.pieces.find((piece) => piece.is === 'batch');
      const isTaken = heard.row.takes?.includes('batch') === true && batch !== undefined;
      return { options: [isTaken ? String(batch.number) : ''], parts: [], isAssumed: false, isUnnamed: true };
    }
    default: {
      const never: never = heard.row.on;
      return never;
    }
  }
}

/** By name; by a word or a number that several may have, those to which it can be done; else whatever it can be done to alone. */
function partsOf(heard: Heard): Things | undefined {
  const { pieces, row, live, before } = heard;
  const fits = (name: PartName): boolean =>
    row.parts === undefined ||
    live.parts.some((part) => part.name === name && row.parts?.includes(part.phase) === true);
  const named = pieces.flatMap((piece) => (piece.is === 'parts' ? piece.names : []));
  const batch = row.takes?.includes('batch') === true ? coatBatch(heard, named.length === 0) : undefined;
  const told = (options: readonly (readonly PartName[])[], isAssumed = false): Things => ({
    options: options.map((names) => [...names, batch?.text ?? ''].filter((text) => text !== '').join(' ')),
    parts: options.length === 1 ? (options[0] ?? []) : [],
    ...(batch?.number !== undefined && { batch: batch.number }),
    isAssumed: isAssumed || batch?.isAssumed === true,
  });
  if (named.length > 0) return told([[...new Set(named)]]);
  const among = pieces.find((piece) => piece.is === 'one-of') ?? numberedPart(heard, fits);
  if (among !== undefined) {
    const fitting = among.names.filter(fits);
    const chosen = fitting.length === 0 ? among.names : fitting;
    return told(chosen.slice(0, 3).map((name) => [name]));
  }
  if (before !== undefined && before.parts.length > 0) return told([before.parts]);
  const only = live.parts.filter(({ name }) => row.parts !== undefined && fits(name));
  if (row.thingMayLack === true && !only.some(({ phase }) => phase === 'curing'))
    return { ...told([[]]), isUnnamed: true };
  if (only.length === 0) return undefined;
  // Only what was named before, or the only load, is taken without its name.
  const isMeant = row.thingMayLack === true || heard.isNamedBefore;
  return {
    ...told(
      only.slice(0, 3).map(({ name }) => [name]),
      !isMeant,
    ),
    isUnnamed: true,
  };
}

/** `the 8`, `8 dry`: a number that a part has. */
function numberedPart({ pieces, live, used }: Heard, fits: (name: PartName) => boolean) {
  for (const piece of pieces) {
    if (piece.is !== 'number' || piece.isDegrees || !/^\d{1,4}$/.test(piece.text)) continue;
    const names = live.parts
      .map(({ name }) => name)
      .filter((name) => new RegExp(`(?<!\\d)0*${piece.value}$`).test(name));
    if (names.some(fits) || names.length === 1) {
      used.add(piece);
      return { names };
    }
  }
  return undefined;
}

/** Of a coat: as it was said, a bare number behind the part, or the only pot in use. */
function coatBatch({ pieces, live, used, before }: Heard, isPartUnnamed: boolean) {
  const said = pieces.find((piece) => piece.is === 'batch');
  if (said !== undefined) return { text: String(said.number), number: said.number, isAssumed: false };
  const numbers = pieces.filter((piece) => piece.is === 'number');
  const bare = numbers
    .slice(isPartUnnamed ? 1 : 0)
    .find(({ text }) => live.batches.some(({ number }) => text === String(number)));
  if (bare !== undefined) {
    used.add(bare);
    return { text: bare.text, number: bare.value, isAssumed: false };
  }
  if (before?.batch !== undefined) return { text: String(before.batch), number: before.batch, isAssumed: false };
  const inUse = live.batches.filter(({ phase }) => phase === 'filtered');
  const only = inUse.length === 1 ? inUse[0] : undefined;
  return { text: only === undefined ? '' : String(only.number), number: only?.number, isAssumed: false };
}

function batchOf(heard: Heard): Things | undefined {
  const { pieces, row, live, before, used } = heard;
  const told = (numbers: readonly number[]): Things => ({
    options: numbers.map(String),
    parts: [],
    ...(numbers.length === 1 && numbers[0] !== undefined && { batch: numbers[0] }),
    isAssumed: false,
  });
  const said = pieces.find((piece) => piece.is === 'batch');
  if (said !== undefined) return told([said.number]);
  const first = pieces.find((piece) => piece.is === 'number');
  const fitting = live.batches.filter(({ phase }) => row.batches?.includes(phase) === true);
  // Its number stands first, and there is such a pot: `filtering 2`, `weigh 1 901 899`.
  const bare = first !== undefined && live.batches.find(({ number }) => first.text === String(number));
  if (first !== undefined && bare !== undefined && bare !== false) {
    used.add(first);
    return told([bare.number]);
  }
  if (before?.batch !== undefined) return told([before.batch]);
  return fitting.length === 0
    ? undefined
    : { ...told(fitting.slice(0, 3).map(({ number }) => number)), isUnnamed: true };
}

function canOf({ pieces, live, used, row }: Heard): Things | undefined {
  const told = (numbers: readonly number[]): Things => ({ options: numbers.map(String), parts: [], isAssumed: false });
  const said = pieces.find((piece) => piece.is === 'can');
  if (said !== undefined) return told([said.number]);
  const bare = pieces.find(
    (piece) => piece.is === 'number' && live.cans.some(({ number }) => piece.text === String(number)),
  );
  if (bare?.is === 'number') {
    used.add(bare);
    return told([bare.value]);
  }
  const open = live.cans.filter(({ isLidOff }) => isLidOff);
  return row.on === 'can' && open.length === 1 && open[0] !== undefined
    ? { ...told([open[0].number]), isUnnamed: true }
    : undefined;
}

/** Said, or how its pot went on so far: then it is only offered. */
function methodOf(act: SaidAct, { pieces, row, live }: Heard): { readonly text: string; readonly isAssumed: boolean } {
  if (row.takes?.includes('method') !== true) return { text: '', isAssumed: false };
  const said = pieces.find((piece) => piece.is === 'method');
  if (said !== undefined || act !== 'coat') return { text: said?.method ?? '', isAssumed: false };
  const batch = pieces.find((piece) => piece.is === 'batch');
  const inUse = live.batches.filter(({ number, phase }) =>
    batch === undefined ? phase === 'filtered' : number === batch.number,
  );
  const method = inUse.length === 1 ? inUse[0]?.method : undefined;
  return { text: method ?? '', isAssumed: true };
}

function mannerOf(
  pieces: readonly Piece[],
  { takes = [] }: ActRow,
  { now, zone, places }: LineContext,
): readonly string[] {
  return pieces.flatMap((piece) => {
    // `coat impeller-1 1 brush 20 min`: that long ago, it seems.
    if (piece.is === 'figure' && piece.of === 'duration' && !pieces.some(({ is }) => is === 'time')) {
      return [`at ${isoLocal(minutesAfter(now, minutes(-piece.value)), zone)}`];
    }
    if (piece.is === 'time') return [`at ${isoLocal(piece.at, zone)}`];
    if (piece.is === 'solvent' && takes.includes('solvent')) return [piece.word];
    if (piece.is === 'place' && takes.includes('place') && places.includes(piece.place)) return [piece.place];
    return piece.is === 'person' && takes.includes('person') ? [`by ${piece.name}`] : [];
  });
}

/** What is left of the line in the speaker's own words, from the first that says something. */
function reasonIn({ pieces, claims }: Clause): string {
  const isLeft = ({ is }: Piece, i: number): boolean =>
    claims[i]?.is !== 'act' && is !== 'parts' && is !== 'one-of' && is !== 'time';
  const left = pieces.flatMap((piece, i) => (isLeft(piece, i) ? [{ typed: piece.typed, claim: claims[i] }] : []));
  const from = left.findIndex(
    ({ claim }) => claim?.is !== 'light' && claim?.is !== 'filler' && claim?.is !== 'pronoun',
  );
  const said =
    from === -1
      ? ''
      : left
          .slice(from)
          .map(({ typed }) => typed)
          .join(' ');
  return /\p{L}{3}/u.test(said) ? JSON.stringify(said) : '';
}

/** Nothing that was heard is left out of the line: what is passed over says nothing, or is the pot of something else. */
function isAllTaken({ pieces, row, used }: Heard, figures: ReadonlySet<Piece>): boolean {
  const { takes = [] } = row;
  return pieces.every((piece) => {
    switch (piece.is) {
      case 'figure':
      case 'number':
        return figures.has(piece) || used.has(piece) || takes.includes('reason');
      case 'parts':
      case 'one-of':
        return row.on === 'parts';
      case 'batch':
        return row.on === 'batch' || takes.includes('batch');
      case 'can':
        return row.on === 'can';
      case 'method':
        return takes.includes('method') || takes.includes('reason') || wordOf(piece) !== piece.method;
      case 'solvent':
        return takes.includes('solvent') || takes.includes('reason');
      case 'person':
        return takes.includes('person') || takes.includes('reason');
      case 'letter':
        return takes.includes('letters') || takes.includes('reason');
      case 'time':
      case 'place':
      case 'word':
        return true;
      default: {
        const never: never = piece;
        return never;
      }
    }
  });
}
