// A stretch of days in full: the page behind the day, the week, the month. Deviations and permissions stand first.

import { nameIn } from '../../core/ids.ts';
import type { Head } from '../../core/ports.ts';
import type { PeriodRecord } from '../../core/records/period.ts';
import type { LedgerTotals } from '../../core/records/solvent-ledger.ts';
import type { LimitStanding } from '../../core/records/voc-limits.ts';
import { whoApplied } from '../../core/who-applied.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { asTold, changedBy } from './corrected.ts';
import { deviationLines } from './deviation-lines.ts';
import { factsOf } from './facts.ts';
import { firstShiftLines } from './first-shift-card.ts';
import { limitLines } from './ledger-card.ts';

export interface PeriodTold {
  readonly period: PeriodRecord;
  readonly ledger: LedgerTotals;
  readonly limits: readonly LimitStanding[];
  readonly end: Head;
}

/** A month of readings is no card: so many lines of each kind, the export has the rest. */
const mostLines = 60;

export function periodCard(telling: Telling, { period, ledger, limits, end }: PeriodTold): Card {
  const { records } = telling.words;
  const { span } = period;
  const title = records.span(span.first, span.last, telling.figures);
  if (period.idle && period.rings.count === 0) return makeCard(title, 'plain', { lines: [records.idle] });
  const near = limits.some(({ state }) => state !== 'below');
  return makeCard(title, period.deviations.length > 0 || near ? 'warn' : 'plain', {
    facts: periodFacts(telling, period, ledger),
    lines: [
      ...capped(telling, deviationLines(telling, period.deviations)),
      ...capped(telling, alarmLines(telling, period)),
      ...limitLines(telling, limits),
      ...capped(telling, batchLines(telling, period)),
      ...capped(telling, partLines(telling, period)),
      ...capped(telling, firstShiftLines(telling, period)),
      ...capped(telling, canLines(telling, period)),
      ...capped(telling, airLines(telling, period)),
      ...ringLines(telling, period),
      ...capped(telling, correctionLines(telling, period)),
      ...(end.seq === 0 ? [] : [records.lastHashShort(end.seq, end.hash)]),
    ],
    actions: [
      tap(telling, 'export', `export ${span.first} to ${span.last} csv`),
      ...(span.first === span.last ? [] : [tap(telling, 'voc', `voc ${span.first} to ${span.last}`)]),
    ],
  });
}

export function capped(telling: Telling, lines: readonly string[]): readonly string[] {
  const rest = lines.length - mostLines;
  return rest <= 0 ? lines : [...lines.slice(0, mostLines), telling.words.records.more(rest)];
}

function periodFacts(telling: Telling, period: PeriodRecord, ledger: LedgerTotals): readonly CardFact[] {
  const { totals, rings } = period;
  return factsOf(telling, {
    batches: period.batches.length,
    parts: new Set(period.coats.map(({ fact }) => fact.part)).size,
    'planned-total': totals.plannedGrams,
    'mixed-total': totals.mixedGrams,
    'applied-total': totals.appliedGrams,
    'caught-total': totals.caughtGrams,
    'left-over-total': totals.thrownGrams,
    'coated-area': totals.coatedSquareMetres,
    voc: ledger.vocGrams,
    'materials-total': ledger.usedGrams,
    rings: rings.count,
    'rings-late': rings.late,
    'rings-unanswered': rings.unanswered,
    'answer-median': rings.medianMinutes,
    deviations: period.deviations.length,
    permissions: period.deviations.filter(({ permitted }) => permitted !== undefined).length,
    corrections: period.corrections.length,
  });
}

function batchLines(telling: Telling, period: PeriodRecord): readonly string[] {
  const { records } = telling.words;
  const { figures } = telling;
  return period.batches.flatMap((material) => {
    const { batch, blend, ratioErrorPercent } = material;
    const n = batch.number;
    const coated = { area: material.coatedSquareMetres, without: material.partsWithoutArea };
    return [
      records.yield(n, material.plannedGrams, material.mixedGrams, figures),
      ...(ratioErrorPercent === undefined ? [] : [records.ratio(n, ratioErrorPercent, figures)]),
      ...(blend.wantedMinutes === undefined || batch.weighing === undefined
        ? []
        : [records.stir(n, blend.wantedMinutes, blend.givenMinutes, figures)]),
      ...(material.caughtGrams > 0 ? [records.caught(n, material.caughtGrams, figures)] : []),
      ...(material.appliedGrams === undefined
        ? material.mixedGrams > 0
          ? [records.notSaidLeft(n)]
          : []
        : [records.applied(n, material.appliedGrams, coated, figures)]),
      ...(material.thrown === undefined || material.thrown.grams === 0
        ? []
        : [records.thrown(n, material.thrown.grams, material.thrown.why, figures)]),
    ];
  });
}

function alarmLines(telling: Telling, period: PeriodRecord): readonly string[] {
  return period.alarms.map(({ happenedAt, by, fact }) =>
    telling.words.records.deviation(happenedAt, by, telling.words.fact(fact, telling.figures), telling.figures),
  );
}

function partLines(telling: Telling, period: PeriodRecord): readonly string[] {
  const { records } = telling.words;
  return [
    ...period.coats.map((entry) =>
      records.coated(entry.fact, entry.happenedAt, whoApplied(telling.shop, entry), telling.figures),
    ),
    ...(period.released.length === 0 ? [] : [records.released(period.released, telling.figures)]),
    ...[...period.held, ...period.disposed].map(({ stream, fact }) =>
      records.held(nameIn(stream), telling.words.fact(fact, telling.figures)),
    ),
  ];
}

function canLines(telling: Telling, period: PeriodRecord): readonly string[] {
  return period.cans.map(({ can, pouredGrams, leftGrams }) =>
    telling.words.records.can(can, pouredGrams, leftGrams, telling.figures),
  );
}

function airLines(telling: Telling, period: PeriodRecord): readonly string[] {
  return period.air.map(({ happenedAt, fact }) =>
    telling.words.records.air(happenedAt, telling.words.fact(fact, telling.figures), telling.figures),
  );
}

function ringLines(telling: Telling, { rings }: PeriodRecord): readonly string[] {
  if (rings.slowest === undefined) return [];
  return [telling.words.records.slowest(rings.slowest.key, rings.slowest.minutes, telling.figures)];
}

function correctionLines(telling: Telling, period: PeriodRecord): readonly string[] {
  return period.corrections.map(({ entry, correction }) => {
    const { was, is } = changedBy(telling, entry, correction);
    return telling.words.records.correction(asTold(telling, correction), was, is, telling.figures);
  });
}
