// Numbers told one after the other: `1, 2 and 3`, `1-4`, `del 1 al 3`, `the 7 and the 8`.

import { ownValue } from '../../../core/own-key.ts';
import type { Atom } from './atoms.ts';
import type { ListTable } from './list-table.ts';

export interface NumbersListed {
  readonly numbers: readonly number[];
  /** Index after the last atom of it. */
  readonly to: number;
  /** False where a figure may be of something else: `impeller 7, 1`. */
  readonly isSure: boolean;
  /** From one to another. */
  readonly isStretch: boolean;
}

interface From {
  readonly at: number;
  /** The number that a name before it ended in. */
  readonly first?: number;
  /** Behind a name that stands for several a number goes on without a joint, until one has closed the list. */
  readonly isPlural: boolean;
}

/** More than anybody racks at once. */
export const mostParts = 100;

export function numbersListed(
  atoms: readonly Atom[],
  { at, first, isPlural }: From,
  table: ListTable,
): NumbersListed | undefined {
  const numbers: number[] = first === undefined ? [] : [first];
  const told = { to: at, isSure: true, isStretch: false, isClosed: false };
  for (;;) {
    const isFirst = numbers.length === 0;
    const joint = isFirst ? { to: told.to, is: 'and' as const } : jointAt(atoms, told.to, table);
    const article = articlesFrom(atoms, joint?.to ?? told.to, table, isFirst);
    // `impeller-1, -2 and -3`
    const from = joint !== undefined && joint.is !== 'to' && atoms[article]?.text === '-' ? article + 1 : article;
    const number = wholeAt(atoms, from);
    // `5 y 6, de la 1`: whence, where the first was told without it and no stretch begins.
    const isWhence = joint?.is === 'comma' && isOf(atoms, joint.to, table) && !isOf(atoms, at, table);
    if (isWhence && jointAt(atoms, from + 1, table)?.is !== 'to') break;
    const isOpen = !told.isClosed && (isPlural || joinsLater(atoms, from + 1, table));
    // `impeller 7, one thin coat each`
    const isCounted = !isFirst && table.counted.has(atoms[from + 1]?.text ?? '');
    if (number === undefined || isCounted || (joint === undefined && !isOpen)) break;
    const start = numbers.at(-1);
    if (joint?.is === 'to' && start !== undefined) {
      // `la 7 a 90`: no stretch, and no more of the list.
      if (number <= start || number - start > mostParts) break;
      for (let each = start + 1; each <= number; each++) numbers.push(each);
      told.isStretch = true;
    } else {
      if (!isFirst && (joint === undefined || joint.is === 'comma'))
        told.isSure &&= isInList(atoms, from, joint, isPlural, table);
      numbers.push(number);
    }
    told.isClosed = told.isClosed || (!isFirst && joint !== undefined && joint.is !== 'comma');
    told.to = from + 1;
  }
  if (numbers.length === 0) return undefined;
  return { numbers: [...new Set(numbers)], to: told.to, isSure: told.isSure, isStretch: told.isStretch };
}

const isOf = (atoms: readonly Atom[], at: number, { of }: ListTable): boolean => longestAt(atoms, at, of) !== undefined;

/** `1, 2 and 3`, `-2`; in `impeller 7, 1` the second may be the pot. */
function isInList(
  atoms: readonly Atom[],
  at: number,
  joint: Joint | undefined,
  isPlural: boolean,
  table: ListTable,
): boolean {
  const goesOn = joinsLater(atoms, at + 1, table);
  return joint === undefined ? isPlural && goesOn : isPlural || goesOn || atoms[at - 1]?.text === '-';
}

/** What may be of something else is of a pot: where none has such a number, all are of parts. */
export const isOfParts = (
  { numbers, isSure }: NumbersListed,
  { context: { batches } }: { readonly context: { readonly batches: readonly number[] } },
): boolean => isSure || !numbers.slice(1).some((number) => batches.includes(number));

/** Of a name, and no amount: `8`; not the 7 of `7.5`. */
export function wholeAt(atoms: readonly Atom[], at: number): number | undefined {
  const atom = atoms[at];
  if (atom?.is !== 'number' || atom.text.length > 6) return undefined;
  const next = atoms[at + 1];
  const isDecimal = atom.ends === undefined && (next?.text === '.' || next?.is === 'word');
  return isDecimal ? undefined : Number(atom.text);
}

export interface Joint {
  readonly to: number;
  readonly is: 'and' | 'to' | 'comma';
}

const marks: Readonly<Record<string, Joint['is']>> = { ',': 'comma', '&': 'and', '+': 'and', '/': 'and', '-': 'to' };

export function jointAt(atoms: readonly Atom[], at: number, { and, to, asMuch }: ListTable): Joint | undefined {
  const anded = longestAt(atoms, at, and);
  if (anded !== undefined) return { to: at + anded, is: 'and' };
  const isAsMuch = asMuch.some(
    ({ before, joint }) => atoms[at]?.text === joint && atoms.slice(0, at).some(({ text }) => text === before),
  );
  if (isAsMuch) return { to: at + 1, is: 'and' };
  const gap = atoms[at - 1]?.gap.trim() ?? '';
  if (gap.startsWith(',')) return { to: at, is: 'comma' };
  if (gap === '/') return { to: at, is: 'and' };
  const stretched = longestAt(atoms, at, to);
  if (stretched !== undefined) return { to: at + stretched, is: 'to' };
  const mark = atoms[at]?.is === 'mark' ? (atoms[at]?.text ?? '') : '';
  const is = mark.startsWith('..') ? 'to' : ownValue(marks, mark);
  return is === undefined ? undefined : { to: at + 1, is };
}

/** A joint that is no number's own follows, so the list goes on to there. */
function joinsLater(atoms: readonly Atom[], at: number, table: ListTable): boolean {
  for (let next = at, seen = 0; seen < 8; seen++) {
    const joint = jointAt(atoms, next, table);
    const from = articlesFrom(atoms, joint?.to ?? next, table, false);
    if (wholeAt(atoms, from) === undefined) return false;
    if (joint !== undefined && joint.is !== 'comma') return true;
    next = from + 1;
  }
  return false;
}

/** `no` names a number only behind the name itself, or with its point: `impeller no 7`, `no. 8`. */
export function articlesFrom(
  atoms: readonly Atom[],
  at: number,
  { articles }: ListTable,
  isBehindName: boolean,
): number {
  let to = at;
  for (;;) {
    if (atoms[to]?.text === '#') to += 1;
    else if (atoms[to]?.text === 'no' && (isBehindName || atoms[to]?.gap.startsWith('.') === true)) to += 1;
    else {
      const article = longestAt(atoms, to, articles);
      if (article === undefined) return to;
      to += article;
    }
  }
}

/** How many atoms the longest of these phrases has that is said there. */
export function longestAt(
  atoms: readonly Pick<Atom, 'text'>[],
  at: number,
  phrases: readonly (readonly string[])[],
): number | undefined {
  let longest: number | undefined;
  for (const phrase of phrases) {
    if (phrase[0] !== atoms[at]?.text || (longest ?? 0) >= phrase.length) continue;
    if (phrase.every((word, i) => atoms[at + i]?.text === word)) longest = phrase.length;
  }
  return longest;
}
