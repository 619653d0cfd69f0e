// A part's answers: noted, coated, dry, curing, read, out, released or held.

import { methodRows } from '../../core/methods.ts';
import { unlifted } from '../../core/part/failed-readings.ts';
import { type Part, phaseOfPart } from '../../core/part/part.ts';
import { cureClock, flashTimes, openUntil, recoatTimes } from '../../core/part/part-clocks.ts';
import { releaseRules } from '../../core/part/part-rules.ts';
import { editionOfToday } from '../../core/rule-editions.ts';
import { objectionsTo } from '../../core/rules.ts';
import { airLog, batchOf } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import { notAfterFact, notBeforeFact, type Telling, tap } from './card-context.ts';
import { cureFacts, cureLines } from './cure-facts.ts';
import { bareTaps, surfaceFacts, surfaceOfCoat } from './surface-cards.ts';

/** The taps that this part allows next. */
export function partTaps(t: Telling, part: Part): readonly CardAction[] {
  const { name } = part;
  const phase = phaseOfPart(part);
  switch (phase.is) {
    case 'bare':
      return bareTaps(t, part);
    case 'flashing': {
      const open = openUntilOf(t, part);
      const again = tap(t, 'touch-up', `coat ${name} ${phase.coat.batch} ${phase.coat.method} touch-up`);
      const touches = open !== undefined && t.now <= open && !methodRows[phase.coat.method].once;
      return [tap(t, 'dry', `dry ${name}`), ...(touches ? [again] : []), tap(t, 'wet', `wet ${name} {wet-films}um`)];
    }
    case 'dry': {
      const cure = batchOf(t.shop, part)?.sheet.cure;
      return [
        ...(cure?.oven === undefined || cure.oven.atCelsius > (part.details.highestCelsius ?? cure.oven.atCelsius)
          ? []
          : [tap(t, 'cure-oven', `cure ${name} oven ${cure.oven.atCelsius}C`)]),
        ...(cure?.room === undefined ? [] : [tap(t, 'cure-room', `cure ${name} room`)]),
      ];
    }
    case 'curing':
      return [
        ...(phase.cure.way === 'oven'
          ? [tap(t, 'temp', `temp ${name} {part-temperature}C`), tap(t, 'door', `door ${name} {minutes}m`)]
          : []),
        tap(t, 'out', `out ${name}`),
      ];
    case 'cured':
      return [
        ...releaseTaps(t, part),
        tap(t, 'film', `film ${name} {dry-films}um`),
        tap(t, 'hold', `hold ${name} {why}`),
      ];
    case 'released':
      return [];
  }
}

/** Where the rules would object a lead may lift that, with a reason; where even that is nobody's, nothing is offered. */
function releaseTaps(t: Telling, part: Part): readonly CardAction[] {
  const { sheet, place } = batchOf(t.shop, part) ?? {};
  const release = { part, sheet, air: airLog(t.shop, place), at: t.now, unlifted: unlifted(t.shop, part) };
  if (objectionsTo(releaseRules, release, editionOfToday).length === 0)
    return [tap(t, 'release', `release ${part.name}`)];
  return part.verdict?.is === 'held' ? [tap(t, 'lift', `release ${part.name} permit {why}`)] : [];
}

/** Where the part stands: flash-off, recoat window, cure. */
export function partFacts(t: Telling, part: Part): readonly CardFact[] {
  const batch = batchOf(t.shop, part);
  const coat = part.coats.at(-1);
  if (batch === undefined || coat === undefined) return surfaceFacts(t, part);
  const { sheet } = batch;
  const facts: CardFact[] = [];
  const phase = phaseOfPart(part).is;
  if (phase === 'flashing' || phase === 'dry') {
    const flash = flashTimes(sheet, coat.at);
    facts.push(notBeforeFact(t, 'flash-least-at', flash.leastAt), notAfterFact(t, 'flash-most-at', flash.mostAt));
  }
  const open = openUntilOf(t, part);
  if (phase === 'flashing' && open !== undefined && t.now <= open) facts.push(notAfterFact(t, 'open-until', open));
  const recoat = part.verdict?.is === 'released' ? undefined : recoatTimes(sheet, coat);
  if (recoat !== undefined) {
    facts.push(
      notBeforeFact(t, 'recoat-opens-at', recoat.opensAt),
      notAfterFact(t, 'recoat-closes-at', recoat.closesAt),
    );
  }
  return [...facts, ...cureFacts(t, part, sheet, airLog(t.shop, batch.place))];
}

/** Until when another pass is the same coat; `undefined` where nothing is wet or the sheet gives no such time. */
function openUntilOf(t: Telling, part: Part): EpochMs | undefined {
  const batch = batchOf(t.shop, part);
  const coat = part.coats.at(-1);
  return batch === undefined || coat === undefined || part.dryAt !== undefined
    ? undefined
    : openUntil(batch.sheet, coat, airLog(t.shop, batch.place));
}

export function heldLines(t: Telling, { verdict }: Part): readonly string[] {
  return verdict?.is === 'held' ? [t.words.replies.onHold(t.words.holdReason(verdict, t.f))] : [];
}

export function partCard(t: Telling, part: Part, title: string, lines: readonly string[], tone: Tone = 'plain'): Card {
  const held = heldLines(t, part);
  return makeCard(title, held.length > 0 ? 'warn' : tone, {
    facts: partFacts(t, part),
    lines: [...held, ...lines],
    actions: partTaps(t, part),
  });
}

export function coatedCard(t: Telling, part: Part, isNew: boolean): Card {
  const { replies } = t.words;
  const coat = part.coats.at(-1);
  if (coat === undefined) return partCard(t, part, replies.partNoted(part.name), []);
  const { parts } = t.words;
  const lines = [
    replies.flashing,
    ...(isNew ? [replies.newPart(part.name)] : []),
    ...surfaceOfCoat(t, part),
    t.words.names.methodTip(coat.method),
  ];
  const title =
    coat.passes > 1
      ? parts.touchedUp(part.name, coat.method, coat.batch, coat.passes)
      : replies.coated(part.name, coat.method, coat.batch);
  return partCard(t, part, title, lines);
}

export function dryCard(t: Telling, part: Part): Card {
  const { replies } = t.words;
  const batch = batchOf(t.shop, part);
  const coat = part.coats.at(-1);
  const leastAt = batch === undefined || coat === undefined ? undefined : flashTimes(batch.sheet, coat.at).leastAt;
  const early = leastAt !== undefined && t.now < leastAt;
  const line = early ? replies.dryEarly(t.f.timeUp(leastAt)) : replies.nextCure;
  return partCard(t, part, replies.dry(part.name), [line], early ? 'plain' : 'good');
}

/** Given is said only of what the record proves. */
export function takenOutCard(t: Telling, part: Part): Card {
  const { replies, parts } = t.words;
  const batch = batchOf(t.shop, part);
  const clock = batch && cureClock(part, batch.sheet, airLog(t.shop, batch.place), t.now);
  const given = clock?.doneAt !== undefined && clock.doneAt <= t.now;
  return partCard(t, part, replies.takenOut(part.name), [given ? replies.cureTimeGiven : parts.cureNotProved]);
}

/** Started, or the part's temperature read: how the cure stands. */
export function curingCard(t: Telling, part: Part, title: string): Card {
  const { replies } = t.words;
  const batch = batchOf(t.shop, part);
  if (part.cure === undefined || batch === undefined) return partCard(t, part, title, []);
  const clock = cureClock(part, batch.sheet, airLog(t.shop, batch.place), t.now);
  if (clock?.doneAt !== undefined && clock.doneAt <= t.now) {
    return partCard(t, part, title, [replies.cureTimeGiven], 'good');
  }
  const { oven } = batch.sheet.cure;
  const how = cureLines(t, part, batch.sheet, airLog(t.shop, batch.place));
  if (part.cure.way === 'room' || oven === undefined) {
    const held = clock === undefined ? [] : t.words.heldBack(clock.dose.withoutFigureMinutes, t.f);
    return partCard(t, part, title, [replies.roomClock, ...held, ...how]);
  }
  const last = part.temperatures.at(-1);
  const waits = last === undefined || last.celsius < oven.atCelsius;
  const line = last === undefined ? replies.ovenClock : replies.notYetAtTemperature;
  const card = partCard(t, part, title, [...(waits ? [line(t.f.temperature(oven.atCelsius))] : []), ...how]);
  return { ...card, fields: [{ id: 'part-temperature', label: t.words.facts['part-temperature'], unit: 'C' }] };
}
