import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { startTicker, type Ticker } from '../../bot/time/ticker.ts';
import type { Executor } from '../../core/execute.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';

const minuteMs = 60_000;
const eight = epochMs(Date.UTC(2026, 2, 2, 8));

let ticker: Ticker;
let looks: EpochMs[];
let reconciled: number;
let due: EpochMs | undefined;
let breaks: 'never' | 'ringing' | 'reconciling';

beforeEach(() => {
  vi.useFakeTimers({ now: eight });
  looks = [];
  reconciled = 0;
  due = undefined;
  breaks = 'never';
  const clock = { now: () => epochMs(Date.now()) };
  const ringer = {
    ringDue: async () => {
      looks.push(clock.now());
      if (breaks === 'ringing') throw new Error('broken');
    },
    nextDueAt: async () => due,
  };
  const executor: Pick<Executor, 'reconcile'> = {
    reconcile: async () => {
      reconciled += 1;
      if (breaks === 'reconciling') throw new Error('broken');
    },
  };
  const log = { info: () => undefined, error: () => undefined };
  ticker = startTicker({ ringer, executor, clock, log, speed: 1 });
});

afterEach(async () => {
  await ticker.stop();
  vi.useRealTimers();
});

test('with nothing due it looks every 15 seconds at the latest, since clocks jump and laptops sleep', async () => {
  await vi.advanceTimersByTimeAsync(minuteMs);
  const waits = looks.map((at, i) => at - (looks[i - 1] ?? eight));
  expect(Math.max(...waits)).toBeLessThanOrEqual(15_000);
  expect(looks.length).toBeLessThan(10);
});

test('it looks when the next bell is due, to the millisecond', async () => {
  due = epochMs(eight + 4_321);
  ticker.wake();
  await vi.advanceTimersByTimeAsync(5_000);
  expect(looks).toContain(due);
});

test('what was just recorded may be due sooner: woken, it looks at once', async () => {
  await vi.advanceTimersByTimeAsync(1_000);
  ticker.wake();
  await vi.advanceTimersByTimeAsync(0);
  expect(looks.at(-1)).toBe(eight + 1_000);
});

test('something due that cannot ring just now is tried once a second, not without end', async () => {
  due = epochMs(eight - 1_000);
  ticker.wake();
  await vi.advanceTimersByTimeAsync(10_000);
  expect(looks.length).toBeGreaterThan(8);
  expect(looks.length).toBeLessThan(16);
});

test('a look that breaks does not take the later ones with it', async () => {
  breaks = 'ringing';
  ticker.wake();
  await vi.advanceTimersByTimeAsync(2_000);
  breaks = 'never';
  const before = looks.length;
  await vi.advanceTimersByTimeAsync(30_000);
  expect(looks.length).toBeGreaterThan(before);
});

test('every minute the rows are made equal to the plan, also when one time fails', async () => {
  breaks = 'reconciling';
  await vi.advanceTimersByTimeAsync(3 * minuteMs);
  expect(reconciled).toBeGreaterThanOrEqual(2);
});

test('stopped, it looks no more', async () => {
  await ticker.stop();
  const before = looks.length;
  await vi.advanceTimersByTimeAsync(5 * minuteMs);
  expect(looks).toHaveLength(before);
});
