// What a hold says of itself.

import type { HoldingCode } from './holding-codes.ts';
import type { FailedReading } from './part-events.ts';

export interface HoldTold {
  readonly why: string;
  readonly because: readonly HoldingCode[];
  readonly failed?: readonly FailedReading[] | undefined;
}
