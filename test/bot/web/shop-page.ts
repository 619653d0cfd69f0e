// A crew with its page on loopback, in memory, under a clock that only the test moves.

import { join } from 'node:path';
import { shipped, type Tongues } from '../../../bot/language/tongues/tongues.ts';
import { paperTray } from '../../../bot/records/paper-tray.ts';
import { wire } from '../../../bot/run/wiring.ts';
import { ringUntil } from '../../../bot/terminal/script.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import { readAssets } from '../../../bot/web/assets.ts';
import { openConversation } from '../../../bot/web/conversation.ts';
import { overheardHost } from '../../../bot/web/overheard-host.ts';
import { openPage, type Page } from '../../../bot/web/page.ts';
import { pageSecret } from '../../../bot/web/session.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import type { Store } from '../../../core/ports.ts';
import { readSheetFolders } from '../../../core/store/sheet-files.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs, minutes } from '../../../core/units.ts';

const root = join(import.meta.dirname, '../../..');
const spoken = { language: 'en', units: 'metric' } as const;

export const shopCrew: CrewFile = {
  name: 'Test crew',
  zone: 'UTC',
  language: 'en',
  units: 'metric',
  people: [
    { name: 'Kari', role: 'crew', ...spoken },
    { name: 'Ola', role: 'lead', ...spoken },
  ],
  digestHour: 17,
  escalationMinutes: minutes(10),
};

export const silentLog = { info: () => undefined, error: () => undefined };

interface ShopOptions {
  readonly joinCode?: string;
  /** By which it may be called besides its own address. */
  readonly publicUrls?: readonly string[];
  readonly crew?: CrewFile;
  /** A record that goes on. */
  readonly store?: Store;
  readonly notice?: string;
  readonly tongues?: Tongues;
  /** Where conversation and secret are kept; in memory without. */
  readonly folder?: string;
  /** More than a hand could type, for a shift that is played without a pause. */
  readonly linesAtOnce?: number;
  /** Whether the board cannot be drawn just now. */
  readonly boardBreaks?: () => boolean;
}

export async function openShop({
  joinCode,
  publicUrls = [],
  crew = shopCrew,
  store = openSqliteStore(':memory:'),
  notice,
  tongues = shipped,
  folder,
  linesAtOnce,
  boardBreaks = () => false,
}: ShopOptions = {}) {
  // A Monday at eight, in the crew's zone.
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2, 8)));
  const shelf = readSheetFolders([join(root, 'core/products/sheets')]);
  let conversation = openConversation(folder, silentLog);
  const frontEnd = {
    tell: (answer: Parameters<typeof conversation.tell>[0]) => conversation.tell(answer),
    wasTold: (key: string) => conversation.wasTold(key),
  };
  const papers = paperTray(folder);
  const wired = wire({ store, clock, log: silentLog, crewFile: crew, tongues, shelf, papers, frontEnd });
  const secret = pageSecret(folder);

  const openAt = (port: number): Promise<Page> =>
    openPage(
      {
        host: overheardHost(wired.host, conversation, () => undefined),
        conversation,
        overview: {
          ...wired.overview,
          board: async (name) => {
            if (boardBreaks()) throw new Error('the board is torn');
            return wired.pageOverview.board(name);
          },
        },
        picture: wired.picture,
        papers,
        crew: crew.name,
        words: tongues.wordsIn(crew.language),
        language: crew.language,
        hearing: tongues.every,
        clock,
        log: silentLog,
        secret,
        lan: joinCode !== undefined && publicUrls.length === 0,
        publicUrls,
        joinCode,
        assets: readAssets(join(root, 'bot/web/assets')),
        notice,
        ...(linesAtOnce !== undefined && { linesAtOnce }),
        beatMs: 1000,
      },
      port,
    );

  let page = await openAt(0);
  const address = page.addresses[0] ?? '';
  const port = Number(new URL(address).port);
  let asked = 0;

  return {
    address,
    clock,
    conversation: () => conversation,
    papers,
    board: wired.overview.board,
    /** Time passes, and what comes due rings. */
    wait: (duration: number) => ringUntil(epochMs(clock.now() + duration * 60_000), wired.ringer, clock),
    /** Somebody types elsewhere, as in the terminal. */
    say: async (as: string, text: string) => {
      asked += 1;
      const delivery = { text, as, in: `t${asked}`, id: `t${asked}` };
      const answer = await wired.host.handle(delivery);
      if (answer !== undefined) conversation.heard(delivery, answer);
      return answer;
    },
    /** The page's server goes; nobody is answered. */
    goDown: () => page.stop(),
    /** It is back at the same address; `anew`: the process was a new one, with what lay in the folder. */
    comeBack: async ({ anew = false } = {}) => {
      if (anew) {
        conversation.close();
        conversation = openConversation(folder, silentLog);
      }
      page = await openAt(port);
    },
    stop: async () => {
      await page.stop();
      conversation.close();
      store.close();
    },
  };
}

export type ShopPage = Awaited<ReturnType<typeof openShop>>;
