// Everything that can be typed, one row each: what its line needs and may hold, read off the rows in core/verbs/. The
// parser, the help and the suggestions read it here. Its words stand in each tongue's verbs.ts.

import { type Question, type Verb, verbRows } from '../../core/commands.ts';
import { isOwnKey, tableOf } from '../../core/own-key.ts';
import { questionRows } from '../../core/verbs/question-rows.ts';
import type { Field } from '../../core/verbs/slot.ts';
import type { VerbRow } from '../../core/verbs/verb.ts';
import type { Slot } from './slots.ts';

export type VocabularyName = Verb | Question['ask'];

export interface VocabularyRow {
  readonly name: VocabularyName;
  readonly needs: readonly Slot[];
  readonly may: readonly Slot[];
  /** The rest of the line is somebody's own words. */
  readonly endsInWords?: true;
}

type Row = VerbRow<Readonly<Record<string, Field<unknown, Slot>>>>;
const rows: { readonly [Name in VocabularyName]: Row } = { ...verbRows, ...questionRows };

function rowOf(name: VocabularyName): VocabularyRow {
  const { fields, options } = rows[name];
  const needs: Slot[] = [];
  const may: Slot[] = [];
  for (const [key, field] of Object.entries(fields)) {
    const [first, ...others] = field.slots.map((slot) => slot.name);
    // Of air either figure will do.
    const isNeeded =
      field.told !== 'air' && (field.options?.required === true || options?.oneOf?.includes(key) === true);
    if (first !== undefined) (isNeeded ? needs : may).push(first);
    may.push(...others);
  }
  return { name, needs, may: [...new Set(may)], ...(options?.endsInWords === true && { endsInWords: true }) };
}

const isNamed = (name: string): name is VocabularyName => isOwnKey(rows, name);
export const vocabulary: { readonly [Name in VocabularyName]: VocabularyRow } = tableOf(
  Object.keys(rows)
    .filter(isNamed)
    .map((name) => [name, rowOf(name)]),
);
