// Who a Slack user is to the crew, and the other way round. The crew's file comes first, then its user groups; somebody
// else is a crew member under the name that Slack shows, kept for good so that the record keeps one name a person.

import { z } from 'zod';
import type { CrewFile, Person } from '../../core/crew/crew.ts';
import { type Role, roles } from '../../core/crew/crew-commands.ts';
import type { PersonName } from '../../core/ids.ts';
import { areAlike } from '../../core/person-named.ts';
import type { Log, Postbox } from '../../core/ports.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { cleanLine } from '../language/typed/clean-line.ts';
import type { Call } from './slack-client.ts';
import type { SlackCrew } from './slack-crew.ts';

export interface Roster {
  /** Of somebody who speaks, and so is one of the crew. */
  readonly personOf: (team: string, user: string) => Promise<PersonName>;
  /** Of somebody who is only spoken of: an outsider becomes none of the crew by it. */
  readonly nameOf: (team: string, user: string) => Promise<PersonName>;
  /** The time zone that Slack knows of somebody. */
  readonly zoneOf: (user: string) => Promise<string | undefined>;
  /** Their account is switched off, or is none: a mention of them and a message to them reach nobody. */
  readonly isGone: (user: string) => Promise<boolean>;
  readonly idOf: (team: string, name: PersonName) => string | undefined;
  readonly has: (user: string) => boolean;
  /** Reads the user groups anew, and gets to know their members: a bell must reach a lead who has said nothing yet. */
  readonly readGroups: (team: string) => Promise<void>;
  /** The crew's file, with whoever has been met since. */
  readonly crewFile: CrewFile;
}

export interface RosterDeps {
  readonly slackCrew: SlackCrew;
  readonly crewFile: CrewFile;
  readonly tongues: Tongues;
  /** Names that have been settled since: they are somebody's. `undefined`: the record cannot be read. */
  readonly settled: () => Promise<readonly PersonName[] | undefined>;
  readonly call: Call;
  readonly postbox: Postbox;
  readonly log: Log;
}

const Profiled = z.object({
  user: z.object({
    name: z.string().default(''),
    deleted: z.boolean().optional(),
    locale: z.string().optional(),
    tz: z.string().optional(),
    profile: z.object({ display_name: z.string().default(''), real_name: z.string().default('') }),
  }),
});
type Profile = z.infer<typeof Profiled>['user'];
const shownIn = (profile: Profile | undefined, user: string): string =>
  profile?.profile.display_name || profile?.profile.real_name || profile?.name || user;

const Members = z.object({ users: z.array(z.string()) });
const longestName = 40;

interface Known extends RosterDeps {
  readonly met: Map<string, Person>;
  /** Slack told nothing of them when they were met: asked again the next time. */
  readonly unsure: Set<string>;
  /** Slack ids and names of the crew's file. */
  readonly filed: ReadonlyMap<string, PersonName>;
  /** Another list each time that somebody is met: by that the crew is seen to have changed. */
  people: readonly Person[];
  groupRoles: ReadonlyMap<string, Role>;
}

export function createRoster(deps: RosterDeps): Roster {
  const { slackCrew, crewFile, postbox } = deps;
  const filed = new Map(slackCrew.people.flatMap(({ name, slack }) => (slack === undefined ? [] : [[slack, name]])));
  const own = { met: new Map<string, Person>(), unsure: new Set<string>(), groupRoles: new Map<string, Role>() };
  const known: Known = { ...deps, ...own, filed, people: crewFile.people };
  return {
    personOf: (team, user) => personOf(known, team, user),
    nameOf: (team, user) => nameOf(known, team, user),
    isGone: (user) => isGone(known, user),
    zoneOf: async (user) => (await profileOf(known, user))?.tz,
    idOf: (team, name) =>
      [...filed].find(([, other]) => other === name)?.[0] ?? postbox.note(idNoteOf(known, team, name)),
    has: (user) => filed.has(user) || known.groupRoles.has(user),
    readGroups: (team) => readGroups(known, team),
    crewFile: {
      ...crewFile,
      get people() {
        return known.people;
      },
    },
  };
}

const noteOf = ({ slackCrew }: Known, team: string, user: string): string => `name/${slackCrew.crew}/${team}/${user}`;
const idNoteOf = ({ slackCrew }: Known, team: string, name: PersonName): string =>
  `user/${slackCrew.crew}/${team}/${name.toLowerCase()}`;

async function personOf(known: Known, team: string, user: string): Promise<PersonName> {
  const { filed, met, unsure, postbox, crewFile } = known;
  const inFile = filed.get(user);
  if (inFile !== undefined) return inFile;
  const before = met.get(user);
  if (before !== undefined && !unsure.has(user)) return before.name;
  const profile = await profileOf(known, user);
  const noted = postbox.note(noteOf(known, team, user));
  const free = await freeName(known, shownIn(profile, user), team, user);
  const name = noted ?? free.name;
  // A name that Slack could not tell, or that may be another's, is not kept: the next line asks again.
  if (noted === undefined && (profile === undefined || !free.isSure)) return name;
  if (noted === undefined) postbox.setNote(noteOf(known, team, user), name);
  postbox.setNote(idNoteOf(known, team, name), user);
  if (profile === undefined) unsure.add(user);
  else unsure.delete(user);
  const role = known.groupRoles.get(user) ?? 'crew';
  meet(known, user, { name, role, language: languageOf(known, profile?.locale), units: crewFile.units });
  return name;
}

async function nameOf(known: Known, team: string, user: string): Promise<PersonName> {
  const { filed, met, postbox } = known;
  const isOurs = filed.has(user) || met.has(user) || postbox.note(noteOf(known, team, user)) !== undefined;
  if (isOurs) return personOf(known, team, user);
  return (await freeName(known, shownIn(await profileOf(known, user), user), team, user)).name;
}

function meet(known: Known, user: string, person: Person): void {
  known.met.set(user, person);
  known.people = [...known.crewFile.people, ...known.met.values()];
}

async function profileOf({ call }: Known, user: string) {
  const called = await call('users.info', { user, include_locale: true });
  return called.kind === 'done' ? Profiled.safeParse(called.result).data?.user : undefined;
}

/** Nobody becomes the lead by calling himself so: a name that is or may be somebody's gets the id behind it. */
async function freeName(known: Known, shown: string, team: string, user: string) {
  // As a thumb types it: another could never be written on a line.
  const name = cleanLine(shown).slice(0, longestName).trim() || user;
  const settledNames = await known.settled();
  const others = [...known.people.map((other) => other.name), ...(settledNames ?? [])];
  const holder = known.postbox.note(idNoteOf(known, team, name)) ?? user;
  const isTaken = holder !== user || others.some((other) => areAlike(other, name));
  const isSure = settledNames !== undefined;
  return { name: isTaken || !isSure ? `${name} (${user})` : name, isSure };
}

/** Slack that gives no answer says nothing against them. */
async function isGone({ call }: Known, user: string): Promise<boolean> {
  const called = await call('users.info', { user });
  if (called.kind === 'refused') return called.error === 'user_not_found';
  return called.kind === 'done' && Profiled.safeParse(called.result).data?.user.deleted === true;
}

function languageOf({ crewFile, tongues }: Known, locale: string | undefined): string {
  const language = locale?.slice(0, 2).toLowerCase() ?? '';
  return tongues.languages.has(language) ? language : crewFile.language;
}

async function readGroups(known: Known, team: string): Promise<void> {
  const { slackCrew, call, log } = known;
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
  known.groupRoles = read;
  for (const [user, person] of known.met) meet(known, user, { ...person, role: read.get(user) ?? 'crew' });
  for (const user of read.keys()) await personOf(known, team, user);
}
