// The words in which a spray session, and need, are told: where people are, what is flushed, what is asked of its air.

import type { SessionNumber } from '../ids.ts';
import type { Celsius, CubicMetres, Grams, Litres, MetresPerSecond, SquareMetres } from '../units.ts';

/** Sprays; stays near and is exposed; or moved out. */
export const whereabouts = ['sprays', 'stays', 'out'] as const;
export type Whereabouts = (typeof whereabouts)[number];

/** What a session waits for before it closes. */
export const sessionGears = ['gun', 'vessels'] as const;
export type SessionGear = (typeof sessionGears)[number];

const ofSession: readonly string[] = sessionGears;
export const isSessionGear = (gear: Gear): gear is SessionGear => ofSession.includes(gear);

/** What is cleaned after a coat, of whatever method: the tray goes with its roller. */
export const gears = [...sessionGears, 'brush', 'roller', 'dip-tank', 'flow-gear'] as const;
export type Gear = (typeof gears)[number];

/** The gravest first. One word or two when it goes wrong: `hot` is a pot that heats, `emergency` whatever nobody has named. */
export const alarms = ['fire', 'breathless', 'down', 'eyes', 'skin-burn', 'spill', 'hot', 'emergency'] as const;
export type Alarm = (typeof alarms)[number];

/** The alarm of this name; `undefined` for any other word. */
export const alarmNamed = (name: string | undefined): Alarm | undefined => alarms.find((alarm) => alarm === name);

/** What a sprayer has until a date: fit test of the mask, medical, spray training. */
export const qualifications = ['fit', 'medical', 'training'] as const;
export type Qualification = (typeof qualifications)[number];

/** Work whose hazards are told: spraying has the brief, the others their own short lines. */
export const works = ['spray', 'mix', 'flow', 'dip', 'wipe'] as const;
export type Work = (typeof works)[number];

/** The shop's own numbers to call, or its steps for one kind of trouble. */
export const emergencyFields = ['call', ...alarms] as const;
export type EmergencyField = (typeof emergencyFields)[number];

export interface BoothSize {
  /** Open face through which the air goes. */
  readonly faceSquareMetres: SquareMetres;
  readonly cubicMetres?: CubicMetres | undefined;
}

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
