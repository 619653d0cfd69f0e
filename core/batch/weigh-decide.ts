// What follows from a weighing: which cans it came from, whether the scale spoke in another unit, and its event.

import { splitMass } from '../calc/mixing.ts';
import { lacksDigit, unitDoubts } from '../calc/other-unit.ts';
import { type Can, canAsOf, leftGrams } from '../can/can.ts';
import type { FromCan } from '../can/can-events.ts';
import type { PourCase } from '../can/can-rules.ts';
import { openUntil } from '../can/can-stock.ts';
import { lidOffBefore } from '../can/lid-off.ts';
import type { CommandOf } from '../commands.ts';
import { type Component, components } from '../components.ts';
import { localDay } from '../crew/local-day.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { EventBody, NewEvent, SaidWith } from '../history.ts';
import { batchStream, type CanNumber, canStream } from '../ids.ts';
import { known } from '../known.ts';
import { recalledAt } from '../lot-recalls.ts';
import type { Unclear } from '../objections.ts';
import { mixRatio } from '../products/sheet.ts';
import { judge } from '../rules.ts';
import { airLog, liveCans, type Shop } from '../shop.ts';
import { lackingStep } from '../steps/step-rules.ts';
import { type EpochMs, type Grams, grams } from '../units.ts';
import type { Handling } from '../verbs/said.ts';
import { type Batch, batchAsOf } from './batch.ts';
import { findBatch } from './batch-decide.ts';
import { cansFitting } from './unnamed-cans.ts';
import { addRules, weighRules } from './weigh-rules.ts';

type Weighed = Partial<Readonly<Record<Component, Grams>>>;

export function decideWeigh(shop: Shop, said: Said<CommandOf<'weigh'>>): Decision {
  const { partAGrams, partBGrams, batch: named, cans = [], handling } = said.command;
  const weighed = known({ 'part-a': partAGrams, 'part-b': partBGrams });
  const wanted = componentsOf(weighed);
  const takesIt = ({ inVessel }: Batch) => wanted.some((component) => inVessel[component] === undefined);
  const batch = findBatch(shop, named, takesIt, said.at);
  if (isFailed(batch)) return unclear(batch.failed);
  const doubt = said.stance.is === 'asked' ? unitDoubt(batch, weighed) : undefined;
  if (doubt !== undefined) return doubt;
  const from = fromWhichCans(shop, batch, weighed, cans);
  if (isFailed(from)) return unclear(from.failed);
  const air = airLog(shop, batch.place);
  const pours = poursOf(shop, batch, from, said.at, known({ handling }));
  const lacking = lackingStep(shop.crew.stepAnswers, batch, 'weigh', said.at);
  const found = { batch: batchAsOf(batch, said.at), air, at: said.at, lacking };
  const situation = { ...found, components: wanted, pours };
  return judge(shop, said, weighRules, [situation], (saidWith) => [
    ...pours.flatMap(({ can, at }) => lidOffBefore(can, handling, at, saidWith)),
    pouring(batch, said.at, bodyOf(weighed, from), from, saidWith),
  ]);
}

export function decideAdd(shop: Shop, said: Said<CommandOf<'add'>>): Decision {
  const { component, grams: more, batch: named, cans = [], handling } = said.command;
  const takesMore = ({ weighing, filteredAt }: Batch) => weighing !== undefined && filteredAt === undefined;
  const batch = findBatch(shop, named, takesMore);
  if (isFailed(batch)) return unclear(batch.failed);
  const from = fromWhichCans(shop, batch, { [component]: more }, cans);
  if (isFailed(from)) return unclear(from.failed);
  // What is added is small: its can is asked first, where more than one may be meant.
  const fitting = cansFitting(shop, batch, component);
  if (from.length === 0 && fitting.length > 1) {
    return unclear({ code: 'which-can', component, live: fitting.map(({ number }) => number) });
  }
  const pours = poursOf(shop, batch, from, said.at, known({ handling }));
  const situation = {
    ...{ batch: batchAsOf(batch, said.at), air: airLog(shop, batch.place), at: said.at, lacking: undefined },
    ...{ components: [component], component, grams: more, pours },
  };
  const body: EventBody = { type: 'PartAdded', component, grams: more, ...fromCans(from) };
  return judge(shop, said, addRules, [situation], (saidWith) => [
    ...pours.flatMap(({ can, at }) => lidOffBefore(can, handling, at, saidWith)),
    pouring(batch, said.at, body, from, saidWith),
  ]);
}

function componentsOf(weighed: Weighed): readonly Component[] {
  return components.filter((component) => weighed[component] !== undefined);
}

function bodyOf(weighed: Weighed, from: readonly FromCan[]): EventBody {
  const { 'part-a': partAGrams, 'part-b': partBGrams } = weighed;
  if (partAGrams !== undefined && partBGrams !== undefined) {
    return { type: 'PartsWeighed', partAGrams, partBGrams, ...fromCans(from) };
  }
  return partAGrams !== undefined
    ? { type: 'PartWeighed', component: 'part-a', grams: partAGrams, ...fromCans(from) }
    : { type: 'PartWeighed', component: 'part-b', grams: partBGrams ?? grams(0), ...fromCans(from) };
}

const fromCans = (from: readonly FromCan[]) => (from.length === 0 ? {} : { fromCans: [...from] });

function pouring(batch: Batch, at: EpochMs, body: EventBody, from: readonly FromCan[], saidWith: SaidWith): NewEvent {
  const cans = [...new Set(from.map(({ can }) => canStream(can)))];
  return { streams: [batchStream(batch.number), ...cans], happenedAt: at, body, saidWith };
}

/** Every one of them is there, and of a part that is wanted. */
export function cansNamed(
  shop: Shop,
  named: readonly CanNumber[],
  wanted: readonly Component[],
): readonly Can[] | Failed<Unclear> {
  const cans: Can[] = [];
  for (const number of named) {
    const can = shop.cans.get(number);
    if (can === undefined)
      return failed({ code: 'no-such-can', can: number, live: liveCans(shop).map((each) => each.number) });
    if (!wanted.includes(can.component)) {
      return failed({ code: 'can-not-wanted', can: number, component: can.component });
    }
    cans.push(can);
  }
  return cans;
}

/** The named cans, or for each part the only live one of the batch's sheet. Of several, or of none, whoever weighed is asked afterwards. */
function fromWhichCans(
  shop: Shop,
  batch: Batch,
  weighed: Weighed,
  named: readonly CanNumber[],
): readonly FromCan[] | Failed<Unclear> {
  const wanted = componentsOf(weighed);
  const cans = cansNamed(shop, named, wanted);
  if (isFailed(cans)) return cans;
  return wanted.flatMap((component) => {
    const ofNamed = cans.filter((can) => can.component === component);
    const fitting = cansFitting(shop, batch, component);
    const from = ofNamed.length === 0 && fitting.length === 1 ? fitting : ofNamed;
    return shared(from, component, weighed[component] ?? grams(0));
  });
}

/** Each can gives what it has left, in the order named; the last gives the rest, whatever it has. */
export function shared(cans: readonly Can[], component: Component, wanted: Grams): readonly FromCan[] {
  let open: number = wanted;
  return cans.flatMap((can, i) => {
    const taken = i === cans.length - 1 ? open : Math.min(open, leftGrams(can));
    open -= taken;
    return taken > 0 ? [{ can: can.number, component, grams: grams(taken) }] : [];
  });
}

/** What is taken from which can; `found`: the can as the pour finds it. */
export function poursOf(
  shop: Shop,
  { sheet }: Batch,
  from: readonly FromCan[],
  at: EpochMs,
  { handling, found = (can) => canAsOf(can, at) }: { readonly handling?: Handling; readonly found?: (can: Can) => Can },
): readonly PourCase[] {
  const { zone } = shop.crew;
  const onDate = localDay(zone, at);
  return from.flatMap(({ can: number, grams: taken }) => {
    const now = shop.cans.get(number);
    const can = now && found(now);
    if (can === undefined) return [];
    const last = openUntil(can, zone);
    const recalled = recalledAt(shop.crew.recalls, can, at);
    const of = { sheet: sheet.id, at, onDate, openUntil: last, recalled };
    return [{ can, grams: taken, leftGrams: leftGrams(can), handling, ...of }];
  });
}

/** Readings that miss the plan by just what tells one unit of weight from another. */
function unitDoubt(batch: Batch, weighed: Weighed): Decision | undefined {
  const planned = splitMass(batch.plannedGrams, mixRatio(batch.sheet.ratio));
  if (isFailed(planned)) return undefined;
  const readings = componentsOf(weighed).flatMap((component) => {
    const said = weighed[component] ?? grams(0);
    const plannedGrams = component === 'part-a' ? planned.partAGrams : planned.partBGrams;
    const otherGrams = unitDoubts(said, plannedGrams)[0];
    const isDoubtful = otherGrams !== undefined || lacksDigit(said, plannedGrams);
    return isDoubtful ? [{ component, grams: said, ...known({ otherGrams }), plannedGrams }] : [];
  });
  return readings.length === 0 ? undefined : unclear({ code: 'other-unit', batch: batch.number, readings });
}
