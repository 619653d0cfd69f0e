// What happened to a part, came of a batch, or became of a lot: read from streams, which each question names as far as
// what is loaded already shows them. Whoever loads asks again until nothing new is named.

import type { Batch } from '../batch/batch.ts';
import { unnamedParts } from '../batch/unnamed-cans.ts';
import { dewPointOf } from '../calc/air.ts';
import { type Can, leftGrams } from '../can/can.ts';
import { type GasAfter, gasAfter, preStirTimes } from '../can/can-clocks.ts';
import type { FromCan } from '../can/can-events.ts';
import { pouredFrom, pouredInto } from '../can/poured-from.ts';
import type { Component } from '../components.ts';
import { type Entry, isAct } from '../history.ts';
import {
  type BatchNumber,
  batchStream,
  canStream,
  nounOf,
  numberIn,
  type PartName,
  partStream,
  type StreamId,
} from '../ids.ts';
import { inNaturalOrder } from '../natural-order.ts';
import { type Coat, type Part, type PartPhase, phaseOfPart } from '../part/part.ts';
import type { Edition } from '../rule-editions.ts';
import { isOfLot } from '../sealed-stock.ts';
import { airServingIn, type Shop } from '../shop.ts';
import { type Celsius, type EpochMs, type Grams, grams, type Minutes, type Percent } from '../units.ts';
import { type Applied, whoApplied } from '../who-applied.ts';
import { type Deviation, deviationsIn, editionsOf } from './deviations.ts';

/** So much of one can; the lot says where it came from. */
export interface LotTaken {
  readonly component: FromCan['component'];
  readonly can: Can;
  readonly grams: Grams;
  /** In its can before the first pour for this batch; `undefined` where nobody stirred it, or the sheet asks for none. */
  readonly stirred: { readonly givenMinutes: Minutes; readonly wantedMinutes: Minutes } | undefined;
  /** Over what was left after the last pour for this batch. */
  readonly gas: GasAfter | undefined;
}

/** The air that served when something was done; a figure is `undefined` where none was read in time. */
export interface AirThen {
  readonly celsius: Celsius | undefined;
  readonly relativeHumidityPercent: Percent | undefined;
  readonly dewPointCelsius: Celsius | undefined;
  readonly surfaceCelsius: Celsius | undefined;
}

export interface CoatTrace {
  readonly coat: Coat;
  readonly applied: Applied;
  readonly batch: Batch | undefined;
  /** Empty where nobody told of a can: lots are not known then. */
  readonly lots: readonly LotTaken[];
  readonly unnamed: readonly Component[];
  readonly air: AirThen;
}

export interface PartTrace {
  readonly part: Part;
  readonly phase: PartPhase;
  readonly coats: readonly CoatTrace[];
  /** Everything people did to it and to its batches until its last coat, in the order in which it happened. */
  readonly steps: readonly Entry[];
  readonly deviations: readonly Deviation[];
  /** Of the rules that judge the steps. */
  readonly editions: readonly Edition[];
}

export interface BatchTrace {
  readonly batch: Batch;
  readonly lots: readonly LotTaken[];
  /** The parts of which nobody has said from which can they came, where the crew keeps track of it. */
  readonly unnamed: readonly Component[];
  readonly parts: readonly { readonly name: PartName; readonly phase: PartPhase | undefined }[];
  readonly steps: readonly Entry[];
  readonly deviations: readonly Deviation[];
  /** Of the rules that judge the steps. */
  readonly editions: readonly Edition[];
}

export interface LotTrace {
  readonly lot: string;
  readonly cans: readonly { readonly can: Can; readonly leftGrams: Grams }[];
  readonly batches: readonly {
    readonly batch: BatchNumber;
    readonly grams: Grams;
    readonly parts: readonly PartName[];
  }[];
  readonly parts: readonly { readonly name: PartName; readonly phase: PartPhase | undefined }[];
}

export function streamsOfPart(shop: Shop, name: PartName): readonly StreamId[] {
  const batches = batchesOf(shop.parts.get(name));
  const sessions = sessionsOf(shop.parts.get(name));
  return [
    partStream(name),
    ...batches.map(batchStream),
    ...batches.flatMap((number) => cansOf(shop, number)),
    ...sessions,
  ];
}

export function streamsOfBatch(shop: Shop, number: BatchNumber): readonly StreamId[] {
  const parts = shop.batches.get(number)?.coats.map(({ part }) => partStream(part)) ?? [];
  const sessions = sessionsOf(shop.batches.get(number));
  return [...new Set([batchStream(number), ...cansOf(shop, number), ...parts, ...sessions])];
}

/** In which it was sprayed: who had read the brief, and what there was of extraction and supplied air. */
function sessionsOf(sprayed: { readonly entries: readonly Entry[] } | undefined): readonly StreamId[] {
  const coats = sprayed?.entries.filter(({ fact }) => fact.type === 'CoatApplied') ?? [];
  const streams = coats.flatMap(({ alsoUnder }) => alsoUnder);
  return [...new Set(streams)].filter((stream) => nounOf(stream) === 'session');
}

const ofSessions = (shop: Shop, sprayed: Part | Batch): readonly Entry[] =>
  sessionsOf(sprayed).flatMap((stream) => shop.sessions.get(numberIn(stream))?.entries ?? []);

/** `cans`: the streams that were booked in under the lot. */
export function streamsOfLot(shop: Shop, cans: readonly StreamId[]): readonly StreamId[] {
  const numbers = [...shop.cans.values()].filter((can) => cans.includes(canStream(can.number))).flatMap(batchesFrom);
  const parts = numbers.flatMap((number) => shop.batches.get(number)?.coats.map(({ part }) => partStream(part)) ?? []);
  return [...new Set([...cans, ...numbers.map(batchStream), ...parts])];
}

/** Those before it was reworked first. */
const allCoats = (part: Part | undefined): readonly Coat[] =>
  part === undefined ? [] : [...part.earlier, ...part.coats];
const batchesOf = (part: Part | undefined): readonly BatchNumber[] => [
  ...new Set(allCoats(part).map(({ batch }) => batch)),
];
const batchesFrom = (can: Can): readonly BatchNumber[] => [...new Set(can.pours.map(({ batch }) => batch))];

function cansOf(shop: Shop, number: BatchNumber): readonly StreamId[] {
  const batch = shop.batches.get(number);
  return batch === undefined ? [] : pouredFrom(batch).map(canStream);
}

/** What a batch took from each can, once a can. */
export function lotsOf(shop: Shop, batch: Batch | undefined): readonly LotTaken[] {
  if (batch === undefined) return [];
  const taken = pouredInto(batch);
  return [...new Set(taken.map(({ can }) => can))].flatMap((number) => {
    const can = shop.cans.get(number);
    const mass = taken.filter((from) => from.can === number).reduce((sum, from) => sum + from.grams, 0);
    return can === undefined
      ? []
      : [
          {
            component: can.component,
            can,
            grams: grams(mass),
            stirred: stirredFor(can, batch),
            gas: gasAfter(can, can.pours.findLast((pour) => pour.batch === batch.number)?.at),
          },
        ];
  });
}

function stirredFor(can: Can, { number }: Batch): LotTaken['stirred'] {
  const pour = can.pours.find(({ batch }) => batch === number);
  const stir = pour && preStirTimes(can, pour.at);
  const isOver = pour !== undefined && stir?.servesUntil !== undefined && stir.servesUntil < pour.at;
  if (stir?.givenMinutes === undefined || isOver) return undefined;
  return { givenMinutes: stir.givenMinutes, wantedMinutes: stir.wantedMinutes };
}

/** `undefined` where nothing is known of the part. */
export function tracePart(shop: Shop, name: PartName): PartTrace | undefined {
  const part = shop.parts.get(name);
  if (part === undefined) return undefined;
  const numbers = batchesOf(part);
  const lastCoat = allCoats(part).at(-1)?.at;
  const before = (entry: Entry) => lastCoat !== undefined && entry.happenedAt <= lastCoat;
  const ofBatches = numbers.flatMap((number) => shop.batches.get(number)?.entries.filter(before) ?? []);
  // A coat of another part from the same batch is that part's story.
  const others = (entry: Entry) => entry.fact.type === 'CoatApplied' && entry.fact.part !== name;
  const steps = inOrder([...part.entries, ...ofBatches, ...ofSessions(shop, part).filter(before)]).filter(
    (entry) => isAct(entry) && !others(entry),
  );
  const seqs = new Set(steps.map(({ seq }) => seq));
  return {
    part,
    phase: phaseOfPart(part),
    coats: allCoats(part).map((coat) => {
      const batch = shop.batches.get(coat.batch);
      const unnamed = batch === undefined ? [] : unnamedParts(shop, batch);
      return {
        coat,
        applied: whoApplied(shop, coat.entry),
        batch,
        lots: lotsOf(shop, batch),
        unnamed,
        air: airThen(shop, batch?.place, coat.at),
      };
    }),
    steps,
    deviations: deviationsIn(shop, ({ seq }) => seqs.has(seq)),
    editions: editionsOf(shop, steps),
  };
}

export function traceBatch(shop: Shop, number: BatchNumber): BatchTrace | undefined {
  const batch = shop.batches.get(number);
  if (batch === undefined) return undefined;
  // A coat of another batch in the same session is that one's story.
  const others = ({ fact }: Entry) => fact.type === 'CoatApplied' && fact.batch !== number;
  const steps = inOrder([...batch.entries, ...ofSessions(shop, batch)]).filter(
    (entry) => isAct(entry) && !others(entry),
  );
  const seqs = new Set(steps.map(({ seq }) => seq));
  return {
    batch,
    lots: lotsOf(shop, batch),
    unnamed: unnamedParts(shop, batch),
    parts: partsNamed(
      shop,
      batch.coats.map(({ part }) => part),
    ),
    steps,
    deviations: deviationsIn(shop, ({ seq }) => seqs.has(seq)),
    editions: editionsOf(shop, steps),
  };
}

export function traceLot(shop: Shop, lot: string, streams: readonly StreamId[]): LotTrace | undefined {
  const cans = [...shop.cans.values()].filter(
    (can) => streams.includes(canStream(can.number)) && lotsEver(can).some((each) => isOfLot({ lot: each }, lot)),
  );
  if (cans.length === 0) return undefined;
  const numbers = [...new Set(cans.flatMap(batchesFrom))].sort((a, b) => a - b);
  const batches = numbers.map((number) => {
    const mass = cans.flatMap(({ pours }) => pours).filter(({ batch }) => batch === number);
    const parts = [...new Set(shop.batches.get(number)?.coats.map(({ part }) => part) ?? [])].sort(inNaturalOrder);
    return { batch: number, grams: grams(mass.reduce((sum, pour) => sum + pour.grams, 0)), parts };
  });
  return {
    lot,
    cans: cans.map((can) => ({ can, leftGrams: leftGrams(can) })),
    batches,
    parts: partsNamed(
      shop,
      batches.flatMap(({ parts }) => parts),
    ),
  };
}

/** A lot that was corrected is found under the one that was told first as well. */
const lotsEver = ({ lot, entries }: Can): readonly string[] => [
  lot,
  ...entries.flatMap(({ corrections }) =>
    corrections.flatMap(({ wasFact }) => (wasFact.type === 'CanOpened' ? [wasFact.lot] : [])),
  ),
];

function partsNamed(shop: Shop, names: readonly PartName[]): BatchTrace['parts'] {
  return [...new Set(names)].sort(inNaturalOrder).map((name) => {
    const part = shop.parts.get(name);
    return { name, phase: part && phaseOfPart(part) };
  });
}

function inOrder(entries: readonly Entry[]): readonly Entry[] {
  const bySeq = new Map(entries.map((entry) => [entry.seq, entry]));
  return [...bySeq.values()].sort((a, b) => a.happenedAt - b.happenedAt || a.seq - b.seq);
}

export function airThen(shop: Shop, place: string | undefined, at: EpochMs): AirThen {
  const { celsius, relativeHumidityPercent, surfaceCelsius } = airServingIn(shop, place, at);
  const dewPointCelsius = dewPointOf(celsius, relativeHumidityPercent);
  return { celsius, relativeHumidityPercent, dewPointCelsius, surfaceCelsius };
}
