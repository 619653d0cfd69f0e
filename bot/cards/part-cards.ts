// A part's answers: noted, coated, dry, curing, read, out, released or held.

import type { PartStatus } from '../../core/part/part-status.ts';
import type { ClockId, PartNow } from '../../core/status.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import type { Telling } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { cureFacts, cureLines } from './cure-facts.ts';
import { nextTaps } from './next-taps.ts';
import { surfaceFacts, surfaceOfCoat } from './surface-cards.ts';

export const partTaps = (t: Telling, { next }: PartNow): readonly CardAction[] => nextTaps(t, next());

const ofCoat: readonly ClockId[] = ['flash', 'flash-most', 'open', 'recoat-opens', 'recoat-closes'];

/** Where the part stands: flash-off, recoat window, cure. */
export function partFacts(t: Telling, status: PartStatus): readonly CardFact[] {
  if (status.sheet === undefined) return surfaceFacts(t, status);
  return [...clockFacts(t, status.clocks, ofCoat), ...cureFacts(t, status)];
}

export function heldLines(t: Telling, { heldBy }: Pick<PartStatus, 'heldBy'>): readonly string[] {
  return heldBy.flatMap((held) =>
    held.code === 'on-hold' ? [t.words.replies.onHold(t.words.holdReason(held, t.f))] : [],
  );
}

/** One of a list of what runs. */
export const partLine = (t: Telling, { part, phase, heldBy }: PartStatus): string =>
  `${part.name}: ${[t.words.phases[phase.is], ...heldLines(t, { heldBy })].join('. ')}`;

export function partCard(
  t: Telling,
  status: PartNow,
  title: string,
  lines: readonly string[],
  tone: Tone = 'plain',
): Card {
  const held = heldLines(t, status);
  return makeCard(title, held.length > 0 ? 'warn' : tone, {
    facts: partFacts(t, status),
    lines: [...held, ...lines],
    actions: partTaps(t, status),
  });
}

export function coatedCard(t: Telling, status: PartNow, isNew: boolean): Card {
  const { replies } = t.words;
  const { part } = status;
  const coat = part.coats.at(-1);
  if (coat === undefined) return partCard(t, status, replies.partNoted(part.name), []);
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
  return partCard(t, status, title, lines);
}

export function dryCard(t: Telling, status: PartNow): Card {
  const { replies } = t.words;
  const title = replies.dry(status.part.name);
  const flash = status.clocks.find(({ id }) => id === 'flash');
  return flash?.errs === 'at-least' && flash.goes === 'runs'
    ? partCard(t, status, title, [replies.dryEarly(flash.dueAt, t.f)])
    : partCard(t, status, title, [replies.nextCure], 'good');
}

/** Given is said only of what the record proves. */
export function takenOutCard(t: Telling, status: PartNow): Card {
  const { replies, parts } = t.words;
  const given = status.cure?.clock.goes === 'given';
  const line = given ? replies.cureTimeGiven : parts.cureNotProved;
  return partCard(t, status, replies.takenOut(status.part.name), [line]);
}

/** Started, or the part's temperature read: how the cure stands. */
export function curingCard(t: Telling, status: PartNow, title: string): Card {
  const { replies } = t.words;
  const { part, sheet, cure } = status;
  if (sheet === undefined || cure === undefined) return partCard(t, status, title, []);
  if (cure.clock.goes === 'given') return partCard(t, status, title, [replies.cureTimeGiven], 'good');
  const { oven } = sheet.cure;
  const how = cureLines(t, status);
  if (part.cure?.way === 'room' || oven === undefined) {
    const held = cure.given === undefined ? [] : t.words.heldBack(cure.given.dose.withoutFigureMinutes, t.f);
    return partCard(t, status, title, [replies.roomClock, ...held, ...how]);
  }
  const last = part.temperatures.at(-1);
  const waits = last === undefined || last.celsius < oven.atCelsius;
  const line = last === undefined ? replies.ovenClock : replies.notYetAtTemperature;
  const card = partCard(t, status, title, [...(waits ? [line(oven.atCelsius, t.f)] : []), ...how]);
  return { ...card, fields: [{ id: 'part-temperature', label: t.words.facts['part-temperature'], unit: 'C' }] };
}
