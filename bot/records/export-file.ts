// The record's rows as a file: CSV that a spreadsheet opens right, or one JSON object a line.

import { type ExportRow, exportColumns } from '../../core/records/export-rows.ts';
import type { ExportForm } from '../../core/records/record-questions.ts';

export async function exportText(rows: readonly ExportRow[], form: ExportForm): Promise<string> {
  switch (form) {
    case 'csv':
      return csvOf(rows);
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

/** RFC 4180 with a byte order mark, by which spreadsheets tell that it is UTF-8. */
async function csvOf(rows: readonly ExportRow[]): Promise<string> {
  const { stringify } = await import('csv-stringify/sync');
  return stringify(
    rows.map((row) => exportColumns.map((name) => cellOf(row[name]))),
    { header: true, columns: [...exportColumns], bom: true, record_delimiter: 'windows' },
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
