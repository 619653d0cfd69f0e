// Why a part is on hold, in Spanish.

import type { HoldTold } from '../../../../core/part/hold-told.ts';
import type { HoldingCode } from '../../../../core/part/holding-codes.ts';
import { codesLeft } from '../../../cards/codes-told.ts';
import type { Figures } from '../../figures.ts';
import { spanishFailed } from './readings.ts';
import type { Spoken } from './spoken.ts';

/** Of a hold that follows by itself, in a word or two. */
const reasonsOf = (say: Spoken): Readonly<Record<HoldingCode, string>> => ({
  'past-pot-life': 'recubierta con la vida de la mezcla terminada',
  'pot-dead': 'recubierta con mezcla espesa, gelificada o caliente',
  'pot-empty': 'recubierta con una mezcla que constaba vaciada',
  'not-weighed': 'recubierta con mezcla que nadie pesó',
  'ratio-out': 'recubierta con la relación de mezcla desviada',
  'blend-not-done': 'recubierta antes de cumplir la agitación o la inducción',
  'not-filtered': 'recubierta con mezcla sin filtrar',
  'caught-not-filtered': 'recubierta con mezcla recogida y sin filtrar otra vez',
  'recoat-forbidden': 'recubierta sobre película',
  'recoat-too-early': `recubierta antes ${say.ofThe('recoat-window')}`,
  'recoat-too-late': `recubierta después ${say.ofThe('recoat-window')}`,
  'film-drying': 'retocada cuando ya se secaba',
  'dip-once': 'sumergida dos veces',
  'surface-life-over': 'recubierta con la superficie pasada de plazo',
  'not-prepared': 'recubierta sin que conste su preparación',
  'surface-outside': 'recubierta con la superficie fuera de lo exigido',
  'air-outside': `recubierta con aire fuera ${say.ofThe('sheet')}`,
  'flash-off-not-over': 'a curado antes de terminar el oreo',
  'not-dry': 'a curado antes de decirla seca',
  'hotter-than-part-bears': 'calentada más de lo que aguanta',
  'oven-outside-sheet': `horno fuera ${say.ofThe('sheet')}`,
  'no-such-cure': `curada de un modo que no da ${say.the('sheet')}`,
  overheated: 'leída a más de lo que aguanta',
  'film-outside': 'espesor de película seca fuera de su regla',
  'adhesion-failed': 'adherencia por debajo de lo habitual',
  'test-failed': 'un ensayo que no pasa',
  'lot-recalled': 'capa con un lote retirado',
  'instrument-failed': 'se apoya en un instrumento que no pasó su verificación',
  'not-released': 'salió del taller sin liberar',
  disposed: 'trabajada después de darla por chatarra o devolverla',
  'rubbed-through': `la película cedió al frotar con ${say.one('solvent')}`,
});

export function spanishHoldReason(say: Spoken, hold: HoldTold, figures: Figures): string {
  const reasons = reasonsOf(say);
  const readings = (hold.failed ?? []).map((reading) => spanishFailed(say, reading, figures));
  const codes = codesLeft(hold).map((code) => reasons[code]);
  return figures.list([...(hold.why === '' ? [] : [hold.why]), ...readings, ...codes]);
}
