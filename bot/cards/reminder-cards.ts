// What rings, as a card: due, late and why, proved or not, and what to do with one tap.

import type { Batch } from '../../core/batch/batch.ts';
import type { ClockReading } from '../../core/calc/clock.ts';
import { cryKey } from '../../core/crew/open-alarms.ts';
import { nameIn, nounOf } from '../../core/ids.ts';
import { isOwnKey } from '../../core/own-key.ts';
import type { Part } from '../../core/part/part.ts';
import type { PartStatus } from '../../core/part/part-status.ts';
import type { RingingReminder } from '../../core/ports.ts';
import { isMovable } from '../../core/reminders/snooze.ts';
import { statusOf } from '../../core/status.ts';
import { minutesBetween } from '../../core/units.ts';
import type { ReminderKind } from '../../core/wanted-reminder.ts';
import { writeRingKey } from '../language/ring-key.ts';
import type { RingWords } from '../language/tongues/english/rings.ts';
import { airFacts } from './air-facts.ts';
import { cryRing } from './alarm-cards.ts';
import { batchTaps, blendFacts, notToUse, potFacts } from './batch-cards.ts';
import { canRing } from './can-cards.ts';
import { type Card, type CardAction, type CardFact, makeCard, type Tone } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { ringFact } from './clock-text.ts';
import { handoverRing, ownRing } from './crew-cards.ts';
import { cureLines, roomLines, withCures } from './cure-facts.ts';
import { fact } from './facts.ts';
import { cleaningLines, cleaningTaps } from './gear-cards.ts';
import { heldRing } from './held-cards.ts';
import { lidFacts } from './lid-lines.ts';
import { airRings, overLines, partRings, potRings } from './overtaken.ts';
import { heldLines, partFacts, partTaps } from './part-cards.ts';
import { againLines } from './rings-again.ts';
import { sessionRing } from './session-ring.ts';
import { morningLines } from './stock-card.ts';

interface Subject {
  readonly name: string;
  /** Title and what to do, as true as they still are. */
  readonly rings: RingWords;
  readonly facts: readonly CardFact[];
  readonly taps: readonly CardAction[];
  /** The clock that must prove the time, where the ring stands for one. */
  readonly clock: ClockReading | undefined;
  readonly ask: string;
  /** Of its own in place of what is asked, where the proof is missing. */
  readonly why?: readonly string[];
  /** Of its own, in place of what to do. */
  readonly lines?: readonly string[];
  readonly hazards?: Card['hazards'];
  /** Where it is no good news. */
  readonly tone?: Tone;
}

export function reminderCard(telling: Telling, ringing: RingingReminder): Card {
  const { reminder, now } = ringing;
  const { unproved } = telling.words;
  const subject = subjectOf(telling, ringing);
  const unprovedTitle = isOwnKey(unproved, reminder.kind) ? unproved[reminder.kind] : undefined;
  const missing = unprovedTitle !== undefined && subject.clock !== undefined && !isProved(subject.clock, now);
  const { title, act } = subject.rings;
  return makeCard(
    missing ? unprovedTitle(subject.name) : title(subject.name, telling.figures),
    subject.tone ?? toneOf(ringing, missing),
    {
      facts: [
        ...subject.facts.filter(({ id }) => missing || spent[reminder.kind]?.includes(id) !== true),
        ...lateFacts(telling, ringing),
      ],
      lines: [
        ...howItRings(telling, ringing),
        ...(missing ? (subject.why ?? [subject.ask, ...heldBack(telling, subject.clock)]) : (subject.lines ?? [act])),
        // A can's later ring is a step on, or another stir: not one that nobody answered.
        ...(reminder.ring > 1 && nounOf(reminder.stream) !== 'can' ? againLines(telling, ringing) : []),
      ],
      actions: [
        ...subject.taps,
        tap(telling, 'ok', `ok ${writeRingKey(reminder.key)}`),
        ...(isMovable(reminder.key) ? [tap(telling, 'snooze', `snooze 5m ${writeRingKey(reminder.key)}`)] : []),
      ],
      hazards: subject.hazards ?? [],
      ping: reminder.to,
      ...(reminder.kind === 'cry' && { alarm: true }),
    },
  );
}

/** Figures that the ring itself has used up: nobody needs them any more, and a push has room for little. */
const spent: Partial<Record<ReminderKind, readonly CardFact['id'][]>> = {
  'stir-done': ['stir-wanted', 'stir-given', 'stir-done-at'],
  'induction-done': ['stir-wanted', 'stir-given', 'stir-done-at'],
  'flash-least': ['flash-least-at'],
  'flash-most': ['flash-least-at', 'flash-most-at', 'open-until'],
  'recoat-opens': ['recoat-opens-at'],
  'cure-done': ['cure-given', 'cure-done-at'],
  'after-service': ['part-temperature', 'cure-given', 'cure-done-at'],
  'after-full': ['part-temperature', 'cure-given', 'cure-done-at'],
  'after-improves': ['part-temperature', 'cure-given', 'cure-done-at'],
};

/** What rings and what to do, from the reminder alone: where nothing can be looked up. */
export function bareReminderCard(telling: Telling, ringing: RingingReminder): Card {
  const { kind, stream, key, to } = ringing.reminder;
  const { title, act } = telling.words.rings[kind];
  const name = nounOf(stream) === 'crew' ? key.slice(key.lastIndexOf('/') + 1) : nameIn(stream);
  return makeCard(title(name, telling.figures), 'warn', {
    facts: lateFacts(telling, ringing),
    lines: [...howItRings(telling, ringing), ...(act === '' ? [] : [act])],
    actions: [tap(telling, 'ok', `ok ${writeRingKey(ringing.reminder.key)}`)],
    ping: to,
  });
}

export function lateFacts(telling: Telling, { reminder, late, now }: RingingReminder): readonly CardFact[] {
  if (late === undefined) return [];
  const lateBy = minutesBetween(reminder.dueAt, now);
  return [ringFact(telling, 'due-at', reminder.key, reminder.dueAt), fact(telling, 'late-minutes', lateBy)];
}

/** Late and why, perhaps told before, not in the record: whatever it is that rings. */
export function howItRings(telling: Telling, ringing: RingingReminder): readonly string[] {
  const { reminder, late, now } = ringing;
  const { replies } = telling.words;
  const lateBy = minutesBetween(reminder.dueAt, now);
  return [
    ...(late === undefined ? [] : [replies.ringLate(lateBy, late, telling.figures)]),
    ...(ringing.possibleRepeat ? [replies.ringRepeat] : []),
    ...(ringing.unrecorded ? [replies.ringUnrecorded] : []),
  ];
}

function isProved(clock: ClockReading, now: number): boolean {
  return clock.doneAt !== undefined && clock.doneAt <= now;
}

function heldBack(telling: Telling, clock: ClockReading | undefined): readonly string[] {
  return clock === undefined ? [] : telling.words.heldBack(clock.dose.withoutFigureMinutes, telling.figures);
}

function toneOf({ reminder }: RingingReminder, missing: boolean): Tone {
  switch (reminder.kind) {
    case 'pot-end':
      return 'stop';
    case 'blanket':
      return reminder.ring > 2 ? 'stop' : 'warn';
    case 'pot-margin':
    case 'surface-ends':
    case 'temp-due':
    case 'handover':
    case 'stir-paused':
    case 'uncovered':
    case 'flash-most':
    case 'recoat-closes':
    case 'air-due':
    case 'morning':
    case 'held':
    case 'brief':
    case 'air-recheck':
    case 'flush':
    case 'vessels':
    case 'gear':
      return 'warn';
    case 'spell-end':
    case 'cry':
      return 'stop';
    case 'stir-done':
    case 'induction-done':
    case 'cure-done':
      return missing ? 'warn' : 'good';
    case 'pot-half':
    case 'flash-least':
    case 'recoat-opens':
    case 'stage-handle':
    case 'stage-service':
    case 'stage-full':
    case 'after-service':
    case 'after-full':
    case 'after-improves':
    case 'can-stirred':
    case 'fan-off':
    case 'bell-test':
    case 'own':
    case 'digest':
      return 'plain';
  }
}

function subjectOf(telling: Telling, ringing: RingingReminder): Subject {
  const { reminder, shop } = ringing;
  const { kind } = reminder;
  const name = nameIn(reminder.stream);
  const bare: Subject = { name, rings: telling.words.rings[kind], facts: [], taps: [], clock: undefined, ask: '' };
  switch (nounOf(reminder.stream)) {
    case 'batch': {
      const batch = shop.batches.get(Number(name));
      return batch === undefined ? bare : batchSubject(telling, batch, kind);
    }
    case 'part': {
      const part = shop.parts.get(name);
      return part === undefined ? bare : partSubject(telling, part, ringing);
    }
    case 'place': {
      const taps = [tap(telling, 'air', 'air {air-temperature}C {humidity}%')];
      return { ...bare, rings: airRings(telling, ringing), facts: airFacts(telling, name), taps };
    }
    case 'can': {
      const can = shop.cans.get(Number(name));
      return can === undefined ? bare : { ...bare, ...canRing(telling, can, ringing) };
    }
    case 'session': {
      const session = shop.sessions.get(Number(name));
      return session === undefined ? bare : { ...bare, ...sessionRing(telling, session, kind) };
    }
    case 'crew':
      if (kind === 'cry') {
        const cry = shop.crew.alarms.find(({ seq }) => reminder.key === cryKey(seq));
        return cry === undefined ? bare : { ...bare, ...cryRing(telling, cry) };
      }
      if (kind === 'own') return { ...bare, ...ownRing(telling, reminder) };
      if (kind === 'handover') return { ...bare, ...handoverRing(telling) };
      if (kind === 'held') return { ...bare, ...heldRing(telling, reminder) };
      return kind === 'morning'
        ? { ...bare, lines: withCures(telling, morningLines(telling)), taps: [tap(telling, 'stock', 'stock')] }
        : bare;
    case 'instrument':
      return bare;
  }
}

function batchSubject(telling: Telling, batch: Batch, kind: ReminderKind): Subject {
  const status = statusOf.batch(telling, batch);
  const ask = telling.words.replies.askReading;
  const name = String(batch.number);
  const told = { name, rings: potRings(telling, status, kind), taps: batchTaps(telling, status), ask };
  if (kind === 'gear') {
    const lines = cleaningLines(telling, batch, batch.emptied === undefined);
    return {
      ...told,
      rings: telling.words.rings.gear,
      facts: [],
      taps: cleaningTaps(telling, batch),
      clock: undefined,
      lines,
    };
  }
  if (status.phase.is === 'over') {
    const facts = potFacts(telling, status);
    return { ...told, facts, clock: undefined, tone: 'stop', lines: overLines(telling, status, kind) };
  }
  // Once it is blended, how long it serves is what counts.
  const blended = kind === 'stir-done' || kind === 'induction-done' ? potFacts(telling, status) : [];
  const facts = kind.startsWith('pot-') ? potFacts(telling, status) : [...blendFacts(telling, status), ...blended];
  const subject = { ...told, facts, clock: status.given };
  if (kind === 'uncovered') return { ...subject, facts: lidFacts(telling, batch) };
  // Blended or not, nobody is invited to filter or apply what is off its ratio, or of a lot that was recalled.
  const off = kind === 'stir-done' || kind === 'induction-done' ? notToUse(telling, status) : [];
  const { stopStirrer } = telling.words.replies;
  return off.length > 0
    ? { ...subject, tone: 'warn', lines: [...(kind === 'stir-done' ? [stopStirrer] : []), ...off] }
    : subject;
}

/** Nobody is invited to coat what a lead must look at first, or what may still be wet; of other bells what to do stands. */
function coatHeldBack(
  { words: { replies } }: Telling,
  { part, heldBy }: PartStatus,
  kind: ReminderKind,
  act: string,
): readonly string[] {
  const invites = kind === 'recoat-opens' || kind === 'recoat-closes' || kind === 'surface-ends';
  const held = heldBy.length > 0;
  if (invites && held) return [replies.noCoatHeld];
  if (invites && kind !== 'surface-ends' && part.dryAt === undefined) return [replies.noCoatWet];
  return held ? [act] : [];
}

function partSubject(telling: Telling, part: Part, ringing: RingingReminder): Subject {
  const { kind } = ringing.reminder;
  const status = statusOf.part(telling, part);
  const rings = partRings(telling, status, ringing);
  const { askNight, askPartReading } = telling.words.replies;
  const ask = part.cure?.way === 'room' ? askNight : askPartReading;
  const held = heldLines(telling, status);
  const inRoom = roomLines(telling, status);
  const { overtaken } = telling.words;
  const isOver = rings === overtaken['recoat-over'] || rings === overtaken['surface-over'];
  const lines = [...(isOver ? [rings.act] : coatHeldBack(telling, status, kind, rings.act)), ...held];
  const stage = status.clocks.find(({ id }) => id === kind);
  const isUnproved = stage?.errs === 'at-least' && stage.goes !== 'given';
  return {
    ...{ name: part.name, rings, facts: partFacts(telling, status), taps: partTaps(telling, status), ask },
    ...(lines.length === 0 ? {} : { lines }),
    clock: status.cure?.given,
    why:
      inRoom.length > 0
        ? cureLines(telling, status)
        : [ask, ...heldBack(telling, status.cure?.given), ...cureLines(telling, status)],
    ...(isUnproved ? { lines: [rings.act, ask, ...held] } : {}),
  };
}
