// Readings of a place: what they say, and which clocks they moved.

import { batchStatus } from '../../core/batch/batch-status.ts';
import { isAct } from '../../core/history.ts';
import type { PlaceName } from '../../core/ids.ts';
import { phaseOfPart } from '../../core/part/part.ts';
import { partStatus } from '../../core/part/part-status.ts';
import { humiditySince } from '../../core/products/sheet-air.ts';
import { airServingIn, batchOf, byName, liveBatches, liveParts } from '../../core/shop.ts';
import { airFacts, limitsBroken } from './air-facts.ts';
import { atWorstLines, batchLine, pastPotLines } from './batch-cards.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { factsOf } from './facts.ts';

export function airCard(telling: Telling, place: PlaceName, title: string): Card {
  const breached = limitsBroken(telling, airServingIn(telling.shop, place, telling.now));
  return makeCard(title, breached.length > 0 ? 'warn' : 'plain', {
    facts: [...nightFacts(telling, place), ...airFacts(telling, place)],
    lines: [
      ...humidityLines(telling, place),
      ...breached,
      ...movedClocks(telling, place),
      ...movedCures(telling, place),
    ],
  });
}

/** Read before the temperature: whose air it was, and what it would be now. */
export function humidityLines({ shop, now, words, figures }: Telling, place: PlaceName): readonly string[] {
  const read = airServingIn(shop, place, now);
  const since = humiditySince(read);
  const { celsius, humidityCelsius, humidityReadAt } = read;
  if (since === undefined || celsius === undefined || humidityCelsius === undefined || humidityReadAt === undefined)
    return [];
  return [words.replies.humidityBefore({ at: humidityReadAt, humidityCelsius, celsius, since }, figures)];
}

/** Where the night's lowest is what was said last of this place. */
function nightFacts(telling: Telling, placeName: PlaceName): readonly CardFact[] {
  const said = (telling.shop.places.get(placeName)?.entries ?? []).filter(isAct);
  const last = said.toSorted((a, b) => a.seq - b.seq).at(-1);
  return last?.fact.type === 'LowestRead' ? factsOf(telling, { 'night-lowest': last.fact.lowestCelsius }) : [];
}

/** What cures in that room, each by name with when it then rings. */
function movedCures(telling: Telling, place: PlaceName): readonly string[] {
  const curing = byName(liveParts(telling.shop)).filter((part) => {
    const phase = phaseOfPart(part);
    return phase.is === 'curing' && phase.cure.way === 'room' && batchOf(telling.shop, part)?.place === place;
  });
  return curing.map((part) => {
    const { errs = 'at-least', dueAt } = partStatus(telling, part).cure?.clock ?? {};
    return telling.words.parts.curesMorning(part.name, dueAt && { errs, dueAt }, telling.figures);
  });
}

function movedClocks(telling: Telling, place: PlaceName): readonly string[] {
  const { replies } = telling.words;
  return liveBatches(telling.shop)
    .filter((batch) => batch.place === place)
    .flatMap((batch) => {
      const status = batchStatus(telling, batch);
      const { phase, blend, pot } = status;
      const worst = atWorstLines(telling, batch);
      if (phase.is === 'over') return worst.length === 0 ? [] : [batchLine(telling, batch)];
      const stirs =
        phase.is === 'blending' && blend?.dueAt !== undefined ? { ...blend, dueAt: blend.dueAt } : undefined;
      return [
        ...(stirs === undefined ? [] : [replies.batchMoves(batch.number, stirs.dueAt, telling.figures)]),
        ...(pot === undefined
          ? []
          : [[replies.batchPotEnds(batch.number, pot.dueAt, telling.figures), ...worst].join(' ')]),
        ...(stirs === undefined ? [] : pastPotLines(telling, status)),
      ];
    });
}
