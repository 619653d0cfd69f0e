// Publishes home tabs: at each opening, and again for those who look at it when something was recorded or has rung. Of one
// person's home one publish is on its way at a time, and only a difference is sent.

import { z } from 'zod';
import type { Log, Postbox } from '../../core/ports.ts';
import type { Tongues, Words } from '../language/tongues/tongues.ts';
import { stepTo } from '../messages/difference.ts';
import type { Where } from '../messages/platform.ts';
import { createShowings, type Showings } from '../messages/showings.ts';
import { howItMoved, type Moved, type Press } from '../talk/pressed.ts';
import { createTurns, type Turns } from '../time/turns.ts';
import type { Desk } from './crew-desk.ts';
import { homeView, noCrewView, type OwnView } from './home-view.ts';
import { placesIn } from './places.ts';
import type { Call } from './slack-client.ts';

export interface Homes {
  readonly show: (desk: Desk, where: Where) => Promise<void>;
  readonly refresh: (desk: Desk) => Promise<void>;
  /** How somebody's home tab had moved under a press on it. What an earlier life showed may have moved since. */
  readonly movedUnder: (user: string, press: Omit<Press, 'isOlder'>, hash: string | undefined) => Moved;
  /** To somebody whose crew is not known. */
  readonly showNoCrew: (where: Where) => Promise<void>;
  /** How somebody is told things of whom nothing is known. */
  readonly strangers: () => Words;
}

/** Who opened it last is kept up to date; the others get theirs at the next opening. */
const keptFresh = 10;

interface Seen {
  readonly desk: Desk;
  readonly team: string;
  /** Their first opening: its welcome stays until the next one. */
  readonly firstTime: boolean;
  /** As last published; `undefined` where nothing was, or that failed. */
  readonly shown: string | undefined;
  /** Slack's name for it as it is shown now. */
  readonly hash: string | undefined;
}

interface Tabs {
  readonly call: Call;
  readonly log: Log;
  readonly postbox: Postbox;
  /** By user, who opened it last at the end. */
  readonly seen: Map<string, Seen>;
  readonly showings: Showings;
  readonly turns: Turns<string>;
}

const Published = z.object({ view: z.object({ hash: z.string() }) });

export function createHomes(call: Call, postbox: Postbox, now: () => number, log: Log, tongues: Tongues): Homes {
  const strangers = () => tongues.wordsIn('en');
  const own = { seen: new Map<string, Seen>(), showings: createShowings(now), turns: createTurns<string>() };
  const tabs: Tabs = { call, log, postbox, ...own };
  return {
    strangers,
    show: (desk, where) => open(tabs, desk, where),
    showNoCrew: async ({ user }) => {
      await call('views.publish', { user_id: user, view: noCrewView(strangers()) });
    },
    movedUnder: (user, press, hash) => {
      const current = tabs.seen.get(user)?.hash;
      const isOlder = current === undefined || (hash !== undefined && hash !== current);
      return howItMoved(tabs.showings.of(user), { ...press, isOlder });
    },
    refresh: async (desk) => {
      for (const [user, opened] of [...tabs.seen]) if (opened.desk === desk) await publish(tabs, user);
    },
  };
}

async function open(tabs: Tabs, desk: Desk, { team, user }: Where): Promise<void> {
  const { postbox, seen } = tabs;
  const note = `welcomed/${team}/${user}`;
  const firstTime = postbox.note(note) === undefined;
  seen.delete(user);
  seen.set(user, { desk, team, firstTime, shown: undefined, hash: undefined });
  for (const [other] of seen) if (seen.size > keptFresh) seen.delete(other);
  if ((await publish(tabs, user)) && firstTime) postbox.setNote(note, 'yes');
}

const publish = (tabs: Tabs, user: string): Promise<boolean> => tabs.turns.take(user, () => publishNow(tabs, user));

async function publishNow({ seen, call, log, showings }: Tabs, user: string): Promise<boolean> {
  const opened = seen.get(user);
  if (opened === undefined) return true;
  const view = await viewFor(user, opened);
  const face = JSON.stringify(view);
  const shown = opened.shown === undefined ? undefined : { face: opened.shown, open: true };
  if (stepTo({ face, live: true }, shown) === 'nothing') return true;
  const onItsWay = showings.sending(user, () => placesIn(view.blocks, ownRow));
  const called = await call('views.publish', { user_id: user, view });
  const isShown = called.kind === 'done';
  if (isShown) onItsWay.arrived();
  else onItsWay.lost();
  const hash = isShown ? Published.safeParse(called.result).data?.view.hash : opened.hash;
  if (!isShown) log.error('home-not-shown', { outcome: called.kind });
  // Somebody may have opened it anew meanwhile.
  if (seen.get(user) === opened) seen.set(user, { ...opened, hash, shown: isShown ? face : undefined });
  return isShown;
}

async function viewFor(user: string, { desk, team, firstTime }: Seen): Promise<OwnView> {
  const { overview, crew } = desk;
  const name = await desk.roster.personOf(team, user);
  const [board, settings, cans, setUp, { words }] = await Promise.all([
    overview.board(name),
    overview.settings(name),
    overview.cans(name),
    overview.setUp(name),
    overview.voice(name),
  ]);
  return homeView({ crew, board, settings, cans, setUp, channel: desk.channel(), words, firstTime });
}

/** A row of the home tab is about one thing, whatever its place. */
const ownRow = (block: string): string => block;
