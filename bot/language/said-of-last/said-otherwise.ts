// What a line puts right that begins as people begin it (`no, 1.2kg`, `oops, that was 5 not 6`, `fue hace 10 min`): what it should
// have been, and what it was not where that is said; or that all of it is taken back.

import { withoutAccents } from '../typed/without-accents.ts';
import type { OtherwiseTable } from './otherwise-table.ts';

export interface Otherwise {
  /** What it should have been, in each piece of the line that may say so. */
  readonly to: readonly string[];
  readonly from: string | undefined;
  /** `plainly`: it says so, and nothing else but why; `perhaps`: it was wrong, and no more is said. */
  readonly takenBack: 'plainly' | 'perhaps' | 'no';
}

/** More is a sentence of its own. */
const longest = 90;

export function saidOtherwise(line: string, table: OtherwiseTable): Otherwise | undefined {
  if (line.length > longest || line.endsWith('?')) return undefined;
  const pieces = piecesOf(line).map((piece) => pieceFrom(piece, table));
  const has = (of: 'takesBack' | 'isWrong' | 'isOpened') => pieces.some((piece) => piece[of]);
  const from = pieces.find((piece) => piece.from !== undefined)?.from;
  if (!has('isOpened') && !has('takesBack') && !has('isWrong') && from === undefined) return undefined;
  const to = pieces.flatMap((piece) => piece.to ?? []);
  const not = pieces.find((piece) => piece.not !== undefined)?.not;
  const takenBack = has('takesBack')
    ? to.every((each) => withoutFirst(each, table, 'explains') !== undefined) && not === undefined
      ? 'plainly'
      : 'perhaps'
    : has('isWrong') && to.length === 0
      ? 'perhaps'
      : 'no';
  if (to.length > 0 || not === undefined) return { to, from: from ?? not, takenBack };
  // `no la 8`, `no i said 8`: what it was not, only where something else says what it was.
  return { to: [pieceFrom(not, table).to ?? not], from, takenBack };
}

/** A decimal sign parts nothing. */
const piecesOf = (line: string): readonly string[] =>
  line
    .split(/(?<!\d)[,.;!()]+|[,.;!()]+(?!\d)/)
    .map((piece) =>
      piece
        .replaceAll(/(?<!\d):|:(?!\d)/g, ' ')
        .replaceAll(/\s+/g, ' ')
        .trim(),
    )
    .filter((piece) => piece !== '');

interface Piece {
  readonly takesBack: boolean;
  readonly isWrong: boolean;
  readonly isOpened: boolean;
  readonly to?: string;
  readonly from?: string;
  /** It may be what it was not. */
  readonly not?: string;
}

const leads = ['takesBack', 'wrongs', 'opens', 'goesOn'] as const;

function pieceFrom(typed: string, table: OtherwiseTable): Piece {
  let said = withoutLast(typed, table);
  const found = { takesBack: false, isWrong: false, isOpened: said !== typed };
  for (;;) {
    const [lead] = leads
      .filter((of) => of !== 'goesOn' || found.isOpened)
      .flatMap((of) => {
        const rest = withoutFirst(said, table, of);
        return rest === undefined ? [] : [{ of, rest }];
      })
      .toSorted((one, other) => one.rest.length - other.rest.length);
    const denied = withoutFirst(said, table, 'nots');
    if (denied !== undefined && denied !== '' && (lead === undefined || denied.length <= lead.rest.length)) {
      const [not, instead] = partedBy(denied, table, 'instead');
      if (instead !== undefined) return { ...found, to: instead, from: not };
      // `no` may only begin it.
      return lead?.of === 'opens' ? { ...found, isOpened: true, not } : { ...found, from: not };
    }
    if (lead === undefined) break;
    found.takesBack ||= lead.of === 'takesBack';
    found.isWrong ||= lead.of === 'wrongs';
    found.isOpened ||= lead.of !== 'takesBack';
    said = lead.rest;
  }
  const [to, from] = partedBy(said, table, 'nots');
  const ofLetter = letterFirst(to, table);
  const isOpened = found.isOpened || ofLetter !== undefined;
  return { ...found, isOpened, ...(to !== '' && { to: ofLetter ?? to }), ...(from !== undefined && { from }) };
}

/** `b was 1198`, `B should be 1198`: the letter and what it should have been. */
function letterFirst(said: string, table: OtherwiseTable): string | undefined {
  const named = withoutFirst(said, table, 'beforeLetter') ?? said;
  if (!/^[ab] /i.test(named)) return undefined;
  const rest = withoutFirst(named.slice(2), table, 'opens') ?? withoutFirst(named.slice(2), table, 'goesOn');
  return rest === undefined ? undefined : `${named.slice(0, 1)} ${rest}`;
}

const plain = (text: string): string => withoutAccents(text.toLowerCase().replaceAll("'", ''));

/** Without the longest phrase of this kind that it begins with. */
function withoutFirst(
  said: string,
  { byFirst }: OtherwiseTable,
  of: keyof OtherwiseTable['byFirst'],
): string | undefined {
  const typed = `${plain(said)} `;
  const [first = ''] = typed.split(' ', 1);
  const phrase = byFirst[of].get(first)?.find((each) => typed.startsWith(`${each} `));
  return phrase === undefined ? undefined : said.split(' ').slice(phrase.split(' ').length).join(' ');
}

/** Without what it ends in: `era con rodillo, me he liado`. */
function withoutLast(said: string, table: OtherwiseTable): string {
  const typed = plain(said);
  const last = typed.slice(typed.lastIndexOf(' ') + 1);
  const phrase = table.closesByLast.get(last)?.find((each) => typed.endsWith(` ${each}`));
  if (phrase === undefined) return said;
  return withoutLast(said.split(' ').slice(0, -phrase.split(' ').length).join(' '), table);
}

/** `9:40 not 9:50`. */
function partedBy(said: string, table: OtherwiseTable, by: 'nots' | 'instead'): readonly [string, string | undefined] {
  const words = said.split(' ');
  for (let at = 1; at < words.length; at++) {
    const rest = withoutFirst(words.slice(at).join(' '), table, by);
    if (rest !== undefined && rest !== '') return [words.slice(0, at).join(' '), rest];
  }
  return [said, undefined];
}
