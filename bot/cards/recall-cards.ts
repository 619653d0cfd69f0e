// A lot that is called back: what of it stands here, what it went on, and what is to be done with it.

import { recalledIn } from '../../core/can/recalled-in.ts';
import type { CommandOf } from '../../core/commands.ts';
import type { Recorded } from '../../core/execute.ts';
import { nameIn, nounOf } from '../../core/ids.ts';
import { isOfLot } from '../../core/sealed-stock.ts';
import { liveBatches, liveCans } from '../../core/shop.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';

export function recalledCard(telling: Telling, command: CommandOf<'recall'>, { envelopes }: Recorded): Card {
  const { shop, figures, words } = telling;
  const { recalls } = words.parts.held;
  const { lot, component, why } = command;
  const isOf = (each: { readonly lot: string; readonly component: string }) =>
    isOfLot(each, lot) && (component === undefined || each.component === component);
  const cans = liveCans(shop).filter(isOf);
  const sealed = shop.crew.sealed.filter(isOf).reduce((sum, { left }) => sum + left, 0);
  const held = envelopes.flatMap(({ stream, body }) =>
    body.type === 'PartHeld' && nounOf(stream) === 'part' ? [nameIn(stream)] : [],
  );
  const pots = liveBatches(shop).flatMap((batch) =>
    recalledIn(shop, batch, telling.now) === undefined ? [] : [batch.number],
  );
  const isUnknown = ![...shop.cans.values(), ...shop.crew.sealed].some(isOf);
  return makeCard(recalls.title(lot), 'warn', {
    lines: [
      recalls.why(why),
      ...(isUnknown ? [recalls.unknown(lot)] : [recalls.held(held, figures)]),
      ...(pots.length === 0 ? [] : [recalls.pots(pots, figures)]),
      ...(cans.length === 0
        ? []
        : [
            recalls.aside(
              cans.map(({ number }) => number),
              figures,
            ),
          ]),
      ...(sealed === 0 ? [] : [recalls.sealed(sealed)]),
      ...(isUnknown ? [] : [recalls.nothingMore]),
    ],
    actions: [
      tap(telling, 'trace', `trace lot ${lot}`),
      ...(held.length === 0 ? [] : [tap(telling, 'on-hold', 'how-stands on-hold')]),
    ],
  });
}

export function recallOverCard(telling: Telling, command: CommandOf<'recall-over'>): Card {
  const { recalls } = telling.words.parts.held;
  const { lot, why } = command;
  return makeCard(recalls.over(lot), 'plain', {
    lines: [recalls.why(why), recalls.holdsStay],
    actions: [tap(telling, 'on-hold', 'how-stands on-hold'), tap(telling, 'trace', `trace lot ${lot}`)],
  });
}
