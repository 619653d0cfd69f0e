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
  readonly parts: readonly { readonly label: string; readonly by: 'day' | 'month'; readonly vocGrams: Grams }[];
  readonly limits: readonly LimitStanding[];
}

export function ledgerCard(telling: Telling, { span, rows, totals, parts, limits }: LedgerTold): Card {
  const { records } = telling.words;
  const near = limits.some(({ state }) => state !== 'below');
  const title = records.ledger(span.first, span.last);
  return makeCard(title, near ? 'warn' : 'plain', {
    facts: factsOf(telling, { voc: totals.vocGrams, 'materials-total': totals.usedGrams }),
    lines: [
      ...limitLines(telling, limits),
      ...(rows.length === 0 ? [records.idle] : rows.flatMap((row) => rowLines(telling, row))),
      ...(parts.length < 2
        ? []
        : parts.map(({ label, by, vocGrams }) =>
            by === 'day'
              ? records.ledgerDay(label, telling.figures.mass(vocGrams))
              : records.ledgerMonth(label, telling.figures.mass(vocGrams)),
          )),
      ...(limits.length === 0 ? [records.noLimits] : []),
      records.ledgerRule,
    ],
    actions: [tap(telling, 'export', `export ${span.first} to ${span.last} csv`)],
  });
}

export function limitLines(telling: Telling, limits: readonly LimitStanding[]): readonly string[] {
  const { records } = telling.words;
  return limits.flatMap(({ limit, usedGrams, share, state }) => [
    records.limit(
      records.limitPer[limit.per],
      telling.figures.mass(limit.grams),
      telling.figures.mass(usedGrams),
      telling.figures.percent(share * 100),
    ),
    ...(state === 'near' ? [records.limitNear] : state === 'over' ? [records.limitOver] : []),
  ]);
}

function rowLines(telling: Telling, row: LedgerRow): readonly string[] {
  const { records } = telling.words;
  const volume = row.litres === undefined ? records.ledgerNoVolume : telling.figures.volume(row.litres);
  const amount = `${volume}, ${telling.figures.mass(row.grams)}`;
  return [
    records.ledgerRow(records.ledgerKinds[row.kind], row.name, amount, telling.figures.mass(row.vocGrams)),
    ...(row.figure === 'none' ? [records.ledgerNoFigure] : []),
    ...(row.actual === undefined
      ? []
      : [
          records.ledgerContent(
            content(telling, row.actual),
            row.lessExempt === undefined ? records.noExempt : content(telling, row.lessExempt),
          ),
        ]),
    ...(row.density === undefined ? [] : [records.ledgerDensity(content(telling, row.density * 1000))]),
    ...(row.volumeSolidsPercent === undefined
      ? []
      : [records.ledgerSolids(telling.figures.percent(row.volumeSolidsPercent))]),
  ];
}

/** Rounded up: a content is never told lower than it is. */
function content(telling: Telling, value: number): string {
  return `${telling.figures.count(gramsPerLitre(Math.max(0, Math.ceil(value - 1e-6))))} g/L`;
}
