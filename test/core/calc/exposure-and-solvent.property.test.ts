// What must hold for exposure, protection, salts and VOC, whatever the figures.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayAverage, milligramsFromPpm, mixtureIndex, ppmFromMilligrams } from '../../../core/calc/exposure.ts';
import { maximumUse } from '../../../core/calc/respirators.ts';
import { saltDensity } from '../../../core/calc/salts.ts';
import { exemptLiquid, pouredTogether, type VocLiquid, vocContent } from '../../../core/calc/voc.ts';
import {
  grams,
  gramsPerMole,
  hours,
  litres,
  microsiemensPerCentimetre,
  millilitres,
  partsPerMillion,
  percent,
  squareCentimetres,
} from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ppm = between(0, 5000).map(partsPerMillion);
const sample = fc.record({ ppm, hours: between(0, 4).map(hours) });

describe('given what people breathe', () => {
  test('when parts per million become mass and come back, then they are the same', () => {
    fc.assert(
      fc.property(ppm, between(20, 400).map(gramsPerMole), (share, molar) => {
        const back = answered(ppmFromMilligrams(answered(milligramsFromPpm(share, molar)), molar));
        expect(back).toBeCloseTo(share, 6);
      }),
    );
  });

  test('when a sample is added, then the day average never falls and the unsampled hours never grow', () => {
    fc.assert(
      fc.property(fc.array(sample, { maxLength: 5 }), sample, (day, more) => {
        const before = answered(dayAverage(day));
        const after = answered(dayAverage([...day, more]));
        expect(after.ppm).toBeGreaterThanOrEqual(before.ppm);
        expect(after.unsampledHours).toBeLessThanOrEqual(before.unsampledHours);
        expect(before.unsampledHours).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('when a sample is split in two, then the day average stays', () => {
    fc.assert(
      fc.property(sample, between(0, 1), (whole, cut) => {
        const halves = [
          { ppm: whole.ppm, hours: hours(whole.hours * cut) },
          { ppm: whole.ppm, hours: hours(whole.hours * (1 - cut)) },
        ];
        expect(answered(dayAverage(halves)).ppm).toBeCloseTo(answered(dayAverage([whole])).ppm, 8);
      }),
    );
  });

  test('when each is at its own limit, then the mixture index is their number', () => {
    fc.assert(
      fc.property(fc.array(between(0.005, 1000).map(partsPerMillion), { maxLength: 8 }), (limits) => {
        const index = answered(mixtureIndex(limits.map((limit) => ({ ppm: limit, limitPpm: limit }))));
        expect(index).toBeCloseTo(limits.length, 9);
      }),
    );
  });
});

describe('given a respirator', () => {
  test('when its use is limited, then never above the product, the IDLH, the printed cap or a tenth of the LEL', () => {
    const reached = { factor: 0, idlh: 0, 'tenth-of-lel': 0, 'printed-cap': 0 };
    fc.assert(
      fc.property(
        fc.constantFrom(5, 10, 25, 50, 1000, 10_000),
        between(0.005, 1000),
        between(1, 5000),
        between(1, 5000),
        between(0.8, 15),
        (factor, limit, idlh, highest, lel) => {
          const { ppm: most, cappedBy } = answered(
            maximumUse(factor, {
              limitPpm: partsPerMillion(limit),
              idlhPpm: partsPerMillion(idlh),
              highestUsePpm: partsPerMillion(highest),
              lelPercent: percent(lel),
            }),
          );
          reached[cappedBy] += 1;
          expect(most).toBe(Math.min(factor * limit, idlh, highest, lel * 1e4 * 0.1));
        },
      ),
      { numRuns: 500 },
    );
    for (const [cap, times] of Object.entries(reached)) expect(times, cap).toBeGreaterThan(0);
  });

  test('when neither an IDLH nor a printed cap is known, then there is no figure', () => {
    expect(maximumUse(10, { limitPpm: partsPerMillion(50) })).toEqual({ failed: 'no-figure', what: 'idlh' });
  });
});

describe('given a patch test for salts', () => {
  test('when the extract conducts more or the patch is smaller, then never less salt; the ISO mixture never below chloride', () => {
    fc.assert(
      fc.property(
        between(5, 50),
        between(2, 20),
        between(0, 10),
        between(0, 200),
        between(0.5, 1),
        (patch, water, before, more, part) => {
          const test = {
            patch: squareCentimetres(patch),
            water: millilitres(water),
            before: microsiemensPerCentimetre(before),
            after: microsiemensPerCentimetre(before + more),
          };
          const salt = answered(saltDensity(test, 'iso-mix'));
          const more2 = { ...test, after: microsiemensPerCentimetre(before + more + 1) };
          expect(answered(saltDensity(more2, 'iso-mix'))).toBeGreaterThan(salt);
          expect(
            answered(saltDensity({ ...test, patch: squareCentimetres(patch * part) }, 'iso-mix')),
          ).toBeGreaterThanOrEqual(salt);
          expect(answered(saltDensity(test, 'sodium-chloride'))).toBeLessThanOrEqual(salt);
        },
      ),
    );
  });
});

const liquid = fc.tuple(between(0.1, 100), between(0, 900), between(0, 0.4), between(0, 0.4)).map(
  ([volume, content, water, exempt]): VocLiquid => ({
    volume: litres(volume),
    voc: grams(volume * content),
    water: litres(volume * water),
    exempt: litres(volume * exempt),
  }),
);

describe('given a coating with VOC', () => {
  test('when it is thinned with exempt solvent, then its content against a limit stays and the actual one falls', () => {
    fc.assert(
      fc.property(liquid, between(0.01, 10).map(litres), (coating, acetone) => {
        const before = answered(vocContent(coating));
        const after = answered(vocContent(answered(pouredTogether([coating, answered(exemptLiquid(acetone))]))));
        expect(after.lessWaterAndExempt).toBeCloseTo(before.lessWaterAndExempt, 6);
        expect(after.actual).toBeLessThanOrEqual(before.actual);
      }),
    );
  });

  test('when contents are compared, then less water and exempt is never the lower', () => {
    fc.assert(
      fc.property(liquid, (coating) => {
        const { actual, lessWaterAndExempt } = answered(vocContent(coating));
        expect(lessWaterAndExempt).toBeGreaterThanOrEqual(actual);
      }),
    );
  });

  test('when it is nothing but exempt solvent, then it has no content less that', () => {
    expect(vocContent(answered(exemptLiquid(litres(3))))).toMatchObject({ failed: 'does-not-apply' });
  });
});
