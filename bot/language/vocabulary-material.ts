// The rows of the vocabulary that are about cans, weighing in pieces, what a pot goes through, and planning.

import type { VocabularyRow } from './vocabulary-row.ts';

export const materialVocabulary = {
  add: { name: 'add', needs: ['component', 'added'], may: ['batch', 'can'] },
  cover: { name: 'cover', needs: [], may: ['batch'] },
  uncover: { name: 'uncover', needs: [], may: ['batch'] },
  catch: { name: 'catch', needs: ['caught'], may: ['batch'] },
  open: { name: 'open', needs: ['component', 'lot', 'can-mass'], may: ['expiry', 'handling', 'can-volume', 'sheet'] },
  lid: { name: 'lid', needs: [], may: ['can'] },
  blanket: { name: 'blanket', needs: [], may: ['can'] },
  check: { name: 'check', needs: [], may: ['can'] },
  prestir: { name: 'prestir', needs: [], may: ['can'] },
  discard: { name: 'discard', needs: ['can', 'reason'], may: [], endsInWords: true },
  stock: { name: 'stock', needs: [], may: [] },
  plan: { name: 'plan', needs: ['area', 'method'], may: ['dry-film', 'part', 'sheet', 'ready-time'] },
} as const satisfies { readonly [name: string]: VocabularyRow };
