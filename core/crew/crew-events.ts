// What was settled for the crew, and what rang (filed under the stream that it belongs to); solvent that was used beside the
// coatings, and hashes of the record that were given out on paper or in a digest.

import { z } from 'zod';
import { components } from '../components.ts';
import { event } from '../event.ts';
import { Setting } from '../settings.ts';
import { solventUses } from '../solvent-uses.ts';
import { EpochMs, Grams, Litres } from '../unit-schemas.ts';

export const CrewEvent = z.discriminatedUnion('type', [
  event('SettingChanged', { setting: Setting }),
  /** A reminder reached its people. `key` without its repeat number; `ring` counts from 1. */
  event('Rang', {
    key: z.string(),
    ring: z.number().int().positive(),
    dueAt: EpochMs,
    to: z.array(z.string()),
    /** The post's outcome was unknown once: somebody may have seen this ring twice. */
    possibleRepeat: z.boolean(),
  }),
  /** Somebody said that they heard it. */
  event('RingAnswered', { key: z.string() }),
  /** Put off by who stands with the entry: it rings again for them then. */
  event('RingSnoozed', { key: z.string(), until: EpochMs }),
  /** A bell that whoever says it wants for themselves; no words: only that it rings. */
  event('ReminderWanted', { until: EpochMs, text: z.string() }),
  event('ShiftBegun', {}),
  event('ShiftEnded', {}),
  event('HandedOver', {
    to: z.string(),
    /** Everything alive; else only what rings for the one who goes. */
    everything: z.boolean(),
  }),
  event('TakenOver', {}),
  /** By whoever is new. */
  event('FirstShiftBegun', {}),
  event('FirstShiftCountersigned', {
    person: z.string(),
    /** Nobody else could. */
    samePerson: z.literal(true).optional(),
  }),
  event('FirstShiftLeft', { person: z.string() }),
  /** As it was measured: by mass or by volume. */
  event('SolventUsed', {
    material: z.string(),
    use: z.enum(solventUses),
    amount: z.discriminatedUnion('kind', [
      z.object({ kind: z.literal('mass'), grams: Grams }),
      z.object({ kind: z.literal('volume'), litres: Litres }),
    ]),
  }),
  /** Filed under its cans too. Left out, `component` is both. */
  event('LotRecalled', { lot: z.string(), component: z.enum(components).optional(), why: z.string() }),
  event('RecallEnded', { lot: z.string(), component: z.enum(components).optional(), why: z.string() }),
  /** The record's end as it was told outside: a later cut or a chain made anew no longer agrees with it. */
  event('HashGiven', {
    seq: z.number().int().positive(),
    hash: z.string(),
    on: z.enum(['digest', 'traveller', 'backup']),
  }),
]);
export type CrewEvent = z.infer<typeof CrewEvent>;
