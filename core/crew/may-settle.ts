// What somebody is in the crew, and what that lets them settle for all.

import type { PersonName } from '../ids.ts';
import type { Crew } from './crew.ts';
import { type Role, roles, type Setting } from './crew-commands.ts';

/**
 * The role that `by` would need for `setting`; `undefined` where they may. Where nobody has the role wanted, whoever has the
 * highest that there is may: a crew without a lead can make one.
 */
export function roleMissing(crew: Pick<Crew, 'people'>, by: PersonName, setting: Setting): Role | undefined {
  const given = setting.name === 'role' ? setting.given : [];
  const ranks = given.flatMap(({ person, role }) => [rank(role), rankIn(crew, person)]);
  const wanted = Math.max(rank(roleFor(setting)), ...ranks);
  return roleMissingFor(crew, by, roles[wanted] ?? 'crew');
}

/** The same of anything that is for this role. */
export function roleMissingFor(crew: Pick<Crew, 'people'>, by: PersonName, role: Role): Role | undefined {
  const highest = Math.max(0, ...crew.people.map((person) => rank(person.role)));
  const wanted = Math.min(highest, rank(role));
  return rankIn(crew, by) >= wanted ? undefined : roles[wanted];
}

const rankIn = (crew: Pick<Crew, 'people'>, name: PersonName): number =>
  rank(crew.people.find((person) => person.name === name)?.role ?? 'crew');

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
