// Times as they are said in Spanish words, without accents.

import type { TimesTyped } from '../typed.ts';

export const spanishTimes: TimesTyped = {
  atHour: ['a', 'las'],
  atOne: ['a', 'la'],
  atNoon: 'a',
  minutes: {
    'un minuto': 1,
    'cinco minutos': 5,
    'diez minutos': 10,
    'un cuarto': 15,
    'un cuarto de hora': 15,
    'cuarto de hora': 15,
    'quince minutos': 15,
    'veinte minutos': 20,
    'media hora': 30,
    'tres cuartos': 45,
    'tres cuartos de hora': 45,
    'una hora': 60,
    'hora y media': 90,
    'una hora y media': 90,
    'dos horas': 120,
  },
  // `a las 4 de la tarde`: Spanish says the half of the day with its part, and without it four would be four in the morning.
  // The hours of each are from memory of how people speak, no source.
  partLeads: 'de del por',
  partArticle: 'la',
  partsOfDay: {
    madrugada: { hours: [12, 1, 2, 3, 4, 5, 6], afterNoon: false },
    manana: { hours: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], afterNoon: false },
    mediodia: { hours: [12, 1, 2, 3], afterNoon: true },
    tarde: { hours: [12, 1, 2, 3, 4, 5, 6, 7, 8, 9], afterNoon: true },
    noche: { hours: [7, 8, 9, 10, 11], afterNoon: true },
  },
  spoken: {
    leads: ['a las', 'a la', 'desde las', 'desde la'],
    roughly: ['a eso de las', 'como a las', 'sobre las', 'hacia las', 'a como las', 'alrededor de las', 'tipo'],
    minutes: { cuarto: 15, 'un cuarto': 15, media: 30 },
    past: [],
    to: ['para las', 'para la', 'pa las', 'pa la', 'minutos para las', 'minutos para la'],
    mayLead: ['al', 'a', 'a los', 'faltando', 'faltaban', 'faltaba'],
    plus: 'y',
    minus: 'menos',
    onTheHour: ['en punto', 'clavadas'],
    back: ['atras'],
    ago: ['hace', 'hara', 'desde hace'],
    about: ['como', 'unos', 'unas', 'cosa de', 'mas o menos', 'casi'],
    vague: [
      ...['denantes', 'endenantes', 'hace rato', 'hace un rato', 'hace ratito', 'hace un ratito', 'hace tantito'],
      ...['hace poco', 'hace nada', 'hace un momento', 'ahorita', 'ahorita mismo', 'orita', 'hace un momentito'],
    ],
  },
};
