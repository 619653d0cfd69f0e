// Opens a shop to practise in: a record in memory, a clock that stands until it is moved, the invented products alone, and bells that
// ring nowhere.

import { join } from 'node:path';
import type { Log } from '../../core/ports.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { OpenPracticeShop } from '../practice/practice-shop.ts';
import type { Practising } from '../practice/practising.ts';
import type { Answer } from '../talk/answer.ts';
import { ringUntil } from '../terminal/script.ts';
import { virtualClock } from '../time/clocks.ts';
import { packageFolder } from './open-record.ts';
import type { Wired, WiringDeps } from './wiring.ts';

export interface PracticeShopDeps {
  readonly log: Log;
  readonly tongues: Tongues;
  /** Asked for where somebody in practice asks for practice. */
  readonly practising: Practising;
  readonly wire: (deps: WiringDeps) => Wired;
}

export function practiceShops({ log, tongues, practising, wire }: PracticeShopDeps): OpenPracticeShop {
  return (crewFile, start) => {
    const store = openSqliteStore(':memory:');
    const clock = virtualClock(start);
    const shelf = readSheetFolders([join(packageFolder(), 'core/products/sheets')]);
    let rung: readonly Answer[] = [];
    const frontEnd = {
      tell: async (answer: Answer) => {
        rung = [...rung, answer];
        return 'posted' as const;
      },
      wasTold: async () => 'no' as const,
    };
    const { host, overview, executor, ringer } = wire({
      store,
      clock,
      log,
      crewFile,
      shelf,
      tongues,
      frontEnd,
      practising,
    });
    return {
      ...{ host, overview, now: clock.now, look: executor.look, close: store.close },
      goOn: async (until) => {
        rung = [];
        await ringUntil(until, ringer, clock);
        return rung;
      },
    };
  };
}
