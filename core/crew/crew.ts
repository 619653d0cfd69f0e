// The crew: its people and settings. Both come from the crew's file, and from what was said since.

import { type FactFor, isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import type { PersonName } from '../ids.ts';
import { type Instrument, instrumentsIn } from '../instruments.ts';
import { type Recall, recallsIn } from '../lot-recalls.ts';
import { personNamed } from '../person-named.ts';
import { foldRings, type RingLog } from '../ring-log.ts';
import { type Sealed, sealedIn } from '../sealed-stock.ts';
import { emergencyFields } from '../session/session-commands.ts';
import type { EmergencyWords, SpraySettings } from '../session/spray-settings.ts';
import type { Setting, SettingName } from '../settings.ts';
import { type Settled, settle } from '../settled.ts';
import { type StepAnswer, stepAnswersIn } from '../steps/steps-answered.ts';
import type { EpochMs, Minutes } from '../units.ts';
import type { RingsTo, Role } from './crew-commands.ts';
import { crewLaw } from './crew-law.ts';
import { type FirstShifts, foldFirstShifts } from './first-shifts.ts';
import { foldAlarms, type OpenAlarm } from './open-alarms.ts';
import { foldShifts, type Shifts } from './shifts.ts';
import { spraySettled } from './spray-settled.ts';
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
  readonly settled: Settled;
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
  readonly lastActedAt: EpochMs | undefined;
  readonly shifts: Shifts;
  readonly firstShifts: FirstShifts;
  readonly spray: SpraySettings;
  readonly stepAnswers: readonly StepAnswer[];
  /** Cans that were received and are not opened yet. */
  readonly sealed: readonly Sealed[];
  /** Lots that were called back. */
  readonly recalls: readonly Recall[];
  readonly instruments: readonly Instrument[];
  /** Since when it notes of its parts what they bear. */
  readonly heatNotedAt: EpochMs | undefined;
  readonly alarms: readonly OpenAlarm[];
  /** What was said of alarms, ever. */
  readonly alarmEntries: readonly Entry[];
}

/** When somebody last acted is no event of its stream: the shop adds it. */
export function foldCrew(file: CrewFile, entries: readonly Entry[]): Crew {
  const settled = new Map<SettingName, readonly Setting[]>();
  for (const setting of settingsOf(file)) settle(settled, setting);
  let crew = file;
  for (const { fact, by } of entries) {
    if (!isFor('crew', fact)) continue;
    const setting = settingIn(fact);
    settle(settled, setting);
    if (isOwn(setting)) crew = withSetting(crew, setting, by);
  }
  // Once it is known who there is: who joined later gave the name its capitals.
  const { people } = crew;
  const spray = spraySettled(
    entries,
    settled,
    (name) => personNamed(people, name) ?? name,
    crewLaw({ ...crew, settled }),
  );
  const alarmEntries = entries.filter(({ fact }) => isFor('alarms', fact));
  return {
    ...crew,
    settled,
    rings: foldRings(entries),
    entries,
    lastActedAt: undefined,
    shifts: foldShifts(entries),
    firstShifts: foldFirstShifts(entries),
    spray,
    stepAnswers: stepAnswersIn(entries),
    sealed: sealedIn(entries),
    recalls: recallsIn(entries),
    instruments: instrumentsIn(entries),
    heatNotedAt: heatNotedIn(entries),
    alarms: foldAlarms(alarmEntries),
    alarmEntries,
  };
}

function heatNotedIn(entries: readonly Entry[]): EpochMs | undefined {
  return entries.find(({ fact }) => fact.type === 'PartReceived' && fact.highestCelsius !== undefined)?.recordedAt;
}

function settingIn(fact: FactFor<'crew'>): Setting {
  switch (fact.type) {
    case 'SettingChanged':
      return fact.setting;
    // A first brief puts the briefs on by itself.
    case 'SessionBriefed':
      return { name: 'brief', on: true };
    // And the first surface that was said to be prepared, which alone is filed under the crew, the keeping of them.
    case 'SurfacePrepared':
      return { name: 'prep', on: true };
  }
}

/** Where the crew begins. */
function settingsOf(file: CrewFile): readonly Setting[] {
  return [
    { name: 'crew', crewName: file.name },
    { name: 'zone', zone: file.zone },
    { name: 'crew-language', language: file.language },
    { name: 'crew-units', units: file.units },
    { name: 'digest', hour: file.digestHour },
    ...emergencyFields.flatMap((field): readonly Setting[] => {
      const text = file.emergency?.[field];
      return text === undefined ? [] : [{ name: 'emergency', field, text }];
    }),
  ];
}

/** What a crew and its people are, from the first; everything else that is settled is asked of `settled`. */
const ownNames = [
  'crew',
  'zone',
  'crew-language',
  'crew-units',
  'digest',
  'role',
  'units',
  'language',
  'rings',
] as const;
type OwnSetting = Extract<Setting, { name: (typeof ownNames)[number] }>;
const isOwn = (setting: Setting): setting is OwnSetting => ownNames.some((name) => name === setting.name);

function withSetting(crew: CrewFile, setting: OwnSetting, by: PersonName): CrewFile {
  switch (setting.name) {
    case 'crew':
      return { ...crew, name: setting.crewName };
    case 'zone':
      return { ...crew, zone: setting.zone };
    case 'crew-language':
      return { ...crew, language: setting.language };
    case 'crew-units':
      return { ...crew, units: setting.units };
    case 'digest':
      return { ...crew, digestHour: setting.hour };
    case 'role':
      return setting.given.reduce((those, { person, role }) => withPerson(those, person, { role }), crew);
    case 'units':
      return withPerson(crew, by, { units: setting.units });
    case 'language':
      return withPerson(crew, by, { language: setting.language });
    case 'rings':
      return withPerson(crew, by, { rings: setting.rings });
  }
}

/** Changed in their place: the order of the people is that of the file, newcomers last. */
function withPerson(crew: CrewFile, name: PersonName, change: Partial<Person>): CrewFile {
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
