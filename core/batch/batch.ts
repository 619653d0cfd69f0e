// A batch as the fold of its facts: from opening to an empty (or dead) pot.

import type { Run } from '../calc/clock.ts';
import type { Method } from '../commands.ts';
import type { Entry } from '../history.ts';
import type { BatchNumber, PartName, PersonName, PlaceName } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import { foldRings, type RingLog } from '../reminders/ring-log.ts';
import type { EpochMs, Grams } from '../units.ts';

export interface Weighing {
  /** First contact of B with A: a second weighing changes the figures, never this. */
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly partAGrams: Grams;
  readonly partBGrams: Grams;
  readonly corrected: boolean;
}

export interface Batch {
  readonly number: BatchNumber;
  readonly sheet: Sheet;
  readonly plannedGrams: Grams;
  readonly place: PlaceName;
  readonly openedAt: EpochMs;
  /** Whoever opened it is its applicator, and is pinged. */
  readonly openedBy: PersonName;
  readonly weighing: Weighing | undefined;
  /** When the stirrer ran; for an induction, from first contact on. */
  readonly stirring: readonly Run[];
  readonly filteredAt: EpochMs | undefined;
  /** Thick or gelled, as seen first. It ends the pot's life, not the batch: the pot is still to be emptied. */
  readonly thickened: { readonly seen: 'thick' | 'gelled'; readonly at: EpochMs } | undefined;
  readonly emptied: { readonly at: EpochMs; readonly leftGrams: Grams | undefined } | undefined;
  readonly coats: readonly { readonly part: PartName; readonly method: Method; readonly at: EpochMs }[];
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
}

export type BatchPhase =
  | { readonly is: 'to-weigh' }
  | { readonly is: 'blending' | 'paused'; readonly weighing: Weighing }
  | { readonly is: 'filtered'; readonly weighing: Weighing; readonly filteredAt: EpochMs }
  | { readonly is: 'dead'; readonly seen: 'thick' | 'gelled'; readonly at: EpochMs }
  | { readonly is: 'emptied'; readonly at: EpochMs };

/** `undefined` while the history does not open a batch. */
export function foldBatch(entries: readonly Entry[]): Batch | undefined {
  const opening = entries.find((entry) => entry.fact.type === 'BatchOpened');
  if (opening?.fact.type !== 'BatchOpened') return undefined;
  let batch: Batch = {
    number: opening.fact.batch,
    sheet: opening.fact.sheet,
    plannedGrams: opening.fact.plannedGrams,
    place: opening.fact.place,
    openedAt: opening.happenedAt,
    openedBy: opening.by,
    weighing: undefined,
    stirring: [],
    filteredAt: undefined,
    thickened: undefined,
    emptied: undefined,
    coats: [],
    rings: foldRings(entries),
    entries,
  };
  for (const entry of entries) batch = evolveBatch(batch, entry);
  return batch;
}

function evolveBatch(batch: Batch, entry: Entry): Batch {
  const { fact, happenedAt: at } = entry;
  switch (fact.type) {
    case 'PartsWeighed': {
      const { partAGrams, partBGrams } = fact;
      const contactAt = batch.weighing?.at ?? at;
      const weighing = { at: contactAt, by: entry.by, partAGrams, partBGrams, corrected: entry.corrections.length > 0 };
      return { ...batch, weighing, stirring: stirred(batch.stirring, at) };
    }
    case 'StirrerStarted':
      return { ...batch, stirring: stirred(batch.stirring, at) };
    case 'StirrerStopped':
      return { ...batch, stirring: stopped(batch.stirring, at) };
    case 'MixFiltered':
      // Filtered means poured out of the mixing vessel: the stirrer no longer turns in it.
      return { ...batch, filteredAt: batch.filteredAt ?? at, stirring: stopped(batch.stirring, at) };
    case 'MixThickened':
      return { ...batch, thickened: batch.thickened ?? { seen: fact.seen, at }, stirring: stopped(batch.stirring, at) };
    case 'PotEmptied':
      return { ...batch, emptied: { at, leftGrams: fact.leftGrams }, stirring: stopped(batch.stirring, at) };
    case 'CoatApplied':
      return { ...batch, coats: [...batch.coats, { part: fact.part, method: fact.method, at }] };
    default:
      return batch;
  }
}

function stirred(runs: readonly Run[], at: EpochMs): readonly Run[] {
  const last = runs.at(-1);
  return last !== undefined && last.to === undefined ? runs : [...runs, { from: at, to: undefined }];
}

function stopped(runs: readonly Run[], at: EpochMs): readonly Run[] {
  const last = runs.at(-1);
  return last === undefined || last.to !== undefined ? runs : [...runs.slice(0, -1), { from: last.from, to: at }];
}

export function phaseOf(batch: Batch): BatchPhase {
  if (batch.emptied !== undefined) return { is: 'emptied', at: batch.emptied.at };
  if (batch.thickened !== undefined) return { is: 'dead', ...batch.thickened };
  if (batch.weighing === undefined) return { is: 'to-weigh' };
  if (batch.filteredAt !== undefined) {
    return { is: 'filtered', weighing: batch.weighing, filteredAt: batch.filteredAt };
  }
  const running = batch.stirring.at(-1)?.to === undefined;
  return { is: running ? 'blending' : 'paused', weighing: batch.weighing };
}

export function isBatchLive(batch: Batch): boolean {
  return batch.emptied === undefined;
}
