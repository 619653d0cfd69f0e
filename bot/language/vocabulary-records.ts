// The rows of the vocabulary that are about the past: stretches of days, traces, paper, the solvent ledger, proof.

import type { VocabularyRow } from './vocabulary-row.ts';

export const recordsVocabulary = {
  used: {
    name: 'used',
    words: ['used', 'solvent used'],
    needs: ['material', 'solvent-amount'],
    may: ['use'],
    example: 'used acetone 500ml gun-cleaning',
  },
  week: { name: 'week', words: ['week', 'this week'], needs: [], may: ['which'], example: 'week last' },
  month: { name: 'month', words: ['month', 'this month'], needs: [], may: ['which'], example: 'month' },
  from: { name: 'from', words: ['from'], needs: ['span'], may: [], example: 'from 2026-03-01 to 2026-03-07' },
  trace: {
    name: 'trace',
    words: ['trace', 'history'],
    needs: ['traced'],
    may: [],
    example: 'trace impeller-7',
  },
  find: {
    name: 'find',
    words: ['find', 'search', 'look up'],
    needs: ['sought'],
    may: [],
    example: 'find job 88',
    endsInWords: true,
  },
  traveller: {
    name: 'traveller',
    words: ['traveller', 'traveler', 'certificate'],
    needs: ['traced'],
    may: [],
    example: 'traveller impeller-7',
  },
  export: { name: 'export', words: ['export'], needs: [], may: ['span', 'form'], example: 'export week csv' },
  voc: { name: 'voc', words: ['voc', 'ledger', 'emissions'], needs: [], may: ['span'], example: 'voc month' },
  verify: { name: 'verify', words: ['verify', 'prove'], needs: [], may: ['hash'], example: 'verify' },
  backup: {
    name: 'backup',
    words: ['backup', 'back up'],
    needs: ['file'],
    may: [],
    example: 'backup friday.sqlite',
    endsInWords: true,
  },
  keep: { name: 'keep', words: ['keep', 'retention'], needs: [], may: [], example: 'keep' },
} as const satisfies Readonly<Record<string, VocabularyRow>>;
