// The day in one card: what was mixed and how well, what was coated, what cures, what went wrong.

import type { DayRecord } from '../../core/records/day.ts';
import { celsius, grams, percent } from '../../core/units.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { countFact, massFact, percentFact, type Telling, tap, temperatureFact } from './card-context.ts';
import { changedBy } from './corrected.ts';
import { dayMaterialFacts, dayMaterialLines } from './day-material.ts';
import { daySprayingLines } from './day-spraying.ts';

/** Later than this, a ring was late. */
const onTimeMinutes = 1;

export function dayCard(telling: Telling, day: DayRecord): Card {
  const { replies } = telling.words;
  const title = replies.day(day.span.date);
  if (day.idle && day.rings.length === 0) return makeCard(title, 'plain', { lines: [replies.idleDay] });
  return makeCard(title, day.deviations.length > 0 ? 'warn' : 'plain', {
    facts: factsOf(telling, day),
    lines: [
      ...deviationLines(telling, day),
      ...batchLines(telling, day),
      ...dayMaterialLines(telling, day.material),
      ...partLines(telling, day),
      ...daySprayingLines(telling, day),
      ...ringLines(telling, day),
      ...correctionLines(telling, day),
    ],
    actions: [tap(telling, 'day', 'day yesterday')],
    next: day.curing.flatMap(({ part, dueAt }) =>
      dueAt === undefined ? [] : [{ key: `part/${part}/cure-done`, dueAt: telling.figures.iso(dueAt) }],
    ),
  });
}

function factsOf(telling: Telling, day: DayRecord): readonly CardFact[] {
  const weighed = day.batches.flatMap(({ batch, weighedThatDay }) => (weighedThatDay ? (batch.weighing ?? []) : []));
  const total = (masses: readonly number[]) => grams(masses.reduce((sum, mass) => sum + mass, 0));
  const late = day.rings.filter((ring) => ring.lateMinutes > onTimeMinutes);
  const unanswered = day.rings.filter((ring) => !ring.answered);
  const parts = new Set(day.partsByMethod.flatMap(({ parts: names }) => names));
  return [
    countFact(telling, 'batches', day.batches.length),
    massFact(telling, 'part-a-total', total(weighed.map(({ partAGrams }) => partAGrams))),
    massFact(telling, 'part-b-total', total(weighed.map(({ partBGrams }) => partBGrams))),
    countFact(telling, 'parts', parts.size),
    countFact(telling, 'rings', day.rings.length),
    countFact(telling, 'rings-late', late.length),
    countFact(telling, 'rings-unanswered', unanswered.length),
    countFact(telling, 'deviations', day.deviations.length),
    ...dayMaterialFacts(telling, day.material),
    ...airFactsOf(telling, day),
  ];
}

function airFactsOf(telling: Telling, { airCelsius, humidityPercent }: DayRecord): readonly CardFact[] {
  const temperatures =
    airCelsius.length === 0
      ? []
      : [
          temperatureFact(telling, 'air-lowest', celsius(Math.min(...airCelsius))),
          temperatureFact(telling, 'air-highest', celsius(Math.max(...airCelsius))),
        ];
  const humidities =
    humidityPercent.length === 0
      ? []
      : [
          percentFact(telling, 'humidity-lowest', percent(Math.min(...humidityPercent))),
          percentFact(telling, 'humidity-highest', percent(Math.max(...humidityPercent))),
        ];
  return [...temperatures, ...humidities];
}

function deviationLines(telling: Telling, day: DayRecord): readonly string[] {
  return day.deviations.map(({ entry, objection, permitted }) => {
    const what = `${telling.words.fact(entry.fact, telling.figures)}. ${telling.words.objection(objection, telling.figures)}`;
    return telling.words.replies.dayDeviation(entry.happenedAt, entry.by, what, permitted, telling.figures);
  });
}

function batchLines(telling: Telling, day: DayRecord): readonly string[] {
  const { replies } = telling.words;
  return day.batches.flatMap(({ batch, ratioErrorPercent, blend }) => {
    const { number, sheet, weighing } = batch;
    if (weighing === undefined) return [replies.dayBatchUnweighed(number, sheet.name)];
    return [
      replies.dayBatch(number, sheet.name, weighing, ratioErrorPercent, telling.figures),
      blend.wantedMinutes === undefined
        ? replies.dayStirNoFigure(number, blend.givenMinutes, telling.figures)
        : replies.dayStir(number, blend.wantedMinutes, blend.givenMinutes, telling.figures),
    ];
  });
}

function partLines(telling: Telling, day: DayRecord): readonly string[] {
  const { replies } = telling.words;
  return [
    ...day.partsByMethod.map(({ method, parts }) => replies.dayMethod(method, parts, telling.figures)),
    ...day.curing.map(({ part, dueAt }) => replies.dayCuring(part, dueAt, telling.figures)),
  ];
}

function ringLines(telling: Telling, day: DayRecord): readonly string[] {
  const { replies } = telling.words;
  return [
    ...day.rings
      .filter((ring) => ring.lateMinutes > onTimeMinutes)
      .map((ring) => replies.dayLateRing(ring.key, ring.lateMinutes, telling.figures)),
    ...day.rings.filter((ring) => !ring.answered).map((ring) => replies.dayUnanswered(ring.key)),
  ];
}

function correctionLines(telling: Telling, day: DayRecord): readonly string[] {
  return day.corrections.map(({ entry, correction }) => {
    const { was, is } = changedBy(telling, entry, correction);
    return telling.words.replies.dayCorrection(correction.at, correction.by, was, is, correction.why, telling.figures);
  });
}
