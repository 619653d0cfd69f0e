// What a front end may ask of a crew besides answers to lines: how each batch stands, the board, the settings, and how
// somebody is spoken to. Neutral data, so that no front end looks into a noun.

import { type Crew, personIn } from '../../core/crew/crew.ts';
import type { RingsTo, Role } from '../../core/crew/crew-commands.ts';
import type { UnitSystem } from '../../core/crew/unit-system.ts';
import type { Executor } from '../../core/execute.ts';
import {
  defaultPlace,
  nameIn,
  nounOf,
  numberIn,
  type PersonName,
  partStream,
  placeStream,
  type StreamId,
} from '../../core/ids.ts';
import type { Shop } from '../../core/shop.ts';
import { type Board, makeBoard } from '../cards/board.ts';
import { type Card, makeCard } from '../cards/card.ts';
import { sessionStanding } from '../cards/session-standing.ts';
import { type SetUp, setUpOf } from '../cards/set-up.ts';
import { settingsCard } from '../cards/settings-card.ts';
import { type Standing, standingOf } from '../cards/standing-card.ts';
import { cansCard } from '../cards/stock-card.ts';
import type { Figures } from '../language/figures.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { Host } from './host.ts';
import { liveSubjects } from './message-subject.ts';

/** How one person is spoken to. */
export interface Voice {
  readonly words: Words;
  readonly language: string;
  readonly units: UnitSystem;
  readonly role: Role;
  /** Where a chat platform rings for them. */
  readonly rings: RingsTo;
  readonly figures: Figures;
  /** The wall clock of this moment. */
  readonly clock: string;
}

export interface Overview {
  /** Of a batch or a session, in the crew's language: many read it. Of anything else only its name. */
  readonly standing: (subject: StreamId) => Promise<Standing & Pick<Voice, 'language'>>;
  readonly liveSubjects: () => Promise<readonly StreamId[]>;
  /** As set now: by its file, and by what was said since. */
  readonly crew: () => Promise<Crew>;
  /** As one person is told it; without a name as the crew is. */
  readonly board: (name: PersonName | undefined) => Promise<Board>;
  /** What can be set on forms, as it stands. */
  readonly setUp: (name: PersonName) => Promise<SetUp>;
  readonly settings: (name: PersonName) => Promise<Card>;
  /** Only the cans that need somebody; `undefined` where none does. */
  readonly cans: (name: PersonName) => Promise<Card | undefined>;
  readonly voice: (name: PersonName | undefined) => Promise<Voice>;
}

export function createOverview({ executor, host }: { readonly executor: Executor; readonly host: Host }): Overview {
  /** Where its brief was taken back, only that is left to say. */
  function standingSession(shop: Shop, number: number): Standing {
    const telling = host.telling(shop, undefined);
    const session = shop.sessions.get(number);
    if (session !== undefined) return sessionStanding(telling, session);
    const title = telling.words.session.titled(number, telling.words.chat.briefTakenBack);
    return { card: makeCard(title, 'plain'), live: false, parts: [] };
  }

  async function standing(subject: StreamId): Promise<Standing & Pick<Voice, 'language'>> {
    const found = await executor.look([subject]);
    const { language } = personIn(found.crew, '');
    const noun = nounOf(subject);
    if (noun === 'session') return { ...standingSession(found, numberIn(subject)), language };
    if (noun !== 'batch') return { card: makeCard(nameIn(subject), 'plain'), live: false, parts: [], language };
    const number = numberIn(subject);
    const parts = found.batches.get(number)?.coats.map((coat) => partStream(coat.part)) ?? [];
    const shop = parts.length === 0 ? found : await executor.look([subject, ...parts]);
    return { ...standingOf(host.telling(shop, undefined), number, shop.batches.get(number)), language };
  }

  return {
    standing,
    liveSubjects: async () => liveSubjects(await executor.look()),
    crew: async () => (await executor.look()).crew,
    board: async (name) => makeBoard(host.telling(await executor.look([placeStream(defaultPlace)]), name)),
    setUp: async (name) => setUpOf(host.telling(await executor.look(), name), name),
    settings: async (name) => settingsCard(host.telling(await executor.look(), name), name),
    cans: async (name) => cansCard(host.telling(await executor.look(), name)),
    voice: async (name) => {
      const shop = await executor.look();
      const telling = host.telling(shop, name);
      const { language, units, role, rings } = personIn(shop.crew, name ?? '');
      return {
        words: telling.words,
        language,
        units,
        role,
        rings: rings ?? 'thread',
        figures: telling.figures,
        clock: telling.figures.timeDown(telling.now),
      };
    },
  };
}
