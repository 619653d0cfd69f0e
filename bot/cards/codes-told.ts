// A failed reading is told by its figures: the code of its hold would say the same once more.

import type { HoldTold } from '../../core/part/hold-told.ts';
import { codeOfFailed, type HoldingCode } from '../../core/part/holding-codes.ts';

/** The codes that the readings of this hold do not tell. */
export function codesLeft({ because, failed = [] }: HoldTold): readonly HoldingCode[] {
  return because.filter((code) => !failed.some(({ of }) => codeOfFailed[of] === code));
}
