// Publishes home tabs: at each opening, and again for those who look at it when something was recorded or has rung.

import { z } from 'zod';
import type { Log, Postbox } from '../../core/ports.ts';
import { wordsIn } from '../language/tongues/languages.ts';
import { howItMoved, type Moved, type Press } from '../talk/pressed.ts';
import type { Desk } from './crew-desk.ts';
import { homeView, noCrewView } from './home-view.ts';
import type { Where } from './inbound.ts';
import { placesIn } from './places.ts';
import { createShowings } from './showings.ts';
import type { Call } from './slack-client.ts';

export interface Homes {
  readonly show: (desk: Desk, where: Where) => Promise<void>;
  readonly refresh: (desk: Desk) => Promise<void>;
  /** How somebody's home tab had moved under a press on it. What an earlier life showed may have moved since. */
  readonly movedUnder: (user: string, press: Omit<Press, 'isOlder'>, hash: string | undefined) => Moved;
  /** To somebody whose crew is not known. */
  readonly showNoCrew: (where: Where) => Promise<void>;
}

/** Who opened it last is kept up to date; the others get theirs at the next opening. */
const keptFresh = 10;

interface Seen {
  readonly desk: Desk;
  readonly team: string;
  /** Their first opening: its welcome stays until the next one. */
  readonly firstTime: boolean;
  /** As last published; `undefined` where that failed. */
  readonly shown: string | undefined;
  /** Slack's name for it as it is shown now. */
  readonly hash: string | undefined;
}

const Published = z.object({ view: z.object({ hash: z.string() }) });

export function createHomes(call: Call, postbox: Postbox, now: () => number, log: Log): Homes {
  /** By user, who opened it last at the end. */
  const seen = new Map<string, Seen>();
  const showings = createShowings(now);

  async function publish(user: string, opened: Seen): Promise<boolean> {
    const { desk, team, firstTime } = opened;
    const name = await desk.roster.personOf(team, user);
    const [board, settings, cans, setUp, { words }] = await Promise.all([
      desk.overview.board(name),
      desk.overview.settings(name),
      desk.overview.cans(name),
      desk.overview.setUp(name),
      desk.overview.voice(name),
    ]);
    const channel = desk.channel();
    const view = homeView({ crew: desk.crew, board, settings, cans, setUp, channel, words, firstTime });
    const shown = JSON.stringify(view);
    if (opened.shown === shown) return true;
    const onItsWay = showings.sending(user, placesIn(view.blocks, ownRow));
    const called = await call('views.publish', { user_id: user, view });
    const isShown = called.kind === 'done';
    if (isShown) onItsWay.arrived();
    else onItsWay.lost();
    const hash = called.kind === 'done' ? Published.safeParse(called.result).data?.view.hash : opened.hash;
    if (!isShown) log.error('home-not-shown', { outcome: called.kind });
    // Somebody may have opened it anew meanwhile.
    if (seen.get(user) === opened) seen.set(user, { ...opened, hash, shown: isShown ? shown : undefined });
    return isShown;
  }

  async function show(desk: Desk, { team, user }: Where): Promise<void> {
    const note = `welcomed/${team}/${user}`;
    const opened: Seen = { desk, team, firstTime: postbox.note(note) === undefined, shown: undefined, hash: undefined };
    seen.delete(user);
    seen.set(user, opened);
    for (const [other] of seen) if (seen.size > keptFresh) seen.delete(other);
    if ((await publish(user, opened)) && opened.firstTime) postbox.setNote(note, 'yes');
  }

  return {
    show,
    showNoCrew: async ({ user }) => {
      await call('views.publish', { user_id: user, view: noCrewView(wordsIn('en')) });
    },
    movedUnder: (user, press, hash) => {
      const current = seen.get(user)?.hash;
      const isOlder = current === undefined || (hash !== undefined && hash !== current);
      return howItMoved(showings.of(user), { ...press, isOlder });
    },
    refresh: async (desk) => {
      for (const [user, opened] of [...seen]) if (opened.desk === desk) await publish(user, opened);
    },
  };
}

/** A row of the home tab is about one thing, whatever its place. */
const ownRow = (block: string): string => block;
