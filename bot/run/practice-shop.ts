// Opens a shop to practise in: a record in memory, a clock that stands until it is moved, the invented products alone, and bells that
// ring nowhere.

import { join } from 'node:path';
import type { CrewFile } from '../../core/crew/crew.ts';
import type { Executor } from '../../core/execute.ts';
import type { Clock, Log, Store } from '../../core/ports.ts';
import type { SheetShelf } from '../../core/products/sheet.ts';
import type { Ringer } from '../../core/reminders/run.ts';
import { readSheetFolders } from '../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import type { OpenPracticeShop } from '../practice/practice-shop.ts';
import type { Practising } from '../practice/practising.ts';
import type { Answer } from '../talk/answer.ts';
import type { FrontEnd } from '../talk/front-end.ts';
import type { Host } from '../talk/host.ts';
import type { Overview } from '../talk/overview.ts';
import { ringUntil } from '../terminal/script.ts';
import { virtualClock } from '../time/clocks.ts';
import { packageFolder } from './open-record.ts';

export interface PracticeShopDeps {
  readonly log: Log;
  readonly tongues: Tongues;
  /** Asked for where somebody in practice asks for practice. */
  readonly practising: Practising;
  readonly wire: (parts: ShopParts) => ShopWired;
}

/** What one is put together from, and what comes of it. */
interface ShopParts extends Omit<PracticeShopDeps, 'wire'> {
  readonly store: Store;
  readonly clock: Clock;
  readonly crewFile: CrewFile;
  readonly shelf: SheetShelf;
  readonly frontEnd: Pick<FrontEnd, 'tell' | 'wasTold'>;
}

interface ShopWired {
  readonly executor: Pick<Executor, 'look'>;
  readonly host: Host;
  readonly ringer: Ringer;
  readonly overview: Overview;
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
