// What a Spanish speaker types of films, and what marks a spot among their readings.

import { verbWords } from '../typed.ts';
import { spanishFilmTestVerbs } from './film-test-verbs.ts';

export const spanishFilmVerbs = {
  ...spanishFilmTestVerbs,
  wet: verbWords('húmeda, húmedo, película húmeda, eph, espesor húmedo, galga, peine', 'húmeda impulsor-7 60 65 58um'),
  film: verbWords(
    'espesor, eps, espesor seco, película seca, espesores, medir, midiendo, mido',
    'espesor impulsor-7 12 14 13um',
    '',
    {
      spot: 'punto puntos',
      beside: 'junto cerca',
      drop: 'descartar descarta descarto descartada descartadas',
      was: 'era eran fue fueron',
      next: 'siguiente proximo',
      skip: 'saltar saltalo saltatelo luego',
      'new-set': 'otra-serie serie-nueva',
    },
  ),
};

/** What a job asks for, on the line that sets it. */
export const spanishJobWords = {
  'second-eyes': 'segundos otros',
  'water-break': 'agua',
  'film-level': 'nivel',
  no: 'sin',
  spot: 'puntos punto lecturas',
};

/** Whether water broke on cleaned steel. */
export const spanishWaterWords = {
  water: 'agua',
  held: 'aguanta aguantó continua entera',
  broke: 'rompe rompió rota rompida',
};
