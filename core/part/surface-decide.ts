// What is said of a part before its coat: how its surface was prepared, and how warm it is. A name that nobody has used
// may come in so, as with a coat.

import type { CommandOf } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { type PartName, partStream } from '../ids.ts';
import { liveParts, type Shop } from '../shop.ts';
import { nearNames } from './near-names.ts';

export function decidePrep(shop: Shop, said: Said<CommandOf<'prep'>>): Decision {
  const { verb: _, parts, ...prepared } = said.command;
  return onNew(shop, said, parts, { type: 'SurfacePrepared', ...prepared });
}

export function decidePartSurface(shop: Shop, said: Said<CommandOf<'surface'>>, part: PartName): Decision {
  return onNew(shop, said, [part], { type: 'SurfaceRead', celsius: said.command.celsius });
}

function onNew(shop: Shop, said: Said, names: readonly PartName[], body: EventBody): Decision {
  const known = liveParts(shop).map((part) => part.name);
  for (const name of names) {
    const near = shop.parts.has(name) ? [] : nearNames(name, known);
    if (near.length > 0 && said.stance.is !== 'happened') return unclear({ code: 'near-part', part: name, near });
  }
  return {
    kind: 'accepted',
    events: names.map(
      (name): NewEvent => ({ streams: [partStream(name)], happenedAt: said.at, body, saidWith: { despite: [] } }),
    ),
  };
}
