// A batch's answers: opened, weighed, stirring, filtered, ended.

import { type Batch, phaseOf } from '../../core/batch/batch.ts';
import { blendClock, blendDueAt, blendWantedMinutes, potLifeTimes } from '../../core/batch/batch-clocks.ts';
import { isRatioWithin } from '../../core/batch/batch-rules.ts';
import { ratioError, splitMass } from '../../core/calc/mixing.ts';
import { potLifeFactor } from '../../core/calc/pot-mass.ts';
import { isRefused } from '../../core/calc/refusal.ts';
import { methodRows } from '../../core/methods.ts';
import { airServing } from '../../core/place/place.ts';
import { mixRatio } from '../../core/products/sheet.ts';
import { standing } from '../../core/settled.ts';
import { airLog } from '../../core/shop.ts';
import { type Grams, grams, minutes } from '../../core/units.ts';
import { airFacts } from './air-facts.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import {
  massFact,
  minutesGivenFact,
  minutesWantedFact,
  notAfterFact,
  notBeforeFact,
  ratioErrorFact,
  ratioToleranceFact,
  type Telling,
  tap,
} from './card-context.ts';
import { undoTap } from './undo-tap.ts';

const openingOf = ({ entries }: Batch) => entries.filter(({ fact }) => fact.type === 'BatchOpened');

/** The taps that this batch allows next. */
export function batchTaps(t: Telling, batch: Batch): readonly CardAction[] {
  const n = batch.number;
  const phase = phaseOf(batch);
  if (phase.is === 'dead' && phase.seen === 'gelled') return [tap(t, 'hot', `hot ${n}`), tap(t, 'empty', `empty ${n}`)];
  if (isPotOver(t, batch)) return [tap(t, 'empty', `empty ${n}`)];
  switch (phase.is) {
    case 'to-weigh':
      return [...weighTaps(t, batch), ...openingOf(batch).map(({ seq }) => undoTap(t, seq))];
    case 'blending':
    case 'paused':
      return [...blendTaps(t, batch), ...useTaps(t, batch)];
    case 'filtered':
      return useTaps(t, batch);
    case 'dead':
      return [tap(t, 'empty', `empty ${n}`)];
    case 'emptied':
      return [];
  }
}

/** Its life is over by the clock and nobody has emptied it: nothing else is to be done with it. */
export function isPotOver(t: Telling, batch: Batch): boolean {
  const end = potLifeTimes(batch, airLog(t.shop, batch.place))?.endAt;
  return end !== undefined && end <= t.now && batch.emptied === undefined;
}

/** Where the pot dies before it is stirred enough, as things stand. */
export function pastPotLines(t: Telling, batch: Batch): readonly string[] {
  const air = airLog(t.shop, batch.place);
  const done = blendDueAt(batch, air);
  const pot = potLifeTimes(batch, air);
  if (done === undefined || pot === undefined || batch.filteredAt !== undefined || done <= pot.marginAt) return [];
  return [t.words.replies.stirPastPot(t.f.timeDown(pot.marginAt))];
}

/** Both parts, or the one that is still to come. */
function weighTaps(t: Telling, { number, inVessel }: Batch): readonly CardAction[] {
  if (inVessel['part-a'] !== undefined) return [tap(t, 'weigh-b', `weigh ${number} b {part-b}g`)];
  if (inVessel['part-b'] !== undefined) return [tap(t, 'weigh-a', `weigh ${number} a {part-a}g`)];
  return [tap(t, 'weigh', `weigh ${number} {part-a}g {part-b}g`)];
}

/** The stirrer, and the step that the blend leads to once it is done. */
function blendTaps(t: Telling, batch: Batch): readonly CardAction[] {
  const n = batch.number;
  const clock = blendClock(batch, airLog(t.shop, batch.place), t.now);
  const done = clock.doneAt !== undefined && clock.doneAt <= t.now;
  const filter =
    done && batch.sheet.filter !== undefined && ratioWithin(batch) ? [tap(t, 'filter', `filter ${n}`)] : [];
  if (batch.sheet.blend.way === 'induction') return filter;
  return [...filter, phaseOf(batch).is === 'blending' ? tap(t, 'stop', `stop ${n}`) : tap(t, 'stir', `stir ${n}`)];
}

/** A pot that can be applied from, once the sheet's filter and blend are behind it. */
function useTaps(t: Telling, batch: Batch): readonly CardAction[] {
  const n = batch.number;
  const ready = batch.filteredAt !== undefined || batch.sheet.filter === undefined;
  const coat =
    ready && !isBlending(t, batch) && ratioWithin(batch) ? [tap(t, 'coat', `coat {part} ${n} {method}`)] : [];
  return [
    ...coat,
    ...lidAndCatchTaps(t, batch),
    tap(t, 'thick', `thick ${n}`),
    ...(ready ? [tap(t, 'empty', `empty ${n}`)] : []),
  ];
}

/** What a flow coat drains is caught and filtered; an open pot is covered. */
function lidAndCatchTaps(t: Telling, batch: Batch): readonly CardAction[] {
  const n = batch.number;
  const coat = batch.coats.at(-1);
  const drains = coat !== undefined && methodRows[coat.method].drains;
  const toFilter = batch.caught.some(({ filteredAt }) => filteredAt === undefined);
  const open = batch.uncovered.length > 0 && batch.uncovered.at(-1)?.to === undefined;
  return [
    ...(toFilter && ratioWithin(batch)
      ? [tap(t, 'filter', `filter ${n}`)]
      : drains
        ? [tap(t, 'catch', `catch ${n} {caught}g`)]
        : []),
    ...(open ? [tap(t, 'cover', `cover ${n}`)] : []),
  ];
}

/** Nobody is offered a coat that would come before the stirring or the induction is over. */
function isBlending(t: Telling, batch: Batch): boolean {
  if (batch.sheet.blend.way === 'stir') return phaseOf(batch).is === 'blending';
  const { doneAt } = blendClock(batch, airLog(t.shop, batch.place), t.now);
  return doneAt === undefined || doneAt > t.now;
}

export function openedCard(t: Telling, batch: Batch): Card {
  const { replies } = t.words;
  const split = splitMass(batch.plannedGrams, mixRatio(batch.sheet.ratio));
  const wanted = blendWantedMinutes(batch, airLog(t.shop, batch.place), t.now);
  const masses = isRefused(split)
    ? []
    : [massFact(t, 'part-a', split.partAGrams), massFact(t, 'part-b', split.partBGrams)];
  return makeCard(replies.opened(batch.number, batch.sheet.name), 'plain', {
    facts: [...masses, ...blendFacts(t, batch), ...airFacts(t, batch.place)],
    lines: [
      batch.sheet.blend.way === 'stir' ? replies.weighThese : replies.inducedThese,
      ...(wanted === undefined ? withoutFigureLines(t, batch) : []),
      ...humidityLines(t, batch),
      ...(batch.sheet.invented ? [replies.inventedSheet] : []),
    ],
    actions: batchTaps(t, batch),
    fields: [
      { id: 'part-a', label: t.words.facts['part-a'], unit: 'g' },
      { id: 'part-b', label: t.words.facts['part-b'], unit: 'g' },
    ],
  });
}

function withoutFigureLines(t: Telling, batch: Batch): readonly string[] {
  const { withoutFigure } = blendClock(batch, airLog(t.shop, batch.place), t.now);
  if (withoutFigure === undefined) return [];
  const { replies } = t.words;
  return [withoutFigure === 'unknown' ? replies.noAirKnown : `${replies.noFigure} ${t.words.noFigure[withoutFigure]}.`];
}

/** As a share of the sheet's ratio; `undefined` before weighing. */
function ratioErrorOf(batch: Batch): number | undefined {
  if (batch.weighing === undefined) return undefined;
  const error = ratioError(mixRatio(batch.sheet.ratio), batch.weighing);
  return isRefused(error) ? undefined : error;
}

/** True before weighing: nothing is off yet. */
export function ratioWithin(batch: Batch): boolean {
  if (batch.weighing === undefined) return true;
  const error = ratioErrorOf(batch);
  return error !== undefined && isRatioWithin(error, batch.sheet.ratio);
}

/** The clocks do not live on it, but the sheet limits it. */
function humidityLines(t: Telling, batch: Batch): readonly string[] {
  const { relativeHumidityPercent } = airServing(
    t.shop.places.get(batch.place),
    t.now,
    standing(t.shop.crew, 'air-limit').minutes,
  );
  return relativeHumidityPercent === undefined ? [t.words.replies.humidityNotRead] : [];
}

/** What was weighed and how far it is off; nothing before weighing. */
export function ratioFacts(t: Telling, batch: Batch): readonly CardFact[] {
  const { weighing } = batch;
  if (weighing === undefined) return [];
  const error = ratioErrorOf(batch);
  return [
    massFact(t, 'part-a', weighing.partAGrams),
    massFact(t, 'part-b', weighing.partBGrams),
    ...(error === undefined ? [] : [ratioErrorFact(t, error)]),
    ratioToleranceFact(t, batch.sheet.ratio.tolerancePercent),
  ];
}

/** What stirring (or the induction) asks, has been given, and when it is done. */
export function blendFacts(t: Telling, batch: Batch): readonly CardFact[] {
  const air = airLog(t.shop, batch.place);
  const wanted = blendWantedMinutes(batch, air, t.now);
  const given = batch.weighing === undefined ? 0 : blendClock(batch, air, t.now).dose.ranMinutes;
  const due = blendDueAt(batch, air);
  const labels = t.words.blend[batch.sheet.blend.way];
  return [
    ...(wanted === undefined ? [] : [{ ...minutesWantedFact(t, 'stir-wanted', wanted), label: labels.wanted }]),
    ...(given > 0 ? [{ ...minutesGivenFact(t, 'stir-given', minutes(given)), label: labels.given }] : []),
    ...(due === undefined ? [] : [{ ...notBeforeFact(t, 'stir-done-at', due), label: labels.doneAt }]),
  ];
}

/** When the pot dies; nothing once eyes have ended it. */
export function potFacts(t: Telling, batch: Batch): readonly CardFact[] {
  const pot = potLifeTimes(batch, airLog(t.shop, batch.place));
  if (pot === undefined || batch.thickened !== undefined || batch.emptied !== undefined) return [];
  return [notAfterFact(t, 'pot-margin-at', pot.marginAt), notAfterFact(t, 'pot-life-ends', pot.endAt)];
}

export function clockFacts(t: Telling, batch: Batch): readonly CardFact[] {
  const blend = batch.filteredAt === undefined ? blendFacts(t, batch) : [];
  return [...blend, ...potFacts(t, batch)];
}

export function weighedCard(t: Telling, batch: Batch): Card {
  const { replies } = t.words;
  const { weighing } = batch;
  if (weighing === undefined) return makeCard(replies.weighed(batch.number), 'plain');
  const tolerance = batch.sheet.ratio.tolerancePercent;
  const error = ratioErrorOf(batch);
  const out = error === undefined || !isRatioWithin(error, batch.sheet.ratio);
  const shownError = error === undefined ? '?' : t.f.signedPercent(error * 100);
  const total = grams(weighing.partAGrams + weighing.partBGrams);
  const unplanned = Math.abs(total / batch.plannedGrams - 1) > 0.1;
  const n = batch.number;
  return makeCard(replies.weighed(n), out || unplanned ? 'warn' : 'good', {
    facts: [...ratioFacts(t, batch), ...clockFacts(t, batch)],
    lines: [
      out ? replies.ratioOut(shownError, t.f.percent(tolerance, 1)) : replies.ratioWithin(t.f.percent(tolerance, 1)),
      ...(unplanned ? [replies.notThePlan(t.f.mass(total), t.f.mass(batch.plannedGrams))] : []),
      ...withoutFigureLines(t, batch),
      ...massLines(t, batch, total),
      ...pastPotLines(t, batch),
      replies.countsSince(t.f.timeDown(weighing.at)),
    ],
    actions: [
      ...batchTaps(t, batch),
      tap(t, 'minus-5', `amend ${n} weigh at ${earlier(t, batch, 5)} typed late`),
      tap(t, 'minus-10', `amend ${n} weigh at ${earlier(t, batch, 10)} typed late`),
    ],
  });
}

/** Where the sheet shortens the pot life with what is in the pot. */
function massLines(t: Telling, { sheet }: Batch, mass: Grams): readonly string[] {
  const points = sheet.potLife.byMass?.points;
  const found = points && potLifeFactor(points, mass);
  if (found === undefined || isRefused(found) || found.factor === 1) return [];
  const { potLifeByMass, potLifeBeyondMass } = t.words.material;
  return [potLifeByMass(t.f.percent(found.factor * 100)), ...(found.withinPoints ? [] : [potLifeBeyondMass])];
}

function earlier(t: Telling, batch: Batch, by: number): string {
  const at = (batch.weighing?.at ?? t.now) - minutes(by) * 60_000;
  return t.f.stamp(at);
}

export function stirringCard(t: Telling, batch: Batch, title: string): Card {
  const { replies } = t.words;
  const air = airLog(t.shop, batch.place);
  const clock = blendClock(batch, air, t.now);
  const done = clock.doneAt !== undefined && clock.doneAt <= t.now;
  const stillWanted = blendWantedMinutes(batch, air, t.now);
  const left = stillWanted === undefined ? undefined : minutes(Math.max(0, 1 - clock.dose.progress) * stillWanted);
  return makeCard(title, done ? 'good' : 'plain', {
    facts: clockFacts(t, batch),
    lines: [
      ...pastPotLines(t, batch),
      ...(done
        ? [ratioWithin(batch) ? replies.stirGivenEnough : replies.ratioOffUse]
        : left === undefined
          ? []
          : [replies.stirStillWanted(t.f.minutesUp(left))]),
      ...t.words.heldBack(clock.dose.withoutFigureMinutes, t.f),
    ],
    actions: batchTaps(t, batch),
  });
}

export function batchCard(
  t: Telling,
  batch: Batch,
  title: string,
  lines: readonly string[],
  tone: Tone = 'plain',
): Card {
  const dead = batch.thickened !== undefined || batch.emptied !== undefined;
  const left = batch.emptied?.leftGrams;
  return makeCard(title, tone, {
    facts: [...(dead ? [] : clockFacts(t, batch)), ...(left === undefined ? [] : [massFact(t, 'left-over', left)])],
    lines,
    actions: batchTaps(t, batch),
  });
}
