// Figures as a person reads them: their units, their zone, their language, rounded to the cautious side. Numbers are
// rounded here and nowhere else.

import { DateTime } from 'luxon';
import { microgramsPerSquareCentimetre } from '../../core/calc/salts.ts';
import { decimalsOf, type InBothUnits, type Shown } from '../../core/calc/weighable.ts';
import type { UnitSystem } from '../../core/crew/unit-system.ts';
import {
  type Celsius,
  type CelsiusSpread,
  type CubicMetres,
  type CubicMetresPerHour,
  cubicFeetFromCubicMetres,
  cubicFeetPerHourFromLitresPerMinute,
  cubicFeetPerMinuteFromCubicMetresPerHour,
  type EpochMs,
  epochMs,
  fahrenheitFromCelsius,
  fahrenheitSpreadFromCelsius,
  feetPerMinuteFromMetresPerSecond,
  type Grams,
  type GramsPerLitre,
  type Litres,
  type LitresPerMinute,
  type Megapascals,
  type MetresPerSecond,
  type Micrometres,
  type MicrosiemensPerCentimetre,
  type MilligramsPerCubicMetre,
  type MilligramsPerSquareMetre,
  type Millimetres,
  type Minutes,
  milsFromMicrometres,
  ouncesFromGrams,
  type PartsPerMillion,
  poundsPerGallonFromGramsPerLitre,
  psiFromMegapascals,
  type SquareMetres,
  squareFeetFromSquareMetres,
  usGallonsFromLitres,
} from '../../core/units.ts';
import { wallInches } from './inches-shown.ts';
import { dotted, listFormat, type NumberFormat, numberFormat, signed, toDigits } from './number-formats.ts';
import { ounceDigitsOf, poundsAndOunces } from './pounds.ts';
import type { Profile } from './tongues/profile.ts';

/** An instant as it is said: the clock, and the day where it is another than today. */
export interface Moment {
  readonly day: string | undefined;
  readonly clock: string;
  /** That of the clock: 1 at 13:10 where it has twelve. */
  readonly hour: number;
}

/** To the minute that is not too early, or not too late. */
export type Rounding = 'up' | 'down';

export interface Figures {
  readonly units: UnitSystem;
  readonly profile: Profile;
  readonly moment: (at: EpochMs, to: Rounding) => Moment;
  /** As a scale showed it, with its decimals; what it is in pounds in front, for who works in those. */
  readonly asRead: (mass: Grams) => string;
  /** To the step of the scale that it is to be weighed on, in grams and for who works in pounds in those before. */
  readonly toWeigh: (amount: InBothUnits<Shown>) => string;
  /** What a scale shows: a step in grams, or in ounces. */
  readonly scaleStep: (step: Grams) => string;
  /** A full hour of any day. */
  readonly hour: (hour: number) => string;
  /** Grams; for who works in pounds, those first and behind them what a scale shows. */
  readonly mass: (mass: Grams) => string;
  /** Litres; for who works in gallons those, and of less than a quart its ounces. */
  readonly volume: (volume: Litres) => string;
  /** Of a room or a booth. */
  readonly space: (space: CubicMetres) => string;
  readonly area: (area: SquareMetres) => string;
  readonly temperature: (temperature: Celsius) => string;
  readonly spread: (spread: CelsiusSpread) => string;
  readonly percent: (value: number, digits?: number) => string;
  /** With its sign, for a deviation. */
  readonly signedPercent: (value: number) => string;
  readonly film: (film: Micrometres) => string;
  /** Readings of a gauge, the unit behind the last. */
  readonly films: (films: readonly Micrometres[]) => string;
  /** Salts on steel. */
  /** At which a dolly let go. */
  readonly pressure: (pressure: Megapascals) => string;
  readonly salts: (density: MilligramsPerSquareMetre) => string;
  readonly saltsPerSquareCentimetre: (density: MilligramsPerSquareMetre) => string;
  readonly conductivity: (conductivity: MicrosiemensPerCentimetre) => string;
  /** What a syringe holds: it is marked in millilitres everywhere. */
  readonly syringe: (volume: Litres) => string;
  /** Of a filter: the trade sells it by the micrometre everywhere. */
  readonly filterGrade: (grade: Micrometres) => string;
  readonly minutesUp: (duration: Minutes) => string;
  readonly minutesDown: (duration: Minutes) => string;
  /** Wall clock, to the minute that is not too early (a stir, a cure). */
  readonly timeUp: (at: EpochMs) => string;
  /** Wall clock, to the minute that is not too late (a pot life). */
  readonly timeDown: (at: EpochMs) => string;
  readonly count: (value: number) => string;
  /** A bare figure whose unit stands beside it. */
  readonly decimal: (value: number) => string;
  /** Of a vapour in air: small limits keep their digits. */
  readonly ppm: (share: PartsPerMillion) => string;
  /** The same by mass. */
  readonly inAir: (content: MilligramsPerCubicMetre) => string;
  /** Rounded down to a hundredth: 0.999 is not 1. */
  readonly ratio: (ratio: number) => string;
  readonly wall: (wall: Millimetres) => string;
  /** Air that is asked for: rounded up. */
  readonly flowUp: (flow: CubicMetresPerHour) => string;
  /** Air that is there: rounded down. */
  readonly flowDown: (flow: CubicMetresPerHour) => string;
  /** Of inert gas, as a flow meter on a cylinder shows it. */
  readonly gasFlow: (flow: LitresPerMinute) => string;
  readonly speed: (speed: MetresPerSecond) => string;
  /** With the zone's offset, for machines. */
  readonly iso: (at: EpochMs) => string;
  /** What a litre of it holds, never told lower than it is. */
  readonly contentUp: (content: GramsPerLitre) => string;
  /** A day, or a month, by its ISO date alone. */
  readonly date: (iso: string) => string;
  /** For paper. */
  readonly dated: (at: number) => string;
  /** Local date and time as a line can say it: `2026-03-02T09:40`. */
  readonly stamp: (at: number) => string;
  /** The same from its ISO text; today's by the reader's clock alone. */
  readonly typed: (iso: string) => string;
  readonly list: (items: readonly string[]) => string;
}

interface FiguresFor {
  readonly profile: Profile;
  readonly units: UnitSystem;
  readonly zone: string;
  /** Times on another day than this moment's carry their date. */
  readonly now: EpochMs;
}

const msPerMinute = 60_000;

/** Nobody reads 50000 g off a scale. */
const kilogramsFrom = 10_000;

// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a table, a row for each kind of figure
export function figuresFor({ profile, units, zone, now }: FiguresFor): Figures {
  const { locale, mil, inch } = profile;
  const number = (digits: number) => numberFormat(locale, digits);
  const us = units === 'us';
  const today = DateTime.fromMillis(now, { zone });

  const moment = (at: EpochMs, to: Rounding): Moment => {
    const minute = (to === 'up' ? Math.ceil(at / msPerMinute) : Math.floor(at / msPerMinute)) * msPerMinute;
    const local = DateTime.fromMillis(minute, { zone, locale });
    const clock = profile.clock(local);
    const day = local.toISODate() === today.toISODate() ? undefined : profile.day(local, today);
    return { day, clock, hour: Number.parseInt(clock, 10) };
  };

  const time = (at: EpochMs, to: Rounding): string => {
    const { day, clock } = moment(at, to);
    return day === undefined ? clock : `${day}${profile.beforeClock}${clock}`;
  };

  const duration = (whole: number): string => {
    if (whole < 60) return `${number(0).format(whole)} min`;
    const hours = Math.trunc(whole / 60);
    const rest = whole - hours * 60;
    return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
  };

  const flowShown = (flow: CubicMetresPerHour, round: (value: number) => number): string =>
    us
      ? `${number(0).format(round(cubicFeetPerMinuteFromCubicMetresPerHour(flow)))} ft³/min`
      : `${number(0).format(round(flow))} m³/h`;

  const inPoundsFirst = (mass: Grams, shown: string): string =>
    us ? `${poundsAndOunces(mass, 1, number)} (${shown})` : shown;

  /** Its noughts too: `4.20 g` says how finely it is to be weighed. */
  const inSteps = ({ grams: mass, stepGrams }: Shown): string => {
    const digits = decimalsOf(stepGrams) ?? 1;
    if (mass >= kilogramsFrom) return `${number(3 + digits).format(mass / 1000)} kg`;
    return `${toDigits(locale, digits).format(mass)} g`;
  };

  const grams = (mass: Grams): string =>
    mass < kilogramsFrom ? `${number(0).format(mass)} g` : `${number(3).format(mass / 1000)} kg`;

  return {
    units,
    profile,
    moment,
    asRead: (mass) => {
      const shown =
        mass < kilogramsFrom ? `${number(gramDigitsOf(mass)).format(mass)} g` : `${number(4).format(mass / 1000)} kg`;
      return us ? `${poundsAndOunces(mass, ounceDigitsOf(mass), number)} (${shown})` : shown;
    },
    toWeigh: ({ grams: inGrams, ounces }) => {
      const shown = inSteps(inGrams);
      const digits = decimalsOf(ouncesFromGrams(ounces.stepGrams)) ?? 1;
      return us ? `${poundsAndOunces(ounces.grams, digits, number)} (${shown})` : shown;
    },
    scaleStep: (step) =>
      decimalsOf(step) === undefined ? `${number(4).format(ouncesFromGrams(step))} oz` : `${number(4).format(step)} g`,
    hour: (hour) => profile.clock(DateTime.fromObject({ hour }, { zone: 'utc', locale })).replace(/^0/, ''),
    mass: (mass) => inPoundsFirst(mass, grams(mass)),
    volume: (volume) => (us ? gallonsOrOunces(volume, number) : `${number(2).format(volume)} L`),
    space: (space) =>
      us ? `${number(0).format(cubicFeetFromCubicMetres(space))} ft³` : `${number(2).format(space)} m³`,
    area: (area) => (us ? `${number(1).format(squareFeetFromSquareMetres(area))} ft²` : `${number(2).format(area)} m²`),
    temperature: (temperature) =>
      us ? `${number(0).format(fahrenheitFromCelsius(temperature))} °F` : `${number(1).format(temperature)} °C`,
    spread: (spread) =>
      us ? `${number(1).format(fahrenheitSpreadFromCelsius(spread))} °F` : `${number(1).format(spread)} °C`,
    // Less than one and not nothing: `0 %` would say that there is none.
    percent: (value, digits = 0) => `${number(value > 0 && value < 1 ? Math.max(digits, 1) : digits).format(value)} %`,
    signedPercent: (value) => `${signed(locale).format(value)} %`,
    film: (film) => (us ? inMils(number(2).format(milsFromMicrometres(film)), mil) : `${number(1).format(film)} µm`),
    films: (films) =>
      us ? inMils(dotted(films.map(milsFromMicrometres), number(2)), mil) : `${dotted(films, number(1))} µm`,
    pressure: (pressure) =>
      us ? `${number(0).format(psiFromMegapascals(pressure))} psi` : `${number(1).format(pressure)} MPa`,
    salts: (density) => `${number(1).format(density)} mg/m²`,
    saltsPerSquareCentimetre: (density) => `${number(2).format(microgramsPerSquareCentimetre(density))} µg/cm²`,
    conductivity: (conductivity) => `${number(1).format(conductivity)} µS/cm`,
    syringe: (volume) => `${number(1).format(volume * 1000)} mL`,
    filterGrade: (grade) => `${number(1).format(grade)} µm`,
    // A nothing has no sign.
    minutesUp: (minutes) => duration(Math.ceil(minutes - 1e-6) + 0),
    minutesDown: (minutes) => duration(Math.floor(minutes + 1e-6)),
    timeUp: (at) => time(at, 'up'),
    timeDown: (at) => time(at, 'down'),
    count: (value) => number(0).format(value),
    decimal: (value) => number(1).format(value),
    inAir: (content) => `${number(content < 1 ? 4 : 1).format(content)} mg/m³`,
    ppm: (share) => `${number(share < 1 ? 4 : 1).format(share)} ppm`,
    ratio: (ratio) => number(2).format(Math.floor(ratio * 100) / 100),
    flowUp: (flow) => flowShown(flow, Math.ceil),
    flowDown: (flow) => flowShown(flow, Math.floor),
    contentUp: (content) =>
      us
        ? `${number(2).format(Math.max(0, Math.ceil(poundsPerGallonFromGramsPerLitre(content) * 100 - 1e-6) / 100))} lb/gal`
        : `${number(0).format(Math.max(0, Math.ceil(content - 1e-6)))} g/L`,
    gasFlow: (flow) =>
      us ? `${number(1).format(cubicFeetPerHourFromLitresPerMinute(flow))} ft³/h` : `${number(1).format(flow)} L/min`,
    speed: (speed) =>
      us ? `${number(0).format(feetPerMinuteFromMetresPerSecond(speed))} ft/min` : `${number(2).format(speed)} m/s`,
    wall: (wall) => (us ? wallInches(wall, number, inch) : `${number(1).format(wall)} mm`),
    iso: (at) =>
      DateTime.fromMillis(Math.round(at), { zone }).toISO({ suppressMilliseconds: true }) ?? String(epochMs(at)),
    date: (iso) => {
      const local = DateTime.fromISO(iso, { zone, locale });
      if (!local.isValid) return iso;
      return iso.length < '2026-03-02'.length ? local.toFormat('LLL yyyy') : profile.date(local, today);
    },
    dated: (at) => profile.dated(DateTime.fromMillis(at, { zone, locale })),
    stamp: (at) => {
      const local = DateTime.fromMillis(at, { zone });
      return local.toFormat(local.second === 0 ? "yyyy-MM-dd'T'HH:mm" : "yyyy-MM-dd'T'HH:mm:ss");
    },
    typed: (iso) => {
      const local = DateTime.fromISO(iso, { zone });
      if (!local.hasSame(today, 'day')) return local.toFormat("yyyy-MM-dd'T'HH:mm");
      // `9:40 AM` is one word to a reader of lines: 9:40am.
      return profile
        .clock(local)
        .replace(/[\s.]*(\p{L})/gu, '$1')
        .toLowerCase();
    },
    list: (items) => listFormat(locale, profile.list).format(items),
  };
}

/** As far as scales for so much show; what was read in ounces has no end in grams. */
const gramDigitsOf = (mass: Grams): number => (mass >= 1_000 ? 1 : mass >= 10 ? 2 : 4);

/** Nobody reads 0.03 gal off a measure. */
const fluidOuncesUnder = 0.25;

function gallonsOrOunces(volume: Litres, number: (digits: number) => NumberFormat): string {
  const gallons = usGallonsFromLitres(volume);
  return gallons < fluidOuncesUnder ? `${number(1).format(gallons * 128)} fl oz` : `${number(2).format(gallons)} gal`;
}

const inMils = (shown: string, { one, many }: Profile['mil']): string => `${shown} ${shown === '1' ? one : many}`;
