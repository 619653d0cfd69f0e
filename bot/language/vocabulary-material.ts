// The rows of the vocabulary that are about cans, weighing in pieces, what a pot goes through, and planning.

import type { VocabularyRow } from './vocabulary-row.ts';

const can = ['can', 'tin'];

export const materialVocabulary = {
  add: {
    name: 'add',
    words: ['add', 'added', 'adding'],
    needs: ['component', 'added'],
    may: ['batch', 'can'],
    example: 'add 1 b 14g',
  },
  cover: {
    name: 'cover',
    words: ['cover', 'covered', 'pot covered'],
    needs: [],
    may: ['batch'],
    example: 'cover 1',
    ignores: ['pot'],
  },
  uncover: {
    name: 'uncover',
    words: ['uncover', 'uncovered', 'pot uncovered'],
    needs: [],
    may: ['batch'],
    example: 'uncover 1',
    ignores: ['pot'],
  },
  catch: {
    name: 'catch',
    words: ['catch', 'caught', 'drained'],
    needs: ['caught'],
    may: ['batch'],
    example: 'catch 12 300g',
  },
  open: {
    name: 'open',
    words: ['open', 'opened', 'opening'],
    needs: ['component', 'lot', 'can-mass'],
    may: ['expiry', 'handling', 'can-volume', 'sheet'],
    example: 'open A lot 7731 5kg exp 2026-12 gas',
  },
  lid: {
    name: 'lid',
    words: ['lid', 'lid off', 'unlid'],
    needs: [],
    may: ['can'],
    example: 'lid 3',
    ignores: [...can, 'off'],
  },
  blanket: {
    name: 'blanket',
    words: ['blanket', 'blanketed', 'blanketing', 'gassed'],
    needs: [],
    may: ['can'],
    example: 'blanket 3',
    ignores: [...can, 'gas', 'argon', 'nitrogen'],
  },
  check: {
    name: 'check',
    words: ['check', 'checked'],
    needs: [],
    may: ['can'],
    example: 'check 3',
    ignores: can,
  },
  prestir: {
    name: 'prestir',
    words: ['prestir', 'pre-stir', 'prestirred', 'stir can', 'stirred can', 'stirring can'],
    needs: [],
    may: ['can'],
    example: 'prestir 3',
    ignores: can,
  },
  discard: {
    name: 'discard',
    words: ['discard', 'discarded', 'scrap', 'scrapped'],
    needs: ['can', 'reason'],
    may: [],
    example: 'discard 3 gelled in the can',
    endsInWords: true,
  },
  stock: { name: 'stock', words: ['stock', 'cans'], needs: [], may: [], example: 'stock' },
  plan: {
    name: 'plan',
    words: ['plan', 'planning'],
    needs: ['area', 'method'],
    may: ['dry-film', 'part', 'sheet', 'ready-time'],
    example: 'plan 6x0.8m2 spray 12um ready 13:00',
  },
} as const satisfies { readonly [name: string]: VocabularyRow };
