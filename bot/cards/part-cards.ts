// A part's answers: noted, coated, dry, curing, read, out, released or held.

import { type Part, phaseOfPart } from '../../core/part/part.ts';
import { cureClock, cureDueAt, flashTimes } from '../../core/part/part-clocks.ts';
import { batchOf } from '../../core/part/part-decide.ts';
import { airLog } from '../../core/shop.ts';
import { minutes, minutesAfter } from '../../core/units.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import { filmFacts } from './film-facts.ts';
import { minutesGivenFact, notAfterFact, notBeforeFact, type Telling, tap, temperatureFact } from './telling.ts';

/** The taps that this part allows next. */
export function partTaps(t: Telling, part: Part): readonly CardAction[] {
  const { name } = part;
  const phase = phaseOfPart(part);
  switch (phase.is) {
    case 'bare':
      return [];
    case 'flashing':
      return [tap(t, 'dry', `dry ${name}`)];
    case 'dry': {
      const cure = batchOf(t.shop, part)?.sheet.cure;
      return [
        ...(cure?.oven === undefined ? [] : [tap(t, 'cure-oven', `cure ${name} oven ${cure.oven.atCelsius}C`)]),
        ...(cure?.room === undefined ? [] : [tap(t, 'cure-room', `cure ${name} room`)]),
      ];
    }
    case 'curing':
      return [
        ...(phase.cure.way === 'oven' ? [tap(t, 'temp', `temp ${name} {part-temperature}C`)] : []),
        tap(t, 'out', `out ${name}`),
      ];
    case 'cured':
      return [tap(t, 'release', `release ${name}`), tap(t, 'hold', `hold ${name} {why}`)];
    case 'released':
      return [];
  }
}

/** Where the part stands: flash-off, recoat window, cure. */
export function partFacts(t: Telling, part: Part): readonly CardFact[] {
  const batch = batchOf(t.shop, part);
  const coat = part.coats.at(-1);
  if (batch === undefined || coat === undefined) return [];
  const { sheet } = batch;
  const facts: CardFact[] = [];
  const phase = phaseOfPart(part).is;
  if (phase === 'flashing' || phase === 'dry') {
    const flash = flashTimes(sheet, coat.at);
    facts.push(notBeforeFact(t, 'flash-least-at', flash.leastAt), notAfterFact(t, 'flash-most-at', flash.mostAt));
  }
  if (sheet.recoat.rule === 'window' && part.verdict?.is !== 'released') {
    facts.push(
      notBeforeFact(t, 'recoat-opens-at', minutesAfter(coat.at, sheet.recoat.opensMinutes)),
      notAfterFact(t, 'recoat-closes-at', minutesAfter(coat.at, sheet.recoat.closesMinutes)),
    );
  }
  if (part.cure === undefined) return facts;
  const air = airLog(t.shop, batch.place);
  const read = part.temperatures.at(-1);
  if (read !== undefined && part.cure.way === 'oven') facts.push(temperatureFact(t, 'part-temperature', read.celsius));
  const clock = cureClock(part, sheet, air, t.now);
  if (clock !== undefined) {
    const earned = clock.dose.ranMinutes - sum(clock.dose.withoutFigureMinutes);
    facts.push(minutesGivenFact(t, 'cure-given', minutes(earned)));
  }
  const due = cureDueAt(part, sheet, air);
  if (due !== undefined) facts.push(notBeforeFact(t, 'cure-done-at', due));
  return facts;
}

const sum = (without: Readonly<Record<string, number>>): number => Object.values(without).reduce((a, b) => a + b, 0);

export function partCard(t: Telling, part: Part, title: string, lines: readonly string[], tone: Tone = 'plain'): Card {
  const held = part.verdict?.is === 'held' ? [t.words.replies.onHold(t.words.holdReason(part.verdict, t.f))] : [];
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
  const lines = [replies.flashing, ...(isNew ? [replies.newPart(part.name)] : [])];
  return partCard(t, part, replies.coated(part.name, coat.method, coat.batch), lines);
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
  if (part.cure.way === 'room' || oven === undefined) {
    const held = clock === undefined ? [] : t.words.heldBack(clock.dose.withoutFigureMinutes, t.f);
    return partCard(t, part, title, [replies.roomClock, ...held]);
  }
  const last = part.temperatures.at(-1);
  const waits = last === undefined || last.celsius < oven.atCelsius;
  const line = last === undefined ? replies.ovenClock : replies.notYetAtTemperature;
  const card = partCard(t, part, title, waits ? [line(t.f.temperature(oven.atCelsius))] : []);
  return { ...card, fields: [{ id: 'part-temperature', label: t.words.facts['part-temperature'], unit: 'C' }] };
}

export function filmCard(t: Telling, part: Part): Card {
  const { replies } = t.words;
  const film = part.films.at(-1);
  if (film === undefined) return partCard(t, part, replies.partNoted(part.name), []);
  const lines = film.state === 'wet' ? [replies.filmCheckOnly] : [];
  const facts = filmFacts(t, film.micrometres);
  return makeCard(replies.filmRead(part.name, film.state), 'plain', {
    facts,
    lines,
    actions: partTaps(t, part),
  });
}
