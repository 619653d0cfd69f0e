// What temperature makes it, and up to which it lasts.

import { describe, expect, it } from 'vitest';
import { temperatureToFinish, temperatureToLast } from '../../../core/calc/dose-inverse.ts';
import type { RateLaw } from '../../../core/calc/rate-law.ts';
import { celsius, kilojoulesPerMole, minutes } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';
import { stirLaw } from './demo-stir.ts';

const range = { lowestCelsius: celsius(10), highestCelsius: celsius(35) };
const halving: RateLaw = {
  kind: 'q10',
  minutes: minutes(240),
  atCelsius: celsius(20),
  factorPerTenDegrees: 2,
  range,
};
const plain: RateLaw = { kind: 'plain', minutes: minutes(30) };

describe('the temperature that finishes in time', () => {
  it('given the demo stir half done and 51 minutes left (common practice, no source), then from 24 degC', () => {
    expect(temperatureToFinish(stirLaw, 0.5, minutes(51))).toEqual({ needed: 'from', celsius: 24 });
  });

  it('given more time than the slowest takes, then from the bottom of the table and no colder', () => {
    expect(temperatureToFinish(stirLaw, 0, minutes(300))).toEqual({ needed: 'from', celsius: 15 });
    expect(temperatureToFinish(stirLaw, 0, minutes(120))).toEqual({ needed: 'from', celsius: 15 });
  });

  it('given just the time of the fastest, then from the top; given less, then never, with what it would take', () => {
    expect(temperatureToFinish(stirLaw, 0, minutes(90))).toEqual({ needed: 'from', celsius: 30 });
    expect(temperatureToFinish(stirLaw, 0.5, minutes(44))).toEqual({
      failed: 'never-reached',
      what: 'minutes available',
      given: 44,
      limit: 45,
    });
  });

  it('given a table that slows again when hot, then only the hot end that finishes counts', () => {
    const odd: RateLaw = {
      kind: 'table',
      points: [
        { celsius: celsius(10), minutes: minutes(100) },
        { celsius: celsius(20), minutes: minutes(200) },
        { celsius: celsius(30), minutes: minutes(100) },
      ],
    };
    expect(temperatureToFinish(odd, 0, minutes(150))).toEqual({ needed: 'from', celsius: 25 });
    expect(temperatureToLast(odd, 0, minutes(150))).toMatchObject({ failed: 'never-reached' });
  });

  it('given a law by factor, then 4 h at 20 degC become 2 h from 30', () => {
    expect(temperatureToFinish(halving, 0, minutes(120))).toEqual({ needed: 'from', celsius: 30 });
  });

  it('given a law by energy, then the temperature takes exactly the time', () => {
    const stated: RateLaw = {
      kind: 'arrhenius',
      minutes: minutes(240),
      atCelsius: celsius(20),
      activation: kilojoulesPerMole(60),
      range,
    };
    const found = answered(temperatureToFinish(stated, 0, minutes(120)));
    // 1/T = 1/293.15 - R ln 2 / 60000, by hand: 301.644 K.
    expect(found.needed === 'from' && found.celsius).toBeCloseTo(28.49, 2);
  });

  it('given a plain duration without a range, then any temperature or none', () => {
    expect(temperatureToFinish(plain, 0, minutes(30))).toEqual({ needed: 'any' });
    expect(temperatureToFinish(plain, 0, minutes(29))).toMatchObject({ failed: 'never-reached', limit: 30 });
    expect(temperatureToLast(plain, 0, minutes(30))).toEqual({ needed: 'any' });
    expect(temperatureToLast(plain, 0, minutes(31))).toMatchObject({ failed: 'never-reached', limit: 30 });
  });

  it('given a plain duration with a range, then the whole range', () => {
    expect(temperatureToFinish({ ...plain, range }, 0, minutes(30))).toEqual({ needed: 'from', celsius: 10 });
    expect(temperatureToLast({ ...plain, range }, 0, minutes(30))).toEqual({ needed: 'up-to', celsius: 35 });
  });

  it('given a clock that is full or no minutes, then nothing is to be asked', () => {
    expect(temperatureToFinish(stirLaw, 1, minutes(10))).toMatchObject({ failed: 'out-of-range', what: 'progress' });
    expect(temperatureToLast(stirLaw, 0, minutes(0))).toMatchObject({ what: 'minutes available', given: 0 });
    expect(temperatureToLast(stirLaw, -0.1, minutes(10))).toMatchObject({ what: 'progress' });
    expect(temperatureToFinish(stirLaw, 0, minutes(366 * 24 * 60 + 1))).toMatchObject({ what: 'minutes available' });
    expect(temperatureToFinish(stirLaw, 0, minutes(366 * 24 * 60))).toMatchObject({ needed: 'from', celsius: 15 });
  });

  it('given a table without points, then there is no figure', () => {
    expect(temperatureToFinish({ kind: 'table', points: [] }, 0, minutes(10))).toEqual({
      failed: 'no-figure',
      what: 'temperature range',
    });
  });
});

describe('the temperature up to which it lasts', () => {
  it('given a pot life of 4 h at 20 degC that halves every 10 degC, then 2 h last up to 30', () => {
    expect(temperatureToLast(halving, 0, minutes(120))).toEqual({ needed: 'up-to', celsius: 30 });
  });

  it('given half of it used, then 1 h lasts up to 30', () => {
    expect(temperatureToLast(halving, 0.5, minutes(60))).toEqual({ needed: 'up-to', celsius: 30 });
  });

  it('given a table, then the straight line says where', () => {
    expect(temperatureToLast(stirLaw, 0, minutes(102))).toEqual({ needed: 'up-to', celsius: 24 });
  });

  it('given less than the fastest, then the whole range; given more than the slowest, then never', () => {
    expect(temperatureToLast(stirLaw, 0, minutes(90))).toEqual({ needed: 'up-to', celsius: 30 });
    expect(temperatureToLast(stirLaw, 0, minutes(120))).toEqual({ needed: 'up-to', celsius: 15 });
    expect(temperatureToLast(stirLaw, 0.5, minutes(61))).toEqual({
      failed: 'never-reached',
      what: 'minutes available',
      given: 61,
      limit: 60,
    });
  });
});
