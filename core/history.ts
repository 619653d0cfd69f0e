// The record: envelopes that are only ever added, each with the hash of the crew's event before it (core/seal-sums.ts), and
// the reading of a history in which corrections stand in place. What was corrected stays visible beside what replaced it.

import { z } from 'zod';
import { BatchEvent } from './batch/batch-events.ts';
import { CanEvent } from './can/can-events.ts';
import { AlarmEvent } from './crew/alarm-events.ts';
import { CrewEvent } from './crew/crew-events.ts';
import type { CrewId, PersonName, StreamId } from './ids.ts';
import { PartEvent } from './part/part-events.ts';
import { PlaceEvent } from './place/place-events.ts';
import type { Edition } from './rule-editions.ts';
import type { SealName } from './seal-names.ts';
import { SessionEvent } from './session/session-events.ts';
import { EpochMs as EpochMsSchema } from './unit-schemas.ts';
import type { EpochMs } from './units.ts';

export const Fact = z.discriminatedUnion('type', [
  BatchEvent,
  CanEvent,
  PartEvent,
  PlaceEvent,
  CrewEvent,
  SessionEvent,
  AlarmEvent,
]);
/** Anything that can have happened. */
export type Fact = z.infer<typeof Fact>;

/** Corrects one earlier event: another body or time in its place, or nothing at all (`undone`). */
export const Amended = z.object({
  type: z.literal('Amended'),
  amends: z.number().int().positive(),
  to: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('corrected'), fact: Fact, happenedAt: EpochMsSchema }),
    z.object({ kind: z.literal('undone') }),
  ]),
  why: z.string(),
});
export type Amended = z.infer<typeof Amended>;

export const EventBody = z.discriminatedUnion('type', [Fact, Amended]);
export type EventBody = z.infer<typeof EventBody>;
export type EventType = EventBody['type'];

/** How it was said: despite which objections, with whose leave. */
export interface SaidWith {
  readonly despite: readonly string[];
  /** Why a lead or supervisor allowed it beforehand. */
  readonly permitted?: string;
}

export interface NewEvent {
  /** The first is its home; the others are concerned too. */
  readonly streams: readonly [StreamId, ...StreamId[]];
  readonly happenedAt: EpochMs;
  readonly body: EventBody;
  readonly saidWith: SaidWith;
  /** In place of the speaker, whose name must not be kept. */
  readonly by?: PersonName;
}

export interface Envelope {
  readonly crew: CrewId;
  /** Counts the crew's events from 1, without gaps. */
  readonly seq: number;
  readonly stream: StreamId;
  readonly version: number;
  readonly alsoUnder: readonly StreamId[];
  readonly happenedAt: EpochMs;
  readonly recordedAt: EpochMs;
  readonly by: PersonName;
  readonly request: string;
  readonly saidWith: SaidWith;
  readonly body: EventBody;
  /** Of the rules that judged it. */
  readonly edition: Edition;
  /** In which shape its body was written (core/event-shapes.ts). Read here it has today's. */
  readonly shape: number;
  /** By which sum its hash is made. */
  readonly seal: SealName;
  /** Of the crew's event before this one; 64 zeros for the first. */
  readonly previousHash: string;
  readonly hash: string;
}

export interface Correction {
  readonly seq: number;
  readonly request: string;
  readonly by: PersonName;
  readonly at: EpochMs;
  readonly why: string;
  readonly wasFact: Fact;
  readonly wasAt: EpochMs;
}

/** One event as it now stands. */
export interface Entry {
  readonly seq: number;
  readonly stream: StreamId;
  readonly alsoUnder: readonly StreamId[];
  readonly happenedAt: EpochMs;
  readonly recordedAt: EpochMs;
  readonly by: PersonName;
  readonly request: string;
  readonly saidWith: SaidWith;
  readonly edition: Edition;
  readonly fact: Fact;
  readonly corrections: readonly Correction[];
}

/** What the bot records of its own: what rang, who heard it or put it off, and that a hash was told outside. */
export const notActs = ['Rang', 'RingAnswered', 'RingSnoozed', 'HashGiven'] as const satisfies readonly Fact['type'][];

/** What people did, corrections among it. */
export function isActType(type: EventType): boolean {
  const others: readonly EventType[] = notActs;
  return !others.includes(type);
}

export function isAct(entry: Pick<Entry, 'fact'>): boolean {
  return isActType(entry.fact.type);
}

/** Said so long after the act that the record calls it late. */
const lateAfterMs = 60_000;

export function isLate(entry: Pick<Entry, 'happenedAt' | 'recordedAt'>): boolean {
  return entry.recordedAt - entry.happenedAt > lateAfterMs;
}

/** Everything else of its stream rests on it. */
const opening: ReadonlySet<Fact['type']> = new Set(['BatchOpened', 'CanOpened', 'SessionBriefed']);

/**
 * A stream's history as it now stands: corrections applied in place, what was undone left out, in the order in which
 * things happened. A batch's, can's or session's opening stays first, since everything else rests on it.
 */
export function asItStands(envelopes: readonly Envelope[]): readonly Entry[] {
  const standing = new Map<number, Entry>();
  for (const envelope of envelopes) {
    const { body } = envelope;
    if (body.type !== 'Amended') {
      standing.set(envelope.seq, asItWasSaid(envelope, body));
      continue;
    }
    const entry = standing.get(body.amends);
    if (entry === undefined) continue;
    if (body.to.kind === 'undone') standing.delete(body.amends);
    else standing.set(body.amends, corrected(entry, envelope, body.to.fact, body.to.happenedAt, body.why));
  }
  return [...standing.values()].sort(inOrder);
}

/** In which order the entries of a stream are folded. */
export function inOrder(a: Entry, b: Entry): number {
  const opens = ({ fact }: Entry) => (opening.has(fact.type) ? 0 : 1);
  return opens(a) - opens(b) || a.happenedAt - b.happenedAt || a.seq - b.seq;
}

function asItWasSaid(envelope: Envelope, fact: Fact): Entry {
  return { ...envelope, fact, corrections: [] };
}

/** The same with events that happened after all of these; `undefined` where one of them belongs further up. */
export function asItStandsWith(entries: readonly Entry[], added: readonly Envelope[]): readonly Entry[] | undefined {
  let last = entries.at(-1);
  const more: Entry[] = [];
  for (const envelope of added) {
    const { body, happenedAt } = envelope;
    const follows = last !== undefined && happenedAt >= last.happenedAt;
    if (!follows || body.type === 'Amended' || opening.has(body.type)) return undefined;
    last = asItWasSaid(envelope, body);
    more.push(last);
  }
  return [...entries, ...more];
}

/** Of entries in the order in which things happened, those up to and including `at`. */
export function asItStoodAt(entries: readonly Entry[], at: EpochMs): readonly Entry[] {
  return entries.filter((entry) => entry.happenedAt <= at);
}

function corrected(entry: Entry, by: Envelope, fact: Fact, happenedAt: EpochMs, why: string): Entry {
  const correction: Correction = {
    seq: by.seq,
    request: by.request,
    by: by.by,
    at: by.recordedAt,
    why,
    wasFact: entry.fact,
    wasAt: entry.happenedAt,
  };
  return { ...entry, fact, happenedAt, corrections: [...entry.corrections, correction] };
}
