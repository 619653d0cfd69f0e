// The solvent and VOC ledger as a card: a row a material with the fields that the rules ask for, the days or months,
// and how near the shop's own limits are.

import type { LedgerRow, LedgerTotals } from '../../core/records/solvent-ledger.ts';
import type { Span } from '../../core/records/span.ts';
import type { LimitStanding } from '../../core/records/voc-limits.ts';
import { type Grams, gramsPerLitre } from '../../core/units.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { factsOf } from './facts.ts';

export interface LedgerTold {
  readonly span: Span;
  readonly rows: readonly LedgerRow[];
  readonly totals: LedgerTotals;
  /** By day, or by month where the span is longer than two months. */
  readonly parts: readonly { readonly label: string; readonly vocGrams: Grams }[];
  readonly limits: readonly LimitStanding[];
}

export function ledgerCard(telling: Telling, { span, rows, totals, parts, limits }: LedgerTold): Card {
  const { records } = telling.words;
  const near = limits.some(({ state }) => state !== 'below');
  const title = records.ledger(span.first, span.last, telling.figures);
  return makeCard(title, near ? 'warn' : 'plain', {
    facts: factsOf(telling, { voc: totals.vocGrams, 'materials-total': totals.usedGrams }),
    lines: [
      ...limitLines(telling, limits),
      ...(rows.length === 0 ? [records.idle] : rows.flatMap((row) => rowLines(telling, row))),
      ...(parts.length < 2
        ? []
        : parts.map(({ label, vocGrams }) => records.ledgerPart(label, vocGrams, telling.figures))),
      ...(limits.length === 0 ? [records.noLimits(telling.figures)] : []),
      records.ledgerRule(telling.shop.crew.spray.law.frame),
    ],
    actions: [tap(telling, 'export', `export ${span.first} to ${span.last} csv`)],
  });
}

export function limitLines(telling: Telling, limits: readonly LimitStanding[]): readonly string[] {
  const { records } = telling.words;
  return limits.flatMap(({ limit, usedGrams, share, state }) => [
    records.limit(limit, usedGrams, share * 100, telling.figures),
    ...(state === 'near' ? [records.limitNear] : state === 'over' ? [records.limitOver] : []),
  ]);
}

function rowLines({ words: { records }, figures }: Telling, row: LedgerRow): readonly string[] {
  return [
    records.ledgerRow(row, figures),
    ...(row.figure === 'none' ? [records.ledgerNoFigure] : []),
    ...(row.actual === undefined ? [] : [records.ledgerContent(row.actual, row.lessExempt, figures)]),
    ...(row.density === undefined ? [] : [records.ledgerDensity(gramsPerLitre(row.density * 1000), figures)]),
    ...(row.volumeSolidsPercent === undefined ? [] : [records.ledgerSolids(row.volumeSolidsPercent, figures)]),
  ];
}
