// El primer turno en español: cómo se hace cada cosa y por qué, en una línea, y lo que se dice alrededor.

import type { CrewUnclear } from '../../../../core/crew/crew-unclear.ts';
import type { Lesson } from '../../../../core/guide/lessons.ts';
import type { FactOf } from '../../../../core/history.ts';
import type { Figures } from '../../figures.ts';
import type { englishFirstShift, Taught } from '../english/first-shift.ts';
import { verbWords } from '../typed.ts';
import type { Spoken } from './spoken.ts';

const lessonsOf = (say: Spoken): Readonly<Record<Lesson, Taught>> => ({
  'read-air': {
    how: 'lea el higrómetro donde va a recubrir, cuando ya no se mueva.',
    why: 'lo que dura cada paso depende del aire.',
  },
  'name-parts': {
    how: 'un nombre corto para cada una, el de su etiqueta; y el calor que aguanta, si lo sabe.',
    why: 'dentro de un año alguien pregunta qué lleva cada pieza.',
  },
  mix: {
    how: 'nombre antes las demás piezas; después diga cuánto en total (plan lo calcula). A y B salen solas.',
    why: `lo que no se usa dentro de ${say.the('pot-life')} es residuo.`,
  },
  'name-can': {
    how: 'la parte, el lote y el tamaño como están en la etiqueta, y si está cerrada o abierta.',
    why: 'el lote dice después qué lleva la pieza.',
  },
  'open-can': {
    how: 'lea el lote y el tamaño en la etiqueta; lo que el aire estropea se abre con el gas a mano.',
    why: 'destapada ya no dura mucho; el lote dice después qué lleva la pieza.',
  },
  'stir-can': {
    how: 'despacio y desde el fondo, hasta que se vea igual por todas partes.',
    why: 'lo que se ha asentado da una porción equivocada.',
  },
  weigh: {
    how: 'recipiente en la báscula y a cero; primero A, agitador en marcha, después B sobre A. Diga lo que marca.',
    why: 'fuera de su relación la película queda blanda, y se nota a la semana.',
  },
  blanket: {
    how: 'deje correr gas sobre lo que queda y ponga la tapa.',
    why: 'el aire que queda encerrado la endurece.',
  },
  blend: {
    how: 'tapada, con un remolino pequeño y no más; vuelva cuando suene.',
    why: `solo cuenta el tiempo con el agitador en marcha, y el aire que entra acorta ${say.the('pot-life')}.`,
  },
  filter: {
    how: 'viértala por su filtro en un segundo recipiente limpio.',
    why: 'una mota de gel o de polvo se queda en la película para siempre.',
  },
  prep: {
    how: 'fuera grasa, polvo, óxido y pintura vieja; después solo guantes limpios. Diga el grado que pide el trabajo.',
    why: 'sobre suciedad la película se suelta.',
  },
  coat: {
    how: 'fina y pareja, una sola vez, nunca sobre película que empieza a secar. Dígalo al terminar.',
    why: 'un repaso sobre película a medio secar deja una línea y se suelta.',
  },
  empty: {
    how: 'lo que queda, a su recipiente de residuos, con la tapa ventilada. Diga cuánto.',
    why: 'la mezcla que se deja se calienta y endurece.',
  },
  clean: {
    how: `en ${say.the('booth')}, extracción en marcha, ${say.a('solvent')} tras otro, como dice ${say.the('sheet')}.`,
    why: 'la herramienta en la que endurece la mezcla es chatarra.',
  },
  flash: {
    how: 'déjela donde no caiga polvo; vuelva cuando suene.',
    why: `${say.the('solvent')} tiene que salir antes de que llegue el calor, o hierve.`,
  },
  dry: {
    how: 'guante limpio, una esquina: ni marca ni pega.',
    why: 'el reloj solo no prueba nada; una película húmeda hace ampollas en el horno, y su vapor arde.',
  },
  cure: {
    how: 'al horno solo si la pieza aguanta su calor; si no, en la sala, y limpia.',
    why: 'solo curada aguanta la película lo que tiene que aguantar.',
  },
  heat: {
    how: 'puerta cerrada; vuelva cuando suene.',
    why: 'cada vez que se abre se enfría la pieza, y lo que no está probado no cuenta.',
  },
  temp: {
    how: 'la sonda en la propia pieza, donde es más gruesa.',
    why: 'su hora empieza cuando está caliente el metal, no el horno.',
  },
  out: {
    how: 'guantes para el calor, a un soporte limpio.',
    why: 'su tiempo está cumplido, y sigue caliente.',
  },
  inspect: {
    how: 'busque motas, descuelgues y calvas; mida donde lo pide el trabajo.',
    why: 'tiempo de curado cumplido no es pieza liberada: eso lo decide una persona.',
  },
  'look-in-can': {
    how: 'levante la tapa y mire: ¿piel, grumos, más espesa que antes? Lo que se tira, con la tapa ventilada.',
    why: `${say.a('can')} en duda echa a perder toda la mezcla.`,
  },
  'look-at-pot': {
    how: 'con la mano cerca, nunca dentro.',
    why: 'una mezcla pasada puede calentarse y echar humo.',
  },
  brief: {
    how: 'hasta el final: quién lleva qué, quién está fuera, por dónde se sale.',
    why: 'nadie pulveriza sin haberla leído.',
  },
  spray: {
    how: 'extracción en marcha y medida, y dicho quién lleva aire suministrado; sin teléfono donde se pulveriza.',
    why: 'con lo que nadie ha dicho, nadie puede contar.',
  },
  countersign: {
    how: 'enseñe las piezas y lo que ha dicho de ellas.',
    why: 'otro par de ojos; desde entonces trabaja sin que nadie le guíe.',
  },
});

export const spanishFirstShift = (say: Spoken): typeof englishFirstShift => ({
  lessons: lessonsOf(say),
  how: (text) => `Cómo: ${text}`,
  why: (text) => `Por qué: ${text}`,
  tapOrType: (line) => `Tóquelo, o escriba: ${line}`,
  type: (line) => `Escriba, con sus propios datos: ${line}`,
  nameParts: 'nombre las piezas que va a recubrir',
  countersign: (by, figures) => `lo tiene que visar ${figures.list(by)}`,
  begun: (who) => `Primer turno de ${who}`,
  begunLine:
    'Un paso cada vez: qué, cómo, por qué. Hágalo, y después toque o escriba. Para dejarlo: primer turno fuera.',
  tryFirst: 'Para probarlo antes, sin que nada cuente: práctica.',
  done: (who) => `Primer turno de ${who}: visado`,
  samePerson: 'Por la misma persona: no hay nadie más que pueda.',
  left: (who) => `Primer turno de ${who}: terminado sin visar`,
  on: (who, since, figures) => `Primer turno de ${who}: desde las ${figures.timeDown(since)}.`,
  waits: (who) => `Primer turno de ${who}: espera que lo visen.`,
});

export function spanishFirstShiftFact(
  fact: FactOf<'FirstShiftBegun' | 'FirstShiftCountersigned' | 'FirstShiftLeft'>,
): string {
  switch (fact.type) {
    case 'FirstShiftBegun':
      return 'empieza su primer turno';
    case 'FirstShiftCountersigned':
      return `primer turno de ${fact.person} visado${fact.samePerson === true ? ' por la misma persona' : ''}`;
    case 'FirstShiftLeft':
      return `primer turno de ${fact.person} terminado sin visar`;
  }
}

type OfFirstShift = Extract<CrewUnclear, { code: 'no-first-shift' }>;

export const spanishFirstShiftUnclear = ({ person, on }: OfFirstShift, figures: Figures): string =>
  on.length === 0
    ? 'Nadie está en su primer turno. Quien es nuevo escribe: primer turno.'
    : `${person} no está en su primer turno. Lo están: ${figures.list(on)}.`;

export const spanishFirstShiftVerbs = {
  'first-shift': verbWords(
    'primer turno, mi primer turno, es mi primer turno, soy nuevo, soy nueva, es mi primer día, mi primer día, primer día, acabo de empezar aquí, nunca he hecho esto, enséñeme, enséñame',
    'primer turno',
    'aquí, aqui, empieza, empezar, cómo, como',
  ),
  'first-shift-done': verbWords(
    'visar, visado, visar primer turno, primer turno visado, primer turno hecho, primer turno terminado',
    'visar kari',
    'primer, turno, de',
  ),
  'first-shift-off': verbWords('primer turno fuera, fuera primer turno', 'primer turno fuera', 'de'),
};
