// The kinds of reminders, what a noun asks to be reminded of before anybody looks at what has rung already, and the same with
// its place in the plan.

import type { PersonName, StreamId } from './ids.ts';
import { inNaturalOrder } from './natural-order.ts';
import type { Errs } from './noun-clock.ts';
import { keysOf } from './own-key.ts';
import type { EpochMs } from './units.ts';

/** Each kind, and which way its time errs. A bell for the end of a clock errs as that does. */
export const ringErrs = {
  'stir-done': 'at-least',
  'induction-done': 'at-least',
  'stir-paused': 'at-most',
  uncovered: 'at-most',
  'pot-half': 'at-most',
  'pot-margin': 'at-most',
  'pot-end': 'at-most',
  gear: 'at-most',
  'surface-ends': 'at-most',
  'flash-least': 'at-least',
  'flash-most': 'at-most',
  'recoat-opens': 'at-least',
  'recoat-closes': 'at-most',
  'temp-due': 'at-least',
  'stage-handle': 'at-least',
  'stage-service': 'at-least',
  'stage-full': 'at-least',
  'cure-done': 'at-least',
  'after-service': 'at-least',
  'after-full': 'at-least',
  'after-improves': 'at-least',
  cry: 'at-most',
  handover: 'at-most',
  'air-due': 'at-most',
  blanket: 'at-most',
  'can-stirred': 'at-least',
  brief: 'at-most',
  'spell-end': 'at-most',
  'air-recheck': 'at-most',
  flush: 'at-most',
  vessels: 'at-most',
  'fan-off': 'at-least',
  'bell-test': 'at-most',
  own: 'at-most',
  morning: 'at-most',
  held: 'at-most',
  digest: 'at-most',
} as const satisfies Readonly<Record<string, Errs>>;
export type ReminderKind = keyof typeof ringErrs;
export const reminderKinds = keysOf(ringErrs);

export interface Reminder {
  readonly kind: ReminderKind;
  readonly stream: StreamId;
  /** Stable: `batch/1/stir-done`. */
  readonly key: string;
  readonly dueAt: EpochMs;
  readonly to: readonly PersonName[];
  /** Goes on to the lead, then to the supervisor, while nobody answers or acts. */
  readonly critical: boolean;
  /** Its place in the row of repeats where it has one from the start: it rings once, whatever rang and was heard. */
  readonly ring?: number;
}

/** `key`: where it is not its kind on its stream. */
export function remind(
  stream: StreamId,
  kind: ReminderKind,
  dueAt: EpochMs,
  to: readonly PersonName[],
  { critical = false, key = `${stream}/${kind}` }: Partial<Pick<Reminder, 'critical' | 'key'>> = {},
): Reminder {
  return { kind, stream, key, dueAt, to, critical };
}

/** A reminder with its place in the row of repeats: the key carries the number from the second ring on. */
export interface PlannedReminder extends Reminder {
  readonly ring: number;
  readonly numberedKey: string;
}

export const numberedKey = (key: string, ring: number): string => (ring === 1 ? key : `${key}/${ring}`);

/** The soonest first; of one moment, by key. */
export const byDueTime = (a: PlannedReminder, b: PlannedReminder): number =>
  a.dueAt - b.dueAt || inNaturalOrder(a.numberedKey, b.numberedKey);
