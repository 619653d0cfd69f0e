// Why nothing is taken back yet, or not at all: which act is meant, and what stands in its way. The catalogue has the words.

import type { Entry } from '../history.ts';
import type { AmendTarget } from '../verbs/correction-verbs.ts';

/** An act as a card names it; `corrected`: not the act itself is meant but the speaker's correction of it. */
export interface ActTold {
  readonly entry: Pick<Entry, 'seq' | 'stream' | 'fact' | 'by' | 'happenedAt'>;
  readonly corrected: boolean;
}

export type UndoUnclear =
  | { readonly code: 'nothing-to-undo' }
  /** Older than a shift: `amend` is how it is put right, where that verb leaves something to put right. */
  | { readonly code: 'undo-too-late'; readonly last: ActTold; readonly amend: AmendTarget | undefined }
  /** A tap of an older card: `named` is somebody else's, is gone, or is no longer the speaker's latest. */
  | {
      readonly code: 'undo-not-last';
      readonly named: ActTold | undefined;
      readonly isTheirs: boolean;
      readonly last: ActTold | undefined;
    }
  /** Somebody else has gone on from it, or has corrected it. */
  | { readonly code: 'undo-rests'; readonly last: ActTold; readonly later: ActTold }
  /** Which acts would go (`entry` names them), and what rests on them: asked before a second tap. */
  | {
      readonly code: 'undo-asks';
      readonly entry: number;
      readonly acts: readonly ActTold[];
      readonly rests: readonly ActTold[];
    };
