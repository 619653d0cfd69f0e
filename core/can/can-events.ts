// What can have happened to a can. A pour is filed under the batch that it went into and under the can.

import { z } from 'zod';
import { components } from '../components.ts';
import { event } from '../event.ts';
import { FrozenSheet } from '../products/frozen-sheet.ts';
import { Grams, KilogramsPerLitre, Litres, RevolutionsPerMinute } from '../unit-schemas.ts';

export const Component = z.enum(components);

/** From which can so much came. */
export const FromCan = z.object({ can: z.number().int().positive(), component: Component, grams: Grams });
export type FromCan = z.infer<typeof FromCan>;

export const CanEvent = z.discriminatedUnion('type', [
  /** The lid is off from here on. */
  event('CanOpened', {
    can: z.number().int().positive(),
    component: Component,
    /** The sheet as it stood. */
    sheet: FrozenSheet,
    lot: z.string(),
    grams: Grams,
    /** Brimful, by its label; beside a density, of what is in it. */
    litres: Litres.optional(),
    /** The sheet's, where the weight comes of the volume by it. */
    kilogramsPerLitre: KilogramsPerLitre.optional(),
    /** ISO, the last day. */
    expires: z.string().optional(),
    handling: z.enum(['gas', 'whole']).optional(),
    /** The delivery that it stood sealed in, by its number in the record. */
    delivery: z.number().int().positive().optional(),
  }),
  /** So many cans of one size, sealed: filed under the crew. */
  event('StockReceived', {
    component: Component,
    sheet: z.string(),
    lot: z.string(),
    count: z.number().int().positive(),
    /** In each of them. */
    grams: Grams,
    /** ISO, the last day. */
    expires: z.string().optional(),
  }),
  event('LidOff', { handling: z.enum(['gas', 'whole']).optional() }),
  /** Without gas; `handling`: over a can that was used up whole. `stayed`: by the record it was on already. */
  event('LidOn', { handling: z.literal('whole').optional(), stayed: z.literal(true).optional() }),
  event('CanBlanketed', {}),
  event('CanStirred', { revolutionsPerMinute: RevolutionsPerMinute.optional() }),
  /** With the role that the speaker had: only a lead's or a supervisor's word ends a doubt. */
  event('CanChecked', {
    role: z.enum(['crew', 'lead', 'supervisor']),
    /** Nobody on the crew's list led or supervised: then whoever ranks highest looks at it. */
    nobodyLeads: z.literal(true).optional(),
  }),
  event('CanDiscarded', { why: z.string() }),
]);
