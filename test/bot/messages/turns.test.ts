import { expect, test } from 'vitest';
import { createRounds } from '../../../bot/messages/rounds.ts';
import { createTurns } from '../../../bot/time/turns.ts';

test('given one that fails, then the next in its queue has its turn after it, and another queue does not wait', async () => {
  const turns = createTurns<string>();
  const done: string[] = [];
  let fail: (why: Error) => void = () => undefined;
  const first = turns.take('one', () => new Promise<void>((_, reject) => (fail = reject)));
  const second = turns.take('one', async () => void done.push('second'));
  await turns.take('two', async () => void done.push('other'));
  expect(done).toEqual(['other']);
  expect([turns.isFree('one'), turns.isFree('three')]).toEqual([false, true]);
  fail(new Error('broken'));
  await expect(first).rejects.toThrow('broken');
  await second;
  await turns.idle();
  expect(done).toEqual(['other', 'second']);
  expect(turns.isFree('one')).toBe(true);
});

test('given three who ask while a round runs, then one more round follows; what stays behind is tried five times', async () => {
  let rounds = 0;
  let end: () => void = () => undefined;
  const waits: number[] = [];
  const pace = { now: () => 0, wait: async (ms: number) => void waits.push(ms) };
  const log: string[] = [];
  const { now } = createRounds({
    ...{ pace, log: { info: () => undefined, error: (event) => log.push(event) } },
    round: async () => {
      rounds += 1;
      if (rounds === 1) await new Promise<void>((resolve) => (end = resolve));
      return rounds > 100;
    },
  });
  const asked = [now(), now(), now(), now()];
  end();
  await Promise.all(asked);
  await expect.poll(() => log).toEqual(['messages-stay-behind']);
  expect(waits).toEqual([5_000, 10_000, 20_000, 40_000, 60_000]);
  expect(rounds).toBe(2 + 5);
});
