// The one write path: seen before? the same answer; else read up to the record's end, decide, seal the events, plan the
// bells, and land it all in one transaction, in its turn. Whether a delivery was seen before is asked here alone.

import type { Command, Stance } from './commands.ts';
import { decide } from './decide.ts';
import type { Envelope, EventBody, FactOf, NewEvent } from './history.ts';
import { crewStream, nounOf, type PersonName, type StreamId } from './ids.ts';
import { known } from './known.ts';
import { lookedAtAnew } from './looked-at-anew.ts';
import type { Objection, Unclear } from './objections.ts';
import type { Head } from './ports.ts';
import { holdsThatFollow, rewrites } from './records/holds-that-follow.ts';
import { planReminders } from './reminders/plan.ts';
import type { Posted } from './reminders/posts.ts';
import { seal, streamsTouched } from './seal.ts';
import type { Shop, Speaker } from './shop.ts';
import { streamsNamed } from './streams-named.ts';
import { oursAlone } from './unforeseen.ts';
import { type EpochMs, minutes, minutesAfter } from './units.ts';
import { mustRead, unreadUnder } from './unread.ts';
import { RestsOnUnread } from './unread-event.ts';
import type { PlannedReminder } from './wanted-reminder.ts';
import { type AnswerTo, createWriteQueue, type Draft, type WriteQueueDeps } from './write-queue.ts';

export interface Request extends Speaker {
  /** Of the delivery: the same one twice is one event and the same answer. */
  readonly id: string;
  readonly command: Command;
  readonly at: EpochMs;
  readonly stance: Stance;
}

export type Outcome =
  | {
      readonly kind: 'recorded';
      readonly envelopes: readonly Envelope[];
      /** As it was before, and as it is now. */
      readonly before: Shop;
      readonly shop: Shop;
      readonly plan: ReadonlyMap<StreamId, readonly PlannedReminder[]>;
    }
  | { readonly kind: 'objected'; readonly objections: readonly Objection[]; readonly shop: Shop }
  | { readonly kind: 'unclear'; readonly unclear: Unclear; readonly shop: Shop };

export type Recorded = Extract<Outcome, { kind: 'recorded' }>;

/** Words an outcome; what it returns is kept with the request and given again for the same delivery. */
export type Answering = (request: Request, outcome: Outcome) => string;

export type Delivered = Pick<Request, 'id' | 'now'>;

/** The act that a delivery asks for, as the record stands when its turn has come. */
export type Reads = (shop: Shop) => Request | undefined;

export interface Lately {
  /** Under which the speaker's last act went: what it ended may be put right all the same. */
  readonly lately?: readonly StreamId[];
}

export interface Photo extends Speaker {
  readonly id: string;
  readonly stream: StreamId;
  readonly at: EpochMs;
  readonly reference: string;
  readonly caption: string | undefined;
}

export interface Executor {
  /**
   * The answer's text; `undefined` where `read` finds no act in it, and nothing was to be written. Throws where the store
   * cannot write, and `Unforeseen` where deciding or wording breaks: then nothing was recorded.
   */
  readonly execute: (delivery: Delivered & Lately, read: Reads, answering: Answering) => Promise<string | undefined>;
  /** The shop with these streams loaded, for questions. */
  readonly look: (named?: readonly StreamId[]) => Promise<Shop>;
  /** False after an act or a ring that could not be recorded, until one is again. */
  readonly canWrite: () => boolean;
  /** A reminder reached its people: filed under its stream. */
  readonly recordRing: (posted: Posted, now: EpochMs) => Promise<void>;
  /** A picture, filed under a batch or part. What `answering` words is kept with the request, as for a command. */
  readonly filePhoto: (photo: Photo, answering: (shop: Shop) => string) => Promise<string>;
  /** The record's end, to be told outside; that it was is recorded. `undefined` while nothing is recorded. */
  readonly giveHash: (on: FactOf<'HashGiven'>['on'], now: EpochMs) => Promise<Head | undefined>;
  /** Makes every row equal to the plan: at start, and after a clock has jumped. */
  readonly reconcile: (now: EpochMs) => Promise<void>;
}

/** A shift: gear that was used before it is not what somebody cleans now, nor a fan that ran then what goes off. */
const usedWithin = 720;

/** Whose name stands under what the bot itself records. */
export const botName: PersonName = 'batchbell';

export function createExecutor(deps: WriteQueueDeps): Executor {
  const { store, keeper, crew } = deps;
  const { write, inTurn, canWrite } = createWriteQueue(deps);
  /** The same delivery is one event and the same answer, whoever brings it again, here or in another process. */
  const once = <T>({ id, now }: Delivered, make: (answerTo: AnswerTo) => Promise<Draft<string | T>>) =>
    write<string | T>(async (answerTo) => {
      const given = await answerTo(id);
      return given === undefined ? make(answerTo) : nothingNew(given, now);
    }, id);
  return {
    execute: (delivery, read, answering) =>
      once(delivery, async (answerTo) => {
        const request = read(await keeper.open(delivery.lately ?? []));
        if (request === undefined) return nothingNew(undefined, delivery.now);
        // One that must not be kept under the name that it came with.
        const given = request.id === delivery.id ? undefined : await answerTo(request.id);
        return given === undefined ? decided(deps, request, answering) : nothingNew(given, delivery.now);
      }),
    canWrite,
    look: (named = []) => inTurn(() => keeper.open(named)),
    recordRing: (posted, now) => write(() => ringDraft(deps, posted, now)),
    filePhoto: (photo, answering) => once(photo, () => photoDraft(deps, photo, answering)),
    giveHash: (on, now) => write(() => hashDraft(deps, on, now)),
    reconcile: (now) =>
      inTurn(async () => {
        const shop = await keeper.open([]);
        // Rows that were lost were not told late: the record asked for them from its last act on.
        const plannedAt = shop.crew.lastActedAt ?? now;
        const rows = { plan: planReminders(shop), live: new Map(), answers: [], now: plannedAt };
        await store.commit({ crew, after: keeper.landedHead(), envelopes: [], ...rows });
      }),
  };
}

async function decided(deps: WriteQueueDeps, request: Request, answering: Answering): Promise<Draft<string>> {
  const named = await streamsNamed(deps.store, deps.crew, request, deps.keeper.shop().crew.instruments);
  const besides = [
    ...(await justUsed(deps, request)),
    ...(await briefedBefore(deps, request)),
    ...(await lookedAtAnew(deps.store, deps.crew, request, named)),
  ];
  const before = await deps.keeper.openMore([...named, ...besides]);
  mustReadNamed(before, request, named);
  return oursAlone(request.command.verb, () => draftOf(deps, before, request, answering));
}

function draftOf(deps: WriteQueueDeps, before: Shop, request: Request, answering: Answering): Draft<string> {
  const { id, by, now } = request;
  const decision = decide(before, request);
  if (decision.kind !== 'accepted') {
    // An objection too is given again to the same delivery, though by then the act might be allowed.
    const text = answering(request, { ...decision, shop: before });
    return { ...nothingNew(text, now), answer: { request: id, by, text } };
  }
  mustRead(before, decision.events);
  const envelopes = withHolds(deps, decision.events, before, request);
  const shop = deps.keeper.preview(envelopes);
  const plan = planReminders(shop, streamsTouched(envelopes));
  const text = answering(request, { kind: 'recorded', envelopes, before, shop, plan });
  return { result: text, envelopes, plan, answer: { request: id, by, text }, now };
}

function sealed(
  { keeper, crew }: WriteQueueDeps,
  events: readonly NewEvent[],
  { by, id, now }: Pick<Request, 'by' | 'id' | 'now'>,
): readonly Envelope[] {
  return seal(events, { crew, head: keeper.head(), versionOf: keeper.versionOf, by, request: id, now });
}

/** The decision's events, and the holds that follow where they make an earlier act look otherwise. */
function withHolds(
  deps: WriteQueueDeps,
  events: readonly NewEvent[],
  before: Shop,
  request: Request,
): readonly Envelope[] {
  const envelopes = sealed(deps, events, request);
  const holds = rewrites(envelopes) ? holdsThatFollow(before, deps.keeper.preview(envelopes), request.now) : [];
  return holds.length === 0 ? envelopes : sealed(deps, [...events, ...holds], request);
}

/** What no rule was asked about: of the bot itself, or a picture. */
function draftAsIs<T>(
  deps: WriteQueueDeps,
  under: StreamId,
  body: EventBody,
  said: Pick<Request, 'by' | 'id' | 'now' | 'at'>,
  result: (shop: Shop) => T,
): Draft<T> {
  const envelopes = sealed(deps, [{ streams: [under], happenedAt: said.at, body }], said);
  const shop = deps.keeper.preview(envelopes);
  const plan = planReminders(shop, streamsTouched(envelopes));
  return { result: result(shop), envelopes, plan, answer: undefined, now: said.now };
}

async function ringDraft(deps: WriteQueueDeps, posted: Posted, now: EpochMs): Promise<Draft<undefined>> {
  const { reminder, at, possibleRepeat } = posted;
  const { key, ring, dueAt, to, stream, numberedKey } = reminder;
  await deps.keeper.open([stream]);
  const body = { type: 'Rang' as const, key, ring, dueAt, to: [...to], possibleRepeat };
  return draftAsIs(deps, stream, body, { by: botName, id: `ring:${numberedKey}`, now, at }, () => undefined);
}

async function photoDraft(
  deps: WriteQueueDeps,
  photo: Photo,
  answering: (shop: Shop) => string,
): Promise<Draft<string>> {
  const { id, stream, reference, caption } = photo;
  await deps.keeper.open([stream]);
  const body = { type: 'PhotoFiled' as const, reference, ...known({ caption }) };
  const draft = draftAsIs(deps, stream, body, photo, answering);
  return { ...draft, answer: { request: id, text: draft.result } };
}

async function hashDraft(
  deps: WriteQueueDeps,
  on: FactOf<'HashGiven'>['on'],
  now: EpochMs,
): Promise<Draft<Head | undefined>> {
  await deps.keeper.open([crewStream]);
  const head = deps.keeper.head();
  if (head.seq === 0) return nothingNew(undefined, now);
  const said = { by: botName, id: `given:${on}`, now, at: now };
  return draftAsIs(deps, crewStream, { type: 'HashGiven', ...head, on }, said, () => head);
}

/**
 * What is named must read, whatever would come of it: a part that is not known might be taken for a new one. Of what an
 * undo may reach, only the last counts: it takes back the last act and no other.
 */
function mustReadNamed(shop: Shop, { command }: Request, named: readonly StreamId[]): void {
  // A cry about a pot that does not read is a cry all the same.
  if (command.verb === 'ok' || command.verb === 'snooze' || command.verb === 'hot') return;
  const broken = (command.verb === 'undo' ? named.slice(0, 1) : named).flatMap((stream) => unreadUnder(shop, stream));
  if (broken.length > 0) throw new RestsOnUnread(broken);
}

/** Nothing is to be recorded. */
function nothingNew<T>(result: T, now: EpochMs): Draft<T> {
  return { result, envelopes: [], plan: new Map(), answer: undefined, now };
}

/** A brief is told with what was answered in the one before it. */
async function briefedBefore({ store, crew }: WriteQueueDeps, { command, at }: Request): Promise<readonly StreamId[]> {
  if (command.verb !== 'brief') return [];
  const touched = await store.streamsBetween(crew, minutesAfter(at, minutes(-24 * 60)), at);
  return touched.filter((stream) => nounOf(stream) === 'session');
}

/** What is cleaned may be of a pot that was emptied since, a fan of a session that was closed, which nobody waits for any more. */
async function justUsed({ store, crew }: WriteQueueDeps, { command, at }: Request): Promise<readonly StreamId[]> {
  if ((command.verb !== 'flush' && command.verb !== 'fan') || command.session !== undefined) return [];
  const touched = await store.streamsBetween(crew, minutesAfter(at, minutes(-usedWithin)), at);
  return touched.filter((stream) => nounOf(stream) === (command.verb === 'fan' ? 'session' : 'batch'));
}
