// Every word or two that begins a line, with what it says. A method stands for the coat it makes.

import { type Method, methods } from '../../core/methods.ts';
import { alarms } from '../../core/session/session-commands.ts';
import type { SaidByVerb, Typed } from './tongues/typed.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { VocabularyName } from './vocabulary.ts';
import { type VocabularyRow, vocabulary } from './vocabulary.ts';

export interface VerbNamed extends SaidByVerb {
  readonly row: VocabularyRow;
  /** As it is printed. */
  readonly printed: string;
  /** Whose word it is. */
  readonly tongue: Typed;
}

export type VerbTable = ReadonlyMap<string, VerbNamed>;

/** Of words that several tongues have the last one's counts. Words of need are heard in `every` tongue. */
export function verbsOf(tongues: readonly Typed[], every: readonly Typed[]): VerbTable {
  const table = new Map<string, VerbNamed>();
  for (const tongue of every) for (const name of alarms) addRow(table, vocabulary[name], tongue);
  for (const tongue of tongues) {
    for (const [word, method] of methodWordsOf(tongue)) {
      table.set(word, { row: vocabulary.coat, printed: tongue === tongues[0] ? method : word, method, tongue });
    }
    for (const { words, verb, printed, ...said } of tongue.openings) {
      const row = vocabulary[verb];
      const shown = printed ?? tongue.verbs[verb].words[0] ?? verb;
      for (const word of words.split(', ')) table.set(withoutAccents(word), { row, printed: shown, ...said, tongue });
    }
    for (const row of Object.values<VocabularyRow>(vocabulary)) addRow(table, row, tongue);
  }
  return table;
}

function addRow(table: Map<string, VerbNamed>, row: VocabularyRow, tongue: Typed): void {
  const { words } = tongue.verbs[row.name];
  const printed = words[0] ?? row.name;
  for (const word of words) table.set(withoutAccents(word), { row, printed, tongue });
}

export function methodWordsOf(tongue: Typed): readonly (readonly [string, Method])[] {
  return methods.flatMap((method) => tongue.methods[method].typed.split(' ').map((word) => [word, method] as const));
}

/** By the row: words that only round a sentence off there, and what words mean there only. */
export interface OnRow {
  readonly ignores: ReadonlySet<string>;
  readonly means: ReadonlyMap<string, string>;
}

export function rowsOf(tongues: readonly Typed[]): ReadonlyMap<VocabularyName, OnRow> {
  return new Map(
    Object.values<VocabularyRow>(vocabulary).map(({ name }) => {
      const rows = tongues.map(({ verbs }) => verbs[name]);
      const means = rows.flatMap((row) =>
        Object.entries(row.means).flatMap(([meaning, words]) =>
          words.split(' ').map((word) => [word, meaning] as const),
        ),
      );
      return [name, { ignores: new Set(rows.flatMap(({ ignores }) => ignores)), means: new Map(means) }];
    }),
  );
}
