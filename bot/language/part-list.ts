// A pasted list of parts, a line or `;` each: one act for all of them, or the faulty lines named. Nothing else is pasted
// in several lines: a list of other acts could not be undone as one.

import type { CommandOf } from '../../core/commands.ts';
import type { NamedPart } from '../../core/verbs/said.ts';
import type { Hearing } from './hearing.ts';
import type { Misread, Reading } from './reading.ts';
import { cleanLine } from './typed/clean-line.ts';
import type { Token } from './typed/token.ts';
import { tokenize } from './typed/tokens.ts';
import { verbAt } from './verbs-typed.ts';

/** More than anybody books in at once; a longer paste is a mistake. */
const mostLines = 200;

/** The pieces of a list of parts; `undefined` where the text is none. */
export function partLines(text: string, hearing: Hearing): readonly string[] | undefined {
  if (!/[;\n]/.test(text)) return undefined;
  const pieces = (text.match(/(?:"(?:[^"\\]|\\.)*"|“[^”]*”|[^;\n])+/g) ?? [])
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '' && !piece.startsWith('#'));
  return pieces.length > 1 && isPartLine(pieces[0] ?? '', hearing) ? pieces : undefined;
}

/** As it stands once a mention is off; when it came in may be said first. */
function isPartLine(piece: string, hearing: Hearing): boolean {
  const tokens = tokenize(cleanLine(piece), hearing);
  let from = 0;
  for (let word = wordOf(tokens[from]); word === 'please' || word === 'already' || word === 'at'; ) {
    from += word === 'at' ? 2 : 1;
    word = wordOf(tokens[from]);
  }
  return verbAt(tokens, from, hearing)?.row.name === 'part';
}

const wordOf = (token: Token | undefined): string => (token?.kind === 'word' ? token.word : '');

type Command = Extract<Reading, { kind: 'command' }>;

/** All lines as one act; where one is faulty, the misread of the first with every faulty line named. */
export function readPartList(lines: readonly string[], readOne: (line: string) => Reading, hearing: Hearing): Reading {
  const read = lines.slice(0, mostLines + 1).map(readOne);
  const shown = read.map((reading, i) => ('line' in reading ? reading.line : (lines[i] ?? '')));
  const line = shown.join(joint);
  const parts: NamedPart[] = [];
  const faulty: Faulty[] = [];
  let told: Command | undefined;
  for (const [i, reading] of read.entries()) {
    const text = shown[i] ?? '';
    const misread = reading.kind === 'misread' ? reading.misread : misplaced(text, i, reading, parts);
    if (misread !== undefined) faulty.push({ index: i, misread });
    else if (reading.kind === 'command' && reading.command.verb === 'part') {
      const { part, details, unread } = reading.command;
      parts.push({ part, details, ...(unread !== undefined && { unread }) });
      // When it came in may be said once, on any of the lines.
      if (reading.at !== undefined || reading.stance.is !== 'asked') told = reading;
    }
  }
  if (faulty.length > 0) {
    const reads = (text: string): boolean => {
      const list = partLines(text, hearing);
      return list !== undefined && readPartList(list, readOne, hearing).kind === 'command';
    };
    return { kind: 'misread', misread: misreadOf(faulty, shown, reads), line };
  }
  const [one, ...more] = parts;
  if (one === undefined) return { kind: 'silence' };
  const command: CommandOf<'part'> = { verb: 'part', ...one, ...(more.length > 0 && { more }) };
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
  if (index >= mostLines) return leftOver(line, line);
  if (reading.kind !== 'command' || reading.command.verb !== 'part') {
    return leftOver(line, line.split(' ')[0] ?? line);
  }
  const { part } = reading.command;
  return before.some((each) => each.part === part) ? leftOver(line, part) : undefined;
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
