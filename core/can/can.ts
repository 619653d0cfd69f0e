// A can as the fold of its facts: from its opening to its last gram. The lid is off in runs; the last may be open.

import { asItStoodAt } from '../as-it-stands.ts';
import type { Run } from '../calc/clock.ts';
import { begun, ended, isOn } from '../calc/runs.ts';
import type { Component } from '../components.ts';
import { isFor } from '../event-readers.ts';
import { type HeatSign, worse } from '../heat-care.ts';
import type { Entry } from '../history.ts';
import { type BatchNumber, type CanNumber, numberIn, type PersonName } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import { foldRings, type RingLog } from '../ring-log.ts';
import { holdsIn } from '../rule-editions.ts';
import { type EpochMs, type Grams, grams, type KilogramsPerLitre, type Litres } from '../units.ts';
import type { Handling } from '../verbs/said.ts';
import type { FromCan } from './can-events.ts';

export interface Pour {
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly batch: BatchNumber;
  readonly grams: Grams;
}

/** The stirrer in the can itself: until its lid goes on, or it is poured from. */
export interface Stir {
  readonly at: EpochMs;
  /** In it then. */
  readonly grams: Grams;
  readonly endedAt: EpochMs | undefined;
}

export interface Can {
  readonly number: CanNumber;
  readonly component: Component;
  readonly sheet: Sheet;
  readonly lot: string;
  /** In it when it was opened. */
  readonly openedGrams: Grams;
  /** Brimful. */
  readonly litres: Litres | undefined;
  /** What was in it by volume, where nobody weighed it. */
  readonly sold: { readonly litres: Litres; readonly kilogramsPerLitre: KilogramsPerLitre } | undefined;
  readonly expires: string | undefined;
  readonly handling: Handling | undefined;
  readonly openedAt: EpochMs;
  readonly lidOff: readonly Run[];
  /** With no gas under its lid, until gas goes over it or it is opened again. */
  readonly shutOverAirAt: EpochMs | undefined;
  /** Who had the lid off last, and is pinged. */
  readonly lidBy: PersonName;
  /** The last may still run. */
  readonly stirs: readonly Stir[];
  readonly pours: readonly Pour[];
  /** Looked at by somebody whose word ends a doubt. */
  readonly checkedAt: readonly EpochMs[];
  readonly blanketedAt: EpochMs | undefined;
  /** Some was left in it where it was to be used whole. */
  readonly leftOverAt: EpochMs | undefined;
  /** It heats, smokes or swells: the worst that was cried of it, and since when. Nothing ends that but throwing it away. */
  readonly reacts: { readonly seen: HeatSign; readonly at: EpochMs } | undefined;
  readonly discarded: { readonly at: EpochMs; readonly why: string } | undefined;
  readonly rings: RingLog;
  readonly entries: readonly Entry[];
}

/** `undefined` while the history does not open a can. */
export function foldCan(entries: readonly Entry[]): Can | undefined {
  const opening = entries.find((entry) => entry.fact.type === 'CanOpened');
  if (opening?.fact.type !== 'CanOpened') return undefined;
  const { can: number, component, sheet, lot, litres, expires, handling, kilogramsPerLitre } = opening.fact;
  const isSold = litres !== undefined && kilogramsPerLitre !== undefined;
  let can: Can = {
    number,
    component,
    sheet,
    lot,
    // A can filled to its brim would have no headspace, and too little gas.
    litres: isSold ? undefined : litres,
    sold: isSold ? { litres, kilogramsPerLitre } : undefined,
    expires,
    handling,
    openedGrams: opening.fact.grams,
    openedAt: opening.happenedAt,
    lidOff: [{ from: opening.happenedAt, to: undefined }],
    shutOverAirAt: undefined,
    lidBy: opening.by,
    stirs: [],
    pours: [],
    checkedAt: [],
    blanketedAt: undefined,
    leftOverAt: undefined,
    reacts: undefined,
    discarded: undefined,
    rings: foldRings(entries),
    entries,
  };
  for (const entry of entries) can = evolveCan(can, entry);
  return can;
}

function evolveCan(can: Can, entry: Entry): Can {
  const { fact, happenedAt: at, by } = entry;
  if (!isFor('can', fact)) return can;
  switch (fact.type) {
    case 'LidOff':
      return { ...opened(can, at, by), handling: fact.handling ?? can.handling };
    // Nothing but gas keeps the air from it: its minutes run on.
    case 'LidOn':
      return withLeftOver(
        shutOverAir({ ...can, stirs: unstirred(can, at), handling: fact.handling ?? can.handling }, at),
        entry,
      );
    case 'CanBlanketed':
      // Gas from before its lid came off keeps no air from it.
      if (at < can.openedAt && holdsIn({ since: 6 }, entry.edition)) return can;
      // Gas was at hand, whatever was said before.
      return { ...closed(can, at), blanketedAt: at, handling: 'gas' };
    case 'CanStirred':
      return {
        ...opened(can, at, by),
        stirs: [...unstirred(can, at), { at, grams: leftGrams(can), endedAt: undefined }],
      };
    case 'CanChecked':
      return fact.role === 'crew' && fact.nobodyLeads !== true ? can : { ...can, checkedAt: [...can.checkedAt, at] };
    case 'CanDiscarded':
      return { ...closed(can, at), discarded: can.discarded ?? { at, why: fact.why } };
    case 'AlarmRaised':
      return fact.what === 'hot' && fact.can === can.number ? reacting(can, fact.seen ?? 'hot', at) : can;
    case 'PartsWeighed':
    case 'PartWeighed':
    case 'PartAdded':
    case 'CanNamed':
      return poured(can, entry, fact.fromCans ?? []);
  }
}

function poured(can: Can, entry: Entry, fromCans: readonly FromCan[]): Can {
  const taken = fromCans.filter((from) => from.can === can.number).reduce((sum, from) => sum + from.grams, 0);
  if (taken === 0 || !entry.stream.startsWith('batch/')) return can;
  const { happenedAt: at, by } = entry;
  const batch = numberIn(entry.stream);
  const after = {
    ...opened(can, at, by),
    stirs: unstirred(can, at),
    pours: [...can.pours, { at, by, batch, grams: grams(taken) }],
  };
  // Nothing is left to be kept from the air.
  return leftGrams(after) > 0 ? withLeftOver(after, entry) : closed(after, at);
}

/** Before edition 4 what was left of a can to be used whole was nobody's question. */
function withLeftOver(can: Can, { happenedAt, edition }: Entry): Can {
  const isLeft = edition >= 4 && can.handling === 'whole' && isGasSensitive(can) && isLeftOver(leftGrams(can));
  return isLeft ? { ...can, leftOverAt: happenedAt } : can;
}

function reacting(can: Can, seen: HeatSign, at: EpochMs): Can {
  const before = can.reacts;
  return { ...can, reacts: before !== undefined && worse(before.seen, seen) === before.seen ? before : { seen, at } };
}

function opened(can: Can, at: EpochMs, by: PersonName): Can {
  const off = { ...can, shutOverAirAt: undefined };
  return isOn(off.lidOff) ? off : { ...off, lidOff: begun(off.lidOff, at), lidBy: by };
}

const shutOverAir = (can: Can, at: EpochMs): Can => (isOn(can.lidOff) ? { ...can, shutOverAirAt: at } : can);

function closed(can: Can, at: EpochMs): Can {
  return { ...can, lidOff: ended(can.lidOff, at), shutOverAirAt: undefined, stirs: unstirred(can, at) };
}

/** The stirs with the last one ended. */
function unstirred({ stirs }: Can, at: EpochMs): readonly Stir[] {
  return stirs.map((stir) => (stir.endedAt === undefined ? { ...stir, endedAt: at } : stir));
}

/** The can as something that happens at `at` finds it: said late, what came after does not count. */
export function canAsOf(can: Can, at: EpochMs): Can {
  const stood = asItStoodAt(can.entries, at);
  return stood.length === can.entries.length ? can : (foldCan(stood) ?? can);
}

/** Whether its lid is on, with gas under it or without. */
export const isShut = ({ lidOff, shutOverAirAt }: Can): boolean => !isOn(lidOff) || shutOverAirAt !== undefined;

/** What is left by the record; never below nothing, whatever was said to be poured. */
export function leftGrams(can: Can): Grams {
  return grams(Math.max(0, can.openedGrams - can.pours.reduce((sum, pour) => sum + pour.grams, 0)));
}

/** Below half a gram a shop scale shows nothing. */
export const weighable = 0.5;

export const isLeftOver = (left: Grams): boolean => left > weighable;

export function isCanLive(can: Can): boolean {
  return can.discarded === undefined && leftGrams(can) > 0;
}

export function isGasSensitive(can: Pick<Can, 'sheet' | 'component'>): boolean {
  return can.sheet.blanket?.components.includes(can.component) ?? false;
}
