// The one write path. One at a time a crew: seen before? the same answer; else read up to the record's end, decide,
// seal the events, plan the bells, and land it all in one transaction. Whoever finds that the record has moved on
// meanwhile decides again.

import type { Command, Stance } from './commands.ts';
import { decide } from './decide.ts';
import { type Envelope, hashOf, type NewEvent } from './history.ts';
import { batchStream, type CrewId, crewStream, type PersonName, partStream, type StreamId } from './ids.ts';
import type { Objection, Unclear } from './objections.ts';
import type { ClaimedReminder, Store } from './ports.ts';
import { planReminders } from './reminders/plan.ts';
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

/** Words an outcome; what it returns is kept with the request and given again for the same delivery. */
export type Answering = (request: Request, outcome: Outcome) => string;

export interface Executor {
  /** The answer's text, and whether events landed. Throws where the store cannot write: then nothing was recorded. */
  readonly execute: (request: Request, answering: Answering) => Promise<string>;
  readonly answerBefore: (id: string) => Promise<string | undefined>;
  /** The shop with these streams loaded, for questions. */
  readonly look: (named?: readonly StreamId[]) => Promise<Shop>;
  /** A reminder reached its people: filed under its stream. */
  readonly recordRing: (claimed: ClaimedReminder, now: EpochMs, possibleRepeat: boolean) => Promise<void>;
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
        ...{ crew, seq: head.seq + 1 + i, stream, version, alsoUnder, happenedAt, recordedAt: now, by, request },
        ...{ saidWith, body, previousHash },
      };
      const envelope = { ...unsealed, hash: hashOf(unsealed) };
      previousHash = envelope.hash;
      return envelope;
    });
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
    const landed = await store.commit({ crew, after, envelopes, plan: withTouched, live, answer, now });
    if (landed === 'conflict') return false;
    keeper.add(envelopes);
    return true;
  }

  async function decideAndLand(request: Request, answering: Answering): Promise<string> {
    for (;;) {
      const before = await keeper.open(await streamsOf(store, crew, request));
      const decision = decide(before, request);
      if (decision.kind !== 'accepted') return answering(request, { ...decision, shop: before });
      const envelopes = seal(decision.events, request.by, request.id, request.now);
      const shop = keeper.preview(envelopes);
      const plan = planReminders(shop, streamsTouched(envelopes));
      const text = answering(request, { kind: 'recorded', envelopes, before, shop, plan });
      if (await land(envelopes, shop, plan, { request: request.id, text }, request.now)) return text;
    }
  }

  return {
    execute: (request, answering) =>
      inTurn(async () => (await store.answerTo(crew, request.id)) ?? (await decideAndLand(request, answering))),

    answerBefore: (id) => store.answerTo(crew, id),

    look: (named = []) => inTurn(() => keeper.open(named)),

    recordRing: (claimed, now, possibleRepeat) =>
      inTurn(async () => {
        for (;;) {
          await keeper.open([claimed.stream]);
          const { key, ring, dueAt, to } = claimed;
          const body = { type: 'Rang' as const, key, ring, dueAt, to: [...to], possibleRepeat };
          const event: NewEvent = { streams: [claimed.stream], happenedAt: now, body, saidWith: { despite: [] } };
          const envelopes = seal([event], botName, `ring:${claimed.numberedKey}`, now);
          const shop = keeper.preview(envelopes);
          const plan = planReminders(shop, streamsTouched(envelopes));
          if (await land(envelopes, shop, plan, undefined, now)) return;
        }
      }),

    reconcile: (now) =>
      inTurn(async () => {
        const shop = await keeper.open([]);
        await store.commit({
          ...{ crew, after: keeper.head(), envelopes: [], plan: planReminders(shop), live: new Map(), now },
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
  if ('part' in of && of.part !== undefined) streams.push(partStream(of.part));
  if ('parts' in of) streams.push(...of.parts.map(partStream));
  return streams;
}
