// What can be set, in Spanish: its name, and what it can be set to.

import type { Setting } from '../../../../core/crew/crew-commands.ts';
import { englishSettings } from '../english/settings.ts';

const names: Readonly<Record<Setting['name'], string>> = {
  sheet: 'Ficha',
  'air-limit': 'Validez del aire',
  digest: 'Hora del resumen',
  morning: 'Hora de la lista de la mañana',
  rate: 'Ritmo',
  'voc-limit': 'Límite de COV',
  crew: 'Cuadrilla',
  zone: 'Zona horaria',
  'crew-language': 'Idioma de la cuadrilla',
  'crew-units': 'Unidades de la cuadrilla',
  role: 'Puesto',
  units: 'Unidades',
  language: 'Su idioma',
  rings: 'Sus avisos',
  brief: 'Charla antes de la pistola',
  'brief-ahead': 'Antelación de la charla',
  sprayers: 'Pintores',
  booth: 'Cabina',
  lel: 'Parte del límite de explosividad',
  mixing: 'Factor de mezcla de aire',
  emergency: 'Emergencia',
  bell: 'Prueba de avisos en cada turno',
  quiet: 'Silencio',
};

export const spanishSettings: typeof englishSettings = {
  names,
  units: { metric: 'métricas', us: 'EE. UU.' },
  rings: { thread: 'en el hilo de la mezcla', direct: 'por mensaje directo' },
  languages: englishSettings.languages,
  hints: {
    zone: 'Europe/Madrid, o solo la ciudad',
    quiet: '22-6. Lo urgente avisa igual. Vacío: sin silencio.',
    rings: 'Adónde le llegan los avisos.',
    'crew-language': 'El del mensaje de cada mezcla, que leen todos. Cada uno puede tener otro para sus respuestas.',
  },
  role: (person, role) => `${person} (${role})`,
};
