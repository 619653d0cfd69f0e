// What is allowed when, as one table: every verb with its rules, their sources and who may lift them. Objection cards,
// the help and the developers' page read it here; each decision reads the same rows where they stand, in its noun's
// rules.

import { coatFromBatchRules, mixRules, potRules } from './batch/batch-rules.ts';
import { addRules, weighRules } from './batch/weigh-rules.ts';
import { blanketRules, canStirRules, checkRules, lidRules, openRules, shutRules } from './can/can-rules.ts';
import type { Verb } from './commands.ts';
import { alarmRules } from './crew/alarm-rules.ts';
import type { ObjectionCode } from './objections.ts';
import { coatOnPartRules, cureRules, dryRules, outRules } from './part/part-rules.ts';
import { dispositionRules, heldRules, releaseRules } from './part/release-rules.ts';
import type { Rule } from './rules.ts';
import { ackRules } from './session/ack-rules.ts';
import { closeRules, coatUnderBriefRules, sprayRules } from './session/session-rules.ts';

export type RuleRow = Pick<Rule<never>, 'code' | 'source' | 'liftedBy'>;

/** A verb that is not here is never objected to. */
export const allowed: Readonly<Partial<Record<Verb, readonly RuleRow[]>>> = {
  mix: [...mixRules, ...alarmRules],
  weigh: [...weighRules, ...alarmRules],
  add: [...addRules, ...alarmRules],
  open: [...openRules, ...alarmRules],
  lid: lidRules,
  shut: shutRules,
  blanket: blanketRules,
  prestir: [...canStirRules, ...alarmRules],
  check: checkRules,
  ...potRules,
  stir: [...potRules.stir, ...alarmRules],
  filter: [...potRules.filter, ...alarmRules],
  coat: [...coatFromBatchRules, ...coatOnPartRules, ...coatUnderBriefRules, ...alarmRules],
  dry: dryRules,
  cure: [...cureRules, ...alarmRules],
  out: outRules,
  release: releaseRules,
  'see-to': heldRules,
  ...dispositionRules,
  ack: ackRules,
  brief: alarmRules,
  'spray-on': [...sprayRules, ...alarmRules],
  close: closeRules,
};

/** The row behind an objection. */
export function ruleOf(verb: Verb, code: ObjectionCode): RuleRow {
  const row = allowed[verb]?.find((rule) => rule.code === code);
  if (row === undefined) throw new Error(`no rule of "${verb}" objects with "${code}"`);
  return row;
}
