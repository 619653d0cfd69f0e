// The coats that most likely come next while a pot is in use: on parts that are booked in and bare, by the method that
// its product went on by last. A tap for each, so that nobody types a name that was typed before.

import { type Batch, phaseOf } from './batch/batch.ts';
import type { CommandOf } from './commands.ts';
import type { Method } from './methods.ts';
import { awaitsFirstCoat, type Part, phaseOfPart } from './part/part.ts';
import type { Shop } from './shop.ts';

/** More would push the other acts off a phone. */
const mostOffered = 2;

/** On the cards of a pot in use. */
export function coatsWaiting(shop: Shop, batch: Batch): readonly CommandOf<'coat'>[] {
  if (phaseOf(batch).is !== 'filtered') return [];
  return bareParts(shop)
    .slice(0, mostOffered)
    .flatMap((part) => coatOn(shop, part, batch));
}

/** On a bare part's card: from the pot that came into use last. */
export function coatsFor(shop: Shop, part: Part): readonly CommandOf<'coat'>[] {
  if (!awaitsFirstCoat(phaseOfPart(part))) return [];
  const inUse = [...shop.batches.values()].filter((batch) => phaseOf(batch).is === 'filtered');
  return inUse.slice(-1).flatMap((batch) => coatOn(shop, part, batch));
}

function coatOn(shop: Shop, { name }: Part, batch: Batch): readonly CommandOf<'coat'>[] {
  const method = methodLikely(shop, batch);
  return method === undefined ? [] : [{ verb: 'coat', parts: [name], batch: batch.number, method }];
}

/** Of this pot, else of the latest pot of its product; where the sheet knows only one way, that; else nobody knows. */
export function methodLikely(shop: Shop, { number, sheet, coats }: Batch): Method | undefined {
  const [only, ...others] = sheet.methods;
  if (others.length === 0) return only;
  const own = coats.at(-1)?.method;
  if (own !== undefined) return own;
  const earlier = [...shop.batches.values()].filter((other) => other.number < number && other.sheet.id === sheet.id);
  const last = earlier.flatMap((other) => other.coats.at(-1) ?? []).at(-1)?.method;
  return last !== undefined && sheet.methods.includes(last) ? last : undefined;
}

/** Bare parts, those first of which something was said last. */
function bareParts({ parts }: Shop): readonly Part[] {
  const bare = [...parts.values()].filter((part) => awaitsFirstCoat(phaseOfPart(part)) && part.verdict?.is !== 'held');
  const lastSeq = ({ entries }: Part): number => entries.at(-1)?.seq ?? 0;
  return bare.sort((one, other) => lastSeq(other) - lastSeq(one));
}
