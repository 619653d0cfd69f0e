// The rows of the vocabulary that are about a part's surface, the oven's door, tests of the film, and people.

import type { VocabularyRow } from './vocabulary-row.ts';

export const partsVocabulary = {
  prep: { name: 'prep', needs: ['parts', 'grade'], may: ['profile', 'salts', 'dust'] },
  door: { name: 'door', needs: [], may: ['parts', 'door-time'] },
  adhesion: { name: 'adhesion', needs: ['part', 'rating'], may: ['coupon'] },
  rub: { name: 'rub', needs: ['part', 'rubs', 'rub-result'], may: ['coupon'] },
  snooze: { name: 'snooze', needs: ['snooze-time'], may: ['ring'] },
  shift: { name: 'shift', needs: ['on-or-off'], may: [] },
  handover: { name: 'handover', needs: ['person'], may: [] },
  takeover: { name: 'takeover', needs: [], may: [] },
} as const satisfies Record<string, VocabularyRow>;
