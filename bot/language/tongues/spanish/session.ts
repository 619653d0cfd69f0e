// The spray brief, its session and what to do in need, in Spanish. No sentence here passes a verdict: it says what was
// said, by whom, what was not, and what the source asks for.

import type { SensitiserKind, Sensitisers } from '../../../../core/products/sheet-spray.ts';
import type { BriefLineId } from '../../../../core/session/brief-lines.ts';
import type { Qualification, Work } from '../../../../core/session/session-commands.ts';
import type { Figures } from '../../figures.ts';
import type { englishSession } from '../english/session.ts';
import { spanishBreathing, spanishFanOff } from './breathing.ts';
import { spanishCartridge } from './cartridge.ts';
import { spanishExposure } from './exposure.ts';
import { spanishMonitor } from './gas.ts';
import { spanishGears } from './gears.ts';
import { spanishMask } from './mask.ts';
import {
  atTime,
  capital,
  decimals,
  inCountry,
  spanishEmergencyWord,
  spanishNames,
  spanishPlace,
  spanishWho,
  theTime,
  told,
} from './names.ts';
import type { Spoken } from './spoken.ts';
import { spanishAlarmName, spanishAlarmPlaced, spanishAlarmsOver, spanishHeats, spanishTroubles } from './troubles.ts';

function linesOf(say: Spoken): Readonly<Record<BriefLineId, string>> {
  const inUs = say.locale === 'es-US';
  const either = (metric: string, us: string) => (inUs ? us : metric);
  return {
    vessel:
      'No vale para trabajar dentro de un tanque o recipiente: ahí manda el permiso de la empresa para espacios confinados.',
    extraction: `Extracción en marcha y velocidad frontal medida: al menos ${either('0,51 m/s', '100 ft/min')} en el frente abierto, ${either('0,64 m/s', '125 ft/min')} si la cabina es tan pequeña que no cabe nadie.`,
    'supplied-air': `Sin extracción, al menos aire suministrado para todos los expuestos. Si basta la extracción lo dicen ${say.the('sheet')} y la evaluación escrita de la empresa.`,
    downstream:
      'Quien esté en la cabina detrás de la pieza, a favor del aire, lleva aire suministrado o el equipo de respiración del programa.',
    'moved-out': 'Los demás, fuera. Quien se queda está tan expuesto como quien pinta.',
    'skin-and-eyes': `Capucha o ${say.one('goggles')}, los guantes de ${say.theMany('data-sheet')}, traje cerrado en cuello y puños.`,
    bonding:
      'Una con cable los dos recipientes en cada trasvase y conéctelos a tierra: verter, agitar, pistola, lavado.',
    earthing: 'Cabina, conductos, tuberías y la propia pieza, a tierra.',
    ignition: `Ni llama ni chispas a menos de ${either('6 m', '20 ft')}, salvo que lo separe un muro.`,
    phones: 'Teléfonos, radios y relojes, fuera: dentro nadie escribe.',
    sprinklers: 'Los recubrimientos de dos componentes solo se pulverizan en cabinas aprobadas con rociadores.',
    'hot-work': 'Trabajos en caliente de alrededor, parados.',
    extinguisher: 'Extintor a mano y con el paso libre.',
    eyewash: 'Lavaojos a mano y probado esta semana.',
    'second-person': 'Otra persona fuera, que vea el interior y pueda pedir ayuda.',
    'data-sheets': `Leídas ${say.theMany('data-sheet')} de las dos partes.`,
    'days-supply': 'Cerca de la pistola, no más líquido del que se gasta en un día o turno.',
    'fan-after': 'La extracción sigue mientras se pinta y después, hasta que salgan los vapores del secado.',
    'vapour-dip':
      'El vapor sobre el baño, el escurrido y las piezas húmedas queda por debajo del 25 % del límite inferior de explosividad (LIE).',
    'vapour-wipe':
      'Que el aire se mueva donde se pasa trapo, brocha o rodillo: el vapor queda por debajo del 25 % del límite inferior de explosividad (LIE).',
    'vapour-mix': `Mezcle donde salgan al menos ${either('18 m³/h de aire por m² de suelo', '1 ft³/min de aire por ft² de piso')}.`,
    'ignition-path': 'Ninguna fuente de ignición por donde llegue el vapor: pesa más que el aire y corre por el suelo.',
    covered: 'Recipientes tapados cuando no se usan.',
    gloves: `Los guantes de ${say.theMany('data-sheet')}; cámbielos cuando se traspasen.`,
    'bonding-pour': 'Al verter, una con cable boquilla y recipiente. El plástico no se puede unir.',
    'air-pressure': 'No saque nunca el líquido de un recipiente con aire a presión.',
    rags: 'Los trapos, a un contenedor metálico cerrado que se vacía cada día o turno.',
    'wipe-solvent': `Para limpiar con trapo, ${say.a('solvent')} con punto de inflamación de ${either('38 °C', '100 °F')} o más; más bajo, solo para pistolas, en la cabina y con la extracción en marcha.`,
  };
}

const worksOf = (say: Spoken): Readonly<Record<Work, string>> => ({
  spray: capital(say.one('spraying')),
  mix: 'Mezclado',
  flow: 'Flujo',
  dip: 'Inmersión',
  wipe: 'Trapo, brocha y rodillo',
});

const todo = {
  gun: 'lavar la pistola',
  vessels: 'lavar los recipientes',
  rags: 'filtros y trapos a su contenedor cerrado',
};

const goes = { sprays: 'pinta', stays: 'cerca, con exposición', out: 'fuera' };

export const spanishSensitisers: Readonly<Record<SensitiserKind, string>> = {
  isocyanates: 'isocianatos',
  silanes: 'silanos',
  amines: 'aminas',
};

function sensitiserSaid(say: Spoken, { kind, limit }: Sensitisers['named'][number], figures: Figures): string {
  if (limit === undefined) return spanishSensitisers[kind];
  const over = { day: 'en la jornada', short: 'en 15 min', ceiling: 'nunca más' }[limit.over];
  return `${spanishSensitisers[kind]} (${figures.ppm(limit.partsPerMillion)} ${over}, ${spanishNames(say).source(limit.source)})`;
}

export const spanishQualifications = (say: Spoken): Readonly<Record<Qualification, string>> => ({
  fit: 'prueba de ajuste',
  medical: say.one('medical'),
  training: say.one('training'),
});

export function spanishSession(say: Spoken): typeof englishSession {
  const troubles = spanishTroubles(say);
  const qualifications = spanishQualifications(say);
  const listed = (ids: Parameters<typeof englishSession.withoutFigure>[0]) =>
    ids.map((id) => spanishNames(say).solvent(id));
  return {
    lines: linesOf(say),
    works: worksOf(say),
    gears: spanishGears,
    qualifications,
    troubles,
    heats: spanishHeats(say),
    callForHelp: (alarm) => (alarm === 'emergency' ? 'Llamar a todos' : `Pedir ayuda: ${troubles[alarm].title}`),
    callUsual: (number) => `Llame: ${number} (desde cualquier móvil; faltan los teléfonos del taller)`,
    mayBeCry: '¿Alguien necesita ayuda?',
    alarmPlaced: (alarm) => spanishAlarmPlaced(say, alarm),
    allAlarms: 'Todas',
    standsOn: (alarm, at, by, figures) =>
      told`ALARMA, ${spanishAlarmName(say, alarm)}: desde ${theTime(figures, at)}, avisó ${by}`,
    countsDown: (what, seconds) =>
      `Puede ser una alarma, ${troubles[what].title.toLowerCase()}: se llama a todos en ${seconds} s, salvo que alguien escriba no`,
    drillOn: (what, at, figures) =>
      told`SIMULACRO, no ha pasado nada (${troubles[what].title.toLowerCase()}): desde ${theTime(figures, at)}`,
    ringsUnless: (seconds) => `Se llama a todos en ${seconds} s, salvo que alguien escriba no.`,
    calledOff: 'Sin alarma: no se llama a nadie',
    alarmOver: 'Fin de alarma',
    ended: (over, figures) => spanishAlarmsOver(say, over, figures),
    drill: (what) => `Simulacro: ${troubles[what].title}`,
    drillSaid: 'Es un simulacro: no ha pasado nada. Cada uno hace lo que dice el plan del taller y escribe enterado.',
    untilClear: (place) =>
      `${place === undefined ? 'Sigue en marcha' : `No empieza nada nuevo en ${spanishPlace(place)}`} hasta el fin de alarma: lo da ${say.a('lead')} o un supervisor.`,
    briefed: (session) => `Sesión ${session}: ${say.one('brief')} de seguridad`,
    titled: (session, what) => `Sesión ${session}: ${what}`,
    insideVessel: `Dentro de un tanque ${say.this('brief')} no vale: hace falta el permiso de la empresa para espacios confinados.`,
    what: (place, sheet, batch) => `${spanishPlace(place)}; ${sheet}${batch === undefined ? '' : `; mezcla ${batch}`}`,
    behindTaps: 'Lea también, con los botones: todas las líneas y el cálculo del aire.',
    startsAt: (at, figures) => told`Empieza ${atTime(figures, at)}.`,
    sprays: (people, figures) => `${people.length === 1 ? 'Pinta' : 'Pintan'}: ${figures.list(people)}`,
    stays: (people, figures) => `Cerca, con exposición: ${figures.list(people)}`,
    nobodyNear: 'No se nombró a nadie cerca. ¿Quién más hay? Escriba: cerca lia fuera, o cerca lia queda.',
    movedOut: (people, figures) => `Fuera de la zona: ${figures.list(people)}`,
    attendant: (person) => `Vigila desde fuera, con los avisos: ${person}`,
    noAttendant: (people, figures) => `Nadie vigila desde fuera: los avisos van a ${figures.list(people)}.`,
    acknowledged: (person, at, witness, figures) =>
      `Firmada por ${person}, ${atTime(figures, at)}${witness === undefined ? '' : `, ante ${witness}`}`,
    notAcknowledged: (people, figures) =>
      `Falta por firmar: ${figures.list(people)}. Cada uno escribe firmada fuera de la zona, o un testigo escribe firmada y el nombre.`,
    extractionNotSaid: `Extracción: nadie ha dicho nada. Escriba: extracción sí ${say.locale === 'es-US' ? '120ft/min' : decimals(say, '0,6m/s')}, extracción sí (sin medir) o extracción no.`,
    extractionOff: (by, at, figures) => `Extracción: no, según ${by} ${atTime(figures, at)}`,
    extractionOn: (velocity, by, at, figures) =>
      `Extracción: en marcha, ${velocity === undefined ? 'velocidad frontal sin medir' : figures.speed(velocity)}, según ${by} ${atTime(figures, at)}`,
    notMeasured: 'velocidad frontal sin medir',
    suppliedNotSaid: 'Aire suministrado: nadie ha dicho nada. Escriba: suministrado sí, o suministrado no.',
    supplied: (yes, by, at, figures) => `Aire suministrado: ${yes ? 'sí' : 'no'}, según ${by} ${atTime(figures, at)}`,
    outOfDate: (person, what, until, figures) =>
      `${say.by(what === 'fit' ? 'brief' : what, 'Caducado', 'Caducada')}: ${qualifications[what]} de ${person}, ${figures.date(until)}`,
    undated: (person, whats, figures) =>
      `Sin fecha anotada: ${figures.list(whats.map((what) => qualifications[what]))} de ${person}`,
    noSpray: (sheet) =>
      `${capital(say.the('sheet'))} ${sheet} no da tiempo máximo de pistola ni ${say.many('solvent')}: pregunte al fabricante.`,
    lapses: (spell, figures) =>
      `Deja de valer si cambia la persona, la mezcla, la cabina o el turno${spell === undefined ? '' : `, y ${figures.minutesDown(spell)} después de empezar a pintar`}.`,
    emergencyNotSet: 'Faltan los teléfonos de emergencia. Escriba: fijar emergencia teléfono, y los números.',
    emergencyCall: (text) => `Teléfonos de emergencia: ${text}`,
    allAcknowledged: 'Firmada por todos los expuestos.',
    read: `${say.one('brief')} firmada`,
    extraction: 'extracción',
    suppliedAir: 'aire suministrado',
    starts: 'empieza la aplicación a pistola',
    stops: 'aplicación terminada',
    started: 'Desde ahora nadie escribe dentro; los avisos van fuera.',
    stopped: 'Lave la pistola ahora, en la cabina y con la extracción en marcha.',
    toClean: (waiting, figures) => `Limpie enseguida: ${figures.list(waiting.map((gear) => spanishGears[gear]))}.`,
    cleaned: (gear, solvent) =>
      `${capital(spanishGears[gear])}: ${solvent === undefined ? 'limpieza hecha' : spanishNames(say).solvent(solvent)}`,
    flushed: (gear) => `${gear === 'gun' ? 'pistola lavada' : 'recipientes lavados'}`,
    flushStep: (gear, solvent) => `lavado de ${spanishGears[gear]} con ${spanishNames(say).solvent(solvent)}`,
    flushNext: (gear, left, figures) => `Lavado de ${spanishGears[gear]}, falta: ${figures.list(listed(left))}.`,
    flushSequence: (steps, source, figures) => {
      const names = steps.map(({ solvent, purityPercent }) =>
        purityPercent === undefined
          ? spanishNames(say).solvent(solvent)
          : `${spanishNames(say).solvent(solvent)} al ${figures.percent(purityPercent)}`,
      );
      const inOrder = names.length > 1 ? 'Lave primero con' : 'Lave con';
      return `${inOrder} ${names.join(' y después con ')} (${spanishNames(say).source(source)}).`;
    },
    noFlushOnSheet: `${capital(say.the('sheet'))} no da lavado: use lo que diga el fabricante.`,
    flushConflict: (lower, coating, figures) => {
      const flush = lower.map(
        ({ solvent, flash }) => `${spanishNames(say).solvent(solvent)} ${figures.temperature(flash)}`,
      );
      return `Punto de inflamación más bajo que el de ${say.theMany('solvent')} del recubrimiento (${figures.temperature(coating)}): ${figures.list(flush)}. La norma pide para lavar ${say.a('solvent')} que no lo tenga más bajo; la secuencia ${say.ofThe('sheet')} dice otra cosa. Decide la empresa.`;
    },
    potNotFit: (batch, phase, dueAt, figures) =>
      `La mezcla ${batch} aún no se puede pintar: ${phase}${dueAt === undefined ? '' : told`, acaba ${atTime(figures, dueAt, 'up')}`}.`,
    fanOffSpraying: spanishFanOff,
    fanStays: (until, figures) =>
      until === undefined
        ? 'La extracción sigue durante el lavado, hasta que no quede nada húmedo en la cabina.'
        : told`La extracción sigue durante el lavado, y al menos hasta ${theTime(figures, until, 'up')}.`,
    flushNow: (until, figures) =>
      told`Ahora, en la cabina y con la extracción en marcha, que sigue al menos hasta ${theTime(figures, until, 'up')}. Avisa hasta que alguien anote el lavado.`,
    asAt: (at, answered, figures) => `Como ${atTime(figures, at)}, sin cambios: ${answered.join('; ')}`,
    breathing: spanishBreathing,
    exposure: spanishExposure(say),
    mask: spanishMask(say),
    cartridge: spanishCartridge,
    monitor: spanishMonitor(say),
    briefsOff: (by, at, figures) =>
      `Antes de pintar a pistola no se pide ${say.one('brief')}: lo quitó ${by} ${atTime(figures, at)}.`,
    fromOutside: 'se pinta desde fuera, nadie dentro',
    saidFromOutside: (by, at, figures) =>
      `Se pinta desde fuera, nadie dentro: según ${by} ${atTime(figures, at)}, para esta sesión.`,
    confinedPlace: (place) =>
      `${spanishPlace(place)}: por su nombre es un espacio confinado. ${capital(say.this('brief'))} no vale: hace falta el permiso de la empresa para espacios confinados.`,
    ragsIn: 'filtros y trapos en su contenedor cerrado',
    closed: 'cerrada',
    fanUntil: (at, figures) => told`Deje la extracción en marcha hasta ${theTime(figures, at, 'up')}.`,
    stillToDo: (what, figures) => `Falta: ${figures.list(what.map((each) => todo[each]))}.`,
    neverSprayed: 'En ella no se pintó a pistola.',
    sumOnly: 'Es un cálculo, no una comprobación: nadie leyó un medidor de gases.',
    sumTerms: (share, factor, assumed, figures) =>
      `Para no pasar del ${figures.percent(share * 100)} del LIE; factor de mezcla de aire ${figures.decimal(factor)}${assumed ? ', supuesto: nadie lo ha fijado' : ''}.`,
    wholePot: 'Nadie dijo cuánto se pinta por hora: se supone la mezcla entera.',
    fanFromSum: (minutes, figures) =>
      `Por cálculo, el aire de la cabina ha salido cuatro veces en ${figures.minutesUp(minutes)}; vale el mayor entre eso y el tiempo ${say.ofThe('sheet')}.`,
    fanUnknown: `Ni ${say.the('sheet')} ni un cálculo dicen cuánto sigue la extracción: déjela hasta que no quede nada húmedo en la cabina.`,
    noSum: `Sin cálculo: ${say.the('sheet')} no da ${say.many('solvent')}, o nadie sabe cuánto se pinta.`,
    noBooth: (place) => {
      const name = spanishPlace(place);
      return `No consta el frente abierto (${name}). Escriba: fijar cabina ${place === 'booth' ? '' : `${name} `}${say.locale === 'es-US' ? '40ft2' : '4m2'}.`;
    },
    withoutFigure: (solvents, figures) =>
      `No entran en la cuenta, por falta de un dato publicado: ${figures.list(listed(solvents))}.`,
    fanNotMeasured: 'No se sabe el caudal del extractor.',
    ovenNoSolvents: (sheet) =>
      `${capital(say.the('sheet'))} de ${sheet} no da ${say.many('solvent')}: no hay cálculo para esta carga. Pregunte al fabricante antes de calentarla.`,
    ovenNoFigure: (ids, figures) =>
      `Sin cálculo: no se ha leído el límite inferior de explosividad de ${figures.list(listed(ids))}. Pregunte al fabricante antes de calentarla.`,
    ovenTooHot: (hottest, figures) =>
      `Sin cálculo: su fuente no da cifras por encima de ${figures.temperature(hottest)}.`,
    ovenDoor: (area, figures) => `${figures.area(area)} es el área de una puerta y no la de un conducto: no se cuenta.`,
    ovenDuct: `Fije el área de su conducto de salida, no la de la puerta: ${inCountry(say, 'fijar cabina horno 0,05m2')}. Después su velocidad: ${inCountry(say, 'ventilación horno 800g 90C 2m/s')}.`,
    ovenPurge: (purge, figures) => `Extractor en marcha ${figures.minutesUp(purge)} antes de calentar.`,
    ovenVapour:
      'El vapor de una carga húmeda arde: antes de calentar, cuatro volúmenes de aire fresco, 3 min como mínimo, y el extractor sigue en marcha',
    ovenLoad: (mixed, flow, oven, figures) =>
      `En el horno hay ${say.the('solvent')} de ${figures.mass(mixed)} de mezcla como mucho: el extractor debe mover ${figures.flowUp(flow)} a ${figures.temperature(oven)}.`,
    worstOven: `Contado como si ${say.theMany('solvent')} salieran por completo en el horno.`,
    oven: (grams, celsius, figures) =>
      `Carga del horno: ${figures.mass(grams)} en húmedo, ${figures.temperature(celsius)}`,
    purge: (gas, amount, room, figures) =>
      `${gas === 'argon' ? 'Argón' : 'Nitrógeno'}: ${figures.volume(amount)} en ${figures.volume(room)} de sala`,
    purgeMixed: 'Bien mezclado y sin aire nuevo. Lo que se respira solo lo sabe un medidor.',
    purgeDeficient: (percent, figures) =>
      `Por debajo del ${figures.percent(percent, 1)}: falta oxígeno. No entra nadie sin el permiso de la empresa.`,
    settles: 'El argón se queda abajo: cerca del suelo y en fosos hay menos oxígeno que este.',
    hazardsOf: (work) => `${worksOf(say)[work]}: qué mirar`,
    callNumber: (text) => `Llame: ${text}`,
    doNow: (text, source) => `${text} (${source})`,
    shopSteps: (text) => `Aquí: ${text}`,
    shopStepsNotSet: (field) =>
      `Faltan los pasos del taller. Escriba: fijar emergencia ${spanishEmergencyWord(field)}, y los pasos.`,
    note: (text) => `Se dijo: ${text}`,
    deferTo: (section) => `${section}. Eso y el programa de la empresa van antes que estas líneas.`,
    nearMiss: 'Casi accidente anotado',
    nearMissText: (text) => `«${text}»`,
    anonymous: 'No queda ningún nombre.',
    bellTest: (people, figures) => `Prueba de avisos: ${figures.list(people)}`,
    bellLines: `Suena en el teléfono de cada uno, y cada uno escribe enterado en el suyo. ${capital(say.the('lead'))} sabrá quién no contestó.`,
    qualified: (person, what, until, figures) =>
      `${qualifications[what]} de ${person}: hasta el ${figures.date(until)}`,
    assessed: ({ place, sheet, method, until, supplied }, figures) =>
      `${supplied === true ? 'solo con' : 'sin'} aire suministrado, según evaluación: ${spanishPlace(place)}, ${sheet}, ${spanishNames(say).method(method)}, hasta el ${figures.date(until)}`,
    assessedTitle: 'Evaluación del supervisor',
    restsOn: ({ by, place, until, at }, sheet, figures) =>
      `Sin aire suministrado, según la evaluación de ${by} ${atTime(figures, at)} para ${spanishPlace(place)} y ${sheet}: hasta el ${figures.date(until)}.`,
    assessmentIdle: (sheet) =>
      `Todavía no sirve: ${say.the('sheet')} ${sheet} nombra un sensibilizante respiratorio, o no dice si lo lleva.`,
    sensitisers: (named, figures) =>
      `Sensibilizante respiratorio según ${say.the('sheet')}: ${figures.list(named.map((each) => sensitiserSaid(say, each, figures)))}. Aire suministrado, o no se pinta.`,
    sensitisersOpen: `Sensibilizantes respiratorios: ${say.the('sheet')} no lo dice. Mientras no lo diga cuenta como que lleva: aire suministrado, o no se pinta.`,
    near: (people, whereTo, figures) => `${figures.list(people)}, ${goes[whereTo]}`,
    goes,
    daySession: (session, people, solvent, open, figures) =>
      `Sesión ${session}: ${people.length === 1 ? 'persona expuesta' : 'personas expuestas'}, ${figures.list(people)}${solvent === undefined ? '' : `; lavado con ${figures.volume(solvent)}`}${open.length === 0 ? '' : `; falta: ${figures.list(open.map((each) => todo[each]))}`}`,
    daySprayed: (by, parts, { list }) => `${by === undefined ? 'Nadie dijo quién' : `Pintó ${by}`}: ${list(parts)}`,
    dayTold: (at, who, what, figures) => `${figures.timeDown(at)} ${spanishWho(who)}: ${what}`,
    settings: {
      on: 'sí',
      off: 'no',
      nobodyNamed: 'cualquiera: no hay lista',
      quiet: (from, to, figures) => `de ${figures.hour(from)} a ${figures.hour(to)}; lo crítico suena igual`,
    },
  };
}
