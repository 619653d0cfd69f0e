import { describe, expect, test } from 'vitest';
import { type Step, stepTo } from '../../../bot/messages/difference.ts';

const wish = { face: 'new', live: true };

describe('the difference between a wish and what is shown', () => {
  test.each<[string, Parameters<typeof stepTo>, Step]>([
    ['nothing is there: it is posted', [wish, undefined], 'post'],
    ['nothing is there of what is finished: it is posted all the same', [{ ...wish, live: false }, undefined], 'post'],
    ['it looks otherwise: it is changed', [wish, { face: 'old', open: true }], 'change'],
    ['it looks the same: nothing', [wish, { face: 'new', open: true }], 'nothing'],
    [
      'it is finished: it is changed a last time',
      [
        { ...wish, live: false },
        { face: 'new', open: true },
      ],
      'change',
    ],
    ['it lost its message and goes on: it gets another', [wish, { face: 'old', open: false }], 'post'],
    [
      'it is closed and finished: nothing',
      [
        { ...wish, live: false },
        { face: 'old', open: false },
      ],
      'nothing',
    ],
  ])('given %s', (_, [wished, shown], step) => {
    expect(stepTo(wished, shown)).toBe(step);
  });
});
