// What rings, in Spanish: a title that says it all on a locked phone, and what to do now.

import type { LateWhy } from '../../../../core/ports.ts';
import type { ReminderKind } from '../../../../core/reminders/wanted-reminder.ts';
import { ringNamed } from '../../ring-key.ts';
import type { englishUnproved, RingWords } from '../english/rings.ts';
import { spanishDay, spanishPlace } from './names.ts';

const byKnownTime = 'Por el tiempo que consta. Tiempo cumplido no es pieza liberada.';

export const spanishRings: Readonly<Record<ReminderKind, RingWords>> = {
  'stir-done': { title: (name) => `Mezcla ${name}: agitado cumplido`, act: 'Parar el agitador y filtrar.' },
  'induction-done': {
    title: (name) => `Mezcla ${name}: inducción cumplida`,
    act: 'Ya se puede aplicar como dice la ficha.',
  },
  'stir-paused': {
    title: (name) => `Mezcla ${name}: el agitador sigue parado`,
    act: 'Su tiempo no corre. Arrancarlo otra vez, o vaciar la mezcla si ya no se usa.',
  },
  'pot-half': {
    title: (name) => `Mezcla ${name}: ya pasó la mitad de la vida útil`,
    act: 'Mirarla: si está espesa o gelificada, se acabó, diga lo que diga el reloj.',
  },
  'pot-margin': {
    title: (name) => `Mezcla ${name}: acabar ya`,
    act: 'Queda el tiempo de vaciarla y lavar el equipo.',
  },
  'pot-end': {
    title: (name) => `Mezcla ${name}: vida útil terminada`,
    act: 'No aplicar más. Vaciar y lavar; el residuo, apartado como dice la ficha.',
  },
  'surface-ends': {
    title: (name) => `${name}: superficie preparada, queda media hora como mucho`,
    act: 'Aplicar antes de esa hora, o volver a preparar.',
  },
  'flash-least': { title: (name) => `${name}: oreo, mínimo cumplido`, act: 'Tocarla. Si está seca, decir seca.' },
  'flash-most': { title: (name) => `${name}: oreo, máximo cumplido`, act: 'Nadie ha dicho que esté seca. Ir a verla.' },
  'recoat-opens': { title: (name) => `${name}: se abre la ventana de repintado`, act: 'Ya admite la capa siguiente.' },
  'recoat-closes': {
    title: (name) => `${name}: la ventana de repintado se cierra en dos horas`,
    act: 'Aplicar ahora, o dejarla.',
  },
  'temp-due': {
    title: (name) => `${name}: ya debería estar a temperatura, sin medir`,
    act: 'Solo por el metal y la pared. Leer la propia pieza y decir sonda: su tiempo empieza con esa lectura.',
  },
  'stage-handle': {
    title: (name) => `${name}: según la ficha, ya se puede manipular`,
    act: 'Por el tiempo que consta. Tocarla primero; tiempo cumplido no es pieza liberada.',
  },
  'stage-service': { title: (name) => `${name}: según la ficha, ya puede entrar en servicio`, act: byKnownTime },
  'stage-full': { title: (name) => `${name}: según la ficha, resistencia completa`, act: byKnownTime },
  handover: { title: () => 'Le espera un relevo', act: 'Leer lo que sigue en marcha y decir tomar relevo.' },
  'cure-done': {
    title: (name) => `${name}: tiempo de curado cumplido`,
    act: 'Sacarla y dejarla enfriar. Tiempo cumplido no es pieza liberada.',
  },
  'air-due': {
    title: (name) => `Leer el aire: ${spanishPlace(name)}`,
    act: 'La última lectura está a punto de quedarse vieja. Decir, por ejemplo, aire 24C 48%.',
  },
  blanket: {
    title: (name) => `Lata ${name}: gas ahora`,
    act: 'Tiene aire encima. Meter gas, tapar y decir gas puesto.',
  },
  'can-stirred': { title: (name) => `Lata ${name}: agitado cumplido`, act: 'Verter ahora, y gas sobre el resto.' },
  morning: { title: () => 'Repaso de la mañana', act: '' },
  brief: {
    title: (name) => `Sesión ${name}: charla ahora`,
    act: 'Leer lo de abajo fuera de la zona de pistola, y decir leída.',
  },
  'spell-end': {
    title: (name) => `Sesión ${name}: tiempo máximo de pistola cumplido`,
    act: 'Que paren: por señas, sin escribir dentro. Charla nueva antes de seguir.',
  },
  'air-recheck': {
    title: (name) => `Sesión ${name}: volver a mirar`,
    act: 'Desde fuera: ¿sigue en marcha la extracción?, ¿sigue el aire suministrado? Leer el aire y decirlo: aire 24C 48%.',
  },
  flush: {
    title: (name) => `Sesión ${name}: lavar la pistola`,
    act: 'Ahora, en la cabina y con la extracción en marcha. Avisa hasta que alguien diga lavar.',
  },
  vessels: {
    title: (name) => `Sesión ${name}: lavar los recipientes`,
    act: 'Botes, vasos y herramientas, antes de que endurezca. Avisa hasta que alguien diga lavar recipientes.',
  },
  'fan-off': {
    title: (name) => `Sesión ${name}: se cumplió el tiempo de extracción de la ficha`,
    act: 'La película húmeda sigue soltando vapor: mirar qué se está secando antes de apagarla.',
  },
  'bell-test': { title: () => 'Prueba de avisos', act: 'Si le llega, decir enterado.' },
  digest: { title: (name) => `El día: ${spanishDay(name)}`, act: '' },
};

export const spanishUnproved: typeof englishUnproved = {
  'stir-done': (name) => `Mezcla ${name}: agitado cumplido por reloj, sin comprobar`,
  'induction-done': (name) => `Mezcla ${name}: inducción cumplida por reloj, sin comprobar`,
  'cure-done': (name) => `${name}: curado cumplido por reloj, sin comprobar`,
};

export const spanishLate: Readonly<Record<LateWhy, string>> = {
  'was-not-running': 'el avisador no estaba en marcha',
  'was-asleep': 'el equipo estaba en reposo o le cambiaron la hora',
  'was-told-late': 'se anotó tarde',
  'post-failed': 'el mensaje no llegó antes',
  'store-failed': 'no se podía escribir el registro',
  unknown: 'no se sabe por qué',
};

/** A bell by what it says: `batch/1/stir-done` is the machine's name for it. */
export function spanishRingName(key: string): string {
  const ring = ringNamed(key);
  return ring === undefined ? key : spanishRings[ring.kind].title(ring.name);
}
