// A first shift: who is new begins it, a lead countersigns it, and it can be left. Nobody countersigns their own, unless
// nobody else can.

import type { CommandOf } from '../commands.ts';
import { type Decision, onCrew, type Said, unclear } from '../decision.ts';
import type { PersonName } from '../ids.ts';
import { nameAmong } from '../person-named.ts';
import type { Shop } from '../shop.ts';
import type { Crew } from './crew.ts';
import { leastRole, mayNotSettle, roleMissing, roleShort } from './who-may.ts';

export function decideFirstShift(_: Shop, said: Said<CommandOf<'first-shift'>>): Decision {
  return onCrew(said, { type: 'FirstShiftBegun' });
}

export function decideFirstShiftDone({ crew }: Shop, said: Said<CommandOf<'first-shift-done'>>): Decision {
  const wanted = roleMissing(crew, said.by, { say: 'first-shift-done' });
  if (wanted !== undefined) return unclear(mayNotSettle(crew, wanted));
  const person = inFirstShift(crew, said.command.person);
  if (person === undefined) return nobodyOn(crew, said.command.person);
  const others = countersigners(crew, person);
  if (person === said.by && others.length > 0) {
    return unclear({ code: 'may-not-settle', wanted: leastRole({ say: 'first-shift-done' }), who: others });
  }
  const alone = person === said.by ? ({ samePerson: true } as const) : {};
  return onCrew(said, { type: 'FirstShiftCountersigned', person, ...alone });
}

/** Anybody leaves their own; another's is a lead's to end. */
export function decideFirstShiftOff({ crew }: Shop, said: Said<CommandOf<'first-shift-off'>>): Decision {
  const named = said.command.person ?? said.by;
  const person = inFirstShift(crew, named);
  if (person === undefined) return nobodyOn(crew, named);
  const wanted = person === said.by ? undefined : roleShort(crew, said.by, leastRole({ say: 'first-shift-done' }));
  if (wanted !== undefined) return unclear(mayNotSettle(crew, wanted));
  return onCrew(said, { type: 'FirstShiftLeft', person });
}

/** Who may countersign what this person did: themself only where there is nobody else. */
export function countersigners(crew: Pick<Crew, 'people'>, person: PersonName): readonly PersonName[] {
  const wanted = leastRole({ say: 'first-shift-done' });
  return crew.people
    .map(({ name }) => name)
    .filter((name) => name !== person && roleShort(crew, name, wanted) === undefined);
}

const inFirstShift = ({ firstShifts }: Crew, typed: PersonName): PersonName | undefined =>
  nameAmong([...firstShifts.keys()], typed);

const nobodyOn = ({ firstShifts }: Crew, person: PersonName): Decision =>
  unclear({ code: 'no-first-shift', person, on: [...firstShifts.keys()] });
