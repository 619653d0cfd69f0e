// The little of the live state that a line said in the speaker's own words is read by: who is in the oven, which pot is raw.

import type { BatchPhase } from '../../core/batch/batch.ts';
import type { BatchNumber, CanNumber, PartName } from '../../core/ids.ts';
import type { Method } from '../../core/methods.ts';
import type { PartPhase } from '../../core/part/part.ts';
import type { Grams } from '../../core/units.ts';

export interface LivePart {
  readonly name: PartName;
  readonly phase: PartPhase['is'];
  readonly serial?: string;
  readonly job?: string;
  readonly metal?: string;
}

export interface LiveNow {
  readonly parts: readonly LivePart[];
  readonly batches: readonly {
    readonly number: BatchNumber;
    readonly phase: BatchPhase['is'] | 'over';
    /** As it was asked for. */
    readonly grams?: Grams;
    /** By which its parts were coated so far. */
    readonly method?: Method;
  }[];
  /** Cans that stand sealed: so many of a lot. */
  readonly sealed?: readonly SealedLot[];
  readonly cans: readonly { readonly number: CanNumber; readonly isLidOff: boolean; readonly component?: 'A' | 'B' }[];
}

export interface SealedLot {
  readonly component: 'A' | 'B';
  readonly lot: string;
  readonly left: number;
}
