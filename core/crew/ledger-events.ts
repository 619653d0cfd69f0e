// Solvent that was used beside the coatings, and hashes of the record that were given out on paper or in a digest.

import { z } from 'zod';
import { solventUses } from '../solvent-uses.ts';
import { Grams, Litres } from '../unit-schemas.ts';

/** As it was measured: by mass or by volume. */
export const SolventUsed = z.object({
  type: z.literal('SolventUsed'),
  material: z.string(),
  use: z.enum(solventUses),
  amount: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('mass'), grams: Grams }),
    z.object({ kind: z.literal('volume'), litres: Litres }),
  ]),
});
export type SolventUsed = z.infer<typeof SolventUsed>;

/** The record's end as it was told outside: a later cut or a chain made anew no longer agrees with it. */
export const HashGiven = z.object({
  type: z.literal('HashGiven'),
  seq: z.number().int().positive(),
  hash: z.string(),
  on: z.enum(['digest', 'traveller', 'backup']),
});
export type HashGiven = z.infer<typeof HashGiven>;
