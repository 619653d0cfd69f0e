// Parts that come in, before they are booked: how many and which, what each has, what is missing, which are known already and stay
// as they are, and which rows could not be read. One tap books them all.

import { heatProperties } from '../../core/calc/metals.ts';
import type { Command, CommandOf } from '../../core/commands.ts';
import type { Unclear } from '../../core/objections.ts';
import { keysOf } from '../../core/own-key.ts';
import type { NamedPart } from '../../core/verbs/said.ts';
import type { FaultyLine } from '../language/reading.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { detailLines } from './part-details.ts';

type PartsIn = Extract<Unclear, { code: 'parts-in' }>;

/** A phone shows no more at once. */
const mostRows = 8;

/** `line`: what a command is typed as. */
export function partsInCard(
  telling: Telling,
  { fresh, known }: PartsIn,
  unread: readonly FaultyLine[],
  line: (changed: Command) => string,
): Card {
  const { replies, parts } = telling.words;
  const partsIn = parts.in;
  const names = known.map(({ part }) => part);
  const heads = unread.filter(({ code }) => code === 'column-not-taken').map(({ token }) => token);
  const rows = unread.filter(({ code }) => code !== 'column-not-taken');
  return makeCard(fresh.length === 0 ? partsIn.noneNew : partsIn.asked(fresh.length), 'plain', {
    lines: [
      ...unreadWords(telling, fresh),
      ...detailLines(telling, fresh.map(describedIn)),
      ...(names.length === 0 ? [] : [partsIn.known(names, telling.figures)]),
      ...rows.slice(0, mostRows).map(partsIn.rowUnread),
      ...(rows.length > mostRows ? [partsIn.moreRows(rows.length - mostRows)] : []),
      ...(heads.length === 0 ? [] : [partsIn.columnsNotTaken(heads, telling.figures)]),
      ...(fresh.length > 1 ? [partsIn.oneTap] : []),
      replies.nothingRecorded,
    ],
    actions: [...bookTap(telling, fresh, line), ...noteTap(telling, known, line)],
  });
}

function unreadWords({ words, figures }: Telling, fresh: readonly NamedPart[]): readonly string[] {
  const unread = [...new Set(fresh.flatMap((each) => each.unread ?? []))];
  return unread.length === 0 ? [] : [words.parts.unread(unread, keysOf(heatProperties), figures)];
}

const describedIn = ({ part, details }: NamedPart) => ({ name: part, details });

function bookTap(
  telling: Telling,
  fresh: readonly NamedPart[],
  line: (changed: Command) => string,
): readonly CardAction[] {
  const command = noted(fresh);
  if (command === undefined) return [];
  const label = telling.words.parts.in.book(fresh, telling.figures);
  return [{ id: 'book-in', label, line: line(command), bare: ['yes'] }];
}

/** Only where something was said that the record may not have yet. */
function noteTap(
  telling: Telling,
  known: readonly NamedPart[],
  line: (changed: Command) => string,
): readonly CardAction[] {
  const told = known.filter(({ details }) => Object.keys(details).length > 0);
  const command = noted(told);
  if (command === undefined) return [];
  return [{ id: 'note-known', label: telling.words.parts.in.noteKnown(told.length), line: line(command) }];
}

function noted([first, ...more]: readonly NamedPart[]): CommandOf<'part'> | undefined {
  if (first === undefined) return undefined;
  const { part, details } = first;
  return {
    verb: 'part',
    part,
    details,
    ...(more.length > 0 && { more: more.map(({ part, details }) => ({ part, details })) }),
  };
}
