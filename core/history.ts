// The record: envelopes that are only ever added, each with the hash of the crew's event before it (core/seal-sums.ts), and
// an event as it now stands (core/as-it-stands.ts).

import { z } from 'zod';
import { BatchEvent } from './batch/batch-events.ts';
import { CanEvent } from './can/can-events.ts';
import { AlarmEvent } from './crew/alarm-events.ts';
import { CrewEvent } from './crew/crew-events.ts';
import type { CrewId, PersonName, StreamId } from './ids.ts';
import { InstrumentEvent } from './instrument/instrument-events.ts';
import type { Lift } from './lift-names.ts';
import { PartEvent } from './part/part-events.ts';
import { PlaceEvent } from './place/place-events.ts';
import type { Edition } from './rule-editions.ts';
import type { SealName } from './seal-names.ts';
import { SessionEvent } from './session/session-events.ts';
import { StepAnswered } from './steps/step-events.ts';
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
  InstrumentEvent,
  StepAnswered,
]);
/** Anything that can have happened. */
export type Fact = z.infer<typeof Fact>;
export type FactOf<Type extends Fact['type']> = Extract<Fact, { type: Type }>;

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
  /** Of a decision: each thing that stood against it, with its own reason. */
  readonly lifts?: readonly Lift[];
}

export interface NewEvent {
  /** The first is its home; the others are concerned too. */
  readonly streams: readonly [StreamId, ...StreamId[]];
  readonly happenedAt: EpochMs;
  readonly body: EventBody;
  /** Left out: nothing spoke against it. */
  readonly saidWith?: SaidWith;
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

/** A correction is an act as well: whoever corrects a batch has heard its bell. */
export const lastSeqOf = ({ seq, corrections }: Entry): number => Math.max(seq, corrections.at(-1)?.seq ?? 0);

/** Said so long after the act that the record calls it late. */
const lateAfterMs = 60_000;

export function isLate(entry: Pick<Entry, 'happenedAt' | 'recordedAt'>): boolean {
  return entry.recordedAt - entry.happenedAt > lateAfterMs;
}
