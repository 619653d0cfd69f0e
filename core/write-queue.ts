// One after another a crew: each act is decided on the record as the one before it left it. Acts of one turn of the event
// loop land in one transaction, and each is answered once it has landed; where they cannot land together, each goes alone.

import type { Envelope } from './history.ts';
import type { CrewId, StreamId } from './ids.ts';
import type { Answered, Change, Store } from './ports.ts';
import { streamsTouched } from './seal.ts';
import type { ShopKeeper } from './shop-keeper.ts';
import type { EpochMs } from './units.ts';
import type { PlannedReminder } from './wanted-reminder.ts';

/** What an act writes, and what it gives to whoever asked once that has landed. */
export interface Draft<T> {
  readonly result: T;
  readonly envelopes: readonly Envelope[];
  /** Of every stream whose bells these events can have moved. */
  readonly plan: ReadonlyMap<StreamId, readonly PlannedReminder[]>;
  /** Kept for the same delivery. */
  readonly answer: Answered | undefined;
  readonly now: EpochMs;
}

/** Knows the answers that are about to land as well. */
export type AnswerTo = (request: string) => Promise<string | undefined>;

/** Decides on the record as the keeper has it. */
export type Making<T> = (answerTo: AnswerTo) => Promise<Draft<T>>;

export interface WriteQueue {
  /**
   * `delivery`: whose answer the making asks for. Throws where the making does, or where the store cannot write: then
   * nothing was recorded.
   */
  readonly write: <T>(make: Making<T>, delivery?: string) => Promise<T>;
  /** What must not meet acts that have not landed yet. */
  readonly inTurn: <T>(work: () => Promise<T>) => Promise<T>;
  /** False after events that could not be recorded, until some are again. */
  readonly canWrite: () => boolean;
}

/** An act that waits for its turn. */
interface Act {
  readonly delivery: string | undefined;
  /** Its draft is staged; `give` gives to whoever asked what it promised. */
  readonly make: (answerTo: AnswerTo) => Promise<Made>;
  readonly fail: (error: unknown) => void;
}

interface Made {
  readonly act: Act;
  readonly draft: Draft<unknown>;
  readonly give: () => void;
}

export interface WriteQueueDeps {
  readonly store: Store;
  readonly keeper: ShopKeeper;
  readonly crew: CrewId;
  /** Resolves when this turn of the event loop is over. Left out, only what is asked in one breath lands together. */
  readonly turnOver?: () => Promise<void>;
}

/** So that nobody at the front waits long for those behind. */
const mostTogether = 64;

export function createWriteQueue({ store, keeper, crew, turnOver }: WriteQueueDeps): WriteQueue {
  const landing: Landing = { store, keeper, crew, writes: true };
  let queue: Promise<unknown> = Promise.resolve();
  let gathering: Act[] | undefined;

  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const turn = queue.then(work, work);
    queue = turn.catch(() => undefined);
    return turn;
  }

  function gather(act: Act): void {
    if (gathering !== undefined && gathering.length < mostTogether) {
      gathering.push(act);
      return;
    }
    const acts = [act];
    gathering = acts;
    inTurn(async () => {
      await turnOver?.();
      if (gathering === acts) gathering = undefined;
      await land(landing, acts);
    }).catch((error: unknown) => {
      for (const { fail } of acts) fail(error);
    });
  }

  return {
    write: (make, delivery) => new Promise((give, fail) => gather(actOf(delivery, make, give, fail))),
    inTurn,
    canWrite: () => landing.writes,
  };
}

function actOf<T>(delivery: Act['delivery'], make: Making<T>, give: (result: T) => void, fail: Act['fail']): Act {
  const act: Act = {
    delivery,
    make: async (answerTo) => {
      const draft = await make(answerTo);
      return { act, draft, give: () => give(draft.result) };
    },
    fail,
  };
  return act;
}

/** Where acts land. */
interface Landing extends Pick<WriteQueueDeps, 'store' | 'keeper' | 'crew'> {
  /** False after events that could not be recorded, until some are again. */
  writes: boolean;
}

async function land(landing: Landing, acts: readonly Act[]): Promise<void> {
  const { keeper } = landing;
  for (;;) {
    const made = await makeEach(landing, acts);
    const landed = await commit(
      landing,
      made.map(({ draft }) => draft),
    );
    if (landed === 'committed') {
      keeper.land();
      for (const { give } of made) give();
      return;
    }
    keeper.drop();
    if (made.length > 1) {
      for (const { act } of made) await land(landing, [act]);
      return;
    }
    if (landed !== 'conflict') {
      for (const each of made) refuse(each, landed.error);
      return;
    }
  }
}

/** One that cannot be decided fails alone: the others are decided as if it had not been asked. */
async function makeEach({ store, keeper, crew }: Landing, acts: readonly Act[]): Promise<readonly Made[]> {
  const made: Made[] = [];
  const answers = new Map<string, string | undefined>();
  const lookUp = async (requests: readonly string[]) => {
    const found = await store.answersTo(crew, requests);
    for (const request of requests) answers.set(request, found.get(request));
  };
  const answerTo: AnswerTo = async (request) => {
    if (!answers.has(request)) await lookUp([request]);
    return answers.get(request);
  };
  const deliveries = acts.flatMap(({ delivery }) => delivery ?? []);
  if (deliveries.length > 0) await lookUp(deliveries);
  for (const act of acts) {
    try {
      const each = await act.make(answerTo);
      const { envelopes, answer } = each.draft;
      keeper.stage(envelopes);
      if (answer !== undefined) answers.set(answer.request, answer.text);
      made.push(each);
    } catch (error) {
      act.fail(error);
    }
  }
  return made;
}

async function commit(
  landing: Landing,
  drafts: readonly Draft<unknown>[],
): Promise<'committed' | 'conflict' | { error: unknown }> {
  const change = changeOf(landing, drafts);
  if (change === undefined) return 'committed';
  const records = change.envelopes.length > 0;
  try {
    const landed = await landing.store.commit(change);
    if (records) landing.writes = true;
    return landed;
  } catch (error) {
    if (records) landing.writes = false;
    return { error };
  }
}

/** `undefined` where there is nothing to write. */
function changeOf({ keeper, crew }: Landing, drafts: readonly Draft<unknown>[]): Change | undefined {
  const envelopes = drafts.flatMap((draft) => draft.envelopes);
  const answers = drafts.flatMap(({ answer }) => answer ?? []);
  const last = drafts.at(-1);
  if (last === undefined || (envelopes.length === 0 && answers.length === 0)) return undefined;
  const live = [...streamsTouched(envelopes)].map((stream) => [stream, keeper.isLive(stream)] as const);
  // The later plan of a stream holds. A batch that was undone is in no plan; its rows must go all the same.
  const plan = drafts.flatMap((draft) => [
    ...[...streamsTouched(draft.envelopes)]
      .filter((stream) => !keeper.keepsItsBells(stream))
      .map((stream) => [stream, []] as const),
    ...draft.plan,
  ]);
  const rest = { plan: new Map(plan), live: new Map(live), answers, now: last.now };
  return { crew, after: keeper.landedHead(), envelopes, ...rest };
}

/** Where nothing was to be recorded, the answer stands without being kept. */
function refuse({ act, draft, give }: Made, error: unknown): void {
  if (draft.envelopes.length === 0) give();
  else act.fail(error);
}
