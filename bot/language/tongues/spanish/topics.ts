// Answers about one thing of the shop, its people or its sheet, in Spanish: the answer first, then how it is known. Never that
// something is safe.

import type { englishTopics } from '../english/topics.ts';
import { capital, methodName } from './names.ts';
import type { Spoken } from './spoken.ts';

const count = (many: number, one: string, more: string): string => `${many} ${many === 1 ? one : more}`;

export const spanishTopics = (say: Spoken): typeof englishTopics => ({
  onlyStanding: 'Qué se preguntó exactamente no queda claro. Así está:',
  ask: {
    'how-long': '¿Cuánto falta?',
    'who-did': '¿Quién y cuándo?',
    'where-is': '¿Dónde?',
    trace: 'Todo su registro',
  },
  ringsNext: (at, label) => `Lo siguiente que suena, ${at}: ${label}`,
  ringsThen: (at, label) => `${at} ${label}`,
  nothingRings: 'No hay nada por sonar',
  rang: (at, label) => `Sonó a las ${at}: ${label}`,
  nothingRang: 'En este turno no ha sonado nada',
  watches: (person, place) => `${person} vigila fuera (${place}) y recibe los avisos`,
  nobodyWatches: (place) => `Nadie vigila fuera (${place})`,
  timersGoTo: (people, figures) => `Los avisos van a ${figures.list(people)}.`,
  spraysThere: (people, figures) => `Pintan: ${figures.list(people)}.`,
  staysOut: (people, figures) => `Se quedan fuera: ${figures.list(people)}.`,
  noSession: 'No hay ninguna sesión de pintura abierta',
  inCharge: (people, figures) => `De turno y al mando: ${figures.list(people)}`,
  nobodyInCharge: 'Según el registro no hay nadie al mando de turno',
  ofRole: (role, people, figures) => `${role}: ${figures.list(people)}`,
  notOnShift: 'no está de turno según el registro',
  noOneToAsk: 'En la lista no hay nadie al mando.',
  mayNot: (person) => `${person} no está entre quienes pueden pintar con pistola aquí`,
  sprayedBy: (people, figures) => `Pueden pintar con pistola: ${figures.list(people)}.`,
  anybodySprays: 'Nadie ha fijado quién puede pintar con pistola: por eso, cualquiera.',
  notBriefed: (person) => `${person} no está en ${say.by('brief', 'ningún', 'ninguna')} ${say.one('brief')} en curso`,
  briefNotRead: (person) => `${person} todavía no ha confirmado ${say.the('brief')}`,
  briefRead: (person) => `${person} está en ${say.the('brief')} y ya lo dijo`,
  movedOut: (person) => `${person} quedó fuera según ${say.the('brief')}`,
  fanFirst: 'No hay sesión de pintura abierta; si la extracción funciona se dice en una.',
  worn: (what) => what.join(' ').replace(/\.$/, ''),
  notSaidWorn: (sheet) =>
    `${capital(say.the('sheet'))} de ${sheet} no dice qué ponerse: véase ${say.the('data-sheet')} del fabricante`,
  alsoSpray: `Para pintar con pistola dicen más ${say.the('brief')} y la máscara.`,
  wornTap: '¿Qué máscara?',
  toCoat: (many, names, figures) => `${count(many, 'pieza', 'piezas')} por pintar: ${figures.list(names)}`,
  noneToCoat: 'Según el registro ninguna pieza espera su capa',
  onHold: (names, figures) => `Retenidas: ${figures.list(names)}`,
  nothingOnHold: 'No hay nada retenido',
  counted: (each, figures) => `Piezas: ${figures.list(each)}`,
  countedAs: (many, phase) => `${many} ${phase}`,
  named: (phase, names, figures) => `${capital(phase)}: ${figures.list(names)}`,
  noParts: 'No hay ninguna pieza anotada',
  coats: (name, many) => `${name}: ${many === 0 ? 'todavía sin capa' : count(many, 'capa', 'capas')}`,
  coatFrom: (batch, method, at, by, figures) =>
    `mezcla ${batch}, ${methodName(say, method)}, ${figures.timeDown(at)} ${by}`,
  ofCan: (component, lot, can) => `${component}: lote ${lot}, ${say.one('can')} ${can}`,
  noDetails: (name) => `${name}: nadie ha dicho de ella más que su nombre`,
  area: (area) => `superficie ${area}`,
  bears: (name, celsius, figures) => `${name}: aguanta hasta ${figures.temperature(celsius)}`,
  bearsUnknown: (name) => `${name}: nadie ha dicho qué calor aguanta`,
  ovenOfSheet: (at, highest, lasts, figures) =>
    `${capital(say.one('oven'))} según ${say.the('sheet')}: ${figures.minutesUp(lasts)} a ${figures.temperature(at)}, ${figures.temperature(highest)} como máximo`,
  expires: (name, lot, day, days, figures) =>
    `${name}, lote ${lot}: caduca el ${figures.date(day)}${days === undefined ? '' : days < 0 ? ', ya pasó' : `, quedan ${days} días`}`,
  noExpiry: (name, lot) => `${name}, lote ${lot}: nadie ha dicho cuándo caduca`,
  openUntil: (day, figures) => `Abierta sirve hasta el ${figures.date(day)} según ${say.the('sheet')}.`,
  noCans: `No hay ${say.by('can', 'ningún', 'ninguna')} ${say.one('can')} en el registro`,
  lidOff: (name, since, lasts, figures) =>
    `${name}: sin tapa desde las ${figures.timeDown(since)}, ${figures.minutesUp(lasts)}`,
  lidOn: (name) => `${name}: con la tapa puesta, según el registro`,
  noLidOff: `Según el registro no hay ${say.by('can', 'ninguno', 'ninguna')} sin tapa`,
  ratio: (a, b, basis, tolerance, figures) =>
    `A con B ${figures.decimal(a)} : ${figures.decimal(b)} en ${basis === 'weight' ? 'peso' : 'volumen'}, desviación máxima ${figures.percent(tolerance)}`,
  ratioTo: (given, mass, other, needed, figures) =>
    `Para ${figures.mass(mass)} de ${given}: ${figures.mass(needed)} de ${other}`,
  enoughFor: (many, area, mass) => `${count(many, 'pieza', 'piezas')} de ${area}: ${mass} de mezcla`,
  massBetween: (lowest, highest, figures) =>
    lowest === highest ? figures.mass(lowest) : `de ${figures.mass(lowest)} a ${figures.mass(highest)}`,
  areaTaken: (from) => `Del tamaño de ${from}.`,
  inPots: (pot, mass, coats) => `${pot}: ${mass}. ${coats}`,
  inCans: (component, mass, figures) => `${component} ya abierta: ${figures.mass(mass)}`,
  noArea: 'Nadie ha dicho qué tamaño tienen las piezas: diga cuántas y de cuánto, 3 x 0,8m2.',
  emergency: (text) => `Emergencias: ${text}`,
  noEmergency: 'Los números de emergencia del taller no están puestos',
  bySheet: (name) => `Según ${say.the('sheet')} de ${name}, no por un reloj en marcha.`,
  notOnSheet: (what, sheet) => `${what}: ${say.the('sheet')} de ${sheet} no da cifra. Pregunte al fabricante.`,
  sheetOf: {
    'sheet-air': 'Aire',
    'sheet-surface': 'Superficie',
    'sheet-blend': 'Tiempo de mezclado',
    'sheet-pot-life': 'Vida de la mezcla',
    'sheet-film': 'Película seca',
    'sheet-flash': 'Oreo',
    'sheet-recoat': 'Segunda capa',
    'sheet-cure': 'Curado',
    'sheet-flush': 'Lavar con',
  },
  titled: (what, figure) => `${what}: ${figure.replace(/^\D+: (?=\d)/, '').replace(/\.$/, '')}`,
  air: (lowest, highest, humidity, spread, figures) =>
    `de ${figures.temperature(lowest)} a ${figures.temperature(highest)}, humedad ${humidity}, acero al menos ${spread} sobre el punto de rocío`,
  atAir: (lasts, celsius, figures) => `${figures.minutesUp(lasts)} con el aire leído, ${figures.temperature(celsius)}`,
  upTo: (figure) => `hasta ${figure}`,
  between: (lowest, highest) => `de ${lowest} a ${highest}`,
  film: (lowest, highest, figures) => `de ${figures.film(lowest)} a ${figures.film(highest)}`,
  flash: (least, most, figures) =>
    `al menos ${figures.minutesUp(least)} y hasta que esté seca al tacto, por lo común antes de ${figures.minutesUp(most)}`,
  recoatForbidden: `ninguna, ${say.the('sheet')} prohíbe otra capa sobre la película`,
  recoat: (opens, closes, figures) =>
    `de ${figures.minutesUp(opens)} a ${figures.minutesUp(closes)} después de la última`,
  ovenCure: (lasts, at, figures) => `${figures.minutesUp(lasts)} con la propia pieza a ${figures.temperature(at)}`,
  roomCure: (law) => `${capital(say.one('room'))}: ${law.replace(/^\D+: (?=\d)/, '')}`,
  thenSolvent: ', luego ',
  pure: (solvent, share) => `${solvent} de ${share}`,
});
