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
import { type Telling, temperatureFact } from './card-context.ts';

export function airCard(t: Telling, place: PlaceName, title: string): Card {
  const breached = limitsBroken(t, place);
  return makeCard(title, breached.length > 0 ? 'warn' : 'plain', {
    facts: [...nightFacts(t, place), ...airFacts(t, place)],
    lines: [...breached, ...movedClocks(t, place)],
  });
}

/** Where the night's lowest is what was said last of this place. */
function nightFacts(t: Telling, placeName: PlaceName): readonly CardFact[] {
  const said = (t.shop.places.get(placeName)?.entries ?? []).filter(isAct);
  const last = said.toSorted((a, b) => a.seq - b.seq).at(-1);
  return last?.fact.type === 'LowestRead' ? [temperatureFact(t, 'night-lowest', last.fact.lowestCelsius)] : [];
}

/** The limits of the sheets at hand. */
function limitsBroken(t: Telling, placeName: PlaceName): readonly string[] {
  const read = airServing(t.shop.places.get(placeName), t.now, standing(t.shop.crew, 'air-limit').minutes);
  return sheetsAtHand(t.shop).flatMap((sheet) => {
    const breaches = airBreaches(sheet, read, editionOfToday);
    return breaches.length === 0 ? [] : [`${sheet.name}: ${t.words.objection({ code: 'air-outside', breaches }, t.f)}`];
  });
}

function movedClocks(t: Telling, place: PlaceName): readonly string[] {
  const { replies } = t.words;
  return liveBatches(t.shop)
    .filter((batch) => batch.place === place)
    .flatMap((batch) => {
      const status = batchStatus(t, batch);
      const { phase, blend, pot } = status;
      if (phase.is === 'over') return [];
      const stirs =
        phase.is === 'blending' && blend?.dueAt !== undefined ? { ...blend, dueAt: blend.dueAt } : undefined;
      return [
        ...(stirs === undefined ? [] : [replies.batchMoves(batch.number, stirs.dueAt, t.f)]),
        ...(pot === undefined ? [] : [replies.batchPotEnds(batch.number, pot.dueAt, t.f)]),
        ...(stirs === undefined ? [] : pastPotLines(t, status)),
      ];
    });
}
