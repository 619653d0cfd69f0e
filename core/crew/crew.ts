// The crew: its people and settings. Both come from the crew's file, and from what was said since.

import type { Entry } from '../history.ts';
import type { PersonName, SheetId } from '../ids.ts';
import { personNamed } from '../person-named.ts';
import { foldRings, type RingLog } from '../ring-log.ts';
import { type EmergencyWords, foldSpraySettings, type SpraySettings } from '../session/spray-settings.ts';
import type { EpochMs, Minutes, SquareMetresPerHour } from '../units.ts';
import { minutes } from '../units.ts';
import type { RingsTo, Role } from './crew-commands.ts';
import type { SettingChanged } from './crew-events.ts';
import type { VocLimit } from './ledger-events.ts';
import { foldShifts, type Shifts } from './shifts.ts';
import type { UnitSystem } from './unit-system.ts';

export interface Person {
  readonly name: PersonName;
  readonly role: Role;
  readonly language: string;
  readonly units: UnitSystem;
  /** Left out: in the thread. */
  readonly rings?: RingsTo;
}

export interface CrewFile {
  readonly name: string;
  readonly zone: string;
  /** Of what many read at once, and of whoever has said no other. */
  readonly language: string;
  readonly units: UnitSystem;
  readonly people: readonly Person[];
  readonly digestHour: number;
  /** Unanswered for so long, a critical ring goes on to the lead, then to the supervisor. */
  readonly escalationMinutes: Minutes;
  /** The shop's own numbers and steps; what is said later stands in their place. */
  readonly emergency?: EmergencyWords;
}

export interface Crew extends CrewFile {
  /** As somebody has set it; `core/products/shelf.ts` says what is usual where nobody has. */
  readonly defaultSheet: SheetId | undefined;
  /** Older than this, an air reading no longer serves. About 4 h: FHWA-RD-98-084 check form; MIL-HDBK-1110 9.6.6. */
  readonly airLimitMinutes: Minutes;
  /** When the morning's list is told. */
  readonly morningHour: number;
  /** What the crew coats in an hour; `undefined` until somebody sets it. */
  readonly squareMetresPerHour: SquareMetresPerHour | undefined;
  /** One a length of time at most; none until the shop sets one. */
  readonly vocLimits: readonly VocLimit[];
  /** The first instant of each local day on which something was recorded, newest last. */
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
  readonly lastActedAt: EpochMs | undefined;
  readonly shifts: Shifts;
  readonly spray: SpraySettings;
}

const defaultAirLimit = minutes(240);
const usualMorning = 7;

export function foldCrew(file: CrewFile, entries: readonly Entry[], lastActedAt: EpochMs | undefined): Crew {
  let crew: CrewSettled = {
    ...file,
    defaultSheet: undefined,
    airLimitMinutes: defaultAirLimit,
    morningHour: usualMorning,
    squareMetresPerHour: undefined,
    vocLimits: [],
    rings: foldRings(entries),
    entries,
    lastActedAt,
    shifts: foldShifts(entries),
  };
  for (const { fact, by } of entries) {
    if (fact.type === 'SettingChanged') crew = settled(crew, fact.setting, by);
  }
  // Once it is known who there is: who joined later gave the name its capitals.
  const { people } = crew;
  const nameOf = (name: PersonName) => personNamed(people, name) ?? name;
  return { ...crew, spray: foldSpraySettings(entries, file.emergency ?? {}, nameOf) };
}

/** But for what is settled for spraying, which asks who the people are. */
type CrewSettled = Omit<Crew, 'spray'>;

function settled(crew: CrewSettled, setting: SettingChanged['setting'], by: PersonName): CrewSettled {
  switch (setting.name) {
    case 'sheet':
      return { ...crew, defaultSheet: setting.sheet };
    case 'air-limit':
      return { ...crew, airLimitMinutes: minutes(setting.minutes) };
    case 'digest':
      return { ...crew, digestHour: setting.hour };
    case 'morning':
      return { ...crew, morningHour: setting.hour };
    case 'rate':
      return { ...crew, squareMetresPerHour: setting.squareMetresPerHour };
    case 'voc-limit':
      return { ...crew, vocLimits: [...crew.vocLimits.filter(({ per }) => per !== setting.per), setting] };
    case 'crew':
      return { ...crew, name: setting.crewName };
    case 'zone':
      return { ...crew, zone: setting.zone };
    case 'crew-language':
      return { ...crew, language: setting.language };
    case 'crew-units':
      return { ...crew, units: setting.units };
    case 'role':
      return setting.given.reduce((those, { person, role }) => withPerson(those, person, { role }), crew);
    case 'units':
      return withPerson(crew, by, { units: setting.units });
    case 'language':
      return withPerson(crew, by, { language: setting.language });
    case 'rings':
      return withPerson(crew, by, { rings: setting.rings });
    case 'brief':
    case 'brief-ahead':
    case 'sprayers':
    case 'booth':
    case 'lel':
    case 'mixing':
    case 'emergency':
    case 'bell':
    case 'quiet':
      // Folded by the spray settings.
      return crew;
  }
}

/** Changed in their place: the order of the people is that of the file, newcomers last. */
function withPerson(crew: CrewSettled, name: PersonName, change: Partial<Person>): CrewSettled {
  const person = { ...personIn(crew, name), ...change };
  const known = crew.people.some((other) => other.name === name);
  return {
    ...crew,
    people: known ? crew.people.map((other) => (other.name === name ? person : other)) : [...crew.people, person],
  };
}

/** Somebody whom nobody has named yet is crew, in its language and units. */
export function personIn(crew: Pick<CrewFile, 'people' | 'language' | 'units'>, name: PersonName): Person {
  const known = crew.people.find((person) => person.name === name);
  return known ?? { name, role: 'crew', language: crew.language, units: crew.units };
}

/** Whoever leads: the leads; where nobody is one, the supervisors. */
export function peopleLeading(crew: Pick<CrewFile, 'people'>): readonly PersonName[] {
  const leads = peopleWithRole(crew, 'lead');
  return leads.length > 0 ? leads : peopleWithRole(crew, 'supervisor');
}

export function peopleWithRole(crew: Pick<CrewFile, 'people'>, role: Role): readonly PersonName[] {
  return crew.people.filter((person) => person.role === role).map((person) => person.name);
}
