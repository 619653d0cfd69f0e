// The crew: its people and settings. People and their roles come from the crew's file; settings also from what was said.

import type { Entry } from '../history.ts';
import type { PersonName, SheetId } from '../ids.ts';
import { foldRings, type RingLog } from '../reminders/ring-log.ts';
import { type EmergencyWords, foldSpraySettings, type SpraySettings } from '../session/spray-settings.ts';
import type { EpochMs, Minutes, SquareMetresPerHour } from '../units.ts';
import { minutes } from '../units.ts';
import type { VocLimit } from './ledger-events.ts';
import { foldShifts, type Shifts } from './shifts.ts';

export type Role = 'crew' | 'lead' | 'supervisor';
export type UnitSystem = 'metric' | 'us';

export interface Person {
  readonly name: PersonName;
  readonly role: Role;
  readonly language: string;
  readonly units: UnitSystem;
}

export interface CrewFile {
  readonly name: string;
  readonly zone: string;
  readonly people: readonly Person[];
  readonly digestHour: number;
  /** Unanswered for so long, a critical ring goes on to the lead, then to the supervisor. */
  readonly escalationMinutes: Minutes;
  /** The shop's own numbers and steps; what is said later stands in their place. */
  readonly emergency?: EmergencyWords;
}

export interface Crew extends CrewFile {
  readonly defaultSheet: SheetId;
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
const firstSheet: SheetId = 'demo-clear';

export function foldCrew(file: CrewFile, entries: readonly Entry[], lastActedAt: EpochMs | undefined): Crew {
  let crew: Crew = {
    ...file,
    defaultSheet: firstSheet,
    airLimitMinutes: defaultAirLimit,
    morningHour: usualMorning,
    squareMetresPerHour: undefined,
    vocLimits: [],
    rings: foldRings(entries),
    entries,
    lastActedAt,
    shifts: foldShifts(entries),
    spray: foldSpraySettings(entries, file.emergency ?? {}),
  };
  for (const { fact, by } of entries) {
    if (fact.type !== 'SettingChanged') continue;
    const { setting } = fact;
    switch (setting.name) {
      case 'sheet':
        crew = { ...crew, defaultSheet: setting.sheet };
        break;
      case 'air-limit':
        crew = { ...crew, airLimitMinutes: minutes(setting.minutes) };
        break;
      case 'digest':
        crew = { ...crew, digestHour: setting.hour };
        break;
      case 'morning':
        crew = { ...crew, morningHour: setting.hour };
        break;
      case 'rate':
        crew = { ...crew, squareMetresPerHour: setting.squareMetresPerHour };
        break;
      case 'voc-limit':
        crew = { ...crew, vocLimits: [...crew.vocLimits.filter(({ per }) => per !== setting.per), setting] };
        break;
      case 'units':
        crew = { ...crew, people: withUnits(crew.people, personIn(crew, by), setting.units) };
        break;
    }
  }
  return crew;
}

function withUnits(people: readonly Person[], person: Person, units: UnitSystem): readonly Person[] {
  return [...people.filter((other) => other.name !== person.name), { ...person, units }];
}

/** Somebody whom the file does not name is crew, metric, in the file's first language. */
export function personIn(crew: Pick<CrewFile, 'people'>, name: PersonName): Person {
  const known = crew.people.find((person) => person.name === name);
  return known ?? { name, role: 'crew', language: crew.people[0]?.language ?? 'en', units: 'metric' };
}

export function peopleWithRole(crew: Pick<CrewFile, 'people'>, role: Role): readonly PersonName[] {
  return crew.people.filter((person) => person.role === role).map((person) => person.name);
}
