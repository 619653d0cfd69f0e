// Rings what is due: claim the earliest, post, record; again until nothing is due. At least once, and at most once as
// far as anyone can know: a ring whose post had no answer is looked for, then posted once more, marked as possibly
// repeated. A store that cannot write does not silence the bells: they ring from the last plan that memory holds, the
// leads are told, and what rang is recorded as soon as it can be.

import type { Executor } from '../execute.ts';
import type { ClaimedReminder, Clock, LateWhy, Log, Messenger, Store } from '../ports.ts';
import type { ShopKeeper } from '../shop-keeper.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { unreadIn } from '../unread.ts';
import { type UnreadEvent, unreadSaid } from '../unread-event.ts';
import { byDueTime, type PlannedReminder } from '../wanted-reminder.ts';
import { planReminders } from './plan.ts';
import { createPosts, type Posts } from './posts.ts';

const leaseMs = 30_000;
/** Shorter than a person takes to wonder; never longer than the lease. */
const backoffMs = [1_000, 2_000, 5_000, 10_000, 20_000] as const;
/** Rung within this of its due time, a bell is on time. */
const onTimeMs = 60_000;

export interface Ringer {
  /** Rings everything due by now, by due time, then key. Never throws. */
  readonly ringDue: () => Promise<void>;
  /** When something next may ring, as far as store or memory know. */
  readonly nextDueAt: () => Promise<EpochMs | undefined>;
}

export interface RingerDeps {
  readonly store: Store;
  readonly executor: Executor;
  readonly keeper: ShopKeeper;
  readonly messenger: Messenger;
  readonly clock: Clock;
  readonly log: Log;
  readonly crew: string;
}

/** What a ringer remembers between one look at the bells and the next. */
interface Ringing extends RingerDeps {
  readonly startedAt: EpochMs;
  readonly posts: Posts;
  /** When the bell last looked for what is due. */
  lookedAt: EpochMs;
  /** Of what does not read, by number: in the log, and said to the leads. */
  readonly unread: { readonly logged: Set<number>; readonly told: Set<number> };
  trouble: { readonly leadsTold: boolean } | undefined;
}

export function createRinger(deps: RingerDeps): Ringer {
  const startedAt = deps.clock.now();
  const unread = { logged: new Set<number>(), told: new Set<number>() };
  const ringing: Ringing = {
    ...deps,
    startedAt,
    posts: createPosts(deps),
    lookedAt: startedAt,
    unread,
    trouble: undefined,
  };
  return { ringDue: () => ringDue(ringing), nextDueAt: () => nextDueAt(ringing) };
}

async function ringDue(ringing: Ringing): Promise<void> {
  const { executor, log, clock } = ringing;
  try {
    await recordPosted(ringing);
    if (!executor.canWrite()) throw new Error('the last act could not be recorded');
    while (await ringOne(ringing)) {}
    if (ringing.trouble !== undefined) log.info('store-healed');
    ringing.trouble = undefined;
  } catch (error) {
    if (ringing.trouble === undefined) log.error('store-failed', { error: String(error) });
    ringing.trouble ??= { leadsTold: false };
    if (!ringing.trouble.leadsTold) ringing.trouble = { leadsTold: await tellLeads(ringing) };
    await ringFromMemory(ringing);
  }
  await tellUnread(ringing);
  ringing.lookedAt = clock.now();
}

/** After the bells, and each once: it is no bell of its own. */
async function tellUnread(ringing: Ringing): Promise<void> {
  const { unread, keeper, log } = ringing;
  const events = unreadIn(keeper.shop()).filter(({ seq }) => !unread.told.has(seq));
  for (const event of events) {
    if (!unread.logged.has(event.seq)) log.error('event-not-read', { seq: event.seq, error: unreadSaid(event) });
    unread.logged.add(event.seq);
  }
  if (events.length > 0 && (await tellLeads(ringing, events))) for (const { seq } of events) unread.told.add(seq);
}

async function tellLeads(
  { messenger, clock, keeper, log }: RingerDeps,
  unread?: readonly UnreadEvent[],
): Promise<boolean> {
  try {
    const about = { now: clock.now(), shop: keeper.shop(), ...(unread !== undefined && { unread }) };
    return (await messenger.tellLeads(about)) !== 'rejected';
  } catch (error) {
    log.error('leads-not-told', { error: String(error) });
    return false;
  }
}

async function recordPosted({ posts, executor, clock }: Ringing): Promise<void> {
  for (const posted of posts.unrecorded()) {
    await executor.recordRing(posted, clock.now());
    posts.recorded(posted.reminder.numberedKey);
  }
}

async function ringOne(ringing: Ringing): Promise<boolean> {
  const { store, executor, clock, posts, crew } = ringing;
  const now = clock.now();
  const claimed = await store.claim(now, epochMs(now + leaseMs), crew);
  if (claimed === undefined) return false;
  const shop = await executor.look([claimed.stream]);
  const late = whyLate(ringing, claimed, now);
  const told = await posts.tell({ reminder: claimed, now, late, unrecorded: false, shop }, claimed.unsure);
  switch (told) {
    case 'posted':
      await recordPosted(ringing);
      return true;
    case 'rejected': {
      const retryAt = retryAfter(clock, claimed.rejections);
      posts.wait(claimed, retryAt);
      await store.reject(claimed, retryAt);
      return true;
    }
    case 'unknown':
      // The lease runs out, and whoever claims it next looks for the message first.
      posts.wait(claimed, epochMs(now + leaseMs));
      return true;
  }
}

function retryAfter(clock: Clock, rejections: number): EpochMs {
  return epochMs(clock.now() + (backoffMs[Math.min(rejections, backoffMs.length - 1)] ?? leaseMs));
}

async function ringFromMemory(ringing: Ringing): Promise<void> {
  const { clock, posts, keeper, crew } = ringing;
  const now = clock.now();
  for (const planned of inMemory(ringing)) {
    const { waiting, rejections } = posts.triesOf(planned);
    if (planned.dueAt > now || (waiting !== undefined && waiting > now)) continue;
    const late: LateWhy | undefined = now - planned.dueAt > onTimeMs ? 'store-failed' : undefined;
    const reminder = { ...planned, crew };
    const told = await posts.tell({ reminder, now, late, unrecorded: true, shop: keeper.shop() }, false);
    const later = told === 'rejected' ? retryAfter(clock, rejections) : epochMs(now + leaseMs);
    if (told !== 'posted') posts.wait(planned, later);
  }
}

/** What memory knows of and has not posted. */
function inMemory({ keeper, posts }: Ringing): readonly PlannedReminder[] {
  return [...planReminders(keeper.shop()).values()]
    .flat()
    .filter(({ numberedKey }) => !posts.isPosted(numberedKey))
    .sort(byDueTime);
}

async function nextDueAt(ringing: Ringing): Promise<EpochMs | undefined> {
  const { store, crew, log, posts } = ringing;
  if (ringing.trouble === undefined) {
    try {
      return await store.nextDueAt(crew);
    } catch (error) {
      log.error('next-not-read', { error: String(error) });
    }
  }
  const times = inMemory(ringing).map((planned) => Math.max(planned.dueAt, posts.triesOf(planned).waiting ?? 0));
  return times.length === 0 ? undefined : epochMs(Math.min(...times));
}

/** The first reason that holds, told late counting only for the time before it was told. */
function whyLate(
  { startedAt, trouble, lookedAt }: Ringing,
  { dueAt, plannedAt, rejections, unsure }: ClaimedReminder,
  now: EpochMs,
): LateWhy | undefined {
  if (now - dueAt <= onTimeMs) return undefined;
  const since = Math.max(dueAt, plannedAt);
  if (now - since <= onTimeMs) return 'was-told-late';
  if (startedAt > since) return 'was-not-running';
  if (rejections > 0 || unsure) return 'post-failed';
  if (trouble !== undefined) return 'store-failed';
  if (lookedAt < since) return 'was-asleep';
  return plannedAt > dueAt ? 'was-told-late' : 'unknown';
}
