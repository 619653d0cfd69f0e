// What was settled for the crew, and what rang: rings and answers are filed under the stream that they belong to.

import { z } from 'zod';
import { Setting } from '../settings.ts';
import { EpochMs } from '../unit-schemas.ts';
import { HashGiven, SolventUsed } from './ledger-events.ts';

export const SettingChanged = z.object({ type: z.literal('SettingChanged'), setting: Setting });
export type SettingChanged = z.infer<typeof SettingChanged>;

/** A reminder reached its people. `key` without its repeat number; `ring` counts from 1. */
export const Rang = z.object({
  type: z.literal('Rang'),
  key: z.string(),
  ring: z.number().int().positive(),
  dueAt: EpochMs,
  to: z.array(z.string()),
  /** The post's outcome was unknown once: somebody may have seen this ring twice. */
  possibleRepeat: z.boolean(),
});
export type Rang = z.infer<typeof Rang>;

/** Somebody said that they heard it. */
export const RingAnswered = z.object({ type: z.literal('RingAnswered'), key: z.string() });

/** Put off by who stands with the entry: it rings again for them then. */
export const RingSnoozed = z.object({ type: z.literal('RingSnoozed'), key: z.string(), until: EpochMs });

export const ShiftBegun = z.object({ type: z.literal('ShiftBegun') });
export const ShiftEnded = z.object({ type: z.literal('ShiftEnded') });

export const HandedOver = z.object({
  type: z.literal('HandedOver'),
  to: z.string(),
  /** Everything alive; else only what rings for the one who goes. */
  everything: z.boolean(),
});
export const TakenOver = z.object({ type: z.literal('TakenOver') });

export const CrewEvent = z.discriminatedUnion('type', [
  SettingChanged,
  Rang,
  RingAnswered,
  RingSnoozed,
  ShiftBegun,
  ShiftEnded,
  HandedOver,
  TakenOver,
  SolventUsed,
  HashGiven,
]);
export type CrewEvent = z.infer<typeof CrewEvent>;
