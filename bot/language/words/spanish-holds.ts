// Why a part is on hold, in Spanish.

import { isOwnKey } from '../../../core/own-key.ts';
import type { HoldingCode, HoldTold, ReadingCode } from '../../../core/part/holding.ts';
import type { Figures } from '../figures.ts';
import { spanishFailed } from './spanish-readings.ts';

const holds: Readonly<Record<Exclude<HoldingCode, ReadingCode>, string>> = {
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
};

/** Of a hold that names no reading by its figures. */
const ofReadings: Readonly<Record<ReadingCode, string>> = {
  'film-outside': 'película seca fuera de su regla',
  'adhesion-failed': 'adherencia por debajo de lo habitual',
  'rubbed-through': 'la película cedió al frotar con disolvente',
};

const reasons: Readonly<Record<HoldingCode, string>> = { ...holds, ...ofReadings };

export function spanishHoldReason({ why, because, failed = [] }: HoldTold, f: Figures): string {
  const readings = failed.map((reading) => spanishFailed(reading, f));
  const codes = because.filter((code) => failed.length === 0 || isOwnKey(holds, code));
  return f.list([...(why === '' ? [] : [why]), ...readings, ...codes.map((code) => reasons[code])]);
}
