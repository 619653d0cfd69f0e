// What people say of instruments and their checks, in one tongue: phrases apart by a comma.

import type { InstrumentKind } from '../../../core/instrument-kinds.ts';

export interface InstrumentWords {
  /** What each is called. */
  readonly kinds: Readonly<Record<InstrumentKind, string>>;
  /** It was checked. */
  readonly wasChecked: string;
  /** What speaks of a check. */
  readonly ofCheck: string;
  readonly hasFailed: string;
  readonly hasPassed: string;
  /** Before the last day that it holds. */
  readonly upTo: string;
  /** It was not, or is only to be: that tells no check. */
  readonly untold: string;
}
