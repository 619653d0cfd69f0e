// How much to mix, and how far a pot goes.

import { describe, expect, it } from 'vitest';
import { coatingNeed, dryFilmFromUse, type Losses, totalArea } from '../../../core/calc/coating-need.ts';
import { dryFilmFrom, theoreticalCoverage, wetFilmFor } from '../../../core/calc/film-build.ts';
import { mostWorthMixing, type Pace } from '../../../core/calc/pot-reach.ts';
import { fraction, litres, micrometres, minutes, squareMetres } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const half = { volumeSolids: fraction(0.5), thinnerShare: fraction(0) };
const thinned = { volumeSolids: fraction(0.5), thinnerShare: fraction(0.25) };
const lossless: Losses = {
  transferEfficiency: fraction(1),
  profileLitresPerSquareMetre: 0,
  hoseLitres: litres(0),
  gunLitres: litres(0),
  filterLitres: litres(0),
};
const sprayed: Losses = {
  transferEfficiency: fraction(0.5),
  profileLitresPerSquareMetre: 0.02,
  hoseLitres: litres(0.3),
  gunLitres: litres(0.15),
  filterLitres: litres(0.05),
};

describe('how much must be mixed', () => {
  it('given six railings of 0.8 m2 and two covers of 0.1 m2, then 5 m2', () => {
    const parts = [
      { count: 6, eachSquareMetres: squareMetres(0.8) },
      { count: 2, eachSquareMetres: squareMetres(0.1) },
    ];
    expect(totalArea(parts)).toBeCloseTo(5, 12);
    expect(totalArea([])).toBe(0);
  });

  it('given 10 m2 at 50 um of 50 % solids and no loss, then 1 L', () => {
    expect(answered(coatingNeed(squareMetres(10), micrometres(50), half, lossless)).mixedLitres).toBe(1);
  });

  it('given profile, overspray and gear, then each has its share and they add up', () => {
    // Film 1 L; profile 0.02 x 10 / 0.5; as much again past the part; 0.5 L of thinned coating in the gear.
    const need = answered(coatingNeed(squareMetres(10), micrometres(50), thinned, sprayed));
    expect(need.filmLitres).toBe(1);
    expect(need.profileLitres).toBeCloseTo(0.4, 12);
    expect(need.oversprayLitres).toBeCloseTo(1.4, 12);
    expect(need.gearLitres).toBeCloseTo(0.4, 12);
    expect(need.mixedLitres).toBeCloseTo(3.2, 12);
    expect(need.thinnerLitres).toBeCloseTo(0.8, 12);
    expect(need.squareMetres).toBe(10);
  });

  it('given what was used, then the film that went on is the same sum read backwards', () => {
    expect(dryFilmFromUse(litres(3.2), squareMetres(10), thinned, sprayed)).toBeCloseTo(50, 9);
    expect(dryFilmFromUse(litres(0.1), squareMetres(10), thinned, sprayed)).toBe(0);
  });

  it('given areas, films or losses that no job has, then each is refused by name', () => {
    const need = (area: number, film: number, losses: Losses) =>
      coatingNeed(squareMetres(area), micrometres(film), half, losses);
    expect(need(10_001, 50, lossless)).toMatchObject({ what: 'area' });
    expect(need(1, 0, lossless)).toMatchObject({ what: 'dry film' });
    expect(need(1, 100_001, lossless)).toMatchObject({ what: 'dry film' });
    expect(need(1, 50, { ...lossless, transferEfficiency: fraction(0) })).toMatchObject({
      what: 'transfer efficiency',
    });
    expect(need(1, 50, { ...lossless, profileLitresPerSquareMetre: -1 })).toMatchObject({ what: 'profile' });
    expect(need(1, 50, { ...lossless, profileLitresPerSquareMetre: 1.1 })).toMatchObject({ what: 'profile' });
    expect(need(1, 50, { ...lossless, hoseLitres: litres(1e7) })).toMatchObject({ what: 'hose' });
    expect(need(1, 50, { ...lossless, gunLitres: litres(1e7) })).toMatchObject({ what: 'gun' });
    expect(need(1, 50, { ...lossless, filterLitres: litres(1e7) })).toMatchObject({ what: 'filter' });
    expect(
      coatingNeed(squareMetres(1), micrometres(50), { ...half, volumeSolids: fraction(0) }, lossless),
    ).toMatchObject({ what: 'volume solids' });
    expect(need(0, 50, { ...lossless, transferEfficiency: fraction(0.01) })).toMatchObject({ mixedLitres: 0 });
    expect(totalArea([{ count: -1, eachSquareMetres: squareMetres(1) }])).toMatchObject({ what: 'count of parts' });
    expect(totalArea([{ count: 1, eachSquareMetres: squareMetres(10_001) }])).toMatchObject({ what: 'area of a part' });
    expect(totalArea([{ count: 2, eachSquareMetres: squareMetres(9000) }])).toMatchObject({ what: 'area' });
  });

  it('given no area, too much used, or a broken sheet, then no film is worked out from use', () => {
    expect(dryFilmFromUse(litres(1), squareMetres(0), half, lossless)).toMatchObject({ what: 'area' });
    expect(dryFilmFromUse(litres(1e7), squareMetres(1), half, lossless)).toMatchObject({ what: 'used' });
    const watery = { ...half, volumeSolids: fraction(0.009) };
    expect(dryFilmFromUse(litres(1), squareMetres(1), watery, lossless)).toMatchObject({ what: 'volume solids' });
    expect(dryFilmFromUse(litres(1), squareMetres(1), half, { ...lossless, gunLitres: litres(1e7) })).toMatchObject({
      what: 'gun',
    });
  });
});

describe('wet and dry film', () => {
  it('given films or solids at the ends, then the ends are answered and past them refused', () => {
    expect(theoreticalCoverage(micrometres(100_000), fraction(1))).toBe(0.01);
    expect(theoreticalCoverage(micrometres(0.01), fraction(0.01))).toBe(1000);
    expect(theoreticalCoverage(micrometres(0.009), fraction(1))).toMatchObject({ what: 'dry film' });
    expect(theoreticalCoverage(micrometres(50), fraction(0.009))).toMatchObject({ what: 'volume solids' });
    expect(dryFilmFrom(micrometres(-1), half)).toMatchObject({ what: 'wet film' });
    expect(dryFilmFrom(micrometres(10), { ...half, volumeSolids: fraction(0) })).toMatchObject({
      what: 'volume solids',
    });
    expect(wetFilmFor(micrometres(100_001), half)).toMatchObject({ what: 'dry film' });
    expect(wetFilmFor(micrometres(10), { ...half, volumeSolids: fraction(0) })).toMatchObject({
      what: 'volume solids',
    });
    expect(wetFilmFor(micrometres(10), { ...half, thinnerShare: fraction(1) })).toBe(40);
  });
});

/** A tenth of a square metre a minute, a quarter of a litre for each, half a litre in the gear (invented). */
const pace: Pace = { squareMetresPerMinute: 0.1, litresPerSquareMetre: 0.25, gearLitres: litres(0.5) };

describe('how far a pot goes before it dies', () => {
  it('given a pot past its life, then nothing is worth mixing', () => {
    expect(mostWorthMixing(minutes(-5), pace)).toBe(0);
    expect(mostWorthMixing(minutes(0), pace)).toBe(0);
  });

  it('given 60 usable minutes, then 2 L are the most worth mixing', () => {
    expect(mostWorthMixing(minutes(60), pace)).toBe(2);
  });

  it('given a year either way, then it is still a number; a minute more is no pot', () => {
    const year = 366 * 24 * 60;
    expect(mostWorthMixing(minutes(year), pace)).toBeGreaterThan(0);
    expect(mostWorthMixing(minutes(-year), pace)).toBe(0);
    expect(mostWorthMixing(minutes(year + 1), pace)).toMatchObject({ what: 'usable minutes', highest: year });
    expect(mostWorthMixing(minutes(-year - 1), pace)).toMatchObject({ what: 'usable minutes', lowest: -year });
  });

  it('given a pace that no crew has, then it is refused by name', () => {
    const most = (odd: Partial<Pace>) => mostWorthMixing(minutes(1), { ...pace, ...odd });
    expect(most({ squareMetresPerMinute: 0 })).toMatchObject({ what: 'square metres a minute' });
    expect(most({ litresPerSquareMetre: 0 })).toMatchObject({ what: 'litres a square metre' });
    expect(most({ litresPerSquareMetre: 101 })).toMatchObject({ what: 'litres a square metre' });
    expect(most({ gearLitres: litres(1e7) })).toMatchObject({ what: 'gear' });
    expect(mostWorthMixing(minutes(Number.MAX_VALUE), pace)).toMatchObject({ what: 'usable minutes' });
  });
});
