// Many parts in one message: a line of `part` each, a list under a line that opens it, a table, or names and nothing else.

import type { Hearing } from '../hearing.ts';
import { mayNamePart } from '../names-typed.ts';
import { cleanLine } from '../typed/clean-line.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { tokenize } from '../typed/tokens.ts';
import { verbAt } from '../verbs-typed.ts';
import { type PartTable, partTable } from './part-table.ts';

/** A piece of a list, and which line of the message it is. */
export interface Row {
  readonly number: number;
  readonly text: string;
}

export type PartsTyped =
  /** Each begins with the word for a part. */
  | { readonly is: 'lines'; readonly lines: readonly string[] }
  /** `opening`: what holds for all of them. */
  | { readonly is: 'list'; readonly opening: string | undefined; readonly rows: readonly Row[] }
  | { readonly is: 'grid'; readonly opening: string | undefined; readonly table: PartTable };

/** `undefined` where the text is none of these. */
export function partsTyped(text: string, hearing: Hearing): PartsTyped | undefined {
  if (!/[;\n\t]/.test(text)) return undefined;
  const lines = text.split(/\r?\n/).map((line) => line.trim());
  return tableIn(lines, hearing) ?? listIn(text, lines, hearing);
}

function tableIn(lines: readonly string[], hearing: Hearing): PartsTyped | undefined {
  const from = lines.findIndex((line) => line !== '');
  const first = lines[from] ?? '';
  const table = partTable(lines.slice(from), hearing);
  if (table !== undefined) return { is: 'grid', opening: undefined, table };
  if (!isPartLine(first, hearing)) return undefined;
  const under = lines.slice(from + 1);
  const head = under.findIndex((line) => line !== '');
  const opened = head === -1 ? undefined : partTable(under.slice(head), hearing);
  return opened && { is: 'grid', opening: first, table: opened };
}

function listIn(text: string, lines: readonly string[], hearing: Hearing): PartsTyped | undefined {
  const pieces = (text.match(/(?:"(?:[^"\\]|\\.)*"|“[^”]*”|[^;\n])+/g) ?? [])
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '' && !piece.startsWith('#'));
  if (pieces.length < 2) return undefined;
  const typed = lines.length > 1 ? lines : pieces;
  const rows = typed.flatMap((line, i) =>
    line === '' || line.startsWith('#') ? [] : [{ number: i + 1, text: withoutBullet(line) }],
  );
  const [opening, ...under] = rows;
  if (opening === undefined || !isPartLine(pieces[0] ?? '', hearing)) {
    const areNames = rows.length > 1 && rows.every((row) => isOnlyNames(row.text, hearing));
    return areNames ? { is: 'list', opening: undefined, rows } : undefined;
  }
  const isOpened = under.length > 0 && under.every((row) => !isActLine(row.text, hearing));
  return isOpened ? { is: 'list', opening: opening.text, rows: under } : { is: 'lines', lines: pieces };
}

const withoutBullet = (line: string): string => line.replace(/^(?:[-*•·–—]|\d{1,3}[.)])\s+/, '');

/** As it stands once a mention is off; when it came in may be said first. */
export const isPartLine = (piece: string, hearing: Hearing): boolean => verbIn(piece, hearing) === 'part';
const isActLine = (piece: string, hearing: Hearing): boolean => verbIn(piece, hearing) !== undefined;

function verbIn(piece: string, hearing: Hearing): string | undefined {
  const tokens = tokenize(cleanLine(piece), hearing);
  let from = 0;
  for (let word = wordIn(tokens[from]); word === 'please' || word === 'already' || word === 'at'; ) {
    from += word === 'at' ? 2 : 1;
    word = wordIn(tokens[from]);
  }
  const verb = verbAt(tokens, from, hearing);
  // `Part A`: what a can's label begins with.
  const isLabel = verb?.row.name === 'part' && /^[ab]$/i.test(tokens[verb.to]?.text ?? '');
  return isLabel ? undefined : verb?.row.name;
}

/** `rail-01, rail-02 and rail-03`: no figure, and no word that says what is done to them. */
export function isOnlyNames(line: string, hearing: Hearing): boolean {
  const tokens = tokenize(line.replaceAll(',', ' '), hearing);
  return tokens.length > 0 && tokens.every((token, i) => isNameOrJoint(token, i, hearing));
}

function isNameOrJoint(token: Token, index: number, hearing: Hearing): boolean {
  if (token.kind !== 'word') return false;
  const ends = token.word.split('..');
  const isJoint = index > 0 && ['and', 'to', '-', 'a', 'until'].includes(token.word);
  return isJoint || ends.every((name) => /\d/.test(name) && (mayNamePart(name, hearing) || ends.length > 1));
}
