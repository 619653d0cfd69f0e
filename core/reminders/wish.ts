// What a noun wishes to ring, before anybody looks at what has rung already.

import type { PersonName, StreamId } from '../ids.ts';
import type { EpochMs } from '../units.ts';

export const reminderKinds = [
  'stir-done',
  'induction-done',
  'stir-paused',
  'pot-half',
  'pot-margin',
  'pot-end',
  'flash-least',
  'flash-most',
  'recoat-opens',
  'recoat-closes',
  'cure-done',
  'air-due',
  'digest',
] as const;
export type ReminderKind = (typeof reminderKinds)[number];

export interface Wish {
  readonly kind: ReminderKind;
  readonly stream: StreamId;
  /** Stable: `batch/1/stir-done`. */
  readonly key: string;
  readonly dueAt: EpochMs;
  readonly to: readonly PersonName[];
  /** Goes on to the lead, then to the supervisor, while nobody answers or acts. */
  readonly critical: boolean;
}

/** A wish with its place in the row of repeats: the key carries the number from the second ring on. */
export interface PlannedReminder extends Wish {
  readonly ring: number;
  readonly numberedKey: string;
}

export const numberedKey = (key: string, ring: number): string => (ring === 1 ? key : `${key}/${ring}`);
