// What is said beside a standing message: answers, objections, bells. A message with taps is kept until they are used or
// what it tells of has moved on; then what became of them stands in their place.

import type { KnownBlock } from '@slack/types';
import { z } from 'zod';
import { type CrewId, crewStream, type StreamId } from '../../core/ids.ts';
import type { KeptPost, Log, Postbox } from '../../core/ports.ts';
import type { CardMessage } from './card-blocks.ts';
import { createCatchUp } from './catch-up.ts';
import { limits } from './limits.ts';
import type { Address, Outbox, Posting } from './outbox.ts';
import type { Pace } from './sender.ts';
import { cutEscaped, escaped, plain } from './slack-text.ts';

export interface ThreadEvents {
  /** Keeps what was posted, so that its taps can be taken away. */
  readonly keep: (posted: PostedEvent) => void;
  /** Its taps have given way, or are about to: what it tells of has moved on. */
  readonly isOver: (post: KeptPost) => boolean;
  /** It moved on: nothing said before offers taps any more. `used`: what became of the one that was tapped. */
  readonly settle: (subject: StreamId, used?: { readonly ts: string; readonly outcome: string }) => Promise<void>;
  /** One message, whatever it tells of. */
  readonly settleOne: (team: string, channel: string, ts: string, outcome: string) => Promise<void>;
  /** What is known only after it was posted; a change calls nobody. False where Slack did not take it. */
  readonly addUnder: (posted: PostedEvent, lines: readonly string[]) => Promise<boolean>;
  readonly say: (to: Address, message: CardMessage, key: string, subject: StreamId) => Promise<Posting>;
  /** What Slack did not take, perhaps in an earlier life, is brought to it once more. */
  readonly tidy: () => Promise<void>;
}

export interface PostedEvent extends Address {
  readonly ts: string;
  /** The batch or session, else the stream that it tells of. */
  readonly subject: StreamId;
  readonly message: CardMessage;
}

export interface ThreadEventsNeeds {
  readonly crew: CrewId;
  readonly outbox: Outbox;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
  readonly pace: Pace;
  readonly log: Log;
}

/** Kept by this program as it was sent. */
const Kept = z.custom<KnownBlock>((block) => typeof block === 'object' && block !== null && 'type' in block);
const Shown = z.object({ text: z.string(), blocks: z.array(Kept) });

/** The crew's own stream never moves on as a whole: of its messages so many newest can still give way. */
const crewKept = 40;

export function createThreadEvents(needs: ThreadEventsNeeds): ThreadEvents {
  const { crew, outbox, postbox, team, log } = needs;
  const catchUp = createCatchUp({ pace: needs.pace, log, again: tryAgain });

  const openSaid = (): readonly KeptPost[] => postbox.openPosts(crew).filter(({ role }) => role === 'said');

  function keep({ channel, thread, ts, subject, message }: PostedEvent): void {
    const where = team();
    if (where === undefined || !hasTaps(message)) return;
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
    if (subject !== crewStream) return;
    const old = openSaid().filter((post) => post.subject === crewStream);
    for (const post of old.slice(0, -crewKept)) postbox.keep({ ...post, open: false });
  }

  /** Kept as it is to be until Slack has taken it. */
  async function close({ channel, ts, team: where }: KeptPost, outcome: string | undefined): Promise<void> {
    const post = postbox.postAt(where, channel, ts);
    if (post?.open !== true || !hasTaps(readShown(post.shown))) return;
    const message = withoutTaps(post.shown, outcome);
    if (message === undefined) return postbox.keep({ ...post, open: false });
    const closing = { ...post, shown: JSON.stringify(message) };
    postbox.keep(closing);
    if (!(await isTaken(closing, message))) catchUp.behind();
  }

  async function isTaken(post: KeptPost, message: CardMessage): Promise<boolean> {
    const updated = await outbox.update(post.channel, post.ts, async () => message);
    if (updated.kind === 'failed') return false;
    if (updated.kind !== 'done') log.error('taps-not-taken-away', { ts: post.ts, error: updated.error });
    postbox.keep({ ...post, open: false });
    return true;
  }

  async function tryAgain(): Promise<boolean> {
    let all = true;
    for (const post of openSaid()) {
      const message = withoutTaps(post.shown, undefined);
      if (message === undefined || hasTaps(readShown(post.shown))) continue;
      all = (await isTaken(post, message)) && all;
    }
    return all;
  }

  /** Where its taps have given way meanwhile they stay away. */
  async function addUnder({ channel, ts, message }: PostedEvent, lines: readonly string[]): Promise<boolean> {
    const updated = await outbox.update(channel, ts, async () => {
      const where = team();
      const post = where === undefined ? undefined : postbox.postAt(where, channel, ts);
      if (post === undefined) return withUnder(message, lines);
      const shown = post.open ? readShown(post.shown) : withoutTaps(JSON.stringify(message), undefined);
      const more = withUnder(shown ?? message, lines);
      if (post.open) postbox.keep({ ...post, shown: JSON.stringify(more) });
      return more;
    });
    return updated.kind === 'done';
  }

  return {
    keep,
    addUnder,
    isOver: ({ open, shown }) => !open || !hasTaps(readShown(shown)),
    tidy: async () => {
      if (!(await tryAgain())) catchUp.behind();
    },
    settle: async (subject, used) => {
      // What is said from now on is newer than what moved: only what stands here now gives way.
      const open = openSaid().filter((post) => post.subject === subject);
      for (const post of open) await close(post, post.ts === used?.ts ? used.outcome : undefined);
    },
    settleOne: async (where, channel, ts, outcome) => {
      const post = postbox.postAt(where, channel, ts);
      if (post?.role === 'said') await close(post, outcome);
    },
    say: async (to, message, key, subject) => {
      const posted = await outbox.post(to, message, key);
      if (posted.kind === 'posted') keep({ ...to, ts: posted.ts, subject, message });
      return posted;
    },
  };
}

const hasTaps = (message: { readonly blocks: readonly { readonly type: string }[] } | undefined): boolean =>
  message?.blocks.some(({ type }) => type === 'actions') === true;

const readShown = (shown: string) => Shown.safeParse(JSON.parse(shown)).data;

/** The message as it was shown, with what became of its taps in their place. */
export function withoutTaps(shown: string, outcome: string | undefined): CardMessage | undefined {
  const read = readShown(shown);
  if (read === undefined) return undefined;
  const blocks = read.blocks.filter(({ type }) => type !== 'actions');
  const [text] = apartFromTaps(read.text, hasTaps(read));
  if (outcome === undefined) return { text, blocks };
  const became = `\n${escaped(outcome)}`;
  return {
    text: `${cutEscaped(text, limits.message.text - became.length)}${became}`,
    blocks: [...blocks, { type: 'context', elements: [plain(outcome, limits.context.text)] }],
  };
}

/** The message with more lines under it, above its taps. */
function withUnder({ text, blocks }: CardMessage, lines: readonly string[]): CardMessage {
  const isAction = ({ type }: KnownBlock): boolean => type === 'actions';
  const under = lines.map((line): KnownBlock => ({ type: 'context', elements: [plain(line, limits.context.text)] }));
  const [said, taps] = apartFromTaps(text, blocks.some(isAction));
  const more = lines.map(escaped).join('\n');
  const end = [more, ...taps].join('\n');
  return {
    text: `${cutEscaped(said, limits.message.text - end.length - 1)}\n${end}`,
    blocks: [...blocks.filter((block) => !isAction(block)), ...under, ...blocks.filter(isAction)],
  };
}

/** The taps stand named on a text's last line. */
function apartFromTaps(text: string, hasTapBlocks: boolean): readonly [string, readonly string[]] {
  const lines = text.split('\n');
  const last = lines.at(-1) ?? '';
  return hasTapBlocks && /^\[.*\]$/.test(last) ? [lines.slice(0, -1).join('\n'), [last]] : [text, []];
}
