// A clock of a batch, can, part or session as people are told of it: how far it is, when it ends, and which way it errs, so
// that no layout decides which minute to show.

import type { EpochMs } from './units.ts';

/** What must last at least so long is shown late rather than early; what may last at most so long the other way. */
export type Errs = 'at-least' | 'at-most';

export type AtLeastClock<Id extends string = string> = {
  readonly id: Id;
  readonly errs: 'at-least';
  /** 0 at its start, 1 at its end; never past either. Full means given, and nothing else does. */
  readonly progress: number;
  /** Nothing was measured that its end rests on. */
  readonly assumed: boolean;
} & (
  | { readonly goes: 'runs'; readonly dueAt: EpochMs }
  /**
   * `given`: proved by the record. `stands`: it does not run. `unproved`: the sheet has no figure for what is known now, so
   * that it earns nothing, or its end has passed without a proof. The end is `undefined` while nobody knows it.
   */
  | { readonly goes: 'given' | 'stands' | 'unproved'; readonly dueAt: EpochMs | undefined }
);

export interface AtMostClock<Id extends string = string> {
  readonly id: Id;
  readonly errs: 'at-most';
  readonly progress: number;
  readonly dueAt: EpochMs;
  /** From here on it is urgent. */
  readonly nearAt: EpochMs;
}

export type NounClock<Id extends string = string> = AtLeastClock<Id> | AtMostClock<Id>;

/** What is known of a clock that runs by readings. */
interface Earning {
  readonly progress: number;
  readonly dueAt: EpochMs | undefined;
  readonly doneAt: EpochMs | undefined;
  readonly runs: boolean;
  readonly noCredit: boolean;
  readonly assumed?: boolean;
}

export function atLeast<Id extends string>(id: Id, now: EpochMs, earning: Earning): AtLeastClock<Id> {
  const { dueAt, doneAt, runs, noCredit, assumed = false } = earning;
  const clock = { id, errs: 'at-least', assumed } as const;
  if (doneAt !== undefined && doneAt <= now) return { ...clock, progress: 1, goes: 'given', dueAt };
  const progress = Math.min(0.99, Math.max(0, earning.progress));
  if (!runs) return { ...clock, progress, goes: 'stands', dueAt };
  if (noCredit || (dueAt !== undefined && dueAt <= now)) return { ...clock, progress, goes: 'unproved', dueAt };
  return dueAt === undefined
    ? { ...clock, progress, goes: 'stands', dueAt }
    : { ...clock, progress, goes: 'runs', dueAt };
}

/** By plain minutes. */
export function lasts<Id extends string>(id: Id, now: EpochMs, from: EpochMs, to: EpochMs): AtLeastClock<Id> {
  return atLeast(id, now, { progress: passed(from, to, now), dueAt: to, doneAt: to, runs: true, noCredit: false });
}

export function atMost<Id extends string>(
  id: Id,
  now: EpochMs,
  { progress, nearAt, dueAt }: { readonly progress: number; readonly nearAt: EpochMs; readonly dueAt: EpochMs },
): AtMostClock<Id> {
  return { id, errs: 'at-most', progress: dueAt <= now ? 1 : Math.min(1, Math.max(0, progress)), nearAt, dueAt };
}

/** By plain minutes; urgent from `nearAt` on. */
export function mayLast<Id extends string>(
  id: Id,
  now: EpochMs,
  from: EpochMs,
  to: EpochMs,
  nearAt: EpochMs = to,
): AtMostClock<Id> {
  return atMost(id, now, { progress: passed(from, to, now), nearAt, dueAt: to });
}

/** The share of a plain span that has passed. */
function passed(from: EpochMs, to: EpochMs, now: EpochMs): number {
  return to <= from ? 1 : (now - from) / (to - from);
}
