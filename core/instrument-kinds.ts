// What kinds of instruments a shop keeps, and which of them each reading is made with. Nothing is read with a holiday tester yet:
// it is kept for its check date.

import { z } from 'zod';

export const instrumentKinds = ['gauge', 'scale', 'hygrometer', 'thermometer', 'holiday-tester'] as const;
export type InstrumentKind = (typeof instrumentKinds)[number];

export const checkResults = ['ok', 'failed'] as const;
export type CheckResult = (typeof checkResults)[number];

/** Of a reading: what it was made with, where somebody said or the shop keeps one. */
export const ReadWith = z.string().optional();
