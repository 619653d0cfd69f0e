// The rows of the vocabulary round a spray session, and for need.

import type { VocabularyRow } from './vocabulary-row.ts';

export const sessionVocabulary = {
  brief: { name: 'brief', needs: [], may: ['batch', 'starts-at', 'place', 'people', 'spray-rate'] },
  near: { name: 'near', needs: ['people', 'whereabouts'], may: ['session'] },
  ack: { name: 'ack', needs: [], may: ['session', 'people'] },
  fan: { name: 'fan', needs: ['fan-state'], may: ['session', 'face-velocity'] },
  supplied: { name: 'supplied', needs: ['yes-or-no'], may: ['session'] },
  'spray-on': { name: 'spray-on', needs: [], may: ['session', 'place'] },
  'spray-off': { name: 'spray-off', needs: [], may: ['session'] },
  flush: { name: 'flush', needs: [], may: ['session', 'gear', 'solvent', 'flush-volume'] },
  rags: { name: 'rags', needs: [], may: ['session'] },
  close: { name: 'close', needs: [], may: ['session'] },
  fit: { name: 'fit', needs: ['person', 'until-day'], may: [] },
  medical: { name: 'medical', needs: ['person', 'until-day'], may: [] },
  training: { name: 'training', needs: ['person', 'until-day'], may: [] },
  'near-miss': { name: 'near-miss', needs: ['told'], may: [], endsInWords: true },
  eyes: { name: 'eyes', needs: [], may: ['told'], endsInWords: true },
  spill: { name: 'spill', needs: [], may: ['told'], endsInWords: true },
  fire: { name: 'fire', needs: [], may: ['told'], endsInWords: true },
  down: { name: 'down', needs: [], may: ['told'], endsInWords: true },
  hot: { name: 'hot', needs: [], may: ['batch', 'told'], endsInWords: true },
  bell: { name: 'bell', needs: [], may: [] },
  vent: {
    name: 'vent',
    needs: [],
    may: ['session', 'wet-load', 'oven-temperature', 'face-velocity', 'gas', 'gas-volume', 'room-volume'],
  },
  hazards: { name: 'hazards', needs: ['work'], may: [] },
} as const satisfies Record<string, VocabularyRow>;
