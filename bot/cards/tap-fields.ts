// What a tap asks for before it can be said: the fields that stand in braces in its line, and the line once they are
// filled in. For any front end that can show a small form.

import { methods } from '../../core/commands.ts';
import type { Words } from '../language/words/languages.ts';
import { factUnits } from './fact-ids.ts';

export interface TapField {
  readonly id: string;
  readonly label: string;
  /** As it stands behind the field in the line; empty for words. */
  readonly unit: string;
  readonly holds: 'number' | 'words' | 'choice';
  /** Of a choice. */
  readonly choices: readonly string[];
}

const field = /\{([\w-]+)\}([A-Za-z%]*)/g;

export function fieldsIn(line: string, words: Words): readonly TapField[] {
  return [...line.matchAll(field)].map(([, id = '', unit = '']) => {
    const holds = id === 'method' ? 'choice' : unit === '' ? 'words' : 'number';
    return { id, label: labelOf(id, words), unit, holds, choices: id === 'method' ? methods.map(words.names.method) : [] };
  });
}

function labelOf(id: string, words: Words): string {
  if (isFactId(id)) return words.facts[id];
  return words.page.fields[id] ?? id.replaceAll('-', ' ');
}

const isFactId = (id: string): id is keyof typeof factUnits => id in factUnits;

/**
 * The line with its fields filled in. A value that brings its own unit (`2.6lb`) keeps it; an empty one leaves its place
 * out, so that the reader says what is missing.
 */
export function fillLine(line: string, values: ReadonlyMap<string, string>): string {
  return line
    .replaceAll(field, (_, id: string, unit: string) => {
      const value = (values.get(id) ?? '').replaceAll(/\s+/g, ' ').trim();
      if (value === '') return '';
      return /[a-z%°]$/i.test(value) ? value : `${value}${unit}`;
    })
    .replaceAll(/\s+/g, ' ')
    .trim();
}
