// What nobody foresaw: an event that would not read again, a sheet that breaks the sum, words that break. The line is
// answered and logged, nothing of it is recorded, and everybody else's goes on.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { wire } from '../../../bot/run/wiring.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import type { Setting } from '../../../core/settings.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';

const start = epochMs(Date.UTC(2026, 2, 2, 8));
/** One sheet breaks whoever looks at it. */
class TornShelf extends Map<string, NonNullable<ReturnType<typeof demoShelf.get>>> {
  override get(id: string) {
    if (id === 'demo-build') throw new TypeError('the sheet is torn');
    return super.get(id);
  }
}
const tornShelf = new TornShelf(demoShelf);

let folder: string;
let close: () => void;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'line-that-breaks-'));
});
afterEach(() => {
  close();
  rmSync(folder, { recursive: true });
});

function openShop(shelf: typeof demoShelf = demoShelf) {
  const store = openSqliteStore(join(folder, 'batchbell.sqlite'));
  close = store.close;
  const logged: string[] = [];
  const log = { info: () => undefined, error: (...said: readonly unknown[]) => logged.push(JSON.stringify(said)) };
  const frontEnd = { tell: async () => 'posted' as const, wasTold: async () => 'no' as const };
  const people = demoCrew.people.map((each) => (each.name === 'rosa' ? { ...each, language: 'es' } : each));
  const wired = wire({ store, clock: virtualClock(start), log, crewFile: { ...demoCrew, people }, shelf, frontEnd });
  const say = (text: string, as = 'kari') => wired.host.handle({ text, as, in: text, id: undefined });
  const settle = (setting: Setting) => {
    const said = { id: JSON.stringify(setting), by: 'rosa', now: start, at: start };
    const request = { ...said, command: { verb: 'set' as const, setting }, stance: { is: 'asked' as const } };
    return wired.executor.execute(
      request,
      () => request,
      (_, { kind }) => kind,
    );
  };
  return { store, logged, say, settle, executor: wired.executor };
}

describe('an event that would not read again', () => {
  const unreadable: Setting = { name: 'mixing', factor: 1000 };

  it('is never written: the act is refused, and the log names the event and the field', async () => {
    const { store, settle } = openShop();

    await expect(settle(unreadable)).rejects.toThrow(/SettingChanged of crew\/\w+ would not read again[\s\S]*factor/);

    expect(await store.eventsAfter('crew', 0)).toEqual([]);
  });

  it('takes no neighbour of the same breath with it, and the store is not blamed', async () => {
    const { store, settle, executor } = openShop();

    const together = await Promise.allSettled([
      settle({ name: 'digest', hour: 16 }),
      settle(unreadable),
      settle({ name: 'morning', hour: 6 }),
    ]);

    expect(together.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect(executor.canWrite()).toBe(true);
    store.close();
    const again = openShop();
    expect((await again.store.eventsAfter('crew', 0)).map(({ body }) => body)).toMatchObject([
      { setting: { name: 'digest' } },
      { setting: { name: 'morning' } },
    ]);
  });

  it('is one at a time between two milliseconds, too', async () => {
    const { store, executor } = openShop();

    const recorded = executor.filePhoto(
      {
        id: 'p',
        by: 'kari',
        now: start,
        stream: 'batch/1',
        at: epochMs(start - 0.5),
        reference: 'x',
        caption: undefined,
      },
      () => '',
    );

    await expect(recorded).rejects.toThrow('has no time');
    expect(executor.canWrite()).toBe(true);
    expect(await store.eventsAfter('crew', 0)).toEqual([]);
  });
});

describe('a line that breaks while it is decided', () => {
  it.each([
    ['kari', 'Not recorded', 'Batchbell has a fault of its own with this line'],
    ['rosa', 'Sin anotar', 'Fallo del propio Batchbell con esta línea'],
  ])('is answered to %s in words: %s', async (as, title, line) => {
    const { say, logged, store } = openShop(tornShelf);
    await say('air 24C 48%');

    const answer = await say('mix 2kg demo-build', as);

    expect(answer).toMatchObject({ kind: 'error', code: 'line-broke', recorded: false, to: [as] });
    expect(answer?.card.title).toBe(title);
    expect(answer?.card.lines.join(' ')).toContain(line);
    expect(logged.join()).toMatch(/not-recorded.*mix 2kg demo-build.*the sheet is torn/);
    expect(await store.eventsAfter('crew', 0)).toHaveLength(1);
  });

  it('is answered in the language that its speaker has set since', async () => {
    const { say } = openShop(tornShelf);
    await say('air 24C 48%');
    await say('set language es');

    expect((await say('mix 2kg demo-build'))?.card.title).toBe('Sin anotar');
  });

  it('stops nobody: what is said in the same breath and after it is recorded', async () => {
    const { say } = openShop(tornShelf);

    const [before, broken, after] = await Promise.all([
      say('air 24C 48%'),
      say('mix 2kg demo-build'),
      say('part imp-1 steel'),
    ]);

    expect([before?.recorded, broken?.kind, after?.recorded]).toEqual([true, 'error', true]);
    expect(await say('air 23C 50%')).toMatchObject({ recorded: true });
  });
});
