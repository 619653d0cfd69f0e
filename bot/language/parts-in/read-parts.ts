// A list or a table of parts as one act: each row is read as a line of `part` would be, with what holds for all of them. It is shown
// before it is booked; rows that could not be read are told with it and left out.

import type { CommandOf } from '../../../core/commands.ts';
import { alarmNamed } from '../../../core/session/session-commands.ts';
import type { NamedPart, PartDetails } from '../../../core/verbs/said.ts';
import { mostParts } from '../acts/part-ranges.ts';
import type { FaultyLine, LineContext, LineFault, Misread, MisreadCode, Reading } from '../reading.ts';
import { cleanLine } from '../typed/clean-line.ts';
import { readPartList } from './list-of-lines.ts';
import { lineOfRow, nameOfRow, type PartTable } from './part-table.ts';
import type { PartsTyped } from './parts-typed.ts';

type ReadOne = (line: string) => Reading;
type Command = Extract<Reading, { kind: 'command' }>;

/** `undefined` where it is no list after all. */
export function readParts(typed: PartsTyped, readOne: ReadOne, context: LineContext): Reading | undefined {
  switch (typed.is) {
    case 'lines':
      return criedIn(typed.lines, readOne) ?? readPartList(typed.lines, readOne, context.hearing);
    case 'list': {
      const texts = typed.rows.map(({ text }) => text);
      const cried = criedIn([...(typed.opening === undefined ? [] : [typed.opening]), ...texts], readOne);
      if (cried !== undefined) return cried;
      const rows = typed.rows.map(({ number, text }) => ({ number, text, line: `part ${text}` }));
      const asked = booked(openingOf(typed.opening, readOne), rows, readOne);
      const isNews = asked.kind === 'command' && partsOf(asked).some(({ part }) => !context.parts.includes(part));
      return typed.opening !== undefined || isNews ? asked : undefined;
    }
    case 'grid': {
      const opening = openingOf(typed.opening, readOne);
      const notTaken = typed.table.notTaken.map(
        (head): FaultyLine => ({ number: 1, line: head, code: 'column-not-taken', token: head }),
      );
      return booked({ ...opening, unread: [...opening.unread, ...notTaken] }, tableRows(typed.table, context), readOne);
    }
    default: {
      const never: never = typed;
      return never;
    }
  }
}

/** A cry comes before all, wherever it stands. */
function criedIn(lines: readonly string[], readOne: ReadOne): Reading | undefined {
  for (const line of lines) {
    const read = readOne(line);
    if (read.kind === 'command' && alarmNamed(read.command.verb) !== undefined) return read;
    if (read.kind === 'misread' && (read.misread.code === 'which-cry' || read.misread.calls !== undefined)) return read;
  }
  return undefined;
}

/** A row of a list, and the line of `part` that it stands for; why it is none, where that is plain. */
interface RowLine {
  readonly number: number;
  readonly text: string;
  readonly line: string;
  readonly why?: LineFault;
}

function tableRows(table: PartTable, { hearing, units = 'metric' }: LineContext): readonly RowLine[] {
  return table.rows.map((row) => {
    const name = nameOfRow(table, row);
    const text = row.cells.filter((cell) => cell !== '').join(', ');
    const line = `part ${name} ${lineOfRow(table, row, units, hearing)}`;
    if (name === '') return { number: row.number, text, line, why: { code: 'no-name', token: '' } };
    // `4411` alone would be the number of a pot.
    const why = /^\d+$/.test(name) ? { why: { code: 'digits-alone', token: name } as const } : {};
    return { number: row.number, text, line, ...why };
  });
}

interface Opening {
  /** Held by all that have nothing of their own in its place. */
  readonly shared: PartDetails;
  readonly parts: readonly NamedPart[];
  readonly how: Pick<Command, 'at' | 'stance'>;
  readonly unread: readonly FaultyLine[];
}

/** No part that a list names is called so. */
const standIn = 'x-0';

/** `parts in job 88 steel`, which names none, holds for each of them; what names one is of that alone. */
function openingOf(opening: string | undefined, readOne: ReadOne): Opening {
  const none: Opening = { shared: {}, parts: [], how: { stance: { is: 'asked' } }, unread: [] };
  if (opening === undefined) return none;
  const named = readOne(opening);
  if (isPart(named)) return { ...none, parts: partsOf(named), how: howOf(named) };
  const line = `${cleanLine(opening).replace(/:$/, '')} ${standIn}`;
  const shared = readOne(line);
  if (isPart(shared) && shared.command.part === standIn)
    return { ...none, shared: shared.command.details, how: howOf(shared) };
  const { code, token } = named.kind === 'misread' ? named.misread : { code: 'left-over' as const, token: opening };
  return { ...none, unread: [{ number: 1, line: opening, code, token }] };
}

const howOf = ({ at, stance }: Command): Opening['how'] => ({ ...(at !== undefined && { at }), stance });

type PartCommand = Command & { readonly command: CommandOf<'part'> };
const isPart = (read: Reading): read is PartCommand => read.kind === 'command' && read.command.verb === 'part';

function partsOf(read: Command): readonly NamedPart[] {
  if (!isPart(read)) return [];
  const { part, details, unread, more = [] } = read.command;
  return [{ part, details, ...(unread !== undefined && { unread }) }, ...more];
}

function booked({ shared, parts, how, unread }: Opening, rows: readonly RowLine[], readOne: ReadOne): Reading {
  const named = new Map(parts.map((each) => [each.part, each]));
  const faulty: FaultyLine[] = [...unread];
  for (const { number, text, line, why } of rows) {
    const read = why === undefined ? readOne(line) : undefined;
    const found = read === undefined || !isPart(read) ? [] : partsOf(read);
    const again = found.find(({ part }) => named.has(part));
    if (again !== undefined) faulty.push({ number, line: text, code: 'named-twice', token: again.part });
    else if (found.length === 0) faulty.push({ number, line: text, ...(why ?? whyNot(read, text)) });
    else for (const each of found) named.set(each.part, { ...each, details: { ...shared, ...each.details } });
  }
  const line = rows.map(({ text }) => text).join('; ');
  const [one, ...more] = named.values();
  if (named.size > mostParts) return { kind: 'misread', misread: tooMany(named.size), line: String(named.size) };
  if (one === undefined) return { kind: 'misread', misread: noneRead(faulty), line };
  const command: CommandOf<'part'> = { verb: 'part', ...one, ...(more.length > 0 && { more }), isAsked: true };
  return { kind: 'command', command, ...how, line, ...(faulty.length > 0 && { unread: faulty }) };
}

function whyNot(read: Reading | undefined, text: string): LineFault {
  return read?.kind === 'misread'
    ? { code: read.misread.code, token: read.misread.token }
    : { code: 'left-over', token: text };
}

const misread = (code: MisreadCode, token: string): Misread => ({
  ...{ code, verb: 'part', token, from: 0, to: token.length, needs: [], couldBe: [] },
  ...{ exampleOf: 'part', suggestions: [] },
});

const tooMany = (count: number): Misread => ({
  ...misread('too-many-parts', String(count)),
  limits: { lowest: 1, highest: mostParts, unit: '' },
});

const noneRead = (faulty: readonly FaultyLine[]): Misread => ({ ...misread('no-row-read', ''), faulty });
