// Dry films by the rule that the sheet names: one of its own for a thin film, ISO 19840 (the four rules as a Dutch industry
// association quotes NEN-ISO 19840:2005; the table of readings from memory), SSPC-PA 2 (training slides of its publisher).

import { describe, expect, it } from 'vitest';
import { judgeFilm } from '../../../core/part/film-acceptance.ts';
import { FilmRule } from '../../../core/products/sheet-part.ts';
import { micrometres, micrometresFromMils, squareMetres } from '../../../core/units.ts';

const own = FilmRule.parse({
  ...{ rule: 'own', leastMicrometres: 8, mostMicrometres: 20, leastReadings: 3, judged: 'each-reading' },
  ...{ gauge: { fixedMicrometres: 1, share: 0.03 }, source: 'invented for the test' },
});
const nominal = (nominalMicrometres: number) =>
  FilmRule.parse({
    ...{ rule: 'iso-19840', nominalMicrometres, mostMicrometres: 600, profile: 'medium' },
    source: 'check values 7.2',
  });
const pa2 = FilmRule.parse({
  rule: 'pa-2',
  leastMicrometres: micrometresFromMils(8),
  mostMicrometres: micrometresFromMils(12),
  level: 3,
  source: 'check values 7.1',
});
const um = (...films: readonly number[]) => films.map(micrometres);
const area = squareMetres(2);

describe('a thin film by the sheet’s own rule (invented)', () => {
  it.each([
    [[12, 14, 13], 'within'],
    [[12, 14], 'too-few'],
    // 8.5 less the gauge's 1 um may lie below 8.
    [[8.5, 12, 13], 'cannot-tell'],
    [[6, 12, 13], 'outside'],
    [[12, 13, 21.5], 'outside'],
  ])('given %j um, then %s', (films, is) => {
    expect(judgeFilm(um(...films), own, undefined).is).toBe(is);
  });
});

describe('ISO 19840', () => {
  const readings = [210, 205, 195, 220, 230, 215, 208, 212, 199, 221];
  // Read on smooth plate, so that the medium profile's 25 um come off each.
  const read = readings.map((film) => film + 25);

  it('given two thin readings of ten, then it fails: less than 20 % is taken at its word', () => {
    const finding = judgeFilm(um(...read), nominal(200), area);
    expect(finding).toMatchObject({ is: 'outside', rule: { by: 'iso-19840' }, findings: [{ what: 'too-many-thin' }] });
  });

  it('given none thin, then within; a tenth reading missing, too few for 2 m2', () => {
    const good = read.map((film) => Math.max(film, 226));
    expect(judgeFilm(um(...good), nominal(200), area)).toEqual({ is: 'within', rule: { by: 'iso-19840' } });
    expect(judgeFilm(um(...good.slice(1)), nominal(200), area)).toMatchObject({ is: 'too-few', given: 9, needed: 10 });
  });

  it('given a reading of 158 after the profile, then it is below 160', () => {
    const finding = judgeFilm(um(...read.slice(0, 9), 158 + 25), nominal(200), area);
    expect(finding).toMatchObject({ is: 'outside', findings: [{ what: 'reading-below', limit: 160 }, {}] });
  });

  it('given nobody said the area, then it says that; given a nominal film below 40 um, then that it does not apply', () => {
    expect(judgeFilm(um(...read), nominal(200), undefined).is).toBe('area-unknown');
    expect(judgeFilm(um(...read), nominal(39), area).is).toBe('does-not-apply');
  });
});

describe('SSPC-PA 2, level 3, 8 to 12 mil', () => {
  const spots = (...mils: readonly number[]) => mils.flatMap((mil) => [mil, mil, mil]).map(micrometresFromMils);

  it('given spots of 6.5, 9, 8.2, 8.0 and 8.4 mil, then within', () => {
    expect(judgeFilm(spots(6.5, 9, 8.2, 8, 8.4), pa2, area)).toEqual({ is: 'within', rule: { by: 'pa-2', level: 3 } });
  });

  it('given spots of 6.3, 9.5, 9, 9 and 9 mil, then outside: 6.3 is below 6.4', () => {
    expect(judgeFilm(spots(6.3, 9.5, 9, 9, 9), pa2, area)).toMatchObject({
      is: 'outside',
      findings: [{ what: 'spot-below', limit: expect.closeTo(6.4 * 25.4, 6) }],
    });
  });

  it('given 14 readings, then too few for five spots of three', () => {
    expect(judgeFilm(spots(9, 9, 9, 9, 9).slice(1), pa2, area)).toMatchObject({ is: 'too-few', given: 14, needed: 15 });
  });
});

describe('no rule', () => {
  it('given a sheet without one, then nothing is accepted', () => {
    expect(judgeFilm(um(12), undefined, area)).toEqual({ is: 'no-rule' });
  });
});
