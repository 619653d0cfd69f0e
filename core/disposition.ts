// What becomes of a part that is not as it should be, in the words of the trade: one of four, and each is a decision.

import type { PersonName } from './ids.ts';
import type { EpochMs } from './units.ts';

export const dispositions = ['rework', 'concession', 'scrap', 'return'] as const;
export type Disposition = (typeof dispositions)[number];

export const returnsTo = ['customer', 'supplier'] as const;
export type ReturnsTo = (typeof returnsTo)[number];

/** The customer takes it as it is: who of theirs said so, and the document that has it. */
export interface Concession {
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly person: string;
  readonly document: string;
  /** ISO, of the document. */
  readonly date: string;
}

/** What a disposition says besides that it was made. */
export const dispositionTellings = ['why', 'person', 'document', 'date', 'to'] as const;
export type DispositionTelling = (typeof dispositionTellings)[number];

/** What each has to tell: the reason of a concession is the customer's document. */
export const mustTell: Readonly<Record<Disposition, readonly DispositionTelling[]>> = {
  rework: ['why'],
  concession: ['person', 'document', 'date'],
  scrap: ['why'],
  return: ['to', 'why'],
};
