// Everything that can be typed, one row each: what it takes. The parser, the help and the suggestions read this table; its
// words stand in each tongue's verbs.ts; a new command is one row here, one in each of those, and one reader in acts/.

import { materialVocabulary } from './vocabulary-material.ts';
import { partsVocabulary } from './vocabulary-parts.ts';
import { recordsVocabulary } from './vocabulary-records.ts';
import type { VocabularyName, VocabularyRow } from './vocabulary-row.ts';
import { sessionVocabulary } from './vocabulary-session.ts';

export type { VocabularyName, VocabularyRow };

type RowOf<Name extends VocabularyName> = VocabularyRow & { readonly name: Name };

export const vocabulary: { readonly [Name in VocabularyName]: RowOf<Name> } = {
  mix: { name: 'mix', needs: ['amount'], may: ['sheet', 'air-temperature', 'humidity'] },
  weigh: { name: 'weigh', needs: ['part-a', 'part-b'], may: ['batch', 'can'] },
  stir: { name: 'stir', needs: [], may: ['batch'] },
  stop: { name: 'stop', needs: [], may: ['batch'] },
  filter: { name: 'filter', needs: [], may: ['batch'] },
  thick: { name: 'thick', needs: [], may: ['batch'] },
  gel: { name: 'gel', needs: [], may: ['batch'] },
  empty: { name: 'empty', needs: [], may: ['batch', 'left'] },
  ...materialVocabulary,
  ...partsVocabulary,
  part: {
    name: 'part',
    needs: ['part'],
    may: ['serial', 'job', 'customer', 'metal', 'wall', 'area', 'highest-temperature'],
  },
  coat: { name: 'coat', needs: ['parts', 'method'], may: ['batch', 'pass'] },
  dry: { name: 'dry', needs: ['parts'], may: [] },
  cure: { name: 'cure', needs: ['parts', 'way'], may: ['oven-temperature'] },
  temp: { name: 'temp', needs: ['part-temperature'], may: ['part'] },
  out: { name: 'out', needs: [], may: ['parts'] },
  wet: { name: 'wet', needs: ['part', 'wet-film'], may: [] },
  film: { name: 'film', needs: ['part', 'dry-film'], may: [] },
  release: { name: 'release', needs: ['parts'], may: [] },
  hold: { name: 'hold', needs: ['parts', 'reason'], may: [], endsInWords: true },
  air: { name: 'air', needs: [], may: ['air-temperature', 'humidity', 'place'] },
  surface: { name: 'surface', needs: ['surface-temperature'], may: ['part', 'place'] },
  night: { name: 'night', needs: ['lowest-temperature'], may: ['place'] },
  ok: { name: 'ok', needs: [], may: ['ring'] },
  undo: { name: 'undo', needs: [], may: [] },
  amend: { name: 'amend', needs: ['act', 'change'], may: ['batch', 'part', 'place', 'reason'], endsInWords: true },
  set: {
    name: 'set',
    needs: ['setting'],
    may: [
      'sheet',
      'air-limit',
      'digest-hour',
      'morning-hour',
      'rate',
      'unit-system',
      'crew-name',
      'zone',
      'role',
      'language',
      'rings',
      'on-or-off',
      'people',
      'lel-share',
      'brief-ahead',
      'emergency-field',
      'quiet-hours',
    ],
  },
  day: { name: 'day', needs: [], may: ['day'] },
  now: { name: 'now', needs: [], may: [] },
  ...recordsVocabulary,
  ...sessionVocabulary,
  help: { name: 'help', needs: [], may: ['verb'] },
};
