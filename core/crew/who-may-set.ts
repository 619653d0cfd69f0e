// Who may settle what: one table, read by the decision and by whatever shows a tap, a form or the help.

import type { PersonName } from '../ids.ts';
import type { Qualification } from '../session/session-commands.ts';
import type { Crew } from './crew.ts';
import { type Role, roles, type Setting } from './crew-commands.ts';

/** One a setting, and one for each way where the ways differ; the dates by which somebody may spray are settled too. */
export type SettlingRow = Exclude<Setting['name'], 'brief'> | 'brief on' | 'brief off' | Qualification;

/** What lifts safety, moves clocks that others rely on, or says who is told and when, is the lead's or more. */
export const leastRole: Readonly<Record<SettlingRow, Role>> = {
  crew: 'lead',
  zone: 'lead',
  'crew-language': 'lead',
  'crew-units': 'lead',
  role: 'lead',
  sheet: 'lead',
  'air-limit': 'lead',
  'voc-limit': 'lead',
  digest: 'lead',
  morning: 'lead',
  quiet: 'lead',
  bell: 'lead',
  emergency: 'lead',
  'brief on': 'lead',
  'brief off': 'supervisor',
  'brief-ahead': 'lead',
  sprayers: 'lead',
  booth: 'lead',
  lel: 'lead',
  mixing: 'lead',
  fit: 'lead',
  medical: 'lead',
  training: 'lead',
  // For plans only.
  rate: 'crew',
  // Each person's own.
  units: 'crew',
  language: 'crew',
  rings: 'crew',
};

export const settlingRows = Object.keys(leastRole) as readonly SettlingRow[];

type People = Pick<Crew, 'people'>;

export function rowOf(setting: Setting): SettlingRow {
  if (setting.name === 'brief') return setting.on ? 'brief on' : 'brief off';
  return setting.name;
}

/** The role that `by` would need for `setting`; `undefined` where they may. A role itself: that of whom it concerns too. */
export function roleMissing(crew: People, by: PersonName, setting: Setting): Role | undefined {
  const given = setting.name === 'role' ? setting.given : [];
  const concerned = given.flatMap(({ person, role }) => [role, roleOf(crew, person)]);
  return highestOf([leastRole[rowOf(setting)], ...concerned].map((role) => roleShort(crew, by, role)));
}

/** The same of a row, before anybody has said to what it is set. */
export function roleMissingFor(crew: People, by: PersonName, row: SettlingRow): Role | undefined {
  return roleShort(crew, by, leastRole[row]);
}

/**
 * The role that `by` lacks where `wanted` is asked; `undefined` where they have it or more. Where nobody has the role wanted,
 * whoever has the highest that there is may: a crew without a lead can make one. Away is not none: the list counts.
 */
export function roleShort(crew: People, by: PersonName, wanted: Role): Role | undefined {
  const highest = Math.max(0, ...crew.people.map(({ role }) => rank(role)));
  const asked = Math.min(highest, rank(wanted));
  return rank(roleOf(crew, by)) >= asked ? undefined : roles[asked];
}

/** Of this role, or of one above it. */
export function peopleFrom(crew: People, role: Role): readonly PersonName[] {
  return crew.people.filter((person) => rank(person.role) >= rank(role)).map(({ name }) => name);
}

const roleOf = ({ people }: People, name: PersonName): Role =>
  people.find((person) => person.name === name)?.role ?? 'crew';

const rank = (role: Role): number => roles.indexOf(role);

function highestOf(missing: readonly (Role | undefined)[]): Role | undefined {
  return missing.reduce((most, role) => (role !== undefined && rank(role) > rank(most ?? 'crew') ? role : most));
}
