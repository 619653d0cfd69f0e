// Who may say what, as one table over verbs, questions, settings and liftings: the least role of each stands in its own row,
// and is asked for here alone, by the decisions and by whatever shows a tap, a form or the help. What no row says is
// anybody's.

import { type Question, type Verb, verbRows, verbs } from '../commands.ts';
import type { PersonName } from '../ids.ts';
import { isOwnKey } from '../own-key.ts';
import { type Setting, type SettingName, type SettingRow, settingNames, settingRows } from '../settings.ts';
import type { Crew } from './crew.ts';
import { type Role, roles } from './crew-commands.ts';
import type { CrewUnclear } from './crew-unclear.ts';

type Said = Verb | Question['ask'];

/** An act or a question; or a setting, by the way it is set where the ways differ. */
export type Deed = { readonly say: Said } | { readonly set: SettingName; readonly off?: boolean };

/** A copy of the whole record leaves the crew's hands. */
const askedByRole: Readonly<Partial<Record<Question['ask'], Role>>> = { backup: 'lead' };

export function leastRole(deed: Deed): Role {
  if ('set' in deed) {
    const row: SettingRow = settingRows[deed.set];
    return deed.off === true ? (row.roleToPutOff ?? row.leastRole) : row.leastRole;
  }
  const { say } = deed;
  return (isOwnKey(verbRows, say) ? verbRows[say].options?.leastRole : askedByRole[say]) ?? 'crew';
}

const isTwofold = (name: SettingName): boolean => 'roleToPutOff' in settingRows[name];

/** Every setting, and whatever else not everybody may say. */
export const deeds: readonly Deed[] = [
  ...settingNames.flatMap((set): readonly Deed[] =>
    isTwofold(set)
      ? [
          { set, off: false },
          { set, off: true },
        ]
      : [{ set }],
  ),
  ...[...verbs, 'backup' as const].map((say) => ({ say })).filter((deed) => leastRole(deed) !== 'crew'),
];

export const deedOf = (setting: Setting): Deed => ({
  set: setting.name,
  off: 'on' in setting && !setting.on,
});

type People = Pick<Crew, 'people'>;

/** The role that `by` would need; `undefined` where they may. */
export function roleMissing(crew: People, by: PersonName, deed: Deed): Role | undefined {
  return roleShort(crew, by, leastRole(deed));
}

/** The same of what is set: of a role, that of whom it concerns too. */
export function roleMissingToSet(crew: People, by: PersonName, setting: Setting): Role | undefined {
  const given = setting.name === 'role' ? setting.given : [];
  const concerned = given.flatMap(({ person, role }) => [role, roleOf(crew, person)]);
  return highestOf([leastRole(deedOf(setting)), ...concerned].map((role) => roleShort(crew, by, role)));
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
