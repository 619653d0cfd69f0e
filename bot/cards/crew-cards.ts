// Shifts and handovers, and a bell that was put off.

import { leftGrams } from '../../core/can/can.ts';
import type { CommandOf } from '../../core/commands.ts';
import { ownWords } from '../../core/crew/own-reminders.ts';
import type { Recorded, Request } from '../../core/execute.ts';
import { phaseOfPart } from '../../core/part/part.ts';
import { morningNeeds } from '../../core/reminders/morning-reminder.ts';
import { plannedRings } from '../../core/reminders/plan.ts';
import { byName, liveBatches, liveCans, liveParts } from '../../core/shop.ts';
import type { PlannedReminder } from '../../core/wanted-reminder.ts';
import { endingOfRing } from '../language/ending.ts';
import type { RingWords } from '../language/tongues/english/rings.ts';
import { batchLine } from './batch-cards.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { type Telling, tap, undoTap } from './card-context.ts';
import { leftBy } from './recorded-act.ts';
import { ringLabel } from './ring-label.ts';

/** Everything that somebody still waits for: batches, cans, parts, and what rings for whom. */
export function aliveLines(telling: Telling): readonly string[] {
  const { material, phases, parts } = telling.words;
  const lines = [
    ...liveBatches(telling.shop).map((batch) => batchLine(telling, batch)),
    ...liveCans(telling.shop).map((can) =>
      material.stockRow(can.number, can.component, can.lot, can.sheet.name, leftGrams(can), [], telling.figures),
    ),
    ...byName(liveParts(telling.shop)).map((part) => `${part.name}: ${phases[phaseOfPart(part).is]}`),
    ...ringsNext(telling).map((ring) => ringLine(telling, ring)),
  ];
  return lines.length === 0 ? [parts.nothingAlive] : lines;
}

function ringsNext(telling: Telling): readonly PlannedReminder[] {
  return plannedRings(telling.shop).filter(({ kind }) => kind !== 'digest' && kind !== 'handover');
}

/** One of a list of what rings next. */
export function ringLine(telling: Telling, { numberedKey, dueAt, kind }: PlannedReminder): string {
  const { words, figures } = telling;
  const label = ringLabel(telling, numberedKey);
  const why = kind === 'morning' ? morningOf(telling, numberedKey) : [];
  return words.replies.rings([label, ...why].join(': '), endingOfRing(numberedKey, dueAt), figures);
}

/** What that morning is for. */
function morningOf({ words, figures, shop }: Telling, key: string): readonly string[] {
  const { morningCure, morningCans } = words.material;
  const needs = morningNeeds(shop).flatMap(({ date, need }) => (key === `crew/morning/${date}` ? [need] : []));
  const told = [...new Set(needs.map(({ is }) => is))].map((is) => {
    const cans = needs.flatMap((need) => (need.is === is && need.is !== 'cure' && need.can ? [need.can.number] : []));
    return is === 'cure' ? morningCure : morningCans(is, cans, figures);
  });
  return told.length === 0 ? [] : [told.join('; ')];
}

export function shiftCard(telling: Telling, request: Request, { on }: CommandOf<'shift'>): Card {
  const { parts } = telling.words;
  const names = [...telling.shop.crew.shifts.onShift.keys()];
  const theirs = on ? [] : ringsNext(telling).filter(({ to }) => to.includes(request.by));
  return makeCard(on ? parts.onShift(request.by) : parts.offShift(request.by), theirs.length > 0 ? 'warn' : 'plain', {
    lines: [
      names.length === 0 ? parts.nobodyOn : parts.nowOn(names, telling.figures),
      ...(theirs.length === 0 ? [] : [parts.stillRings(theirs.length)]),
    ],
    actions: theirs.length === 0 ? [] : [tap(telling, 'handover', 'handover {person}')],
  });
}

export function handoverCard(telling: Telling, outcome: Recorded): Card {
  const { parts } = telling.words;
  const [body] = leftBy(outcome, 'HandedOver');
  if (body === undefined) return makeCard(parts.nothingAlive, 'plain');
  const { to, everything } = body;
  return makeCard(parts.handedOver(to), 'plain', {
    lines: [everything ? parts.handoverAll(to) : parts.handoverOwn(to), ...aliveLines(telling)],
    ping: [to],
  });
}

export function takenOverCard(telling: Telling, request: Request): Card {
  const { parts } = telling.words;
  const taken = telling.shop.crew.shifts.handovers.findLast(
    ({ to, takenAt }) => to === request.by && takenAt !== undefined,
  );
  const from = taken?.from ?? '';
  return makeCard(parts.takenOver(request.by, from), 'good', {
    lines: aliveLines(telling),
    ping: from === '' ? [] : [from],
  });
}

/** What the bell of a handover says besides its title. */
export function handoverRing(telling: Telling): {
  readonly lines: readonly string[];
  readonly taps: readonly CardAction[];
} {
  const waiting = telling.shop.crew.shifts.handovers.at(-1);
  return {
    lines: [...(waiting === undefined ? [] : [telling.words.parts.handoverFrom(waiting.from)]), ...aliveLines(telling)],
    taps: [tap(telling, 'takeover', 'take over')],
  };
}

/** For whoever asked, at the minute that it rings. */
export function remindCard(telling: Telling, { text }: CommandOf<'remind'>, outcome: Recorded): Card {
  const { reminders } = telling.words;
  const [body] = leftBy(outcome, 'ReminderWanted');
  const at = body === undefined ? '' : telling.figures.timeUp(body.until);
  const [envelope] = outcome.envelopes;
  return makeCard(reminders.wanted(at), 'good', {
    lines: text === '' ? [] : [text],
    actions: envelope === undefined ? [] : [undoTap(telling, envelope.seq)],
  });
}

/** It says what it was wanted for. */
export function ownRing(
  telling: Telling,
  { key }: Pick<PlannedReminder, 'key'>,
): { readonly rings: RingWords; readonly lines: readonly string[] } {
  const text = ownWords(telling.shop.crew, key);
  return { rings: { title: () => telling.words.reminders.title(text), act: '' }, lines: [] };
}

export function snoozedCard(telling: Telling, request: Request, outcome: Recorded): Card {
  const { parts } = telling.words;
  const [body] = leftBy(outcome, 'RingSnoozed');
  if (body === undefined) return makeCard(parts.nothingAlive, 'plain');
  return makeCard(parts.snoozed(ringLabel(telling, body.key)), 'plain', {
    lines: [parts.snoozedUntil(endingOfRing(body.key, body.until), request.by, telling.figures)],
    actions: [tap(telling, 'ok', 'ok')],
  });
}
