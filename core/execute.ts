// The one write path. One at a time a crew: seen before? the same answer; else read up to the record's end, decide,
// seal the events, plan the bells, and land it all in one transaction. Whoever finds that the record has moved on
// meanwhile decides again.

import type { Command, Stance } from './commands.ts';
import type { HashGiven } from './crew/ledger-events.ts';
import { decide } from './decide.ts';
import { type Envelope, type EventBody, hashOf, type NewEvent } from './history.ts';
import {
  batchStream,
  type CrewId,
  canStream,
  crewStream,
  type PersonName,
  partStream,
  type StreamId,
  sessionStream,
} from './ids.ts';
import type { Objection, Unclear } from './objections.ts';
import type { Change, Head, Store } from './ports.ts';
import { holdsThatFollow, rewrites } from './records/holds-that-follow.ts';
import { planReminders } from './reminders/plan.ts';
import type { Posted } from './reminders/posts.ts';
import type { PlannedReminder } from './reminders/wish.ts';
import type { Shop, Speaker } from './shop.ts';
import type { ShopKeeper } from './shop-keeper.ts';
import type { EpochMs } from './units.ts';

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

export interface Photo extends Speaker {
  readonly id: string;
  readonly stream: StreamId;
  readonly at: EpochMs;
  readonly reference: string;
  readonly caption: string | undefined;
}

export interface Executor {
  /** The answer's text, and whether events landed. Throws where the store cannot write: then nothing was recorded. */
  readonly execute: (request: Request, answering: Answering) => Promise<string>;
  readonly answerBefore: (id: string) => Promise<string | undefined>;
  /** The shop with these streams loaded, for questions. */
  readonly look: (named?: readonly StreamId[]) => Promise<Shop>;
  /** False after an act or a ring that could not be recorded, until one is again. */
  readonly canWrite: () => boolean;
  /** A reminder reached its people: filed under its stream. */
  readonly recordRing: (posted: Posted, now: EpochMs) => Promise<void>;
  /** A picture, filed under a batch or part. What `answering` words is kept with the request, as for a command. */
  readonly filePhoto: (photo: Photo, answering: (shop: Shop) => string) => Promise<string>;
  /** The record's end, to be told outside; that it was is recorded. `undefined` while nothing is recorded. */
  readonly giveHash: (on: HashGiven['on'], now: EpochMs) => Promise<Head | undefined>;
  /** Makes every row equal to the plan: at start, and after a clock has jumped. */
  readonly reconcile: (now: EpochMs) => Promise<void>;
}

export interface ExecutorNeeds {
  readonly store: Store;
  readonly keeper: ShopKeeper;
  readonly crew: CrewId;
}

/** Whose name stands under what the bot itself records. */
export const botName: PersonName = 'batchbell';

export function createExecutor({ store, keeper, crew }: ExecutorNeeds): Executor {
  let queue: Promise<unknown> = Promise.resolve();
  let writes = true;

  /** One after another: the next decision must see this one's events. */
  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const turn = queue.then(work, work);
    queue = turn.catch(() => undefined);
    return turn;
  }

  function seal(events: readonly NewEvent[], by: PersonName, request: string, now: EpochMs): readonly Envelope[] {
    const head = keeper.head();
    const versions = new Map<StreamId, number>();
    let previousHash = head.hash;
    return events.map((event, i) => {
      const [stream, ...alsoUnder] = event.streams;
      const version = (versions.get(stream) ?? keeper.versionOf(stream)) + 1;
      versions.set(stream, version);
      const { happenedAt, saidWith, body } = event;
      const unsealed = {
        crew,
        seq: head.seq + 1 + i,
        stream,
        version,
        alsoUnder,
        happenedAt,
        recordedAt: now,
        by: event.by ?? by,
        request,
        saidWith,
        body,
        previousHash,
      };
      const envelope = { ...unsealed, hash: hashOf(unsealed) };
      previousHash = envelope.hash;
      return envelope;
    });
  }

  async function commit(change: Change): Promise<'committed' | 'conflict'> {
    try {
      const landed = await store.commit(change);
      writes = true;
      return landed;
    } catch (error) {
      writes = false;
      throw error;
    }
  }

  async function land(
    envelopes: readonly Envelope[],
    shop: Shop,
    plan: ReadonlyMap<StreamId, readonly PlannedReminder[]>,
    answer: { request: string; text: string } | undefined,
    now: EpochMs,
  ): Promise<boolean> {
    const touched = streamsTouched(envelopes);
    const live = new Map([...touched].map((stream) => [stream, keeper.isLive(shop, stream)]));
    // A batch that was undone folds to nothing; its rows must go all the same.
    const withTouched = new Map([...[...touched].map((stream) => [stream, []] as const), ...plan]);
    const after = keeper.head();
    const landed = await commit({ crew, after, envelopes, plan: withTouched, live, answer, now });
    if (landed === 'conflict') return false;
    keeper.add(envelopes);
    return true;
  }

  /** The decision's events, and the holds that follow where they make an earlier act look otherwise. */
  function withHolds(events: readonly NewEvent[], before: Shop, { by, id, now }: Request): readonly Envelope[] {
    const envelopes = seal(events, by, id, now);
    const holds = rewrites(envelopes) ? holdsThatFollow(before, keeper.preview(envelopes), now) : [];
    return holds.length === 0 ? envelopes : seal([...events, ...holds], by, id, now);
  }

  async function decideAndLand(request: Request, answering: Answering): Promise<string> {
    for (;;) {
      const given = await store.answerTo(crew, request.id);
      if (given !== undefined) return given;
      const before = await keeper.open(await streamsOf(store, crew, request));
      const decision = decide(before, request);
      if (decision.kind !== 'accepted') {
        const text = answering(request, { ...decision, shop: before });
        await remember(request, text);
        return text;
      }
      const envelopes = withHolds(decision.events, before, request);
      const shop = keeper.preview(envelopes);
      const plan = planReminders(shop, streamsTouched(envelopes));
      const text = answering(request, { kind: 'recorded', envelopes, before, shop, plan });
      if (await land(envelopes, shop, plan, { request: request.id, text }, request.now)) return text;
    }
  }

  /** What the bot itself records: again from the record's new end where somebody else was first. */
  async function landOwn(
    stream: StreamId,
    request: string,
    now: EpochMs,
    make: (head: Head) => { readonly body: EventBody; readonly at: EpochMs } | undefined,
  ): Promise<void> {
    for (;;) {
      await keeper.open([stream]);
      const made = make(keeper.head());
      if (made === undefined) return;
      const event: NewEvent = { streams: [stream], happenedAt: made.at, body: made.body, saidWith: { despite: [] } };
      const envelopes = seal([event], botName, request, now);
      const shop = keeper.preview(envelopes);
      const plan = planReminders(shop, streamsTouched(envelopes));
      if (await land(envelopes, shop, plan, undefined, now)) return;
    }
  }

  /** An objection too is given again to the same delivery, though by then the act might be allowed. */
  async function remember({ id, now }: Request, text: string): Promise<void> {
    const nothing = { envelopes: [], plan: new Map(), live: new Map() };
    try {
      await store.commit({ crew, after: await store.head(crew), ...nothing, answer: { request: id, text }, now });
    } catch {
      // Nothing was to be recorded, so the answer stands without it.
    }
  }

  return {
    execute: (request, answering) => inTurn(() => decideAndLand(request, answering)),

    answerBefore: (id) => store.answerTo(crew, id),

    canWrite: () => writes,

    look: (named = []) => inTurn(() => keeper.open(named)),

    recordRing: ({ reminder, at, possibleRepeat }, now) =>
      inTurn(async () => {
        const { key, ring, dueAt, to, stream } = reminder;
        const body = { type: 'Rang' as const, key, ring, dueAt, to: [...to], possibleRepeat };
        await landOwn(stream, `ring:${reminder.numberedKey}`, now, () => ({ body, at }));
      }),

    filePhoto: (photo, answering) =>
      inTurn(async () => {
        const { id, by, now, at, stream, reference, caption } = photo;
        for (;;) {
          const given = await store.answerTo(crew, id);
          if (given !== undefined) return given;
          await keeper.open([stream]);
          const body = { type: 'PhotoFiled' as const, reference, ...(caption === undefined ? {} : { caption }) };
          const event: NewEvent = { streams: [stream], happenedAt: at, body, saidWith: { despite: [] } };
          const envelopes = seal([event], by, id, now);
          const shop = keeper.preview(envelopes);
          const text = answering(shop);
          const plan = planReminders(shop, streamsTouched(envelopes));
          if (await land(envelopes, shop, plan, { request: id, text }, now)) return text;
        }
      }),

    giveHash: (on, now) =>
      inTurn(async () => {
        let given: Head | undefined;
        await landOwn(crewStream, `given:${on}`, now, (head) => {
          given = head.seq === 0 ? undefined : head;
          return given && { body: { type: 'HashGiven', ...given, on }, at: now };
        });
        return given;
      }),

    reconcile: (now) =>
      inTurn(async () => {
        const shop = await keeper.open([]);
        // Rows that were lost were not told late: the record asked for them from its last act on.
        const plannedAt = shop.crew.lastActedAt ?? now;
        await store.commit({
          crew,
          after: keeper.head(),
          envelopes: [],
          plan: planReminders(shop),
          live: new Map(),
          now: plannedAt,
          answer: undefined,
        });
      }),
  };
}

function streamsTouched(envelopes: readonly Envelope[]): ReadonlySet<StreamId> {
  return new Set(envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]));
}

/** Which streams a command names, besides those that are live. */
async function streamsOf(store: Store, crew: CrewId, request: Request): Promise<readonly StreamId[]> {
  const { command } = request;
  if (command.verb === 'undo') return store.streamsLastTouched(crew, request.by);
  const streams: StreamId[] = [crewStream];
  const of = command.verb === 'amend' ? command.of : command;
  if ('batch' in of && of.batch !== undefined) streams.push(batchStream(of.batch));
  if ('can' in of && of.can !== undefined) streams.push(canStream(of.can));
  if ('cans' in of) streams.push(...(of.cans ?? []).map(canStream));
  if ('session' in of && of.session !== undefined) streams.push(sessionStream(of.session));
  if ('part' in of && of.part !== undefined) streams.push(partStream(of.part));
  if ('more' in of) streams.push(...(of.more ?? []).map(({ part }) => partStream(part)));
  if ('parts' in of) streams.push(...of.parts.map(partStream));
  return streams;
}
