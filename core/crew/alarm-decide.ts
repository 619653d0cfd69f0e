// Trouble, near misses and bell tests: told, never objected to. And people's dates, which a lead or supervisor settles.

import type { CommandOf } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { crewStream, type PersonName } from '../ids.ts';
import { namedIn } from '../session/people-named.ts';
import type { Alarm, Qualification } from '../session/session-commands.ts';
import type { Shop } from '../shop.ts';
import { peopleFrom, roleMissingFor } from './may-settle.ts';

/** Stands where a near miss was told by nobody. */
export const nobody: PersonName = 'anonymous';

export function decideAlarm(said: Said<CommandOf<Alarm>>): Decision {
  const { verb, note } = said.command;
  return onCrew(said, { type: 'AlarmRaised', what: verb, ...(note === undefined ? {} : { note }) });
}

export function decideNearMiss(said: Said<CommandOf<'near-miss'>>): Decision {
  const { text, anonymous } = said.command;
  return onCrew(said, { type: 'NearMissTold', text, anonymous }, anonymous ? nobody : undefined);
}

export function decideBell(shop: Shop, said: Said<CommandOf<'bell'>>): Decision {
  return onCrew(said, { type: 'BellTested', people: shop.crew.people.map(({ name }) => name) });
}

export function decideQualification(shop: Shop, said: Said<CommandOf<Qualification>>): Decision {
  const { verb, person, until } = said.command;
  const wanted = roleMissingFor(shop.crew, said.by, verb);
  if (wanted !== undefined) return unclear({ code: 'may-not-settle', wanted, who: peopleFrom(shop.crew, wanted) });
  const known = namedIn(shop, said, [person]);
  if (known.is === 'stranger') return known.decision;
  return onCrew(said, { type: 'QualificationDated', person: known.asFiled(person), what: verb, until });
}

function onCrew(said: Said, body: EventBody, by?: PersonName): Decision {
  const event: NewEvent = { streams: [crewStream], happenedAt: said.at, body, saidWith: { despite: [] } };
  return { kind: 'accepted', events: [by === undefined ? event : { ...event, by }] };
}
