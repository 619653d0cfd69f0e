// Why a part is on hold, in Spanish.

import type { HoldTold } from '../../../../core/part/holding.ts';
import type { HoldingCode } from '../../../../core/part/holding-codes.ts';
import { codesLeft } from '../../../cards/codes-told.ts';
import type { Figures } from '../../figures.ts';
import { spanishFailed } from './readings.ts';

/** Of a hold that follows by itself, in a word or two. */
const reasons: Readonly<Record<HoldingCode, string>> = {
  'past-pot-life': 'recubierta pasada la vida útil',
  'pot-dead': 'recubierta con mezcla espesa, gelificada o caliente',
  'pot-empty': 'recubierta con una mezcla que constaba vaciada',
  'not-weighed': 'recubierta con mezcla que nadie pesó',
  'ratio-out': 'recubierta con mezcla fuera de relación',
  'blend-not-done': 'recubierta antes de cumplir el agitado o la inducción',
  'not-filtered': 'recubierta con mezcla sin filtrar',
  'caught-not-filtered': 'recubierta con mezcla recogida y sin filtrar otra vez',
  'recoat-forbidden': 'recubierta sobre película',
  'recoat-too-early': 'recubierta antes de la ventana de repintado',
  'recoat-too-late': 'recubierta después de la ventana de repintado',
  'film-drying': 'retocada cuando ya se secaba',
  'dip-once': 'sumergida dos veces',
  'surface-life-over': 'recubierta con la superficie pasada de plazo',
  'air-outside': 'recubierta con aire fuera de la ficha',
  'flash-off-not-over': 'a curado antes de acabar el oreo',
  'not-dry': 'a curado antes de decirla seca',
  'hotter-than-part-bears': 'calentada más de lo que aguanta',
  'oven-outside-sheet': 'horno fuera de la ficha',
  'no-such-cure': 'curada de un modo que la ficha no da',
  'film-outside': 'película seca fuera de su regla',
  'adhesion-failed': 'adherencia por debajo de lo habitual',
  'rubbed-through': 'la película cedió al frotar con disolvente',
};

export function spanishHoldReason(hold: HoldTold, f: Figures): string {
  const readings = (hold.failed ?? []).map((reading) => spanishFailed(reading, f));
  const codes = codesLeft(hold).map((code) => reasons[code]);
  return f.list([...(hold.why === '' ? [] : [hold.why]), ...readings, ...codes]);
}
