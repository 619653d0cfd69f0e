// What is allowed when, as one table: every verb with its rules, their sources and who may lift them. Decisions,
// objection cards, the help and the developers' page all read the same rows.

import { coatFromBatchRules, filterRules, mixRules, stirRules, weighRules } from './batch/batch-rules.ts';
import type { Verb } from './commands.ts';
import type { ObjectionCode } from './objections.ts';
import { coatOnPartRules, cureRules, dryRules, outRules, releaseRules } from './part/part-rules.ts';
import type { Rule } from './rules.ts';

export type RuleRow = Pick<Rule<never>, 'code' | 'source' | 'liftedBy'>;

export const allowed: Readonly<Record<Verb, readonly RuleRow[]>> = {
  mix: mixRules,
  weigh: weighRules,
  stir: stirRules,
  stop: [],
  filter: filterRules,
  thick: [],
  gel: [],
  empty: [],
  part: [],
  coat: [...coatFromBatchRules, ...coatOnPartRules],
  dry: dryRules,
  cure: cureRules,
  temp: [],
  out: outRules,
  wet: [],
  film: [],
  release: releaseRules,
  hold: [],
  air: [],
  surface: [],
  night: [],
  ok: [],
  undo: [],
  amend: [],
  set: [],
};

/** The row behind an objection. */
export function ruleOf(verb: Verb, code: ObjectionCode): RuleRow {
  const row = allowed[verb].find((rule) => rule.code === code);
  if (row === undefined) throw new Error(`no rule of "${verb}" objects with "${code}"`);
  return row;
}
