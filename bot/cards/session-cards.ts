// The spray brief and what is said after it. A brief is recorded, never passed: each line has its source, and what nobody
// has said stands there as such.

import { flushFlashPoint } from '../../core/calc/flammable.ts';
import { solvents } from '../../core/calc/solvents.ts';
import { isFailed } from '../../core/failed.ts';
import type { PersonName } from '../../core/ids.ts';
import { exposedIn, fanUntil, flushState, type Session } from '../../core/session/session.ts';
import { clearingMinutes } from '../../core/session/session-air.ts';
import type { Gear } from '../../core/session/session-commands.ts';
import { sessionStatus } from '../../core/session/session-status.ts';
import { type Celsius, celsius, litres } from '../../core/units.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, volumeFact } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { sessionSums, sumSources } from './session-air-card.ts';
import {
  acknowledgedLines,
  airLines,
  dateLines,
  hasPastDate,
  peopleLines,
  sessionTaps,
  stillOpen,
} from './session-lines.ts';
import { workHazards } from './vent-cards.ts';

export function briefCard(t: Telling, session: Session): Card {
  const words = t.words.session;
  const { number, insideVessel, place, sheet, batch, startsAt } = session;
  const sums = sessionSums(t, session);
  return makeCard(words.briefed(number), insideVessel ? 'stop' : hasPastDate(t, session) ? 'warn' : 'plain', {
    facts: sums.facts,
    lines: [
      ...(insideVessel ? [words.insideVessel] : []),
      words.what(place, sheet.name, batch),
      ...(startsAt === undefined ? [] : [words.startsAt(startsAt, t.f)]),
      ...peopleLines(t, session),
      ...airLines(t, session),
      ...dateLines(t, session),
      ...acknowledgedLines(t, session),
      ...sums.lines,
      ...spellLines(t, session),
      ...flushPlan(t, session),
      emergencyLine(t),
      t.words.replies.caution,
    ],
    hazards: [...workHazards(t, 'spray'), ...flushConflicts(t, session), ...sumSources(t)],
    actions: sessionTaps(t, session),
    fields: [{ id: 'face-velocity', label: t.words.facts['face-velocity'], unit: 'm/s' }],
    ping: [...new Set([...exposedIn(session), ...(session.attendant === undefined ? [] : [session.attendant])])],
  });
}

function spellLines(t: Telling, { sheet }: Session): readonly string[] {
  const words = t.words.session;
  return [
    ...(sheet.spray === undefined ? [words.noSpray(sheet.name)] : []),
    words.lapses(sheet.spray?.longestSpellMinutes, t.f),
  ];
}

export function emergencyLine(t: Telling): string {
  const { call } = t.shop.crew.spray.emergency;
  return call === undefined ? t.words.session.emergencyNotSet : t.words.session.emergencyCall(call);
}

/** After an act: what it was, and what is still open. Short, since it is read at the booth's door. */
export function sessionCard(t: Telling, session: Session, title: string, more: readonly string[] = []): Card {
  const { titled } = t.words.session;
  const before = session.spraying.length === 0;
  const lines = before ? [...airLines(t, session), ...acknowledgedLines(t, session)] : [];
  return makeCard(titled(session.number, title), 'plain', {
    lines: [...more, ...lines],
    actions: sessionTaps(t, session),
  });
}

/** Whoever is exposed from now on has the brief to read. */
export function placedCard(t: Telling, session: Session, title: string, people: readonly PersonName[]): Card {
  const exposed = exposedIn(session).filter((name) => people.includes(name));
  return { ...sessionCard(t, session, title, peopleLines(t, session)), ping: exposed };
}

/** With the sums that the velocity allows. */
export function fanCard(t: Telling, session: Session, title: string): Card {
  const { facts, lines } = sessionSums(t, session);
  const card = sessionCard(t, session, title, lines);
  return { ...card, facts, hazards: sumSources(t) };
}

export function sprayOnCard(t: Telling, session: Session): Card {
  const words = t.words.session;
  return makeCard(words.titled(session.number, words.starts), 'plain', {
    facts: clockFacts(t, sessionStatus(t, session).clocks, ['spell']),
    lines: [words.started, ...airLines(t, session), ...spellLines(t, session)],
    actions: sessionTaps(t, session),
  });
}

export function sprayOffCard(t: Telling, session: Session): Card {
  const words = t.words.session;
  return makeCard(words.titled(session.number, words.stops), 'warn', {
    lines: [words.stopped, ...flushPlan(t, session)],
    hazards: flushConflicts(t, session),
    actions: sessionTaps(t, session),
  });
}

export function flushedCard(t: Telling, session: Session, gear: Gear): Card {
  const words = t.words.session;
  const { done, left } = flushState(session, gear);
  const logged = session.flushes.reduce((sum, flush) => sum + (flush.litres ?? 0), 0);
  const next = done ? [] : [words.flushNext(gear, left, t.f)];
  const open = stillOpen(session);
  return makeCard(words.titled(session.number, words.flushed(gear)), done ? 'good' : 'plain', {
    facts: logged === 0 ? [] : [volumeFact(t, 'solvent-logged', litres(logged))],
    lines: [...next, ...(open.length === 0 ? [] : [words.stillToDo(open, t.f)])],
    hazards: done ? [] : flushConflicts(t, session),
    actions: sessionTaps(t, session),
  });
}

export function closedCard(t: Telling, session: Session): Card {
  const words = t.words.session;
  const logged = session.flushes.reduce((sum, flush) => sum + (flush.litres ?? 0), 0);
  return makeCard(words.titled(session.number, words.closed), 'plain', {
    facts: [
      ...clockFacts(t, sessionStatus(t, session).clocks, ['fan']),
      ...(logged === 0 ? [] : [volumeFact(t, 'solvent-logged', litres(logged))]),
    ],
    lines: closingLines(t, session),
    hazards: workHazards(t, 'spray').filter(({ text }) => text === words.lines['fan-after']),
    actions: sessionTaps(t, session),
  });
}

function closingLines(t: Telling, session: Session): readonly string[] {
  const words = t.words.session;
  const until = fanUntil(session);
  if (session.spraying.length === 0) return [words.neverSprayed];
  const sum = clearingMinutes(session, t.shop.crew.spray);
  return [
    until === undefined ? words.fanUnknown : words.fanUntil(until, t.f),
    ...(sum === undefined ? [] : [words.fanFromSum(sum, t.f)]),
  ];
}

function flushPlan(t: Telling, { sheet }: Session): readonly string[] {
  const words = t.words.session;
  if (sheet.flush === undefined) return [words.noFlushOnSheet];
  return [words.flushSequence(sheet.flush.steps, sheet.flush.source, t.f)];
}

/** A flush solvent that flashes lower than the coating's own: the code and the sheet disagree, and the card says so. */
export function flushConflicts(t: Telling, { sheet }: Session): Card['hazards'] {
  const words = t.words.session;
  const sprayed = (sheet.spray?.solvents ?? []).flatMap(({ solvent }) => flashPointOf(solvent) ?? []);
  const lower = (sheet.flush?.steps ?? []).flatMap(({ solvent }) => {
    const flash = flashPointOf(solvent);
    if (flash === undefined || sprayed.length === 0) return [];
    const verdict = flushFlashPoint(flash, sprayed);
    if (isFailed(verdict) || verdict !== 'below-the-sprayed') return [];
    return [{ solvent, flash }];
  });
  if (lower.length === 0) return [];
  const lowest = celsius(Math.min(...sprayed));
  return [{ text: words.flushConflict(lower, lowest, t.f), source: t.words.names.figureSource('flush') }];
}

function flashPointOf(id: keyof typeof solvents): Celsius | undefined {
  const solvent = solvents[id];
  return 'flashPointCelsius' in solvent ? solvent.flashPointCelsius : undefined;
}
