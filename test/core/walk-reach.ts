// What a walk has to reach: every event, every reason not to (asked before, and marked after), every line that is not
// clear, every kind of bell. Read off the unions and the table of rules, so that a new one is missed by name.

import type { z } from 'zod';
import { allowed } from '../../core/allowed.ts';
import { EventBody } from '../../core/history.ts';
import type { ObjectionCode, Unclear } from '../../core/objections.ts';

import { reminderKinds } from '../../core/wanted-reminder.ts';

/** By name of the row, how often. */
const reached = new Map<string, number>();

export function count(what: string): void {
  reached.set(what, (reached.get(what) ?? 0) + 1);
}

type Option = z.ZodType & { readonly options?: readonly Option[]; readonly shape?: { readonly type: z.ZodLiteral } };

function typesOf(schema: Option): readonly string[] {
  if (schema.options !== undefined) return schema.options.flatMap(typesOf);
  return [...(schema.shape?.type.values ?? [])].map(String);
}

const objectionCodes = [...new Set(Object.values(allowed).flatMap((rules) => rules.map(({ code }) => code)))];
const unclearCodes = {
  'no-such-can': 0,
  'which-can': 0,
  'can-not-wanted': 0,
  'no-can-wanted': 0,
  'can-size-needed': 0,
  'other-unit': 0,
  'no-such-batch': 0,
  'which-batch': 0,
  'no-such-part': 0,
  'which-part': 0,
  'new-part': 0,
  'parts-in': 0,
  'new-place': 0,
  'no-such-sheet': 0,
  'sheet-faulty': 0,
  'which-sheet': 0,
  'no-densities': 0,
  'in-the-future': 0,
  'may-not-permit': 0,
  'may-not-settle': 0,
  'may-not-judge': 0,
  'nothing-to-undo': 0,
  'undo-rests': 0,
  'undo-asks': 0,
  'undo-not-last': 0,
  'undo-too-late': 0,
  'nothing-to-amend': 0,
  'nothing-changed': 0,
  'not-own-entry': 0,
  'not-recalled': 0,
  'no-such-instrument': 0,
  'which-kind': 0,
  'product-stands': 0,
  'decision-stands': 0,
  'nothing-rang': 0,
  'no-such-person': 0,
  'handover-to-self': 0,
  'nothing-to-take-over': 0,
  'not-snoozed': 0,
  'no-countdown': 0,
  'no-alarm-on': 0,
  'which-alarm': 0,
  'more-than-a-day': 0,
  'no-first-shift': 0,
  'which-load': 0,
  'far-reading': 0,
  'film-asked': 0,
  'spot-told': 0,
  'wet-bulb-cannot-be': 0,
  'no-such-session': 0,
  'which-session': 0,
  'not-spraying': 0,
  'not-exposed': 0,
  'watcher-sprays': 0,
} satisfies Record<Unclear['code'], 0>;

/** Of what a reading or a weighing says by itself. */
export const neverObjected: readonly ObjectionCode[] = [
  'ratio-out',
  'uncovered-too-long',
  'past-pot-life-at-worst',
  'gear-cleaned-late',
  'film-outside',
  'adhesion-failed',
  'rubbed-through',
  'test-failed',
  'overheated',
  'not-released',
];

/** Against a decision, and lifted by nobody or by who speaks: then it is never recorded despite them. */
const decided: readonly ObjectionCode[] = [
  ...(['already-released', 'still-in-oven', 'check-by-lead', 'second-eyes', 'not-on-hold', 'not-told'] as const),
];

const toReach: readonly string[] = [
  ...typesOf(EventBody).map((type) => `event ${type}`),
  ...objectionCodes.flatMap((code) => [`objected ${code}`, ...(decided.includes(code) ? [] : [`deviation ${code}`])]),
  ...neverObjected.map((code) => `deviation ${code}`),
  ...Object.keys(unclearCodes).map((code) => `unclear ${code}`),
  ...reminderKinds.map((kind) => `rang ${kind}`),
];

export function reachTable(): Readonly<Record<string, number>> {
  return Object.fromEntries(toReach.map((what) => [what, reached.get(what) ?? 0]));
}
