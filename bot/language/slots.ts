// What a line may hold, and in which units: the slots of acts and questions, off their rows, and those of no row.
// Read by the parser, the help and the misread cards.

import { type SlotName, verbRows } from '../../core/commands.ts';
import { tableOf } from '../../core/own-key.ts';
import { questionRows } from '../../core/verbs/question-rows.ts';
import type { FieldRow } from '../../core/verbs/slot.ts';
import type { Limits, SlotRow } from '../../core/verbs/slot-row.ts';
import type { SlotOf } from '../../core/verbs/verb.ts';

const others = {
  role: { kinds: ['word'], units: [] },
  time: { kinds: ['word'], units: [] },
  'time-ago': { kinds: ['duration'], units: ['min', 'h'] },
} satisfies Record<string, SlotRow>;

type RowSlot = SlotName | SlotOf<(typeof questionRows)[keyof typeof questionRows]>;
export type Slot = RowSlot | keyof typeof others;

const ofRows = tableOf<RowSlot, SlotRow>(
  [...Object.values(verbRows), ...Object.values(questionRows)].flatMap(({ fields }) =>
    Object.values<FieldRow<RowSlot>>(fields).flatMap((field) => field.slots.map((slot) => [slot.name, slot] as const)),
  ),
);
export const slots: Readonly<Record<Slot, SlotRow>> = { ...ofRows, ...others };

export function isOutside(limits: Limits, value: number): boolean {
  return value < limits.lowest || value > limits.highest || (limits.above === true && value === limits.lowest);
}
