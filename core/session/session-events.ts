// What can have happened in a spray session. A coat that is sprayed in it is filed under it too.

import { z } from 'zod';
import { solvents } from '../calc/solvents.ts';
import { FrozenSheet } from '../products/frozen-sheet.ts';
import { EpochMs, Grams, Litres, MetresPerSecond, Minutes } from '../unit-schemas.ts';
import { gears, whereabouts } from './session-commands.ts';

const people = z.array(z.string());
export const Solvent = z.enum(Object.keys(solvents) as [keyof typeof solvents]);

/** Posted: nobody has acknowledged it yet. */
export const SessionBriefed = z.object({
  type: z.literal('SessionBriefed'),
  session: z.number().int().positive(),
  /** The sheet as it stood. */
  sheet: FrozenSheet,
  place: z.string(),
  batch: z.number().int().positive().optional(),
  sprayers: people,
  stays: people,
  out: people,
  attendant: z.string().optional(),
  insideVessel: z.boolean(),
  gramsPerHour: Grams.optional(),
  startsAt: EpochMs.optional(),
});
export type SessionBriefed = z.infer<typeof SessionBriefed>;

export const PeoplePlaced = z.object({
  type: z.literal('PeoplePlaced'),
  people: people.min(1),
  goes: z.enum(whereabouts),
});

/** Without a velocity: not measured. */
export const ExtractionSaid = z.object({
  type: z.literal('ExtractionSaid'),
  running: z.boolean(),
  faceMetresPerSecond: MetresPerSecond.optional(),
});

export const SuppliedAirSaid = z.object({ type: z.literal('SuppliedAirSaid'), supplied: z.boolean() });

/** By the person on their own phone, or before a witness. */
export const BriefAcknowledged = z.object({
  type: z.literal('BriefAcknowledged'),
  person: z.string(),
  witness: z.string().optional(),
});

export const SprayStarted = z.object({ type: z.literal('SprayStarted'), place: z.string() });
export const SprayStopped = z.object({ type: z.literal('SprayStopped') });

export const GearFlushed = z.object({
  type: z.literal('GearFlushed'),
  gear: z.enum(gears),
  solvent: Solvent.optional(),
  litres: Litres.optional(),
});
export type GearFlushed = z.infer<typeof GearFlushed>;

/** Filters and rags are in their closed can. */
export const WasteCanned = z.object({ type: z.literal('WasteCanned') });
/** `fanMinutes`: how long the fan stays on after it, by the sheet or the sum; absent where neither says. */
export const SessionClosed = z.object({ type: z.literal('SessionClosed'), fanMinutes: Minutes.optional() });

export const SessionEvent = z.discriminatedUnion('type', [
  SessionBriefed,
  PeoplePlaced,
  ExtractionSaid,
  SuppliedAirSaid,
  BriefAcknowledged,
  SprayStarted,
  SprayStopped,
  GearFlushed,
  WasteCanned,
  SessionClosed,
]);
export type SessionEvent = z.infer<typeof SessionEvent>;
