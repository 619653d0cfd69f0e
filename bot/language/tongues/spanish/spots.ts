// A dry film that is told spot by spot, in Spanish.

import type { FactOf } from '../../../../core/history.ts';
import type { Unclear } from '../../../../core/objections.ts';
import type { TakenOff } from '../../../../core/part/film-terms.ts';
import type { Micrometres } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import type { englishSpots } from '../english/spots.ts';
import type { Spoken } from './spoken.ts';

const found: Readonly<Record<string, string>> = {
  'spot-below': 'la media baja de',
  'spot-above': 'la media pasa de',
  'reading-below': 'por debajo de',
  'reading-above': 'por encima de',
};

const off = (taken: TakenOff, figures: Figures): string => {
  switch (taken.is) {
    case 'profile':
      return `menos ${figures.film(taken.micrometres)} de perfil`;
    case 'base':
      return `menos ${figures.film(taken.micrometres)} del metal base`;
    case 'set-on-profile':
    case 'none':
      return '';
  }
};

function came(read: Micrometres, counted: Micrometres, taken: TakenOff, figures: Figures): string {
  const less = off(taken, figures);
  return less === '' ? figures.film(counted) : `${figures.film(read)}, ${less}: ${figures.film(counted)}`;
}

export const spanishSpots = (say: Spoken): typeof englishSpots => ({
  title: (part, from, to, of) =>
    from === to
      ? `${part}: punto ${to}${to > of ? `, además de los ${of}` : ` de ${of}`}`
      : `${part}: puntos ${from} a ${to} de ${of}`,
  beside: (part, spot, near) => `${part}: punto ${spot}, junto al ${near}`,
  asks: (spot, of) => `¿Punto ${spot} de ${of}?`,
  asksOf: (part, spot, of) => `${part}: ¿punto ${spot} de ${of}?`,
  asksFilm: (part) => `${part}: ¿espesor seco?`,
  asksReadings: '¿Qué lecturas? Bastan los números.',
  button: (spot, of) => `Punto ${spot} de ${of}…`,
  besideButton: (spot) => `Junto al punto ${spot}…`,
  dropButton: (reading, figures) => `Descartar ${figures.film(reading)} y repetir…`,
  stillToTell: (spots, figures) =>
    `Falta decir ${spots.length === 1 ? 'el punto' : 'los puntos'} ${figures.list(spots.map(String))}. Sin eso la serie no está entera.`,
  newSet: 'Otra serie',
  ofSet: (set, told) => `Serie ${set}: ${told}`,
  areaButton: 'Su área…',
  putRight: (spot, readings, figures) => `El punto ${spot} era ${figures.films(readings)}`,
  spot: ({ number, readings, mean, lacks, beyond }, taken, figures) => {
    const read = figures.films(readings);
    if (mean === undefined)
      return `Punto ${number}: ${read}. ${lacks === 1 ? 'Le falta una lectura' : `Le faltan ${lacks} lecturas`}.`;
    const fails = beyond.map(({ what, limit }) => `${found[what] ?? what} ${figures.film(limit)}`);
    const verdict = fails.length === 0 ? '' : `: ${figures.list([...new Set(fails)])}, no pasa`;
    const is = came(mean.read, mean.counted, taken, figures);
    return readings.length === 1
      ? `Punto ${number}: ${is}${verdict}.`
      : `Punto ${number}: ${read}. Media ${is}${verdict}.`;
  },
  soFar: ({ told, terms, mean }, figures) =>
    `Van ${told} de ${terms.spots} puntos${mean === undefined ? '' : `, media hasta ahora ${figures.film(mean)}`}.`,
  whole: ({ terms, mean, off: taken }, figures) =>
    mean === undefined
      ? ''
      : `Dichos los ${terms.spots} puntos. Media ${figures.film(mean)}${off(taken, figures) === '' ? '' : `, ${off(taken, figures)} en cada una`}.`,
  measure: (spot, told, of) => `mida el punto ${spot} de su espesor seco (van ${told} de ${of})`,
  told: (told, of) => `Espesor seco: van ${told} de ${of} puntos`,
  half: (told, of) => `Su espesor seco está a medias: ${told} de ${of} puntos. Media serie no prueba nada.`,
  lacking: (told, of) => `espesor seco (van ${told} de ${of} puntos)`,
  dropped: (spot, readings, counts, figures) =>
    `Punto ${spot}, fuera de la media y guardadas en el registro: ${figures.films(readings)}.${counts ? ' Su regla no deja descartar tantas: cuentan.' : ''}`,
  noneOff: (profile, figures) =>
    `El perfil se midió, ${figures.film(profile)}; por él no se quita nada. Si el medidor se ajustó en chapa lisa, diga base con lo que marca en el acero desnudo.`,
  setOnProfile: 'El medidor está ajustado sobre el perfil: no se quita nada.',
  baseNotTaken: 'Su regla quita lo que da para el perfil, y además ninguna lectura del metal base.',
  terms: ({ rule, spots, readingsOfSpot, named }, area, figures) => {
    const of = area === undefined ? '' : ` para ${figures.area(area)}`;
    switch (rule.rule) {
      case 'own':
        return `La regla propia ${say.ofThe('sheet')}: ${spots} lecturas, de ${figures.film(rule.leastMicrometres)} a ${figures.film(rule.mostMicrometres)}.`;
      case 'iso-19840':
        return `ISO 19840: ${spots} puntos${of} (su tabla, de memoria), una lectura en cada uno. Ninguna por debajo del 80 % de ${figures.film(rule.nominalMicrometres)} ni por encima de ${figures.film(rule.mostMicrometres)}, y la media no menos de ${figures.film(rule.nominalMicrometres)}.`;
      case 'pa-2':
        return `SSPC-PA 2, nivel ${named.by === 'pa-2' ? named.level : ''}: ${spots} puntos${of}, con ${readingsOfSpot} lecturas al menos en cada uno, cinco puntos por área. Se pide de ${figures.film(rule.leastMicrometres)} a ${figures.film(rule.mostMicrometres)}.`;
    }
  },
  limits: (least, most, figures) =>
    `La media de un punto: desde ${figures.film(least)}${most === undefined ? '' : ` hasta ${figures.film(most)}`}.`,
  areaNotTold: (spots) => `Nadie ha dicho su área: ${spots} puntos son los menos, y nada pasa hasta que se diga.`,
  goBeside: (spot) =>
    `El punto ${spot} no pasa: mida junto a él, cada 1,5 m más o menos en ocho direcciones, hasta que vuelva a estar dentro; así se marca lo que hay que arreglar (SSPC-PA 2, de memoria). Esas lecturas no entran en la media.`,
});

export function spanishSpotTold({ spot, readings }: Extract<Unclear, { code: 'spot-told' }>, figures: Figures): string {
  return `El punto ${spot} de esta serie ya está dicho: ${figures.films(readings)}. ¿Estaba mal, o es otra serie?`;
}

export function spanishSpotRead(
  { set, spot = 1, each, near, micrometres, dropped, baseMicrometres }: FactOf<'FilmRead'>,
  figures: Figures,
): string {
  const besides = [
    dropped === undefined ? '' : `descartadas ${figures.films(dropped)}`,
    baseMicrometres === undefined ? '' : `metal base ${figures.film(baseMicrometres)}`,
  ].filter((text) => text !== '');
  const where =
    near === undefined
      ? each === true
        ? `puntos ${spot} a ${spot + micrometres.length - 1}`
        : `punto ${spot}`
      : `punto ${spot}, junto al ${near}`;
  return [`espesor seco, serie ${set} ${where}: ${figures.films(micrometres)}`, ...besides].join(', ');
}
