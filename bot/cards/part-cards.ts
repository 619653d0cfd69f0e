// A part's answers: noted, coated, dry, curing, read, out, released or held.

import type { PartName } from '../../core/ids.ts';
import type { Method } from '../../core/methods.ts';
import { ownersOf } from '../../core/part/held.ts';
import type { Part } from '../../core/part/part.ts';
import { heatToAsk } from '../../core/part/part-heat.ts';
import type { PartStatus } from '../../core/part/part-status.ts';
import { type ClockId, type PartNow, statusOf } from '../../core/status.ts';
import type { Celsius } from '../../core/units.ts';
import { afterCureLines } from './after-cure-lines.ts';
import { briefsOffLines } from './briefs-off.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { concessionLines } from './concession-lines.ts';
import { cureFacts, cureLines } from './cure-facts.ts';
import { nextTaps } from './next-taps.ts';
import { partPhaseTold } from './part-phase.ts';
import { stillAskedLines } from './still-asked.ts';
import { surfaceFacts, surfaceOfCoat } from './surface-cards.ts';

export const partTaps = (telling: Telling, { next }: PartNow): readonly CardAction[] => nextTaps(telling, next());

const ofCoat: readonly ClockId[] = ['flash', 'flash-most', 'open', 'recoat-opens', 'recoat-closes'];

/** Where the part stands: flash-off, recoat window, cure. */
export function partFacts(telling: Telling, status: PartStatus): readonly CardFact[] {
  if (status.sheet === undefined) return surfaceFacts(telling, status);
  return [...clockFacts(telling, status.clocks, ofCoat), ...cureFacts(telling, status)];
}

/** Why, and who sees to it. */
export function heldLines(telling: Telling, { heldBy, part }: Pick<PartStatus, 'heldBy' | 'part'>): readonly string[] {
  return heldBy.flatMap((held) =>
    held.code === 'on-hold'
      ? [telling.words.replies.onHold(telling.words.holdReason(held, telling.figures)), ...seenToLines(telling, part)]
      : [],
  );
}

/** How far its dry film is told, where that is half. */
export const halfLines = ({ words }: Telling, { half }: Pick<PartStatus, 'half'>): readonly string[] =>
  half === undefined ? [] : [words.parts.spots.told(half.told, half.terms.spots)];

/** In one line of a list, with whose hold it is. */
export const heldLine = (telling: Telling, part: Part): string =>
  telling.words.asked.titled(part.name, heldLines(telling, statusOf.part(telling, part)).join('. '));

function seenToLines({ shop, words, figures }: Telling, { verdict }: Part): readonly string[] {
  if (verdict?.is !== 'held') return [];
  return [words.parts.held.seenTo(ownersOf(shop.crew, verdict), verdict.toDo, figures)];
}

/** One of a list of what runs. */
export const partLine = (telling: Telling, { part, heldBy, half }: PartStatus): string =>
  `${part.name}: ${[partPhaseTold(telling, part), ...halfLines(telling, { half }), ...heldLines(telling, { heldBy, part })].join('. ')}`;

export function partCard(
  telling: Telling,
  status: PartNow,
  title: string,
  lines: readonly string[],
  tone: Tone = 'plain',
): Card {
  const held = [...heldLines(telling, status), ...stillAskedLines(telling, status)];
  return makeCard(title, held.length > 0 ? 'warn' : tone, {
    facts: partFacts(telling, status),
    lines: [...held, ...halfLines(telling, status), ...lines],
    actions: partTaps(telling, status),
  });
}

export function coatedCard(telling: Telling, status: PartNow): Card {
  const { replies } = telling.words;
  const { part } = status;
  const coat = part.coats.at(-1);
  if (coat === undefined) return partCard(telling, status, replies.partNoted(part.name), []);
  const { parts } = telling.words;
  const lines = [
    replies.flashing,
    ...surfaceOfCoat(telling, part),
    ...finishLines(telling, coat.method),
    ...briefsOffLines(telling, [coat.entry]),
  ];
  const title =
    coat.passes > 1
      ? parts.touchedUp(part.name, coat.method, coat.batch, coat.passes)
      : replies.coated(part.name, coat.method, coat.batch);
  return partCard(telling, status, title, lines);
}

export function dryCard(telling: Telling, status: PartNow): Card {
  const { replies } = telling.words;
  const title = replies.dry(status.part.name);
  const flash = status.clocks.find(({ id }) => id === 'flash');
  const card =
    flash?.errs === 'at-least' && flash.goes === 'runs'
      ? partCard(telling, status, title, [replies.dryEarly(flash.dueAt, telling.figures)])
      : partCard(telling, status, title, [], 'good');
  return withHeatAsked(telling, status, card);
}

/** Before the oven, and while it is in it: whether the part bears that, with a tap that says so. */
function withHeatAsked(telling: Telling, { part }: PartNow, card: Card): Card {
  const asked = heatToAsk(telling.shop, part, telling.now, part.cure?.setCelsius);
  if (asked === undefined) return card;
  const { bearsAsked } = telling.words.steps;
  return {
    ...card,
    lines: [...card.lines, bearsAsked(asked, telling.figures)],
    actions: [...card.actions, ...bearsTap(telling, [part.name], asked)],
  };
}

/** Of one or several, each of which bears that. */
export function bearsTap(telling: Telling, parts: readonly PartName[], asked: Celsius): readonly CardAction[] {
  const named = parts.map((part) => ({ part, details: { highestCelsius: asked } }));
  const [first, ...more] = named;
  if (first === undefined) return [];
  const command = { verb: 'part' as const, ...first, ...(more.length > 0 && { more }) };
  const label = telling.words.steps.bears(asked, telling.figures);
  const line = lineOf(telling, { command, stance: { is: 'asked' } });
  return [{ ...tap(telling, 'bears', line), label: more.length > 0 ? `${label} (${parts.length})` : label }];
}

/** Given is said only of what the record proves. */
export function takenOutCard(telling: Telling, status: PartNow): Card {
  const { replies, parts } = telling.words;
  const given = status.cure?.clock.goes === 'given';
  const line = given ? replies.cureTimeGiven : parts.cureNotProved;
  return partCard(telling, status, replies.takenOut(status.part.name), [line, ...afterCureLines(telling, status)]);
}

/** Started, or the part's temperature read: how the cure stands. */
export function curingCard(telling: Telling, status: PartNow, title: string): Card {
  const { replies } = telling.words;
  const { part, sheet, cure } = status;
  if (sheet === undefined || cure === undefined) return partCard(telling, status, title, []);
  if (cure.clock.goes === 'given') return partCard(telling, status, title, [replies.cureTimeGiven], 'good');
  const { oven } = sheet.cure;
  const how = cureLines(telling, status);
  if (part.cure?.way === 'room' || oven === undefined) {
    return partCard(telling, status, title, how);
  }
  const last = part.temperatures.at(-1);
  const waits = last === undefined || last.celsius < oven.atCelsius;
  const line = last === undefined ? replies.ovenClock : replies.notYetAtTemperature;
  const cured = partCard(telling, status, title, [...(waits ? [line(oven.atCelsius, telling.figures)] : []), ...how]);
  const card = last === undefined ? withHeatAsked(telling, status, cured) : cured;
  return { ...card, fields: [{ id: 'part-temperature', label: telling.words.facts['part-temperature'], unit: 'C' }] };
}

/** What was not released is told above, and held. */
export function shippedCard(telling: Telling, status: PartNow): Card {
  const { replies } = telling.words;
  const { name, verdict } = status.part;
  const lines =
    verdict?.is === 'released'
      ? [
          replies.shippedReleased(verdict.by, verdict.at, telling.figures),
          ...concessionLines(telling, verdict.concession),
        ]
      : [];
  return partCard(telling, status, replies.shipped(name), lines);
}

function finishLines({ words }: Telling, method: Method): readonly string[] {
  const finish = words.names.methodFinish(method);
  return finish === undefined ? [] : [finish];
}
