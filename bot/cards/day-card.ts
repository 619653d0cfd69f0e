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

export function dayCard(t: Telling, day: DayRecord): Card {
  const { replies } = t.words;
  const title = replies.day(day.span.date);
  if (day.idle && day.rings.length === 0) return makeCard(title, 'plain', { lines: [replies.idleDay] });
  return makeCard(title, day.deviations.length > 0 ? 'warn' : 'plain', {
    facts: factsOf(t, day),
    lines: [
      ...deviationLines(t, day),
      ...batchLines(t, day),
      ...dayMaterialLines(t, day.material),
      ...partLines(t, day),
      ...daySprayingLines(t, day.spraying),
      ...ringLines(t, day),
      ...correctionLines(t, day),
    ],
    actions: [tap(t, 'day', 'day yesterday')],
    next: day.curing.flatMap(({ part, dueAt }) =>
      dueAt === undefined ? [] : [{ key: `part/${part}/cure-done`, dueAt: t.f.iso(dueAt) }],
    ),
  });
}

function factsOf(t: Telling, day: DayRecord): readonly CardFact[] {
  const weighed = day.batches.flatMap(({ batch, weighedThatDay }) => (weighedThatDay ? (batch.weighing ?? []) : []));
  const total = (masses: readonly number[]) => grams(masses.reduce((sum, mass) => sum + mass, 0));
  const late = day.rings.filter((ring) => ring.lateMinutes > onTimeMinutes);
  const unanswered = day.rings.filter((ring) => !ring.answered);
  const parts = new Set(day.partsByMethod.flatMap(({ parts: names }) => names));
  return [
    countFact(t, 'batches', day.batches.length),
    massFact(t, 'part-a-total', total(weighed.map(({ partAGrams }) => partAGrams))),
    massFact(t, 'part-b-total', total(weighed.map(({ partBGrams }) => partBGrams))),
    countFact(t, 'parts', parts.size),
    countFact(t, 'rings', day.rings.length),
    countFact(t, 'rings-late', late.length),
    countFact(t, 'rings-unanswered', unanswered.length),
    countFact(t, 'deviations', day.deviations.length),
    ...dayMaterialFacts(t, day.material),
    ...airFactsOf(t, day),
  ];
}

function airFactsOf(t: Telling, { airCelsius, humidityPercent }: DayRecord): readonly CardFact[] {
  const temperatures =
    airCelsius.length === 0
      ? []
      : [
          temperatureFact(t, 'air-lowest', celsius(Math.min(...airCelsius))),
          temperatureFact(t, 'air-highest', celsius(Math.max(...airCelsius))),
        ];
  const humidities =
    humidityPercent.length === 0
      ? []
      : [
          percentFact(t, 'humidity-lowest', percent(Math.min(...humidityPercent))),
          percentFact(t, 'humidity-highest', percent(Math.max(...humidityPercent))),
        ];
  return [...temperatures, ...humidities];
}

function deviationLines(t: Telling, day: DayRecord): readonly string[] {
  return day.deviations.map(({ entry, objection, permitted }) => {
    const what = `${t.words.fact(entry.fact, t.f)}. ${t.words.objection(objection, t.f)}`;
    return t.words.replies.dayDeviation(entry.happenedAt, entry.by, what, permitted, t.f);
  });
}

function batchLines(t: Telling, day: DayRecord): readonly string[] {
  const { replies } = t.words;
  return day.batches.flatMap(({ batch, ratioErrorPercent, blend }) => {
    const { number, sheet, weighing } = batch;
    if (weighing === undefined) return [replies.dayBatchUnweighed(number, sheet.name)];
    return [
      replies.dayBatch(number, sheet.name, weighing, ratioErrorPercent, t.f),
      blend.wantedMinutes === undefined
        ? replies.dayStirNoFigure(number, blend.givenMinutes, t.f)
        : replies.dayStir(number, blend.wantedMinutes, blend.givenMinutes, t.f),
    ];
  });
}

function partLines(t: Telling, day: DayRecord): readonly string[] {
  const { replies } = t.words;
  return [
    ...day.partsByMethod.map(({ method, parts }) => replies.dayMethod(method, parts, t.f)),
    ...day.curing.map(({ part, dueAt }) => replies.dayCuring(part, dueAt, t.f)),
  ];
}

function ringLines(t: Telling, day: DayRecord): readonly string[] {
  const { replies } = t.words;
  return [
    ...day.rings
      .filter((ring) => ring.lateMinutes > onTimeMinutes)
      .map((ring) => replies.dayLateRing(ring.key, ring.lateMinutes, t.f)),
    ...day.rings.filter((ring) => !ring.answered).map((ring) => replies.dayUnanswered(ring.key)),
  ];
}

function correctionLines(t: Telling, day: DayRecord): readonly string[] {
  return day.corrections.map(({ entry, correction }) => {
    const { was, is } = changedBy(t, entry, correction);
    return t.words.replies.dayCorrection(correction.at, correction.by, was, is, correction.why, t.f);
  });
}
