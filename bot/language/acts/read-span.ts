// Stretches of days as typed: `yesterday`, `week`, `last month`, `year`, `2026-03-01 to 2026-03-07`.

import { DateTime } from 'luxon';
import { isFailed } from '../../../core/failed.ts';
import type { SpanAsked } from '../../../core/records/record-questions.ts';
import type { Fault } from '../reading.ts';
import { type OnLine, withDates } from '../times/date-typed.ts';
import { readDate } from '../times/time-typed.ts';
import { spanJoints, whichStretch } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { leftOver } from './act-line.ts';

/** `undefined` where no token says when. */
export function spanFrom(typed: readonly Token[], { line, context }: OnLine): SpanAsked | Fault | undefined {
  const tokens = withDates(typed, { line, context });
  if (isFailed(tokens)) return tokens;
  const said = tokens.filter((token) => !spanJoints.has(wordIn(token)));
  const [first, second, third] = said;
  if (first === undefined) return undefined;
  const words = said.map((token) => (token.kind === 'word' ? token.word : token.text));
  const stretch = words.find((word) => word === 'week' || word === 'month');
  if (stretch !== undefined) {
    const other = said.find((_, i) => words[i] !== stretch);
    const which = words.find((word) => word !== stretch);
    if (third !== undefined) return leftOver(third);
    const asked = which === undefined ? 'this' : whichOf(which);
    const numbered = stretch === 'week' && other !== undefined ? weekNumbered(other, { line, context }) : undefined;
    if (numbered !== undefined) return numbered;
    return asked === undefined
      ? leftOver(other ?? first)
      : { kind: stretch === 'week' ? 'week' : 'month', which: asked };
  }
  if (third !== undefined) return leftOver(third);
  const single = singleWord(words[0] ?? '');
  if (single !== undefined) return second === undefined ? single : leftOver(second);
  const from = dateOf(first);
  if (typeof from !== 'string') return from;
  if (second === undefined) return { kind: 'day', day: { date: from } };
  const to = dateOf(second);
  if (typeof to !== 'string') return to;
  return to < from ? { failed: 'impossible', token: second, needs: ['span'] } : { kind: 'range', from, to };
}

function singleWord(word: string): SpanAsked | undefined {
  if (word === 'today' || word === 'yesterday') return { kind: 'day', day: word };
  return word === 'year' ? { kind: 'year' } : undefined;
}

export const whichOf = (word: string): 'this' | 'last' | undefined => whichStretch.get(word);

/** `week 9`: Monday to Sunday, by ISO 8601; without a year the last that has begun. */
export function weekNumbered(token: Token, { context }: OnLine): SpanAsked | undefined {
  const weekNumber = /^\d{1,2}$/.test(token.text) ? Number(token.text) : 0;
  const now = DateTime.fromMillis(context.now, { zone: context.zone });
  const begun = [now.weekYear, now.weekYear - 1]
    .filter((weekYear) => weekNumber >= 1 && weekNumber <= DateTime.utc(weekYear, 7, 1).weeksInWeekYear)
    .map((weekYear) => DateTime.fromObject({ weekYear, weekNumber }, { zone: context.zone }))
    .find((monday) => monday <= now);
  const from = begun?.toISODate();
  const to = begun?.plus({ days: 6 }).toISODate();
  return typeof from === 'string' && typeof to === 'string' ? { kind: 'range', from, to } : undefined;
}

export function dateOf(token: Token, needed: 'span' | 'day' = 'span'): string | Fault {
  const date = readDate(token.kind === 'word' ? token.word : token.text);
  if (date === undefined) return { failed: 'left-over', token, needs: [needed] };
  if (date === 'no-such-time') return { failed: 'impossible', token, needs: [needed] };
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${date.year}-${two(date.month)}-${two(date.day)}`;
}
