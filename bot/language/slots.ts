// What a line may hold, and in which units: the slots of acts, off their rows, and here those of questions.
// Read by the parser, the help and the misread cards.

import { type SlotName, verbRows, verbs } from '../../core/commands.ts';
import { tableOf } from '../../core/own-key.ts';
import type { Limits, SlotRow } from '../../core/verbs/slot.ts';

const word: SlotRow = { kinds: ['word'], units: [] };

// The limits only catch slips (240 for 24). From memory, no source.
const others = {
  'ready-time': word,
  role: word,
  time: { kinds: ['word'], units: [] },
  'time-ago': { kinds: ['duration'], units: ['min', 'h'] },
  'wet-load': {
    kinds: ['mass'],
    units: ['g', 'kg', 'lb', 'oz'],
    limits: { lowest: 0, highest: 1_000_000, unit: 'g', above: true },
  },
  gas: word,
  'gas-volume': { kinds: ['word'], units: ['L', 'm3'] },
  'room-volume': {
    kinds: ['word'],
    units: ['m3', 'L'],
    limits: { lowest: 0, highest: 100_000, unit: 'm3', above: true },
  },
  work: word,
  verb: word,
  which: word,
  span: word,
  traced: word,
  sought: word,
  form: word,
  hash: word,
  file: word,
  day: word,
} satisfies Record<string, SlotRow>;

export type Slot = SlotName | keyof typeof others;

const ofActs = tableOf<SlotName, SlotRow>(
  verbs.flatMap((verb) =>
    Object.values(verbRows[verb].fields).flatMap((field) => field.slots.map((slot) => [slot.name, slot] as const)),
  ),
);
export const slots: Readonly<Record<Slot, SlotRow>> = { ...ofActs, ...others };

export function isOutside(limits: Limits, value: number): boolean {
  return value < limits.lowest || value > limits.highest || (limits.above === true && value === limits.lowest);
}
