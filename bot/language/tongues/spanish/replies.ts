// Answers to what was said, in Spanish. Short: a card is read on a phone, at arm's length.

import type { Reacting } from '../../../../core/heat-care.ts';
import { timeOf } from '../../ending.ts';
import type { englishReplies } from '../english/replies.ts';
import { lasting } from '../lasting-objections.ts';
import {
  atTime,
  capital,
  decimals,
  methodName,
  mixExample,
  spanishNames,
  spanishPlace,
  theTime,
  told,
} from './names.ts';
import { spanishNotWritten } from './not-written.ts';
import { spanishRuleSource } from './objections.ts';
import { partsNamed } from './parts-in.ts';
import { spanishLate, spanishRingName } from './rings.ts';
import type { Spoken } from './spoken.ts';

const seenAs = { thick: 'espesa', gelled: 'gelificada' };

const potSeen: Readonly<Record<Reacting, string>> = {
  gelled: 'con la mezcla gelificada',
  hot: 'caliente',
  smoking: 'echando humo',
  bulging: 'hinchado',
};

export const spanishReplies = (say: Spoken): typeof englishReplies => {
  const inUs = say.locale === 'es-US';
  /** FDS, HDS or SDS. */
  const [, short = ''] = /\((\p{Lu}+)\)/u.exec(say.one('data-sheet')) ?? [];
  const air = inUs ? 'aire 75F 48%' : 'aire 24C 48%';
  const waste = {
    vented: `el residuo, en envase con respiradero, como dice ${say.the('sheet')}`,
    'as-sheet': `el residuo, apartado como dice ${say.the('sheet')}`,
    'loose-lid': `el residuo, apartado como dice ${say.the('sheet')}, pero nunca con tapa hermética: puede reaccionar con la humedad e hincharse`,
    'not-said': `del residuo no dice nada ${say.the('sheet')}: vea la sección 13 de ${say.the('data-sheet')}`,
  };
  return {
    ...spanishNotWritten,
    opened: (batch, sheet) => `Mezcla ${batch}: ${sheet}`,
    weighThese: 'Pese A en el recipiente, agitador en marcha, y después B sobre A. Avise cuando B esté dentro.',
    inducedThese: 'Pese A, después B sobre A, y mezcle. Avise cuando B esté dentro.',
    inventedSheet: 'Producto inventado, solo para practicar.',
    noAirKnown: 'Sin lectura del aire: los tiempos toman el lado prudente hasta que la haya.',
    weighed: (batch) => `Mezcla ${batch}: A y B juntas, corren los tiempos`,
    ratioOut: (error, tolerance, figures) =>
      `Desviación de la relación de mezcla: ${error === undefined ? '?' : figures.signedPercent(error)}; ${say.the('sheet')} admite ±${figures.percent(tolerance, 1)}. Marcado como desviación.`,
    ratioWithin: (tolerance, figures) => `Dentro del ±${figures.percent(tolerance, 1)} ${say.ofThe('sheet')}.`,
    notThePlan: (said, planned, figures) =>
      `${figures.mass(said)} en total, y lo previsto eran ${figures.mass(planned)}. Mire la báscula y su unidad.`,
    countsSince: (at, figures) =>
      told`Cuenta desde ${theTime(figures, at)}. ¿Se vertió antes de anotarlo? Mueva la hora.`,
    potLifeFromContact: 'La vida de la mezcla corre desde el primer contacto, agitación incluida.',
    stirGivenEnough: 'Agitación cumplida. Ahora, filtrar.',
    stirGivenInUse: 'Agitación cumplida. Ahora, aplicar.',
    filteredAlready: (at, figures) => `Ya está filtrada (${figures.timeDown(at)}).`,
    stirGivenCoated: (batch) =>
      `Agitación cumplida. Ya se aplicó de ella y nadie dijo que se filtrara: escriba ya filtrada ${batch}.`,
    stirStillWanted: (minutes, figures) => `Agitación pendiente: ${figures.minutesUp(minutes)}.`,
    filtered: (batch) => `Mezcla ${batch}: filtrada, en uso`,
    sayCoat: (part, batch, method) =>
      `Anote cada capa al terminarla: aplicar ${part} ${batch} ${methodName(say, method)}.`,
    thick: (batch, seen) => `Mezcla ${batch}: ${seenAs[seen]}, se acabó su vida`,
    emptyNow: (how, batch) =>
      `No aplique más. ¿Caliente al tacto? Apártese y escriba: caliente ${batch}. ¿Fría? Vacíe y lave; ${waste[how]}.`,
    gelledNow: (batch) =>
      `No aplique más ni la vacíe: puede seguir calentándose. Mientras esté fría, tapa suelta, lejos de la gente y de lo que arde. Si está o se pone caliente, apártese y escriba: caliente ${batch}.`,
    gelledWaste: (how) => `Cuando esté fría y dura: ${waste[how]}.`,
    hotNow: (batch) =>
      `Mezcla ${batch}: no entra ni sale nada más. Cuando esté fría y apartada, escriba: vacía ${batch}.`,
    swollenNow: (batch) =>
      `Mezcla ${batch}: que nadie la abra, la mueva ni la enfríe. Cuando esté fría, ya no hinchada y apartada, escriba: vacía ${batch}.`,
    stopStirrer: 'Pare el agitador.',
    ratioOffUse:
      'La relación de mezcla está desviada: no se aplica nada si un supervisor no lo permite, con su motivo.',
    notThatPot: (batch, seen) =>
      `El recipiente de la mezcla ${batch} no: está ${potSeen[seen]}. Apártese de él; no se vacía ni se lava.`,
    noFact: 'Eso es una decisión: vale desde que se toma, por quien puede tomarla, y no es un hecho que ya pasó.',
    typedLate: 'anotado tarde',
    noCoatHeld: `Sin más capas hasta que lo diga ${say.a('lead')}.`,
    noCoatWet: 'Nadie ha dicho que esté seca. Tóquela primero; ninguna capa sobre película aún húmeda.',
    hotWhich: '¿Qué mezcla? Hasta que se diga, ninguna queda parada en el registro.',
    emptied: (batch) => `Mezcla ${batch}: vaciada`,
    partNoted: (part) => `${part}: datos anotados`,
    coated: (part, method, batch) => `${part}: capa aplicada (${methodName(say, method)}, mezcla ${batch})`,
    newParts: (parts, figures) =>
      parts.length === 1
        ? `${partsNamed(parts, figures)} es nueva aquí: no se sabe el metal, la pared ni el calor que aguanta.`
        : `${parts.length} son nuevas aquí, ${partsNamed(parts, figures)}: no se sabe el metal, la pared ni el calor que aguantan.`,
    flashing: 'Corre el oreo. Cumplido el mínimo, tóquela y anótela seca.',
    dry: (part) => `${part}: película seca al tacto`,
    dryEarly: (at, figures) => `El oreo mínimo dura hasta ${theTime(figures, at, 'up')}; el curado espera.`,
    curing: (part, way) => `${part}: en curado (${way === 'oven' ? 'horno' : 'sala'})`,
    ovenClock: (celsius, figures) =>
      `Su tiempo empieza cuando una lectura en la propia pieza llegue a ${figures.temperature(celsius)}. Anótela con sonda al tenerla.`,
    roomClock: `Una noche sin lecturas no suma nada hasta que alguien diga la mínima: ${inUs ? 'noche 61F' : 'noche 16C'}.`,
    partRead: (part) => `${part}: temperatura leída`,
    notYetAtTemperature: (celsius, figures) => `Por debajo de ${figures.temperature(celsius)}: el curado aún no corre.`,
    wetInOven: `Película húmeda en el horno: ampollas, y vapor de ${say.one('solvent')} que puede arder.`,
    cureTimeGiven: 'Tiempo de curado cumplido. Eso no es liberarla.',
    takenOut: (part) => `${part}: salida de curado`,
    released: (part) => `${part}: pieza liberada`,
    shipped: (part) => `${part}: salió del taller`,
    shippedReleased: (by, at, figures) => `La liberó ${by}, ${figures.timeDown(at)}.`,
    held: (part, why) => `${part}: pieza retenida${why === '' ? '' : `, ${why}`}`,
    onHold: (why) => (why === '' ? 'Retenida' : `Retenida: ${why}`),
    filmRead: (part, state) => `${part}: espesor de película ${state === 'wet' ? 'húmeda (EPH)' : 'seca (EPS)'}`,
    asRead: 'Así se leyó',
    filmCheckOnly: 'La película húmeda sirve para ir viendo, no para dar por buena la pieza.',
    fromWetBulb: 'Humedad por el bulbo húmedo, a presión del nivel del mar (ASHRAE Fundamentals 2017, capítulo 1).',
    humidityBefore: ({ at, humidityCelsius, celsius, since }, figures) =>
      told`La humedad es de ${theTime(figures, at)}, a ${figures.temperature(humidityCelsius)}: ese mismo aire a ${figures.temperature(celsius)} tendría el ${figures.percent(since)}. Valen las dos hasta que se lea otra vez.`,
    airRead: (place) => `Aire, ${spanishPlace(place)}`,
    surfaceRead: (place) => `Sustrato, ${spanishPlace(place)}`,
    nightRead: (place) => `Mínima desde la última lectura, ${spanishPlace(place)}`,
    batchMoves: (batch, at, figures) =>
      told`Mezcla ${batch}: el tiempo de mezclado se cumple ${atTime(figures, at, 'up')}.`,
    batchPotEnds: (batch, at, figures) => told`Mezcla ${batch}: la vida de la mezcla termina ${atTime(figures, at)}.`,
    noFigure: `Aquí no da dato ${say.the('sheet')}:`,
    heard: 'Enterado',
    heardKey: (ring, by) => `${ring}: ${by}`,
    undone: 'Deshecho',
    undoneActs: (acts) => `Anulado; sigue en el registro como anulado: ${acts.join('; ')}.`,
    takenBack: (what) => `Se anula la corrección; las dos siguen en el registro: ${what}.`,
    nowStands: (what) => `Queda: ${what}`,
    amended: 'Corregido',
    was: (what) => `Antes: ${what}`,
    is: (what) => `Ahora: ${what}`,
    why: (why) => `Motivo: ${why}`,
    settled: 'Fijado',
    settledTo: (name, value) => `${name}: ${value}`,
    recordedDespite: (reason) => `Anotado como desviación. ${reason}`,
    nowDeviates: (what, reason) => `Ahora es desviación: ${what}. ${reason}`,
    judgedAnew: (batch, edition) => `Mezcla ${batch}: juzgada de nuevo por la edición ${edition} de las reglas`,
    judgedTheSame: 'No queda marcado nada que no lo estuviera.',
    nothingReopened: 'No se reabre nada más: ni retenciones, ni avisos, ni liberaciones.',
    stirPastPot: (at, figures) =>
      told`Así la vida de la mezcla termina antes que la agitación: acabe antes de ${theTime(figures, at)}. Caliente la sala, o haga otra mezcla.`,
    humidityNotRead: `Humedad sin leer: no se compara con ${say.the('sheet')}.`,
    potOver: 'vida de la mezcla terminada, por vaciar',
    happenedAt: (at, late, figures) => `Pasó ${atTime(figures, at)}, anotado ${figures.minutesUp(late)} después.`,
    askedBy: (sources, law, figures) =>
      `Lo ${sources.length === 1 ? 'pide' : 'piden'}: ${figures.list(sources.map((source) => spanishRuleSource(say, source, law)))}.`,
    notNow: (codes) => (codes.some((code) => lasting.has(code)) ? 'No se puede' : 'Todavía no'),
    notClear: 'No queda claro',
    notYours: 'No le toca decidirlo',
    notRead: 'No se entiende',
    whichAct: (acts) => (acts === 1 ? '¿Es esto?' : '¿Cuál de estas?'),
    takenAs: (line) => `Entendido como: ${line}`,
    untaken: (typed) => `Ningún botón dice «${typed}»: dígalo aparte.`,
    lineMeant: (line) => (line.startsWith('ya ') ? `¿${line.slice(3)}, ya hecho?` : `¿${line}?`),
    nothingRecorded: 'No se ha anotado nada.',
    movedUnderThumb: (pressed, before) =>
      `La tarjeta cambió bajo el pulgar: se pulsó «${pressed}», y hasta hace un momento ahí ponía «${before}». ¿Cuál se quería?`,
    pressedOlder: (pressed, now) =>
      `«${pressed}» se pulsó en una tarjeta anterior; ahora ahí pone «${now}». ¿Cuál se quería?`,
    pressedOlderMovedOn: (pressed) =>
      `«${pressed}» se pulsó en una tarjeta anterior: desde entonces se ha anotado algo. Mire cómo está y pulse otra vez.`,
    tapSays: (label, line) => `${label}: ${line}`,
    toTell: (people, figures) => `Por avisar: ${figures.list(people)}`,
    ringLate: (minutes, why, figures) => `Con ${figures.minutesUp(minutes)} de retraso: ${spanishLate[why]}.`,
    ringRepeat: 'Puede que ya se dijera: el primer intento quedó sin respuesta.',
    ringAgain: (ring) => `Aviso ${ring}: nadie ha contestado.`,
    ringMoved: 'Avisa otra vez: cambió su hora.',
    ringUnrecorded: 'Avisa de memoria: no se puede escribir el registro.',
    askReading: 'Lea la temperatura y anótela: lo que hay en el registro no basta para comprobar el tiempo.',
    askNight: `Escriba la mínima del tiempo que nadie leyó: ${inUs ? 'noche 61F' : 'noche 16C'}.`,
    askPartReading: 'Ninguna lectura en la pieza lo comprueba. Lea la propia pieza y anótela con sonda.',
    now: 'Ahora',
    nothingRuns: (figures) => `No hay nada en marcha. Empiece con ${air}, después ${mixExample(figures)}.`,
    batchStands: (batch, sheet, state) => `Mezcla ${batch} ${sheet}: ${state}`,
    rings: (ring, ending, figures) => `${timeOf(figures, ending)} ${ring}`,
    day: (date, figures) => `El día: ${figures.date(date)}`,
    idleDay: 'Ese día no se anotó nada.',
    dayBatch: (batch, sheet, { partAGrams, partBGrams }, error, figures) =>
      `Mezcla ${batch} ${sheet}: A ${figures.asRead(partAGrams)}, B ${figures.asRead(partBGrams)}, desviación de la relación ${error === undefined ? '?' : figures.signedPercent(error)}`,
    dayBatchUnweighed: (batch, sheet) => `Mezcla ${batch} ${sheet}: sin pesar`,
    dayStir: (batch, wanted, given, figures) =>
      `Mezcla ${batch}, agitación: requerida ${figures.minutesUp(wanted)}, cumplida ${figures.minutesDown(given)}`,
    dayStirNoFigure: (batch, given, figures) =>
      `Mezcla ${batch}, agitación: sin dato en ${say.the('sheet')}, cumplida ${figures.minutesDown(given)}`,
    dayMethod: (method, parts, figures) => `${methodName(say, method)}: ${figures.list(parts)}`,
    dayWaiting: (part, dryAt, figures) => `${part}: seca ${atTime(figures, dryAt)}, y sin curar desde entonces`,
    dayCuring: (part, at, figures) =>
      `${part}: en curado${at === undefined ? '' : `, avisa ${atTime(figures, at, 'up')}`}`,
    dayDeviation: (at, who, what, permitted, figures) =>
      `! ${figures.timeDown(at)} ${who}: ${what}${permitted === undefined ? '' : ` (con permiso previo: ${permitted})`}`,
    dayLateRing: (key, minutes, figures) =>
      `Aviso tardío: ${spanishRingName(say, key, figures)}, ${figures.minutesUp(minutes)}`,
    dayUnanswered: (key, times, figures) =>
      `Sin contestar: ${spanishRingName(say, key, figures)}${times === 1 ? '' : ` (${times} veces)`}`,
    dayCorrection: (at, who, was, is, why, figures) =>
      `Corregido ${atTime(figures, at)} por ${who}: antes ${was}, ahora ${is}${why === '' ? '' : ` (${why})`}`,
    help: 'Qué se puede escribir',
    helpNow: (step) => `Ahora: ${step}.`,
    helpAsk: (lines) => `Pregunte: ${lines.join(', ')}; o por qué, de cualquier dato.`,
    helpMore: (lines) => `Más: ${lines.join(', ')}; o ayuda y una palabra, ayuda aplicar.`,
    helpHow:
      'El orden da igual; la unidad dice qué es cada número. A todo se le puede añadir a las 9:40 o hace 10 min.',
    helpMay: (what) => `También puede decir: ${what.join(', ')}.`,
    helpSettled: {
      crew: (what) => `Lo fija cualquiera: ${what.join(', ')}.`,
      lead: (what) =>
        `Lo fija ${say.a('lead')} o un supervisor: ${what.join(', ')}. Si no hay, quien tenga el mayor rango.`,
      supervisor: (what) => `Lo fija un supervisor: ${what.join(', ')}. Si no hay, quien tenga el mayor rango.`,
    },
    helpSaid: {
      crew: 'Lo dice cualquiera.',
      lead: `Lo dice ${say.a('lead')} o un supervisor. Si no hay, quien tenga el mayor rango.`,
      supervisor: 'Lo dice un supervisor. Si no hay, quien tenga el mayor rango.',
    },
    helpObjects: (count) =>
      count === 1
        ? 'Antes de hacerlo, una regla puede oponerse.'
        : `Antes de hacerlo, ${count} reglas pueden oponerse.`,
    helpRules: (act) => `${act}: qué puede oponerse, y de quién es la regla`,
    helpLifted: {
      lead: `Lo puede permitir antes ${say.a('lead')}, con la misma línea, permiso y el motivo:`,
      supervisor: 'Lo puede permitir antes un supervisor, con la misma línea, permiso y el motivo:',
      nobody: 'Nadie puede permitirlo antes:',
    },
    helpRule: (code, source, law) => `${spanishNames(say).rule(code)}: ${spanishRuleSource(say, source, law)}`,
    howToLeave: 'Para salir',
    howToLeaveLines: ['Pulse Ctrl-D. Lo anotado se conserva; cuando esto acaba, aquí no sale ningún aviso.'],
    waiting: (at, figures) => `En espera hasta ${theTime(figures, at, 'up')}`,
    cannotWait: 'Aquí el reloj corre solo.',
    noSuchTap: (id, ids) =>
      `No hay botón ${id} en su última tarjeta${ids.length === 0 ? '' : `; hay: ${ids.join(', ')}`}.`,
    greeting: 'Batchbell',
    greetingLines: [
      'Lleva los tiempos, los cálculos y el registro de cada mezcla.',
      `Para empezar: ${air}   después   ${inUs ? 'mezclar 5lb' : decimals(say, 'mezclar 2,4kg')}   después   pesar 1 1201g 1198g`,
      'Ayuda: ayuda.   Salir: Ctrl-D.',
    ],
    sheetFaults: (faults) =>
      `${capital(say.by('sheet', 'estos', 'estas'))} ${say.many('sheet')} tienen errores y no abren mezclas: ${faults}`,
    caution: `Batchbell avisa y registra: no mide gases, no enclava, no autoriza. Mandan: instrucciones del producto, ${short}, programa de la empresa, normas locales y técnico habilitado.`,
  };
};
