// Why it is not clear by which sheet something is done.

import type { SheetId } from '../ids.ts';
import type { SheetFault } from './sheet-fault.ts';

export type SheetUnclear =
  | { readonly code: 'no-such-sheet'; readonly sheet: SheetId; readonly known: readonly SheetId[] }
  | { readonly code: 'sheet-faulty'; readonly sheet: SheetId; readonly faults: readonly SheetFault[] }
  /** Nobody named one, and none is usual. */
  | {
      readonly code: 'which-sheet';
      /** Empty where none can be read. */
      readonly known: readonly SheetId[];
      readonly faults: readonly SheetFault[];
      /** A demo's product that was set, or is to be set, as the usual one. */
      readonly invented: SheetId | undefined;
    };
