// How a pot or a part stands, in a word or two of Spanish, and what its mixing is called.

import type { BatchPhase } from '../../../../core/batch/batch.ts';
import type { PartPhase } from '../../../../core/part/part.ts';
import type { Words } from '../english/sentences.ts';

export const spanishPhases: Readonly<Record<BatchPhase['is'] | PartPhase['is'], string>> = {
  'to-weigh': 'por pesar',
  blending: 'agitación en curso',
  paused: 'agitador parado',
  filtered: 'en uso',
  dead: 'espesa, gelificada o caliente: residuo',
  emptied: 'vaciada',
  bare: 'sin capa',
  flashing: 'en oreo',
  dry: 'seca, espera el curado',
  curing: 'en curado',
  cured: 'salió de curado',
  released: 'liberada',
};

export const spanishBlend: Words['blend'] = {
  stir: { wanted: 'Agitación requerida', given: 'Agitación transcurrida', doneAt: 'Fin de la agitación' },
  induction: { wanted: 'Inducción requerida', given: 'Inducción transcurrida', doneAt: 'Fin de la inducción' },
};
