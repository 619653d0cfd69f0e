// Parts, their surfaces, films and cures, and the people about them, in Spanish.

import type { CrewUnclear } from '../../../../core/crew/crew-unclear.ts';
import type { RubResult } from '../../../../core/grades.ts';
import type { HeatUp } from '../../../../core/part/heat-up.ts';
import type { LoadUnclear } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';
import type { englishParts } from '../english/parts.ts';
import { spanishRoles } from './chat.ts';
import { spanishExposure } from './exposure.ts';
import { spanishDryToCome, spanishFilm } from './film.ts';
import { spanishFilmTests } from './film-tests.ts';
import { spanishFirstShiftUnclear } from './first-shift.ts';
import { spanishHeld } from './held.ts';
import { spanishInstruments } from './instruments.ts';
import {
  atEnding,
  atTime,
  capital,
  counted,
  handoverLine,
  methodName,
  spanishMetal,
  takeoverLine,
  taking,
} from './names.ts';
import { spanishNewParts } from './new-parts.ts';
import { partsNamed, spanishPartsIn } from './parts-in.ts';
import { spanishAskedBefore, spanishLackingTold, spanishStillAsked } from './release.ts';
import { spanishRingName } from './rings.ts';
import type { Spoken } from './spoken.ts';
import { spanishSpots } from './spots.ts';
import { spanishFigureNames, spanishSurfaceBreach } from './steel.ts';
import { spanishSurface, spanishSurfaceAsked, spanishSurfaceLimits } from './surface.ts';
import { spanishAlarmPlaced } from './troubles.ts';

const startsOf = (say: Spoken): Readonly<Record<HeatUp['start'], string>> => ({
  'part-reading': 'su última lectura',
  surface: 'su superficie, leída antes',
  room: 'el aire de la sala',
  'lowest-of-sheet': `el aire más frío ${say.ofThe('sheet')}, pues nadie lo leyó`,
});

export const spanishRubs: Readonly<Record<RubResult, string>> = {
  'no-effect': 'sin efecto',
  softened: 'se ablanda',
  through: 'llega a lo de debajo',
};

const details = { metal: 'metal', wall: 'pared', area: 'área', bears: 'calor que aguanta' };

export const spanishParts = (say: Spoken): typeof englishParts => ({
  ...spanishSurface,
  held: spanishHeld(say),
  instruments: spanishInstruments,
  spots: spanishSpots(say),
  limits: (limits, figures) => spanishSurfaceLimits(say, limits, figures),
  asked: (asked, figures) => spanishSurfaceAsked(say, asked, figures),
  figureNames: spanishFigureNames(say),
  filmTests: spanishFilmTests(say),
  breach: (breach, figures) => spanishSurfaceBreach(say, breach, figures),
  stages: {
    handle: 'se puede manipular',
    service: `puede entrar en servicio según ${say.the('sheet')}`,
    full: 'resistencia completa',
  },
  several: (count) => `${count} piezas: anotadas`,
  detail: (parts, known, figures) =>
    `${partsNamed(parts, figures)}: ${known.length > 0 ? known.join(', ') : `aún no se ha dicho nada de ${parts.length === 1 ? 'ella' : 'ellas'}`}`,
  unread: (words, metals, figures) =>
    `Sin entender ni anotar: ${figures.list(words)}. Metales conocidos: ${figures.list(metals.map(spanishMetal))}; cualquier otro va detrás de la palabra material.`,
  bears: (celsius, figures) => `aguanta ${figures.temperature(celsius)}`,
  unknownDetails: (parts, what, figures) =>
    `No se sabe de ${partsNamed(parts, figures)}: ${figures.list(what.map((each) => details[each]))}.`,
  prepared: (part, how) => `${part}: superficie preparada${how === '' ? '' : `, ${how}`}`,
  noSurfaceLife: (sheets, figures) =>
    `${figures.list(sheets)} no ${sheets.length > 1 ? 'dicen' : 'dice'} cuánto dura una superficie preparada: aplique pronto, y pregunte qué admite el trabajo.`,
  surfaceLifeOf: (sheet) => `Lo que dura, según ${say.the('sheet')} de ${sheet}.`,
  surfaceRead: (part) => `${part}: temperatura del sustrato`,
  surfaceNotRead: (parts, figures) =>
    `Falta leer la superficie de ${partsNamed(parts, figures)}: sin ella no se sabe el margen sobre el punto de rocío.`,
  surfaceOfPlace: (part) => `De ${part} nadie ha leído la superficie; se toma la del lugar.`,
  readSurfaces: (part, figures) =>
    `Antes de cada capa, lea el propio sustrato: superficie ${part} ${figures.units === 'us' ? '66F' : '19C'}.`,
  spreadNeeds: 'Sin el aire de la sala no hay punto de rocío con que comparar.',
  in: spanishPartsIn,
  meant: spanishNewParts(say),
  touchedUp: (part, method, batch, pass) =>
    `${part}: pasada ${pass} de la misma capa (${methodName(say, method)}, mezcla ${batch})`,
  noOpenTime: `${capital(say.the('sheet'))} no da tiempo abierto: no retoque.`,
  estimate: ({ ovenCelsius, start, startAt }, transfer, figures) =>
    `Estimado, sin medir: desde ${startsOf(say)[start]}${start === 'part-reading' ? ` (${figures.timeDown(startAt)})` : ''}, en horno a ${figures.temperature(ovenCelsius)}, pared calentada por las dos caras, ${transfer} W/(m² K) de memoria, sin fuente. Lea la pieza.`,
  byPace: (celsius, readAt, figures) =>
    `Estimación por la lectura (${figures.timeDown(readAt)}) y su ritmo desde la anterior, en un horno a ${figures.temperature(celsius)}. Lea la pieza.`,
  provedAt: (least, inAll, longest, figures) =>
    `A ${figures.temperature(least)} o más, por sus lecturas: ${figures.minutesDown(inAll)} en total, ${figures.minutesDown(longest)} lo más largo sin corte.`,
  noEstimate: 'Sin medir: ese tiempo solo cuenta desde que entró. Lea la propia pieza y anótela con sonda.',
  notMeasured: (label) => `${label}, estimado, sin medir`,
  readAgain: (readAt, due, figures) =>
    `Cuenta hasta su última lectura, ${atTime(figures, readAt)}, y no más: léala otra vez ${due === undefined ? 'ahora' : atTime(figures, due, 'up')}, o lo de en medio no cuenta.`,
  askAt: (at, figures) => `Léala ${atTime(figures, at, 'up')}, más o menos.`,
  doors: (count, minutes, figures) =>
    `Puerta abierta ${count === 1 ? 'una vez' : `${count} veces`}${minutes === undefined ? '' : `, ${figures.minutesUp(minutes)} en total`}: vuelva a leer la pieza.`,
  cureNotProved: 'Ninguna lectura comprueba su curado: no está cumplido ni liberada.',
  heldAgain: (parts, figures) =>
    `Liberadas antes de saberse esto, y retenidas desde ahora: ${partsNamed(parts, figures)}.`,
  heldThoughGone: (parts, figures) =>
    `Salieron del taller antes de saberse esto: ${partsNamed(parts, figures)}. Avise al cliente; que las retengan donde están o que las traigan de vuelta.`,
  doorOpened: (parts) => `${parts}: puerta abierta`,
  readOn: (part, others, figures) =>
    `Leído en ${part}, la última en calentarse; vale también para ${figures.list(others)}. Con el nombre de la pieza, la lectura es solo suya.`,
  humidityOutside: (minutes, lowest, highest, figures) =>
    `${figures.minutesDown(minutes)} que no cuentan: humedad fuera de lo que pide ${say.the('sheet')}, de ${figures.percent(lowest)} a ${figures.percent(highest)}.`,
  humidityUnknown: (minutes, figures) => `${figures.minutesDown(minutes)} que no cuentan: nadie leyó la humedad.`,
  roomCure: (proved, night, unread, figures) => {
    const by = `Por las lecturas${night ? ' y la mínima dicha' : ''} consta el ${figures.percent(Math.floor(proved * 100))}`;
    return unread === undefined ? `${by}.` : `${by}; ${figures.minutesUp(unread)} sin leer no cuentan.`;
  },
  roomCureEnds: (end, at, figures) => {
    const given = { 'read-on': 'Si se sigue leyendo', told: 'Si eso se dice', untold: 'Tal como está' };
    return `${given[end]}, termina ${atTime(figures, at, 'up')}.`;
  },
  nightHumidity: 'No se leyó la humedad de la noche: se toma la de las lecturas de antes y después.',
  adhesion: (part, rating) => `${part}: adherencia ${rating}`,
  adhesionScale: (rating) =>
    rating.endsWith('B')
      ? 'ASTM D3359 método B: 5B no se levanta nada, 0B más del 65 %.'
      : 'ISO 2409: 0 no se levanta nada, 5 lo peor.',
  rub: (part, count, result) => `${part}: ${count} dobles frotes, ${spanishRubs[result]}`,
  rubMeaning: `Que la película aguante ${say.the('solvent')} no basta para darla por curada del todo.`,
  coupon: 'En una probeta testigo, no en la pieza.',
  deviationsOn: (count) => `${count === 1 ? 'Hay 1 desviación' : `Hay ${count} desviaciones`} en ella:`,
  deviation: (at, who, what, permitted, figures) =>
    `! ${figures.timeDown(at)} ${who}: ${what}${permitted === undefined ? '' : ` (permitido antes: ${permitted})`}`,
  filmNotRead: 'Nadie ha leído su espesor de película seca (EPS).',
  film: (finding, figures) => spanishFilm(say, finding, figures),
  dryToCome: (dry, figures) => spanishDryToCome(say, dry, figures),
  dryNotKnown: `${capital(say.the('sheet'))} no da los sólidos: no se sabe cuánto será en seco.`,
  onShift: (who) => `${who}: entra de turno`,
  offShift: (who) => `${who}: sale de turno`,
  nowOn: (names, figures) => `De turno: ${figures.list(names)}.`,
  nobodyOn: 'Nadie ha dicho que esté de turno.',
  stillRings: (count) =>
    `Le ${count === 1 ? 'queda' : 'quedan'} ${counted(count, 'aviso', 'avisos')}. Escriba: ${handoverLine(say)}.`,
  handedOver: (to) => `${capital(say.one('handover'))} a ${to}`,
  handoverAll: (to) =>
    `Desde ahora todo lo que está en marcha avisa también a ${to}, y solo a esa persona cuando ${taking(say, 'tome', 'reciba')}.`,
  handoverOwn: (to) =>
    `Lo que le avisa a usted avisa también a ${to}, y solo a esa persona cuando ${taking(say, 'tome', 'reciba')}.`,
  handoverFrom: (from) =>
    `${from} ${taking(say, 'le da', 'le entrega')}. Lea lo que sigue y escriba: ${takeoverLine(say)}.`,
  takenOver: (who, from) => `${who} ${taking(say, 'toma', 'recibe')} de ${from}`,
  nothingAlive: 'No hay nada en marcha.',
  snoozed: (ring) => `Aplazado: ${ring}`,
  snoozedUntil: (ending, who, figures) => `Vuelve a avisar ${atEnding(figures, ending)}, a ${who}.`,
  ringPutOff: (ring) => `Aviso ${ring}: se había aplazado.`,
  lifted: (who, role, why, reason) => `! Permitido antes por ${who} (${role}): ${why}. ${reason}`,
  roles: spanishRoles(say),
  curesMorning: (part, ending, figures) =>
    `${part}: en curado${ending === undefined ? '' : `, avisa ${atEnding(figures, ending)}`}`,
  askedBefore: (job, lacking, figures) => spanishAskedBefore(say, job, lacking, figures),
  lacking: {
    ...spanishLackingTold(say),
    asks: (job, limits, figures) =>
      `${capital(say.the('job'))} ${job} pide: ${spanishSurfaceLimits(say, limits, figures)}.`,
  },
  stillAsked: (job, lacking, figures) => spanishStillAsked(say, job, lacking, figures),
  askNight: (figures) => `Escriba la mínima de la noche: noche ${figures.units === 'us' ? '61F' : '16C'}.`,
});

export function spanishCrewUnclear(
  say: Spoken,
  unclear: CrewUnclear | Exclude<LoadUnclear, { code: 'far-reading' }>,
  figures: Figures,
): string {
  switch (unclear.code) {
    case 'no-such-person':
      return `Aquí nadie se llama ${unclear.person}. Gente: ${figures.list(unclear.known)}.`;
    case 'may-not-settle': {
      const whose = { crew: say.the('crew'), lead: `${say.a('lead')} o un supervisor`, supervisor: 'un supervisor' }[
        unclear.wanted
      ];
      return `Eso lo fija ${whose}: ${figures.list(unclear.who)}.`;
    }
    case 'may-not-judge':
      return `Juzgar una mezcla de nuevo es de ${unclear.wanted === 'supervisor' ? 'un supervisor' : say.a('lead')}: ${figures.list(unclear.who)}.`;
    case 'handover-to-self':
      return `Ese nombre es el suyo. Nombre a quien ${taking(say, 'toma', 'recibe')}.`;
    case 'nothing-to-take-over':
      return unclear.waitsFor === undefined
        ? `Nadie ${taking(say, 'le ha dado', 'le ha entregado')}. Quien se va escribe: ${handoverLine(say)}.`
        : `${say.locale === 'es-ES' ? 'El relevo' : 'El turno'} es para ${unclear.waitsFor}: quien lo recibe lo escribe.`;
    case 'not-snoozed':
      return `«${spanishRingName(say, unclear.key, figures)}» no se aplaza: sigue corriendo, avise o no. Hágalo, o conteste enterado al recibirlo.`;
    case 'no-countdown':
      return unclear.isOn
        ? `Ya sonó y se ha llamado a todos. Lo termina ${say.a('lead')} o un supervisor: fin de alarma.`
        : 'No se ha llamado a nadie, ni se llamará.';
    case 'no-first-shift':
      return spanishFirstShiftUnclear(unclear, figures);
    case 'no-alarm-on':
      return 'No hay ninguna alarma en marcha.';
    case 'which-alarm': {
      const on = figures.list(unclear.alarms.map((alarm) => spanishAlarmPlaced(say, alarm)));
      return unclear.isOther ? `Esa no está en marcha. En marcha: ${on}.` : `¿Cuál terminó? En marcha: ${on}.`;
    }
    case 'more-than-a-day':
      return spanishExposure(say).tooLong(unclear.person, unclear.hours, figures);
    case 'which-load':
      return unclear.loads.length === 0
        ? 'No hay nada en el horno. Nombre la pieza.'
        : `¿Qué carga? En el horno: ${unclear.loads.map((load) => figures.list(load)).join('; ')}.`;
  }
}
