// What the crew's acts cannot mean: people whom nobody knows, a handover that is not theirs, a bell that nothing moves.

import type { PersonName } from '../ids.ts';
import type { EpochMs } from '../units.ts';

export type CrewUnclear =
  | { readonly code: 'no-such-person'; readonly person: string; readonly known: readonly PersonName[] }
  | { readonly code: 'handover-to-self' }
  | {
      readonly code: 'nothing-to-take-over';
      /** To whom the last one was, if it still waits. */
      readonly waitsFor: PersonName | undefined;
    }
  /** A bell that snoozing never moves: what it tells of goes on by itself. */
  | { readonly code: 'not-snoozed'; readonly key: string; readonly rangAt: EpochMs };
