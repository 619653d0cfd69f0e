// A gas monitor's reading: recorded whatever it says, under the place and the sessions that spray there. Beyond its limit it is an
// emergency there until a lead says that all is clear.

import { type Gas, gases, isBeyond, unitOfGas } from '../calc/monitor-limits.ts';
import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, type Said } from '../decision.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { crewStream, type PlaceName, placeStream, sessionStream } from '../ids.ts';
import { placeOf } from '../session/place-meant.ts';
import { openSessions, type Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { monitorCheck } from './monitor-check.ts';
import { alarmIn } from './open-alarms.ts';

export function decideGas(shop: Shop, said: Said<CommandOf<Gas>>): Decision {
  const { verb: gas, value, place } = said.command;
  return accepted(...gasEvents(shop, { gas, value, place, at: said.at }));
}

/** Several at once: each an entry of its own, and one alarm for what is beyond. */
export function decideGases(shop: Shop, said: Said<CommandOf<'gases'>>): Decision {
  const { place } = said.command;
  const all = gases.flatMap((gas) => {
    const value = said.command[gas];
    return value === undefined ? [] : gasEvents(shop, { gas, value, place, at: said.at });
  });
  const raised = all.filter(({ body }) => body.type === 'AlarmRaised').slice(0, 1);
  return accepted(...all.filter(({ body }) => body.type === 'GasRead'), ...raised);
}

interface GasTold {
  readonly gas: Gas;
  readonly value: number;
  readonly place: PlaceName | undefined;
  readonly at: EpochMs;
}

function gasEvents(shop: Shop, { gas, value, place: named, at }: GasTold): readonly NewEvent[] {
  const [session, other] = openSessions(shop);
  const sprayed = other === undefined ? session?.place : undefined;
  const place = named ?? sprayed ?? placeOf(shop, undefined);
  const law = shop.crew.spray.law.frame;
  const there = openSessions(shop).filter((session) => session.place === place);
  const unproved = monitorCheck(shop, at).is !== 'in';
  const read: NewEvent = {
    streams: [placeStream(place), ...there.map(({ number }) => sessionStream(number))],
    happenedAt: at,
    body: { type: 'GasRead', gas, value, ...(law !== 'us' && { law }), ...(unproved && { unproved }) },
  };
  if (!isBeyond({ gas, value, law }) || isKnown(shop, place, gas, at)) return [read];
  const note = `${gas.toUpperCase()} ${value} ${unitOfGas[gas]}`;
  const raised: EventBody = { type: 'AlarmRaised', what: 'emergency', note, place };
  return [read, { streams: [crewStream], happenedAt: at, body: raised }];
}

/** Read there again since; or the last reading of it was beyond too, and whoever it called has not been told that it is over. */
function isKnown({ crew, places }: Shop, place: PlaceName, gas: Gas, at: EpochMs): boolean {
  const read = (places.get(place)?.gas ?? []).filter((reading) => reading.gas === gas);
  const last = read.at(-1);
  if (last === undefined) return false;
  return last.at > at || (isBeyond(last) && alarmIn(crew.alarms, place, at) !== undefined);
}
