// What a tap asks for before it can be said: the fields that stand in braces in its line, and the line once they are
// filled in. For any front end that can show a small form.

import { verbRows, verbs } from '../../core/commands.ts';
import { methods } from '../../core/methods.ts';
import { isOwnKey, ownValue } from '../../core/own-key.ts';
import type { Hearing } from '../language/hearing.ts';
import type { Words } from '../language/tongues/tongues.ts';

export interface TapField {
  readonly id: string;
  readonly label: string;
  /** As it stands behind the field in the line; empty for words. */
  readonly unit: string;
  /** `figures`: several, apart by spaces. */
  readonly holds: 'number' | 'figures' | 'words' | 'choice';
  /** Of a choice. */
  readonly choices: readonly string[];
}

const field = /\{([\w-]+)\}([A-Za-z%]*)/g;

export function fieldsIn(line: string, words: Words): readonly TapField[] {
  return [...line.matchAll(field)].map(([, id = '', unit = '']) => {
    return {
      id,
      label: labelOf(id, words),
      unit,
      holds: holdsOf(id, unit),
      choices: id === 'method' ? methods.map(words.names.method) : [],
    };
  });
}

/** Slots that take several readings at once, by the plural of their name: `wet-films`. */
const several: ReadonlySet<string> = new Set(
  verbs.flatMap((verb) =>
    Object.values(verbRows[verb].fields).flatMap(({ told, slots }) =>
      told === 'figures' ? slots.map(({ name }) => `${name}s`) : [],
    ),
  ),
);

/** A count has no unit. */
function holdsOf(id: string, unit: string): TapField['holds'] {
  if (id === 'method') return 'choice';
  if (several.has(id)) return 'figures';
  return unit === '' && id !== 'part-count' ? 'words' : 'number';
}

function labelOf(id: string, words: Words): string {
  if (isOwnKey(words.facts, id)) return words.facts[id];
  return ownValue(words.page.fields, id) ?? ownValue(words.slots, id) ?? id.replaceAll('-', ' ');
}

/**
 * The line with its fields filled in. A value that brings its own unit (`2.6lb`) keeps it; an empty one leaves its place
 * out, so that the reader says what is missing.
 */
export function fillLine(line: string, values: ReadonlyMap<string, string>): string {
  return filled(line, (id) => values.get(id));
}

/**
 * The line with what was typed behind a tap's id, in the order of its fields. Nothing typed is lost: a last field of
 * words or of several figures takes all that is left, and what no field takes stays at the end for the reader.
 */
export function fillInOrder(line: string, typed: readonly string[], hearing: Hearing): string {
  const rest = unitsJoined(typed, hearing);
  const [last] = [...line.matchAll(field)].slice(-1);
  const [, lastId = '', lastUnit = ''] = last ?? [];
  const holds = holdsOf(lastId, lastUnit);
  const takesAll = last !== undefined && (holds === 'words' || holds === 'figures');
  const values = filled(line, (id) => (takesAll && id === lastId ? rest.splice(0).join(' ') : rest.shift()));
  return [values, ...rest].join(' ').trim();
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

/** The line with its fields named: for who must type it. A figure in their place could be sent as it stands. */
export function blankLine(line: string, words: Words): string {
  return line.replaceAll(field, (_, id: string, unit: string) => `[${labelOf(id, words)}]${unit}`);
}

function filled(line: string, valueFor: (id: string) => string | undefined): string {
  return line
    .replaceAll(field, (_, id: string, unit: string) => {
      const value = (valueFor(id) ?? '').replaceAll(/\s+/g, ' ').trim();
      if (value === '') return '';
      return /[a-z%°]$/i.test(value) ? value : `${value}${unit}`;
    })
    .replaceAll(/\s+/g, ' ')
    .trim();
}
