// Answers to questions about how things stand, in Spanish: the figure first, then what it rests on. Never that something is
// safe, and never yes: what stands against it, or that nothing here does.

import type { englishAsked } from '../english/asked.ts';
import { capital, methodName, spanishPlace } from './names.ts';
import type { Spoken } from './spoken.ts';

const count = (many: number, one: string, more: string): string => `${many} ${many === 1 ? one : more}`;

export const spanishAsked = (say: Spoken): typeof englishAsked => ({
  nothingAgainst: (act) => `${act}: aquí nada se opone`,
  notAsItStands: (act) => `${act}: tal como está, no`,
  from: (act, at, figures) => `${act}: desde las ${figures.timeUp(at)}, tal como va`,
  standsUntil: (objection, at, figures) => `${objection} Por su reloj, hasta las ${figures.timeUp(at)}.`,
  thenStands: (objection) => `Para entonces: ${objection}`,
  onlyByRecord: 'Según lo dicho y leído hasta ahora, nada más. Lo que nadie dijo, nadie lo revisó.',
  askedAs: (line) => `Preguntado como: ${line}`,
  sayMore: (example) => `Diga de qué, por ejemplo: ${example}`,
  noneCalled: (name) => `Aquí nada se llama ${name}`,
  whichCalled: (name) => `¿Cuál ${name}?`,
  nearOnes: (names, figures) => `Parecidas: ${figures.list(names)}.`,
  noneNear: 'No hay nada parecido. Lo que hay en marcha: ahora.',
  clock: (label, at, left) => (at === undefined ? `${label}: ${left}` : `${label}: ${at}, ${left}`),
  titled: (name, figure) => `${name}: ${figure}`,
  nothingRuns: 'No le corre ningún reloj.',
  noClocks: 'No corre ningún reloj.',
  done: (at, who, what, figures) => `${figures.timeDown(at)} ${who}: ${what}`,
  notDone: (act) => `${act}: nadie lo ha dicho`,
  nothingDone: (name) => `${name}: no hay nada anotado`,
  nobodyThere: 'Según el registro no hay nadie de turno ni se está pintando.',
  onShift: (who, since, figures) => `${who}: de turno desde las ${figures.timeDown(since)}`,
  sprayersAt: (place, people, figures) => `${place}: ${figures.list(people)}`,
  in: (place) => `en: ${spanishPlace(place)}`,
  fromBatch: (batch, place) => `Aplicada de la mezcla ${batch}, ${spanishPlace(place)}.`,
  whereLastSaid: 'Según lo último que se dijo; no se sigue a nadie.',
  thereNow: (place, many) => `${place}: ${many === 0 ? 'nada, según el registro' : count(many, 'cosa', 'cosas')}`,
  cureWay: { oven: `en ${say.the('oven')}`, room: `curando en ${say.the('room')}` },
  since: (where, at, figures) => `${where} desde las ${figures.timeDown(at)}`,
  readAs: (celsius, at, age, figures) =>
    `${figures.temperature(celsius)}, leída a las ${figures.timeDown(at)}, hace ${figures.minutesUp(age)}`,
  readBy: (who) => `Leído por ${who}.`,
  session: (number) => `${capital(say.one('session'))} ${number}`,
  notReadYet: 'nadie la ha leído',
  setTo: (celsius, figures) => `Se dijo ${say.the('oven')} a ${figures.temperature(celsius)}.`,
  potNotRead: 'Aquí nadie lee la temperatura de una mezcla. Este es el aire por el que van sus relojes.',
  tooOld: 'Demasiado vieja para fiarse: léala otra vez.',
  weighedIn: (mass, figures) => `${figures.mass(mass)} pesados`,
  notWeighed: (mass, figures) => `sin pesar, ${figures.mass(mass)} previstos`,
  leftInIt: (mass, figures) => `quedan ${figures.mass(mass)}`,
  coatsFrom: (many) =>
    many === 0 ? 'Todavía no se ha aplicado nada de ella.' : `Salieron de ella ${count(many, 'capa', 'capas')}.`,
  leftUnknown: 'Lo que queda nadie lo pesa hasta vaciarla: póngala en la báscula para saberlo.',
  toMix: (method, mass, figures) => `${methodName(say, method)}: ${figures.mass(mass)}`,
  toMixTitle: (lowest, highest, figures) =>
    lowest === highest
      ? `A mezclar: ${figures.mass(lowest)}`
      : `A mezclar: de ${figures.mass(lowest)} a ${figures.mass(highest)}, según cómo se aplique`,
  nothingWaits: 'Según el registro nada espera a nadie',
  toDoTitle: (many) => `Por hacer: ${many}`,
  nextOf: (name, phase, next) => (next === undefined ? `${name}: ${phase}` : `${name}: ${phase}. Sigue: ${next}`),
  nothingNext: 'No le sigue nada.',
  late: (many) => `Con retraso: ${many}`,
  nothingLate: 'Nada va con retraso',
  unheard: (ring, at, figures) => `Sonó a las ${figures.timeDown(at)} y nadie contestó: ${ring}`,
  wrong: (many) => `Salió mal hoy: ${many}`,
  nothingWrong: 'Según el registro hoy nada salió mal',
  lateRing: (ring, by, figures) => `Sonó ${figures.minutesUp(by)} tarde: ${ring}`,
  atRisk: (mass, left, figures) => `${figures.mass(mass)} en riesgo, los primeros en ${figures.minutesDown(left)}`,
  nothingAtRisk: 'No hay mezcla en riesgo',
  potAtRisk: (pot, mass, margin, end, coats) =>
    `${pot}: ${mass} pesados. Acabar antes de las ${margin}, termina a las ${end}. ${coats}`,
  potLost: (pot, mass, end) => `${pot}: ${mass}, su vida terminó a las ${end}: residuo.`,
});
