// A term of the trade, once a tongue: how it is said (with the countries that say it otherwise), what people type for it,
// and where the word was read or heard. A concept goes by the reader's one spelling of it.

import type { Profile } from './profile.ts';

export const concepts = [
  'batch',
  'booth',
  'brief',
  'can',
  'coupon',
  'crew',
  'customer',
  'data-sheet',
  'dew-point',
  'dust',
  'earthed',
  'film',
  'flash-off',
  'goggles',
  'handover',
  'humidity',
  'induction',
  'job',
  'lead',
  'lot',
  'medical',
  'oven',
  'part',
  'pot-life',
  'profile',
  'recoat-window',
  'room',
  'salts',
  'session',
  'sheet',
  'solvent',
  'spraying',
  'spread',
  'stirrer',
  'stirring',
  'substrate',
  'supervisor',
  'training',
  'traveller',
  'vessel',
  'wall',
] as const;
export type Concept = (typeof concepts)[number];

export interface Noun {
  readonly one: string;
  readonly many: string;
  /** Where the tongue has genders. */
  readonly gender?: 'f' | 'm';
}

export interface Term extends Noun {
  readonly in?: Readonly<Partial<Record<Profile['locale'], Noun>>>;
  /** Apart by spaces, as they are spelt; each word means this alone. */
  readonly typed: string;
  readonly source: string;
}

export type Terms = Readonly<Record<Concept, Term>>;

export const nounIn = (term: Term, locale: Profile['locale']): Noun => term.in?.[locale] ?? term;
