// A name that nobody has used before starts no part by itself: the speaker says that it is new, or is asked, once for all
// the names of a line, with the near known ones. What has happened is asked about too, since on which part is a guess. A crew
// that lets its coats name parts is asked only where a known name is near.

import { type Decision, unclear } from '../decision.ts';
import type { PartName } from '../ids.ts';
import { standing } from '../settled.ts';
import { liveParts, type Shop } from '../shop.ts';
import { nearNames } from './near-names.ts';

interface Named {
  readonly names: readonly PartName[];
  /** Said to be new. */
  readonly asNew: boolean;
  /** An act that begins the work on a part, and may name it where the crew has said so. */
  readonly mayName?: boolean;
}

/** The question back; `undefined` where every name is known or said to be new. */
export function askedAsNew(shop: Shop, { names, asNew, mayName = false }: Named): Decision | undefined {
  if (asNew) return undefined;
  const unknown = names.filter((name) => !shop.parts.has(name));
  if (unknown.length === 0) return undefined;
  const known = liveParts(shop).map((part) => part.name);
  const asked = unknown.map((part) => ({ part, near: nearNames(part, known) }));
  const isNamed = mayName && standing(shop.crew, 'new-parts').on && asked.every(({ near }) => near.length === 0);
  return isNamed ? undefined : unclear({ code: 'new-part', unknown: asked });
}
