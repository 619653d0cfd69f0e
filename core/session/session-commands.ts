// The words in which a spray session, and need, are told: where people are, what is flushed, what is asked of its air.

import type { PersonName, PlaceName, SessionNumber } from '../ids.ts';
import type { Celsius, CubicMetres, Grams, Litres, MetresPerSecond, Minutes, Percent, SquareMetres } from '../units.ts';

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
