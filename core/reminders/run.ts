// Rings what is due: claim the earliest, post, record; again until nothing is due. At least once, and at most once as
// far as anyone can know: a ring whose post had no answer is looked for, then posted once more, marked as possibly
// repeated. A store that cannot write does not silence the bells: they ring from the last plan that memory holds.

import type { Executor } from '../execute.ts';
import type { ClaimedReminder, Clock, LateWhy, Log, Messenger, RingingReminder, Store } from '../ports.ts';
import type { Shop } from '../shop.ts';
import type { ShopKeeper } from '../shop-keeper.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { planReminders } from './plan.ts';
import type { PlannedReminder } from './wish.ts';

const leaseMs = 30_000;
/** Shorter than a person takes to wonder; never longer than the lease. */
const backoffMs = [1_000, 2_000, 5_000, 10_000, 20_000] as const;
/** Rung within this of its due time, a bell is on time. */
const onTimeMs = 60_000;

export interface Ringer {
  /** Rings everything due by now, by due time, then key. */
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
  /** Posted, but not yet in the record: by numbered key, whether it may have been a repeat. */
  const unrecorded = new Map<string, boolean>();

  async function ringDue(): Promise<void> {
    try {
      while (await ringOne()) {}
    } catch (error) {
      log.error('store-failed', { error: String(error) });
      await ringFromMemory();
    }
  }

  async function ringOne(): Promise<boolean> {
    const now = clock.now();
    const claimed = await store.claim(now, epochMs(now + leaseMs));
    if (claimed === undefined) return false;
    await ring(claimed, now);
    return true;
  }

  async function ring(claimed: ClaimedReminder, now: EpochMs): Promise<void> {
    const already = unrecorded.get(claimed.numberedKey);
    if (already !== undefined) return record(claimed, now, already);
    const before = claimed.unsure ? await messenger.wasPosted(claimed.crew, claimed.numberedKey) : 'no';
    if (before === 'yes') return record(claimed, now, false);
    const possibleRepeat = before === 'unknown';
    const shop = await executor.look([claimed.stream]);
    const late = whyLate(claimed, now, startedAt);
    const posted = await messenger.post({ reminder: claimed, now, late, possibleRepeat, unrecorded: false, shop });
    switch (posted) {
      case 'posted':
        unrecorded.set(claimed.numberedKey, possibleRepeat);
        return record(claimed, clock.now(), possibleRepeat);
      case 'rejected': {
        const wait = backoffMs[Math.min(claimed.rejections, backoffMs.length - 1)] ?? leaseMs;
        log.error('post-rejected', { key: claimed.numberedKey, tries: claimed.rejections + 1 });
        return store.reject(claimed, epochMs(clock.now() + wait));
      }
      case 'unknown':
        // The lease runs out, and whoever claims it next looks for the message first.
        log.error('post-unanswered', { key: claimed.numberedKey });
        return;
      default: {
        const never: never = posted;
        return never;
      }
    }
  }

  async function record(claimed: ClaimedReminder, now: EpochMs, possibleRepeat: boolean): Promise<void> {
    await executor.recordRing(claimed, now, possibleRepeat);
    unrecorded.delete(claimed.numberedKey);
  }

  async function ringFromMemory(): Promise<void> {
    const now = clock.now();
    for (const planned of inMemory().filter((reminder) => reminder.dueAt <= now)) {
      if (unrecorded.has(planned.numberedKey)) continue;
      const late = now - planned.dueAt > onTimeMs ? 'store-failed' : undefined;
      const ringing: RingingReminder = {
        reminder: { ...planned, crew },
        ...{ now, late, possibleRepeat: false, unrecorded: true, shop: keeper.shop() },
      };
      if ((await messenger.post(ringing)) === 'posted') unrecorded.set(planned.numberedKey, false);
    }
  }

  function inMemory(): readonly PlannedReminder[] {
    const shop: Shop = keeper.shop();
    return [...planReminders(shop).values()]
      .flat()
      .sort((a, b) => a.dueAt - b.dueAt || (a.numberedKey < b.numberedKey ? -1 : 1));
  }

  async function nextDueAt(): Promise<EpochMs | undefined> {
    try {
      return await store.nextDueAt();
    } catch {
      return inMemory().find((reminder) => !unrecorded.has(reminder.numberedKey))?.dueAt;
    }
  }

  return { ringDue, nextDueAt };
}

function whyLate(claimed: ClaimedReminder, now: EpochMs, startedAt: EpochMs): LateWhy | undefined {
  if (now - claimed.dueAt <= onTimeMs) return undefined;
  if (claimed.rejections > 0 || claimed.unsure) return 'post-failed';
  if (claimed.plannedAt > claimed.dueAt) return 'was-told-late';
  return startedAt > claimed.dueAt ? 'was-not-running' : 'unknown';
}
