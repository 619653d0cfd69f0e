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
import { planReminders } from './plan.ts';
import { createPosts } from './posts.ts';
import { byDueTime, type PlannedReminder } from './wanted-reminder.ts';

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

export interface RingerNeeds {
  readonly store: Store;
  readonly executor: Executor;
  readonly keeper: ShopKeeper;
  readonly messenger: Messenger;
  readonly clock: Clock;
  readonly log: Log;
  readonly crew: string;
}

export function createRinger({ store, executor, keeper, messenger, clock, log, crew }: RingerNeeds): Ringer {
  const startedAt = clock.now();
  const posts = createPosts({ messenger, clock, log });
  /** When the bell last looked for what is due. */
  let lookedAt = startedAt;
  /** Of what does not read, by number: in the log, and said to the leads. */
  const unread = { logged: new Set<number>(), told: new Set<number>() };
  let trouble: { readonly leadsTold: boolean } | undefined;

  async function ringDue(): Promise<void> {
    try {
      await recordPosted();
      if (!executor.canWrite()) throw new Error('the last act could not be recorded');
      while (await ringOne()) {}
      if (trouble !== undefined) log.info('store-healed');
      trouble = undefined;
    } catch (error) {
      if (trouble === undefined) log.error('store-failed', { error: String(error) });
      trouble ??= { leadsTold: false };
      if (!trouble.leadsTold) trouble = { leadsTold: await tellLeads() };
      await ringFromMemory();
    }
    await tellUnread();
    lookedAt = clock.now();
  }

  /** After the bells, and each once: it is no bell of its own. */
  async function tellUnread(): Promise<void> {
    const events = unreadIn(keeper.shop()).filter(({ seq }) => !unread.told.has(seq));
    for (const event of events) {
      if (!unread.logged.has(event.seq)) log.error('event-not-read', { seq: event.seq, error: unreadSaid(event) });
      unread.logged.add(event.seq);
    }
    if (events.length > 0 && (await tellLeads(events))) for (const { seq } of events) unread.told.add(seq);
  }

  async function tellLeads(events?: readonly UnreadEvent[]): Promise<boolean> {
    try {
      const about = events === undefined ? {} : { unread: events };
      return (await messenger.tellLeads({ now: clock.now(), shop: keeper.shop(), ...about })) !== 'rejected';
    } catch (error) {
      log.error('leads-not-told', { error: String(error) });
      return false;
    }
  }

  async function recordPosted(): Promise<void> {
    for (const posted of posts.unrecorded()) {
      await executor.recordRing(posted, clock.now());
      posts.recorded(posted.reminder.numberedKey);
    }
  }

  async function ringOne(): Promise<boolean> {
    const now = clock.now();
    const claimed = await store.claim(now, epochMs(now + leaseMs), crew);
    if (claimed === undefined) return false;
    const shop = await executor.look([claimed.stream]);
    const ringing = { reminder: claimed, now, late: whyLate(claimed, now), unrecorded: false, shop };
    const told = await posts.tell(ringing, claimed.unsure);
    switch (told) {
      case 'posted':
        await recordPosted();
        return true;
      case 'rejected': {
        const retryAt = retryAfter(claimed.rejections);
        posts.wait(claimed, retryAt);
        await store.reject(claimed, retryAt);
        return true;
      }
      case 'unknown':
        // The lease runs out, and whoever claims it next looks for the message first.
        posts.wait(claimed, epochMs(now + leaseMs));
        return true;
      default: {
        const never: never = told;
        return never;
      }
    }
  }

  function retryAfter(rejections: number): EpochMs {
    return epochMs(clock.now() + (backoffMs[Math.min(rejections, backoffMs.length - 1)] ?? leaseMs));
  }

  async function ringFromMemory(): Promise<void> {
    const now = clock.now();
    for (const planned of inMemory()) {
      const { waiting, rejections } = posts.triesOf(planned);
      if (planned.dueAt > now || (waiting !== undefined && waiting > now)) continue;
      const late: LateWhy | undefined = now - planned.dueAt > onTimeMs ? 'store-failed' : undefined;
      const ringing = { reminder: { ...planned, crew }, now, late, unrecorded: true, shop: keeper.shop() };
      const told = await posts.tell(ringing, false);
      if (told !== 'posted') posts.wait(planned, told === 'rejected' ? retryAfter(rejections) : epochMs(now + leaseMs));
    }
  }

  /** What memory knows of and has not posted. */
  function inMemory(): readonly PlannedReminder[] {
    return [...planReminders(keeper.shop()).values()]
      .flat()
      .filter(({ numberedKey }) => !posts.isPosted(numberedKey))
      .sort(byDueTime);
  }

  async function nextDueAt(): Promise<EpochMs | undefined> {
    if (trouble === undefined) {
      try {
        return await store.nextDueAt(crew);
      } catch (error) {
        log.error('next-not-read', { error: String(error) });
      }
    }
    const times = inMemory().map((planned) => Math.max(planned.dueAt, posts.triesOf(planned).waiting ?? 0));
    return times.length === 0 ? undefined : epochMs(Math.min(...times));
  }

  /** The first reason that holds, told late counting only for the time before it was told. */
  function whyLate(claimed: ClaimedReminder, now: EpochMs): LateWhy | undefined {
    const { dueAt, plannedAt } = claimed;
    if (now - dueAt <= onTimeMs) return undefined;
    const since = Math.max(dueAt, plannedAt);
    if (now - since <= onTimeMs) return 'was-told-late';
    if (startedAt > since) return 'was-not-running';
    if (claimed.rejections > 0 || claimed.unsure) return 'post-failed';
    if (trouble !== undefined) return 'store-failed';
    if (lookedAt < since) return 'was-asleep';
    return plannedAt > dueAt ? 'was-told-late' : 'unknown';
  }

  return { ringDue, nextDueAt };
}
