// The rows of the vocabulary that are about a part's surface, the oven's door, tests of the film, and people.

import type { VocabularyRow } from './vocabulary-row.ts';

export const partsVocabulary = {
  prep: {
    name: 'prep',
    words: ['prep', 'prepared', 'prepped', 'blasted'],
    needs: ['parts', 'grade'],
    may: ['profile', 'salts', 'dust'],
    example: 'prep impeller-7 sa2.5 60um',
    ignores: ['profile', 'to'],
  },
  door: {
    name: 'door',
    words: ['door', 'oven door'],
    needs: [],
    may: ['parts', 'door-time'],
    example: 'door impeller-7 5m',
    ignores: ['open', 'opened', 'oven', 'door'],
  },
  adhesion: {
    name: 'adhesion',
    words: ['adhesion', 'cross-cut', 'crosscut'],
    needs: ['part', 'rating'],
    may: ['coupon'],
    example: 'adhesion impeller-7 5B',
  },
  rub: {
    name: 'rub',
    words: ['rub', 'rubbed', 'solvent rub'],
    needs: ['part', 'rubs', 'rub-result'],
    may: ['coupon'],
    example: 'rub impeller-7 50 ok',
    ignores: ['rubs', 'double', 'times', 'frotes', 'sin', 'mek'],
  },
  snooze: {
    name: 'snooze',
    words: ['snooze', 'snoozed'],
    needs: ['snooze-time'],
    may: ['ring'],
    example: 'snooze 5m',
  },
  shift: { name: 'shift', words: ['shift'], needs: ['on-or-off'], may: [], example: 'shift on' },
  handover: {
    name: 'handover',
    words: ['handover', 'hand over', 'hand-over', 'handing over'],
    needs: ['person'],
    may: [],
    example: 'handover kari',
  },
  takeover: {
    name: 'takeover',
    words: ['takeover', 'take over', 'taken over', 'taking over'],
    needs: [],
    may: [],
    example: 'take over',
    ignores: ['relevo', 'turno'],
  },
} as const satisfies Record<string, VocabularyRow>;
