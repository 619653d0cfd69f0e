// The answers to weighing in pieces and to bringing a mix back, and what a weighing's card says of cans and repair.

import type { Batch } from '../../core/batch/batch.ts';
import { type PourShown, pourShown, toleranceOf } from '../../core/batch/to-weigh.ts';
import { roomIn } from '../../core/batch/vessel.ts';
import { addRules } from '../../core/batch/weigh-rules.ts';
import { repair } from '../../core/calc/mixing-repair.ts';
import { partAFor, partBFor } from '../../core/calc/mixing-tolerance.ts';
import { endOf } from '../../core/calc/weighable.ts';
import { leftGrams } from '../../core/can/can.ts';
import { blanketTimes } from '../../core/can/can-clocks.ts';
import type { FromCan } from '../../core/can/can-events.ts';
import type { Component } from '../../core/components.ts';
import { scalesAt } from '../../core/crew/scales.ts';
import { isFailed } from '../../core/failed.ts';
import type { Objection } from '../../core/objections.ts';
import { mixRatio } from '../../core/products/sheet.ts';
import { editionOfToday } from '../../core/rule-editions.ts';
import { objectionsTo } from '../../core/rules.ts';
import { airLog, airServingIn } from '../../core/shop.ts';
import type { BatchNow } from '../../core/status.ts';
import { type Grams, grams, litres, minutesAfter } from '../../core/units.ts';
import { written } from '../language/write-quantities.ts';
import { batchTaps } from './batch-cards.ts';
import { type Card, type CardAction, type CardFact, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { readFact, weighFact } from './facts.ts';
import { massBeforeLines } from './pot-mass-lines.ts';

/** One part is in, the other is still to come. */
export function partInCard(telling: Telling, status: BatchNow, component: Component, from: readonly FromCan[]): Card {
  const { batch } = status;
  const { material } = telling.words;
  const inVessel = batch.inVessel[component];
  const pour =
    component === 'part-a' && inVessel
      ? partBFor(mixRatio(batch.sheet.ratio), toleranceOf(batch.sheet), inVessel.grams)
      : undefined;
  const wanted = pour === undefined || isFailed(pour) ? undefined : pour;
  const mixed = wanted === undefined ? batch.plannedGrams : grams((inVessel?.grams ?? 0) + wanted.exactGrams);
  const tooMuch = wanted === undefined ? undefined : beyondMost(batch, mixed);
  const { celsius } = airServingIn(telling.shop, batch.place, telling.now);
  const shown = wanted && pourShown(wanted, scalesAt(telling.shop.crew, telling.now));
  const next = shown === undefined ? material.nextA : material.nextB(shown, telling.figures);
  return makeCard(material.partIn(batch.number, component), tooMuch === undefined ? 'plain' : 'warn', {
    facts: [
      ...(inVessel === undefined ? [] : [readFact(telling, component, inVessel.grams)]),
      ...(wanted && shown ? [weighFact(telling, 'part-b-exact', wanted.exactGrams, endOf(shown, 'exact'))] : []),
    ],
    lines: [
      tooMuch === undefined ? next : telling.words.objection(tooMuch, telling.figures),
      ...(shown === undefined || tooMuch !== undefined ? [] : coarseLines(telling, shown)),
      ...(tooMuch === undefined ? massBeforeLines(telling, batch.sheet, mixed, celsius) : []),
      ...fromCanLines(telling, from),
    ],
    actions: [...blanketTaps(telling, from), ...batchTaps(telling, status)],
    fields: [{ id: 'part-b', label: telling.words.facts['part-b'], unit: 'g' }],
  });
}

/** B is not asked for where the pot would then hold more than the sheet mixes in one. */
function beyondMost({ sheet }: Batch, mixed: Grams): Objection | undefined {
  const mostGrams = sheet.mostMixGrams?.value;
  return mostGrams !== undefined && mixed > mostGrams
    ? { code: 'more-than-sheet-mixes', grams: mixed, mostGrams }
    : undefined;
}

/** Which cans gave, and which of them want gas now. */
export function fromCanLines(telling: Telling, from: readonly FromCan[]): readonly string[] {
  const { material } = telling.words;
  return from.flatMap(({ can: number }) => {
    const can = telling.shop.cans.get(number);
    if (can === undefined) return [];
    const left = leftGrams(can);
    const since = left > 0 ? blanketTimes(can)?.since : undefined;
    return [
      left > 0 ? material.fromCan(number, can.lot, left, telling.figures) : material.canEmpty(number, can.lot),
      ...(since === undefined ? [] : [material.blanketNow(number, since, telling.figures)]),
    ];
  });
}

export function blanketTaps(telling: Telling, from: readonly FromCan[]): readonly CardAction[] {
  return from.flatMap(({ can: number }) => {
    const can = telling.shop.cans.get(number);
    const wanted = can !== undefined && leftGrams(can) > 0 && blanketTimes(can) !== undefined;
    return wanted
      ? [{ ...tap(telling, 'blanket', `blanket ${number}`), id: from.length > 1 ? `blanket-${number}` : 'blanket' }]
      : [];
  });
}

export interface RepairTold {
  readonly facts: readonly CardFact[];
  readonly lines: readonly string[];
  readonly taps: readonly CardAction[];
}

const nothing: RepairTold = { facts: [], lines: [], taps: [] };

/** For a mix out of tolerance: what brings it back while that is possible, or why nothing does. */
export function repairTold(telling: Telling, batch: Batch): RepairTold {
  const { material } = telling.words;
  const { weighing, sheet, vesselLitres } = batch;
  if (weighing === undefined) return nothing;
  const known = litres(vesselLitres === undefined ? unbounded : roomIn(vesselLitres, sheet));
  const way = repair(mixRatio(sheet.ratio), toleranceOf(sheet), weighing, known);
  if (isFailed(way) || way.add === 'nothing') return nothing;
  const { add: component, exact } = way;
  const shown = additionShown(telling, batch, component);
  if (shown === undefined) return nothing;
  // Offered only what the rules of adding take: the pot, the sheet's time and most, the vessel.
  const air = airLog(telling.shop, batch.place);
  const added = {
    ...{ batch, air, at: telling.now, lacking: undefined },
    ...{ components: [component], component, grams: exact.grams, pours: [] },
  };
  const [against] = objectionsTo(addRules, added, editionOfToday);
  if (against !== undefined || sheet.repair === undefined) {
    const why = against === undefined ? [] : [telling.words.objection(against, telling.figures)];
    return { ...nothing, lines: [...why, ...(against?.code === 'vessel-too-small' ? [material.repairNoRoom] : [])] };
  }
  if (
    (vesselLitres === undefined || exact.mixedLitres === undefined) &&
    exact.mixedGrams > batch.plannedGrams * mostOfPlan
  ) {
    return { ...nothing, lines: [material.repairBeyondPlan(exact.mixedGrams, batch.plannedGrams, telling.figures)] };
  }
  const untilAt = minutesAfter(weighing.at, sheet.repair.withinMinutes);
  const needed = exact.mixedLitres;
  const amount = endOf(shown, 'exact');
  const weight = written(amount.grams.grams, 'g');
  return {
    facts: [weighFact(telling, component === 'part-a' ? 'add-part-a' : 'add-part-b', exact.grams, amount)],
    lines: [
      material.repairAdd(amount, component, untilAt, telling.figures),
      ...coarseLines(telling, shown),
      ...(needed === undefined
        ? [material.repairRoomUnknown(exact.mixedGrams, telling.figures)]
        : vesselLitres === undefined
          ? [material.repairVesselUnknown(needed, telling.figures)]
          : []),
    ],
    taps: [tap(telling, 'add', `add ${batch.number} ${component === 'part-a' ? 'a' : 'b'} ${weight}`)],
  };
}

/** Nobody said how big the vessel is. */
const unbounded = 1e6;

/** Where its size or that of the mix is not known, the plan is all that tells: half as much again is the most that is offered. Our own figure, no source. */
const mostOfPlan = 1.5;

/** What is still to go in, from the least to the most that brings it within the tolerance. */
function additionShown(telling: Telling, { sheet, weighing }: Batch, component: Component): PourShown | undefined {
  if (weighing === undefined) return undefined;
  const [ratio, tolerance] = [mixRatio(sheet.ratio), toleranceOf(sheet)];
  const [belongs, isIn] =
    component === 'part-a'
      ? [partAFor(ratio, tolerance, weighing.partBGrams), weighing.partAGrams]
      : [partBFor(ratio, tolerance, weighing.partAGrams), weighing.partBGrams];
  if (isFailed(belongs)) return undefined;
  const more = (mass: Grams): Grams => grams(Math.max(0, mass - isIn));
  const pour = {
    leastGrams: more(belongs.leastGrams),
    exactGrams: more(belongs.exactGrams),
    mostGrams: more(belongs.mostGrams),
  };
  return pourShown(pour, scalesAt(telling.shop.crew, telling.now));
}

function coarseLines({ words, figures }: Telling, { tooCoarse }: PourShown): readonly string[] {
  return tooCoarse === undefined ? [] : [words.material.coarseForIt(tooCoarse, figures)];
}
