// What a line may hold, and in which units: the slots of acts, off their rows, and here those of settings and questions.
// Read by the parser, the help and the misread cards.

import { type SlotName, verbRows, verbs } from '../../core/commands.ts';
import { tableOf } from '../../core/own-key.ts';
import type { Limits, SlotRow } from '../../core/verbs/slot.ts';

const word: SlotRow = { kinds: ['word'], units: [] };

// The limits only catch slips (240 for 24). From memory, no source.
const others = {
  'air-limit': { kinds: ['duration'], units: ['h', 'min'], limits: { lowest: 1, highest: 10_080, unit: 'min' } },
  'digest-hour': { kinds: ['number'], units: [], limits: { lowest: 0, highest: 23, unit: 'h' } },
  'morning-hour': { kinds: ['number'], units: [], limits: { lowest: 0, highest: 23, unit: 'h' } },
  rate: { kinds: ['word'], units: ['m2/h', 'ft2/h'] },
  'ready-time': word,
  'unit-system': word,
  'crew-name': word,
  zone: word,
  role: word,
  language: word,
  rings: word,
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
  'brief-ahead': { kinds: ['duration'], units: ['min', 'h'], limits: { lowest: 1, highest: 1_440, unit: 'min' } },
  'lel-share': { kinds: ['percent'], units: ['%'], limits: { lowest: 1, highest: 25, unit: '%' } },
  'mixing-factor': { kinds: ['number'], units: [], limits: { lowest: 1, highest: 100, unit: '' } },
  'quiet-hours': word,
  'emergency-field': word,
  verb: word,
  which: word,
  span: word,
  traced: word,
  sought: word,
  form: word,
  hash: word,
  file: word,
  // Of a time: what is typed is `300kg/month`.
  'voc-limit': { kinds: ['word'], units: ['kg/month', 'lb/month', 'kg/day', 'kg/year'] },
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
