// Who may set what: one table, by setting and role, read by the decision and by whatever shows a tap, a form or the
// help.

import type { PersonName } from '../ids.ts';
import { type Qualification, qualifications } from '../session/session-commands.ts';
import { type Setting, type SettingName, type SettingOf, settingNames, settingRows } from '../settings.ts';
import type { Crew } from './crew.ts';
import { type Role, roles } from './crew-commands.ts';
import type { CrewUnclear } from './crew-unclear.ts';

/** One a setting, and one for each way where the ways differ; the dates by which somebody may spray are settled too. */
export type SettlingRow = Exclude<SettingName, 'brief'> | 'brief on' | 'brief off' | Qualification;

export const settlingRows: readonly SettlingRow[] = [
  ...settingNames.flatMap((name): readonly SettlingRow[] => (name === 'brief' ? ['brief on', 'brief off'] : [name])),
  ...qualifications,
];

export function leastRole(row: SettlingRow): Role {
  switch (row) {
    case 'brief on':
      return settingRows.brief.leastRole;
    case 'brief off':
      return 'supervisor';
    case 'fit':
    case 'medical':
    case 'training':
      return 'lead';
    default:
      return settingRows[row].leastRole;
  }
}

type People = Pick<Crew, 'people'>;

/** To put the brief off is another's than to put it on. */
export function deedOf(setting: { readonly name: SettingName } | SettingOf<'brief'>): SettlingRow {
  if (setting.name !== 'brief') return setting.name;
  return 'on' in setting && !setting.on ? 'brief off' : 'brief on';
}

/** The role that `by` would need for `setting`; `undefined` where they may. A role itself: that of whom it concerns too. */
export function roleMissing(crew: People, by: PersonName, setting: Setting): Role | undefined {
  const given = setting.name === 'role' ? setting.given : [];
  const concerned = given.flatMap(({ person, role }) => [role, roleOf(crew, person)]);
  return highestOf([leastRole(deedOf(setting)), ...concerned].map((role) => roleShort(crew, by, role)));
}

/** The same of a row, before anybody has said to what it is set. */
export function roleMissingFor(crew: People, by: PersonName, row: SettlingRow): Role | undefined {
  return roleShort(crew, by, leastRole(row));
}

/**
 * The role that `by` lacks where `wanted` is asked; `undefined` where they have it or more. Where nobody has the role wanted,
 * whoever has the highest that there is may: a crew without a lead can make one. Away is not none: the list counts.
 */
export function roleShort(crew: People, by: PersonName, wanted: Role): Role | undefined {
  const highest = Math.max(0, ...crew.people.map(({ role }) => rank(role)));
  const asked = Math.min(highest, rank(wanted));
  // Where nobody leads, the crew decides; whoever is not of it does not.
  const isStranger = rank(wanted) > 0 && crew.people.length > 0 && !crew.people.some(({ name }) => name === by);
  return rank(roleOf(crew, by)) >= asked && !isStranger ? undefined : roles[asked];
}

/** Why not, with those who may. */
export function mayNotSettle(crew: People, wanted: Role): CrewUnclear {
  return { code: 'may-not-settle', wanted, who: peopleFrom(crew, wanted) };
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
