// What breaks in practice: the line is answered and logged, nothing of it is recorded, and it is not tried upon the shop.

import { expect, it, onTestFinished } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { practisersInMemory } from '../../../bot/practice/practice-shop.ts';
import { createPractices } from '../../../bot/practice/practices.ts';
import { createPractising } from '../../../bot/practice/practising.ts';
import { practisingHost } from '../../../bot/practice/practising-host.ts';
import { practiceShops } from '../../../bot/run/practice-shop.ts';
import { wire } from '../../../bot/run/wiring.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';

it('given a shop of practice that breaks, then the line is told as not recorded, and a cry is real', async () => {
  const store = openSqliteStore(':memory:');
  onTestFinished(store.close);
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2, 8)));
  const logged: string[] = [];
  const log = { info: () => undefined, error: (event: string) => logged.push(event) };
  const frontEnd = { tell: async () => 'posted' as const, wasTold: async () => 'no' as const };
  const shop = wire({ store, clock, log, crewFile: demoCrew, shelf: demoShelf, frontEnd });
  const practices = createPractices(practisersInMemory(), clock.now);
  const parts = { practices, executor: shop.executor, clock, tongues: shipped };
  const practising = createPractising({ ...parts, open: (...given) => open(...given) });
  const open = practiceShops({ log, tongues: shipped, practising, wire });
  const torn = { ...practising, say: () => Promise.reject(new Error('the shop of practice is torn')) };
  const host = practisingHost({ ...parts, host: shop.host, practising: torn, log, crewFile: demoCrew });
  const say = (text: string) => host.handle({ text, as: 'kari', in: text, id: undefined });

  await practising.begin({ text: 'practice on', as: 'kari', in: '1', id: undefined }, await shop.executor.look());
  const broken = await say('air 24C 48%');
  expect([broken?.kind, broken?.recorded, logged]).toEqual(['error', false, ['practice-broke']]);
  expect((await shop.executor.look()).crew.lastActedAt).toBeUndefined();
  expect((await say('fire in the booth'))?.recorded).toBe(true);
});
