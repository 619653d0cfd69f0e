// VOC and solvent used over a time: a batch, a day, a rolling year, from dated entries that the caller hands in.

import { type EpochMs, epochMs, type Grams, grams } from '../units.ts';
import { firstRefusal, notAnAmount } from './amount.ts';
import { outOfRange, type Refusal, type Result } from './refusal.ts';

export interface SolventEntry {
  readonly at: EpochMs;
  readonly voc: Grams;
  /** All organic solvent, exempt ones too. */
  readonly solvent: Grams;
}

export interface SolventUse {
  readonly voc: Grams;
  readonly solvent: Grams;
  readonly entries: number;
}

/** 366 days, so that no year is a day short. */
const yearMs = 366 * 86_400_000;
/** The last moment that a date can hold. */
const latestMs = 8.64e15;

/** Entries from `from` on, up to but without `to`: a day by the caller's midnights, a batch by its own entries. */
export function solventUsed(entries: readonly SolventEntry[], from: EpochMs, to: EpochMs): Result<SolventUse> {
  const refusal =
    outOfRange('time', from, -latestMs, latestMs) ??
    outOfRange('time', to, from, latestMs) ??
    firstRefusal(entries, notAnEntry);
  if (refusal !== undefined) return refusal;
  const within = entries.filter((entry) => entry.at >= from && entry.at < to);
  return {
    voc: grams(within.reduce((total, entry) => total + entry.voc, 0)),
    solvent: grams(within.reduce((total, entry) => total + entry.solvent, 0)),
    entries: within.length,
  };
}

/** The twelve months that end at `to`, without `to` itself. */
export function rollingYear(entries: readonly SolventEntry[], to: EpochMs): Result<SolventUse> {
  return outOfRange('time', to, 0, latestMs) ?? solventUsed(entries, epochMs(to - yearMs), to);
}

const notAnEntry = (entry: SolventEntry): Refusal | undefined =>
  outOfRange('time', entry.at, -latestMs, latestMs) ??
  notAnAmount('voc-mass', entry.voc) ??
  notAnAmount('solvent-mass', entry.solvent);
