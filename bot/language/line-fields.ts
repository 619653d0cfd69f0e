// A line with fields in braces, `weigh 3 {part-a}g {part-b}g`, and the line once they are filled in: for a form, for what is
// typed behind a tap's id, and for an answer that says no more than what was asked.

import { verbRows, verbs } from '../../core/commands.ts';
import type { Hearing } from './hearing.ts';

export interface LineField {
  readonly id: string;
  /** As it stands behind the field in the line; empty for words. */
  readonly unit: string;
  /** `figures`: several, apart by spaces. */
  readonly holds: 'number' | 'figures' | 'words' | 'choice';
}

const field = /\{([\w-]+)\}([A-Za-z%]*)/g;

export function fieldsOf(line: string): readonly LineField[] {
  return [...line.matchAll(field)].map(([, id = '', unit = '']) => ({ id, unit, holds: holdsOf(id, unit) }));
}

/** Slots that take several readings at once, by the plural of their name: `wet-films`. */
const several: ReadonlySet<string> = new Set(
  verbs.flatMap((verb) =>
    Object.values(verbRows[verb].fields).flatMap(({ told, slots }) =>
      told === 'figures' ? slots.map(({ name }) => `${name}s`) : [],
    ),
  ),
);

/** Slots of words in the middle of a line, which stand in quotes where they are several. */
const texts: ReadonlySet<string> = new Set(
  verbs.flatMap((verb) =>
    Object.values(verbRows[verb].fields).flatMap(({ told, slots }) =>
      told === 'text' ? slots.map(({ name }) => name) : [],
    ),
  ),
);

/** For what a line lacks. */
export const fieldFor = (slot: string, unit: string): string =>
  `{${several.has(`${slot}s`) ? `${slot}s` : slot}}${unit}`;

/** A count has no unit. */
function holdsOf(id: string, unit: string): LineField['holds'] {
  if (id === 'method') return 'choice';
  if (several.has(id)) return 'figures';
  return unit === '' && id !== 'part-count' ? 'words' : 'number';
}

/**
 * The line with its fields filled in. A value that brings its own unit (`2.6lb`) keeps it; an empty one leaves its place
 * out, so that the reader says what is missing.
 */
export function fillLine(line: string, values: ReadonlyMap<string, string>): string {
  return filled(line, (id) => values.get(id));
}

/**
 * The line with what was typed, in the order of its fields. Nothing typed is lost: a last field of
 * words or of several figures takes all that is left, and what no field takes stays at the end for the reader.
 */
export function fillInOrder(line: string, typed: readonly string[], hearing: Hearing): string {
  const rest = unitsJoined(quotesJoined(typed), hearing);
  const last = fieldsOf(line).at(-1);
  const takesAll = last?.holds === 'words' || last?.holds === 'figures';
  const values = filled(line, (id) => (takesAll && id === last.id ? rest.splice(0).join(' ') : rest.shift()));
  return [values, ...rest].join(' ').trim();
}

/** `"Ms. Hale"` is one value. */
function quotesJoined(typed: readonly string[]): readonly string[] {
  const values: string[] = [];
  let isOpen = false;
  for (const word of typed) {
    if (isOpen) values[values.length - 1] = `${values.at(-1) ?? ''} ${word}`;
    else values.push(word);
    const marks = word.split('"').length - 1;
    if (marks % 2 === 1) isOpen = !isOpen;
  }
  return values;
}

/** `2.5 lb` is one value. */
function unitsJoined(typed: readonly string[], hearing: Hearing): string[] {
  const values: string[] = [];
  for (const word of typed) {
    const before = values.at(-1);
    const isUnit = hearing.units.has(word.toLowerCase());
    if (isUnit && before !== undefined && /^[-+]?[\d.,]+$/.test(before)) values[values.length - 1] = `${before}${word}`;
    else values.push(word);
  }
  return values;
}

/** The line with each field called by `name`. */
export const withFieldsCalled = (line: string, name: (id: string) => string): string =>
  line.replaceAll(field, (_, id: string, unit: string) => `[${name(id)}]${unit}`);

function filled(line: string, valueFor: (id: string) => string | undefined): string {
  return line
    .replaceAll(field, (_, id: string, unit: string) => {
      const value = (valueFor(id) ?? '').replaceAll(/\s+/g, ' ').trim();
      if (value === '') return '';
      if (texts.has(id) && /\s/.test(value) && !value.startsWith('"')) return JSON.stringify(value);
      return /[a-z%°]$/i.test(value) ? value : `${value}${unit}`;
    })
    .replaceAll(/\s+/g, ' ')
    .trim();
}
