// Bells that somebody wants for themselves or puts off, in Spanish: how they are typed, and what their cards say.

import type { englishReminders } from '../english/reminders.ts';
import type { RemindersTyped } from '../reminders-typed.ts';
import { verbWords } from '../typed.ts';

export const spanishReminderVerbs = {
  bell: verbWords('campana, prueba avisos, prueba aviso, timbre', 'campana'),
  snooze: verbWords('aplazar, posponer, aplazado, pospongo, aplazo, más tarde', 'aplazar 5min'),
  remind: verbWords(
    'recordar, recordatorio, temporizador, recuérdame, recuérdeme',
    'recordar 15min mirar la pistola',
    'en, me, que, de, a, un',
  ),
};

export const spanishRemindersTyped: RemindersTyped = {
  asks: /^(?:(?:oye|hola|ok|y|pues|luego|por favor|porfa|a ver|bot)[, ]+)*(?:(?:me |nos )?(?:puedes|podrias|puede) )?(?:(?:recuerda|recuerde|recorda|avisa|avise|despierta|pita|llama|timbra|suena|toca)(?:r)?(?:me|nos)|(?:me|nos) (?:recuerdas|recuerda|avisas|avisa|pitas|llamas)|(?:dame|deme|echame|pegame|mandame)(?: un)? (?:toque|aviso|grito|timbrazo|pitido|campanazo)|(?:pon|ponga|ponme|ponle|pongame|activa|programa)(?: un| una| el| la)? (?:temporizador|alarma|aviso|recordatorio|campana|timer|cronometro|despertador)|(?<alone>temporizador|recordatorio|timer))\b/,
  whenDone: /^(?:cuando|en cuanto|nada mas)\b/,
  within: 'en, dentro de, a, de, por, para, en unos, dentro de unos, otra vez en'.split(', '),
  atHour: 'a las, a la, para las, sobre las'.split(', '),
  joints: 'que, de, para, para que, a, de que, lo de, pa, y'.split(', '),
};

export const spanishReminders: typeof englishReminders = {
  wanted: (at) => `Aviso a las ${at}`,
  wantedLine: (who, text) => (text === '' ? `Para ${who}.` : `Para ${who}: ${text}.`),
  title: (text) => (text === '' ? 'El aviso que pidió' : text),
  fact: (at, text) => (text === '' ? `quiere un aviso a las ${at}` : `quiere un aviso a las ${at}: ${text}`),
};
