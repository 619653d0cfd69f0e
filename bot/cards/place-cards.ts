// Readings of a place: what they say, and which clocks they moved.

import { phaseOf } from '../../core/batch/batch.ts';
import { blendDueAt, potLifeTimes } from '../../core/batch/batch-clocks.ts';
import type { PlaceName } from '../../core/ids.ts';
import { airServing } from '../../core/place/place.ts';
import { airBreaches } from '../../core/products/sheet-air.ts';
import { airLog, liveBatches } from '../../core/shop.ts';
import { airFacts } from './air-facts.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './telling.ts';

export function airCard(t: Telling, place: PlaceName, title: string): Card {
  const breached = limitsBroken(t, place);
  return makeCard(title, breached.length > 0 ? 'warn' : 'plain', {
    facts: airFacts(t, place),
    lines: [...breached, ...movedClocks(t, place)],
  });
}

/** The default sheet's limits, and those of every live batch there. */
function limitsBroken(t: Telling, placeName: PlaceName): readonly string[] {
  const read = airServing(t.shop.places.get(placeName), t.now, t.shop.crew.airLimitMinutes);
  const found = t.shop.shelf.get(t.shop.crew.defaultSheet);
  const byDefault = found?.kind === 'sheet' ? [found.sheet] : [];
  const live = liveBatches(t.shop).map((batch) => batch.sheet);
  const sheets = new Map([...byDefault, ...live].map((sheet) => [sheet.name, sheet]));
  return [...sheets.values()].flatMap((sheet) => {
    const breaches = airBreaches(sheet, read);
    return breaches.length === 0 ? [] : [`${sheet.name}: ${t.words.objection({ code: 'air-outside', breaches }, t.f)}`];
  });
}

function movedClocks(t: Telling, place: PlaceName): readonly string[] {
  const { replies } = t.words;
  const air = airLog(t.shop, place);
  return liveBatches(t.shop)
    .filter((batch) => batch.place === place)
    .flatMap((batch) => {
      const stirs = phaseOf(batch).is === 'blending' ? blendDueAt(batch, air) : undefined;
      const pot = batch.thickened === undefined ? potLifeTimes(batch, air) : undefined;
      return [
        ...(stirs === undefined ? [] : [replies.batchMoves(batch.number, t.f.timeUp(stirs))]),
        ...(pot === undefined ? [] : [replies.batchPotEnds(batch.number, t.f.timeDown(pot.endAt))]),
      ];
    });
}
