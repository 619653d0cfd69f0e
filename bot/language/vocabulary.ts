// Everything that can be typed, one row each: its words, what it takes, one example. The parser, the help and the
// suggestions read this table; a new command is one row here and one reader in acts/.

import { materialVocabulary } from './vocabulary-material.ts';
import { partsVocabulary } from './vocabulary-parts.ts';
import { recordsVocabulary } from './vocabulary-records.ts';
import type { VocabularyName, VocabularyRow } from './vocabulary-row.ts';
import { sessionVocabulary } from './vocabulary-session.ts';

export type { VocabularyName, VocabularyRow };

type RowOf<Name extends VocabularyName> = VocabularyRow & { readonly name: Name };

const air = ['air', 'rh', 'humidity', 'temp', 'temperature'];

export const vocabulary: { readonly [Name in VocabularyName]: RowOf<Name> } = {
  mix: {
    name: 'mix',
    words: ['mix', 'mixed', 'mixing'],
    needs: ['amount'],
    may: ['sheet', 'air-temperature', 'humidity'],
    example: 'mix 2.4kg',
    ignores: air,
  },
  weigh: {
    name: 'weigh',
    words: ['weigh', 'weighed', 'weight', 'weights', 'weighing'],
    needs: ['part-a', 'part-b'],
    may: ['batch', 'can'],
    example: 'weigh 1 1201g 1198g',
  },
  stir: {
    name: 'stir',
    words: ['stir', 'stirring', 'restir', 'stirrer on'],
    needs: [],
    may: ['batch'],
    example: 'stir 1',
  },
  stop: {
    name: 'stop',
    words: ['stop', 'stopped', 'stirrer off'],
    needs: [],
    may: ['batch'],
    example: 'stop 1',
    ignores: ['stir', 'stirring', 'stirrer'],
  },
  filter: {
    name: 'filter',
    words: ['filter', 'filtered', 'filtering', 'strain', 'strained'],
    needs: [],
    may: ['batch'],
    example: 'filter 1',
  },
  thick: {
    name: 'thick',
    words: ['thick', 'thickened', 'thickening', 'stringy'],
    needs: [],
    may: ['batch'],
    example: 'thick 1',
  },
  gel: { name: 'gel', words: ['gel', 'gelled', 'gelling', 'gels'], needs: [], may: ['batch'], example: 'gel 1' },
  empty: {
    name: 'empty',
    words: ['empty', 'emptied', 'waste', 'pot empty'],
    needs: [],
    may: ['batch', 'left'],
    example: 'empty 1 200g',
    ignores: ['left', 'waste'],
  },
  ...materialVocabulary,
  ...partsVocabulary,
  part: {
    name: 'part',
    words: ['part', 'new part'],
    needs: ['part'],
    may: ['serial', 'job', 'customer', 'metal', 'wall', 'area', 'highest-temperature'],
    example: 'part impeller-7 serial 4411 job 88 cast-iron 12mm 0.8m2 max 120C',
    ignores: ['max', 'wall', 'area', 'thick'],
  },
  coat: {
    name: 'coat',
    words: ['coat', 'coated', 'coating'],
    needs: ['parts', 'method'],
    may: ['batch', 'pass'],
    example: 'coat impeller-7 1 spray',
    ignores: ['coat', 'coated', 'capa', 'capas'],
  },
  dry: {
    name: 'dry',
    words: ['dry', 'dried', 'touch dry', 'tack-free'],
    needs: ['parts'],
    may: [],
    example: 'dry impeller-7',
    ignores: ['touch', 'dry'],
  },
  cure: {
    name: 'cure',
    words: ['cure', 'curing', 'bake', 'baking'],
    needs: ['parts', 'way'],
    may: ['oven-temperature'],
    example: 'cure impeller-7 oven 90C',
  },
  temp: {
    name: 'temp',
    words: ['temp', 'probe', 'part temp'],
    needs: ['part-temperature'],
    may: ['part'],
    example: 'temp impeller-7 88C',
  },
  out: {
    name: 'out',
    words: ['out', 'took out', 'taken out', 'unload', 'unloaded'],
    needs: [],
    may: ['parts'],
    example: 'out impeller-7',
    ignores: ['oven', 'room'],
  },
  wet: {
    name: 'wet',
    words: ['wet', 'wft', 'wet film'],
    needs: ['part', 'wet-film'],
    may: [],
    example: 'wet impeller-7 60 65 58um',
    ignores: ['film'],
  },
  film: {
    name: 'film',
    words: ['film', 'dft', 'dry film'],
    needs: ['part', 'dry-film'],
    may: [],
    example: 'film impeller-7 12 14 13um',
  },
  release: {
    name: 'release',
    words: ['release', 'released'],
    needs: ['parts'],
    may: [],
    example: 'release impeller-7',
  },
  hold: {
    name: 'hold',
    words: ['hold', 'held', 'quarantine'],
    needs: ['parts', 'reason'],
    may: [],
    example: 'hold impeller-7 orange peel',
    endsInWords: true,
  },
  air: {
    name: 'air',
    words: ['air', 'weather', 'rh', 'humidity'],
    needs: [],
    may: ['air-temperature', 'humidity', 'place'],
    example: 'air 24C 48%',
    ignores: air,
  },
  surface: {
    name: 'surface',
    words: ['surface', 'substrate', 'steel', 'surface temp'],
    needs: ['surface-temperature'],
    may: ['part', 'place'],
    example: 'surface 22C',
    ignores: ['temp', 'temperature'],
  },
  night: {
    name: 'night',
    words: ['night', 'overnight', 'lowest', 'night low'],
    needs: ['lowest-temperature'],
    may: ['place'],
    example: 'night 16C',
    ignores: ['lowest', 'low'],
  },
  ok: { name: 'ok', words: ['ok', 'okay', 'heard', 'got it'], needs: [], may: [], example: 'ok' },
  undo: { name: 'undo', words: ['undo', 'take back'], needs: [], may: [], example: 'undo' },
  amend: {
    name: 'amend',
    words: ['amend', 'amended', 'correct', 'correction'],
    needs: ['act', 'change'],
    may: ['batch', 'part', 'place', 'reason'],
    example: 'amend 1 weigh 1201g 1189g wrong scale',
    endsInWords: true,
  },
  set: {
    name: 'set',
    words: ['set'],
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
    example: 'set air-limit 3h',
  },
  day: { name: 'day', words: ['day', 'summary'], needs: [], may: ['day'], example: 'day yesterday' },
  now: { name: 'now', words: ['now', 'running', 'live'], needs: [], may: [], example: 'now' },
  ...recordsVocabulary,
  ...sessionVocabulary,
  help: { name: 'help', words: ['help', '?'], needs: [], may: ['verb'], example: 'help mix' },
};

export const vocabularyNames: readonly VocabularyName[] = Object.values(vocabulary).map((row) => row.name);
