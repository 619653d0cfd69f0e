// A typed line to a typed command: clean, with a slip, with a time; as people say it; and what no line should be.

import { bench, describe } from 'vitest';
import { readLine } from '../../bot/language/read-line.ts';
import { shipped } from '../../bot/language/tongues/tongues.ts';
import { epochMs } from '../../core/units.ts';

/** Each line comes with its own: what was made of the one before helps none. */
const context = {
  hearing: shipped.hearingIn('en'),
  country: shipped.profileOf('en', 'metric'),
  now: epochMs(Date.UTC(2026, 2, 2, 10)),
  zone: 'UTC',
  sheetIds: ['demo-clear', 'demo-build'],
  batches: [1],
  parts: ['impeller-7'],
  places: ['room'],
  live: () => ({
    parts: [{ name: 'impeller-7', phase: 'bare' as const }],
    batches: [{ number: 1, phase: 'filtered' as const }],
    cans: [],
  }),
};

describe('one line', () => {
  for (const line of [
    'weigh 1 1201g 1198g',
    'air 24C 48%',
    'coat impeller-7 1 spray',
    'wiegh 1 1201g 1198g',
    'filter 1 at 9:40',
  ]) {
    bench(line, () => {
      readLine(line, { ...context });
    });
  }
});

describe('as people say it', () => {
  for (const line of [
    'gave impeller 7 a coat from batch 1 with the brush',
    'weighed batch one twelve hundred and one grams of a and eleven ninety eight of b',
    'how long is the 7 still wet',
    'air twenty four degrees and fifty percent at half nine',
  ]) {
    bench(line, () => {
      readLine(line, { ...context });
    });
  }
});

describe('two thousand characters', () => {
  for (const piece of ['put the brush on impeller 7 with batch 1 then ', '24 48 ', 'wiegh ', 'ñandú ', 'a ']) {
    const line = piece.repeat(2_000).slice(0, 2_000);
    bench(piece.trim(), () => {
      readLine(line, { ...context });
    });
  }
});
