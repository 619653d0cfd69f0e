// A lot that is called back, in English.

import type { PartName } from '../../../../core/ids.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { partsNamed } from './parts-in.ts';

export const englishRecalls = {
  title: (lot: string) => `Lot ${lot}: recalled`,
  why: (why: string) => `Why: ${why}`,
  held: (parts: readonly PartName[], figures: Figures) =>
    parts.length === 0
      ? 'By the record no part has any of it on.'
      : `On hold, with some of it on: ${partsNamed(parts, figures)}. Decide of each what becomes of it.`,
  aside: (cans: readonly number[], figures: Figures) =>
    `Set aside, and mark: ${cans.length === 1 ? 'can' : 'cans'} ${figures.list(cans.map(String))}.`,
  sealed: (left: number) => `Sealed cans of it by the record: ${left}. Leave them shut.`,
  nothingMore: 'Nothing more of it is opened, poured or put on without a supervisor.',
  unknown: (lot: string) => `By the record no can of lot ${lot} was here. Read the labels of what stands sealed.`,
  over: (lot: string) => `Lot ${lot}: recall over`,
  holdsStay: 'It may be used again. What is on hold for it stays so until it is decided, part by part.',
  notToUse: (lot: string) =>
    `Its lot ${lot} was recalled: none of it is applied unless a supervisor says so, with a reason.`,
  pots: (pots: readonly number[], figures: Figures) =>
    `In use with it, and not put on any more: ${pots.length === 1 ? 'batch' : 'batches'} ${figures.list(pots.map(String))}.`,
  inStock: 'RECALLED',
  onDay: (lot: string, at: EpochMs, why: string, figures: Figures) =>
    `Lot ${lot} recalled, ${figures.timeDown(at)}: ${why}`,
};
