// Why a part is on hold, in English.

import type { HoldTold } from '../../../../core/part/hold-told.ts';
import type { HoldingCode } from '../../../../core/part/holding-codes.ts';
import { codesLeft } from '../../../cards/codes-told.ts';
import type { Figures } from '../../figures.ts';
import { englishFailed } from './readings.ts';

/** Of a hold that follows by itself, in a word or two. */
const reasons: Readonly<Record<HoldingCode, string>> = {
  'past-pot-life': 'coated past pot life',
  'pot-dead': 'coated from a thick, gelled or hot pot',
  'pot-empty': 'coated from a pot that was empty by the record',
  'not-weighed': 'coated from a mix nobody weighed',
  'ratio-out': 'coated from a mix off its ratio',
  'blend-not-done': 'coated before the mix was stirred or stood its time',
  'not-filtered': 'coated from a mix not filtered',
  'caught-not-filtered': 'coated with caught mix not filtered again',
  'recoat-forbidden': 'coated over film',
  'recoat-too-early': 'coated before the recoat window',
  'recoat-too-late': 'coated after the recoat window',
  'film-drying': 'touched up over film that had begun to dry',
  'dip-once': 'dipped twice',
  'surface-life-over': 'coated after the life of its surface',
  'not-prepared': 'coated on a surface nobody said was prepared',
  'surface-outside': 'coated on a surface outside what is asked',
  'air-outside': 'coated in air outside the sheet',
  'flash-off-not-over': 'cured before flash-off was over',
  'not-dry': 'cured before it was said dry',
  'hotter-than-part-bears': 'heated beyond what it bears',
  'oven-outside-sheet': 'oven outside the sheet',
  'no-such-cure': 'cured as the sheet does not say',
  overheated: 'read hotter than it bears',
  'film-outside': 'dry film outside its rule',
  'adhesion-failed': 'adhesion below the usual cut',
  'rubbed-through': 'a solvent rub went through',
  'test-failed': 'a test outside what is asked',
  'lot-recalled': 'coated with a lot that was recalled',
  'instrument-failed': 'rests on an instrument that failed its check',
  'not-released': 'left the shop, not released',
  disposed: 'worked on after it was scrapped or given back',
};

export function englishHoldReason(hold: HoldTold, figures: Figures): string {
  const readings = (hold.failed ?? []).map((reading) => englishFailed(reading, figures));
  const codes = codesLeft(hold).map((code) => reasons[code]);
  return figures.list([...(hold.why === '' ? [] : [hold.why]), ...readings, ...codes]);
}
