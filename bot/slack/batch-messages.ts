// One batch, one message: posted once, changed in place as the batch moves on, with its events in its thread. Where it
// stands is kept durably, so that a restart goes on with the same message.

import type { CrewId, StreamId } from '../../core/ids.ts';
import type { KeptPost, Postbox } from '../../core/ports.ts';
import type { Standing } from '../cards/standing-card.ts';
import type { Overview } from '../overview.ts';
import { cardMessage } from './card-blocks.ts';
import type { Outbox } from './outbox.ts';

export interface BatchMessages {
  /** The batch's message, posted now if it has none (`fresh`); `undefined` where there is nowhere to post it. */
  readonly messageOf: (subject: StreamId) => Promise<{ readonly post: KeptPost; readonly fresh: boolean } | undefined>;
  /** Shows every batch as it stands now; only what differs is sent. */
  readonly refresh: () => Promise<void>;
}

export interface BatchMessagesNeeds {
  readonly crew: CrewId;
  readonly overview: Overview;
  readonly outbox: Outbox;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
  readonly channel: () => string | undefined;
}

export function createBatchMessages(needs: BatchMessagesNeeds): BatchMessages {
  const { crew, overview, outbox, postbox } = needs;
  const posting = new Map<StreamId, ReturnType<BatchMessages['messageOf']>>();
  let refreshing: Promise<void> | undefined;
  let again = false;

  async function render({ card }: Standing, subject: StreamId, version: number) {
    const { words } = await overview.voice(undefined);
    const message = cardMessage(card, { words, showing: `${subject}.${version}` });
    return { message, shown: JSON.stringify([message.text, card.actions.map(({ line }) => line)]) };
  }

  function messageOf(subject: StreamId): ReturnType<BatchMessages['messageOf']> {
    const post = postbox.standingOf(crew, subject);
    if (post?.open === true) return Promise.resolve({ post, fresh: false });
    const under = posting.get(subject);
    // Whoever asks meanwhile finds it there already.
    if (under !== undefined) return under.then((made) => made && { ...made, fresh: false });
    const made = postNew(subject, post).finally(() => posting.delete(subject));
    posting.set(subject, made);
    return made;
  }

  async function postNew(subject: StreamId, before: KeptPost | undefined): ReturnType<BatchMessages['messageOf']> {
    const standing = await overview.standing(subject);
    // A finished batch keeps its message: what is said of it later goes into its thread.
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
    return { post, fresh: true };
  }

  async function refreshAll(): Promise<void> {
    const open = postbox.openPosts(crew).filter(({ role }) => role === 'standing');
    for (const post of open) await refreshOne(post);
    const shown = new Set(open.map(({ subject }) => subject));
    for (const subject of await overview.liveSubjects()) if (!shown.has(subject)) await messageOf(subject);
  }

  async function refreshOne(post: KeptPost): Promise<void> {
    const standing = await overview.standing(post.subject);
    const version = post.version + 1;
    const { message, shown } = await render(standing, post.subject, version);
    if (shown === post.shown && standing.live) return;
    const updated = await outbox.update(post.channel, post.ts, message);
    if (updated === 'failed') return;
    // Somebody deleted it: a batch that still runs gets another.
    if (updated === 'gone') postbox.keep({ ...post, open: false });
    else postbox.keep({ ...post, version, shown, open: standing.live });
  }

  return {
    messageOf,
    refresh: () => {
      if (refreshing !== undefined) {
        again = true;
        return refreshing;
      }
      refreshing = (async () => {
        do {
          again = false;
          await refreshAll();
        } while (again);
      })().finally(() => {
        refreshing = undefined;
      });
      return refreshing;
    },
  };
}
