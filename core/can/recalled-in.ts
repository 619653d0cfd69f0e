// Whether what a pot was filled from has been called back, as far as anybody said from which cans it came.

import type { Entry } from '../history.ts';
import { type Recall, recalledAt } from '../lot-recalls.ts';
import type { Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { pouredFrom } from './poured-from.ts';

export function recalledIn(
  { cans, crew }: Pick<Shop, 'cans' | 'crew'>,
  pot: { readonly entries: readonly Pick<Entry, 'fact'>[] },
  at: EpochMs,
): Recall | undefined {
  return pouredFrom(pot)
    .map((number) => {
      const can = cans.get(number);
      return can && recalledAt(crew.recalls, can, at);
    })
    .find((recall) => recall !== undefined);
}
