// Everything that can be typed, one row each: what its line needs and may hold. Of acts it is read off their rows in
// core/verbs/; the parser, the help and the suggestions read it here. Its words stand in each tongue's verbs.ts.

import { ofEachVerb, type Question, type SlotName, type Verb, verbRows } from '../../core/commands.ts';
import type { Slot } from './slots.ts';

export type VocabularyName = Verb | Question['ask'];

export interface VocabularyRow {
  readonly name: VocabularyName;
  readonly needs: readonly Slot[];
  readonly may: readonly Slot[];
  /** The rest of the line is somebody's own words. */
  readonly endsInWords?: true;
}

const acts = ofEachVerb((name): VocabularyRow => {
  const { fields, options } = verbRows[name];
  const needs: SlotName[] = [];
  const may: SlotName[] = [];
  for (const [key, field] of Object.entries(fields)) {
    const [first, ...others] = field.slots.map((slot) => slot.name);
    // Of air either figure will do.
    const isNeeded =
      field.told !== 'air' && (field.options?.required === true || options?.oneOf?.includes(key) === true);
    if (first !== undefined) (isNeeded ? needs : may).push(first);
    may.push(...others);
  }
  return { name, needs, may: [...new Set(may)], ...(options?.endsInWords === true && { endsInWords: true }) };
});

const questions: { readonly [Name in Question['ask']]: VocabularyRow } = {
  stock: { name: 'stock', needs: [], may: [] },
  plan: { name: 'plan', needs: ['area', 'method'], may: ['dry-film', 'part', 'sheet', 'ready-time'] },
  day: { name: 'day', needs: [], may: ['day'] },
  now: { name: 'now', needs: [], may: [] },
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
  vent: {
    name: 'vent',
    needs: [],
    may: ['session', 'wet-load', 'oven-temperature', 'face-velocity', 'gas', 'gas-volume', 'room-volume'],
  },
  hazards: { name: 'hazards', needs: ['work'], may: [] },
  help: { name: 'help', needs: [], may: ['verb'] },
};

export const vocabulary: { readonly [Name in VocabularyName]: VocabularyRow } = {
  ...acts,
  ...questions,
};
