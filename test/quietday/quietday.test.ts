// The quiet day runs to its end, and no ordinary line calls anybody. Its other figures are printed by `npm run quietday`.

import { describe, expect, it } from 'vitest';
import { countShift } from './count.ts';
import { ordinaryLines } from './ordinary-lines.ts';
import { playLines } from './play-lines.ts';
import { playShift } from './play-shift.ts';
import { shift } from './shift.ts';

/** Hundreds of lines over real HTTP, on a machine that may be busy. */
const timeout = 300_000;

describe('a faultless shift', () => {
  it('given three batches and thirty parts, then it runs to the release of the last without an alarm', {
    timeout,
  }, async () => {
    const played = await playShift(shift);
    const { lines, parts, alarms, holds, questions, stepsAsked } = countShift(played);
    expect({ lines, parts, alarms, holds }).toEqual({ lines: shift.length, parts: 30, alarms: 0, holds: 0 });
    expect(questions).toEqual([]);
    expect(played.record.filter(({ type }) => type === 'PartReleased')).toHaveLength(30);
    // At most one question of the maker's paper a batch.
    const batches = stepsAsked.map((step) => step.split(' ')[0]);
    expect(batches.length).toBeGreaterThan(0);
    expect(new Set(batches).size).toBe(batches.length);
  });
});

describe('a thousand ordinary lines that hold a word of need', () => {
  it('given all of them, then none calls anybody', { timeout }, async () => {
    expect(new Set(ordinaryLines).size).toBe(1_000);
    const heard = await playLines(ordinaryLines);
    expect(heard.filter(({ called }) => called.length > 0).map(({ line }) => line)).toEqual([]);
  });
});
