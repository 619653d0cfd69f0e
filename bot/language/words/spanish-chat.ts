// What only a chat platform needs to say, in Spanish: a batch's one message, the home tab, who and where.

import type { englishChat } from './english-chat.ts';

export const spanishRoles = { crew: 'operario', lead: 'encargado', supervisor: 'supervisor' };

export const spanishChat: typeof englishChat = {
  standing: (batch, sheet, state) => `Mezcla ${batch} ${sheet}: ${state}`,
  finished: 'terminada',
  takenBack: (batch) => `Mezcla ${batch}: anulada`,
  act: (time, who, what) => `${time} ${who}: ${what}`,
  earlierActs: (count) => `${count} anteriores, en el hilo y en el registro`,
  by: (who) => `Lo dice ${who}`,
  tapped: (who, label, time) => `${who}: ${label}, ${time}`,
  more: (count) => `${count} líneas más; están todas en el registro.`,
  takenTo: (title) => `${title}. Sigue en su hilo.`,
  form: { submit: 'Anotar', close: 'Dejarlo', loading: 'Un momento…', fill: 'Completar esto' },
  numberWanted: 'Aquí va un número.',
  homeTitle: 'Ahora',
  airTitle: 'Aire',
  startTitle: 'Empezar',
  ringsTitle: 'Próximos avisos',
  ring: (time, what, who) => `${time} ${what}${who === '' ? '' : ` (${who})`}`,
  settingsTitle: 'Ajustes',
  settings: (crew, zone, you, role) => [`Cuadrilla: ${crew}. Zona horaria: ${zone}.`, `Usted es ${you}, ${role}.`],
  people: (names) => `Gente: ${names}.`,
  channel: (channel) =>
    channel === undefined ? 'Aún no hay canal: invíteme al de la cuadrilla.' : 'Las mezclas se publican en',
  sheetNow: (sheet, air, digest) =>
    `Ficha: ${sheet}. Una lectura del aire vale ${air}. El resumen del día llega a las ${digest}.`,
  quietNow: (hours) => (hours === undefined ? 'Horas de silencio: ninguna.' : `Horas de silencio: ${hours}.`),
  cansTitle: 'Latas por atender',
  roles: spanishRoles,
  setTaps: {
    metric: 'Unidades métricas',
    us: 'Unidades de EE. UU.',
    sheet: (sheet) => `Ficha ${sheet}`,
    digest: 'Hora del resumen…',
    quiet: 'Horas de silencio…',
    airLimit: 'Cuánto vale el aire…',
  },
  welcomeTitle: 'Bienvenida',
  welcome: [
    'Llevo la cuenta, los cálculos y el registro de cada mezcla. Cada mezcla tiene un solo mensaje en el canal de la cuadrilla; lo que le pasa queda en su hilo.',
    'Escriba /bell y lo que pasó, mencióneme en un hilo, o escríbame aquí sin más. Casi todos los pasos son un toque.',
    'Antes de nada, mire los ajustes de abajo: unidades, ficha, hora del resumen.',
  ],
  joined: [
    'Aquí llevo las mezclas de la cuadrilla: un mensaje para cada una, que se va actualizando.',
    'Para empezar: /bell aire 24C 48%, y después /bell mezclar 2,4kg. Ayuda: /bell ayuda.',
  ],
  noCrewHere: (channel) =>
    `Este canal no es de ninguna cuadrilla. Su id es ${channel}: va en slackChannels, en el archivo de la cuadrilla.`,
  noCrewOfYours:
    'No sé cuál es su cuadrilla. Escriba en el canal de ella, o pida que pongan su id de Slack en el archivo.',
  pictureFiled: (subject) => `Foto archivada con ${subject}`,
};
