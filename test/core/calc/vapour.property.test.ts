// What must hold for the air that thins vapour, whatever solvent and how much.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batchOvenFlow } from '../../../core/calc/oven-air.ts';
import { type SolventId, solventIds, solvents } from '../../../core/calc/solvents.ts';
import { airForSolvents, airToStayBelow, lowestLel, vapourOf, vapourPerLitre } from '../../../core/calc/vapour.ts';
import { flowAtTemperature, flowForExposure, flowForSolvents } from '../../../core/calc/ventilation.ts';
import { isFailed } from '../../../core/failed.ts';
import { celsius, cubicMetres, fraction, litres, minutes, partsPerMillion, percent } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const known = Object.keys(solvents).filter((id): id is SolventId => id !== 'methoxypropyl-acetate');
const solvent = fc.constantFrom(...known).map((id) => solvents[id]);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const volume = between(0.001, 100).map(litres);
const share = between(0.05, 0.5).map(fraction);
const load = fc.array(fc.record({ solvent, litres: volume }), { minLength: 1, maxLength: 5 });

describe('given any solvents of the table', () => {
  test('when the air is mixed in, then the vapour is at its share of the limit', () => {
    fc.assert(
      fc.property(between(0.001, 50).map(cubicMetres), between(0.5, 15).map(percent), share, (vapour, lel, part) => {
        const air = answered(airToStayBelow(vapour, lel, part));
        expect((100 * vapour) / (vapour + air)).toBeCloseTo(lel * part, 9);
      }),
    );
  });

  test('when ours stands beside the printed rule, then it is never less air, nor over 4 % more', () => {
    fc.assert(
      fc.property(between(0.001, 50).map(cubicMetres), between(0.5, 5).map(percent), (vapour, lel) => {
        const ours = answered(airToStayBelow(vapour, lel, fraction(0.25)));
        // 29 CFR 1910.94(c)(6)(ii): it takes the whole limit off, not a quarter of it.
        const rule = (4 * vapour * (100 - lel)) / lel;
        expect(ours).toBeGreaterThanOrEqual(rule);
        expect(ours).toBeLessThan(rule * 1.04);
      }),
    );
  });

  test('when a mixture is taken part by part, then it is the same as by Le Chatelier', () => {
    fc.assert(
      fc.property(load, share, (parts, part) => {
        const vapours = parts.map((one) => ({
          amount: answered(vapourOf(one)),
          limitPercent: answered(lowestLel(one.solvent)).percent,
        }));
        const total = cubicMetres(vapours.reduce((sum, one) => sum + one.amount, 0));
        const mixed = percent(total / vapours.reduce((sum, one) => sum + one.amount / one.limitPercent, 0));
        const together = answered(airToStayBelow(total, mixed, part));
        expect(answered(airForSolvents(parts, part)) / together).toBeCloseTo(1, 9);
      }),
    );
  });

  test('when the share is lower, the time shorter or the solvent more, then the flow is never less', () => {
    fc.assert(
      fc.property(load, share, between(1, 600), between(0.1, 1), (parts, part, over, less) => {
        const flow = answered(flowForSolvents(parts, minutes(over), part));
        const stricter = fraction(Math.max(0.01, part * less));
        const [first] = parts;
        if (first === undefined) throw new Error('no solvent');
        expect(answered(flowForSolvents(parts, minutes(over), stricter))).toBeGreaterThanOrEqual(flow * (1 - 1e-12));
        expect(answered(flowForSolvents(parts, minutes(over * less), part))).toBeGreaterThanOrEqual(flow * (1 - 1e-12));
        expect(answered(flowForSolvents([...parts, first], minutes(over), part))).toBeGreaterThan(flow);
      }),
    );
  });

  test('when the limit is for breathing at 1,000 ppm or less, then the flow is more than a quarter of the LEL needs', () => {
    fc.assert(
      fc.property(solvent, volume, between(1, 1000), between(1, 10), (one, much, limit, mixing) => {
        const over = minutes(60);
        const part = { solvent: one, litres: much, limitPpm: partsPerMillion(limit) };
        const breathing = answered(flowForExposure([part], over, mixing));
        expect(breathing).toBeGreaterThan(answered(flowForSolvents([part], over, fraction(0.25))));
        expect(breathing / answered(flowForExposure([part], over, 1))).toBeCloseTo(mixing, 9);
      }),
    );
  });

  test('when they are in an oven, then a hotter one never needs less, nor any less than the rule asks', () => {
    fc.assert(
      fc.property(load, between(20, 260), between(20, 260), (parts, one, other) => {
        const cooler = celsius(Math.min(one, other));
        const hotter = celsius(Math.max(one, other));
        expect(answered(batchOvenFlow(parts, hotter))).toBeGreaterThanOrEqual(answered(batchOvenFlow(parts, cooler)));
        const volumes = parts.reduce((sum, part) => sum + part.litres, 0);
        // 440 ft3/min a US gallon is 3.29 m3/min a litre (NFPA 86, from memory).
        expect(answered(batchOvenFlow(parts, cooler))).toBeGreaterThan(volumes * 3.29 * 60);
      }),
    );
  });

  test('when the air is hotter than 70 degF, then the fan must move more of it', () => {
    fc.assert(
      fc.property(load, between(22, 300).map(celsius), (parts, hot) => {
        const flow = answered(flowForSolvents(parts, minutes(60), fraction(0.25)));
        expect(answered(flowAtTemperature(flow, hot))).toBeGreaterThan(flow);
      }),
    );
  });
});

describe('given the table of solvents', () => {
  test('when any of them is asked, then it has a limit and a vapour volume, or is refused for want of a figure', () => {
    const without = solventIds.filter((id) => isFailed(lowestLel(solvents[id])));
    expect(without).toEqual(['methoxypropyl-acetate']);
    for (const one of Object.values(solvents)) expect(answered(vapourPerLitre(one))).toBeGreaterThan(0.1);
  });

  test('when table and density disagree, then the larger volume counts', () => {
    // Table G-11 has 44.0 ft3 a gallon for isopropyl alcohol, its density gives 42.2; for o-xylene 26.4 and 26.7.
    expect(answered(vapourPerLitre(solvents['isopropyl-alcohol'])) / 0.0074805195).toBeCloseTo(44.0, 6);
    expect(answered(vapourPerLitre(solvents.xylene)) / 0.0074805195).toBeCloseTo(26.75, 1);
  });

  test('when a solvent has no published limit, then its air is refused', () => {
    const part = { solvent: solvents['methoxypropyl-acetate'], litres: litres(1) };
    const refusal = { failed: 'no-figure', what: 'lower-explosive-limit' };
    expect(airForSolvents([part], fraction(0.25))).toEqual(refusal);
    expect(batchOvenFlow([part], celsius(90))).toEqual(refusal);
  });
});
