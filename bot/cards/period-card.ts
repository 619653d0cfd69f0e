// A stretch of days in full: the page behind the day, the week, the month. Deviations and permissions stand first.

import type { Component } from '../../core/components.ts';
import type { Head } from '../../core/ports.ts';
import type { PeriodRecord } from '../../core/records/period.ts';
import type { LedgerTotals } from '../../core/records/solvent-ledger.ts';
import type { LimitStanding } from '../../core/records/voc-limits.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { areaFact, countFact, massFact, minutesGivenFact, type Telling, tap } from './card-context.ts';
import { changedBy } from './corrected.ts';
import { deviationLines } from './deviation-lines.ts';
import { limitLines } from './ledger-card.ts';

export interface PeriodTold {
  readonly period: PeriodRecord;
  readonly ledger: LedgerTotals;
  readonly limits: readonly LimitStanding[];
  readonly end: Head;
}

/** A month of readings is no card: so many lines of each kind, the export has the rest. */
const mostLines = 60;

export const letter = (component: Component): string => (component === 'part-a' ? 'A' : 'B');

export function periodCard(t: Telling, { period, ledger, limits, end }: PeriodTold): Card {
  const { records } = t.words;
  const { span } = period;
  const title = records.span(span.first, span.last);
  if (period.idle && period.rings.count === 0) return makeCard(title, 'plain', { lines: [records.idle] });
  const near = limits.some(({ state }) => state !== 'below');
  return makeCard(title, period.deviations.length > 0 || near ? 'warn' : 'plain', {
    facts: factsOf(t, period, ledger),
    lines: [
      ...capped(t, deviationLines(t, period.deviations)),
      ...capped(t, alarmLines(t, period)),
      ...limitLines(t, limits),
      ...capped(t, batchLines(t, period)),
      ...capped(t, partLines(t, period)),
      ...capped(t, canLines(t, period)),
      ...capped(t, airLines(t, period)),
      ...ringLines(t, period),
      ...capped(t, correctionLines(t, period)),
      ...(end.seq === 0 ? [] : [records.lastHash(end.seq, end.hash)]),
    ],
    actions: [
      tap(t, 'export', `export ${span.first} to ${span.last} csv`),
      ...(span.first === span.last ? [] : [tap(t, 'voc', `voc ${span.first} to ${span.last}`)]),
    ],
  });
}

function capped(t: Telling, lines: readonly string[]): readonly string[] {
  const rest = lines.length - mostLines;
  return rest <= 0 ? lines : [...lines.slice(0, mostLines), t.words.records.more(rest)];
}

function factsOf(t: Telling, period: PeriodRecord, ledger: LedgerTotals): readonly CardFact[] {
  const { totals, rings } = period;
  const permitted = period.deviations.filter((deviation) => deviation.permitted !== undefined);
  return [
    countFact(t, 'batches', period.batches.length),
    countFact(t, 'parts', new Set(period.coats.map(({ part }) => part)).size),
    massFact(t, 'planned-total', totals.plannedGrams),
    massFact(t, 'mixed-total', totals.mixedGrams),
    massFact(t, 'applied-total', totals.appliedGrams),
    massFact(t, 'caught-total', totals.caughtGrams),
    massFact(t, 'left-over-total', totals.thrownGrams),
    areaFact(t, totals.coatedSquareMetres, 'coated-area'),
    massFact(t, 'voc', ledger.vocGrams),
    massFact(t, 'materials-total', ledger.usedGrams),
    countFact(t, 'rings', rings.count),
    countFact(t, 'rings-late', rings.late),
    countFact(t, 'rings-unanswered', rings.unanswered),
    ...(rings.medianMinutes === undefined ? [] : [minutesGivenFact(t, 'answer-median', rings.medianMinutes)]),
    countFact(t, 'deviations', period.deviations.length),
    countFact(t, 'permissions', permitted.length),
    countFact(t, 'corrections', period.corrections.length),
  ];
}

function batchLines(t: Telling, period: PeriodRecord): readonly string[] {
  const { records } = t.words;
  return period.batches.flatMap((material) => {
    const { batch, blend, ratioErrorPercent } = material;
    const n = batch.number;
    const area = material.coatedSquareMetres > 0 ? records.onArea(t.f.area(material.coatedSquareMetres)) : '';
    const missing = material.partsWithoutArea > 0 ? records.areaMissing(material.partsWithoutArea) : '';
    return [
      records.yield(n, t.f.mass(material.plannedGrams), t.f.mass(material.mixedGrams)),
      ...(ratioErrorPercent === undefined ? [] : [records.ratio(n, t.f.signedPercent(ratioErrorPercent))]),
      ...(blend.wantedMinutes === undefined || batch.weighing === undefined
        ? []
        : [records.stir(n, t.f.minutesUp(blend.wantedMinutes), t.f.minutesDown(blend.givenMinutes))]),
      ...(material.caughtGrams > 0 ? [records.caught(n, t.f.mass(material.caughtGrams))] : []),
      ...(material.appliedGrams === undefined
        ? material.mixedGrams > 0
          ? [records.notSaidLeft(n)]
          : []
        : [records.applied(n, t.f.mass(material.appliedGrams), area + missing)]),
      ...(material.thrown === undefined || material.thrown.grams === 0
        ? []
        : [records.thrown(n, t.f.mass(material.thrown.grams), material.thrown.why)]),
    ];
  });
}

function alarmLines(t: Telling, period: PeriodRecord): readonly string[] {
  return period.alarms.map(({ happenedAt, by, fact }) =>
    t.words.records.deviation(t.f.timeDown(happenedAt), by, t.words.fact(fact, t.f)),
  );
}

function partLines(t: Telling, period: PeriodRecord): readonly string[] {
  const { records } = t.words;
  return [
    ...period.coats.map(({ part, batch, entry }) => {
      const method = entry.fact.type === 'CoatApplied' ? entry.fact.method : '';
      return records.coated(part, batch, method, t.f.timeDown(entry.happenedAt), entry.by);
    }),
    ...(period.released.length === 0 ? [] : [records.released(t.f.list(period.released))]),
    ...period.held.map(({ part, entry }) => records.held(part, t.words.fact(entry.fact, t.f))),
  ];
}

function canLines(t: Telling, period: PeriodRecord): readonly string[] {
  return period.cans.map(({ can, pouredGrams, leftGrams }) =>
    t.words.records.can(can.number, letter(can.component), can.lot, t.f.mass(pouredGrams), t.f.mass(leftGrams)),
  );
}

function airLines(t: Telling, period: PeriodRecord): readonly string[] {
  return period.air.map(({ happenedAt, fact }) =>
    t.words.records.air(t.f.timeDown(happenedAt), t.words.fact(fact, t.f)),
  );
}

function ringLines(t: Telling, { rings }: PeriodRecord): readonly string[] {
  if (rings.slowest === undefined) return [];
  return [t.words.records.slowest(rings.slowest.key, t.f.minutesUp(rings.slowest.minutes))];
}

function correctionLines(t: Telling, period: PeriodRecord): readonly string[] {
  return period.corrections.map(({ entry, correction }) => {
    const { was, is } = changedBy(t, entry, correction);
    return t.words.records.correction(t.f.timeDown(correction.at), correction.by, was, is, correction.why);
  });
}
