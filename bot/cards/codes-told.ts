// A failed reading is told by its figures: the code of its hold would say the same once more.

import type { HoldTold } from '../../core/part/hold-told.ts';
import type { HoldingCode } from '../../core/part/holding-codes.ts';
import type { FailedReading } from '../../core/part/part-events.ts';

const codeOf: Readonly<Record<FailedReading['of'], HoldingCode>> = {
  film: 'film-outside',
  heat: 'overheated',
  adhesion: 'adhesion-failed',
  rub: 'rubbed-through',
  wet: 'test-failed',
  'pull-off': 'test-failed',
  gloss: 'test-failed',
  hardness: 'test-failed',
  holidays: 'test-failed',
  visual: 'test-failed',
};

/** The codes that the readings of this hold do not tell. */
export function codesLeft({ because, failed = [] }: HoldTold): readonly HoldingCode[] {
  return because.filter((code) => !failed.some(({ of }) => codeOf[of] === code));
}
