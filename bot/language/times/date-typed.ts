// Days as people write them, besides `2026-03-02`: `02/03/2026` in the order of the reader's country, `2 March 2026`, `March 2`,
// `2 de marzo`. Where a country writes both orders and both are days, it is asked which.

import { DateTime, Info } from 'luxon';
import { isFailed } from '../../../core/failed.ts';
import type { Fault, LineContext } from '../reading.ts';
import type { Profile } from '../tongues/profile.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { readDate } from './time-typed.ts';

export interface DateTyped {
  /** ISO. */
  readonly date: string;
  readonly hasYear: boolean;
  /** Index of the token after it. */
  readonly to: number;
}

export interface OnLine {
  readonly line: string;
  readonly context: LineContext;
}

/** What a day without a year lies next to: the last such day until one, today unless said otherwise, or the first from another. */
interface Beside {
  readonly until?: string | undefined;
  readonly since?: string | undefined;
}

/** The day that begins at token `from`; `undefined` where none does. */
export function dateTypedFrom(
  tokens: readonly Token[],
  from: number,
  typed: OnLine,
  beside: Beside = {},
): DateTyped | Fault | undefined {
  const token = tokens[from];
  if (token === undefined || token.kind === 'quoted') return undefined;
  const iso = readDate(token.text);
  if (iso === 'no-such-time') return { failed: 'impossible', token, needs: ['day'] };
  if (iso !== undefined)
    return { date: DateTime.utc(iso.year, iso.month, iso.day).toISODate() ?? '', hasYear: true, to: from + 1 };
  return inFigures(tokens, from, typed) ?? inLetters(tokens, from, typed, beside);
}

/** Every day in them as one word that means `2026-03-02`. `from 1 March to 7 March 2025` is of one year, `to 7 March` comes after its `from`. */
export function withDates(tokens: readonly Token[], typed: OnLine): readonly Token[] | Fault {
  const read: Token[] = [];
  const days = tokens.map((_, i) => dateTypedFrom(tokens, i, typed));
  const dated = days.map((day) => (day !== undefined && !isFailed(day) && day.hasYear ? day.date : undefined));
  const until = dated.find((date) => date !== undefined);
  let since: string | undefined;
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i];
    if (token === undefined) break;
    const day = readDate(token.text) === undefined ? dateTypedFrom(tokens, i, typed, { until, since }) : undefined;
    if (day !== undefined && isFailed(day)) return day;
    since = day?.date ?? dated[i] ?? since;
    const { start } = token;
    const end = tokens[(day?.to ?? 0) - 1]?.end ?? token.end;
    read.push(
      day === undefined ? token : { kind: 'word', word: day.date, text: typed.line.slice(start, end), start, end },
    );
    i = day?.to ?? i + 1;
  }
  return read;
}

const figures = /^(\d{1,2})([/.-])(\d{1,2})\2(\d{4})(?=$|[\s,;:!?)\]])/;

function inFigures(tokens: readonly Token[], from: number, typed: OnLine): DateTyped | Fault | undefined {
  const start = tokens[from]?.start ?? 0;
  const [text = '', one, , two, year] = figures.exec(typed.line.slice(start)) ?? [];
  if (text === '') return undefined;
  const token = { text, start, end: start + text.length };
  const after = tokens.findIndex((each) => each.start >= token.end);
  const to = after === -1 ? tokens.length : after;
  const { country } = typed.context;
  const dayFirst = DateTime.utc(Number(year), Number(two), Number(one));
  const monthFirst = DateTime.utc(Number(year), Number(one), Number(two));
  const both = [monthFirst, dayFirst].filter(({ isValid, year: of }) => isValid && of >= 2000);
  const [first, other] = both;
  if (first === undefined) return { failed: 'impossible', token, needs: ['day'] };
  const isSure = other === undefined || first.equals(other);
  if (isSure || country.dates === 'day-first') return { date: (other ?? first).toISODate() ?? '', hasYear: true, to };
  const couldBe = both.map((day) => country.dateTyped(day.setLocale(country.locale)));
  const tries = couldBe.map((each) => typed.line.slice(0, start) + each + typed.line.slice(token.end));
  return { failed: 'ambiguous-time', token, needs: ['day'], couldBe, tries };
}

/** `2`, `2nd`, `1º`. */
const dayOfMonth = /^(\d{1,2})(?:st|nd|rd|th|º|ª)?$/i;

function inLetters(
  tokens: readonly Token[],
  from: number,
  { context }: OnLine,
  { until, since }: Beside,
): DateTyped | Fault | undefined {
  const ofIsAt = (i: number): boolean => {
    const token = tokens[i];
    return wordIn(token) === 'of';
  };
  const monthAt = (i: number): number | undefined => monthNamed(tokens[i]?.text ?? '', context.country);
  const dayAt = (i: number): string | undefined => dayOfMonth.exec(tokens[i]?.text ?? '')?.[1];
  const isMonthFirst = monthAt(from) !== undefined;
  const second = !isMonthFirst && ofIsAt(from + 1) ? from + 2 : from + 1;
  const month = monthAt(isMonthFirst ? from : second);
  const day = dayAt(isMonthFirst ? second : from);
  const first = tokens[from];
  if (month === undefined || day === undefined || first === undefined) return undefined;
  const third = ofIsAt(second + 1) ? second + 2 : second + 1;
  const hasYear = /^20\d\d$/.test(tokens[third]?.text ?? '');
  const to = hasYear ? third + 1 : second + 1;
  const near = since ?? until ?? DateTime.fromMillis(context.now, { zone: context.zone }).toFormat('yyyy-MM-dd');
  const other = since === undefined ? -1 : 1;
  const years = hasYear ? [Number(tokens[third]?.text)] : [0, other].map((by) => Number(near.slice(0, 4)) + by);
  const dates = years.map((year) => DateTime.utc(year, month, Number(day)).toISODate());
  const isBeside = (each: string): boolean => hasYear || (since === undefined ? each <= near : each >= near);
  const date = dates.find((each) => each !== null && isBeside(each));
  if (typeof date === 'string') return { date, hasYear, to };
  const last = tokens[to - 1] ?? first;
  return {
    failed: 'impossible',
    token: {
      text: tokens
        .slice(from, to)
        .map(({ text }) => text)
        .join(' '),
      start: first.start,
      end: last.end,
    },
    needs: ['day'],
  };
}

const plain = (word: string): string => withoutAccents(word.toLowerCase()).replace(/\.$/, '');

const monthsOf = new Map<string, ReadonlyMap<string, number>>();

/** In the reader's language or in English, whole or short. */
export const monthNamed = (word: string, country: Profile): number | undefined => monthsIn(country).get(plain(word));

function monthsIn({ locale }: Profile): ReadonlyMap<string, number> {
  const known = monthsOf.get(locale);
  if (known !== undefined) return known;
  const named = [locale, 'en'].flatMap((each) =>
    (['long', 'short'] as const).flatMap((length) =>
      Info.months(length, { locale: each }).map((name, i) => [plain(name), i + 1] as const),
    ),
  );
  const months = new Map(named);
  monthsOf.set(locale, months);
  return months;
}
