// Readings of a place: what they say, and which clocks they moved.

import { batchStatus } from '../../core/batch/batch-status.ts';
import { isAct } from '../../core/history.ts';
import type { PlaceName } from '../../core/ids.ts';
import { sheetsAtHand } from '../../core/part/surface-life.ts';
import { airServing } from '../../core/place/place.ts';
import { airBreaches } from '../../core/products/sheet-air.ts';
import { editionOfToday } from '../../core/rule-editions.ts';
import { standing } from '../../core/settled.ts';
import { liveBatches } from '../../core/shop.ts';
import { airFacts } from './air-facts.ts';
import { pastPotLines } from './batch-cards.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf } from './facts.ts';

export function airCard(telling: Telling, place: PlaceName, title: string): Card {
  const breached = limitsBroken(telling, place);
  return makeCard(title, breached.length > 0 ? 'warn' : 'plain', {
    facts: [...nightFacts(telling, place), ...airFacts(telling, place)],
    lines: [...breached, ...movedClocks(telling, place)],
  });
}

/** Where the night's lowest is what was said last of this place. */
function nightFacts(telling: Telling, placeName: PlaceName): readonly CardFact[] {
  const said = (telling.shop.places.get(placeName)?.entries ?? []).filter(isAct);
  const last = said.toSorted((a, b) => a.seq - b.seq).at(-1);
  return last?.fact.type === 'LowestRead' ? factsOf(telling, { 'night-lowest': last.fact.lowestCelsius }) : [];
}

/** The limits of the sheets at hand. */
function limitsBroken(telling: Telling, placeName: PlaceName): readonly string[] {
  const read = airServing(
    telling.shop.places.get(placeName),
    telling.now,
    standing(telling.shop.crew, 'air-limit').minutes,
  );
  return sheetsAtHand(telling.shop).flatMap((sheet) => {
    const breaches = airBreaches(sheet, read, editionOfToday);
    return breaches.length === 0
      ? []
      : [`${sheet.name}: ${telling.words.objection({ code: 'air-outside', breaches }, telling.figures)}`];
  });
}

function movedClocks(telling: Telling, place: PlaceName): readonly string[] {
  const { replies } = telling.words;
  return liveBatches(telling.shop)
    .filter((batch) => batch.place === place)
    .flatMap((batch) => {
      const status = batchStatus(telling, batch);
      const { phase, blend, pot } = status;
      if (phase.is === 'over') return [];
      const stirs =
        phase.is === 'blending' && blend?.dueAt !== undefined ? { ...blend, dueAt: blend.dueAt } : undefined;
      return [
        ...(stirs === undefined ? [] : [replies.batchMoves(batch.number, stirs.dueAt, telling.figures)]),
        ...(pot === undefined ? [] : [replies.batchPotEnds(batch.number, pot.dueAt, telling.figures)]),
        ...(stirs === undefined ? [] : pastPotLines(telling, status)),
      ];
    });
}
