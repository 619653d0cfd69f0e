// A time of day in words. Nobody says so of a clock with twenty-four hours: it is the half of the day nearest to now, and never one
// to come.

import { meaningOf } from '../hearing.ts';
import { isOfSeveral } from '../parts-said/one-of-many.ts';
import type { LineContext } from '../reading.ts';
import { dayBefore, dayOf, instantOf, isoLocal, type TimeOfDay, typedOn } from '../times/wall-clock.ts';
import { notAfterSpace } from '../typed/units-typed.ts';
import { type Figure, figureAt, minutesAt, type TimeAt, type TimeLine } from './time-line.ts';
import { lengthOf, longestAt, type Said } from './words.ts';

interface ClockAt {
  readonly hour: number;
  readonly minute: number;
  readonly to: number;
  /** In figures, as a clock shows it. */
  readonly isExact?: boolean;
}

export function clockSaid(line: TimeLine, at: number): TimeAt | undefined {
  const { said, times } = line;
  // `had a look at 9, it's clean`
  if (line.context.hearing.said.looks.has(said[at - 1]?.word ?? '')) return undefined;
  const roughly = longestAt(said, at, times.roughly);
  const lead = roughly ?? longestAt(said, at, times.leads);
  const from = lead === undefined ? at : at + lengthOf(lead);
  const mayLead = longestAt(said, at, times.mayLead);
  const clocks =
    (mayLead === undefined ? undefined : hourLeftOut(line, at + lengthOf(mayLead))) ??
    hourLast(line, mayLead === undefined ? from : at + lengthOf(mayLead), (lead ?? mayLead) !== undefined) ??
    halfOf(line, from) ??
    hourFirst(line, from, lead);
  if (clocks === undefined || clocks[0] === undefined || hasUnit(line, clocks[0].to)) return undefined;
  const [{ to }] = clocks;
  const texts = clocks.flatMap((clock) => textsOf(clock, line));
  return texts.length === 0
    ? undefined
    : { to, texts: [...new Set(texts)], isSure: roughly === undefined && texts.length === 1 && clocks.length === 1 };
}

/** `quarter to ten`, `diez para las diez`. */
function hourLast(line: TimeLine, from: number, isLed: boolean): readonly ClockAt[] | undefined {
  const { said, times } = line;
  const phrase = longestAt(said, from, Object.keys(times.minutes));
  const figure = phrase === undefined ? figureAt(line, from) : undefined;
  const minutes = phrase === undefined ? figure?.value : times.minutes[phrase];
  const after = phrase === undefined ? figure?.to : from + lengthOf(phrase);
  if (minutes === undefined || after === undefined || minutes > 59) return undefined;
  const past = longestAt(said, after, times.past);
  const to = past === undefined ? longestAt(said, after, times.to) : undefined;
  const joint = past ?? to;
  // `5 to 10` may be parts; `10 para las 10` is nothing else.
  if (joint === undefined || (figure?.inFigures === true && !isLed && lengthOf(joint) === 1)) return undefined;
  const hour = hourAt(line, after + lengthOf(joint));
  if (hour === undefined && isLed)
    return ofThisHour(line, past === undefined ? 60 - minutes : minutes, after + lengthOf(joint));
  return hour && [shifted(hour, past === undefined ? -minutes : minutes)];
}

/** `at twenty to`: of the hour that goes, or of the one before it. Only where nothing follows that it may be to or past. */
function ofThisHour(
  { said, context }: TimeLine,
  minute: number,
  to: number,
  isClosed = false,
): readonly ClockAt[] | undefined {
  if (!isClosed && to < said.length && said[to - 1]?.comma !== true) return undefined;
  const [, hour, now] = (/T(\d\d):(\d\d)/.exec(isoLocal(context.now, context.zone)) ?? []).map(Number);
  if (hour === undefined || now === undefined) return undefined;
  return [{ hour: minute % 60 <= now ? hour : (hour + 23) % 24, minute: minute % 60, to, isExact: true }];
}

/** `a menos cuarto`, `a y media`: of the hour that goes, or of the one before it. */
function hourLeftOut(line: TimeLine, from: number): readonly ClockAt[] | undefined {
  const { said, times } = line;
  const sign = said[from]?.word;
  if (sign === undefined || (sign !== times.plus && sign !== times.minus)) return undefined;
  const minutes = jointMinutes(line, from + 1);
  // `a menos 20` may be a temperature.
  if (minutes === undefined || minutes.inFigures || minutes.value > 59) return undefined;
  return ofThisHour(line, sign === times.minus ? 60 - minutes.value : minutes.value, minutes.to, true);
}

/** `half nine`: past it in Britain, before it elsewhere. */
function halfOf(line: TimeLine, from: number): readonly ClockAt[] | undefined {
  const { said, times } = line;
  const isHalf = times.halfOf !== undefined && said[from]?.word === times.halfOf;
  const hour = isHalf ? hourAt(line, from + 1) : undefined;
  return hour && [shifted(hour, 30), shifted(hour, -30)];
}

/** `at nine forty`, `a las nueve y media`, `nine o'clock`. */
function hourFirst(line: TimeLine, from: number, lead: string | undefined): readonly ClockAt[] | undefined {
  const { said, times } = line;
  const typed = /^(\d{1,2})[:.h](\d{2})$/.exec(said[from]?.word ?? '');
  // `at 23:30` the strict reader knows, and has refused.
  if (
    typed !== null &&
    lead !== undefined &&
    meaningOf(lead, line.context.hearing) !== 'at' &&
    !lead.startsWith('a la')
  ) {
    return [{ hour: Number(typed[1]), minute: Number(typed[2]), to: from + 1, isExact: true }];
  }
  const hour = hourAt(line, from);
  if (hour === undefined) return undefined;
  const full = longestAt(said, hour.to, times.onTheHour);
  if (full !== undefined) return [{ hour: hour.value, minute: 0, to: hour.to + lengthOf(full) }];
  if (lead === undefined) return undefined;
  const sign = said[hour.to]?.word;
  const isJoint = sign !== undefined && (sign === times.plus || sign === times.minus);
  const minutes = isJoint ? jointMinutes(line, hour.to + 1) : minutesAt(line, hour.to);
  if (minutes !== undefined)
    return [{ ...shifted(hour, sign === times.minus ? -minutes.value : minutes.value), to: minutes.to }];
  // `gas puesto a la una` is of a can; `since 9` begins at the hour.
  return lead.endsWith(' la') ? undefined : [{ hour: hour.value, minute: 0, to: hour.to }];
}

function jointMinutes(line: TimeLine, at: number): Figure | undefined {
  const phrase = longestAt(line.said, at, Object.keys(line.times.minutes));
  return phrase === undefined
    ? figureAt(line, at)
    : { value: line.times.minutes[phrase] ?? 0, to: at + lengthOf(phrase), inFigures: false };
}

function hourAt(line: TimeLine, at: number): Figure | undefined {
  const { said, numbers } = line;
  const word = said[at]?.word ?? '';
  // Words say the hours of twelve alone, each in one: `diez y cinco` is five past ten.
  const inWords = Object.hasOwn(numbers.small, word) && word !== 'a' ? numbers.small[word] : undefined;
  if (inWords !== undefined) {
    const isHour = inWords >= 1 && inWords <= 12;
    return isHour ? { value: inWords, to: at + 1, inFigures: false } : undefined;
  }
  const hour = figureAt(line, at);
  return hour?.inFigures === true && hour.value <= 23 ? hour : undefined;
}

function shifted({ value, to }: Figure, minutes: number): ClockAt {
  const all = (value * 60 + minutes + 24 * 60) % (24 * 60);
  return { hour: Math.floor(all / 60), minute: all % 60, to };
}

/** `at nine degrees`; `a las tres escuadras`. */
function hasUnit({ said, context }: TimeLine, at: number): boolean {
  const word = said[at]?.word ?? '';
  if (isOfSeveral(word, context)) return true;
  const unit = word.length < 2 || notAfterSpace.has(word) ? undefined : context.hearing.units.get(word);
  return unit !== undefined && (unit === 'degree' || unit.is !== 'duration');
}

/** As the strict reader takes it: with its half of the day where that is said, else the nearest that is no time to come. */
function textsOf({ hour, minute, to, isExact = false }: ClockAt, { said, context }: TimeLine): readonly string[] {
  const shown = `${hour}:${`${minute}`.padStart(2, '0')}`;
  // Of a clock with twenty-four hours: whether it is still to come the strict reader says.
  if (isExact || hour > 12) return [`at ${shown}`];
  if (namesHalf(said, to, context)) return [`at ${hour === 0 ? shown.replace('0', '12') : shown}`];
  const halves = [hour % 12, (hour % 12) + 12];
  if (said.some(({ word }) => meaningOf(word, context.hearing) === 'yesterday')) {
    return halves.map((half) => `at ${half}:${`${minute}`.padStart(2, '0')}`);
  }
  const at = nearest(
    halves.map((half) => ({ hour: half, minute, second: 0, millisecond: 0 })),
    context,
  );
  return at === undefined ? [] : [`at ${typedOn(dayOf(context.now, context.zone), at, context.zone)}`];
}

function namesHalf(said: readonly Said[], at: number, { hearing }: LineContext): boolean {
  const [first = '', second = '', third = ''] = said.slice(at, at + 3).map(({ word }) => word);
  if (/^[ap]\.?m\.?$/.test(first)) return true;
  return hearing.tongues.some(
    ({ times: { partLeads, partsOfDay } }) =>
      partLeads.split(' ').includes(first) && (Object.hasOwn(partsOfDay, second) || Object.hasOwn(partsOfDay, third)),
  );
}

function nearest(times: readonly TimeOfDay[], { now, zone }: LineContext) {
  const today = dayOf(now, zone);
  const far = (at: number) => Math.abs(at - now);
  const [at] = [dayBefore(today), today]
    .flatMap((day) => times.map((time) => instantOf(day, time, zone)))
    .filter((each) => typeof each === 'number')
    .sort((one, other) => far(one) - far(other));
  return at === undefined || at > now ? undefined : at;
}
