// Pictures and paper, in Spanish: their labels, and what stands on a traveller.

import type { FilmLimits } from '../../../../core/records/curves.ts';
import type { englishPaper, englishPictures } from '../english/paper.ts';
import { capital, counted, told } from './names.ts';
import { spanishSource } from './sources.ts';
import type { Spoken } from './spoken.ts';

const filmRules = (say: Spoken): Readonly<Record<FilmLimits['rule'], string>> => ({
  own: `la regla propia ${say.ofThe('sheet')}`,
  'iso-19840': 'ISO 19840',
  'pa-2': 'SSPC-PA 2',
  range: `el espesor ${say.ofThe('sheet')}, sin regla de aceptación nombrada`,
});

export const spanishPictures = (say: Spoken): typeof englishPictures => ({
  timeline: 'El día por mezcla y pieza',
  air: 'Aire',
  humidity: 'Humedad',
  cure: 'Curado',
  film: 'Lecturas de película',
  humidityAxis: '% HR',
  progressAxis: 'curado cumplido, %',
  progress: 'curado cumplido',
  reading: 'número de lectura',
  airLine: 'aire',
  dewLine: 'punto de rocío',
  surfaceLine: say.one('substrate'),
  partLine: 'pieza',
  roomLine: 'sala',
  limit: 'límite',
  wet: 'húmeda',
  dry: 'seca',
  marks: { coat: 'capa', thick: 'espesa', released: 'liberada', held: 'retenida' },
  bars: {
    stirring: 'agitación',
    induction: 'inducción',
    'pot-life': say.one('pot-life'),
    'flash-off': 'oreo',
    cure: 'curado',
    'can-open': 'destapada',
    spray: say.one('spraying'),
  },
  batch: (name) => `Mezcla ${name}`,
  can: (name) => `Lata ${name}`,
  session: (name) => `Sesión ${name}`,
  empty: 'No hay nada que dibujar.',
});

export const spanishPaper = (say: Spoken): typeof englishPaper => ({
  file: say.one('traveller').replaceAll(' ', '-'),
  title: capital(say.one('traveller')),
  heading: (parts, figures) => `${capital(say.one('traveller'))} ${figures.list(parts)}`,
  part: 'Pieza',
  product: 'Producto',
  steps: 'Pasos',
  when: 'Hora',
  who: 'Quién',
  what: 'Qué',
  coats: 'Capas',
  readings: 'Lecturas de película',
  acceptance: 'Aceptación',
  noRule: 'Para este producto no se nombra regla de aceptación: se dan lecturas, sin dictamen.',
  judged: ({ rule, leastMicrometres, mostMicrometres, source }, figures) =>
    `Según ${filmRules(say)[rule]}: de ${figures.film(leastMicrometres)} a ${figures.film(mostMicrometres)}. Fuente: ${spanishSource(say, source)}.`,
  noReadings: 'No se leyó película seca.',
  readingLine: (state, films, figures) =>
    `Película ${state === 'wet' ? 'húmeda' : 'seca'}: ${figures.list(films.map(figures.film))}`,
  statistics: ({ mean, lowest, highest, count }, figures) =>
    `${counted(count, 'lectura en seco', 'lecturas en seco')}: media ${figures.film(mean)}, mínima ${figures.film(lowest)}, máxima ${figures.film(highest)}.`,
  deviations: 'Desviaciones y permisos',
  noDeviations: 'Ninguno según el registro.',
  struck: 'Lo corregido consta junto a lo que había, quién lo corrigió y por qué.',
  corrected: ({ by, at, why }, figures) => `corregido ${figures.dated(at)} por ${by}${why === '' ? '' : `: ${why}`}`,
  invented: 'Producto inventado: solo para practicar, no para un cliente.',
  released: (by, at, figures) => told`Liberada por ${by}, ${figures.dated(at)}.`,
  notReleased: 'Sin liberar.',
  held: (why) => `Retenida${why === '' ? '' : `: ${why}`}.`,
  recordEnd: (seq, hash) => `Registro hasta la anotación ${seq}, SHA-256 ${hash}`,
  printed: (crew, at, figures) => `${crew}, impreso ${figures.dated(at)}`,
  page: (number, of) => `${number} / ${of}`,
});
