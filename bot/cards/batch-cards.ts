// A batch's answers: opened, weighed, stirring, filtered, ended.

import { potAtWorst } from '../../core/batch/at-worst.ts';
import type { Batch } from '../../core/batch/batch.ts';
import { type BatchStatus, batchStatus, isRatioOut } from '../../core/batch/batch-status.ts';
import { speedsTold } from '../../core/batch/stir-speed.ts';
import { ratioError } from '../../core/calc/mixing.ts';
import { isOn } from '../../core/calc/runs.ts';
import { isFailed } from '../../core/failed.ts';
import { isAct } from '../../core/history.ts';
import { mixRatio } from '../../core/products/sheet.ts';
import { airLog, airServingIn } from '../../core/shop.ts';
import type { BatchNow } from '../../core/status.ts';
import { saidBeforeFiltering, saidBeforeMixing } from '../../core/steps/steps-said.ts';
import { grams, minutes, minutesAfter } from '../../core/units.ts';
import { airFacts } from './air-facts.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import { type Telling, tap, undoTap } from './card-context.ts';
import { clockFacts, timeFact } from './clock-text.ts';
import { fact, factsOf, readFact } from './facts.ts';
import { nextTaps } from './next-taps.ts';
import { massBeforeLines, massLines } from './pot-mass-lines.ts';
import { speedLines } from './speed-lines.ts';
import { saidLines, stepAsked } from './step-lines.ts';
import { toWeighCard } from './to-weigh-card.ts';

const openingOf = ({ entries }: Batch) => entries.filter(({ fact }) => fact.type === 'BatchOpened');

/** What may be done next with it; while nothing was weighed also that its opening is taken back. */
export function batchTaps(telling: Telling, { batch, phase, next }: BatchNow): readonly CardAction[] {
  const taps = nextTaps(telling, next());
  const isOnlyOpened = phase.is === 'to-weigh' && taps.length > 0;
  return [...taps, ...(isOnlyOpened ? openingOf(batch).map(({ seq }) => undoTap(telling, seq)) : [])];
}

/** Over by the clock is over, whatever was said of it. */
export const potState = ({ words }: Telling, { phase }: BatchStatus): string =>
  phase.is === 'over' ? words.replies.potOver : words.phases[phase.is];

/** One of a list of what runs. */
export function batchLine(telling: Telling, batch: Batch): string {
  const state = [potState(telling, batchStatus(telling, batch)), ...atWorstLines(telling, batch)].join('. ');
  return telling.words.replies.batchStands(batch.number, batch.sheet.name, state);
}

/** That its life may have ended sooner than its clock says, while that is of use: not of waste, nor of an empty pot. */
export function atWorstLines({ shop, now, words, figures }: Telling, batch: Batch): readonly string[] {
  if (batch.thickened !== undefined || batch.emptied !== undefined) return [];
  const worst = potAtWorst(batch, airLog(shop, batch.place));
  return worst === undefined ? [] : [words.steps.potAtWorst(worst, worst.endAt <= now, figures)];
}

/** Where the pot dies before it is stirred enough, as things stand. */
export function pastPotLines(telling: Telling, { blend, pot }: BatchStatus): readonly string[] {
  if (blend?.dueAt === undefined || pot === undefined || blend.dueAt <= pot.nearAt) return [];
  return [telling.words.replies.stirPastPot(pot.nearAt, telling.figures)];
}

export function openedCard(telling: Telling, status: BatchNow): Card {
  const { replies } = telling.words;
  const { batch, wantedMinutes } = status;
  const weigh = toWeighCard(telling, batch);
  const step = stepAsked(telling, batch);
  const taps = batchTaps(telling, status);
  const { celsius } = airServingIn(telling.shop, batch.place, telling.now);
  return makeCard(replies.opened(batch.number, batch.sheet.name), 'plain', {
    facts: [...weigh.facts, ...blendFacts(telling, status), ...airFacts(telling, batch.place)],
    lines: [
      batch.sheet.blend.way === 'stir' ? replies.weighThese : replies.inducedThese,
      ...weigh.lines,
      ...(wantedMinutes === undefined ? withoutFigureLines(telling, status) : []),
      ...massBeforeLines(telling, batch.sheet, batch.plannedGrams, celsius),
      ...humidityLines(telling, batch),
      ...saidLines(telling, saidBeforeMixing(batch.sheet)),
      ...step.lines,
      ...(batch.sheet.invented ? [replies.inventedSheet] : []),
    ],
    actions: [...taps.slice(0, 1), ...step.actions, ...taps.slice(1)],
    fields: [
      { id: 'part-a', label: telling.words.facts['part-a'], unit: 'g' },
      { id: 'part-b', label: telling.words.facts['part-b'], unit: 'g' },
    ],
  });
}

function withoutFigureLines(telling: Telling, { given: { withoutFigure } }: BatchStatus): readonly string[] {
  if (withoutFigure === undefined) return [];
  const { replies } = telling.words;
  return [
    withoutFigure === 'unknown' ? replies.noAirKnown : `${replies.noFigure} ${telling.words.noFigure[withoutFigure]}.`,
  ];
}

/** As a share of the sheet's ratio; `undefined` before weighing. */
function ratioErrorOf(batch: Batch): number | undefined {
  if (batch.weighing === undefined) return undefined;
  const error = ratioError(mixRatio(batch.sheet.ratio), batch.weighing);
  return isFailed(error) ? undefined : error;
}

/** The clocks do not live on it, but the sheet limits it. */
function humidityLines(telling: Telling, batch: Batch): readonly string[] {
  const { relativeHumidityPercent } = airServingIn(telling.shop, batch.place, telling.now);
  return relativeHumidityPercent === undefined ? [telling.words.replies.humidityNotRead] : [];
}

/** What was weighed and how far it is off; nothing before weighing. */
export function ratioFacts(telling: Telling, batch: Batch): readonly CardFact[] {
  const { weighing } = batch;
  if (weighing === undefined) return [];
  return [
    readFact(telling, 'part-a', weighing.partAGrams),
    readFact(telling, 'part-b', weighing.partBGrams),
    ...factsOf(telling, {
      'ratio-error': ratioErrorOf(batch),
      'ratio-tolerance': batch.sheet.ratio.tolerancePercent / 100,
    }),
  ];
}

/** What stirring (or the induction) asks, has been given, and when it is done. */
export function blendFacts(
  telling: Telling,
  { batch, clocks, given, wantedMinutes }: BatchStatus,
): readonly CardFact[] {
  const ran = batch.weighing === undefined ? 0 : given.dose.ranMinutes;
  const labels = telling.words.blend[batch.sheet.blend.way];
  return [
    ...factsOf(telling, { 'stir-wanted': wantedMinutes }).map((fact) => ({ ...fact, label: labels.wanted })),
    ...(ran > 0 ? [{ ...fact(telling, 'stir-given', minutes(ran)), label: labels.given }] : []),
    ...clockFacts(telling, clocks, ['stir', 'induction']).map((fact) => ({ ...fact, label: labels.doneAt })),
  ];
}

/** When the pot dies; nothing once eyes have ended it. */
export function potFacts(telling: Telling, { pot }: BatchStatus): readonly CardFact[] {
  return pot === undefined
    ? []
    : [timeFact(telling, 'pot-margin-at', { ...pot, dueAt: pot.nearAt }), timeFact(telling, 'pot-life-ends', pot)];
}

export function batchFacts(telling: Telling, status: BatchStatus): readonly CardFact[] {
  const blend = status.batch.filteredAt === undefined ? blendFacts(telling, status) : [];
  return [...blend, ...potFacts(telling, status)];
}

/** Why nobody puts any of it on, though its time may be right. */
export function notToUse(
  { words }: Pick<Telling, 'words'>,
  { heldBy }: Pick<BatchStatus, 'heldBy'>,
): readonly string[] {
  return heldBy.flatMap((held) => {
    if (held.code === 'lot-recalled') return [words.parts.held.recalls.notToUse(held.lot)];
    return held.code === 'ratio-out' ? [words.replies.ratioOffUse] : [];
  });
}

export function weighedCard(telling: Telling, status: BatchNow): Card {
  const { replies } = telling.words;
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
    facts: [...ratioFacts(telling, batch), ...batchFacts(telling, status)],
    lines: [
      out
        ? replies.ratioOut(error === undefined ? undefined : error * 100, tolerance, telling.figures)
        : replies.ratioWithin(tolerance, telling.figures),
      ...(unplanned ? [replies.notThePlan(total, batch.plannedGrams, telling.figures)] : []),
      ...withoutFigureLines(telling, status),
      ...massLines(telling, batch.sheet, total),
      ...atWorstLines(telling, batch),
      ...pastPotLines(telling, status),
      replies.countsSince(weighing.at, telling.figures),
    ],
    actions: [
      ...batchTaps(telling, status),
      ...([5, 10] as const).flatMap((by) =>
        movesBeforeCans(telling, batch, by)
          ? []
          : [tap(telling, `minus-${by}`, `amend ${n} weigh at ${earlier(telling, batch, by)} ${replies.typedLate}`)],
      ),
    ],
  });
}

/** Earlier than a can that it was poured from was opened or stirred, it would be marked for what was done. */
function movesBeforeCans({ shop, now }: Telling, { number, weighing }: Batch, by: number): boolean {
  const at = weighing?.at ?? now;
  return [...shop.cans.values()].some(
    ({ pours, entries }) =>
      pours.some(({ batch }) => batch === number) &&
      entries.some(
        (entry) => isAct(entry) && entry.happenedAt < at && entry.happenedAt > minutesAfter(at, minutes(-by)),
      ),
  );
}

function earlier(telling: Telling, batch: Batch, by: number): string {
  const at = (batch.weighing?.at ?? telling.now) - minutes(by) * 60_000;
  return telling.figures.stamp(at);
}

/** Filtered too early and stirred again, it is not filtered once more. */
function enoughLines(telling: Telling, batch: Batch): readonly string[] {
  const { number, sheet, filteredAt, coats, stirring } = batch;
  const { replies } = telling.words;
  if (filteredAt !== undefined) {
    const already = isOn(stirring) ? [replies.filteredAlready(filteredAt, telling.figures)] : [];
    return [...already, replies.stirGivenInUse];
  }
  if (sheet.filter !== undefined && coats.length > 0) return [replies.stirGivenCoated(number)];
  return [replies.stirGivenEnough, ...saidLines(telling, saidBeforeFiltering(sheet))];
}

export function stirringCard(telling: Telling, status: BatchNow, title: string): Card {
  const { replies } = telling.words;
  const { given, wantedMinutes } = status;
  const done = given.doneAt !== undefined && given.doneAt <= telling.now;
  const left = wantedMinutes === undefined ? undefined : minutes(Math.max(0, 1 - given.dose.progress) * wantedMinutes);
  const off = notToUse(telling, status);
  return makeCard(title, done ? 'good' : 'plain', {
    facts: batchFacts(telling, status),
    lines: [
      ...speedLines(telling, status.batch, speedsTold(status.batch).slice(-1)),
      ...pastPotLines(telling, status),
      ...atWorstLines(telling, status.batch),
      ...(done
        ? off.length > 0
          ? off
          : enoughLines(telling, status.batch)
        : left === undefined
          ? []
          : [replies.stirStillWanted(left, telling.figures)]),
      ...telling.words.heldBack(given.dose.withoutFigureMinutes, telling.figures),
    ],
    actions: batchTaps(telling, status),
  });
}

export function batchCard(
  telling: Telling,
  status: BatchNow,
  title: string,
  lines: readonly string[],
  tone: Tone = 'plain',
): Card {
  const { thickened, emptied } = status.batch;
  const dead = thickened !== undefined || emptied !== undefined;
  return makeCard(title, tone, {
    facts: [...(dead ? [] : batchFacts(telling, status)), ...factsOf(telling, { 'left-over': emptied?.leftGrams })],
    lines: [...atWorstLines(telling, status.batch), ...lines],
    actions: batchTaps(telling, status),
  });
}
