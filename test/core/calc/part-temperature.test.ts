// What thermocouple readings on a part prove.

import { describe, expect, it } from 'vitest';
import { dose } from '../../../core/calc/dose.ts';
import { type PartReading, piecesFromReadings, provedTime } from '../../../core/calc/part-temperature.ts';
import type { RateLaw } from '../../../core/calc/rate-law.ts';
import { celsius, minutes } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';
import { minutesIn } from './demo-stir.ts';

const read = (at: number, temperature: number): PartReading => ({ at: minutesIn(at), celsius: celsius(temperature) });
const run = [read(0, 40), read(20, 88), read(30, 91), read(60, 93), read(80, 89), read(90, 92), read(100, 95)];

describe('what readings on the part prove', () => {
  it('given a reading of just the temperature, then it was reached with it', () => {
    expect(provedTime([read(0, 80), read(10, 90), read(20, 90)], celsius(90), minutes(30))).toMatchObject({
      reachedAt: minutesIn(10),
      totalMinutes: 10,
    });
  });

  it('given readings allowed to be a year apart, then a year is proved; a minute more is not asked for', () => {
    const year = 366 * 24 * 60;
    expect(provedTime([read(0, 90), read(year, 90)], celsius(90), minutes(year))).toMatchObject({ totalMinutes: year });
    expect(provedTime([read(0, 90)], celsius(90), minutes(year + 1))).toMatchObject({ what: 'furthest apart' });
  });

  it('given 88 degC at 20 min and 91 at 30, then the hour at 90 begins with the reading at 30, not between', () => {
    expect(provedTime(run, celsius(90), minutes(30))).toEqual({
      reachedAt: minutesIn(30),
      totalMinutes: 40,
      longestMinutes: 30,
      provedUntil: minutesIn(100),
      unprovedMinutes: 0,
      highestCelsius: 95,
    });
  });

  it('given two warm readings further apart than allowed, then what lay between is told and not counted', () => {
    expect(provedTime(run, celsius(90), minutes(29))).toMatchObject({
      totalMinutes: 10,
      longestMinutes: 10,
      unprovedMinutes: 30,
    });
  });

  it('given warm stretches one after another, then they are one without a break', () => {
    expect(provedTime([read(0, 90), read(20, 90), read(50, 95)], celsius(90), minutes(30))).toMatchObject({
      totalMinutes: 50,
      longestMinutes: 50,
      provedUntil: minutesIn(50),
    });
  });

  it('given a single warm reading, then it was reached and nothing is proved yet', () => {
    expect(provedTime([read(0, 91)], celsius(90), minutes(30))).toEqual({
      reachedAt: minutesIn(0),
      totalMinutes: 0,
      longestMinutes: 0,
      provedUntil: undefined,
      unprovedMinutes: 0,
      highestCelsius: 91,
    });
    expect(provedTime([read(0, 91), read(0, 91)], celsius(90), minutes(30))).toMatchObject({ provedUntil: undefined });
  });

  it('given a part that never got there, then nothing is proved and its hottest is told', () => {
    expect(provedTime([read(0, 40), read(60, 89), read(90, 70)], celsius(90), minutes(60))).toMatchObject({
      reachedAt: undefined,
      totalMinutes: 0,
      unprovedMinutes: 0,
      highestCelsius: 89,
    });
  });

  it('given no readings, or readings out of order, then it is refused', () => {
    expect(provedTime([], celsius(90), minutes(30))).toEqual({
      failed: 'does-not-apply',
      what: 'part readings',
      given: 0,
      limit: 1,
    });
    expect(provedTime([read(10, 90), read(5, 90)], celsius(90), minutes(30))).toMatchObject({
      what: 'time of reading',
    });
    expect(provedTime([read(0, 2001)], celsius(90), minutes(30))).toMatchObject({ what: 'part reading' });
    expect(provedTime(run, celsius(2001), minutes(30))).toMatchObject({ what: 'least temperature' });
    expect(provedTime(run, celsius(90), minutes(-1))).toMatchObject({ what: 'furthest apart' });
    expect(piecesFromReadings([read(10, 90), read(5, 90)], 'at-least', minutes(1))).toMatchObject({
      what: 'time of reading',
    });
    expect(piecesFromReadings(run, 'at-least', minutes(-1))).toMatchObject({ what: 'furthest apart' });
  });

  it('given the same readings as pieces, then at-least takes the colder end, at-most the hotter, and a gap neither', () => {
    const three = [read(0, 80), read(10, 90), read(15, 85), read(60, 85)];
    const at = (caution: 'at-least' | 'at-most') =>
      answered(piecesFromReadings(three, caution, minutes(10))).map((piece) => piece.celsius);
    expect(at('at-least')).toEqual([80, 85, undefined]);
    expect(at('at-most')).toEqual([90, 90, undefined]);
    expect(piecesFromReadings([], 'at-least', minutes(10))).toEqual([]);
  });

  it('given an hour at 90 to 110 degC (common practice, no source), then the dose of the pieces is the proved time', () => {
    const hour: RateLaw = {
      kind: 'plain',
      minutes: minutes(60),
      range: { lowestCelsius: celsius(90), highestCelsius: celsius(110) },
    };
    const pieces = answered(piecesFromReadings(run, 'at-least', minutes(30)));
    const cured = dose({ law: hour, caution: 'at-least', withoutFigure: 'nothing' }, pieces);
    expect(cured.progress).toBeCloseTo(40 / 60, 12);
    expect(cured.doneAt).toBeUndefined();
  });
});
