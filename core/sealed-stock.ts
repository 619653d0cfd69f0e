// Cans that were received and stand sealed: so many of one size and lot, less those that have been opened since.

import type { Component } from './components.ts';
import type { Entry } from './history.ts';
import type { SheetId } from './ids.ts';
import type { EpochMs, Grams } from './units.ts';

export interface Sealed {
  /** Of the delivery in the record. */
  readonly seq: number;
  readonly component: Component;
  readonly sheet: SheetId;
  readonly lot: string;
  /** In each of them. */
  readonly grams: Grams;
  readonly expires: string | undefined;
  readonly receivedAt: EpochMs;
  readonly received: number;
  /** Never below nothing, whatever was said to be opened. */
  readonly left: number;
}

export function sealedIn(entries: readonly Entry[]): readonly Sealed[] {
  const opened = entries.flatMap(({ fact }) => (fact.type === 'CanOpened' ? [fact.delivery] : []));
  return entries.flatMap(({ fact, seq, happenedAt }): readonly Sealed[] => {
    if (fact.type !== 'StockReceived') return [];
    const { component, sheet, lot, grams, expires, count: received } = fact;
    const left = Math.max(0, received - opened.filter((delivery) => delivery === seq).length);
    return [{ seq, component, sheet, lot, grams, expires, receivedAt: happenedAt, received, left }];
  });
}

/** Whatever their capitals: nobody types them as they are printed. */
export const isOfLot = ({ lot }: Pick<Sealed, 'lot'>, named: string): boolean =>
  lot.toLowerCase() === named.toLowerCase();

/** Of this lot and part, those still sealed: the first to expire first. */
export function sealedOfLot(
  sealed: readonly Sealed[],
  { component, lot, sheet }: { readonly component: Component; readonly lot: string; readonly sheet: SheetId },
): readonly Sealed[] {
  const lastDay = ({ expires = '9999' }: Sealed) => expires;
  return sealed
    .filter((each) => each.left > 0 && each.component === component && each.sheet === sheet && isOfLot(each, lot))
    .toSorted((a, b) => (lastDay(a) < lastDay(b) ? -1 : lastDay(a) > lastDay(b) ? 1 : a.seq - b.seq));
}
