// The day in one card: what was mixed and how well, what was coated, what cures, what went wrong.

import { nameIn } from '../../core/ids.ts';
import { partStatus } from '../../core/part/part-status.ts';
import type { DayRecord } from '../../core/records/day.ts';
import { celsius, grams, percent } from '../../core/units.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { asTold, changedBy } from './corrected.ts';
import { dayMaterialFacts, dayMaterialLines } from './day-material.ts';
import { daySprayingLines } from './day-spraying.ts';
import { deviationSaid } from './deviation-lines.ts';
import { factsOf } from './facts.ts';
import { firstShiftDayLines } from './first-shift-card.ts';
import { papersLines } from './papers-lines.ts';
import { partLine } from './part-cards.ts';
import { ringLabel } from './ring-label.ts';

/** Later than this, a ring was late. */
const onTimeMinutes = 1;

/** What was called back by the end of the day, and was not over when it began. */
function recalledLines({ shop, words, figures }: Telling, { span }: DayRecord): readonly string[] {
  return shop.crew.recalls
    .filter(({ at, endedAt = span.to }) => at < span.to && endedAt >= span.from)
    .map(({ lot, at, why }) => words.parts.held.recalls.onDay(lot, at, why, figures));
}

export function dayCard(telling: Telling, day: DayRecord): Card {
  const { replies } = telling.words;
  const title = replies.day(day.span.date, telling.figures);
  const onHold = [
    ...recalledLines(telling, day),
    ...day.onHold.map((part) => partLine(telling, partStatus(telling, part))),
  ];
  if (day.idle && day.rings.length === 0) {
    return makeCard(title, onHold.length > 0 ? 'warn' : 'plain', { lines: [...onHold, replies.idleDay] });
  }
  return makeCard(title, day.deviations.length + onHold.length > 0 ? 'warn' : 'plain', {
    facts: dayFacts(telling, day),
    lines: [
      ...onHold,
      ...deviationLines(telling, day),
      ...batchLines(telling, day),
      ...papersLines(
        telling,
        day.batches.map(({ batch }) => batch),
      ),
      ...dayMaterialLines(telling, day.material),
      ...partLines(telling, day),
      ...daySprayingLines(telling, day),
      ...firstShiftDayLines(telling, day),
      ...ringLines(telling, day),
      ...correctionLines(telling, day),
    ],
    actions: [tap(telling, 'day', 'day yesterday')],
    next: day.curing.flatMap(({ part, dueAt }) =>
      dueAt === undefined ? [] : [{ key: `part/${part}/cure-done`, dueAt: telling.figures.iso(dueAt) }],
    ),
  });
}

function dayFacts(telling: Telling, day: DayRecord): readonly CardFact[] {
  const weighed = day.batches.flatMap(({ batch, weighedThatDay }) => (weighedThatDay ? (batch.weighing ?? []) : []));
  const total = (masses: readonly number[]) => grams(masses.reduce((sum, mass) => sum + mass, 0));
  return [
    ...factsOf(telling, {
      batches: day.batches.length,
      'part-a-total': total(weighed.map(({ partAGrams }) => partAGrams)),
      'part-b-total': total(weighed.map(({ partBGrams }) => partBGrams)),
      parts: new Set(day.partsByMethod.flatMap(({ parts }) => parts)).size,
      rings: day.rings.length,
      'rings-late': day.rings.filter((ring) => ring.lateMinutes > onTimeMinutes).length,
      'rings-unanswered': day.rings.filter((ring) => !ring.answered).length,
      deviations: day.deviations.length,
    }),
    ...dayMaterialFacts(telling, day.material),
    ...spansOfAir(telling, day),
  ];
}

function spansOfAir(telling: Telling, { airCelsius, humidityPercent }: DayRecord): readonly CardFact[] {
  const of = <T>(values: readonly number[], one: (value: number) => T) =>
    values.length === 0 ? [] : [one(Math.min(...values)), one(Math.max(...values))];
  const [coldest, warmest] = of(airCelsius, celsius);
  const [driest, dampest] = of(humidityPercent, percent);
  const air = { 'air-lowest': coldest, 'air-highest': warmest };
  return factsOf(telling, { ...air, 'humidity-lowest': driest, 'humidity-highest': dampest });
}

function deviationLines(telling: Telling, day: DayRecord): readonly string[] {
  return day.deviations.map(({ entry, objection, permitted }) => {
    const what = deviationSaid(telling, { entry, objection });
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
    ...preparedLines(telling, day),
    ...day.partsByMethod.map(({ method, parts }) => replies.dayMethod(method, parts, telling.figures)),
    ...day.waiting.map(({ part, dryAt }) => replies.dayWaiting(part, dryAt, telling.figures)),
    ...day.disposed.map(({ stream, fact }) =>
      telling.words.asked.titled(nameIn(stream), telling.words.fact(fact, telling.figures)),
    ),
    ...day.curing.map(({ part, dueAt }) => replies.dayCuring(part, dueAt, telling.figures)),
  ];
}

/** Parts of which the same was said stand in one line. */
function preparedLines({ words, figures }: Telling, { prepared }: DayRecord): readonly string[] {
  const told = prepared.map(({ fact, stream }) => ({ part: nameIn(stream), said: words.fact(fact, figures) }));
  return [...new Set(told.map(({ said }) => said))].map((said) =>
    words.parts.detail(
      told.filter((each) => each.said === said).map(({ part }) => part),
      [said],
      figures,
    ),
  );
}

function ringLines(telling: Telling, day: DayRecord): readonly string[] {
  const { replies } = telling.words;
  // What says the same is one line, however often it rang.
  const unanswered = new Map<string, { readonly key: string; times: number }>();
  for (const { key, answered } of day.rings) {
    if (answered) continue;
    const label = ringLabel(telling, key);
    const ring = unanswered.get(label) ?? { key, times: 0 };
    ring.times += 1;
    unanswered.set(label, ring);
  }
  return [
    ...day.rings
      .filter((ring) => ring.lateMinutes > onTimeMinutes)
      .map((ring) => replies.dayLateRing(ring.key, ring.lateMinutes, telling.figures)),
    ...[...unanswered.values()].map(({ key, times }) => replies.dayUnanswered(key, times, telling.figures)),
  ];
}

function correctionLines(telling: Telling, day: DayRecord): readonly string[] {
  return day.corrections.map(({ entry, correction }) => {
    const { was, is } = changedBy(telling, entry, correction);
    const { at, by, why } = asTold(telling, correction);
    return telling.words.replies.dayCorrection(at, by, was, is, why, telling.figures);
  });
}
