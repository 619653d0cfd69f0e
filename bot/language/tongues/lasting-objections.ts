// What no waiting mends: a tongue may say of it that it cannot be, where of the rest it says not yet.

import type { ObjectionCode } from '../../../core/objections.ts';

export const lasting: ReadonlySet<ObjectionCode> = new Set<ObjectionCode>([
  'added-too-late',
  'adding-not-on-sheet',
  'adding-passes-most',
  'already-curing',
  'already-filtered',
  'already-released',
  'already-weighed',
  'can-discarded',
  'can-expired',
  'can-of-other-sheet',
  'dip-once',
  'film-drying',
  'hotter-than-part-bears',
  'inside-vessel',
  'method-not-on-sheet',
  'more-than-can-holds',
  'more-than-sheet-mixes',
  'no-such-cure',
  'not-curing',
  'oven-outside-sheet',
  'past-pot-life',
  'pot-dead',
  'pot-empty',
  'recoat-forbidden',
  'recoat-too-late',
  'surface-life-over',
  'vessel-too-small',
  'weighed-twice',
]);
