// What is said of a part before its coat: how its surface was prepared, and how warm it is. A name that nobody has used is
// asked about, as with a coat.

import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said } from '../decision.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { type PartName, partStream } from '../ids.ts';
import { known } from '../known.ts';
import type { Shop } from '../shop.ts';
import { askedAsNew } from './new-part.ts';

export function decidePrep(shop: Shop, said: Said<CommandOf<'prep'>>): Decision {
  const { parts, asNew = false, grade, removed, solvents, prepWays, grit } = said.command;
  const of = known({
    grade,
    removed: removed && [...removed],
    solvents: solvents && [...solvents],
    prepWays: prepWays && [...prepWays],
    grit,
  });
  return onNew(shop, said, { parts, asNew }, { type: 'SurfacePrepared', ...of });
}

export function decidePartSurface(shop: Shop, said: Said<CommandOf<'surface'>>, part: PartName): Decision {
  const { asNew = false, celsius } = said.command;
  return onNew(shop, said, { parts: [part], asNew }, { type: 'SurfaceRead', celsius });
}

function onNew(
  shop: Shop,
  said: Said,
  { parts, asNew }: { readonly parts: readonly PartName[]; readonly asNew: boolean },
  body: EventBody,
): Decision {
  const asked = askedAsNew(shop, parts, asNew);
  if (asked !== undefined) return asked;
  return accepted(...parts.map((name): NewEvent => ({ streams: [partStream(name)], happenedAt: said.at, body })));
}
