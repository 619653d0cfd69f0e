// What was decided of a part, as it stands.

import type { Concession, ReturnsTo } from '../disposition.ts';
import type { PersonName } from '../ids.ts';
import type { EpochMs } from '../units.ts';
import type { HoldingCode } from './holding-codes.ts';
import type { FailedReading } from './part-events.ts';

/** A hold stops the release, never a clock: a held film flashes off and cures like any other. */
export type Held = Extract<Verdict, { is: 'held' }>;
export type Verdict =
  | {
      readonly is: 'released';
      readonly at: EpochMs;
      readonly by: PersonName;
      /** Of the customer, under which it went. */
      readonly concession: Concession | undefined;
    }
  | { readonly is: 'scrapped'; readonly at: EpochMs; readonly by: PersonName; readonly why: string }
  | {
      readonly is: 'returned';
      readonly at: EpochMs;
      readonly by: PersonName;
      readonly why: string;
      readonly to: ReturnsTo | undefined;
    }
  | {
      readonly is: 'held';
      readonly at: EpochMs;
      readonly by: PersonName;
      readonly why: string;
      /** The deviations that hold it by themselves; empty where somebody said hold. */
      readonly because: readonly HoldingCode[];
      /** The readings among them. */
      readonly failed: readonly FailedReading[];
      /** Who sees to it, where somebody was named. */
      readonly owner: PersonName | undefined;
      readonly toDo: string | undefined;
      /** Since when somebody hears of it every morning; `undefined` of one that only rules of an earlier edition knew. */
      readonly ringsFrom: EpochMs | undefined;
    };
