// Words of the trade that are no verbs, after the word for help: `ayuda bote`, `ayuda gas`. Without accents.

import type { HelpGroup } from '../../help-groups.ts';

export const helpTopics: Readonly<Record<string, string>> = {
  stock: 'lata bote botes',
  blanket: 'gas nitrogeno argon',
  weigh: 'bascula balanza',
  emergency: 'alarma alarmas',
  'hot-pot': 'hinchada hinchado abombada',
  respirator: 'mascarilla respirador',
};

/** All of one group; the first word is the one printed. */
export const spanishHelpGroups: Readonly<Record<HelpGroup, string>> = {
  pots: 'mezclas mezcla mezclar',
  cans: 'latas lata botes bote',
  parts: 'piezas pieza',
  air: 'aire gas lecturas',
  spraying: 'cabina pulverizar pulverizado aspersion',
  emergencies: 'alarmas alarma emergencias emergencia',
  crew: 'equipo cuadrilla turno ajustes',
  asking: 'preguntas pregunta registros',
};
