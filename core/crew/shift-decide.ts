// Shifts: who comes and goes, who hands over to whom, and who takes over by name.

import type { CommandOf } from '../commands.ts';
import { type Decision, onCrew, type Said, unclear } from '../decision.ts';
import { personNamed } from '../person-named.ts';
import type { Shop } from '../shop.ts';
import { personIn } from './crew.ts';
import { waitingHandover } from './shifts.ts';

export function decideShift(_: Shop, said: Said<CommandOf<'shift'>>): Decision {
  return onCrew(said, { type: said.command.on ? 'ShiftBegun' : 'ShiftEnded' });
}

export function decideHandover(shop: Shop, said: Said<CommandOf<'handover'>>): Decision {
  const to = personNamed(shop.crew.people, said.command.to);
  const known = shop.crew.people.map(({ name }) => name);
  if (to === undefined) return unclear({ code: 'no-such-person', person: said.command.to, known });
  if (to === said.by) return unclear({ code: 'handover-to-self' });
  const everything = personIn(shop.crew, said.by).role !== 'crew';
  return onCrew(said, { type: 'HandedOver', to, everything });
}

export function decideTakeover(shop: Shop, said: Said<CommandOf<'takeover'>>): Decision {
  const waiting = shop.crew.shifts.handovers.find(({ to, takenAt }) => to === said.by && takenAt === undefined);
  if (waiting === undefined) {
    return unclear({ code: 'nothing-to-take-over', waitsFor: waitingHandover(shop.crew.shifts)?.to });
  }
  return onCrew(said, { type: 'TakenOver' });
}
