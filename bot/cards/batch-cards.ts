// A batch's answers: opened, weighed, stirring, filtered, ended.

import type { Batch } from '../../core/batch/batch.ts';
import { type BatchStatus, batchStatus, isRatioOut } from '../../core/batch/batch-status.ts';
import { ratioError, splitMass } from '../../core/calc/mixing.ts';
import { potLifeFactor } from '../../core/calc/pot-mass.ts';
import { isFailed } from '../../core/failed.ts';
import { airServing } from '../../core/place/place.ts';
import { mixRatio } from '../../core/products/sheet.ts';
import { standing } from '../../core/settled.ts';
import type { BatchNow } from '../../core/status.ts';
import { type Grams, grams, minutes } from '../../core/units.ts';
import { airFacts } from './air-facts.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import {
  massFact,
  minutesGivenFact,
  minutesWantedFact,
  ratioErrorFact,
  ratioToleranceFact,
  type Telling,
  tap,
} from './card-context.ts';
import { clockFacts, timeFact } from './clock-text.ts';
import { nextTaps } from './next-taps.ts';
import { undoTap } from './undo-tap.ts';

const openingOf = ({ entries }: Batch) => entries.filter(({ fact }) => fact.type === 'BatchOpened');

/** What may be done next with it; while nothing was weighed also that its opening is taken back. */
export function batchTaps(t: Telling, { batch, phase, next }: BatchNow): readonly CardAction[] {
  const taps = nextTaps(t, next());
  const isOnlyOpened = phase.is === 'to-weigh' && taps.length > 0;
  return [...taps, ...(isOnlyOpened ? openingOf(batch).map(({ seq }) => undoTap(t, seq)) : [])];
}

/** Over by the clock is over, whatever was said of it. */
export const potState = ({ words }: Telling, { phase }: BatchStatus): string =>
  phase.is === 'over' ? words.replies.potOver : words.phases[phase.is];

/** One of a list of what runs. */
export const batchLine = (t: Telling, batch: Batch): string =>
  t.words.replies.batchStands(batch.number, batch.sheet.name, potState(t, batchStatus(t, batch)));

/** Where the pot dies before it is stirred enough, as things stand. */
export function pastPotLines(t: Telling, { blend, pot }: BatchStatus): readonly string[] {
  if (blend?.dueAt === undefined || pot === undefined || blend.dueAt <= pot.nearAt) return [];
  return [t.words.replies.stirPastPot(pot.nearAt, t.f)];
}

export function openedCard(t: Telling, status: BatchNow): Card {
  const { replies } = t.words;
  const { batch, wantedMinutes } = status;
  const split = splitMass(batch.plannedGrams, mixRatio(batch.sheet.ratio));
  const masses = isFailed(split)
    ? []
    : [massFact(t, 'part-a', split.partAGrams), massFact(t, 'part-b', split.partBGrams)];
  return makeCard(replies.opened(batch.number, batch.sheet.name), 'plain', {
    facts: [...masses, ...blendFacts(t, status), ...airFacts(t, batch.place)],
    lines: [
      batch.sheet.blend.way === 'stir' ? replies.weighThese : replies.inducedThese,
      ...(wantedMinutes === undefined ? withoutFigureLines(t, status) : []),
      ...humidityLines(t, batch),
      ...(batch.sheet.invented ? [replies.inventedSheet] : []),
    ],
    actions: batchTaps(t, status),
    fields: [
      { id: 'part-a', label: t.words.facts['part-a'], unit: 'g' },
      { id: 'part-b', label: t.words.facts['part-b'], unit: 'g' },
    ],
  });
}

function withoutFigureLines(t: Telling, { given: { withoutFigure } }: BatchStatus): readonly string[] {
  if (withoutFigure === undefined) return [];
  const { replies } = t.words;
  return [withoutFigure === 'unknown' ? replies.noAirKnown : `${replies.noFigure} ${t.words.noFigure[withoutFigure]}.`];
}

/** As a share of the sheet's ratio; `undefined` before weighing. */
function ratioErrorOf(batch: Batch): number | undefined {
  if (batch.weighing === undefined) return undefined;
  const error = ratioError(mixRatio(batch.sheet.ratio), batch.weighing);
  return isFailed(error) ? undefined : error;
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
export function blendFacts(t: Telling, { batch, clocks, given, wantedMinutes }: BatchStatus): readonly CardFact[] {
  const ran = batch.weighing === undefined ? 0 : given.dose.ranMinutes;
  const labels = t.words.blend[batch.sheet.blend.way];
  return [
    ...(wantedMinutes === undefined
      ? []
      : [{ ...minutesWantedFact(t, 'stir-wanted', wantedMinutes), label: labels.wanted }]),
    ...(ran > 0 ? [{ ...minutesGivenFact(t, 'stir-given', minutes(ran)), label: labels.given }] : []),
    ...clockFacts(t, clocks, ['stir', 'induction']).map((fact) => ({ ...fact, label: labels.doneAt })),
  ];
}

/** When the pot dies; nothing once eyes have ended it. */
export function potFacts(t: Telling, { pot }: BatchStatus): readonly CardFact[] {
  return pot === undefined
    ? []
    : [timeFact(t, 'pot-margin-at', { ...pot, dueAt: pot.nearAt }), timeFact(t, 'pot-life-ends', pot)];
}

export function batchFacts(t: Telling, status: BatchStatus): readonly CardFact[] {
  const blend = status.batch.filteredAt === undefined ? blendFacts(t, status) : [];
  return [...blend, ...potFacts(t, status)];
}

export function weighedCard(t: Telling, status: BatchNow): Card {
  const { replies } = t.words;
  const { batch } = status;
  const { weighing } = batch;
  if (weighing === undefined) return makeCard(replies.weighed(batch.number), 'plain');
  const tolerance = batch.sheet.ratio.tolerancePercent;
  const error = ratioErrorOf(batch);
  const out = isRatioOut(status);
  const total = grams(weighing.partAGrams + weighing.partBGrams);
  const unplanned = Math.abs(total / batch.plannedGrams - 1) > 0.1;
  const n = batch.number;
  return makeCard(replies.weighed(n), out || unplanned ? 'warn' : 'good', {
    facts: [...ratioFacts(t, batch), ...batchFacts(t, status)],
    lines: [
      out
        ? replies.ratioOut(error === undefined ? undefined : error * 100, tolerance, t.f)
        : replies.ratioWithin(tolerance, t.f),
      ...(unplanned ? [replies.notThePlan(total, batch.plannedGrams, t.f)] : []),
      ...withoutFigureLines(t, status),
      ...massLines(t, batch, total),
      ...pastPotLines(t, status),
      replies.countsSince(weighing.at, t.f),
    ],
    actions: [
      ...batchTaps(t, status),
      tap(t, 'minus-5', `amend ${n} weigh at ${earlier(t, batch, 5)} typed late`),
      tap(t, 'minus-10', `amend ${n} weigh at ${earlier(t, batch, 10)} typed late`),
    ],
  });
}

/** Where the sheet shortens the pot life with what is in the pot. */
function massLines(t: Telling, { sheet }: Batch, mass: Grams): readonly string[] {
  const points = sheet.potLife.byMass?.points;
  const found = points && potLifeFactor(points, mass);
  if (found === undefined || isFailed(found) || found.factor === 1) return [];
  const { potLifeByMass, potLifeBeyondMass } = t.words.material;
  return [potLifeByMass(found.factor * 100, t.f), ...(found.withinPoints ? [] : [potLifeBeyondMass])];
}

function earlier(t: Telling, batch: Batch, by: number): string {
  const at = (batch.weighing?.at ?? t.now) - minutes(by) * 60_000;
  return t.f.stamp(at);
}

export function stirringCard(t: Telling, status: BatchNow, title: string): Card {
  const { replies } = t.words;
  const { given, wantedMinutes } = status;
  const done = given.doneAt !== undefined && given.doneAt <= t.now;
  const left = wantedMinutes === undefined ? undefined : minutes(Math.max(0, 1 - given.dose.progress) * wantedMinutes);
  return makeCard(title, done ? 'good' : 'plain', {
    facts: batchFacts(t, status),
    lines: [
      ...pastPotLines(t, status),
      ...(done
        ? [isRatioOut(status) ? replies.ratioOffUse : replies.stirGivenEnough]
        : left === undefined
          ? []
          : [replies.stirStillWanted(left, t.f)]),
      ...t.words.heldBack(given.dose.withoutFigureMinutes, t.f),
    ],
    actions: batchTaps(t, status),
  });
}

export function batchCard(
  t: Telling,
  status: BatchNow,
  title: string,
  lines: readonly string[],
  tone: Tone = 'plain',
): Card {
  const { thickened, emptied } = status.batch;
  const dead = thickened !== undefined || emptied !== undefined;
  const left = emptied?.leftGrams;
  return makeCard(title, tone, {
    facts: [...(dead ? [] : batchFacts(t, status)), ...(left === undefined ? [] : [massFact(t, 'left-over', left)])],
    lines,
    actions: batchTaps(t, status),
  });
}
