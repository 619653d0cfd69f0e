// Bells that somebody wants for themselves or puts off, in English: how they are typed, and what their cards say.

import type { RemindersTyped } from '../reminders-typed.ts';
import { verbWords } from '../typed.ts';

export const englishReminderVerbs = {
  bell: verbWords('bell, bell test', 'bell'),
  snooze: verbWords('snooze, snoozed', 'snooze 5m'),
  remind: verbWords('remind, reminder, timer', 'remind 15m check the gun', 'me, us, in, set, for, a, an'),
};

export const englishRemindersTyped: RemindersTyped = {
  asks: /^(?:(?:hey|hi|ok|okay|so|and|then|please|pls|can you|could you|will you|would you|can u|bot)[, ]+)*(?:(?:please |pls )?(?:remind|ping|poke|nudge|buzz|prod|wake|warn|ring|beep|alert|tell|bell) (?:me|us)(?: up| again| back)?|(?:give|send) (?:me|us) (?:a |an )?(?:shout|bell|ping|nudge|buzz|ring|poke|reminder|heads.?up|call)|(?:set|start|put|make)(?: me| us)?(?: a| an| the)? (?:timer|alarm|reminder|bell|clock)(?: on| up)?|(?<alone>timer|reminder))\b/,
  whenDone: /^(?:when|once|as soon as)\b/,
  within: 'in, for, after, within, in about, in around, again in, another'.split(', '),
  atHour: 'at, by, for'.split(', '),
  joints: 'to, that, about, of, for, when, and, so i, so'.split(', '),
};

export const englishReminders = {
  wanted: (at: string) => `Bell at ${at}`,
  wantedLine: (who: string, text: string) => (text === '' ? `For ${who}.` : `For ${who}: ${text}.`),
  title: (text: string) => (text === '' ? 'The bell that you asked for' : text),
  fact: (at: string, text: string) => (text === '' ? `wants a bell at ${at}` : `wants a bell at ${at}: ${text}`),
};
