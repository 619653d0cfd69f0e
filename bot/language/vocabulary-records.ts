// The rows of the vocabulary that are about the past: stretches of days, traces, paper, the solvent ledger, proof.

import type { VocabularyRow } from './vocabulary-row.ts';

export const recordsVocabulary = {
  used: { name: 'used', needs: ['material', 'solvent-amount'], may: ['use'] },
  week: { name: 'week', needs: [], may: ['which'] },
  month: { name: 'month', needs: [], may: ['which'] },
  from: { name: 'from', needs: ['span'], may: [] },
  trace: { name: 'trace', needs: ['traced'], may: [] },
  find: { name: 'find', needs: ['sought'], may: [], endsInWords: true },
  traveller: { name: 'traveller', needs: ['traced'], may: [] },
  export: { name: 'export', needs: [], may: ['span', 'form'] },
  voc: { name: 'voc', needs: [], may: ['span'] },
  verify: { name: 'verify', needs: [], may: ['hash'] },
  backup: { name: 'backup', needs: ['file'], may: [], endsInWords: true },
  keep: { name: 'keep', needs: [], may: [] },
} as const satisfies Readonly<Record<string, VocabularyRow>>;
