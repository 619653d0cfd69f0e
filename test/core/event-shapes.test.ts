// Bodies written in an older shape, read in today's.

import { describe, expect, it } from 'vitest';
import { inShapeOfToday, shapeOf, type Upcasts } from '../../core/event-shapes.ts';
import { EventBody } from '../../core/history.ts';
import { celsius, epochMs } from '../../core/units.ts';

/** As if readings had once been written in Fahrenheit, and before that under another name. */
const steps: Upcasts = {
  AirRead: [
    ({ degrees, ...body }) => ({ ...body, fahrenheit: degrees }),
    ({ fahrenheit, ...body }) => ({ ...body, celsius: ((Number(fahrenheit) - 32) * 5) / 9 }),
  ],
};

const today = { type: 'AirRead' as const, celsius: celsius(25) };

describe('an event of an older shape', () => {
  it('given a reading of the first shape, then every step is taken and the schema of today reads it', () => {
    const body = inShapeOfToday({ type: 'AirRead', degrees: 77 }, 1, steps);
    expect(EventBody.parse(body)).toEqual(today);
  });

  it('given a reading of the second shape, then only what is left of the way is gone', () => {
    expect(inShapeOfToday({ type: 'AirRead', fahrenheit: 77 }, 2, steps)).toEqual(today);
  });

  it('given a correction of that time, then the fact within it is brought along', () => {
    const to = { kind: 'corrected', fact: { type: 'AirRead', degrees: 77 }, happenedAt: 0 };
    const body = inShapeOfToday({ type: 'Amended', amends: 1, to, why: 'misread' }, 1, steps);
    expect(body).toMatchObject({ amends: 1, to: { kind: 'corrected', fact: today } });
    expect(EventBody.safeParse(body).success).toBe(true);
  });

  it('given something undone, then there is no fact to bring along', () => {
    const undone = { type: 'Amended', amends: 1, to: { kind: 'undone' }, why: '' };
    expect(inShapeOfToday(undone, 1, steps)).toEqual(undone);
  });

  it('given a shape of later years, then it is not guessed at', () => {
    expect(() => inShapeOfToday(today, 4, steps)).toThrow('AirRead is of shape 4, this program knows up to 3');
  });

  it('is written in the shape after the last step, a correction in that of its fact', () => {
    const to = { kind: 'corrected' as const, fact: today, happenedAt: epochMs(0) };
    expect(shapeOf(today, steps)).toBe(3);
    expect(shapeOf({ type: 'Amended', amends: 1, to, why: '' }, steps)).toBe(3);
    expect(shapeOf({ type: 'Amended', amends: 1, to: { kind: 'undone' }, why: '' }, steps)).toBe(1);
    expect(shapeOf(today)).toBe(1);
  });
});
