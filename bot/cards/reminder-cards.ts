// What rings, as a card: due, late and why, proved or not, and what to do with one tap.

import type { Batch } from '../../core/batch/batch.ts';
import { blendClock } from '../../core/batch/batch-clocks.ts';
import type { ClockReading } from '../../core/calc/clock.ts';
import { nameIn, nounOf } from '../../core/ids.ts';
import type { Part } from '../../core/part/part.ts';
import { cureClock } from '../../core/part/part-clocks.ts';
import { batchOf } from '../../core/part/part-decide.ts';
import type { RingingReminder } from '../../core/ports.ts';
import type { ReminderKind } from '../../core/reminders/wish.ts';
import { airLog } from '../../core/shop.ts';
import { minutesBetween } from '../../core/units.ts';
import { airFacts } from './air-facts.ts';
import { batchTaps, blendFacts, potFacts } from './batch-cards.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import { partFacts, partTaps } from './part-cards.ts';
import { minutesWantedFact, notAfterFact, type Telling, tap } from './telling.ts';

interface Subject {
  readonly name: string;
  readonly facts: readonly CardFact[];
  readonly taps: readonly CardAction[];
  /** The clock that must prove the time, where the ring stands for one. */
  readonly clock: ClockReading | undefined;
  readonly ask: string;
}

export function reminderCard(t: Telling, ringing: RingingReminder): Card {
  const { reminder, late, now } = ringing;
  const { replies, rings, unproved } = t.words;
  const subject = subjectOf(t, ringing);
  const unprovedTitle = reminder.kind in unproved ? unproved[reminder.kind as keyof typeof unproved] : undefined;
  const missing = unprovedTitle !== undefined && subject.clock !== undefined && !isProved(subject.clock, now);
  const { title, act } = rings[reminder.kind];
  const lateBy = minutesBetween(reminder.dueAt, now);
  return makeCard(missing ? unprovedTitle(subject.name) : title(subject.name), toneOf(ringing, missing), {
    facts: [
      ...subject.facts,
      ...(late === undefined
        ? []
        : [notAfterFact(t, 'due-at', reminder.dueAt), minutesWantedFact(t, 'late-minutes', lateBy)]),
    ],
    lines: [
      ...(late === undefined ? [] : [replies.ringLate(t.f.minutesUp(lateBy), t.words.late[late])]),
      ...(ringing.possibleRepeat ? [replies.ringRepeat] : []),
      ...(ringing.unrecorded ? [replies.ringUnrecorded] : []),
      ...(reminder.ring > 1 ? [replies.ringAgain(reminder.ring)] : []),
      ...(missing ? [subject.ask, ...heldBack(t, subject.clock)] : [act]),
    ],
    actions: [...subject.taps, tap(t, 'ok', 'ok')],
    ping: reminder.to,
  });
}

function isProved(clock: ClockReading, now: number): boolean {
  return clock.doneAt !== undefined && clock.doneAt <= now;
}

function heldBack(t: Telling, clock: ClockReading | undefined): readonly string[] {
  return clock === undefined ? [] : t.words.heldBack(clock.dose.withoutFigureMinutes, t.f);
}

function toneOf({ reminder }: RingingReminder, missing: boolean): Tone {
  switch (reminder.kind) {
    case 'pot-end':
      return 'stop';
    case 'pot-margin':
    case 'stir-paused':
    case 'flash-most':
    case 'recoat-closes':
    case 'air-due':
      return 'warn';
    case 'stir-done':
    case 'induction-done':
    case 'cure-done':
      return missing ? 'warn' : 'good';
    case 'pot-half':
    case 'flash-least':
    case 'recoat-opens':
    case 'digest':
      return 'plain';
  }
}

function subjectOf(t: Telling, { reminder, shop }: RingingReminder): Subject {
  const name = nameIn(reminder.stream);
  switch (nounOf(reminder.stream)) {
    case 'batch': {
      const batch = shop.batches.get(Number(name));
      return batch === undefined ? bare(name) : batchSubject(t, batch, reminder.kind);
    }
    case 'part': {
      const part = shop.parts.get(name);
      return part === undefined ? bare(name) : partSubject(t, part);
    }
    case 'place':
      return { ...bare(name), facts: airFacts(t, name), taps: [tap(t, 'air', 'air {air-temperature}C {humidity}%')] };
    case 'can':
    case 'session':
    case 'crew':
      return bare(name);
  }
}

const bare = (name: string): Subject => ({ name, facts: [], taps: [], clock: undefined, ask: '' });

function batchSubject(t: Telling, batch: Batch, kind: ReminderKind): Subject {
  const clock = blendClock(batch, airLog(t.shop, batch.place), t.now);
  const ask = t.words.replies.askReading;
  const facts = kind.startsWith('pot-') ? potFacts(t, batch) : blendFacts(t, batch);
  return { name: String(batch.number), facts, taps: batchTaps(t, batch), clock, ask };
}

function partSubject(t: Telling, part: Part): Subject {
  const batch = batchOf(t.shop, part);
  const clock = batch === undefined ? undefined : cureClock(part, batch.sheet, airLog(t.shop, batch.place), t.now);
  const { askNight, askPartReading } = t.words.replies;
  const ask = part.cure?.way === 'room' ? askNight : askPartReading;
  return { name: part.name, facts: partFacts(t, part), taps: partTaps(t, part), clock, ask };
}
