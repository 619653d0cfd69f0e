// `concession impeller-7 person "Ms. Hale" document QA-118 dated 2026-03-02`, and as people write it: `concession impeller-7 Ms. Hale,
// letter QA-118 of 2 March`. What stands behind a word goes on to the next one; a day without its year is the last such day.

import { DateTime } from 'luxon';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import type { Fault } from '../reading.ts';
import { mannerOf } from '../time-and-permission.ts';
import { dateTypedFrom } from '../times/date-typed.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, type ActRead, leftOver } from './act-line.ts';
import { commasApart } from './commas-apart.ts';
import { rangesJoined } from './part-ranges.ts';
import { commandOf } from './read-fields.ts';
import { knownParts } from './read-reasoned.ts';

const labels = ['person', 'document', 'dated'] as const;
type Label = (typeof labels)[number];
const slots = { person: 'customer-person', document: 'document', dated: 'concession-date' } as const;

/** By its word, or by what the tongue calls the slot: `letter`. */
function labelOf(token: Token, { context }: ActLine): Label | undefined {
  const word = wordIn(token);
  return labels.find((label) => label === word || context.hearing.labels.get(word) === slots[label]);
}

/** In front of a value and no part of it. */
const before: ReadonlySet<string> = new Set([...fillers, 'customer', 'and', 'by', 'of', 'from']);

export function readConcession(typed: ActLine): ActRead | Fault {
  const act = { ...typed, tokens: rangesJoined(typed.tokens.flatMap(commasApart), typed.context) };
  const dated = act.tokens.map((token, i) => dayInWords(token, act.tokens[i - 1], act));
  // A day is no time of the act, and no hour stands alone here.
  const manner = mannerOf(dated, act.line, act.context, false);
  if (isFailed(manner)) return manner;
  const told = { ...act, tokens: manner.tokens };
  const parts = knownParts(told);
  if (isFailed(parts)) return parts;
  const read = valuesFrom(told, parts.reasonFrom);
  if (isFailed(read)) return read;
  return {
    command: commandOf('concession', { ...parts.said, ...read.said }),
    ...known({ at: parts.at }),
    ...manner.how,
  };
}

/** `dated today`, `dated yesterday`. */
function dayInWords(token: Token, before: Token | undefined, { context: { now, zone } }: ActLine): Token {
  const word = wordIn(token);
  if (wordIn(before) !== 'dated' || (word !== 'today' && word !== 'yesterday')) return token;
  const day = DateTime.fromMillis(now, { zone }).minus({ days: word === 'today' ? 0 : 1 });
  const text = day.toISODate() ?? '';
  return { kind: 'word', word: text, text, start: token.start, end: token.end };
}

function valuesFrom(act: ActLine, from: number): { readonly said: Record<string, string> } | Fault {
  const values: Record<'person' | 'document', Token[]> = { person: [], document: [] };
  let date: string | undefined;
  let label: Label = 'person';
  for (let i = from; i < act.tokens.length; i++) {
    const token = act.tokens[i];
    if (token === undefined) break;
    const next = labelOf(token, act);
    const day = date === undefined ? dayFrom(act, i) : undefined;
    if (day !== undefined && isFailed(day)) return day;
    if (next !== undefined) label = next;
    else if (day !== undefined) {
      date = day.date;
      i = day.to - 1;
    } else if (label === 'dated') {
      if (!before.has(wordIn(token))) return { ...leftOver(token), needs: ['concession-date'] };
    } else values[label].push(token);
  }
  return { said: known({ person: textOf(values.person, act), document: textOf(values.document, act), date }) };
}

/** In days: a letter without its year is of these. Our own figure, no source. */
const longestAgo = 180;

function dayFrom(act: ActLine, i: number): { readonly date: string; readonly to: number } | Fault | undefined {
  const { now, zone } = act.context;
  const day = dateTypedFrom(act.tokens, i, act);
  if (day === undefined || isFailed(day) || day.hasYear) return day;
  // A day to come, or long gone, is some other year's: it is asked.
  const age = DateTime.fromMillis(now, { zone }).diff(DateTime.fromISO(day.date, { zone }), 'days').days;
  return age > longestAgo ? { failed: 'incomplete', needs: ['concession-date'] } : day;
}

function textOf(tokens: readonly Token[], { line }: ActLine): string | undefined {
  const from = tokens.findIndex((token) => !before.has(wordIn(token)));
  const to = tokens.findLastIndex((token) => !before.has(wordIn(token)));
  const [first, last] = [tokens[from], tokens[to]];
  if (first === undefined || last === undefined) return undefined;
  const text = first === last && first.kind === 'quoted' ? first.words : line.slice(first.start, last.end);
  return text.replace(/[\s,;]+$/, '') || undefined;
}
