// One batch, one message, and one for each spray session: posted once, changed in place as it moves on, with its events in
// its thread. Where it stands is kept durably, so that a restart goes on with the same message.

import type { CrewId, StreamId } from '../../core/ids.ts';
import type { KeptPost, Log, Postbox } from '../../core/ports.ts';
import type { Standing } from '../cards/standing-card.ts';
import { hasOneMessage } from '../talk/message-subject.ts';
import type { Overview } from '../talk/overview.ts';
import { howItMoved, type Moved, type Press } from '../talk/pressed.ts';
import { type CardMessage, cardMessage } from './card-blocks.ts';
import { createCatchUp } from './catch-up.ts';
import type { Outbox } from './outbox.ts';
import { onlyRow, placesIn } from './places.ts';
import type { Pace } from './sender.ts';
import { createShowings, type OnItsWay } from './showings.ts';

export interface StandingMessages {
  /** Its message, posted now if it has none (`fresh`); `undefined` where there is none and nowhere to post it. */
  readonly messageOf: (subject: StreamId) => Promise<{ readonly post: KeptPost; readonly fresh: boolean } | undefined>;
  /** The message that is there already: nothing is waited for. */
  readonly messageNow: (subject: StreamId) => KeptPost | undefined;
  /** How its message had moved under a press on it; by what it showed in the last moments. */
  readonly movedUnder: (post: KeptPost, press: PressOn) => Promise<Moved>;
  /** Shows each as it stands now, those `first` that somebody just touched; only what differs is sent. */
  readonly refresh: (first?: readonly StreamId[]) => Promise<void>;
  /** A list of taps keeps its last choice, and takes the same one no second time, until it is shown once more. */
  readonly showAgain: (subject: StreamId) => Promise<void>;
}

export type PressOn = Omit<Press, 'row' | 'isOlder'> & { readonly version: number | undefined };

export interface StandingMessagesNeeds {
  readonly crew: CrewId;
  readonly overview: Overview;
  readonly outbox: Outbox;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
  readonly channel: () => string | undefined;
  readonly pace: Pace;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly log: Log;
}

export function createStandingMessages(needs: StandingMessagesNeeds): StandingMessages {
  const { crew, overview, outbox, postbox, log } = needs;
  const posting = new Map<StreamId, ReturnType<StandingMessages['messageOf']>>();
  const showings = createShowings(needs.now);
  /** Touched last, to be shown before all others. */
  const urgent = new Set<StreamId>();
  let refreshing: Promise<boolean> | undefined;
  let again = false;
  const catchUp = createCatchUp({ pace: needs.pace, log, again: refreshed });

  async function render({ card }: Standing, subject: StreamId, version: number) {
    const { words } = await overview.voice(undefined);
    const message = cardMessage(card, { words, showing: `${subject}.${version}` });
    return { message, shown: JSON.stringify([message.text, card.actions.map(({ line }) => line)]) };
  }

  async function messageOf(subject: StreamId): ReturnType<StandingMessages['messageOf']> {
    if (!hasOneMessage(subject)) return undefined;
    const post = postbox.standingOf(crew, subject);
    if (post?.open === true) return { post, fresh: false };
    const under = posting.get(subject);
    // Whoever asks meanwhile finds it there already.
    if (under !== undefined) return under.then((made) => made && { ...made, fresh: false });
    const made = postNew(subject, post).finally(() => posting.delete(subject));
    posting.set(subject, made);
    return made;
  }

  async function postNew(subject: StreamId, before: KeptPost | undefined): ReturnType<StandingMessages['messageOf']> {
    const standing = await overview.standing(subject);
    // What is finished keeps its message: what is said of it later goes into its thread.
    if (before !== undefined && !standing.live) return { post: before, fresh: false };
    const [team, channel] = [needs.team(), needs.channel()];
    if (team === undefined || channel === undefined) return undefined;
    const { message, shown } = await render(standing, subject, 1);
    const posted = await outbox.post({ channel, thread: undefined }, message, `standing/${subject}/${before?.ts ?? 1}`);
    if (posted.kind !== 'posted') return undefined;
    const post: KeptPost = {
      team,
      channel,
      ts: posted.ts,
      crew,
      subject,
      role: 'standing',
      thread: undefined,
      version: 1,
      shown,
      open: standing.live,
    };
    postbox.keep(post);
    showings.sending(keyOf(post), placesIn(message.blocks, onlyRow));
    return { post, fresh: true };
  }

  const openStanding = (): readonly KeptPost[] => postbox.openPosts(crew).filter(({ role }) => role === 'standing');

  async function refreshAll(): Promise<boolean> {
    let all = await refreshUrgent();
    for (const post of openStanding()) {
      all = (await refreshOne(post)) && all;
      all = (await refreshUrgent()) && all;
    }
    // Without a place for it nothing is behind.
    if (needs.team() === undefined || needs.channel() === undefined) return all;
    for (const subject of await overview.liveSubjects()) {
      if (postbox.standingOf(crew, subject)?.open !== true) all = (await messageOf(subject)) !== undefined && all;
    }
    return all;
  }

  async function refreshUrgent(): Promise<boolean> {
    let all = true;
    for (const subject of urgent) {
      urgent.delete(subject);
      const post = postbox.standingOf(crew, subject);
      if (post?.open === true) all = (await refreshOne(post)) && all;
    }
    return all;
  }

  interface Changed {
    readonly message: CardMessage;
    /** As it is kept once Slack has it. */
    readonly post: KeptPost;
  }

  async function changed(seen: KeptPost, evenIfSame: boolean): Promise<Changed | undefined> {
    const post = postbox.postAt(seen.team, seen.channel, seen.ts) ?? seen;
    const standing = await overview.standing(post.subject);
    const version = post.version + 1;
    const { message, shown } = await render(standing, post.subject, version);
    if (shown === post.shown && standing.live && !(evenIfSame && hasList(message))) return undefined;
    return { message, post: { ...post, version, shown, open: standing.live } };
  }

  /** As it stands when Slack's turn comes, however long that took. False: to be tried again. */
  async function refreshOne(seen: KeptPost, evenIfSame = false): Promise<boolean> {
    // Most have not changed: they cost no turn.
    if ((await changed(seen, evenIfSame)) === undefined) return true;
    const sent: Changed[] = [];
    let onItsWay: OnItsWay | undefined;
    const updated = await outbox.update(seen.channel, seen.ts, async () => {
      const now = await changed(seen, evenIfSame);
      onItsWay?.lost();
      onItsWay = now && showings.sending(keyOf(seen), placesIn(now.message.blocks, onlyRow));
      if (now !== undefined) sent.push(now);
      return now?.message;
    });
    if (updated.kind === 'done') onItsWay?.arrived();
    else onItsWay?.lost();
    const post = sent.at(-1)?.post;
    switch (updated.kind) {
      case 'done':
        if (post !== undefined) postbox.keep(post);
        return true;
      // Somebody deleted it: what still runs gets another.
      case 'gone':
        postbox.keep({ ...seen, open: false });
        return true;
      // The same would be refused again: only what comes next is sent.
      case 'refused':
        log.error('message-not-changed', { subject: seen.subject, error: updated.error });
        if (post !== undefined) postbox.keep(post);
        return true;
      case 'failed':
        return false;
    }
  }

  /** A life that has shown nothing yet goes by how it stands. */
  async function movedUnder(post: KeptPost, { version, ...press }: PressOn): Promise<Moved> {
    const shown = showings.of(keyOf(post));
    const isOlder = version !== undefined && version < post.version;
    if (shown.length > 0) return howItMoved(shown, { ...press, row: onlyRow(), isOlder });
    const { message } = await render(await overview.standing(post.subject), post.subject, post.version);
    const places = placesIn(message.blocks, onlyRow);
    return howItMoved([{ since: 0, places }], { ...press, row: onlyRow(), isOlder });
  }

  function refreshed(): Promise<boolean> {
    if (refreshing !== undefined) {
      again = true;
      return refreshing;
    }
    refreshing = (async () => {
      let all: boolean;
      do {
        again = false;
        all = await refreshAll();
      } while (again);
      return all;
    })().finally(() => {
      refreshing = undefined;
    });
    return refreshing;
  }

  return {
    messageOf,
    movedUnder,
    messageNow: (subject) => postbox.standingOf(crew, subject),
    refresh: async (first = []) => {
      for (const subject of first) urgent.add(subject);
      if (!(await refreshed())) catchUp.behind();
    },
    showAgain: async (subject) => {
      const post = postbox.standingOf(crew, subject);
      if (post?.open === true) await refreshOne(post, true);
    },
  };
}

const keyOf = ({ channel, ts }: Pick<KeptPost, 'channel' | 'ts'>): string => `${channel}/${ts}`;

const hasList = ({ blocks }: CardMessage): boolean =>
  blocks.some((block) => block.type === 'actions' && block.elements.some(({ type }) => type === 'static_select'));
