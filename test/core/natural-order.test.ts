import { describe, expect, test } from 'vitest';
import { inNaturalOrder } from '../../core/natural-order.ts';

describe('names in a list', () => {
  test('numbers by their size, whatever stands around them', () => {
    expect(['plate-10', 'plate-2', 'plate-1', 'imp-12-b', 'imp-2-c', 'imp-12-a'].sort(inNaturalOrder)).toEqual([
      'imp-2-c',
      'imp-12-a',
      'imp-12-b',
      'plate-1',
      'plate-2',
      'plate-10',
    ]);
    expect(['can/10', 'can/9', 'batch/11'].sort(inNaturalOrder)).toEqual(['batch/11', 'can/9', 'can/10']);
  });

  test('two names that read alike still have one order', () => {
    expect(['plate-01', 'plate-1'].sort(inNaturalOrder)).toEqual(['plate-1', 'plate-01'].sort(inNaturalOrder));
    expect(inNaturalOrder('plate-1', 'plate-1')).toBe(0);
  });
});
