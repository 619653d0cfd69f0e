// A batch as the fold of its facts: from opening to an empty (or dead) pot.

import { asItStoodAt } from '../as-it-stands.ts';
import type { Run } from '../calc/clock.ts';
import { begun, ended } from '../calc/runs.ts';
import type { Component } from '../components.ts';
import { isFor } from '../event-readers.ts';
import { type SeenOfPot, worse } from '../heat-care.ts';
import type { Entry } from '../history.ts';
import type { BatchNumber, PartName, PersonName, PlaceName } from '../ids.ts';
import type { Method } from '../methods.ts';
import type { Sheet } from '../products/sheet.ts';
import { foldRings, type RingLog } from '../ring-log.ts';
import { type EpochMs, type Grams, grams, type Litres } from '../units.ts';

export interface Weighing {
  /** First contact of B with A: a second weighing changes the figures, never this. */
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly partAGrams: Grams;
  readonly partBGrams: Grams;
  readonly corrected: boolean;
}

/** What went into the vessel of one part, and when the first of it did. */
export interface InVessel {
  readonly at: EpochMs;
  readonly grams: Grams;
}

export interface Batch {
  readonly number: BatchNumber;
  readonly sheet: Sheet;
  readonly plannedGrams: Grams;
  readonly place: PlaceName;
  readonly vesselLitres: Litres | undefined;
  readonly openedAt: EpochMs;
  /** Whoever opened it is its applicator, and is pinged. */
  readonly openedBy: PersonName;
  readonly inVessel: Partial<Readonly<Record<Component, InVessel>>>;
  /** Both parts together; `undefined` while one is missing. */
  readonly weighing: Weighing | undefined;
  /** Added later to bring the ratio back: the blend counts anew from the last. */
  readonly additions: readonly { readonly at: EpochMs; readonly component: Component; readonly grams: Grams }[];
  /** When the stirrer ran; for an induction, from first contact on. */
  readonly stirring: readonly Run[];
  /** Of what is in the pot now: an addition makes it unfiltered again. */
  readonly filteredAt: EpochMs | undefined;
  /** Caught from a flow coat, and whether it has been filtered since. */
  readonly caught: readonly { readonly at: EpochMs; readonly grams: Grams; readonly filteredAt: EpochMs | undefined }[];
  /** When the pot stood uncovered. */
  readonly uncovered: readonly Run[];
  /** The worst that was seen of it, and since when. It ends the pot's life, not the batch: the pot is still there. */
  readonly thickened: { readonly seen: SeenOfPot; readonly at: EpochMs } | undefined;
  readonly emptied: { readonly at: EpochMs; readonly leftGrams: Grams | undefined } | undefined;
  readonly coats: readonly { readonly part: PartName; readonly method: Method; readonly at: EpochMs }[];
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
}

export type BatchPhase =
  | { readonly is: 'to-weigh' }
  | { readonly is: 'blending' | 'paused'; readonly weighing: Weighing }
  | { readonly is: 'filtered'; readonly weighing: Weighing; readonly filteredAt: EpochMs }
  | { readonly is: 'dead'; readonly seen: SeenOfPot; readonly at: EpochMs }
  | { readonly is: 'emptied'; readonly at: EpochMs };

/** `undefined` while the history does not open a batch. `before` is the fold of the first of these entries, where known. */
export function foldBatch(entries: readonly Entry[], before?: Batch): Batch | undefined {
  if (before !== undefined) {
    const more = entries.slice(before.entries.length);
    return { ...more.reduce(evolveBatch, before), rings: foldRings(more, before.rings), entries };
  }
  const opening = entries.find((entry) => entry.fact.type === 'BatchOpened');
  if (opening?.fact.type !== 'BatchOpened') return undefined;
  let batch: Batch = {
    number: opening.fact.batch,
    sheet: opening.fact.sheet,
    plannedGrams: opening.fact.plannedGrams,
    place: opening.fact.place,
    vesselLitres: opening.fact.vesselLitres,
    openedAt: opening.happenedAt,
    openedBy: opening.by,
    inVessel: {},
    weighing: undefined,
    additions: [],
    stirring: [],
    filteredAt: undefined,
    caught: [],
    uncovered: [],
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
  if (!isFor('batch', fact)) return batch;
  switch (fact.type) {
    case 'PartsWeighed': {
      const inVessel = {
        'part-a': { at: batch.inVessel['part-a']?.at ?? at, grams: fact.partAGrams },
        'part-b': { at: batch.inVessel['part-b']?.at ?? at, grams: fact.partBGrams },
      };
      return met({ ...batch, inVessel }, entry);
    }
    case 'PartWeighed':
      return met(poured(batch, fact.component, fact.grams, at), entry);
    case 'PartAdded': {
      const { component } = fact;
      const additions = [...batch.additions, { at, component, grams: fact.grams }];
      return met({ ...poured(batch, component, fact.grams, at), additions, filteredAt: undefined }, entry);
    }
    case 'StirrerStarted':
      return { ...batch, stirring: begun(batch.stirring, at) };
    case 'StirrerStopped':
      return { ...batch, stirring: ended(batch.stirring, at) };
    case 'MixFiltered':
      // Filtered means poured out of the mixing vessel: the stirrer no longer turns in it.
      return {
        ...batch,
        filteredAt: batch.filteredAt ?? at,
        caught: batch.caught.map((each) => ({ ...each, filteredAt: each.filteredAt ?? at })),
        stirring: ended(batch.stirring, at),
      };
    case 'MixCaught':
      return { ...batch, caught: [...batch.caught, { at, grams: fact.grams, filteredAt: undefined }] };
    case 'PotUncovered':
      return { ...batch, uncovered: begun(batch.uncovered, at) };
    case 'PotCovered':
      return { ...batch, uncovered: ended(batch.uncovered, at) };
    case 'MixThickened':
      return ruined(batch, fact.seen, at);
    case 'AlarmRaised':
      return fact.what === 'hot' && fact.batch === batch.number ? ruined(batch, fact.seen ?? 'hot', at) : batch;
    case 'PotEmptied':
      return {
        ...batch,
        emptied: { at, leftGrams: fact.leftGrams },
        stirring: ended(batch.stirring, at),
        uncovered: ended(batch.uncovered, at),
      };
    case 'CoatApplied':
      return { ...batch, coats: [...batch.coats, { part: fact.part, method: fact.method, at }] };
  }
}

function ruined(batch: Batch, seen: SeenOfPot, at: EpochMs): Batch {
  const before = batch.thickened;
  const isNews = before === undefined || worse(before.seen, seen) !== before.seen;
  return { ...batch, thickened: isNews ? { seen, at } : before, stirring: ended(batch.stirring, at) };
}

function poured(batch: Batch, component: Component, more: Grams, at: EpochMs): Batch {
  const before = batch.inVessel[component];
  const inVessel = { at: before?.at ?? at, grams: grams((before?.grams ?? 0) + more) };
  return { ...batch, inVessel: { ...batch.inVessel, [component]: inVessel } };
}

/** Once both parts are in, the clocks run and the stirrer with them. First contact stays what it was. */
function met(batch: Batch, { happenedAt, by, corrections }: Entry): Batch {
  const { 'part-a': partA, 'part-b': partB } = batch.inVessel;
  if (partA === undefined || partB === undefined) return batch;
  const weighing = {
    at: batch.weighing?.at ?? happenedAt,
    by,
    partAGrams: partA.grams,
    partBGrams: partB.grams,
    corrected: batch.weighing?.corrected === true || corrections.length > 0,
  };
  return { ...batch, weighing, stirring: begun(batch.stirring, happenedAt) };
}

/** The batch as something that happens at `at` finds it: said late, what came after does not count. */
export function batchAsOf(batch: Batch, at: EpochMs): Batch {
  const stood = asItStoodAt(batch.entries, at);
  return stood.length === batch.entries.length ? batch : (foldBatch(stood) ?? batch);
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
