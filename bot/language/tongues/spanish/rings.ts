// What rings, in Spanish: a title that says it all on a locked phone, and what to do now.

import type { LateWhy } from '../../../../core/ports.ts';
import type { ReminderKind } from '../../../../core/wanted-reminder.ts';
import type { Figures } from '../../figures.ts';
import { ringNamed } from '../../ring-key.ts';
import type { englishOvertaken, englishUnproved, RingWords } from '../english/rings.ts';
import { capital, spanishPlace, takeoverLine } from './names.ts';
import { spanishReminders } from './reminders.ts';
import type { Spoken } from './spoken.ts';

const afterItsTime = 'Ha pasado su tiempo tras el curado. Eso no dice si está liberada.';
const byKnownTime = 'Por el tiempo que consta. Tiempo cumplido no es pieza liberada.';

export const spanishRings = (say: Spoken): Readonly<Record<ReminderKind, RingWords>> => ({
  'stir-done': { title: (name) => `Mezcla ${name}: agitación cumplida`, act: 'Pare el agitador y filtre.' },
  'induction-done': {
    title: (name) => `Mezcla ${name}: inducción cumplida`,
    act: `Ya se puede aplicar como dice ${say.the('sheet')}.`,
  },
  'stir-paused': {
    title: (name) => `Mezcla ${name}: el agitador sigue parado`,
    act: 'Su tiempo no corre. Arránquelo otra vez, o vacíe la mezcla si ya no se usa.',
  },
  uncovered: {
    title: (name) => `Mezcla ${name}: sigue destapada`,
    act: 'Tápela, o vacíela si ya no se usa.',
  },
  'pot-half': {
    title: (name) => `Mezcla ${name}: ya pasó la mitad de su vida`,
    act: 'Mírela: si está espesa o gelificada, se acabó, diga lo que diga el reloj.',
  },
  'pot-margin': {
    title: (name) => `Mezcla ${name}: termine ya`,
    act: 'Queda el tiempo de vaciarla y lavar pistola y recipientes.',
  },
  'pot-end': {
    title: (name) => `Mezcla ${name}: vida de la mezcla terminada`,
    act: `No aplique más. Vacíe y lave; el residuo, apartado como dice ${say.the('sheet')}.`,
  },
  gear: {
    title: (name) => `Mezcla ${name}: limpie los útiles`,
    act: `Ahora, con ${say.theMany('solvent')} ${say.ofThe('sheet')} en su orden. Después escriba, por ejemplo: limpiar brocha acetona.`,
  },
  'surface-ends': {
    title: (name) => `${name}: superficie preparada, queda media hora como mucho`,
    act: 'Aplique antes de esa hora, o prepárela otra vez.',
  },
  'flash-least': { title: (name) => `${name}: oreo, mínimo cumplido`, act: 'Tóquela. Si está seca, anótela seca.' },
  'flash-most': {
    title: (name) => `${name}: oreo, máximo cumplido`,
    act: 'Nadie ha dicho que esté seca. Vaya a verla.',
  },
  'recoat-opens': {
    title: (name) => `${name}: se abre ${say.the('recoat-window')}`,
    act: 'Ya admite la capa siguiente.',
  },
  'recoat-closes': {
    title: (name) => `${name}: ${say.the('recoat-window')} se cierra en dos horas`,
    act: 'Aplique ahora, o déjela.',
  },
  'temp-due': {
    title: (name) => `${name}: ya debería estar a temperatura, sin medir`,
    act: 'Solo por el metal y la pared. Lea la propia pieza y anótela con sonda: su tiempo empieza con esa lectura.',
  },
  'stage-handle': {
    title: (name) => `${name}: según ${say.the('sheet')}, ya se puede manipular`,
    act: 'Por el tiempo que consta. Tóquela primero; tiempo cumplido no es pieza liberada.',
  },
  'stage-service': {
    title: (name) => `${name}: según ${say.the('sheet')}, ya puede entrar en servicio`,
    act: byKnownTime,
  },
  'stage-full': { title: (name) => `${name}: según ${say.the('sheet')}, resistencia completa`, act: byKnownTime },
  'after-service': {
    title: (name) => `${name}: según ${say.the('sheet')}, ya puede prestar servicio`,
    act: afterItsTime,
  },
  'after-full': { title: (name) => `${name}: según ${say.the('sheet')}, propiedades plenas`, act: afterItsTime },
  'after-improves': {
    title: (name) => `${name}: según ${say.the('sheet')}, ya no mejora más`,
    act: 'Como está ahora, se queda.',
  },
  handover: {
    title: () => `Le espera ${say.a('handover')}`,
    act: `Lea lo que sigue en marcha y escriba: ${takeoverLine(say)}.`,
  },
  'cure-done': {
    title: (name) => `${name}: tiempo de curado cumplido`,
    act: 'Sáquela y déjela enfriar. Tiempo cumplido no es pieza liberada.',
  },
  'air-due': {
    title: (name) => `Leer el aire: ${spanishPlace(name)}`,
    act: `La última lectura está a punto de quedarse vieja. Escriba, por ejemplo: ${airExample(say)}.`,
  },
  blanket: {
    title: (name) => `Lata ${name}: gas ahora`,
    act: 'Tiene aire encima. Meta gas, tape y escriba: gas puesto.',
  },
  'can-stirred': {
    title: (name) => `Lata ${name}: agitación cumplida`,
    act: 'Vierta ahora, y ponga gas sobre el resto.',
  },
  morning: { title: () => 'Repaso de la mañana', act: '' },
  held: { title: () => 'Retenidas a su cargo', act: 'Cada una espera una decisión.' },
  brief: {
    title: (name) => `Sesión ${name}: ${say.one('brief')} ahora`,
    act: 'Lea lo de abajo fuera de la zona, y fírmela: firmada.',
  },
  'spell-end': {
    title: (name) => `Sesión ${name}: tiempo máximo de pistola cumplido`,
    act: `Que paren: por señas, sin escribir dentro. ${capital(say.one('brief'))} nueva antes de seguir.`,
  },
  'air-recheck': {
    title: (name) => `Sesión ${name}: mire otra vez`,
    act: `Desde fuera: ¿sigue en marcha la extracción?, ¿sigue el aire suministrado? Lea el aire y escriba: ${airExample(say)}.`,
  },
  flush: {
    title: (name) => `Sesión ${name}: lave la pistola`,
    act: 'Ahora, en la cabina y con la extracción en marcha. Avisa hasta que alguien anote el lavado.',
  },
  vessels: {
    title: (name) => `Sesión ${name}: lave los recipientes`,
    act: 'Recipientes y herramientas, antes de que la mezcla endurezca. Avisa hasta que alguien anote el lavado de recipientes.',
  },
  'fan-off': {
    title: (name) => `Sesión ${name}: se cumplió el tiempo de extracción ${say.ofThe('sheet')}`,
    act: 'La película húmeda sigue soltando vapor: mire qué se está secando antes de apagarla.',
  },
  cry: {
    title: () => 'Quizá alguien necesita ayuda',
    act: 'Nadie ha dicho que no sea una alarma. Vaya a mirar; después, fin de alarma.',
  },
  own: { title: () => spanishReminders.title(''), act: '' },
  'bell-test': { title: () => 'Prueba de avisos', act: 'Si le llega, conteste enterado.' },
  digest: { title: (name, figures) => `El día: ${figures.date(name)}`, act: '' },
});

const airExample = (say: Spoken): string => (say.locale === 'es-US' ? 'aire 75F 48%' : 'aire 24C 48%');

export const spanishUnproved: typeof englishUnproved = {
  'stir-done': (name) => `Mezcla ${name}: agitación cumplida por reloj, sin comprobar`,
  'induction-done': (name) => `Mezcla ${name}: inducción cumplida por reloj, sin comprobar`,
  'cure-done': (name) => `${name}: curado cumplido por reloj, sin comprobar`,
};

export const spanishOvertaken = (say: Spoken): typeof englishOvertaken => ({
  'surface-over': {
    title: (name) => `${name}: a la superficie preparada se le pasó el tiempo`,
    act: 'Prepárela otra vez antes de aplicar.',
  },
  'recoat-over': {
    title: (name) => `${name}: ${say.the('recoat-window')} se ha cerrado`,
    act: `Según ${say.the('sheet')} ya no admite otra capa. Déjela curar, o pregunte a quien decide.`,
  },
  'recoat-soon': {
    title: (name) => `${name}: ${say.the('recoat-window')} se cierra pronto`,
    act: 'Aplique ahora, o déjela.',
  },
  'warm-by-pace': {
    title: (name) => `${name}: ya debería estar a temperatura, sin medir`,
    act: 'Por el ritmo de sus dos últimas lecturas. Lea la propia pieza y anótela con sonda: su tiempo empieza con esa lectura.',
  },
  'can-in-doubt': {
    title: (name) => `Lata ${name}: en duda`,
    act: `Demasiado tiempo sin gas. No se vierte nada de ella hasta que ${say.a('lead')} la mire. Póngale gas igual, con la tapa suelta: con aire húmedo dentro puede hincharse.`,
  },
  'air-old': {
    title: (name) => `Leer el aire: ${spanishPlace(name)}`,
    act: `La última lectura ya es vieja. Escriba, por ejemplo: ${airExample(say)}.`,
  },
});

export const spanishLate: Readonly<Record<LateWhy, string>> = {
  'was-not-running': 'el avisador no estaba en marcha',
  'was-asleep': 'el equipo estaba en reposo o le cambiaron la hora',
  'was-told-late': 'se anotó tarde',
  'post-failed': 'el mensaje no llegó antes',
  'store-failed': 'no se podía escribir el registro',
  unknown: 'no se sabe por qué',
};

/** A bell by what it says: `batch/1/stir-done` is the machine's name for it. */
export function spanishRingName(say: Spoken, key: string, figures: Pick<Figures, 'date'>): string {
  const ring = ringNamed(key);
  return ring === undefined ? key : spanishRings(say)[ring.kind].title(ring.name, figures);
}
