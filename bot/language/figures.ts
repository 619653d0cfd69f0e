// Figures as a person reads them: their units, their zone, their language, rounded to the cautious side. Numbers are
// rounded here and nowhere else.

import { DateTime } from 'luxon';
import type { UnitSystem } from '../../core/crew/crew.ts';
import {
  type Celsius,
  type CelsiusSpread,
  type EpochMs,
  epochMs,
  fahrenheitFromCelsius,
  fahrenheitSpreadFromCelsius,
  type Grams,
  type Micrometres,
  type Minutes,
  milsFromMicrometres,
  ouncesFromGrams,
} from '../../core/units.ts';

export interface Figures {
  /** Grams, and pounds and ounces for who wants them. */
  readonly mass: (mass: Grams) => string;
  readonly temperature: (temperature: Celsius) => string;
  readonly spread: (spread: CelsiusSpread) => string;
  readonly percent: (value: number, digits?: number) => string;
  /** With its sign, for a deviation. */
  readonly signedPercent: (value: number) => string;
  readonly film: (film: Micrometres) => string;
  readonly minutesUp: (duration: Minutes) => string;
  readonly minutesDown: (duration: Minutes) => string;
  /** Wall clock, to the minute that is not too early (a stir, a cure). */
  readonly timeUp: (at: EpochMs) => string;
  /** Wall clock, to the minute that is not too late (a pot life). */
  readonly timeDown: (at: EpochMs) => string;
  readonly count: (value: number) => string;
  /** With the zone's offset, for machines. */
  readonly iso: (at: EpochMs) => string;
  /** Local date and time as a line can say it: `2026-03-02T09:40`. */
  readonly stamp: (at: number) => string;
  readonly list: (items: readonly string[]) => string;
}

interface FiguresFor {
  readonly language: string;
  readonly units: UnitSystem;
  readonly zone: string;
  /** Times on another day than this moment's carry their date. */
  readonly now: EpochMs;
}

const msPerMinute = 60_000;

export function figuresFor({ language, units, zone, now }: FiguresFor): Figures {
  const number = (digits: number) => numberFormat(language, digits);
  const us = units === 'us';
  const today = DateTime.fromMillis(now, { zone }).toISODate();

  const time = (at: number): string => {
    const local = DateTime.fromMillis(at, { zone, locale: language });
    return local.toFormat(local.toISODate() === today ? 'HH:mm' : 'ccc d LLL HH:mm');
  };

  const duration = (whole: number): string => {
    if (whole < 100) return `${number(0).format(whole)} min`;
    const hours = Math.trunc(whole / 60);
    const rest = whole - hours * 60;
    return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
  };

  return {
    mass: (mass) =>
      us ? `${number(0).format(mass)} g (${poundsAndOunces(mass, number(1))})` : `${number(0).format(mass)} g`,
    temperature: (temperature) =>
      us ? `${number(0).format(fahrenheitFromCelsius(temperature))} °F` : `${number(1).format(temperature)} °C`,
    spread: (spread) =>
      us ? `${number(1).format(fahrenheitSpreadFromCelsius(spread))} °F` : `${number(1).format(spread)} °C`,
    percent: (value, digits = 0) => `${number(digits).format(value)} %`,
    signedPercent: (value) => `${value >= 0 ? '+' : '−'}${number(2).format(Math.abs(value))} %`,
    film: (film) => (us ? `${number(2).format(milsFromMicrometres(film))} mil` : `${number(1).format(film)} µm`),
    minutesUp: (minutes) => duration(Math.ceil(minutes - 1e-6)),
    minutesDown: (minutes) => duration(Math.floor(minutes + 1e-6)),
    timeUp: (at) => time(Math.ceil(at / msPerMinute) * msPerMinute),
    timeDown: (at) => time(Math.floor(at / msPerMinute) * msPerMinute),
    count: (value) => number(0).format(value),
    iso: (at) =>
      DateTime.fromMillis(Math.round(at), { zone }).toISO({ suppressMilliseconds: true }) ?? String(epochMs(at)),
    stamp: (at) => {
      const local = DateTime.fromMillis(at, { zone });
      return local.toFormat(local.second === 0 ? "yyyy-MM-dd'T'HH:mm" : "yyyy-MM-dd'T'HH:mm:ss");
    },
    list: (items) => items.join(', '),
  };
}

function poundsAndOunces(mass: Grams, format: Intl.NumberFormat): string {
  const tenths = Math.round(ouncesFromGrams(mass) * 10);
  const pounds = Math.trunc(tenths / 160);
  const ounces = format.format((tenths - pounds * 160) / 10);
  return pounds === 0 ? `${ounces} oz` : `${pounds} lb ${ounces} oz`;
}

// Building a formatter costs more than a hundred uses of it.
const formats = new Map<string, Intl.NumberFormat>();

function numberFormat(language: string, digits: number): Intl.NumberFormat {
  const key = `${language}/${digits}`;
  const known = formats.get(key);
  if (known !== undefined) return known;
  const format = new Intl.NumberFormat(language, { maximumFractionDigits: digits, useGrouping: false });
  formats.set(key, format);
  return format;
}
