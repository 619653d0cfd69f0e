// How a pot or a part stands, in a word or two of Spanish, and what its mixing is called.

import type { Words } from '../english/sentences.ts';

export const spanishPhases: Words['phases'] = {
  'to-weigh': 'por pesar',
  blending: 'agitación en curso',
  paused: 'agitador parado',
  filtered: 'en uso',
  dead: 'espesa, gelificada o caliente: residuo',
  emptied: 'vaciada',
  bare: 'sin capa',
  prepared: 'preparada, sin capa',
  flashing: 'en oreo',
  dry: 'seca, espera el curado',
  curing: 'en curado',
  cured: 'salió de curado',
  rework: 'por retrabajar, con la capa vieja',
  scrapped: 'chatarra',
  returned: 'devuelta',
  left: 'fuera del taller',
  released: 'liberada',
};

export const spanishBlend: Words['blend'] = {
  stir: { wanted: 'Agitación requerida', given: 'Agitación transcurrida', doneAt: 'Fin de la agitación' },
  induction: { wanted: 'Inducción requerida', given: 'Inducción transcurrida', doneAt: 'Fin de la inducción' },
};
