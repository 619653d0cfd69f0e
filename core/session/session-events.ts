// What can have happened in a spray session. A coat that is sprayed in it is filed under it too.

import { z } from 'zod';
import { solvents } from '../calc/solvents.ts';
import { event } from '../event.ts';
import { FrozenSheet } from '../products/frozen-sheet.ts';
import { EpochMs, Grams, Litres, MetresPerSecond, Minutes } from '../unit-schemas.ts';
import { gears, whereabouts } from './session-commands.ts';

const people = z.array(z.string());
export const Solvent = z.enum(Object.keys(solvents) as [keyof typeof solvents]);

export const SessionEvent = z.discriminatedUnion('type', [
  /** Posted: nobody has acknowledged it yet. */
  event('SessionBriefed', {
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
    /** The one before it in this booth on this day. */
    after: z.number().int().positive().optional(),
  }),
  event('PeoplePlaced', { people: people.min(1), goes: z.enum(whereabouts) }),
  /** Without a velocity: not measured. */
  event('ExtractionSaid', { running: z.boolean(), faceMetresPerSecond: MetresPerSecond.optional() }),
  event('SuppliedAirSaid', { supplied: z.boolean() }),
  /** By the person on their own phone, or before a witness. */
  event('BriefAcknowledged', { person: z.string(), witness: z.string().optional() }),
  /** Into a vessel, a pit or their like from outside: nobody is in it. Holds for this session alone. */
  event('SprayedFromOutside', {}),
  event('SprayStarted', { place: z.string() }),
  event('SprayStopped', {}),
  event('GearFlushed', { gear: z.enum(gears), solvent: Solvent.optional(), litres: Litres.optional() }),
  /** Filters and rags are in their closed can. */
  event('WasteCanned', {}),
  /** `fanMinutes`: how long the fan stays on after it, by the sheet or the sum; absent where neither says. */
  event('SessionClosed', { fanMinutes: Minutes.optional() }),
]);
export type SessionEvent = z.infer<typeof SessionEvent>;
