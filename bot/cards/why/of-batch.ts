// Why the figures of a batch are what they are: parts and ratio, stirring, pot life, what brings it back, what is left.

import { potAtWorst } from '../../../core/batch/at-worst.ts';
import type { Batch } from '../../../core/batch/batch.ts';
import { blendBasis, potBasis, potLifeTimes, shortenedTo } from '../../../core/batch/batch-clocks.ts';
import { batchStatus } from '../../../core/batch/batch-status.ts';
import { openTooLongFrom } from '../../../core/batch/lid.ts';
import { stretchesTo } from '../../../core/calc/clock-sum.ts';
import { partsByWeight } from '../../../core/calc/mixing.ts';
import type { Component } from '../../../core/components.ts';
import { isFailed } from '../../../core/failed.ts';
import { mixRatio } from '../../../core/products/sheet.ts';
import { airLog } from '../../../core/shop.ts';
import { grams, minutesBetween } from '../../../core/units.ts';
import { blendFacts, potFacts } from '../batch-cards.ts';
import type { CardFact } from '../card.ts';
import type { FactId } from '../fact-ids.ts';
import { repairTold } from '../weigh-cards.ts';
import { clockWhy, readBetween } from './clock-why.ts';
import { entriesOf, type FigureAsked, sheetSource, type Why, type WhyOf, why } from './why.ts';

const shownAs = (facts: readonly CardFact[], id: FactId): string | undefined =>
  facts.find((fact) => fact.id === id)?.shown;

const ofBatch =
  (make: (asked: FigureAsked, batch: Batch) => Why | undefined): WhyOf =>
  (asked) =>
    asked.of.batch === undefined ? undefined : make(asked, asked.of.batch);

const weighed = ({ entries }: Batch) => entriesOf(entries, 'PartsWeighed', 'PartWeighed', 'PartAdded');
const ratioSource = ({ sheet }: Batch) => sheetSource(sheet, 'ratio', sheet.ratio.source);

/** By weight, whichever way the sheet gives it. */
function partsOf({ sheet: { ratio } }: Batch) {
  const parts = partsByWeight(mixRatio(ratio));
  return isFailed(parts) ? undefined : parts;
}

/** Weighed, as the scale showed it; before that, its share of the mix. */
const component = (which: Component): WhyOf =>
  ofBatch(({ telling: { words, figures }, fact }, batch) => {
    const inPot = batch.inVessel[which]?.grams;
    if (inPot === fact.value) return why({ is: 'reading' }, { sum: [figures.asRead(inPot)], read: weighed(batch) });
    const parts = partsOf(batch);
    if (parts === undefined) return undefined;
    const own = which === 'part-a' ? parts.partsA : parts.partsB;
    const sum = `${figures.mass(batch.plannedGrams)} × ${figures.decimal(own)} ÷ (${figures.decimal(parts.partsA)} + ${figures.decimal(parts.partsB)}) = ${fact.shown}`;
    const byVolume = batch.sheet.ratio.basis === 'volume' ? [words.why.throughDensities] : [];
    return why(ratioSource(batch), {
      sum: [sum],
      read: entriesOf(batch.entries, 'BatchOpened'),
      assumed: [...byVolume, words.why.toTheStep],
    });
  });

const ratioError = ofBatch(({ telling: { words, figures }, fact }, batch) => {
  const { weighing } = batch;
  const parts = partsOf(batch);
  if (weighing === undefined || parts === undefined) return undefined;
  const [a, b] = [figures.asRead(weighing.partAGrams), figures.asRead(weighing.partBGrams)];
  return why(ratioSource(batch), {
    sum: [`(${b} ÷ ${a}) ÷ (${figures.decimal(parts.partsB)} ÷ ${figures.decimal(parts.partsA)}) − 1 = ${fact.shown}`],
    read: weighed(batch),
    assumed: [words.why.asScales],
  });
});

const blendField = ({ sheet }: Batch) => ({ sheet, field: 'blend.time', duration: sheet.blend.time });

const blend = ofBatch(({ telling, of }, batch) => {
  const status = batchStatus(telling, batch);
  const due = status.blend?.dueAt ?? status.given.doneAt;
  if (due === undefined) return undefined;
  return clockWhy(telling, of, {
    ...blendField(batch),
    caution: 'at-least',
    stretches: stretchesTo(blendBasis(batch, airLog(telling.shop, batch.place)), due),
    now: shownAs(blendFacts(telling, status), 'stir-done-at'),
  });
});

const wanted = ofBatch(({ telling, of }, batch) => {
  const { given, wantedMinutes } = batchStatus(telling, batch);
  const { words, figures, shop, now } = telling;
  const read = readBetween(entriesOf(shop.places.get(of.place)?.entries, 'AirRead'), now, now);
  const { sheet, field, duration } = blendField(batch);
  const at = given.celsius;
  return why(sheetSource(sheet, field, duration.source), {
    sum: [
      words.why.law(duration, figures),
      ...(at === undefined || wantedMinutes === undefined
        ? []
        : [`${figures.temperature(at)}: ${figures.minutesUp(wantedMinutes)}`]),
    ],
    read,
    assumed: given.withoutFigure === undefined ? [] : [words.why.withoutFigure(given.withoutFigure, 'at-least')],
  });
});

const given = ofBatch(({ telling: { figures, now }, fact }, batch) => {
  const runs = batch.sheet.blend.way === 'stir' ? batch.stirring : [];
  const told = runs.map(({ from, to }) => `${figures.timeUp(from)}–${figures.timeDown(to ?? now)}`);
  return why(
    { is: 'record' },
    {
      sum: told.length === 0 ? [] : [`${told.join(' + ')} = ${fact.shown}`],
      read: entriesOf(batch.entries, 'PartsWeighed', 'PartWeighed', 'StirrerStarted', 'StirrerStopped').slice(-3),
    },
  );
});

const pot = ofBatch(({ telling, of, fact }, batch) => {
  const air = airLog(telling.shop, batch.place);
  const times = potLifeTimes(batch, air);
  const { weighing, sheet } = batch;
  if (times === undefined || weighing === undefined) return undefined;
  const { words, figures, now } = telling;
  const status = batchStatus(telling, batch);
  const told = clockWhy(telling, of, {
    ...{ sheet, field: 'potLife.time', duration: sheet.potLife.time, caution: 'at-most' as const },
    stretches: stretchesTo(potBasis(batch, air, now), times.endAt),
    now: shownAs(potFacts(telling, status), fact.id === 'pot-margin-at' ? 'pot-margin-at' : 'pot-life-ends'),
  });
  const mass = grams(weighing.partAGrams + weighing.partBGrams);
  const left = shortenedTo(batch, now);
  const worst = potAtWorst(batch, air);
  return {
    ...told,
    sum: [
      words.why.metAt(weighing.at, figures),
      ...(sheet.potLife.byMass === undefined ? [] : [words.why.byMass(mass, figures)]),
      ...told.sum,
      ...(left < 1 ? [words.why.shortened(left * 100, openTooLongFrom(batch) !== undefined, figures)] : []),
      ...(fact.id === 'pot-margin-at' ? [words.why.margin(times.endAt, sheet.potLife.marginMinutes, figures)] : []),
    ],
    assumed: [
      ...told.assumed,
      ...(worst === undefined ? [] : [words.steps.potAtWorst(worst, worst.endAt <= now, figures)]),
    ],
  };
});

const exactB = ofBatch(({ telling: { words, figures }, fact }, batch) => {
  const a = batch.inVessel['part-a']?.grams;
  const parts = partsOf(batch);
  if (a === undefined || parts === undefined) return undefined;
  const sum = `${figures.asRead(a)} × ${figures.decimal(parts.partsB)} ÷ ${figures.decimal(parts.partsA)} = ${fact.shown}`;
  return why(ratioSource(batch), { sum: [sum], read: weighed(batch), assumed: [words.why.toTheStep] });
});

const addition = (which: Component): WhyOf =>
  ofBatch(({ telling, fact }, batch) => {
    const { weighing } = batch;
    const parts = partsOf(batch);
    const [told] = repairTold(telling, batch).facts;
    if (weighing === undefined || parts === undefined) return undefined;
    const { words, figures } = telling;
    const [a, b] = [figures.asRead(weighing.partAGrams), figures.asRead(weighing.partBGrams)];
    const [pa, pb] = [figures.decimal(parts.partsA), figures.decimal(parts.partsB)];
    const sum = which === 'part-a' ? `${b} × ${pa} ÷ ${pb} − ${a}` : `${a} × ${pb} ÷ ${pa} − ${b}`;
    return why(ratioSource(batch), {
      sum: [`${sum} = ${fact.shown}`],
      read: weighed(batch),
      assumed: [words.why.toTheStep],
      now: told?.shown,
    });
  });

const uncovered = ofBatch(({ telling: { figures, now }, fact }, batch) => {
  const told = batch.uncovered.map(({ from, to }) => figures.minutesUp(minutesBetween(from, to ?? now)));
  const { covered } = batch.sheet.steps ?? {};
  const sum = [`${told.join(' + ')} = ${fact.shown}`];
  const read = entriesOf(batch.entries, 'PotUncovered', 'PotCovered');
  return why(covered === undefined ? { is: 'record' } : sheetSource(batch.sheet, 'steps.covered', covered.source), {
    sum,
    read,
  });
});

export const batchWhys = {
  'part-a': component('part-a'),
  'part-b': component('part-b'),
  'ratio-error': ratioError,
  'ratio-tolerance': ofBatch((_, batch) => why(ratioSource(batch))),
  'stir-wanted': wanted,
  'stir-given': given,
  'stir-done-at': blend,
  'pot-life-ends': pot,
  'pot-margin-at': pot,
  'part-b-exact': exactB,
  'add-part-a': addition('part-a'),
  'add-part-b': addition('part-b'),
  caught: ofBatch((_, { entries }) => why({ is: 'reading' }, { read: entriesOf(entries, 'MixCaught').slice(-3) })),
  'left-over': ofBatch((_, { entries }) => why({ is: 'reading' }, { read: entriesOf(entries, 'PotEmptied') })),
  uncovered,
} as const satisfies Partial<Record<FactId, WhyOf>>;
