// The steps that somebody is asked about, one row each: which group of the sheet asks for it, for whom or what an answer
// counts, and which act it stops where the answer was no. The order is that in which they are asked: what can hurt
// somebody first. A sheet without the group is never asked about it.

import type { Steps } from '../products/sheet-steps.ts';

export const askedSteps = ['equipment', 'bonding', 'papers', 'vessel', 'clean-oven', 'clean-room', 'alcohol'] as const;
export type AskedStep = (typeof askedSteps)[number];

const asked: readonly string[] = askedSteps;
export const isAsked = (step: string): step is AskedStep => asked.includes(step);

/** What a step stops: a part going into the mix, a cure of its kind, or a flush. */
export type StoppedAct = 'weigh' | 'cure-oven' | 'cure-room' | 'flush';

export interface StepRow {
  readonly group: keyof Steps | 'flush';
  /** An answer counts for the place, for the one who read this revision of the papers, for the pot and later ones of its sheet, for the bottle until another is told of, or for the crew. */
  readonly per: 'place' | 'reader' | 'pot' | 'bottle' | 'crew';
  readonly stops: StoppedAct;
  /** Vouches for what can hurt somebody: said in full or with its own tap, and never by a bare answer. */
  readonly vouches?: true;
}

export const stepRows: Readonly<Record<AskedStep, StepRow>> = {
  equipment: { group: 'equipment', per: 'place', stops: 'weigh', vouches: true },
  bonding: { group: 'bonding', per: 'place', stops: 'weigh', vouches: true },
  papers: { group: 'papers', per: 'reader', stops: 'weigh', vouches: true },
  vessel: { group: 'vessel', per: 'pot', stops: 'weigh' },
  'clean-oven': { group: 'cleanOven', per: 'crew', stops: 'cure-oven' },
  'clean-room': { group: 'cleanRoom', per: 'crew', stops: 'cure-room' },
  /** It stops nobody from cleaning: it is said before, and a deviation of the flush. */
  alcohol: { group: 'flush', per: 'bottle', stops: 'flush' },
};
