// A part whose film waits to be measured, by a rule that asks for spots. The figures are invented.

import { shelfWith } from '../session/own-sheets.ts';

const source = 'invented for the test';

/** 80 to 120 um, level 3: a spot from 64 to 144. */
export const pa2 = shelfWith({
  film: undefined,
  filmRule: { rule: 'pa-2', leastMicrometres: 80, mostMicrometres: 120, level: 3, source },
});
export const nominal = (profile: string) =>
  shelfWith({
    film: undefined,
    filmRule: { rule: 'iso-19840', nominalMicrometres: 80, mostMicrometres: 240, profile, source },
  });

export const cured = (...details: readonly string[]) => [
  `08:00 part a1 ${['job 88', ...details].join(' ')}`,
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat a1 1 brush', '10:12 dry a1', '10:12 cure a1 oven 90C', '10:12 temp a1 90C', '11:12 temp a1 90C'],
  '11:12 out a1',
];
