// The spray brief and what is said after it. A brief is recorded, never passed: each line has its source, and what nobody
// has said stands there as such.

import { flushFlashPoint } from '../../core/calc/flammable.ts';
import { solvents } from '../../core/calc/solvents.ts';
import type { CommandOf } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import type { PersonName } from '../../core/ids.ts';
import { exposedIn, fanUntil, flushState, isRunning, type Session } from '../../core/session/session.ts';
import { clearingMinutes } from '../../core/session/session-air.ts';
import { isSessionGear } from '../../core/session/session-commands.ts';
import { sessionStatus } from '../../core/session/session-status.ts';
import { openSessions } from '../../core/shop.ts';
import { saidBeforeCleaning } from '../../core/steps/steps-said.ts';
import { type Celsius, celsius, litres } from '../../core/units.ts';
import { fanStaysLines, potLines } from './before-spraying.ts';
import { type BriefParts, briefLinesShown, briefParts } from './brief-short.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { lawLines } from './caution.ts';
import { clockFacts } from './clock-text.ts';
import { confinedLines, confinedTaps } from './confined-lines.ts';
import { factsOf } from './facts.ts';
import { figureSource } from './figure-source.ts';
import { fanAsBeforeTap, peopleAskedTaps } from './people-asked.ts';
import { sessionSums, sumSources } from './session-air-card.ts';
import { acknowledgedLines, airLines, hasPastDate, peopleLines, sessionTaps, stillOpen } from './session-lines.ts';
import { saidLines, strengthQuestion, weakLines } from './step-lines.ts';
import { hazardsCard, workHazards } from './vent-cards.ts';

/** What whoever sprays reads first; the rest, and the sums, have cards of their own, one tap away. */
export function briefCard(telling: Telling, session: Session): Card {
  const words = telling.words.session;
  const { number, spraying, insideVessel, place, sheet, batch, startsAt } = session;
  const confined = confinedLines(telling, session);
  return makeCard(
    words.briefed(number),
    confined.length > 0 ? 'stop' : hasPastDate(telling, session) ? 'warn' : 'plain',
    {
      lines: [
        ...confined,
        words.what(place, sheet.name, batch),
        ...(startsAt === undefined ? [] : [words.startsAt(startsAt, telling.figures)]),
        ...briefLinesShown(partsOf(telling, session)),
        [words.behindTaps, ...lawLines(telling)].join(' '),
        telling.words.replies.caution,
      ],
      hazards: flushConflicts(telling, session),
      actions: [
        ...(confined.length > 0 ? confinedTaps(telling, number, insideVessel ? undefined : place) : []),
        ...sessionTaps(telling, session),
        ...(spraying.length > 0
          ? []
          : [tap(telling, 'brief-rest', 'hazards spray'), tap(telling, 'vent', `vent ${number}`)]),
        ...fanAsBeforeTap(telling, session),
        ...peopleAskedTaps(telling, session),
      ],
      fields: [{ id: 'face-velocity', label: telling.words.facts['face-velocity'], unit: 'm/s' }],
      ping: [...new Set([...exposedIn(session), ...(session.attendant === undefined ? [] : [session.attendant])])],
    },
  );
}

/** All that the brief knows and does not know. */
function partsOf(telling: Telling, session: Session): BriefParts {
  const { sheet } = session;
  const { call } = telling.shop.crew.spray.emergency;
  const spell = spellLines(telling, session);
  return briefParts(telling, session, {
    unknown: [
      ...(sheet.spray === undefined ? spell.slice(0, 1) : []),
      ...(sheet.flush === undefined ? flushPlan(telling, session) : []),
      ...(call === undefined ? [emergencyLine(telling)] : []),
    ],
    known: [
      ...(call === undefined ? [] : [emergencyLine(telling)]),
      ...(sheet.flush === undefined ? [] : flushPlan(telling, session)),
      ...spell.slice(-1),
    ],
  });
}

/** One tap from the brief: every line of it, of the session that is open, before the hazards of spraying. */
export function allLinesCard(telling: Telling, asked: Parameters<typeof hazardsCard>[1]): Card {
  const card = hazardsCard(telling, asked);
  const session = asked.work === 'spray' ? openSessions(telling.shop).at(-1) : undefined;
  if (session === undefined) return card;
  const { unknown, known } = partsOf(telling, session);
  // That everybody exposed has supplied air is said above, by whom and when.
  const answered = session.suppliedAir?.supplied === true ? telling.words.session.lines['supplied-air'] : undefined;
  const hazards = card.hazards.filter(({ text }) => text !== answered);
  return { ...card, lines: [...unknown, ...known, ...card.lines], hazards };
}

function spellLines(telling: Telling, { sheet }: Session): readonly string[] {
  const words = telling.words.session;
  return [
    ...(sheet.spray === undefined ? [words.noSpray(sheet.name)] : []),
    words.lapses(sheet.spray?.longestSpellMinutes, telling.figures),
  ];
}

export function emergencyLine(telling: Telling): string {
  const { call } = telling.shop.crew.spray.emergency;
  return call === undefined ? telling.words.session.emergencyNotSet : telling.words.session.emergencyCall(call);
}

/** After an act: what it was, and what is still open. Short, since it is read at the booth's door. */
export function sessionCard(telling: Telling, session: Session, title: string, more: readonly string[] = []): Card {
  const { titled } = telling.words.session;
  const before = session.spraying.length === 0;
  const lines = before ? [...airLines(telling, session), ...acknowledgedLines(telling, session)] : [];
  return makeCard(titled(session.number, title), 'plain', {
    lines: [...more, ...lines],
    actions: sessionTaps(telling, session),
  });
}

/** Whoever is exposed from now on has the brief to read. */
export function placedCard(telling: Telling, session: Session, title: string, people: readonly PersonName[]): Card {
  const exposed = exposedIn(session).filter((name) => people.includes(name));
  return { ...sessionCard(telling, session, title, peopleLines(telling, session)), ping: exposed };
}

/** With the sums that the velocity allows. */
export function fanCard(telling: Telling, session: Session, title: string): Card {
  if (session.closedAt !== undefined) return fanOfClosedCard(telling, session, title);
  const { facts, lines } = sessionSums(telling, session);
  // Switched off before gun and vessels are flushed, it says what is asked of it all the same.
  const stays =
    session.extraction?.running === false && stillOpen(session).length > 0 ? fanStaysLines(telling, session) : [];
  const isStop = session.extraction?.running === false && isRunning(session);
  const now = isStop ? [telling.words.session.fanOffSpraying] : [];
  const card = sessionCard(telling, session, title, [...now, ...stays, ...lines]);
  return { ...card, ...(isStop && { tone: 'stop' }), facts, hazards: sumSources(telling) };
}

/** Off too soon, it says until when it should run. */
function fanOfClosedCard(telling: Telling, session: Session, title: string): Card {
  const words = telling.words.session;
  const { extraction } = session;
  const until = fanUntil(session);
  const isEarly = extraction?.running === false && (until === undefined || extraction.at < until);
  const off = extraction?.running === false ? [words.extractionOff(extraction.by, extraction.at, telling.figures)] : [];
  return makeCard(words.titled(session.number, title), isEarly ? 'warn' : 'plain', {
    lines: [...off, ...(isEarly ? closingLines(telling, session) : [])],
    actions: sessionTaps(telling, session),
  });
}

export function sprayOnCard(telling: Telling, session: Session): Card {
  const words = telling.words.session;
  return makeCard(words.titled(session.number, words.starts), 'plain', {
    facts: clockFacts(telling, sessionStatus(telling, session).clocks, ['spell']),
    lines: [
      ...potLines(telling, session),
      words.started,
      ...airLines(telling, session),
      ...spellLines(telling, session),
    ],
    actions: sessionTaps(telling, session),
  });
}

export function sprayOffCard(telling: Telling, session: Session): Card {
  const words = telling.words.session;
  const { stayOut } = sessionStatus(telling, session);
  const title = words.titled(session.number, words.stops);
  if (stayOut !== undefined) {
    return makeCard(title, 'stop', { lines: [words.monitor.stayOut(stayOut)], actions: sessionTaps(telling, session) });
  }
  return makeCard(title, 'warn', {
    lines: [
      words.stopped,
      ...fanStaysLines(telling, session),
      ...flushPlan(telling, session),
      ...weakLines(telling, batchOf(telling, session)),
      ...(session.flushes.length > 0 ? [] : saidLines(telling, saidBeforeCleaning(session.sheet))),
    ],
    hazards: flushConflicts(telling, session),
    actions: sessionTaps(telling, session),
  });
}

const batchOf = ({ shop }: Telling, { batch }: Session) => (batch === undefined ? undefined : shop.batches.get(batch));

export function flushedCard(telling: Telling, session: Session, flush: CommandOf<'flush'>): Card {
  const { gear, solvent } = flush;
  const question = strengthQuestion(telling, batchOf(telling, session), flush);
  const words = telling.words.session;
  // Other gear is cleaned for its batch and never reaches a session.
  const { done, left } = isSessionGear(gear) ? flushState(session, gear) : { done: true, left: [] };
  const title = solvent === undefined ? words.flushed(gear) : words.flushStep(gear, solvent);
  return makeCard(words.titled(session.number, title), done ? 'good' : 'plain', {
    facts: loggedFacts(telling, session),
    lines: [
      ...(done ? [] : [words.flushNext(gear, left, telling.figures)]),
      ...stillToDo(telling, session),
      ...fanStaysLines(telling, session),
      ...question.lines,
    ],
    hazards: done ? [] : flushConflicts(telling, session),
    actions: [...question.actions, ...sessionTaps(telling, session)],
  });
}

export const ragsCard = (telling: Telling, session: Session): Card =>
  sessionCard(telling, session, telling.words.session.ragsIn, stillToDo(telling, session));

function stillToDo(telling: Telling, session: Session): readonly string[] {
  const open = stillOpen(session);
  return open.length === 0 ? [] : [telling.words.session.stillToDo(open, telling.figures)];
}

function loggedFacts(telling: Telling, { flushes }: Session): readonly CardFact[] {
  const logged = flushes.reduce((sum, flush) => sum + (flush.litres ?? 0), 0);
  return factsOf(telling, { 'solvent-logged': logged === 0 ? undefined : litres(logged) });
}

export function closedCard(telling: Telling, session: Session): Card {
  const words = telling.words.session;
  return makeCard(words.titled(session.number, words.closed), 'plain', {
    facts: [...clockFacts(telling, sessionStatus(telling, session).clocks, ['fan']), ...loggedFacts(telling, session)],
    lines: closingLines(telling, session),
    hazards: workHazards(telling, 'spray').filter(({ text }) => text === words.lines['fan-after']),
    actions: sessionTaps(telling, session),
  });
}

function closingLines(telling: Telling, session: Session): readonly string[] {
  const words = telling.words.session;
  const until = fanUntil(session);
  if (session.spraying.length === 0) return [words.neverSprayed];
  const sum = clearingMinutes(session, telling.shop.crew.spray);
  return [
    until === undefined ? words.fanUnknown : words.fanUntil(until, telling.figures),
    ...(sum === undefined ? [] : [words.fanFromSum(sum, telling.figures)]),
  ];
}

function flushPlan(telling: Telling, { sheet }: Session): readonly string[] {
  const words = telling.words.session;
  if (sheet.flush === undefined) return [words.noFlushOnSheet];
  return [words.flushSequence(sheet.flush.steps, sheet.flush.source, telling.figures)];
}

/** A flush solvent that flashes lower than the coating's own: the code and the sheet disagree, and the card says so. */
function flushConflicts(telling: Telling, { sheet }: Session): Card['hazards'] {
  const words = telling.words.session;
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
  return [{ text: words.flushConflict(lower, lowest, telling.figures), source: figureSource(telling, 'flush') }];
}

function flashPointOf(id: keyof typeof solvents): Celsius | undefined {
  const solvent = solvents[id];
  return 'flashPointCelsius' in solvent ? solvent.flashPointCelsius : undefined;
}
