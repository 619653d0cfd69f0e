// The slots of a row by what a piece of the line is: those behind a word of their own are left out, since their unit alone
// says nothing.

import { isVerb, verbRows } from '../../../core/commands.ts';
import type { Kind } from '../../../core/verbs/slot-row.ts';
import { type Slot, slots } from '../slots.ts';
import { type VocabularyName, type VocabularyRow, vocabulary } from '../vocabulary.ts';

export type SlotsTaken = ReadonlyMap<Kind, Slot>;

export const slotsByUnit = ({ name, needs, may }: VocabularyRow): readonly Slot[] =>
  [...needs, ...may].filter((slot) => !standsBehind(name, slot));

function standsBehind(name: VocabularyName, slot: Slot): boolean {
  const fields = isVerb(name) ? Object.values(verbRows[name].fields) : [];
  return fields.some(
    ({ options, slots: own }) => options?.behind !== undefined && own.some((each) => each.name === slot),
  );
}

const takenBy: ReadonlyMap<VocabularyRow, SlotsTaken> = new Map(
  Object.values<VocabularyRow>(vocabulary).map((row) => [
    row,
    new Map(slotsByUnit(row).flatMap((slot) => slots[slot].kinds.map((kind) => [kind, slot] as const))),
  ]),
);
const nothing: SlotsTaken = new Map();

export const slotsTakenBy = (row: VocabularyRow): SlotsTaken => takenBy.get(row) ?? nothing;
