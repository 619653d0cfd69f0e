// What is left in which can, and what of it needs somebody: asked by `stock`, told in the morning.

import { leftGrams } from '../../core/can/can.ts';
import { expiryNoticeDays, openNoticeDays, type StockRow, stockOf } from '../../core/can/can-stock.ts';
import type { Component } from '../../core/components.ts';
import { statusOf } from '../../core/status.ts';
import { grams } from '../../core/units.ts';
import { gasWords } from './can-cards.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf } from './facts.ts';
import { nextTaps } from './next-taps.ts';
import { recalledDetail, sealedInStock, sealedLine, sealedNeedsSomebody } from './sealed-cards.ts';

export function stockCard(telling: Telling): Card {
  const rows = stockOf(telling.shop, telling.now);
  const { material } = telling.words;
  const sealed = sealedInStock(telling);
  if (rows.length + sealed.length === 0)
    return makeCard(material.stock, 'plain', { lines: [material.noStock(telling.figures)] });
  const urgent = rows.filter(needsSomebody);
  const isUrgent = urgent.length > 0 || sealed.some((each) => sealedNeedsSomebody(telling, each));
  return makeCard(material.stock, isUrgent ? 'warn' : 'plain', {
    facts: totals(telling, rows),
    lines: [...rows.map((row) => stockLine(telling, row)), ...sealed.map((each) => sealedLine(telling, each))],
    actions: urgent
      .flatMap((row) => nextTaps(telling, statusOf.can(telling, row.can).next()).slice(0, 1))
      .map((tap, i) => ({ ...tap, id: `${tap.id}-${i + 1}` })),
  });
}

function totals(telling: Telling, rows: readonly StockRow[]): readonly CardFact[] {
  const total = (component: Component) =>
    grams(rows.filter(({ can }) => can.component === component).reduce((sum, { can }) => sum + leftGrams(can), 0));
  return factsOf(telling, { cans: rows.length, 'part-a-stock': total('part-a'), 'part-b-stock': total('part-b') });
}

/** What needs somebody, with its taps, for a home tab; `undefined` where nothing does. */
export function cansCard(telling: Telling): Card | undefined {
  const urgent = stockOf(telling.shop, telling.now).filter(needsSomebody);
  if (urgent.length === 0) return undefined;
  const lines = urgent.map((row) => stockLine(telling, row));
  return makeCard(telling.words.chat.cansTitle, 'warn', { lines, actions: stockCard(telling).actions });
}

/** The morning's lines: only what needs somebody. */
export function morningLines(telling: Telling): readonly string[] {
  const urgent = [
    ...stockOf(telling.shop, telling.now)
      .filter(needsSomebody)
      .map((row) => stockLine(telling, row)),
    ...sealedInStock(telling)
      .filter((each) => sealedNeedsSomebody(telling, each))
      .map((each) => sealedLine(telling, each)),
  ];
  return urgent.length === 0 ? [telling.words.material.morningNothing] : urgent;
}

function needsSomebody({ gas, isLow, daysToExpiry, daysOpenLeft }: StockRow): boolean {
  const expires = daysToExpiry !== undefined && daysToExpiry <= expiryNoticeDays;
  const stale = daysOpenLeft !== undefined && daysOpenLeft <= openNoticeDays;
  return stale || gas.is === 'doubtful' || gas.is === 'reacts' || gas.is === 'lid-off' || isLow || expires;
}

function stockLine(telling: Telling, row: StockRow): string {
  const { material } = telling.words;
  const { can, daysOpen, daysOpenLeft, daysToExpiry, isLow, headspace } = row;
  const details = [
    ...recalledDetail(telling, can),
    material.openDays(daysOpen),
    ...(daysOpenLeft === undefined || daysOpenLeft > openNoticeDays ? [] : [material.openLeft(daysOpenLeft)]),
    ...(daysToExpiry === undefined ? [] : [material.expiresIn(daysToExpiry)]),
    gasWords(telling, row.gas),
    ...(headspace === undefined || row.gas.is === 'not-needed'
      ? []
      : [material.gasFor(headspace.headspaceLitres, headspace.gasLitres, telling.figures)]),
    ...(isLow ? [material.low] : []),
  ].filter((detail) => detail !== '');
  return material.stockRow(can.number, can.component, can.lot, can.sheet.name, row.leftGrams, details, telling.figures);
}
