// Film and coverage: there and back, and which way each rule leans.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { coatingNeed, dryFilmFromUse } from '../../../core/calc/coating-need.ts';
import { dryFilmFrom, wetFilmFor } from '../../../core/calc/film-build.ts';
import { filmCount } from '../../../core/calc/film-count.ts';
import { judgeByJobRule } from '../../../core/calc/film-job-rule.ts';
import { judgeNominal } from '../../../core/calc/film-nominal.ts';
import { judgeArea } from '../../../core/calc/film-spots.ts';
import { mostWorthMixing } from '../../../core/calc/pot-reach.ts';
import {
  fraction,
  litres,
  micrometres,
  minutes,
  squareMetres,
  squareMetresFromSquareFeet,
} from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';
import { between, expectClose } from './drawn.ts';

it('given any film, solids and thinner, then wet leads back to dry, and thinner only ever adds wet film', () => {
  fc.assert(
    fc.property(between(1, 2000), between(0.05, 1), between(0, 0.5), (film, solids, thinner) => {
      const make = { volumeSolids: fraction(solids), thinnerShare: fraction(thinner) };
      const wet = answered(wetFilmFor(micrometres(film), make));
      expectClose(answered(dryFilmFrom(wet, make)), film);
      const plain = answered(wetFilmFor(micrometres(film), { ...make, thinnerShare: fraction(0) }));
      expect(wet).toBeGreaterThanOrEqual(plain);
      expect(plain).toBeGreaterThanOrEqual(film * (1 - 1e-12));
    }),
  );
});

it('given any plan, then what it mixes builds the film that was wanted', () => {
  const losses = fc.record({
    transferEfficiency: between(0.1, 1).map(fraction),
    profileLitresPerSquareMetre: between(0, 0.1),
    hoseLitres: between(0, 1).map(litres),
    gunLitres: between(0, 1).map(litres),
    filterLitres: between(0, 1).map(litres),
  });
  fc.assert(
    fc.property(
      between(0.1, 500),
      between(5, 500),
      between(0.1, 1),
      between(0, 0.5),
      losses,
      (area, film, solids, thinner, lost) => {
        const make = { volumeSolids: fraction(solids), thinnerShare: fraction(thinner) };
        const need = answered(coatingNeed(squareMetres(area), micrometres(film), make, lost));
        expectClose(need.filmLitres + need.profileLitres + need.oversprayLitres + need.gearLitres, need.mixedLitres);
        const built = answered(dryFilmFromUse(need.mixedLitres, squareMetres(area), make, lost));
        expect(Math.abs(built - film)).toBeLessThan(1e-6 * film + 1e-6);
      },
    ),
  );
});

it('given any usable minutes, then the most worth mixing is what they can apply and what the gear holds', () => {
  const pace = fc.record({
    squareMetresPerMinute: between(0.01, 5),
    litresPerSquareMetre: between(0.01, 2),
    gearLitres: between(0, 2).map(litres),
  });
  fc.assert(
    fc.property(between(1, 600), pace, (usable, at) => {
      const most = answered(mostWorthMixing(minutes(usable), at));
      const lasting = (most - at.gearLitres) / at.litresPerSquareMetre / at.squareMetresPerMinute;
      expect(Math.abs(lasting - usable)).toBeLessThan(1e-6 * usable);
    }),
  );
});

it('given any structure, then a larger one never needs fewer areas', () => {
  fc.assert(
    fc.property(between(0.1, 50_000), between(0, 5000), (feet, more) => {
      const small = answered(filmCount(squareMetresFromSquareFeet(feet)));
      const large = answered(filmCount(squareMetresFromSquareFeet(feet + more)));
      expect(large.areas).toBeGreaterThanOrEqual(small.areas);
      expect(small.gaugeReadings).toBe(15 * small.areas);
    }),
  );
});

it('given any five spots, then what a strict level accepts every looser one accepts', () => {
  const range = { leastMicrometres: micrometres(200), mostMicrometres: micrometres(300) };
  let acceptedByOne = 0;
  let splitByLevel = 0;
  fc.assert(
    fc.property(
      fc.array(between(150, 380).map(micrometres), { minLength: 5, maxLength: 8 }),
      fc.boolean(),
      (drawn, inside) => {
        const spots = inside ? drawn.map((spot) => micrometres(210 + (spot - 150) / 3)) : drawn;
        const verdicts = ([1, 2, 3, 4, 5] as const).map((level) => answered(judgeArea(spots, range, level)).accepted);
        if (verdicts[0] === true) acceptedByOne += 1;
        if (verdicts.includes(true) && verdicts.includes(false)) splitByLevel += 1;
        verdicts.reduce((stricter, looser) => {
          expect(stricter && !looser).toBe(false);
          return looser;
        });
      },
    ),
    { numRuns: 300 },
  );
  expect(acceptedByOne).toBeGreaterThan(10);
  expect(splitByLevel).toBeGreaterThan(10);
});

it('given any corrected readings, then one more micrometre on each never turns acceptance into rejection', () => {
  const rule = { nominalMicrometres: micrometres(100), mostMicrometres: micrometres(1000) };
  let accepted = 0;
  fc.assert(
    fc.property(
      fc.array(between(78, 160).map(micrometres), { minLength: 5, maxLength: 12 }),
      between(0, 20),
      (readings, more) => {
        if (!answered(judgeNominal(readings, squareMetres(1), rule)).accepted) return;
        accepted += 1;
        const thicker = readings.map((reading) => micrometres(reading + more));
        expect(answered(judgeNominal(thicker, squareMetres(1), rule)).accepted).toBe(true);
      },
    ),
    { numRuns: 300 },
  );
  expect(accepted).toBeGreaterThan(10);
});

it('given any thin film, then a worse gauge never says within or outside where a better one could not', () => {
  const rule = {
    leastMicrometres: micrometres(8),
    mostMicrometres: micrometres(16),
    leastReadings: 1,
    judged: 'each-reading',
  } as const;
  const seen = new Set<string>();
  fc.assert(
    fc.property(
      fc.array(between(5, 19).map(micrometres), { minLength: 1, maxLength: 3 }),
      between(0, 2),
      between(0, 2),
      (readings, error, more) => {
        const gauge = (off: number) => ({ fixedMicrometres: micrometres(off), share: fraction(0) });
        const better = answered(judgeByJobRule(readings, rule, gauge(error))).verdict;
        const worse = answered(judgeByJobRule(readings, rule, gauge(error + more))).verdict;
        seen.add(worse);
        if (worse === 'within' || worse === 'outside') expect(better).toBe(worse);
      },
    ),
  );
  expect([...seen].sort()).toEqual(['cannot-tell', 'outside', 'within']);
});
