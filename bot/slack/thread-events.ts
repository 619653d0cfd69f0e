// What is said in a batch's thread: answers, objections, bells. A message with taps is kept until they are used or the
// batch has moved on; then what became of them stands in their place.

import type { KnownBlock } from '@slack/types';
import { z } from 'zod';
import type { CrewId, StreamId } from '../../core/ids.ts';
import type { KeptPost, Postbox } from '../../core/ports.ts';
import type { CardMessage } from './card-blocks.ts';
import { limits } from './limits.ts';
import type { Address, Outbox, Posting } from './outbox.ts';
import { escaped, plain } from './slack-text.ts';

export interface ThreadEvents {
  /** Keeps what was posted, so that its taps can be taken away. */
  readonly keep: (posted: PostedEvent) => void;
  /** The batch moved on: nothing said before offers taps any more. `used`: what became of the one that was tapped. */
  readonly settle: (subject: StreamId, used?: { readonly ts: string; readonly outcome: string }) => Promise<void>;
  /** One message, whatever it tells of. */
  readonly settleOne: (team: string, channel: string, ts: string, outcome: string) => Promise<void>;
  readonly say: (to: Address, message: CardMessage, key: string, subject: StreamId) => Promise<Posting>;
}

export interface PostedEvent extends Address {
  readonly ts: string;
  readonly subject: StreamId;
  readonly message: CardMessage;
}

export interface ThreadEventsNeeds {
  readonly crew: CrewId;
  readonly outbox: Outbox;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
}

const Shown = z.object({ text: z.string(), blocks: z.array(z.looseObject({ type: z.string() })) });

export function createThreadEvents({ crew, outbox, postbox, team }: ThreadEventsNeeds): ThreadEvents {
  function keep({ channel, thread, ts, subject, message }: PostedEvent): void {
    const where = team();
    if (where === undefined || !message.blocks.some(({ type }) => type === 'actions')) return;
    postbox.keep({
      team: where,
      channel,
      ts,
      crew,
      subject,
      role: 'said',
      thread,
      version: 1,
      shown: JSON.stringify(message),
      open: true,
    });
  }

  async function close(post: KeptPost, outcome: string | undefined): Promise<void> {
    postbox.keep({ ...post, open: false });
    const message = withoutTaps(post.shown, outcome);
    if (message !== undefined) await outbox.update(post.channel, post.ts, message);
  }

  return {
    keep,
    settle: async (subject, used) => {
      const open = postbox.openPosts(crew).filter((post) => post.role === 'said' && post.subject === subject);
      for (const post of open) await close(post, post.ts === used?.ts ? used.outcome : undefined);
    },
    settleOne: async (team, channel, ts, outcome) => {
      const post = postbox.postAt(team, channel, ts);
      if (post?.role === 'said' && post.open) await close(post, outcome);
    },
    say: async (to, message, key, subject) => {
      const posted = await outbox.post(to, message, key);
      if (posted.kind === 'posted') keep({ ...to, ts: posted.ts, subject, message });
      return posted;
    },
  };
}

/** The message as it was shown, with what became of its taps in their place. */
export function withoutTaps(shown: string, outcome: string | undefined): CardMessage | undefined {
  const read = Shown.safeParse(JSON.parse(shown)).data;
  if (read === undefined) return undefined;
  // Kept by this program as it was sent.
  const blocks = read.blocks.filter(({ type }) => type !== 'actions') as unknown as KnownBlock[];
  const lines = read.text.split('\n');
  const text = (/^\[.*\]$/.test(lines.at(-1) ?? '') ? lines.slice(0, -1) : lines).join('\n');
  if (outcome === undefined) return { text, blocks };
  return {
    text: `${text}\n${escaped(outcome)}`.slice(0, limits.message.text),
    blocks: [...blocks, { type: 'context', elements: [plain(outcome, limits.context.text)] }],
  };
}
