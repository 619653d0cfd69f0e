// What a tap asks for before it can be said: the fields that stand in braces in its line, as a small form shows them. For any
// front end that can show one.

import { methods } from '../../core/methods.ts';
import { isOwnKey, ownValue } from '../../core/own-key.ts';
import { fieldsOf, type LineField, withFieldsCalled } from '../language/line-fields.ts';
import type { Words } from '../language/tongues/tongues.ts';

export interface TapField extends LineField {
  readonly label: string;
  /** Of a choice. */
  readonly choices: readonly string[];
}

export function fieldsIn(line: string, words: Words): readonly TapField[] {
  return fieldsOf(line).map((field) => ({
    ...field,
    label: labelOf(field.id, words),
    choices: field.id === 'method' ? methods.map(words.names.method) : [],
  }));
}

function labelOf(id: string, words: Words): string {
  if (isOwnKey(words.facts, id)) return words.facts[id];
  return ownValue(words.page.fields, id) ?? ownValue(words.slots, id) ?? id.replaceAll('-', ' ');
}

/** The line with its fields named: for who must type it. A figure in their place could be sent as it stands. */
export const blankLine = (line: string, words: Words): string => withFieldsCalled(line, (id) => labelOf(id, words));
