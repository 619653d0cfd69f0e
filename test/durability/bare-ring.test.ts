import { expect, test } from 'vitest';
import { wire } from '../../bot/run/wiring.ts';
import type { Answer } from '../../bot/talk/answer.ts';
import { ringUntil } from '../../bot/terminal/script.ts';
import { virtualClock } from '../../bot/time/clocks.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { epochMs } from '../../core/units.ts';
import { inventedCrew } from './two-batches.ts';

const shelf = readSheetFolders([new URL('../../core/products/sheets', import.meta.url).pathname]);

test('given the day cannot be put together, it rings all the same at its hour, once, with what is known', async () => {
  const real = openSqliteStore(':memory:');
  const unreadable = () => {
    throw new Error('the disk has a bad sector');
  };
  const store = { ...real, streamsBetween: unreadable, archive: { ...real.archive, filedBetween: unreadable } };
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2, 8)));
  const told: Answer[] = [];
  const broken: string[] = [];
  const { host, ringer } = wire({
    ...{ store, clock, crewFile: inventedCrew, shelf },
    log: { info: () => undefined, error: (event) => broken.push(event) },
    frontEnd: {
      tell: async (answer) => {
        told.push(answer);
        return 'posted';
      },
      wasTold: async () => 'unknown',
    },
  });
  await host.handle({ text: 'air 24C 48%', as: 'ada', in: '1', id: undefined });
  await ringUntil(epochMs(Date.UTC(2026, 2, 2, 18)), ringer, clock);
  const digests = told.filter(({ kind }) => kind === 'digest');
  expect(digests).toMatchObject([{ at: '2026-03-02T17:00:00Z', key: 'crew/digest/2026-03-02', to: ['bo'] }]);
  expect(digests[0]?.card.title).toContain('Mon Mar 2');
  expect(broken).toContain('card-broke');
  real.close();
});
