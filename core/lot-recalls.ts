// Lots that their maker, or the shop, has called back: from when, why, and until a lead says that it is over.

import type { Component } from './components.ts';
import type { Entry } from './history.ts';
import type { PersonName } from './ids.ts';
import { isOfLot } from './sealed-stock.ts';
import type { EpochMs } from './units.ts';

export interface Recall {
  readonly lot: string;
  /** `undefined`: both parts, whichever bears that lot. */
  readonly component: Component | undefined;
  readonly why: string;
  readonly by: PersonName;
  readonly at: EpochMs;
  readonly endedAt: EpochMs | undefined;
}

/** What is of a lot: a can, a delivery. */
export interface OfLot {
  readonly lot: string;
  readonly component: Component;
}

export function recallsIn(entries: readonly Entry[]): readonly Recall[] {
  let recalls: readonly Recall[] = [];
  for (const { fact, by, happenedAt: at } of entries) {
    if (fact.type === 'LotRecalled') {
      const { lot, component, why } = fact;
      recalls = [...recalls, { lot, component, why, by, at, endedAt: undefined }];
    }
    if (fact.type !== 'RecallEnded') continue;
    const { lot, component } = fact;
    recalls = recalls.map((recall) => (covers(recall, { lot, component }) ? { ...recall, endedAt: at } : recall));
  }
  return recalls;
}

/** Of both parts where none is named. */
const covers = (
  recall: Recall,
  { lot, component }: { readonly lot: string; readonly component?: Component | undefined },
) =>
  recall.endedAt === undefined &&
  isOfLot(recall, lot) &&
  (component === undefined || recall.component === undefined || recall.component === component);

/** What was called back by then, and was not yet over. */
export const recalledAt = (recalls: readonly Recall[], { lot, component }: OfLot, at: EpochMs): Recall | undefined =>
  recalls.find(
    (recall) =>
      isOfLot(recall, lot) &&
      (recall.component ?? component) === component &&
      recall.at <= at &&
      (recall.endedAt === undefined || at < recall.endedAt),
  );
