// The shop's instruments by name, with their checks, and where each was last used; and how one stood when something was read
// with it. A check that failed speaks against what was read since the last good one, and against what is read until the next.

import { localDay } from './crew/local-day.ts';
import type { Entry } from './history.ts';
import type { PersonName, PlaceName } from './ids.ts';
import type { CheckResult, InstrumentKind } from './instrument-kinds.ts';
import type { EpochMs } from './units.ts';

export interface InstrumentCheck {
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly result: CheckResult;
}

export interface Instrument {
  readonly name: string;
  readonly kind: InstrumentKind;
  readonly isRetired: boolean;
  /** In order of time. */
  readonly checks: readonly InstrumentCheck[];
  /** Until which day it was in check, as that was told, in order of time; `undefined`: checked, and nobody said until when. */
  readonly due: readonly { readonly from: EpochMs; readonly until: string | undefined }[];
  /** In order of time. */
  readonly taken: readonly Taken[];
}

/** Used there from then on, until another is. */
export interface Taken {
  readonly at: EpochMs;
  readonly seq: number;
  readonly place: PlaceName;
}

export type InstrumentFailed = {
  readonly code: 'instrument-failed';
  readonly instrument: string;
  readonly kind: InstrumentKind;
  readonly failedAt: EpochMs;
  /** Its last good check before; `undefined`: none is on record. */
  readonly goodAt: EpochMs | undefined;
};

export type InstrumentObjection =
  | InstrumentFailed
  /** Read after the last day of its check. */
  | { readonly code: 'instrument-overdue'; readonly instrument: string; readonly until: string };

/** As they are typed: lower case. */
export const instrumentName = (typed: string): string => typed.toLowerCase();

export function instrumentsIn(entries: readonly Entry[]): readonly Instrument[] {
  const kept = new Map<string, Instrument>();
  for (const { fact, by, seq, happenedAt: at } of entries) {
    if (fact.type === 'InstrumentKept') {
      const { instrument: name, of: kind, due: until, retired: isRetired = false } = fact;
      const before = kept.get(name);
      const due = [...(before?.due ?? []), ...(until === undefined ? [] : [{ from: at, until }])];
      kept.set(name, { checks: [], taken: [], ...before, name, kind, isRetired, due });
    }
    if (fact.type !== 'InstrumentChecked' && fact.type !== 'InstrumentTaken') continue;
    const before = kept.get(fact.instrument);
    if (before === undefined) continue;
    const { result, next: until } = fact.type === 'InstrumentChecked' ? fact : {};
    kept.set(before.name, {
      ...before,
      ...(fact.type === 'InstrumentTaken' && { taken: [...before.taken, { at, seq, place: fact.place }] }),
      ...(result !== undefined && { checks: [...before.checks, { at, by, result }] }),
      ...(result === 'ok' && { due: [...before.due, { from: at, until }] }),
    });
  }
  return [...kept.values()];
}

export const instrumentNamed = (instruments: readonly Instrument[], name: string): Instrument | undefined =>
  instruments.find((each) => each.name === name);

export const lastCheckBy = ({ checks }: Instrument, at: EpochMs): InstrumentCheck | undefined =>
  checks.findLast((check) => check.at <= at);

/** ISO: the last day of the check that stood then. */
export const dueBy = ({ due }: Instrument, at: EpochMs): string | undefined =>
  due.findLast(({ from }) => from <= at)?.until;

/** The check that speaks against what was read at that time, the one before it or the next. */
export function failedCheckOf(instrument: Instrument, at: EpochMs): InstrumentFailed | undefined {
  const next = instrument.checks.find((check) => check.at > at);
  const failed = [lastCheckBy(instrument, at), next].find((check) => check?.result === 'failed');
  if (failed === undefined) return undefined;
  const goodAt = instrument.checks.findLast(({ at, result }) => result === 'ok' && at < failed.at)?.at;
  const { name, kind } = instrument;
  return { code: 'instrument-failed', instrument: name, kind, failedAt: failed.at, goodAt };
}

/** `undefined` where nothing is told of how it stands. */
export function overdueAt(
  instrument: Instrument,
  at: EpochMs,
  zone: string,
): Extract<InstrumentObjection, { code: 'instrument-overdue' }> | undefined {
  const until = dueBy(instrument, at);
  if (until === undefined || localDay(zone, at) <= until) return undefined;
  return { code: 'instrument-overdue', instrument: instrument.name, until };
}
