// Publishes home tabs: at each opening, and again for those who look at it when something was recorded.

import type { Postbox } from '../../core/ports.ts';
import { wordsIn } from '../language/words/languages.ts';
import type { Desk } from './desk.ts';
import { homeView, noCrewView } from './home-view.ts';
import type { Where } from './inbound.ts';
import type { Call } from './slack-client.ts';

export interface Homes {
  readonly show: (desk: Desk, where: Where) => Promise<void>;
  readonly refresh: (desk: Desk) => Promise<void>;
  /** To somebody whose crew is not known. */
  readonly showNoCrew: (where: Where) => Promise<void>;
}

/** Who opened it last is kept up to date; the others get theirs at the next opening. */
const keptFresh = 10;

export function createHomes(call: Call, postbox: Postbox): Homes {
  /** By user: as last published. */
  const seen = new Map<string, { readonly desk: Desk; readonly team: string; readonly shown: string }>();

  async function publish(desk: Desk, team: string, user: string, firstTime: boolean): Promise<void> {
    const name = await desk.roster.personOf(team, user);
    const [board, settings, cans, setUp, { words }] = await Promise.all([
      desk.overview.board(name),
      desk.overview.settings(name),
      desk.overview.cans(name),
      desk.overview.setUp(name),
      desk.overview.voice(name),
    ]);
    const view = homeView({ board, settings, cans, setUp, channel: desk.channel(), words, firstTime });
    const shown = JSON.stringify(view);
    if (seen.get(user)?.shown === shown) return;
    const called = await call('views.publish', { user_id: user, view });
    seen.delete(user);
    if (called.kind === 'done') seen.set(user, { desk, team, shown });
    for (const [other] of seen) if (seen.size > keptFresh) seen.delete(other);
  }

  return {
    show: async (desk, { team, user }) => {
      const note = `welcomed/${team}/${user}`;
      const firstTime = postbox.note(note) === undefined;
      if (firstTime) postbox.setNote(note, 'yes');
      seen.delete(user);
      await publish(desk, team, user, firstTime);
    },
    showNoCrew: async ({ user }) => {
      await call('views.publish', { user_id: user, view: noCrewView(wordsIn('en')) });
    },
    refresh: async (desk) => {
      for (const [user, looked] of [...seen]) {
        if (looked.desk === desk) await publish(desk, looked.team, user, false);
      }
    },
  };
}
