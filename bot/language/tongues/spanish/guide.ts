// Qué toca ahora y qué no, en español: media línea cada cosa, para leerla con los guantes puestos.

import type { MustNot } from '../../../../core/guide/guidance.ts';
import type { NextActId } from '../../../../core/status.ts';
import type { Figures } from '../../figures.ts';
import type { englishGuide } from '../english/guide.ts';
import type { Spoken } from './spoken.ts';

const stepsOf = (say: Spoken): Readonly<Record<NextActId, string>> => ({
  weigh: 'pese la parte A y después la B',
  'weigh-a': 'pese la parte A',
  'weigh-b': 'pese la parte B',
  filter: 'filtre la mezcla',
  stop: 'pare el agitador',
  stir: 'ponga el agitador en marcha',
  coat: 'aplique la capa a las piezas',
  'coat-part': 'aplique la capa a',
  catch: 'recoja lo que escurre',
  cover: 'tape la mezcla',
  thick: 'diga si espesa',
  hot: 'note por fuera si se calienta',
  empty: 'tire lo que queda como residuo',
  'flush-step': 'lave las herramientas',
  'gear-cleaned': 'limpie las herramientas',
  check: 'mire si tiene piel, grumos o está gelificado',
  blanket: 'gas encima y tapa puesta',
  prestir: `remuévala en su ${say.one('can')}`,
  'prestir-gas': `destape con gas y remuévala en su ${say.one('can')}`,
  lid: 'destape con el gas a mano',
  discard: `deséchela como dice ${say.the('data-sheet')}`,
  surface: 'mida la temperatura de la superficie',
  prep: 'prepare la superficie',
  dry: 'toque la película en una esquina y diga si está seca',
  'touch-up': 'repase mientras está abierta',
  'cure-oven': 'métala en el horno',
  'cure-room': 'déjela curar en la sala',
  temp: 'mida la temperatura de la propia pieza',
  door: 'diga cuánto estuvo abierta la puerta',
  out: 'sáquela',
  wet: 'mida la película húmeda',
  film: 'mida la película seca',
  release: 'revísela y libérela',
  lift: `${say.a('lead')} decide sobre la retención`,
  hold: 'reténgala',
  strip: 'quite la capa vieja',
  abrade: 'lije la capa vieja',
  rework: `${say.a('lead')} decide sobre la retención`,
  concession: `${say.a('lead')} decide sobre la retención`,
  scrap: `${say.a('lead')} decide sobre la retención`,
  return: `${say.a('lead')} decide sobre la retención`,
  brief: 'informe a quien lleva la pistola',
  ack: `lea ${say.the('brief')} y dígalo`,
  'ack-for': `lea ${say.the('brief')} en voz alta a quien no la ha leído`,
  'fan-on': 'extracción en marcha, y mida la velocidad del aire',
  'fan-unmeasured': 'extracción en marcha',
  'fan-off': 'diga si la extracción funciona',
  'supplied-yes': 'diga quién lleva aire suministrado',
  'supplied-no': 'diga quién lleva aire suministrado',
  'moved-out': 'aparte a quien no lleva la pistola',
  flush: 'lave la pistola',
  vessels: 'lave los recipientes',
  rags: 'trapos y filtros a su bidón',
  'spray-on': 'diga cuándo empieza la pistola',
  'spray-off': 'aplique con pistola; diga cuándo para',
  close: 'cierre la sesión',
});

function spanishMustNot(say: Spoken, not: MustNot, { timeDown, timeUp }: Pick<Figures, 'timeDown' | 'timeUp'>): string {
  switch (not.is) {
    case 'go-in':
      return `No vuelva a entrar hasta que ${say.a('lead')} dé la alarma por terminada.`;
    case 'mix-in-unread-air':
      return 'No mezcle ni aplique con un aire que nadie ha medido.';
    case 'mix-too-much':
      return `No mezcle más de lo que se aplica antes de que acabe ${say.the('pot-life')}.`;
    case 'use-dead-pot':
      return 'No la aplique, no la diluya y no la tape.';
    case 'use-recalled':
      return 'No aplique nada de ella: su lote se retiró.';
    case 'use-reacting-can':
      return 'No la abra, no la cierre y no la lleve a ningún sitio.';
    case 'pour-unweighed':
      return 'No eche nada que no se haya pesado.';
    case 'pour-unstirred':
      return 'No eche nada de ella antes de removerla.';
    case 'coat-unfiltered':
      return 'No la aplique antes de filtrarla.';
    case 'open-without-gas':
      return 'No la destape sin el gas a mano.';
    case 'leave-lid-off':
      return 'No la deje abierta: coge humedad.';
    case 'pour-in-doubt':
      return 'No eche nada de ella antes de que alguien la mire.';
    case 'let-it-set':
      return 'No deje que la mezcla endurezca en las herramientas.';
    case 'touch-prepared':
      return 'No toque la superficie preparada con las manos desnudas.';
    case 'touch-hot':
      return 'No la toque sin guantes para el calor.';
    case 'take-out-unproved':
      return 'No termine el curado antes de que se cumpla su tiempo.';
    case 'hand-over-unreleased':
      return 'No la entregue antes de liberarla.';
    case 'spray-unbriefed':
      return `Nadie usa la pistola antes de que todos hayan leído ${say.the('brief')}.`;
    case 'go-in-unprotected':
      return `No entre sin lo que ${say.the('brief')} manda llevar.`;
    case 'stop-extraction':
      return 'No apague la extracción.';
    case 'use-too-early':
      return not.at === undefined
        ? 'No filtre ni aplique antes de que se cumpla su tiempo.'
        : `Deje el agitador en marcha: no filtre ni aplique antes de las ${timeUp(not.at)}.`;
    case 'coat-too-late':
      return not.at === undefined
        ? `No aplique pasada ${say.the('pot-life')}.`
        : `No la aplique después de las ${timeDown(not.at)}, por líquida que parezca.`;
    case 'heat-too-early':
      return not.at === undefined
        ? 'No la caliente mientras esté húmeda.'
        : `No la toque ni la caliente antes de las ${timeUp(not.at)}.`;
    case 'stand-too-long':
      return not.at === undefined
        ? 'No la deje esperando: coge polvo.'
        : `No la deje esperando más allá de las ${timeDown(not.at)}.`;
  }
}

export const spanishGuide = (say: Spoken): typeof englishGuide => ({
  title: 'Qué toca ahora',
  steps: stepsOf(say),
  never: (not, figures) => spanishMustNot(say, not, figures),
  of: (name, step) => `${name}: ${step}`,
  wait: 'solo queda esperar',
  readAir: 'Mida el aire: temperatura y humedad',
  mix: 'Haga una mezcla',
  stayOut: 'Hay una alarma: quédese fuera y haga lo que dice su tarjeta',
  nameCan: (part) => `léame la etiqueta de ${say.a('can')} de ${part}, cerrada o abierta`,
  openCan: (part) => `abra ${say.a('can')} de ${part}`,
  useUp: 'aplique lo que quede y después vacíela',
  stirCan: (can) => `remueva ${can} antes de echar nada`,
  serves: (minutes, figures) => `Una lectura sirve durante ${figures.minutesDown(minutes)}.`,
  blendTakes: (minutes, figures) => `Con las dos partes dentro, mezclar lleva ${figures.minutesUp(minutes)}.`,
  noClock: 'Ningún reloj corre: tómese el tiempo que haga falta.',
  ends: (clock, at, left) => `${clock}: ${at}, ${left}.`,
  leads: (step) => `Ahora: ${step}.`,
  whose: (names) => `Lo dice ${names}.`,
});
