// Bells: a mention of whoever must act in the thread of its batch, or a direct message to who chose that. A plain post in
// a channel wakes nobody's phone. Where a bell is being posted is noted first, so that it can be looked for later.

import { z } from 'zod';
import type { Log, Postbox } from '../../core/ports.ts';
import type { Answer } from '../answer.ts';
import type { FrontEnd } from '../front-end.ts';
import { cardMessage } from './card-blocks.ts';
import type { Desk } from './desk.ts';
import type { FileUploads } from './file-uploads.ts';
import type { Address, Outbox, Posting } from './outbox.ts';

export interface RingsNeeds {
  readonly desk: Desk;
  readonly outbox: Outbox;
  readonly files: FileUploads;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
  readonly now: () => number;
  readonly log: Log;
}

const noChannel = 'no_channel';
/** Slack's words for a channel into which nothing can be said: taken out of it, archived, closed to all but a few. */
const shut: readonly string[] = [
  noChannel,
  'channel_not_found',
  'not_in_channel',
  'is_archived',
  'restricted_action',
  'restricted_action_read_only_channel',
  'restricted_action_thread_only_channel',
  'restricted_action_thread_locked',
];
const Noted = z.object({ channel: z.string(), thread: z.string().optional(), at: z.number() });

export function createRings(needs: RingsNeeds): Pick<FrontEnd, 'tell' | 'wasTold'> {
  const { desk, outbox, postbox, now, log } = needs;
  const noteOf = (key: string): string => `ring/${desk.crew}/${key}`;

  async function tell(answer: Answer): Promise<'posted' | 'rejected' | 'unknown'> {
    const team = needs.team();
    if (team === undefined) return 'rejected';
    const key = answer.key ?? answer.at;
    const [subject] = answer.about ?? [];
    const chosen = await Promise.all(answer.to.map(async (name) => (await desk.overview.voice(name)).rings));
    const inThread = answer.to.filter((_, i) => chosen[i] === 'thread');
    const direct = answer.to.filter((_, i) => chosen[i] === 'direct');
    const posted: Posting[] = [];
    for (const name of direct) posted.push(await ringDirect(answer, key, team, name));
    if (inThread.length > 0 || direct.length === 0) {
      const told = await ringInThread(answer, key, team, inThread);
      const isShut = told.kind === 'rejected' && shut.includes(told.error) && inThread.length > 0;
      if (!isShut) posted.push(told);
      // No later try gets in either: each is told alone.
      else for (const name of inThread) posted.push(await ringDirect(answer, key, team, name));
    }
    const outcome = outcomeOf(posted);
    if (outcome === 'posted') {
      postbox.setNote(noteOf(key), undefined);
      // What may be tapped has changed with the time; a bell never waits for that.
      void desk.batches.refresh().catch((error: unknown) => log.error('refresh-failed', { error: String(error) }));
    }
    if (outcome !== 'posted') log.error('bell-not-posted', { key, outcome, subject: subject ?? null });
    return outcome;
  }

  async function ringDirect(answer: Answer, key: string, team: string, name: string): Promise<Posting> {
    const user = desk.roster.slackIdOf(team, name);
    const channel = user === undefined ? undefined : await outbox.directTo(user);
    if (channel === undefined) return { kind: 'rejected', error: 'no_direct_channel' };
    return ring({ channel, thread: undefined }, answer, key, []);
  }

  async function ringInThread(answer: Answer, key: string, team: string, names: readonly string[]): Promise<Posting> {
    const [subject] = answer.about ?? [];
    const place = subject === undefined ? undefined : await desk.batches.messageOf(subject);
    const channel = place?.post.channel ?? desk.channel();
    if (channel === undefined) return { kind: 'rejected', error: noChannel };
    const mention = names.flatMap((name) => desk.roster.slackIdOf(team, name) ?? []);
    if (mention.length === 0) log.error('bell-mentions-nobody', { key });
    return ring({ channel, thread: place?.post.ts }, answer, key, mention);
  }

  async function ring(to: Address, answer: Answer, key: string, mention: readonly string[]): Promise<Posting> {
    const { words } = await desk.overview.voice(answer.to[0]);
    const [subject] = answer.about ?? [];
    const message = cardMessage(answer.card, { words, showing: `ring.${key}`, mention });
    postbox.setNote(noteOf(key), JSON.stringify({ ...to, at: now() }));
    const posted = await outbox.ring(to, message, keyIn(desk, key));
    if (posted.kind !== 'posted') return posted;
    if (subject !== undefined) desk.thread.keep({ ...to, ts: posted.ts, subject, message });
    needs.files.send(desk, answer.card, { ...to, thread: to.thread ?? posted.ts });
    return posted;
  }

  async function wasTold(key: string): Promise<'yes' | 'no' | 'unknown'> {
    const note = postbox.note(noteOf(key));
    // Noted before every try: without a note there was none.
    if (note === undefined) return 'no';
    const read = Noted.safeParse(JSON.parse(note)).data;
    if (read === undefined) return 'unknown';
    const search = await outbox.find({ channel: read.channel, thread: read.thread }, keyIn(desk, key), read.at);
    if (search.kind === 'unknown') return 'unknown';
    return search.kind === 'found' ? 'yes' : 'no';
  }

  return { tell, wasTold };
}

const keyIn = (desk: Desk, key: string): string => `${desk.crew}/${key}`;

/** Told where it counts most is told: a second try would ring twice for those who have heard it. */
function outcomeOf(posted: readonly Posting[]): 'posted' | 'rejected' | 'unknown' {
  if (posted.some(({ kind }) => kind === 'unknown')) return 'unknown';
  return posted.some(({ kind }) => kind === 'posted') ? 'posted' : 'rejected';
}
