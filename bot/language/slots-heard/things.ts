// To what an act was done, from what its clause names, in full or by half, and from what is live.

import type { PartName } from '../../../core/ids.ts';
import type { LiveNow } from '../live-now.ts';
import type { ActRow } from './act-rows.ts';
import type { Piece } from './piece.ts';

/** What a clause before it named: `film on 9 is 12um, release it`. */
export type Before = Pick<Things, 'parts' | 'batch'>;

export interface Heard {
  readonly row: ActRow;
  readonly pieces: readonly Piece[];
  readonly live: LiveNow;
  readonly before: Before | undefined;
  /** `it`, `them`. */
  readonly isNamedBefore: boolean;
  /** Bare numbers that named a thing. */
  readonly used: Set<Piece>;
}

export interface Things {
  readonly options: readonly string[];
  readonly parts: readonly PartName[];
  readonly batch?: number;
  readonly isAssumed: boolean;
  /** The options are no choice: each of them is meant. */
  readonly isEach?: true;
  /** The line names none: it is whatever is live. */
  readonly isUnnamed?: true;
}

export function thingsOf(heard: Heard): Things | undefined {
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
  const each = [...new Set(named)];
  if (each.length > 1 && row.isOfOne === true)
    return { ...told(each.map((name) => [name])), parts: each, isEach: true };
  if (each.length > 0) return told([each]);
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

/** Those that have this number. */
export function partsNumbered(piece: Piece, live: LiveNow): readonly PartName[] {
  if (piece.is !== 'number' || piece.isDegrees || !/^\d{1,4}$/.test(piece.text)) return [];
  const ends = new RegExp(`(?<!\\d)0*${piece.value}$`);
  return live.parts.map(({ name }) => name).filter((name) => ends.test(name));
}

/** `the 8`, `8 dry`: a number that a part has. */
function numberedPart({ pieces, live, used }: Heard, fits: (name: PartName) => boolean) {
  for (const piece of pieces) {
    const names = partsNumbered(piece, live);
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
