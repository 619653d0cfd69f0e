// Puts the parts together for one crew, whatever the front end: store, keeper, executor, host, messenger, ringer.

import { setImmediate } from 'node:timers/promises';
import type { CrewFile } from '../../core/crew/crew.ts';
import { createExecutor, type Executor } from '../../core/execute.ts';
import { type CrewId, onlyCrew } from '../../core/ids.ts';
import type { Clock, Log, Messenger, Store } from '../../core/ports.ts';
import type { SheetShelf } from '../../core/products/sheet.ts';
import { createRinger, type Ringer } from '../../core/reminders/run.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { shipped, type Tongues } from '../language/tongues/tongues.ts';
import { practisingOverview } from '../practice/practice-board.ts';
import { type Practisers, practisersInMemory } from '../practice/practice-shop.ts';
import { createPractices } from '../practice/practices.ts';
import { createPractising, type Practising } from '../practice/practising.ts';
import { practisingHost } from '../practice/practising-host.ts';
import { type PaperTray, paperTray } from '../records/paper-tray.ts';
import { createRecordAnswers } from '../records/record-answers.ts';
import type { FrontEnd } from '../talk/front-end.ts';
import { createHost, type Host } from '../talk/host.ts';
import { createOverview, type Overview } from '../talk/overview.ts';
import { createPictureFiling } from '../talk/picture-filing.ts';
import { ringAnswer, troubleAnswer } from '../talk/ring-answer.ts';
import { practiceShops } from './practice-shop.ts';

export interface Wired {
  readonly executor: Executor;
  readonly host: Host;
  readonly ringer: Ringer;
  readonly overview: Overview;
  /** For the page: whoever practises sees their own shop. */
  readonly pageOverview: Overview;
  readonly filePicture: ReturnType<typeof createPictureFiling>;
  /** The PNG behind a card's `image`, in the crew's language. */
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  readonly papers: PaperTray;
  readonly tongues: Tongues;
}

export interface WiringDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly crewFile: CrewFile;
  readonly shelf: SheetShelf;
  /** Several crews share a store, and none sees another's. */
  readonly crew?: CrewId;
  /** Where paper, exports and pictures are put; a temporary folder where none is named. */
  readonly papers?: PaperTray;
  readonly tongues?: Tongues;
  /** Where rings go. */
  readonly frontEnd: Pick<FrontEnd, 'tell' | 'wasTold'>;
  /** Who practises, where that outlives the process. */
  readonly practisers?: Practisers;
  /** Of a shop to practise in: that of the shop in whose place it stands. */
  readonly practising?: Practising;
}

export function wire({
  store,
  clock,
  log,
  crewFile,
  shelf,
  frontEnd,
  crew = onlyCrew,
  papers = paperTray(undefined),
  tongues = shipped,
  practisers = practisersInMemory(),
  practising: outer,
}: WiringDeps): Wired {
  const keeper = createShopKeeper(store, crew, crewFile, shelf);
  const executor = createExecutor({ store, keeper, crew, turnOver: setImmediate });
  const recordAnswers = createRecordAnswers({ executor, store, crew, papers });
  const practices = createPractices(practisers, clock.now);
  const practising: Practising =
    outer ??
    createPractising({
      ...{ practices, executor, clock, tongues },
      open: (...shop) => practiceShops({ log, tongues, practising, wire })(...shop),
    });
  const own = createHost({ executor, store, clock, log, crew, crewFile, tongues, recordAnswers, practising });
  const host =
    outer === undefined
      ? practisingHost({ host: own, practices, practising, executor, tongues, log, clock, crewFile })
      : own;

  const overview = createOverview({ executor, host });
  const messenger: Messenger = {
    post: async (ringing) => {
      const answer = await ringAnswer({ executor, host, recordAnswers, log }, ringing);
      const told = await frontEnd.tell(answer);
      if (told === 'posted') host.saw(answer);
      return told;
    },
    wasPosted: (_, numberedKey) => frontEnd.wasTold(numberedKey),
    tellLeads: async (trouble) => frontEnd.tell(troubleAnswer(host, trouble)),
  };
  const ringer = createRinger({ store, executor, keeper, messenger, clock, log, crew });
  return {
    executor,
    host,
    ringer,
    papers,
    tongues,
    overview,
    pageOverview: practisingOverview(overview, practices),
    filePicture: createPictureFiling(executor, host, clock),
    picture: async (ref) => recordAnswers.picture(host.telling(await executor.look(), undefined), ref),
  };
}
