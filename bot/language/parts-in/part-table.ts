// A table of parts as spreadsheets hand it out: a head that names its columns, then a row each, apart by commas, semicolons or tabs.

import { parse } from 'csv-parse/sync';
import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import type { Hearing } from '../hearing.ts';
import { metalNamed } from '../trade-words.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { type Column, columnOf, usualUnits } from './part-columns.ts';

export interface PartTable {
  readonly columns: readonly (Column | undefined)[];
  /** The heads of those that nothing is booked of. */
  readonly notTaken: readonly string[];
  readonly rows: readonly TableRow[];
}

export interface TableRow {
  /** As a spreadsheet counts them: the head is the first. */
  readonly number: number;
  readonly cells: readonly string[];
}

const marks = [';', '\t', ',', '|'];

/** `lines`: from the head on. `undefined` where the first is no head of a table of parts. */
export function partTable(lines: readonly string[], hearing: Hearing): PartTable | undefined {
  const head = lines[0] ?? '';
  for (const mark of marks) {
    if (!head.includes(mark)) continue;
    const rows = rowsOf(lines, mark);
    const columns = rows[0]?.map((value) => columnOf(value, hearing)) ?? [];
    const held = columns.flatMap((column) => column?.holds ?? []);
    if (held.length < 2 || !held.includes('name') || new Set(held).size < held.length) continue;
    return {
      columns,
      notTaken: (rows[0] ?? []).filter((value, i) => columns[i] === undefined && value !== ''),
      rows: rows.flatMap((cells, i) =>
        i === 0 || cells.every((value) => value === '') ? [] : [{ number: i + 1, cells }],
      ),
    };
  }
  return undefined;
}

/** Quotes that are never closed take a row along, and no more: what a hand has typed between commas is read too. */
function rowsOf(lines: readonly string[], delimiter: string): readonly (readonly string[])[] {
  const options = {
    delimiter,
    bom: true,
    trim: true,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: false,
  };
  try {
    return parse(lines.join('\n'), options);
  } catch {
    return lines.map((line) => line.split(delimiter).map((value) => value.replaceAll('"', '').trim()));
  }
}

/** Nothing stands in it. */
const empty = /^(?:-+|—|–|n\/?a|\?)?$/i;

/** What a row says of its part, as a line of `part` has it. */
export function lineOfRow({ columns }: PartTable, { cells }: TableRow, units: UnitSystem, hearing: Hearing): string {
  const pieces = columns.flatMap((column, i) => {
    const value = cells[i]?.trim() ?? '';
    return column === undefined || column.holds === 'name' || empty.test(value)
      ? []
      : [pieceOf(column, value, units, hearing)];
  });
  return pieces.join(' ');
}

/** As it is called: `Rail 01` is rail-01. */
export function nameOfRow({ columns }: PartTable, { cells }: TableRow): string {
  const at = columns.findIndex((column) => column?.holds === 'name');
  const value = cells[at]?.trim() ?? '';
  return empty.test(value) ? '' : value.toLowerCase().replaceAll(/\s+/g, '-');
}

function pieceOf({ holds, unit }: Column, value: string, units: UnitSystem, hearing: Hearing): string {
  const bare = /^[\d.,]+$/.test(value);
  const figure = bare ? value + (unit ?? usualUnits[holds]?.[units] ?? '') : value;
  switch (holds) {
    case 'serial':
    case 'job':
    case 'customer':
      return `${holds} ${JSON.stringify(value)}`;
    case 'metal':
      return metalOf(value, hearing);
    case 'highest':
      return `max ${figure}`;
    case 'wall':
    case 'area':
    case 'name':
      return figure;
    default: {
      const never: never = holds;
      return never;
    }
  }
}

/** A metal that is known by its name needs no label, and is spelt as it is here; any other stands as it was written. */
function metalOf(value: string, { every }: Hearing): string {
  const words = withoutAccents(value.toLowerCase())
    .split(/[\s-]+/)
    .map((word) => every.meanings.get(word) ?? word);
  return metalNamed(words) === undefined ? `metal ${JSON.stringify(value)}` : words.join(' ');
}
