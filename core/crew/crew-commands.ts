// What can be settled by saying it: for the crew, and for whoever says it.

import type { PersonName, SheetId } from '../ids.ts';
import type { SpraySetting } from '../session/session-commands.ts';
import type { Grams, SquareMetresPerHour } from '../units.ts';
import type { UnitSystem } from './unit-system.ts';

/** Each may settle what the one before it may, and more. */
export const roles = ['crew', 'lead', 'supervisor'] as const;
export type Role = (typeof roles)[number];

export type Setting =
  | { readonly name: 'sheet'; readonly sheet: SheetId }
  | { readonly name: 'air-limit'; readonly minutes: number }
  | { readonly name: 'digest'; readonly hour: number }
  | { readonly name: 'morning'; readonly hour: number }
  /** What the crew coats in an hour, for plans. */
  | { readonly name: 'rate'; readonly squareMetresPerHour: SquareMetresPerHour }
  /** From the shop's permit; the ledger warns near it. */
  | { readonly name: 'voc-limit'; readonly grams: Grams; readonly per: 'day' | 'month' | 'year' }
  /** How the crew is called. */
  | { readonly name: 'crew'; readonly crewName: string }
  /** IANA. What was recorded keeps its instants; days are told by the new wall clock. */
  | { readonly name: 'zone'; readonly zone: string }
  /** Of what many read at once: a batch's message, the board. */
  | { readonly name: 'crew-language'; readonly language: string }
  | { readonly name: 'crew-units'; readonly units: UnitSystem }
  /** Of several at once: who settles it may by then be none of them. */
  | { readonly name: 'role'; readonly given: readonly RoleGiven[] }
  | PersonalSetting
  | SpraySetting;

export interface RoleGiven {
  readonly person: PersonName;
  readonly role: Role;
}

/** Of whoever says it. */
export type PersonalSetting =
  | { readonly name: 'units'; readonly units: UnitSystem }
  | { readonly name: 'language'; readonly language: string }
  /** Where a chat platform rings for them. */
  | { readonly name: 'rings'; readonly rings: RingsTo };

/** In the thread of the batch, with a mention; or in a direct message. */
export type RingsTo = (typeof ringsTo)[number];
export const ringsTo = ['thread', 'direct'] as const;
