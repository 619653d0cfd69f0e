// A typed line to a typed command: clean, with a slip, with a time.

import { bench, describe } from 'vitest';
import { readLine } from '../../bot/language/read-line.ts';
import { shipped } from '../../bot/language/tongues/tongues.ts';
import { epochMs } from '../../core/units.ts';

const context = {
  hearing: shipped.hearingIn('en'),
  country: shipped.profileOf('en', 'metric'),
  now: epochMs(Date.UTC(2026, 2, 2, 10)),
  zone: 'UTC',
  sheetIds: ['demo-clear', 'demo-build'],
  batches: [1],
  parts: ['impeller-7'],
  places: ['room'],
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
      readLine(line, context);
    });
  }
});
