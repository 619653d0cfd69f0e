// What the property tests draw and compare with.

import fc from 'fast-check';
import { expect } from 'vitest';

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export function expectClose(found: number, wanted: number): void {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(wanted)));
}
