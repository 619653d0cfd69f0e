// Putting a part on hold, and who sees to that.

import type { CommandOf } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { PersonName } from '../ids.ts';
import { known } from '../known.ts';
import type { Unclear } from '../objections.ts';
import { personNamed } from '../person-named.ts';
import type { Shop } from '../shop.ts';
import { onParts } from './part-decide.ts';
import { heldRules } from './release-rules.ts';

export function decideHold(shop: Shop, said: Said<CommandOf<'hold'>>): Decision {
  const { parts, why, toDo } = said.command;
  const owner = ownerNamed(shop, said.command.owner);
  if (isFailed(owner)) return unclear(owner.failed);
  return onParts(shop, said, parts, [], { type: 'PartHeld', why, ...known({ owner, toDo }) });
}

export function decideSeeTo(shop: Shop, said: Said<CommandOf<'see-to'>>): Decision {
  const { parts, toDo } = said.command;
  const owner = ownerNamed(shop, said.command.owner);
  if (isFailed(owner)) return unclear(owner.failed);
  const given = { ...said, at: said.now };
  return onParts(shop, given, parts, heldRules, { type: 'HoldAssigned', ...known({ owner, toDo }) });
}

/** As the crew writes it: whoever is not of the crew hears no bell. */
function ownerNamed({ crew }: Shop, typed: PersonName | undefined): PersonName | undefined | Failed<Unclear> {
  if (typed === undefined) return undefined;
  const names = crew.people.map(({ name }) => name);
  return personNamed(crew.people, typed) ?? failed({ code: 'no-such-person', person: typed, known: names });
}
