// The record's rows as a file: CSV that a spreadsheet opens right, or one JSON object a line.

import { methodRows } from '../../core/methods.ts';
import { isOwnKey, ownValue } from '../../core/own-key.ts';
import { type Cell, type ExportColumn, type ExportRow, exportColumns } from '../../core/records/export-rows.ts';
import type { ExportForm } from '../../core/records/record-questions.ts';
import type { Telling } from '../cards/card-context.ts';

type Reader = Pick<Telling, 'words' | 'figures'>;

/** A spreadsheet is somebody's to read; a program reads the same lines wherever it is. */
export async function exportText(rows: readonly ExportRow[], form: ExportForm, reader: Reader): Promise<string> {
  switch (form) {
    case 'csv':
      return csvOf(rows, reader);
    case 'jsonl':
      // Every column stands in every line, so that whoever reads it sees the same shape throughout.
      return rows
        .map((row) => `${JSON.stringify(Object.fromEntries(exportColumns.map((name) => [name, row[name] ?? null])))}\n`)
        .join('');
    default: {
      const never: never = form;
      return never;
    }
  }
}

/** Columns whose values are words of the record. */
const coded: readonly ExportColumn[] = ['state', 'cure_way', 'film_state'];

/** RFC 4180 with a byte order mark, by which spreadsheets tell that it is UTF-8; apart by `;` where a comma is the decimal sign. */
async function csvOf(rows: readonly ExportRow[], { words, figures }: Reader): Promise<string> {
  const { heads, states } = words.records.export;
  const sign = figures.decimal(0.5).charAt(1);
  const said = (name: ExportColumn, value: Cell): Cell => {
    if (typeof value === 'number') return String(value).replace('.', sign);
    if (value === undefined) return value;
    if (name === 'place') return words.names.place(value);
    if (name === 'method') return isOwnKey(methodRows, value) ? words.names.method(value) : value;
    return coded.includes(name) ? (ownValue(states, value) ?? value) : value;
  };
  const { stringify } = await import('csv-stringify/sync');
  return stringify(
    rows.map((row) =>
      exportColumns.map((name) =>
        typeof row[name] === 'number' ? said(name, row[name]) : cellOf(said(name, row[name])),
      ),
    ),
    {
      header: true,
      columns: exportColumns.map((name) => heads[name]),
      ...{ bom: true, record_delimiter: 'windows', delimiter: sign === ',' ? ';' : ',' },
    },
  );
}

/** A text that begins so is a formula to a spreadsheet, also behind spaces. */
const formula = /^\s*[=+\-@\t\r]/;

/** Numbers stay numbers, negative ones too; a text that would be a formula gets an apostrophe in front. */
export function cellOf(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  return formula.test(value) ? `'${value}` : value;
}
