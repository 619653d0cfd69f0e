// When an act happened, as said on its line: `at 9:40`, `yesterday 16:00`, `at 2026-03-02 9:40`, `10m ago`. A time of
// day is its latest past occurrence; one that is still to come today, within 12 h, is no past one and is refused.

import { type EpochMs, epochMs } from '../../../core/units.ts';
import type { Hearing } from '../hearing.ts';
import { isOfSeveral } from '../parts-said/one-of-many.ts';
import type { Fault, LineContext } from '../reading.ts';
import { rareFigureFrom } from '../typed/rare-figures.ts';
import { type Token, type Word, wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { halfAsked, hourSaid, otherHalf } from './hour-said.ts';
import { instantTyped } from './instant-typed.ts';
import { inPartOfDay, partOfDayAt } from './part-of-day.ts';
import { readDate, readDateAndTime, readTimeOfDay } from './time-typed.ts';
import { type CalendarDay, dayBefore, dayOf, isoLocal, shownMs, type TimeOfDay } from './wall-clock.ts';

export type Clock = Pick<LineContext, 'now' | 'zone' | 'hearing' | 'country'> & Partial<Pick<LineContext, 'parts'>>;

export interface SaidTime {
  readonly at: EpochMs;
  /** Index of the first token and of the one after the last. */
  readonly from: number;
  readonly to: number;
}

const hoursAhead = 12;
const msPerMinute = 60_000;
const msPerHour = 60 * msPerMinute;
/** 2000-01-01: before it a said time is a slip. */
const earliest = 946_684_800_000;

/** The said time that begins at token `from`, a fault in one, or undefined where none begins. */
export function saidTimeFrom(tokens: readonly Token[], from: number, clock: Clock): SaidTime | Fault | undefined {
  const token = tokens[from];
  if (token === undefined) return undefined;
  switch (token.kind) {
    case 'word':
      if (token.word === 'at') return timeAfterAt(tokens, from, clock);
      if (token.word === 'before-now') return agoFirst(tokens, from, clock);
      return timeFrom(tokens, from, from, clock, false) ?? wordsAgo(tokens, from, clock);
    case 'quantity':
    case 'number':
      return ago(tokens, from, clock);
    case 'quoted':
    case 'doubt':
    case 'impossible':
      return undefined;
    default: {
      const never: never = token;
      return never;
    }
  }
}

function timeAfterAt(tokens: readonly Token[], from: number, clock: Clock): SaidTime | Fault | undefined {
  const next = tokens[from + 1];
  if (next === undefined) return { failed: 'incomplete', needs: ['time'], ...tokenOf(tokens[from]) };
  // `at 24C` and `at booth`: only a preposition.
  if (next.kind === 'quantity' && next.quantity.is !== 'duration') return undefined;
  // `at 500 V`: no hour.
  if (rareFigureFrom(tokens, from + 1, 'V') !== undefined) return undefined;
  return timeFrom(tokens, from, from + 1, clock, true);
}

/** A time whose first piece is at `index`. Without `at` before it a bare number is none. */
function timeFrom(
  tokens: readonly Token[],
  from: number,
  index: number,
  clock: Clock,
  afterAt: boolean,
): SaidTime | Fault | undefined {
  const first = tokens[index];
  if (first === undefined || first.kind === 'quoted') return undefined;
  const exact = readDateAndTime(first.text);
  if (exact === 'no-such-time') return impossible(first);
  if (exact !== undefined) {
    const at =
      exact.offsetMinutes === undefined
        ? instantTyped(exact.day, exact.time, clock.zone, first, isoLocal)
        : shownMs(exact.day, exact.time) - exact.offsetMinutes * msPerMinute;
    return past(at, first, from, index + 1, clock);
  }
  const named = dayNamed(first, clock);
  if (named === 'no-such-time') return impossible(first);
  if (named === undefined) return timeOfDayFrom(tokens, from, index, clock, afterAt);
  const timeAt = wordAt(tokens, index + 1) === 'at' ? index + 2 : index + 1;
  const time = clockTime(tokens, timeAt, clock.hearing);
  if (time === undefined) {
    return afterAt || wordAt(tokens, index) === 'yesterday'
      ? { failed: 'incomplete', needs: ['time'], ...tokenOf(first) }
      : undefined;
  }
  if (time.time === 'no-such-time') return impossible(tokens[timeAt]);
  if (time.isEither) return halfAsked(tokens, index + 1, time.to, bothHalves(time.time), clock);
  return past(instantTyped(named, time.time, clock.zone, tokens[timeAt]), tokens[timeAt], from, time.to, clock);
}

function timeOfDayFrom(
  tokens: readonly Token[],
  from: number,
  index: number,
  clock: Clock,
  afterAt: boolean,
): SaidTime | Fault | undefined {
  const first = tokens[index];
  const isBare = first?.kind === 'number';
  // `a las 3 escuadras`: how many they are.
  const isCount = isBare && isOfSeveral(wordAt(tokens, index + 1) ?? '', clock);
  const read = isCount || (isBare && !afterAt) ? undefined : clockTime(tokens, index, clock.hearing);
  if (first === undefined || read === undefined) return undefined;
  // Without `at`, only what nothing else can be: 9:40, 9am.
  if (!afterAt && !/[:apn]/i.test(first.text)) return undefined;
  // `9:75` is meant as a time; `0..a` may be a name.
  if (read.time === 'no-such-time') return afterAt || first.text.includes(':') ? impossible(first) : undefined;
  const day = dayNamedAfter(tokens, read.to, clock);
  if (day !== undefined) {
    if (read.isEither) return halfAsked(tokens, from, read.to, bothHalves(read.time), clock);
    return past(instantTyped(day, read.time, clock.zone, first), first, from, read.to + 1, clock);
  }
  return read.isEither
    ? nearest(read.time, first, from, read.to, clock)
    : latestPast(read.time, first, from, read.to, clock);
}

/** Of the two halves of the day the nearer, which must have been: `las cuatro y media` at five is of the afternoon. */
function nearest(time: TimeOfDay, token: Token, from: number, to: number, clock: Clock): SaidTime | Fault {
  const today = dayOf(clock.now, clock.zone);
  const far = (at: number) => Math.abs(at - clock.now);
  const [at] = [dayBefore(today), today]
    .flatMap((day) => bothHalves(time).map((half) => instantTyped(day, half, clock.zone, token)))
    .filter((each) => typeof each === 'number')
    .sort((one, other) => far(one) - far(other));
  return at === undefined ? impossible(token) : past(at, token, from, to, clock);
}

/** `9:40 yesterday`, `9:40 today`. */
function dayNamedAfter(tokens: readonly Token[], index: number, clock: Clock): CalendarDay | undefined {
  const word = wordAt(tokens, index);
  return word === 'yesterday' || word === 'today' ? dayCalled(word, clock) : undefined;
}

function dayCalled(word: 'yesterday' | 'today', clock: Clock): CalendarDay {
  const today = dayOf(clock.now, clock.zone);
  return word === 'today' ? today : dayBefore(today);
}

function latestPast(time: TimeOfDay, token: Token, from: number, to: number, clock: Clock): SaidTime | Fault {
  const today = dayOf(clock.now, clock.zone);
  const at = instantTyped(today, time, clock.zone, token);
  if (typeof at !== 'number') return at;
  if (at <= clock.now) return { at, from, to };
  if (at - clock.now <= hoursAhead * msPerHour) return { failed: 'in-the-future', needs: ['time'], ...tokenOf(token) };
  return past(instantTyped(dayBefore(today), time, clock.zone, token), token, from, to, clock);
}

interface ClockTime {
  readonly time: TimeOfDay | 'no-such-time';
  readonly to: number;
  /** Said in words, without its half of the day. */
  readonly isEither?: boolean;
}

const bothHalves = (time: TimeOfDay): readonly TimeOfDay[] =>
  [time, otherHalf(time)].sort((one, other) => one.hour - other.hour);

function clockTime(tokens: readonly Token[], index: number, hearing: Hearing): ClockTime | undefined {
  const token = tokens[index];
  if (token === undefined || token.kind === 'quoted') return undefined;
  const said = wordAt(tokens, index - 1) === 'at' ? hourSaid(tokens, index, hearing) : undefined;
  if (said !== undefined) return said;
  const half = wordAt(tokens, index + 1)?.replaceAll('.', '');
  const withHalf = half === 'am' || half === 'pm' ? readTimeOfDay(`${token.text}${half}`) : undefined;
  if (withHalf !== undefined) return { time: withHalf, to: index + 2 };
  const time = readTimeOfDay(isNamed(token) ? token.word : token.text);
  if (time === undefined) return undefined;
  const part = partOfDayAt(tokens, index + 1, hearing);
  if (part !== undefined && time !== 'no-such-time') return { time: inPartOfDay(time, part.part), to: part.to };
  const isHours = token.kind === 'word' && /^(?:h|hrs?|hour)$/.test(wordAt(tokens, index + 1) ?? '');
  return { time, to: isHours ? index + 2 : index + 1 };
}

function dayNamed(token: Token, clock: Clock): CalendarDay | 'no-such-time' | undefined {
  const word = wordIn(token);
  return word === 'yesterday' || word === 'today' ? dayCalled(word, clock) : readDate(token.text);
}

/** Spanish puts the word first: `hace 10 min`, `hace media hora`. */
function agoFirst(tokens: readonly Token[], from: number, clock: Clock): SaidTime | Fault | undefined {
  const token = tokens[from + 1];
  if (token === undefined) return { failed: 'incomplete', needs: ['time-ago'], ...tokenOf(tokens[from]) };
  if (token.kind === 'number') return { failed: 'unit-missing', needs: ['time-ago'], ...tokenOf(token) };
  if (token.kind === 'quantity' && token.quantity.is === 'duration') {
    return past(clock.now - token.quantity.value * msPerMinute, token, from, from + 2, clock);
  }
  for (let words = longestPhrase - 1; words > 0; words--) {
    const said = tokens.slice(from + 1, from + 1 + words).map(({ text }) => withoutAccents(text.toLowerCase()));
    const minutes = said.length === words ? clock.hearing.minutes.get(said.join(' ')) : undefined;
    if (minutes !== undefined) return past(clock.now - minutes * msPerMinute, token, from, from + 1 + words, clock);
  }
  return undefined;
}

/** `10m ago`, `1h20 ago`; `10 ago` lacks its unit. */
function ago(tokens: readonly Token[], from: number, clock: Clock): SaidTime | Fault | undefined {
  const token = tokens[from];
  if (token === undefined || wordAt(tokens, from + 1) !== 'ago') return undefined;
  if (token.kind === 'number') return { failed: 'unit-missing', needs: ['time-ago'], ...tokenOf(token) };
  if (token.kind !== 'quantity' || token.quantity.is !== 'duration') return undefined;
  return past(clock.now - token.quantity.value * msPerMinute, token, from, from + 2, clock);
}

const longestPhrase = 6;

function wordsAgo(tokens: readonly Token[], from: number, clock: Clock): SaidTime | Fault | undefined {
  const words: string[] = [];
  for (let i = from; i < from + longestPhrase; i++) {
    const word = wordAt(tokens, i);
    if (word === undefined) return undefined;
    if (word === 'ago') {
      const minutes = clock.hearing.minutes.get(words.join(' '));
      return minutes === undefined
        ? undefined
        : past(clock.now - minutes * msPerMinute, tokens[from], from, i + 1, clock);
    }
    words.push(tokens[i]?.text.toLowerCase() ?? '');
  }
  return undefined;
}

/** Noon and midnight, whatever they are called. */
const isNamed = (token: Token): token is Word => ['noon', 'midnight'].includes(wordIn(token));

function past(at: number | Fault, token: Token | undefined, from: number, to: number, clock: Clock): SaidTime | Fault {
  if (typeof at !== 'number') return at;
  if (at > clock.now) return { failed: 'in-the-future', needs: ['time'], ...tokenOf(token) };
  return at < earliest ? impossible(token) : { at: epochMs(at), from, to };
}

function impossible(token: Token | undefined): Fault {
  return { failed: 'impossible', needs: ['time'], ...tokenOf(token) };
}

function tokenOf(token: Token | undefined): { readonly token?: Token } {
  return token === undefined ? {} : { token };
}

function wordAt(tokens: readonly Token[], index: number): string | undefined {
  const token = tokens[index];
  return token?.kind === 'word' ? token.word : undefined;
}
