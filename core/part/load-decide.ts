// What happens to parts while they cure: read, the oven's door opened, taken out. Where nobody names a part, the only
// load in the oven is meant.

import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import type { EventBody } from '../history.ts';
import { type PartName, partStream } from '../ids.ts';
import { known } from '../known.ts';
import { livePartNames, liveParts, type Shop } from '../shop.ts';
import { slowestToWarm } from './heat-up.ts';
import { ovenLoads } from './oven-load.ts';
import { phaseOfPart } from './part.ts';
import { holdForReading, onParts, onReading, partAsOf } from './part-decide.ts';
import { outRules } from './part-rules.ts';

export function decideOut(shop: Shop, said: Said<CommandOf<'out'>>): Decision {
  const names = namedOrLoad(shop, said.command.parts);
  return names === undefined ? whichLoad(shop) : onParts(shop, said, names, outRules, { type: 'CureEnded' });
}

export function decideDoor(shop: Shop, said: Said<CommandOf<'door'>>): Decision {
  const { openMinutes } = said.command;
  const names = namedOrLoad(shop, said.command.parts);
  if (names === undefined) return whichLoad(shop);
  const body: EventBody = { type: 'DoorOpened', ...known({ openMinutes }) };
  return onParts(shop, said, names, [], body);
}

/**
 * A reading on a named part is that part's. One on nobody in particular is the only curing part's, or, of one load, that
 * of its part which warms last: the others are there before it, so that it counts for them too.
 */
export function decideTemp(shop: Shop, said: Said<CommandOf<'temp'>>): Decision {
  const { part, celsius } = said.command;
  const curing = liveParts(shop).filter((candidate) => phaseOfPart(candidate).is === 'curing');
  const name = part ?? (curing.length === 1 ? curing[0]?.name : undefined);
  if (name !== undefined) {
    return farFromBefore(shop, said, name) ?? onReading(shop, said, name, { type: 'PartTemperatureRead', celsius });
  }
  const loads = ovenLoads(shop);
  const load = loads.length === 1 ? (loads[0] ?? []) : [];
  const slowest = slowestToWarm(load);
  if (slowest === undefined) return unclear({ code: 'which-part', live: livePartNames(shop) });
  const others = load.filter((each) => each.name !== slowest.name).map((each) => partStream(each.name));
  const body = { type: 'PartTemperatureRead', celsius, on: slowest.name } as const;
  return (
    farFromBefore(shop, said, slowest.name) ??
    accepted(
      { streams: [partStream(slowest.name), ...others], happenedAt: said.at, body },
      ...load.flatMap((each) => holdForReading(shop, said, each.name, body)),
    )
  );
}

/** degC. What stays in the oven does not lose so much from one reading to the next: a slip of the thumb, or it is out. */
export const farBelow = 30;

/** Asked once; told as what has happened it stands. */
function farFromBefore(shop: Shop, said: Said<CommandOf<'temp'>>, name: PartName): Decision | undefined {
  const part = partAsOf(shop, name, said.at);
  const { celsius } = said.command;
  if (said.stance.is !== 'asked' || part?.cure?.way !== 'oven' || part.cure.run.to !== undefined) return undefined;
  const before = part.temperatures.at(-1);
  const { run, doors } = part.cure;
  if (before === undefined || before.at < run.from || before.celsius - celsius <= farBelow) return undefined;
  if (doors.some(({ at }) => at >= before.at)) return undefined;
  return unclear({ code: 'far-reading', from: 'before', part: name, celsius, before });
}

function namedOrLoad(shop: Shop, names: readonly PartName[]): readonly PartName[] | undefined {
  if (names.length > 0) return names;
  const loads = ovenLoads(shop);
  return loads.length === 1 ? loads[0]?.map((part) => part.name) : undefined;
}

function whichLoad(shop: Shop): Decision {
  return unclear({ code: 'which-load', loads: ovenLoads(shop).map((load) => load.map((part) => part.name)) });
}
