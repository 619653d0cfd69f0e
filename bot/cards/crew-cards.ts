// Shifts and handovers, and a bell that was put off.

import { leftGrams } from '../../core/can/can.ts';
import type { CommandOf } from '../../core/commands.ts';
import type { Recorded, Request } from '../../core/execute.ts';
import { phaseOfPart } from '../../core/part/part.ts';
import { planReminders } from '../../core/reminders/plan.ts';
import { byDueTime, type PlannedReminder } from '../../core/reminders/wanted-reminder.ts';
import { byName, liveBatches, liveCans, liveParts } from '../../core/shop.ts';
import { endingOfRing } from '../language/ending.ts';
import { batchLine } from './batch-cards.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { ringLabel } from './ring-label.ts';

/** Everything that somebody still waits for: batches, cans, parts, and what rings for whom. */
export function aliveLines(t: Telling): readonly string[] {
  const { material, phases, parts, replies } = t.words;
  const lines = [
    ...liveBatches(t.shop).map((batch) => batchLine(t, batch)),
    ...liveCans(t.shop).map((can) =>
      material.stockRow(can.number, can.component, can.lot, can.sheet.name, leftGrams(can), [], t.f),
    ),
    ...byName(liveParts(t.shop)).map((part) => `${part.name}: ${phases[phaseOfPart(part).is]}`),
    ...ringsNext(t).map(({ numberedKey, dueAt }) =>
      replies.rings(ringLabel(t.words, numberedKey), endingOfRing(numberedKey, dueAt), t.f),
    ),
  ];
  return lines.length === 0 ? [parts.nothingAlive] : lines;
}

function ringsNext(t: Telling): readonly PlannedReminder[] {
  return [...planReminders(t.shop).values()]
    .flat()
    .filter(({ kind }) => kind !== 'digest' && kind !== 'handover')
    .sort(byDueTime);
}

export function shiftCard(t: Telling, request: Request, { on }: CommandOf<'shift'>): Card {
  const { parts } = t.words;
  const names = [...t.shop.crew.shifts.onShift.keys()];
  const theirs = on ? [] : ringsNext(t).filter(({ to }) => to.includes(request.by));
  return makeCard(on ? parts.onShift(request.by) : parts.offShift(request.by), theirs.length > 0 ? 'warn' : 'plain', {
    lines: [
      names.length === 0 ? parts.nobodyOn : parts.nowOn(names, t.f),
      ...(theirs.length === 0 ? [] : [parts.stillRings(theirs.length)]),
    ],
    actions: theirs.length === 0 ? [] : [tap(t, 'handover', 'handover {person}')],
  });
}

export function handoverCard(t: Telling, { envelopes }: Recorded): Card {
  const { parts } = t.words;
  const body = envelopes.flatMap((envelope) => (envelope.body.type === 'HandedOver' ? [envelope.body] : []))[0];
  if (body === undefined) return makeCard(parts.nothingAlive, 'plain');
  const { to, everything } = body;
  return makeCard(parts.handedOver(to), 'plain', {
    lines: [everything ? parts.handoverAll(to) : parts.handoverOwn(to), ...aliveLines(t)],
    ping: [to],
  });
}

export function takenOverCard(t: Telling, request: Request): Card {
  const { parts } = t.words;
  const taken = t.shop.crew.shifts.handovers.findLast(({ to, takenAt }) => to === request.by && takenAt !== undefined);
  const from = taken?.from ?? '';
  return makeCard(parts.takenOver(request.by, from), 'good', {
    lines: aliveLines(t),
    ping: from === '' ? [] : [from],
  });
}

/** What the bell of a handover says besides its title. */
export function handoverRing(t: Telling): { readonly lines: readonly string[]; readonly taps: readonly CardAction[] } {
  const waiting = t.shop.crew.shifts.handovers.at(-1);
  return {
    lines: [...(waiting === undefined ? [] : [t.words.parts.handoverFrom(waiting.from)]), ...aliveLines(t)],
    taps: [tap(t, 'takeover', 'take over')],
  };
}

export function snoozedCard(t: Telling, request: Request, { envelopes }: Recorded): Card {
  const { parts } = t.words;
  const body = envelopes.flatMap((envelope) => (envelope.body.type === 'RingSnoozed' ? [envelope.body] : []))[0];
  if (body === undefined) return makeCard(parts.nothingAlive, 'plain');
  return makeCard(parts.snoozed(ringLabel(t.words, body.key)), 'plain', {
    lines: [parts.snoozedUntil(endingOfRing(body.key, body.until), request.by, t.f)],
    actions: [tap(t, 'ok', 'ok')],
  });
}
