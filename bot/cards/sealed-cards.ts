// Cans that stand sealed: received, told in the stock, and what is said of them when one is opened.

import type { Can } from '../../core/can/can.ts';
import { daysTo, expiryNoticeDays } from '../../core/can/can-stock.ts';
import type { CommandOf } from '../../core/commands.ts';
import type { Recorded } from '../../core/execute.ts';
import { isFailed } from '../../core/failed.ts';
import { known } from '../../core/known.ts';
import { type OfLot, recalledAt } from '../../core/lot-recalls.ts';
import { isOfLot, type Sealed } from '../../core/sealed-stock.ts';
import { sheetFor } from '../../core/shop.ts';
import { type Card, makeCard } from './card.ts';
import { lineOf, type Telling, tap, undoTap } from './card-context.ts';

export function receivedCard(telling: Telling, command: CommandOf<'received'>, outcome: Recorded): Card {
  const { material } = telling.words;
  const { component, lot, count = 1, grams, sheet } = command;
  const [envelope] = outcome.envelopes;
  const stock = telling.shop.crew.sealed.filter(({ seq }) => seq === envelope?.seq);
  const urgent = stock.some((each) => sealedNeedsSomebody(telling, each));
  return makeCard(material.received(count, component, lot, grams, telling.figures), urgent ? 'warn' : 'good', {
    lines: stock.map((each) => sealedLine(telling, each)),
    actions: [
      tap(telling, 'open-one', lineOf(telling, { command: { verb: 'open', component, lot, ...known({ sheet }) } })),
      tap(telling, 'stock', 'stock'),
      ...outcome.envelopes.slice(0, 1).map(({ seq }) => undoTap(telling, seq)),
    ],
  });
}

/** Of what is left of them. */
export function sealedInStock({ shop }: Telling): readonly Sealed[] {
  return shop.crew.sealed.filter(({ left }) => left > 0);
}

export function sealedNeedsSomebody({ shop, now }: Telling, { expires }: Sealed): boolean {
  const days = daysTo(expires, shop.crew.zone, now);
  return days !== undefined && days <= expiryNoticeDays;
}

export function sealedLine(telling: Telling, { left, component, lot, grams, expires, sheet: id }: Sealed): string {
  const { material } = telling.words;
  const { shop, now, figures } = telling;
  const days = daysTo(expires, shop.crew.zone, now);
  const sheet = sheetFor(shop, id);
  const told = { left, component, lot, grams, sheet: isFailed(sheet) ? id : sheet.name };
  const details = [
    ...recalledDetail(telling, { lot, component }),
    ...(days === undefined ? [] : [material.expiresIn(days)]),
  ];
  return material.sealedRow(told, details, figures);
}

/** That its lot is called back. */
export const recalledDetail = ({ shop, words, now }: Telling, of: OfLot): readonly string[] =>
  recalledAt(shop.crew.recalls, of, now) === undefined ? [] : [words.parts.held.recalls.inStock];

/** What the record then has left of its lot; of a crew that tells what it receives, also that it had none. */
export function sealedLeftLines({ shop, words }: Telling, { component, sheet, lot, entries }: Can): readonly string[] {
  const kept = shop.crew.sealed.filter((each) => each.component === component && each.sheet === sheet.id);
  if (kept.length === 0) return [];
  const ofLot = kept.filter((each) => isOfLot(each, lot));
  const isFrom = entries.some(({ fact }) => fact.type === 'CanOpened' && fact.delivery !== undefined);
  const left = ofLot.reduce((sum, each) => sum + each.left, 0);
  return [isFrom ? words.material.sealedLeft(lot, left) : words.material.noneSealed(lot)];
}
