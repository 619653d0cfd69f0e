// Mixing there and back, and what a repair does, whatever was weighed.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { massFromVolume, mixedDensity, volumeFromMass } from '../../../core/calc/density.ts';
import { type MixRatio, ratioError, splitFill, splitMass } from '../../../core/calc/mixing.ts';
import { repair } from '../../../core/calc/mixing-repair.ts';
import { fraction, grams, kilogramsPerLitre, litres } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';
import { between, expectClose } from './drawn.ts';

const densities = fc.record({
  partAKilogramsPerLitre: between(0.7, 3).map(kilogramsPerLitre),
  partBKilogramsPerLitre: between(0.7, 3).map(kilogramsPerLitre),
});
const ratio = fc
  .record({
    basis: fc.constantFrom('weight', 'volume'),
    partsA: between(0.5, 100),
    partsB: between(0.5, 100),
    densities,
  })
  .map((drawn): MixRatio => drawn);
/** Far under, right, and far over: the draw must reach all three. */
const slipOfScale = fc.oneof(between(0.5, 0.9), between(0.97, 1.03), between(1.1, 2));
const tolerance = fc.record({ under: between(0.02, 0.2).map(fraction), over: between(0.02, 0.2).map(fraction) });

it('given any volume and density, then the mass leads back to it', () => {
  fc.assert(
    fc.property(between(0, 1e4), between(0.1, 25), (volume, density) => {
      const mass = answered(massFromVolume(litres(volume), kilogramsPerLitre(density)));
      expectClose(answered(volumeFromMass(mass, kilogramsPerLitre(density))), volume);
    }),
  );
});

it('given any ratio and total, then the parts weigh the total, stand in the ratio, and fill the vessel asked for', () => {
  fc.assert(
    fc.property(ratio, between(1, 1e5), (wanted, total) => {
      const weights = answered(splitMass(grams(total), wanted));
      expectClose(weights.partAGrams + weights.partBGrams, total);
      expectClose(answered(ratioError(wanted, weights)), 0);
      const filled = answered(splitFill(litres(total / 1000), wanted));
      expectClose(filled.partALitres + filled.partBLitres, total / 1000);
      expectClose(answered(ratioError(wanted, filled)), 0);
      const { densities: known } = wanted;
      if (known === undefined) throw new Error('drawn without densities');
      const density = answered(mixedDensity(weights.partAGrams, weights.partBGrams, known));
      const ends = [known.partAKilogramsPerLitre, known.partBKilogramsPerLitre];
      expect(density).toBeGreaterThanOrEqual(Math.min(...ends) * (1 - 1e-12));
      expect(density).toBeLessThanOrEqual(Math.max(...ends) * (1 + 1e-12));
    }),
  );
});

it('given any weighing, then what the repair adds brings it into tolerance, and the exact amount to the ratio', () => {
  const reached = { nothing: 0, 'part-a': 0, 'part-b': 0 };
  fc.assert(
    fc.property(ratio, tolerance, between(10, 5000), slipOfScale, (wanted, allowed, total, slip) => {
      const right = answered(splitMass(grams(total), wanted));
      const weighed = { ...right, partBGrams: grams(right.partBGrams * slip) };
      const found = answered(repair(wanted, allowed, weighed, litres(100)));
      reached[found.add] += 1;
      if (found.add === 'nothing') {
        const error = answered(ratioError(wanted, weighed));
        expect(error).toBeGreaterThanOrEqual(-allowed.under - 1e-9);
        expect(error).toBeLessThanOrEqual(allowed.over + 1e-9);
        return;
      }
      const after = (added: number) =>
        answered(
          ratioError(wanted, {
            partAGrams: grams(weighed.partAGrams + (found.add === 'part-a' ? added : 0)),
            partBGrams: grams(weighed.partBGrams + (found.add === 'part-b' ? added : 0)),
          }),
        );
      expectClose(after(found.exact.grams), 0);
      const least = after(found.least.grams);
      expectClose(least, found.add === 'part-a' ? allowed.over : -allowed.under);
      expect(found.least.grams).toBeLessThanOrEqual(found.exact.grams + 1e-9);
    }),
    { numRuns: 300 },
  );
  for (const count of Object.values(reached)) expect(count).toBeGreaterThan(5);
});
