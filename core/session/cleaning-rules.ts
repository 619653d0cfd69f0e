// Gear is cleaned at once: when its first cleaning was later than the sheet allows, whatever it was used for.

import type { Objection } from '../objections.ts';
import type { Rule } from '../rules.ts';
import { minutesBetween } from '../units.ts';
import type { FirstCleaning } from './flush-state.ts';

/** A deviation of the cleaning; it stops nobody from cleaning. */
export const cleaningRules: readonly Rule<{ readonly first: FirstCleaning | undefined }>[] = [
  {
    code: 'gear-cleaned-late',
    source: 'sheet',
    liftedBy: 'nobody',
    since: 4,
    check: ({ first }) => (first === undefined ? undefined : late(first)),
  },
];

function late({ sheet: { steps }, gear, restsFrom, at }: FirstCleaning): Objection | undefined {
  if (steps?.cleaning === undefined) return undefined;
  const { mostMinutes, lateCosts: costs } = steps.cleaning;
  const afterMinutes = minutesBetween(restsFrom, at);
  return afterMinutes > mostMinutes ? { code: 'gear-cleaned-late', gear, afterMinutes, mostMinutes, costs } : undefined;
}
