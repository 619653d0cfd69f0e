// What somebody is in the crew, and what that lets them settle for all.

import type { PersonName } from '../ids.ts';
import type { Crew } from './crew.ts';
import { type Role, roles, type Setting } from './crew-commands.ts';

/**
 * The role that `by` would need for `setting`; `undefined` where they may. Where nobody has the role wanted, whoever has the
 * highest that there is may: a crew without a lead can make one.
 */
export function roleMissing(crew: Pick<Crew, 'people'>, by: PersonName, setting: Setting): Role | undefined {
  const rankOf = (name: PersonName) => rank(crew.people.find((person) => person.name === name)?.role ?? 'crew');
  const highest = Math.max(0, ...crew.people.map(({ role }) => rank(role)));
  const ranks =
    setting.name === 'role' ? setting.given.flatMap(({ person, role }) => [rank(role), rankOf(person)]) : [];
  const wanted = Math.min(highest, Math.max(rank(roleFor(setting)), ...ranks));
  return rankOf(by) >= wanted ? undefined : roles[wanted];
}

/** Of this role, or of one above it. */
export function peopleFrom(crew: Pick<Crew, 'people'>, role: Role): readonly PersonName[] {
  return crew.people.filter((person) => rank(person.role) >= rank(role)).map(({ name }) => name);
}

const rank = (role: Role): number => roles.indexOf(role);

/** What moves clocks that others rely on, or who is told, is the lead's. */
function roleFor({ name }: Setting): Role {
  switch (name) {
    case 'crew':
    case 'zone':
    case 'crew-language':
    case 'crew-units':
    case 'air-limit':
    case 'lel':
    case 'mixing':
    case 'role':
      return 'lead';
    case 'sheet':
    case 'digest':
    case 'morning':
    case 'rate':
    case 'voc-limit':
    case 'units':
    case 'language':
    case 'rings':
    case 'brief':
    case 'brief-ahead':
    case 'sprayers':
    case 'booth':
    case 'emergency':
    case 'bell':
    case 'quiet':
      return 'crew';
  }
}
