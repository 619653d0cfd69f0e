// A pasted list of parts, a line or `;` each: one act for all of them, or the faulty lines named. Nothing else is pasted
// in several lines: a list of other acts could not be undone as one.

import type { CommandOf } from '../../../core/commands.ts';
import type { NamedPart } from '../../../core/verbs/said.ts';
import { mostParts } from '../acts/part-ranges.ts';
import type { Hearing } from '../hearing.ts';
import type { Misread, Reading } from '../reading.ts';
import { partsTyped } from './parts-typed.ts';

type Command = Extract<Reading, { kind: 'command' }>;

/** All lines as one act; where one is faulty, the misread of the first with every faulty line named. */
export function readPartList(lines: readonly string[], readOne: (line: string) => Reading, hearing: Hearing): Reading {
  const read = lines.slice(0, mostParts + 1).map(readOne);
  const shown = read.map((reading, i) => ('line' in reading ? reading.line : (lines[i] ?? '')));
  const line = shown.join(joint);
  const parts: NamedPart[] = [];
  const faulty: Faulty[] = [];
  let told: Command | undefined;
  let isAsked = false;
  for (const [i, reading] of read.entries()) {
    const text = shown[i] ?? '';
    const misread = reading.kind === 'misread' ? reading.misread : misplaced(text, i, reading, parts);
    if (misread !== undefined) faulty.push({ index: i, misread });
    else if (reading.kind === 'command' && reading.command.verb === 'part') {
      const { part, details, unread, more = [] } = reading.command;
      parts.push({ part, details, ...(unread !== undefined && { unread }) }, ...more);
      isAsked ||= reading.command.isAsked === true;
      // When it came in may be said once, on any of the lines.
      if (reading.at !== undefined || reading.stance.is !== 'asked') told = reading;
    }
  }
  if (faulty.length > 0) {
    const reads = (text: string): boolean => {
      const list = partsTyped(text, hearing);
      return list?.is === 'lines' && readPartList(list.lines, readOne, hearing).kind === 'command';
    };
    return { kind: 'misread', misread: misreadOf(faulty, shown, reads), line };
  }
  const [one, ...more] = parts;
  if (one === undefined) return { kind: 'silence' };
  const command: CommandOf<'part'> = {
    verb: 'part',
    ...one,
    ...(more.length > 0 && { more }),
    ...(isAsked && { isAsked }),
  };
  const at = told?.at === undefined ? {} : { at: told.at };
  return { kind: 'command', command, ...at, stance: told?.stance ?? { is: 'asked' }, line };
}

const joint = '; ';

interface Faulty {
  readonly index: number;
  readonly misread: Misread;
}

/** The first, with its place in the whole and, where it is the only one, the whole list with that line put right. */
function misreadOf(all: readonly Faulty[], shown: readonly string[], reads: (text: string) => boolean): Misread {
  const [first] = all;
  if (first === undefined) throw new Error('a list without a faulty line has no misread');
  const { index, misread } = first;
  const offset = shown.slice(0, index).reduce((length, piece) => length + piece.length + joint.length, 0);
  const instead = (piece: string) => shown.map((each, i) => (i === index ? piece : each)).join(joint);
  return {
    ...misread,
    from: misread.from + offset,
    to: misread.to + offset,
    suggestions: all.length === 1 ? misread.suggestions.map(instead).filter(reads) : [],
    faulty: all.map((each) => ({
      number: each.index + 1,
      line: shown[each.index] ?? '',
      code: each.misread.code,
      token: each.misread.token,
    })),
  };
}

/** Another act among the parts, or a part that stands there twice. */
function misplaced(line: string, index: number, reading: Reading, before: readonly NamedPart[]): Misread | undefined {
  if (index >= mostParts) return leftOver(line, line);
  if (reading.kind !== 'command' || reading.command.verb !== 'part') {
    return leftOver(line, line.split(' ')[0] ?? line);
  }
  const { part, more = [] } = reading.command;
  const again = [part, ...more.map((each) => each.part)].find((name) => before.some((each) => each.part === name));
  return again === undefined ? undefined : leftOver(line, again);
}

function leftOver(line: string, token: string): Misread {
  const from = Math.max(0, line.toLowerCase().indexOf(token.toLowerCase()));
  return {
    code: 'left-over',
    verb: 'part',
    token: line.slice(from, from + token.length),
    from,
    to: from + token.length,
    needs: [],
    couldBe: [],
    exampleOf: 'part',
    suggestions: [],
  };
}
