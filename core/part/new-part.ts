// A name that nobody has used before starts no part by itself: the speaker says that it is new, or is asked, once for all
// the names of a line, with the near known ones. What has happened is asked about too, since on which part is a guess.

import { type Decision, unclear } from '../decision.ts';
import type { PartName } from '../ids.ts';
import { liveParts, type Shop } from '../shop.ts';
import { nearNames } from './near-names.ts';

/** The question back; `undefined` where every name is known or said to be new. */
export function askedAsNew(shop: Shop, names: readonly PartName[], asNew: boolean): Decision | undefined {
  if (asNew) return undefined;
  const unknown = names.filter((name) => !shop.parts.has(name));
  if (unknown.length === 0) return undefined;
  const known = liveParts(shop).map((part) => part.name);
  return unclear({ code: 'new-part', unknown: unknown.map((part) => ({ part, near: nearNames(part, known) })) });
}
