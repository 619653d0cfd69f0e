// Who a Slack user is to the crew, and the other way round. The crew's file comes first, then its user groups; somebody
// else is a crew member under the name that Slack shows, kept for good so that the record keeps one name a person.

import { z } from 'zod';
import type { CrewFile, Person } from '../../core/crew/crew.ts';
import { type Role, roles } from '../../core/crew/role.ts';
import type { PersonName } from '../../core/ids.ts';
import type { Log, Postbox } from '../../core/ports.ts';
import { languages } from '../language/words/languages.ts';
import type { Call } from './slack-client.ts';
import type { SlackCrew } from './slack-crew.ts';

export interface Roster {
  readonly personOf: (team: string, user: string) => Promise<PersonName>;
  readonly slackIdOf: (team: string, name: PersonName) => string | undefined;
  /** Bells reach this person by direct message. */
  readonly isDirect: (name: PersonName) => boolean;
  readonly has: (user: string) => boolean;
  /** Reads the user groups anew. */
  readonly readGroups: () => Promise<void>;
  /** The crew's file, with whoever has been met since. */
  readonly crewFile: CrewFile;
}

export interface RosterNeeds {
  readonly slackCrew: SlackCrew;
  readonly crewFile: CrewFile;
  readonly call: Call;
  readonly postbox: Postbox;
  readonly log: Log;
}

const Profile = z.object({
  user: z.object({
    name: z.string().default(''),
    locale: z.string().optional(),
    profile: z.object({ display_name: z.string().default(''), real_name: z.string().default('') }),
  }),
});
const Members = z.object({ users: z.array(z.string()) });
const longestName = 40;

export function createRoster({ slackCrew, crewFile, call, postbox, log }: RosterNeeds): Roster {
  const met = new Map<string, Person>();
  let groupRoles: ReadonlyMap<string, Role> = new Map();
  const filed = new Map(slackCrew.people.flatMap(({ name, slack }) => (slack === undefined ? [] : [[slack, name]])));
  const noteOf = (team: string, user: string): string => `name/${slackCrew.crew}/${team}/${user}`;

  async function personOf(team: string, user: string): Promise<PersonName> {
    const inFile = filed.get(user);
    if (inFile !== undefined) return inFile;
    const known = met.get(user);
    if (known !== undefined) return known.name;
    const called = await call('users.info', { user, include_locale: true });
    const profile = called.kind === 'done' ? Profile.safeParse(called.result).data?.user : undefined;
    const noted = postbox.note(noteOf(team, user));
    const shown = profile?.profile.display_name || profile?.profile.real_name || profile?.name || user;
    const name = noted ?? nameFor(shown, user);
    // A name that Slack could not tell is not kept: the next line asks again.
    if (profile === undefined && noted === undefined) return name;
    if (noted === undefined) postbox.setNote(noteOf(team, user), name);
    postbox.setNote(`user/${slackCrew.crew}/${team}/${name}`, user);
    met.set(user, {
      name,
      role: groupRoles.get(user) ?? 'crew',
      language: languageOf(profile?.locale),
      units: 'metric',
    });
    return name;
  }

  /** Nobody becomes the lead by calling himself so: a name of the file, or of somebody else, gets the id behind it. */
  function nameFor(shown: string, user: string): PersonName {
    const name = shown.replaceAll(/\s+/g, ' ').trim().slice(0, longestName) || user;
    const taken = [...crewFile.people, ...met.values()].some(
      (other) => other.name.toLowerCase() === name.toLowerCase(),
    );
    return taken ? `${name} (${user})` : name;
  }

  function languageOf(locale: string | undefined): string {
    const language = locale?.slice(0, 2).toLowerCase() ?? '';
    return languages.includes(language) ? language : (crewFile.people[0]?.language ?? 'en');
  }

  async function readGroups(): Promise<void> {
    const read = new Map<string, Role>();
    for (const role of roles) {
      for (const usergroup of slackCrew.groups[role] ?? []) {
        const called = await call('usergroups.users.list', { usergroup });
        const members = called.kind === 'done' ? Members.safeParse(called.result).data?.users : undefined;
        if (members === undefined) {
          // Without an answer nobody gains a role, and nobody loses one.
          log.error('user-group-not-read', { usergroup, called: called.kind });
          return;
        }
        for (const user of members) read.set(user, role);
      }
    }
    groupRoles = read;
    for (const [user, person] of met) met.set(user, { ...person, role: read.get(user) ?? 'crew' });
  }

  const directPeople = new Set(slackCrew.people.filter(({ direct }) => direct).map(({ name }) => name));
  return {
    personOf,
    slackIdOf: (team, name) =>
      [...filed].find(([, other]) => other === name)?.[0] ?? postbox.note(`user/${slackCrew.crew}/${team}/${name}`),
    isDirect: (name) => directPeople.has(name),
    has: (user) => filed.has(user) || groupRoles.has(user),
    readGroups,
    crewFile: {
      ...crewFile,
      get people() {
        return [...crewFile.people, ...met.values()];
      },
    },
  };
}
