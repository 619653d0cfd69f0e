// To what an act was done, from what its clause names, in full or by half, and from what is live.

import type { PartName } from '../../../core/ids.ts';
import { inNaturalOrder } from '../../../core/natural-order.ts';
import type { LiveNow } from '../live-now.ts';
import { manyMeant } from '../parts-said/many-said.ts';
import { partsKnown } from '../parts-said/parts-known.ts';
import type { ActRow } from './act-rows.ts';
import { cansLettered } from './cans-lettered.ts';
import type { ManyIn } from './many-in.ts';
import type { Piece } from './piece.ts';

/** What a clause before it named: `film on 9 is 12um, release it`. */
export type Before = Pick<Things, 'parts' | 'batch'> & { readonly isSprayed?: true };

export interface Heard {
  readonly row: ActRow;
  readonly pieces: readonly Piece[];
  readonly live: LiveNow;
  readonly before: Before | undefined;
  /** `all of them`, `both`. */
  readonly many: ManyIn | undefined;
  /** The parts that the speaker's last act named. */
  readonly namedLast: () => readonly PartName[];
  /** `it`, `them`. */
  readonly isNamedBefore: boolean;
  /** `6 and the housing`: numbers in one list with a part by its name. */
  readonly joinedTo: readonly Piece[];
  /** `from batch too`: a pot by a number that was not heard. */
  readonly isPotUnnumbered: boolean;
  /** Numbers that may say how many, or which: `the three`. */
  readonly ofEither: readonly Piece[];
  /** `brush, from 1`: the only number, and it says whence. */
  readonly whence: Piece | undefined;
  /** Bare numbers that named a thing. */
  readonly used: Set<Piece>;
}

export interface Things {
  /** What may be meant; of one choice each has a line of its own. */
  readonly choices: readonly (readonly string[])[];
  readonly parts: readonly PartName[];
  readonly batch?: number;
  readonly isAssumed: boolean;
  /** The line names none: it is whatever is live. */
  readonly isUnnamed?: true;
  /** The clause names none: it is what was named before. */
  readonly isBefore?: true;
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
      return { choices: [[isTaken ? String(batch.number) : '']], parts: [], isAssumed: false, isUnnamed: true };
    }
    default: {
      const never: never = heard.row.on;
      return never;
    }
  }
}

/** By name; by a word or a number that several may have, those to which it can be done; else whatever it can be done to alone. */
function partsOf(heard: Heard): Things | undefined {
  const { pieces, row, live, before, many, used } = heard;
  const phases = new Map(live.parts.map(({ name, phase }) => [name, phase]));
  const fits = (name: PartName): boolean => {
    const phase = phases.get(name);
    return row.parts === undefined || (phase !== undefined && row.parts.includes(phase));
  };
  const byName = pieces.flatMap((piece) => (piece.is === 'parts' ? piece.names : []));
  const listed = heard.joinedTo.flatMap((piece) => {
    used.add(piece);
    const numbered = partsNumbered(piece, live).filter((name) => !byName.includes(name));
    const [only, other] = numbered.length > 1 ? numbered.filter(fits) : numbered;
    return other === undefined && only !== undefined ? [only] : [];
  });
  // Where two have that number, none is left out.
  if (listed.length < heard.joinedTo.length) return undefined;
  const named = [...new Set([...listed, ...byName])];
  if (many?.piece !== undefined && (named.length === 0 || named.length === many.count)) used.add(many.piece);
  const batch = row.takes?.includes('batch') === true ? coatBatch(heard, named.length === 0) : undefined;
  const told = (choices: readonly (readonly PartName[])[], isAssumed = false): Things => ({
    choices: choices.map((names) =>
      row.isOfOne === true && names.length > 1
        ? names
        : [[...names, batch?.text ?? ''].filter((text) => text !== '').join(' ')],
    ),
    parts: choices.length === 1 ? (choices[0] ?? []) : [],
    ...(batch?.number !== undefined && { batch: batch.number }),
    isAssumed: isAssumed || batch?.isAssumed === true,
  });
  // `all but 3`: of named ones none is left out.
  if (named.length > 0) return pieces.some(({ is }) => is === 'but') ? undefined : told([named]);
  const among = pieces.find((piece) => piece.is === 'one-of');
  if (many !== undefined || among?.isSome === true) {
    const whole = (among?.names ?? live.parts.map(({ name }) => name)).filter(fits).toSorted(inNaturalOrder);
    const all = withoutLeftOut(whole, pieces);
    if (all === undefined) return undefined;
    const meant = manyMeant(many ?? { many: 'all' }, all, heard.namedLast());
    // `all three are dry`, where there are these three and no other part: none but they can be meant.
    const isCounted = many?.count === all.length && all.length > 1 && all.length === live.parts.length;
    if (meant.length > 0) return told(meant.slice(0, 3), !isCounted);
    // `both`, where there are not two: it is none of them alone.
    if (many?.count !== undefined) return undefined;
  }
  const either = among ?? numberedPart(heard, fits);
  if (either !== undefined) {
    const fitting = either.names.filter(fits);
    const chosen = fitting.length === 0 ? either.names : fitting;
    return told([...howMany(heard, fits), ...chosen.map((name) => [name])].slice(0, 3));
  }
  if (before !== undefined && before.parts.length > 0) return { ...told([before.parts]), isBefore: true };
  // `wiped it down`: what the speaker's last act was done to.
  const last = heard.isNamedBefore ? heard.namedLast() : [];
  if (last.length > 0 && last.every(fits)) return { ...told([last], true), isBefore: true };
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

/** Where it is plain which those are that are left out. */
function withoutLeftOut(all: readonly PartName[], pieces: readonly Piece[]): readonly PartName[] | undefined {
  const out = pieces
    .flatMap((piece) => (piece.is === 'but' ? piece.names : []))
    .map((names) => (names.length === 1 ? names : names.filter((name) => all.includes(name))));
  return out.every(({ length }) => length === 1) ? all.filter((name) => !out.flat().includes(name)) : undefined;
}

/** Those that have this number, or this serial. */
export function partsNumbered(piece: Piece, { parts }: LiveNow): readonly PartName[] {
  if (piece.is !== 'number' || piece.isDegrees || !/^\d{1,6}$/.test(piece.text)) return [];
  const numbered = partsKnown(parts.map(({ name }) => name)).numbers.get(piece.value) ?? [];
  if (numbered.length > 0 || piece.text.length < fewestOfSerial) return numbered;
  return parts.flatMap(({ name, serial }) => (serial === piece.text ? [name] : []));
}

/** Shorter ones are met with as figures of other things. */
const fewestOfSerial = 4;

/** `the three out of the oven`, where it can be done to three: how many may be meant, or which. */
function howMany({ ofEither, used, live }: Heard, fits: (name: PartName) => boolean): readonly (readonly PartName[])[] {
  const all = live.parts.flatMap(({ name }) => (fits(name) ? [name] : [])).toSorted(inNaturalOrder);
  const isCount = (piece: Piece): boolean => piece.is === 'number' && used.has(piece) && piece.value === all.length;
  return all.length > 1 && ofEither.some(isCount) ? [all] : [];
}

/** `the 8`, `8 dry`: a number that a part has. */
function numberedPart({ pieces, live, used, row, whence }: Heard, fits: (name: PartName) => boolean) {
  for (const piece of pieces) {
    const isWhence = piece === whence && row.takes?.includes('batch') === true;
    const names = used.has(piece) || isWhence ? [] : partsNumbered(piece, live);
    if (names.some(fits) || names.length === 1) {
      used.add(piece);
      return { names };
    }
  }
  return undefined;
}

/** Of a coat: as it was said, a bare number behind the part, or the only pot in use. */
function coatBatch({ pieces, live, used, before, many, isPotUnnumbered, whence }: Heard, isPartUnnamed: boolean) {
  const said = pieces.find((piece) => piece.is === 'batch');
  if (said !== undefined) return { text: String(said.number), number: said.number, isAssumed: false };
  const numbers = pieces.filter((piece) => piece.is === 'number').filter((piece) => !used.has(piece));
  const bare = numbers
    .slice(isPartUnnamed && many === undefined && whence === undefined ? 1 : 0)
    .find(({ text }) => live.batches.some(({ number }) => text === String(number)));
  if (bare !== undefined) {
    used.add(bare);
    return { text: bare.text, number: bare.value, isAssumed: false };
  }
  if (before?.batch !== undefined) return { text: String(before.batch), number: before.batch, isAssumed: false };
  const inUse = live.batches.filter(({ phase }) => phase === 'filtered');
  const only = inUse.length === 1 ? inUse[0] : undefined;
  return { text: only === undefined ? '' : String(only.number), number: only?.number, isAssumed: isPotUnnumbered };
}

function batchOf(heard: Heard): Things | undefined {
  const { pieces, row, live, before, used, many } = heard;
  const told = (numbers: readonly number[]): Things => ({
    choices: numbers.map((number) => [String(number)]),
    parts: [],
    ...(numbers.length === 1 && numbers[0] !== undefined && { batch: numbers[0] }),
    isAssumed: false,
  });
  const said = [...new Set(pieces.flatMap((piece) => (piece.is === 'batch' ? [piece.number] : [])))];
  if (said.length > 1) return { choices: [said.map(String)], parts: [], isAssumed: false };
  if (said[0] !== undefined) return told(said);
  const first = pieces.find((piece) => piece.is === 'number');
  const fitting = live.batches.filter(({ phase }) => row.batches?.includes(phase) === true);
  // Its number stands first, and there is such a pot: `filtering 2`, `weigh 1 901 899`.
  const bare = first !== undefined && live.batches.find(({ number }) => first.text === String(number));
  if (first !== undefined && bare !== undefined && bare !== false) {
    used.add(first);
    return told([bare.number]);
  }
  // `B 1198 A 1203 thats for 1`
  const last = pieces.findLast((piece) => piece.is === 'number');
  const behind = fitting.find(({ number }) => last?.text === String(number));
  if (last !== undefined && last !== first && behind !== undefined) {
    used.add(last);
    return told([behind.number]);
  }
  if (many !== undefined && fitting.length > 1) return eachOf(fitting, many);
  if (before?.batch !== undefined) return told([before.batch]);
  return fitting.length === 0
    ? undefined
    : { ...told(fitting.slice(0, 3).map(({ number }) => number)), isUnnamed: true };
}

/** `both cans`, where there are so many. */
function eachOf(all: readonly { readonly number: number }[], { count = all.length }: ManyIn): Things | undefined {
  const choices = count === all.length ? [all.map(({ number }) => String(number))] : [];
  return choices.length === 0 ? undefined : { choices, parts: [], isAssumed: true };
}

function canOf({ pieces, live, used, row, many }: Heard): Things | undefined {
  const told = (numbers: readonly number[]): Things => ({
    choices: numbers.map((number) => [String(number)]),
    parts: [],
    isAssumed: false,
  });
  const said = [...new Set(pieces.flatMap((piece) => (piece.is === 'can' ? [piece.number] : [])))];
  // `argon over can 1 and can 2`: each of them.
  if (said.length > 0) return { choices: [said.map(String)], parts: [], isAssumed: false };
  const bare = pieces.find(
    (piece) => piece.is === 'number' && live.cans.some(({ number }) => piece.text === String(number)),
  );
  if (bare?.is === 'number') {
    used.add(bare);
    return told([bare.value]);
  }
  const cans = cansLettered(pieces, live.cans);
  if (many !== undefined && cans.length > 1) return eachOf(cans, many);
  const open = cans.filter(({ isLidOff }) => isLidOff);
  return row.on === 'can' && open.length === 1 && open[0] !== undefined
    ? { ...told([open[0].number]), isUnnamed: true }
    : undefined;
}
