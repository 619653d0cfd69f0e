// Purging there and back, and oxygen that only ever falls as inert gas comes in.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { oxygenAfterPurge, purgeTime, purgeVolume } from '../../../core/calc/gas.ts';
import { litres, litresPerMinute, percent } from '../../../core/units.ts';
import { answered } from '../../standards/published-case.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const purge = fc.record({
  headspace: between(0.01, 1000).map(litres),
  from: between(15, 21).map(percent),
  gasOxygen: between(0, 0.5).map(percent),
});
const target = between(0.6, 15).map(percent);

describe('given a headspace over Part A', () => {
  test('when it is purged to a target, then that is the oxygen left', () => {
    fc.assert(
      fc.property(purge, target, (can, wanted) => {
        const gas = answered(purgeVolume(can, wanted));
        expect(answered(oxygenAfterPurge(can, gas))).toBeCloseTo(wanted, 6);
      }),
    );
  });

  test('when more gas goes in, then never more oxygen is left, nor less than the gas brings', () => {
    fc.assert(
      fc.property(purge, between(0, 5000), between(0, 5000), (can, one, other) => {
        const less = answered(oxygenAfterPurge(can, litres(Math.min(one, other))));
        const more = answered(oxygenAfterPurge(can, litres(Math.max(one, other))));
        expect(more).toBeLessThanOrEqual(less);
        expect(more).toBeGreaterThanOrEqual(can.gasOxygen);
        expect(answered(oxygenAfterPurge(can, litres(0)))).toBeCloseTo(can.from, 12);
      }),
    );
  });

  test('when it is purged in two goes, then the gas adds up', () => {
    fc.assert(
      fc.property(purge, between(1, 7).map(percent), between(7, 15).map(percent), (can, end, middle) => {
        const first = answered(purgeVolume(can, middle));
        const second = answered(purgeVolume({ ...can, from: middle }, end));
        expect((first + second) / answered(purgeVolume(can, end))).toBeCloseTo(1, 9);
      }),
    );
  });

  test('when the target is met already, then no gas is needed; at or below what the gas holds, never', () => {
    fc.assert(
      fc.property(purge, (can) => {
        expect(purgeVolume(can, can.from)).toBe(0);
        expect(purgeVolume(can, percent(can.from + 1))).toBe(0);
        expect(purgeVolume(can, can.gasOxygen)).toMatchObject({ failed: 'never-reached', limit: can.gasOxygen });
      }),
    );
  });

  test('when the flow doubles, then the time halves', () => {
    fc.assert(
      fc.property(purge, target, between(0.5, 50), (can, wanted, flow) => {
        const slow = answered(purgeTime(can, wanted, litresPerMinute(flow)));
        expect(slow).toBeCloseTo(2 * answered(purgeTime(can, wanted, litresPerMinute(2 * flow))), 6);
      }),
    );
  });
});
