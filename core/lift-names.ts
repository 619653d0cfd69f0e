// What stands against a decision, as a line names it: by the verb of what it is about.

import { filmTestNames } from './film-tests.ts';

export const liftNames = [
  ...(['hold', 'cure', 'film', 'adhesion', 'rub', 'scrap', 'return', 'prep', 'wet'] as const),
  ...filmTestNames,
] as const;
export type LiftName = (typeof liftNames)[number];

export interface Lift {
  readonly of: LiftName;
  readonly why: string;
}
