// Practice in Spanish.

import type { englishPractice } from '../english/practice.ts';
import { type PracticeTyped, verbWords } from '../typed.ts';

export const spanishPractice: typeof englishPractice = {
  titled: (clock, title) => `PRÁCTICA ${clock} · ${title}`,
  begun: 'empieza',
  begunLines: [
    'Aquí nada cuenta: todo es inventado, no suena a nadie más y nada se guarda.',
    'El reloj está parado hasta que usted lo mueva: un toque, o espera 20m.',
    'Un grito de auxilio es real también aquí: fuego, caído, ojos y demás llaman a la gente. Para dejarlo: práctica fuera.',
  ],
  goesOn: 'sigue',
  onward: (clock, left) => `Hasta las ${clock} (${left})`,
  wait: 'espera',
  invented: (line) => `Inventado: ${line}`,
  lessonDone: 'era todo el camino, de la lata cerrada a la pieza en curado. Pruebe más, o: práctica fuera',
  nothingRings: 'Así como está, a usted no le suena nada. Para que pase el tiempo: espera 20m.',
  askedOfShop: 'Esto es la práctica: no sabe nada del taller. Para el registro del taller: práctica fuera.',
  rangMeanwhile: (title) => `En el taller, para usted: ${title}. Conteste en su propio aviso, o: práctica fuera.`,
  noPapers: 'sin papeles',
  noPapersLine: 'La práctica no escribe papeles ni dibujos: alguien podría tomarlos por los del taller.',
  over: 'Fin de la práctica',
  done: ({ lines, batches, inCure, objections, shopMinutes }, figures) =>
    `${figures.count(lines)} líneas, ${shopMinutes} de taller: mezclas ${figures.count(batches)}, piezas en curado ${figures.count(inCure)}, objeciones ${figures.count(objections)}.`,
  keepInMind: 'Recuerde:',
  counts: 'Desde ahora, lo que diga cuenta.',
  ended: 'La práctica terminó: no se registró nada',
  endedWhy: {
    idle: 'Nadie había dicho nada en ella en 2 h.',
    restarted: 'El programa se inició de nuevo, y la práctica no se guarda.',
    crowded: 'Otros empezaron a practicar, y la suya era la más callada.',
    left: 'Lo que tocó era un aviso de la práctica.',
  },
  endedLine: (said) => `Usted dijo: ${said}. Si era para el taller, dígalo otra vez, o tóquelo.`,
  forShop: (line) => `Para el taller: ${line}`,
  forPractice: (line) => `Para la práctica: ${line}`,
  which: '¿Para el taller o para la práctica?',
  whichLine: 'Está practicando, y lo dijo bajo un mensaje del taller. Todavía no se registra nada.',
  real: 'Esto es el registro del taller, no la práctica.',
  cried: 'Esto es real: se llama a la gente y la práctica terminó. Si solo practicaba, avíseles, y: deshacer.',
  alarmOn: 'Hay una alarma: la práctica terminó, y esto fue al taller.',
  notNow: 'Con una alarma no se practica',
  noMark: 'Ahora no se puede empezar la práctica',
  noMarkLine: 'No se puede anotar que practica, y tras un reinicio sus líneas contarían.',
  none: 'No está practicando',
  noneLine: 'Para empezar: práctica.',
  onPage: 'PRÁCTICA: no es el taller. Para dejarla: práctica fuera',
};

export const spanishPracticeTyped: PracticeTyped = {
  waits:
    /^(?:ok |y |por favor )*(?:(?:esperar?|espere|espero|adelanta|adelante|sigue|siga|avanza|avance|salta)(?: (?:hasta|las?|el|a|al|otros|otras|mas|siguiente|proximo|aviso|timbre|que|suene))*(?<rest> .+)?|(?:el )?(?:siguiente|proximo) (?:aviso|timbre)|(?<later>.+) (?:despues|mas tarde))(?: por favor)?$/,
};

export const spanishPracticeVerbs = {
  practice: verbWords(
    'práctica, practica, practicar, quiero practicar, déjame practicar, déjeme practicar, empezar práctica, vamos a practicar',
    'práctica',
    'empieza, empezar, by, please, on, la',
  ),
  'practice-off': verbWords(
    'práctica fuera, fuera práctica, terminar práctica, fin práctica, salir práctica, salir de la práctica, dejar práctica, práctica off, práctica terminada',
    'práctica fuera',
    'of, de, la, by, please',
  ),
};
