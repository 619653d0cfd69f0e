// What the crew's acts cannot mean: people whom nobody knows, a handover that is not theirs, a bell that nothing moves.

import type { PersonName } from '../ids.ts';
import type { EpochMs, Hours } from '../units.ts';
import type { Role } from './crew-commands.ts';
import type { OpenAlarm } from './open-alarms.ts';

export type CrewUnclear =
  /** A setting that is a lead's or a supervisor's to settle; `who`: those who are one. */
  | { readonly code: 'may-not-settle'; readonly wanted: Role; readonly who: readonly PersonName[] }
  /** To judge a batch anew is a lead's. */
  | { readonly code: 'may-not-judge'; readonly wanted: Role; readonly who: readonly PersonName[] }
  | { readonly code: 'no-such-person'; readonly person: string; readonly known: readonly PersonName[] }
  | { readonly code: 'handover-to-self' }
  | {
      readonly code: 'nothing-to-take-over';
      /** To whom the last one was, if it still waits. */
      readonly waitsFor: PersonName | undefined;
    }
  /** `on`: whose first shift is on. */
  | { readonly code: 'no-first-shift'; readonly person: PersonName; readonly on: readonly PersonName[] }
  /** Nothing to call off; `isOn`: it has rung, and is a lead's to end. */
  | { readonly code: 'no-countdown'; readonly isOn: boolean }
  | { readonly code: 'no-alarm-on' }
  /** Several are on, or none of them is the one that was named. */
  | { readonly code: 'which-alarm'; readonly alarms: readonly OpenAlarm[]; readonly isOther: boolean }
  /** With what was told before of that person's day. */
  | { readonly code: 'more-than-a-day'; readonly person: PersonName; readonly hours: Hours }
  /** A bell that snoozing never moves: what it tells of goes on by itself. */
  | { readonly code: 'not-snoozed'; readonly key: string; readonly rangAt: EpochMs };
