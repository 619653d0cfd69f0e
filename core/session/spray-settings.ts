// What the crew has settled for spraying: whether it briefs, who may, its booths, its air, its numbers for need. Folded
// from the crew's stream; the crew's file may give the emergency words.

import { shareOfLel } from '../calc/vapour.ts';
import type { Entry } from '../history.ts';
import type { PersonName, PlaceName } from '../ids.ts';
import { type EpochMs, type Fraction, fraction, type Minutes, minutes } from '../units.ts';
import type { BoothSize, EmergencyField, Qualification } from './session-commands.ts';

export interface QuietHours {
  readonly fromHour: number;
  readonly toHour: number;
}

export type EmergencyWords = Readonly<Partial<Record<EmergencyField, string>>>;

export interface SpraySettings {
  /** When the crew began or ceased to brief, in order of time. */
  readonly briefing: readonly { readonly at: EpochMs; readonly on: boolean }[];
  readonly briefAheadMinutes: Minutes;
  /** Empty: nobody has said who may, and anybody may. */
  readonly sprayers: readonly PersonName[];
  readonly booths: ReadonlyMap<PlaceName, BoothSize>;
  readonly lelShare: Fraction;
  readonly mixingFactor: number;
  /** Nobody has set it: the figure is assumed. */
  readonly mixingAssumed: boolean;
  readonly emergency: EmergencyWords;
  readonly quiet: QuietHours | undefined;
  /** Each shift begins with a bell test for whoever begins it. */
  readonly bellAtShift: boolean;
  /** Who began or ended a shift, in order of time; without a name everything was handed over. */
  readonly shiftChanges: readonly { readonly at: EpochMs; readonly by: PersonName | undefined }[];
  /** The last day of each, ISO, by person. */
  readonly dates: ReadonlyMap<PersonName, Readonly<Partial<Record<Qualification, string>>>>;
}

/** Common practice, no source. */
const usualAhead = minutes(15);
/** Rooms need 3 to 10 times what perfect mixing would: from memory, no source. */
const usualMixing = 5;

/** `nameOf`: as the crew writes a name, whatever an older record made of its capitals. */
export function foldSpraySettings(
  entries: readonly Entry[],
  emergency: EmergencyWords,
  nameOf: (name: PersonName) => PersonName,
): SpraySettings {
  let settings: SpraySettings = {
    briefing: [],
    briefAheadMinutes: usualAhead,
    sprayers: [],
    booths: new Map(),
    lelShare: fraction(shareOfLel.oshaSpray),
    mixingFactor: usualMixing,
    mixingAssumed: true,
    emergency,
    quiet: undefined,
    bellAtShift: false,
    shiftChanges: [],
    dates: new Map(),
  };
  for (const entry of entries) settings = evolve(settings, entry, nameOf);
  return settings;
}

function evolve(
  settings: SpraySettings,
  { fact, happenedAt: at, by }: Entry,
  nameOf: (name: PersonName) => PersonName,
): SpraySettings {
  if (fact.type === 'ShiftBegun' || fact.type === 'ShiftEnded') {
    return { ...settings, shiftChanges: [...settings.shiftChanges, { at, by }] };
  }
  if (fact.type === 'TakenOver') {
    return { ...settings, shiftChanges: [...settings.shiftChanges, { at, by: undefined }] };
  }
  if (fact.type === 'SessionBriefed') return { ...settings, briefing: [...settings.briefing, { at, on: true }] };
  if (fact.type === 'QualificationDated') {
    const person = nameOf(fact.person);
    const known = settings.dates.get(person) ?? {};
    return { ...settings, dates: new Map([...settings.dates, [person, { ...known, [fact.what]: fact.until }]]) };
  }
  if (fact.type !== 'SettingChanged') return settings;
  const { setting } = fact;
  switch (setting.name) {
    case 'brief':
      return { ...settings, briefing: [...settings.briefing, { at, on: setting.on }] };
    case 'brief-ahead':
      return { ...settings, briefAheadMinutes: setting.minutes };
    case 'sprayers':
      return { ...settings, sprayers: [...new Set(setting.people.map(nameOf))] };
    case 'booth': {
      const { place, faceSquareMetres, cubicMetres } = setting;
      const size = cubicMetres === undefined ? { faceSquareMetres } : { faceSquareMetres, cubicMetres };
      return { ...settings, booths: new Map([...settings.booths, [place, size]]) };
    }
    case 'lel':
      return { ...settings, lelShare: fraction(setting.percent / 100) };
    case 'mixing':
      return { ...settings, mixingFactor: setting.factor, mixingAssumed: false };
    case 'emergency':
      return { ...settings, emergency: { ...settings.emergency, [setting.field]: setting.text } };
    case 'bell':
      return { ...settings, bellAtShift: setting.on };
    case 'quiet': {
      const { fromHour, toHour } = setting;
      return { ...settings, quiet: fromHour === toHour ? undefined : { fromHour, toHour } };
    }
    default:
      return settings;
  }
}

/** Whether the crew briefs before it sprays, as it stood at `at`. */
export function briefsAt({ briefing }: SpraySettings, at: EpochMs): boolean {
  return briefing.findLast((change) => change.at <= at)?.on ?? false;
}
