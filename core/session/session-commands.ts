// What can be said round a spray session, and in need. Part of the union of commands.

import type { SolventId } from '../calc/solvents.ts';
import type { BatchNumber, PersonName, PlaceName, SessionNumber } from '../ids.ts';
import type {
  Celsius,
  CubicMetres,
  EpochMs,
  Grams,
  Litres,
  MetresPerSecond,
  Minutes,
  Percent,
  SquareMetres,
} from '../units.ts';

/** Sprays; stays near and is exposed; or moved out. */
export const whereabouts = ['sprays', 'stays', 'out'] as const;
export type Whereabouts = (typeof whereabouts)[number];

export const gears = ['gun', 'vessels'] as const;
export type Gear = (typeof gears)[number];

/** One word when it goes wrong; `hot` is a pot that heats. */
export const alarms = ['eyes', 'spill', 'fire', 'down', 'hot'] as const;
export type Alarm = (typeof alarms)[number];

/** The alarm of this name; `undefined` for any other word. */
export const alarmNamed = (name: string | undefined): Alarm | undefined => alarms.find((alarm) => alarm === name);

/** What a sprayer has until a date: fit test of the mask, medical, spray training. */
export const qualifications = ['fit', 'medical', 'training'] as const;
export type Qualification = (typeof qualifications)[number];

/** Work whose hazards are told: spraying has the brief, the others their own short lines. */
export const works = ['spray', 'mix', 'flow', 'dip', 'wipe'] as const;
export type Work = (typeof works)[number];

export interface BriefSaid {
  /** Posted ahead of this time. */
  readonly startsAt?: EpochMs;
  readonly batch?: BatchNumber;
  readonly place?: PlaceName;
  readonly sprayers?: readonly PersonName[];
  readonly stays?: readonly PersonName[];
  readonly out?: readonly PersonName[];
  /** Stands outside; the timers go there. */
  readonly attendant?: PersonName;
  readonly insideVessel?: true;
  /** Mix that will be sprayed in an hour. */
  readonly gramsPerHour?: Grams;
}

export type SessionCommand =
  | ({ readonly verb: 'brief' } & BriefSaid)
  | {
      readonly verb: 'near';
      readonly session?: SessionNumber;
      readonly people: readonly PersonName[];
      readonly goes: Whereabouts;
    }
  /** Of the speaker, or of others who said it before the speaker as their witness. */
  | { readonly verb: 'ack'; readonly session?: SessionNumber; readonly people?: readonly PersonName[] }
  | {
      readonly verb: 'fan';
      readonly session?: SessionNumber;
      readonly running: boolean;
      readonly faceMetresPerSecond?: MetresPerSecond;
    }
  | { readonly verb: 'supplied'; readonly session?: SessionNumber; readonly supplied: boolean }
  | { readonly verb: 'spray-on'; readonly session?: SessionNumber; readonly place?: PlaceName }
  | { readonly verb: 'spray-off'; readonly session?: SessionNumber }
  | { readonly verb: 'rags'; readonly session?: SessionNumber }
  | { readonly verb: 'close'; readonly session?: SessionNumber }
  /** Without a solvent: through with the whole of the sheet's sequence. */
  | {
      readonly verb: 'flush';
      readonly session?: SessionNumber;
      readonly gear: Gear;
      readonly solvent?: SolventId;
      readonly litres?: Litres;
    }
  /** The last day on which it counts, ISO. */
  | { readonly verb: Qualification; readonly person: PersonName; readonly until: string }
  | { readonly verb: 'near-miss'; readonly text: string; readonly anonymous: boolean }
  /** The batch is of a hot pot. */
  | { readonly verb: Alarm; readonly note?: string; readonly batch?: BatchNumber }
  /** Everybody is to answer: is the bell alive? */
  | { readonly verb: 'bell' };

/** The shop's own numbers to call, or its steps for one kind of trouble. */
export type EmergencyField = 'call' | Alarm;

export interface BoothSize {
  /** Open face through which the air goes. */
  readonly faceSquareMetres: SquareMetres;
  readonly cubicMetres?: CubicMetres;
}

export type SpraySetting =
  /** The crew briefs before it sprays. A first brief puts it on by itself. */
  | { readonly name: 'brief'; readonly on: boolean }
  | { readonly name: 'brief-ahead'; readonly minutes: Minutes }
  /** The only ones who may spray; nobody named lifts the rule. */
  | { readonly name: 'sprayers'; readonly people: readonly PersonName[] }
  | ({ readonly name: 'booth'; readonly place: PlaceName } & BoothSize)
  /** A stricter share of the lower explosive limit than a quarter. */
  | { readonly name: 'lel'; readonly percent: Percent }
  /** How many times more air the room needs because nothing mixes perfectly. */
  | { readonly name: 'mixing'; readonly factor: number }
  | { readonly name: 'emergency'; readonly field: EmergencyField; readonly text: string }
  /** Whoever begins a shift is asked whether they hear the bell. */
  | { readonly name: 'bell'; readonly on: boolean }
  /** From one hour up to another; the same twice for none. */
  | { readonly name: 'quiet'; readonly fromHour: number; readonly toHour: number };

/** The sums of a session, of an oven load, or of inert gas let out into a room. */
export type VapourAsked =
  | { readonly of: 'session'; readonly session?: SessionNumber }
  | {
      readonly of: 'oven';
      /** Wet mix on the parts. */
      readonly grams: Grams;
      readonly celsius: Celsius;
      readonly faceMetresPerSecond?: MetresPerSecond;
    }
  | {
      readonly of: 'purge';
      readonly gas: 'argon' | 'nitrogen';
      readonly gasLitres: Litres;
      readonly roomLitres: Litres;
    };
