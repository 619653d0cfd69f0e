// What a stretch of time holds, for the day's card as for the page of a week or a month: figures only, from a shop in which
// the streams of that time are loaded.

import { type Can, leftGrams } from '../can/can.ts';
import { type GasAfter, gasAfter } from '../can/can-clocks.ts';
import { type FactFor, isFor } from '../event-readers.ts';
import { type Correction, type Entry, isAct } from '../history.ts';
import { canStream, nameIn, type PartName } from '../ids.ts';
import { inNaturalOrder } from '../natural-order.ts';
import { streamsTouched } from '../seal.ts';
import { entriesIn, type Shop } from '../shop.ts';
import { type EpochMs, type Grams, grams } from '../units.ts';
import { type BatchTouched, batchesTouched } from './batches-touched.ts';
import { type Deviation, deviationsIn } from './deviations.ts';
import { isWithin, type Span } from './span.ts';

type Told = FactFor<'period'>;
type EntryOf<Type extends Told['type']> = Omit<Entry, 'fact'> & { readonly fact: Extract<Told, { type: Type }> };

type OfNeed = 'AlarmRaised' | 'CryHeard' | 'AlarmCalledOff' | 'DrillBegun' | 'AlarmsEnded' | 'NearMissTold';

type OfFirstShift = 'FirstShiftBegun' | 'FirstShiftCountersigned' | 'FirstShiftLeft';

interface Happened {
  readonly coats: readonly EntryOf<'CoatApplied'>[];
  readonly released: readonly PartName[];
  readonly held: readonly EntryOf<'PartHeld'>[];
  readonly disposed: readonly EntryOf<'PartDisposed'>[];
  readonly air: readonly EntryOf<'AirRead'>[];
  readonly alarms: readonly EntryOf<OfNeed>[];
  readonly firstShifts: readonly EntryOf<OfFirstShift>[];
}

export interface Stretch extends Happened {
  readonly entries: readonly Entry[];
  readonly batches: readonly BatchTouched[];
  readonly deviations: readonly Deviation[];
  readonly corrections: readonly { readonly entry: Entry; readonly correction: Correction }[];
  readonly idle: boolean;
}

export function stretchOf(shop: Shop, span: Pick<Span, 'from' | 'to'>, now: EpochMs): Stretch {
  const all = entriesIn(shop);
  const entries = all.filter((entry) => isWithin(span, entry.happenedAt));
  return {
    ...happened(entries),
    entries,
    batches: batchesTouched(shop, entries, now),
    deviations: deviationsIn(shop, ({ happenedAt }) => isWithin(span, happenedAt)),
    corrections: all.flatMap((entry) =>
      entry.corrections.filter(({ at }) => isWithin(span, at)).map((correction) => ({ entry, correction })),
    ),
    idle: !entries.some(isAct),
  };
}

function happened(entries: readonly Entry[]): Happened {
  const coats: EntryOf<'CoatApplied'>[] = [];
  const released = new Set<PartName>();
  const held: EntryOf<'PartHeld'>[] = [];
  const disposed: EntryOf<'PartDisposed'>[] = [];
  const air: EntryOf<'AirRead'>[] = [];
  const alarms: EntryOf<OfNeed>[] = [];
  const firstShifts: EntryOf<OfFirstShift>[] = [];
  const take = (fact: Told, entry: Entry) => {
    switch (fact.type) {
      case 'CoatApplied':
        return coats.push({ ...entry, fact });
      case 'PartReleased':
        return released.add(nameIn(entry.stream));
      case 'PartHeld':
        return held.push({ ...entry, fact });
      case 'PartDisposed':
        return disposed.push({ ...entry, fact });
      case 'AirRead':
        return air.push({ ...entry, fact });
      case 'AlarmRaised':
      case 'CryHeard':
      case 'AlarmCalledOff':
      case 'DrillBegun':
      case 'AlarmsEnded':
      case 'NearMissTold':
        return alarms.push({ ...entry, fact });
      case 'FirstShiftBegun':
      case 'FirstShiftCountersigned':
      case 'FirstShiftLeft':
        return firstShifts.push({ ...entry, fact });
    }
  };
  for (const entry of entries) if (isFor('period', entry.fact)) take(entry.fact, entry);
  return { coats, released: [...released].sort(inNaturalOrder), held, disposed, air, alarms, firstShifts };
}

export interface CanTouched {
  readonly can: Can;
  readonly pouredGrams: Grams;
  readonly leftGrams: Grams;
  /** Over what was left when it was last opened or poured from. */
  readonly gas: GasAfter | undefined;
}

export function cansTouched(shop: Shop, span: Pick<Span, 'from' | 'to'>, by: readonly Entry[]): readonly CanTouched[] {
  const touched = streamsTouched(by);
  const cans = [...shop.cans.values()].filter(({ number }) => touched.has(canStream(number)));
  return cans
    .sort((a, b) => a.number - b.number)
    .map((can) => {
      const pours = can.pours.filter(({ at }) => isWithin(span, at));
      const poured = pours.reduce((sum, pour) => sum + pour.grams, 0);
      const openings = can.lidOff.map(({ from }) => from).filter((at) => isWithin(span, at));
      const last = [...openings, ...pours.map(({ at }) => at)].toSorted((a, b) => a - b).at(-1);
      return { can, pouredGrams: grams(poured), leftGrams: leftGrams(can), gas: gasAfter(can, last) };
    });
}
