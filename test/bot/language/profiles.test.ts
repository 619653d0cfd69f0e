// Figures as each country reads them: decimal sign, clock, dates, units' names, lists. Instants are in UTC; a mil is 25.4 µm.

import { describe, expect, it } from 'vitest';
import { readFlags } from '../../../bot/config/config.ts';
import { figuresFor } from '../../../bot/language/figures.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import {
  celsius,
  epochMs,
  grams,
  gramsPerLitre,
  litres,
  micrometres,
  millimetres,
  minutes,
} from '../../../core/units.ts';
import { shopAtTen } from './shop-at-ten.ts';

/** A Monday. */
const now = epochMs(Date.UTC(2026, 2, 2, 8));
const told = (language: string, units: UnitSystem) =>
  figuresFor({ profile: shipped.profileOf(language, units), units, zone: 'UTC', now });
const at = (...when: readonly [month: number, day: number, hour: number, minute: number, year?: number]) =>
  epochMs(Date.UTC(when[4] ?? 2026, when[0] - 1, when[1], when[2], when[3]));

describe('a locale', () => {
  it.each([
    ['en', 'metric', 'en-GB'],
    ['en', 'us', 'en-US'],
    ['es', 'metric', 'es-ES'],
    ['es', 'us', 'es-US'],
    ['es-MX', 'us', 'es-MX'],
    ['es-US', 'metric', 'es-US'],
    ['de', 'metric', 'en-GB'],
  ] as const)('given %s and %s units, then it is %s', (language, units, locale) => {
    expect(shipped.profileOf(language, units).locale).toBe(locale);
  });

  it.each([...shipped.languages.keys()])(
    'given %s, then a flag and a line may name it, in whatever letters',
    (language) => {
      expect(readFlags(['--lang', language.toUpperCase()])).toMatchObject({ lang: language });
      expect(readLine(`set language ${language.toLowerCase()}`, shopAtTen)).toMatchObject({
        command: { setting: { name: 'language', language } },
      });
    },
  );
});

describe('figures', () => {
  it.each([
    ['en', 'metric', ['09:05', '13:10', 'Tue 3 Mar 10:15', 'Mon 30 Mar 10:15', 'Fri 1 Jan 2027 07:00']],
    ['en', 'us', ['9:05 AM', '1:10 PM', 'Tue Mar 3 10:15 AM', 'Mon Mar 30 10:15 AM', 'Fri Jan 1 2027 7:00 AM']],
    ['es', 'metric', ['9:05', '13:10', 'martes 3, 10:15', '30 de marzo, 10:15', '1 de enero de 2027, 7:00']],
    [
      'es',
      'us',
      ['9:05 a.m.', '1:10 p.m.', 'martes 3, 10:15 a.m.', '30 de marzo, 10:15 a.m.', '1 de enero de 2027, 7:00 a.m.'],
    ],
    ['es-MX', 'metric', ['9:05', '13:10', 'martes 3, 10:15', '30 de marzo, 10:15', '1 de enero de 2027, 7:00']],
  ] as const)('given %s and %s, then clock and dates are its own', (language, units, shown) => {
    const times = [at(3, 2, 9, 5), at(3, 2, 13, 10), at(3, 3, 10, 15), at(3, 30, 10, 15), at(1, 1, 7, 0, 2027)];
    expect(times.map(told(language, units).timeDown)).toEqual(shown);
  });

  it.each([
    ['es', 'metric', ['2384 g', '50 kg', '0,5 °C', '60 µm', '12,7 mm']],
    ['es-MX', 'metric', ['2384 g', '50 kg', '0.5 °C', '60 µm', '12.7 mm']],
    ['es', 'us', ['5 lb 4.1 oz (2384 g)', '110 lb 3.7 oz (50 kg)', '33 °F', '2.36 mils', '1/2 pulg']],
    ['en', 'us', ['5 lb 4.1 oz (2384 g)', '110 lb 3.7 oz (50 kg)', '33 °F', '2.36 mils', '1/2 in']],
  ] as const)('given %s and %s, then decimals and units are its own', (language, units, shown) => {
    const figures = told(language, units);
    expect([
      figures.mass(grams(2384)),
      figures.mass(grams(50_000)),
      figures.temperature(celsius(0.5)),
      figures.film(micrometres(60)),
      figures.wall(millimetres(12.7)),
    ]).toEqual(shown);
  });

  it('given eight pounds sharp, then no ounce is told', () => {
    expect(told('es', 'us').mass(grams(8 * 453.59237))).toBe('8 lb (3629 g)');
    expect(told('en', 'us').mass(grams(0))).toBe('0 oz (0 g)');
  });

  it.each([
    [12.7, '1/2 in', 'half an inch of plate'],
    [3.175, '1/8 in', 'an eighth'],
    [31.75, '1 1/4 in', 'more than an inch'],
    [3, '3 mm', 'plate of three millimetres'],
    [3.048, '0.12 in', 'a gauge reading'],
  ])('given a wall of %s mm, then a US reader is told %s: %s', (wall, shown) => {
    expect(told('en', 'us').wall(millimetres(wall))).toBe(shown);
  });

  it.each([
    [0.12, '4.1 fl oz'],
    [1.03, '0.27 gal'],
  ])('given %s L, then a US reader is told %s', (volume, shown) => {
    expect(told('es', 'us').volume(litres(volume))).toBe(shown);
  });

  it('given less than nothing, then there is one sign for it, and nothing has none', () => {
    const figures = told('es', 'metric');
    expect([
      figures.temperature(celsius(-20)),
      figures.signedPercent(-0.25),
      figures.signedPercent(0),
      figures.signedPercent(4.08),
    ]).toEqual(['−20 °C', '−0,25 %', '0 %', '+4,08 %']);
  });

  it.each([
    ['es', 'Ane, Jon y Pedro', 'Ane e Iker'],
    ['en', 'Ane, Jon, Pedro', 'Ane, Iker'],
  ])('given people in %s, then they are told as a list', (language, three, two) => {
    const figures = told(language, 'metric');
    expect([figures.list(['Ane', 'Jon', 'Pedro']), figures.list(['Ane', 'Iker'])]).toEqual([three, two]);
  });
});

describe('what a litre holds', () => {
  // 1 US gallon is 3.785411784 L, 1 lb 453.59237 g (NIST SP 811): 420 g/L are 3.5051 lb/gal; never told as less.
  it.each([
    ['es-ES', 'metric', '420 g/L'],
    ['es-US', 'us', '3.51 lb/gal'],
    ['en', 'us', '3.51 lb/gal'],
  ] as const)('given 420 g/L in %s with %s units, then it is told as "%s"', (language, units, content) => {
    expect(told(language, units).contentUp(gramsPerLitre(420))).toBe(content);
  });
});

describe('a duration', () => {
  it.each([
    [59, '59 min'],
    [60, '1 h'],
    [77, '1 h 17 min'],
    [107, '1 h 47 min'],
    [1440, '24 h'],
  ])('given %s minutes, then every card says %s: from an hour on in hours', (length, said) => {
    for (const { minutesUp, minutesDown } of [told('en', 'metric'), told('es-US', 'us')])
      expect([minutesUp(minutes(length)), minutesDown(minutes(length))]).toEqual([said, said]);
  });
});
