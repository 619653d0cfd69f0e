// What is allowed when, as one table: every verb with its rules, their sources and who may lift them. Objection cards,
// the help and the developers' page read it here; each decision reads the same rows where they stand, in its noun's
// rules.

import { catchRules, coatFromBatchRules, filterRules, mixRules, stirRules, stopRules } from './batch/batch-rules.ts';
import { addRules, weighRules } from './batch/weigh-rules.ts';
import { checkRules, openRules } from './can/can-rules.ts';
import type { Verb } from './commands.ts';
import type { ObjectionCode } from './objections.ts';
import { coatOnPartRules, cureRules, dryRules, outRules, releaseRules } from './part/part-rules.ts';
import type { Rule } from './rules.ts';
import { closeRules, coatUnderBriefRules, sprayRules } from './session/session-rules.ts';

export type RuleRow = Pick<Rule<never>, 'code' | 'source' | 'liftedBy'>;

export const allowed: Readonly<Record<Verb, readonly RuleRow[]>> = {
  mix: mixRules,
  weigh: weighRules,
  add: addRules,
  open: openRules,
  lid: [],
  blanket: [],
  check: checkRules,
  prestir: [],
  discard: [],
  stir: stirRules,
  stop: stopRules,
  cover: [],
  uncover: [],
  filter: filterRules,
  catch: catchRules,
  thick: [],
  gel: [],
  empty: [],
  judge: [],
  part: [],
  prep: [],
  coat: [...coatFromBatchRules, ...coatOnPartRules, ...coatUnderBriefRules],
  dry: dryRules,
  cure: cureRules,
  temp: [],
  door: [],
  out: outRules,
  wet: [],
  film: [],
  adhesion: [],
  rub: [],
  release: releaseRules,
  hold: [],
  air: [],
  surface: [],
  night: [],
  ok: [],
  snooze: [],
  shift: [],
  handover: [],
  takeover: [],
  undo: [],
  amend: [],
  used: [],
  brief: [],
  near: [],
  ack: [],
  fan: [],
  supplied: [],
  'spray-on': sprayRules,
  'spray-off': [],
  flush: [],
  rags: [],
  close: closeRules,
  fit: [],
  medical: [],
  training: [],
  'near-miss': [],
  eyes: [],
  spill: [],
  fire: [],
  down: [],
  hot: [],
  bell: [],
  set: [],
};

/** The row behind an objection. */
export function ruleOf(verb: Verb, code: ObjectionCode): RuleRow {
  const row = allowed[verb].find((rule) => rule.code === code);
  if (row === undefined) throw new Error(`no rule of "${verb}" objects with "${code}"`);
  return row;
}
