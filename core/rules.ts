// A rule of what is allowed when: one row each, with its source. The same row objects before an act, marks a deviation
// after it, and stands in the help. A rule looks at facts and a time, never at "the state so far", so that it gives the
// same answer a year later over a corrected record.

import { isDecision } from './commands.ts';
import { peopleFrom, roleShort } from './crew/who-may.ts';
import type { Decision, Said } from './decision.ts';
import type { NewEvent, SaidWith } from './history.ts';
import type { Lift } from './lift-names.ts';
import { liftedBy, namesOf } from './lifts.ts';
import type { Objection, ObjectionCode } from './objections.ts';
import { type Edition, editionOfToday, holdsIn } from './rule-editions.ts';
import type { Shop } from './shop.ts';
import type { EpochMs } from './units.ts';

export type RuleSource =
  | 'sheet'
  | 'label'
  | 'job'
  | 'sheet or job'
  /** As a lead told what the job wants. */
  | 'asked by the job'
  /** The employer's spray programme. */
  | 'employer'
  /** In the United States 29 CFR 1910.94 and 1910.107; `core/session/figure-sources.ts` names those of other countries. */
  | 'regulation'
  | 'common practice, no source'
  | 'the order of the work';

export interface Rule<Case> {
  readonly code: ObjectionCode;
  readonly source: RuleSource;
  /** Who may lift it beforehand, with a reason. What has happened is recorded whoever says it. */
  readonly liftedBy: 'lead' | 'supervisor' | 'nobody';
  /** The first edition of the rules in which it stands; left out, the first of all. */
  readonly since?: Edition;
  /** `edition`: of the rules that judge the act, for a row that has come to ask more of the same. */
  readonly check: (situation: Case, edition: Edition) => Objection | undefined;
}

/** By the rules of that edition: an act of the past is asked about by those of its own day. */
export function objectionsTo<Case>(
  rules: readonly Rule<Case>[],
  situation: Case,
  edition: Edition,
): readonly Objection[] {
  return rules
    .filter((rule) => holdsIn(rule, edition))
    .map((rule) => rule.check(situation, edition))
    .filter((objection) => objection !== undefined);
}

/** Object before, record after: the one place where a stance meets the rules. A decision is no fact that happened. */
export function judge<Case>(
  shop: Shop,
  said: Said,
  rules: readonly Rule<Case>[],
  situations: readonly Case[],
  events: (saidWith: SaidWith) => readonly NewEvent[],
): Decision {
  const objections = situations.flatMap((situation) => objectionsTo(rules, situation, editionOfToday));
  const despite = [...new Set(objections.map((objection) => objection.code))];
  const hasHappened = said.stance.is === 'happened' && !isDecision(said.command);
  if (objections.length === 0 || hasHappened) return { kind: 'accepted', events: events({ despite }) };
  if (said.stance.is !== 'permitted') return { kind: 'objected', objections };
  const { why, lifts = [] } = said.stance;
  // Of a decision each reason is for what it names; where one thing alone stands, it need not be named.
  const isOne = lifts.length === 0 && thingsIn(objections).size === 1;
  const isEach = isDecision(said.command) && !isOne;
  const left = isEach ? objections.filter((objection) => liftedBy(lifts, objection) === undefined) : [];
  for (const objection of objections) {
    const by = rules.find((rule) => rule.code === objection.code)?.liftedBy ?? 'nobody';
    const wanted = by === 'nobody' ? 'nobody' : roleShort(shop.crew, said.by, by);
    if (wanted === undefined || (left.includes(objection) && wanted !== 'nobody')) continue;
    // Where nobody supervises it is a lead's, and the answer says so.
    const who = wanted === 'nobody' ? [] : peopleFrom(shop.crew, wanted);
    const unclear = { code: 'may-not-permit', wanted, who, because: objection } as const;
    return { kind: 'unclear', unclear };
  }
  if (left.length > 0) return { kind: 'objected', objections: left };
  // What was named and did not stand against it was not lifted.
  const isOf = ({ of }: Lift) => objections.some((objection) => namesOf(objection).includes(of));
  return {
    kind: 'accepted',
    events: events({ despite, permitted: why, ...(isEach && { lifts: lifts.filter(isOf) }) }),
  };
}

/** What stands against it, by name; what has none is one thing by its code. */
const thingsIn = (objections: readonly Objection[]): ReadonlySet<string> =>
  new Set(objections.flatMap((each): readonly string[] => (namesOf(each).length === 0 ? [each.code] : namesOf(each))));

/** Whether something of this time had happened by then. */
export function hadHappened(at: EpochMs | undefined, by: EpochMs): at is EpochMs {
  return at !== undefined && at <= by;
}
