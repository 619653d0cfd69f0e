// What stands against a decision is lifted one by one, each by its name and with its own reason: a leave for one thing is none for
// another that nobody had in mind.

import type { SaidWith } from './history.ts';
import type { Lift, LiftName } from './lift-names.ts';
import type { Objection } from './objections.ts';

/** How a line names it; of several, each has to be named. Empty: it has no name, and is lifted where it alone stands. */
export function namesOf(objection: Objection): readonly LiftName[] {
  switch (objection.code) {
    case 'on-hold':
      return ['hold'];
    case 'cure-not-given':
      return ['cure'];
    case 'not-given':
      return [...new Set(objection.lacking.map(({ of }) => of))];
    case 'film-half':
      return ['film'];
    case 'instrument-failed':
      return [objection.kind === 'gauge' ? 'film' : 'cure'];
    case 'disposed':
      return [objection.is === 'scrapped' ? 'scrap' : 'return'];
    default:
      return [];
  }
}

/** Why each of its names is lifted; `undefined` where one of them is not. */
export function liftedBy(lifts: readonly Lift[], objection: Objection): readonly Lift[] | undefined {
  const found = namesOf(objection).map((name) => lifts.find(({ of }) => of === name));
  const named = found.filter((lift) => lift !== undefined);
  return named.length === 0 || named.length < found.length ? undefined : named;
}

/** Why this was allowed beforehand, if it was. Before edition 9 one reason lifted all. */
export function permittedFor({ permitted, lifts }: SaidWith, objection: Objection): string | undefined {
  const of = lifts === undefined ? undefined : liftedBy(lifts, objection);
  return of === undefined ? permitted : [...new Set(of.map(({ why }) => why))].join('; ');
}
