// The spray brief, its session and what to do in need, in Spanish. No sentence here passes a verdict: it says what was
// said, by whom, what was not, and what the source asks for.

import type { BriefLineId } from '../../../../core/session/brief-lines.ts';
import type { Gear, Qualification, Work } from '../../../../core/session/session-commands.ts';
import type { englishSession } from '../english/session.ts';
import { atTime, spanishDay, spanishEmergencyWord, spanishPlace, spanishSource, spanishWho, theTime } from './names.ts';

const lines: Readonly<Record<BriefLineId, string>> = {
  vessel:
    'No vale para trabajar dentro de un tanque o recipiente. Ahí manda el permiso de la empresa para espacios confinados.',
  extraction:
    'Extracción en marcha y con la velocidad frontal medida: al menos 0,51 m/s (100 ft/min) en el frente abierto.',
  'supplied-air':
    'Sin extracción, como mínimo aire suministrado para todos los expuestos. Si basta con la extracción lo dicen la ficha y la evaluación escrita de la empresa.',
  downstream:
    'Quien está en la cabina a favor del aire, detrás de la pieza, lleva aire suministrado o el equipo respiratorio que manda el programa.',
  'moved-out': 'Los demás, fuera. Quien se queda está tan expuesto como el que pinta.',
  'skin-and-eyes':
    'Capucha o gafas cerradas, los guantes que nombran las fichas de datos de seguridad, traje cerrado en cuello y puños.',
  bonding:
    'Unir con cable los dos recipientes en cada trasvase y conectarlos a tierra: verter, agitar, pistola y lavado.',
  earthing: 'Cabina, conductos, tuberías y la propia pieza, a tierra.',
  ignition: 'Ni llama ni nada que eche chispas a menos de 6 m (20 ft), salvo que lo separe un tabique.',
  phones: 'Teléfonos, radios y relojes se quedan fuera: nadie escribe dentro de la zona de pistola.',
  sprinklers: 'Los recubrimientos de dos componentes solo se pulverizan en cabinas aprobadas con rociadores.',
  'hot-work': 'Los trabajos en caliente de alrededor, parados.',
  extinguisher: 'Extintor a mano y con el paso libre.',
  eyewash: 'Lavaojos a mano y probado esta semana.',
  'second-person': 'Otra persona fuera, que vea el interior y pueda pedir ayuda.',
  'data-sheets': 'Leídas las fichas de datos de seguridad de las dos partes.',
  'days-supply': 'Cerca de la pistola, no más líquido del que se gasta en un día o turno.',
  'fan-after': 'La extracción sigue en marcha mientras se pinta y después, hasta que salgan los vapores del secado.',
  'vapour-dip':
    'El vapor sobre el baño, el escurrido y las piezas húmedas se mantiene por debajo de un cuarto del límite inferior de explosividad.',
  'vapour-mix': 'Mezclar donde salgan al menos 18 m³/h de aire por m² de suelo (1 ft³/min por ft²).',
  'ignition-path':
    'Ninguna fuente de ignición por donde pueda llegar el vapor: pesa más que el aire y corre por el suelo.',
  covered: 'Los recipientes, tapados cuando no se usan.',
  gloves: 'Los guantes que nombran las fichas de datos de seguridad; cambiarlos cuando calan.',
  'bonding-pour': 'Al verter, unir con cable boquilla y recipiente. El plástico no se puede unir.',
  'air-pressure': 'No sacar nunca el líquido de un recipiente con aire a presión.',
  rags: 'Los trapos, a un bote metálico cerrado que se vacía cada día o turno.',
  'wipe-solvent':
    'Para limpiar con trapo, un disolvente con punto de inflamación de 38 °C (100 °F) o más; más bajo, solo para pistolas, en la cabina y con la extracción en marcha.',
};

const works: Readonly<Record<Work, string>> = {
  spray: 'Pistola',
  mix: 'Mezclado',
  flow: 'Flujo',
  dip: 'Inmersión',
  wipe: 'Trapo, brocha y rodillo',
};

const gears: Readonly<Record<Gear, string>> = { gun: 'pistola', vessels: 'recipientes' };

const qualifications: Readonly<Record<Qualification, string>> = {
  fit: 'prueba de ajuste',
  medical: 'reconocimiento médico',
  training: 'formación de pintor',
};

const practice = 'práctica común, sin fuente';

const troubles: typeof englishSession.troubles = {
  eyes: {
    title: 'Salpicadura en los ojos',
    now: {
      text: 'Lavar ya con mucha agua, con los párpados abiertos, 15 minutos como mínimo: en el lavaojos o con cualquier agua limpia. Mientras se lava, otra persona pide ayuda.',
      source: '15 minutos: norma ANSI/ISEA Z358 de lavaojos, y práctica de primeros auxilios',
    },
    section: 'Ficha de datos de seguridad de lo que salpicó: sección 4, primeros auxilios',
    never: ['No frotar. No pararse a buscar primero la ficha.'],
  },
  spill: {
    title: 'Derrame',
    now: {
      text: 'Fuera quien no haga falta. Ni chispas ni interruptores. Cortar lo que sale si se puede desde donde se está.',
      source: practice,
    },
    section: 'Ficha de datos de seguridad de lo derramado: sección 6, medidas en caso de derrame',
    never: ['No encender ni apagar nada entre el vapor. No cerrar con tapa hermética lo que reacciona con la humedad.'],
  },
  fire: {
    title: 'Fuego',
    now: {
      text: 'Todos fuera, ya. Dar la alarma, llamar al número desde fuera, salir a recibir a quien venga.',
      source: practice,
    },
    section: 'Fichas de datos de seguridad: sección 5, lucha contra incendios',
    never: ['No volver a entrar. No echar agua al disolvente que arde.'],
  },
  down: {
    title: 'Persona caída',
    now: {
      text: 'No entrar sin aire respirable propio: el segundo que entra es el siguiente en caer. Llamar ya al número y mirar desde fuera qué la tumbó: vapor, gas inerte, un golpe, la electricidad.',
      source: practice,
    },
    section: 'Fichas de datos de seguridad: sección 4, primeros auxilios',
    never: ['No tocarla mientras pueda estar bajo tensión.'],
  },
  hot: {
    title: 'Una mezcla se calienta',
    now: {
      text: 'Lejos de la gente y de lo que arde, con la tapa suelta, si todavía se puede mover. Después, apartarse.',
      source: practice,
    },
    section: 'Fichas de datos de seguridad: secciones 7 y 10, manipulación y reactividad',
    never: ['No cerrarla hermética. No respirar lo que suelta.'],
  },
};

export const spanishSession: typeof englishSession = {
  lines,
  works,
  gears,
  qualifications,
  troubles,
  callForHelp: (what) => `Pedir ayuda: ${what}`,
  briefed: (session) => `Sesión ${session}: charla anotada`,
  titled: (session, what) => `Sesión ${session}: ${what}`,
  insideVessel:
    'Dentro de un tanque: esta charla no vale. Hace falta el permiso de la empresa para espacios confinados.',
  what: (place, sheet, batch) => `${spanishPlace(place)}; ${sheet}${batch === '' ? '' : `; mezcla ${batch}`}`,
  startsAt: (time) => `Empieza ${atTime(time)}.`,
  sprays: (people) => `Con la pistola: ${people}`,
  stays: (people) => `Cerca, con exposición: ${people}`,
  nobodyNear: 'No se nombró a nadie cerca. ¿Quién más hay? Decir cerca lia fuera, o cerca lia queda.',
  movedOut: (people) => `Fuera de la zona: ${people}`,
  attendant: (person) => `Vigila desde fuera, con los avisos: ${person}`,
  noAttendant: (people) => `No se nombró a nadie que vigile desde fuera: los avisos van a ${people}.`,
  acknowledged: (person, time, witness) =>
    `Leída por ${person}, ${time}${witness === undefined ? '' : `, ante ${witness}`}`,
  notAcknowledged: (people) =>
    `Pendiente de leer: ${people}. Cada uno dice leída, fuera de la zona, o un testigo dice leída y el nombre.`,
  extractionNotSaid:
    'Extracción: nadie ha dicho nada. Decir extracción sí 0,6m/s, extracción sí (sin medir) o extracción no.',
  extractionOff: (by, time) => `Extracción: no, según ${by} ${atTime(time)}`,
  extractionOn: (velocity, by, time) => `Extracción: en marcha, ${velocity}, según ${by} ${atTime(time)}`,
  notMeasured: 'velocidad frontal sin medir',
  suppliedNotSaid: 'Aire suministrado: nadie ha dicho nada. Decir suministrado sí, o suministrado no.',
  supplied: (yes, by, time) => `Aire suministrado: ${yes ? 'sí' : 'no'}, según ${by} ${atTime(time)}`,
  outOfDate: (person, what, until) => `Caducado: ${what} de ${person}, ${spanishDay(until)}`,
  undated: (person, what) => `Sin fecha anotada: ${what} de ${person}`,
  noSpray: (sheet) => `La ficha ${sheet} no da tiempo máximo de pistola ni disolventes: preguntar al fabricante.`,
  lapses: (spell) =>
    `Deja de valer si cambia la persona, la mezcla, la cabina o el turno${spell === '' ? '' : `, y ${spell} después de empezar la pistola`}.`,
  emergencyNotSet: 'Faltan los teléfonos del taller. Decir fijar emergencia teléfono, y los números.',
  emergencyCall: (text) => `Teléfonos: ${text}`,
  allAcknowledged: 'Leída por todos los expuestos.',
  read: 'charla leída',
  extraction: 'extracción',
  suppliedAir: 'aire suministrado',
  starts: 'empieza la pistola',
  stops: 'para la pistola',
  started: 'Empieza la pistola. Desde ahora nadie escribe dentro; los avisos van fuera.',
  stopped: 'Para la pistola. Lavarla ahora, en la cabina y con la extracción en marcha.',
  flushed: (gear) => `lavado de ${gear}`,
  flushNext: (gear, steps) => `Lavado de ${gear}, falta: ${steps}.`,
  flushSequence: (steps, source) => `Lavar con ${steps} (${spanishSource(source)}).`,
  noFlushOnSheet: 'La ficha no da lavado: usar lo que diga el fabricante.',
  flushConflict: (flush, coating) =>
    `Punto de inflamación más bajo que el de los disolventes del propio recubrimiento (${coating}): ${flush}. La norma pide un disolvente de lavado que no lo tenga más bajo; la secuencia de la ficha dice otra cosa. Decide la empresa.`,
  ragsIn: 'filtros y trapos en su bote cerrado',
  closed: 'cerrada',
  fanUntil: (time) => `Dejar la extracción en marcha hasta ${theTime(time)}.`,
  stillToDo: (what) => `Falta: ${what}.`,
  todo: { gun: 'lavar la pistola', vessels: 'lavar los recipientes', rags: 'filtros y trapos a su bote cerrado' },
  neverSprayed: 'No se usó la pistola en ella.',
  sumOnly: 'Que salga el cálculo no es haberlo comprobado. Nadie leyó un medidor de gases para esto.',
  sumTerms: (share, factor, assumed) =>
    `Para quedar por debajo del ${share} del límite inferior de explosividad; factor de mezcla de aire ${factor}${assumed ? ', supuesto: nadie lo ha fijado' : ''}.`,
  wholePot: 'Nadie dijo cuánto se pinta por hora: se supone la mezcla entera.',
  fanFromSum: (minutes) =>
    `Por cálculo, el aire de la cabina ha salido cuatro veces en ${minutes}; vale el mayor entre eso y el tiempo de la ficha.`,
  fanUnknown:
    'Ni la ficha ni un cálculo dicen cuánto sigue la extracción: dejarla hasta que no quede nada húmedo en la cabina.',
  noSum: 'Sin cálculo: la ficha no da disolventes, o nadie sabe cuánto se pinta.',
  noBooth: (place) => {
    const name = spanishPlace(place);
    return `No consta el frente abierto (${name}): decir fijar cabina ${place === 'booth' ? '' : `${name} `}4m2.`;
  },
  withoutFigure: (solvents) => `No entran en la cuenta, por falta de un dato publicado: ${solvents}.`,
  fanNotMeasured: 'No se sabe el caudal que da el ventilador.',
  worstOven: 'Contado como si todo el disolvente saliera en el horno.',
  oven: (mass, temperature) => `Carga del horno: ${mass} en húmedo, ${temperature}`,
  purge: (gas, amount, room) => `${gas === 'argon' ? 'Argón' : 'Nitrógeno'}: ${amount} soltados en ${room}`,
  purgeMixed: 'Bien mezclado y sin aire nuevo. Lo que se respira solo lo sabe un medidor.',
  purgeDeficient: (limit) => `Por debajo del ${limit}: falta oxígeno. No entra nadie sin el permiso de la empresa.`,
  settles: 'El argón se queda abajo: cerca del suelo y en fosos hay menos oxígeno que este.',
  hazardsOf: (work) => `${work}: qué mirar`,
  callNumber: (text) => `Llamar: ${text}`,
  doNow: (text, source) => `${text} (${source})`,
  callNotSet: 'Faltan los teléfonos del taller.',
  shopSteps: (text) => `Aquí: ${text}`,
  shopStepsNotSet: (field) => {
    const word = spanishEmergencyWord(field);
    return `Faltan los pasos del taller: decir fijar emergencia ${word}, y los pasos.`;
  },
  note: (text) => `Se dijo: ${text}`,
  deferTo: (section) => `${section}. Eso y el programa de la empresa van antes que estas líneas.`,
  nearMiss: 'Casi accidente anotado',
  nearMissText: (text) => `"${text}"`,
  anonymous: 'No queda ningún nombre.',
  bellTest: (people) => `Prueba de avisos: ${people}`,
  bellLines:
    'Suena en el teléfono de cada uno, y cada uno dice enterado en el suyo. El encargado sabrá quién no contestó.',
  qualified: (person, what, until) => `${what} de ${person}: hasta el ${spanishDay(until)}`,
  near: (people, goes) => `${people}: ${goes}`,
  goes: { sprays: 'con la pistola', stays: 'cerca, con exposición', out: 'fuera' },
  daySession: (session, people, solvent, open) =>
    `Sesión ${session}: expuestos ${people}${solvent === '' ? '' : `; lavado con ${solvent}`}${open === '' ? '' : `; falta: ${open}`}`,
  dayTold: (time, who, what) => `${time} ${spanishWho(who)}: ${what}`,
  settings: {
    on: 'sí',
    off: 'no',
    nobodyNamed: 'cualquiera: no hay lista',
    quiet: (from, to) => `de ${from} a ${to}; lo crítico suena igual`,
  },
};
