// Bells: a mention of whoever must act in the thread of its batch, or a direct message to who chose that. A plain post in
// a channel wakes nobody's phone. A bell waits for nothing: what Slack does not take at once is tried again in a moment,
// for those alone who have not been told. What rings for many parts in one breath is one message.

import type { PersonName } from '../../core/ids.ts';
import type { Log, Postbox } from '../../core/ports.ts';
import type { Answer } from '../talk/answer.ts';
import type { FrontEnd } from '../talk/front-end.ts';
import { hasOneMessage, keptUnder } from '../talk/message-subject.ts';
import { cardMessage } from './card-blocks.ts';
import type { Desk } from './crew-desk.ts';
import type { FileUploads } from './file-uploads.ts';
import type { Address, Outbox, Posting } from './outbox.ts';
import { createRingNotes } from './ring-notes.ts';
import { whoIsMentioned } from './who-is-mentioned.ts';

export interface RingsNeeds {
  readonly desk: Desk;
  readonly outbox: Outbox;
  readonly files: FileUploads;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
  readonly now: () => number;
  readonly log: Log;
}

interface Bell {
  readonly answer: Answer;
  readonly key: string;
  readonly team: string;
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
/** No message of their own can be opened for them, now or later. */
const noWayTo: readonly string[] = [
  'no_slack_id',
  'user_not_found',
  'user_disabled',
  'cannot_dm_bot',
  'channel_not_found',
];
/** Stands for whoever reads the channel, where a bell names nobody. */
const everybody: PersonName = '';

export function createRings(needs: RingsNeeds): Pick<FrontEnd, 'tell' | 'wasTold'> {
  const { desk, outbox, now, log } = needs;
  const notes = createRingNotes(desk.crew, needs.postbox, now);

  async function tell(answer: Answer): Promise<'posted' | 'rejected' | 'unknown'> {
    const team = needs.team();
    if (team === undefined) return 'rejected';
    const { together } = answer;
    const bell: Bell = {
      answer: { ...answer, card: together?.card ?? answer.card },
      team,
      key: answer.key ?? answer.at,
    };
    if (notes.takeCovered(bell.key)) return 'posted';
    const left = notes.begin(bell.key, answer.to.length === 0 ? [everybody] : answer.to);
    const outcome = outcomeOf(await ringAll(bell, left));
    if (outcome === 'posted') {
      // Each of them is asked for by itself in a moment, and is recorded as having rung.
      if (together !== undefined) notes.cover(withoutOne(together.keys, bell.key), answer.to);
      // What may be tapped has changed with the time; a bell never waits for that.
      const refreshed = desk.standing.refresh(answer.about);
      void refreshed.catch((error: unknown) => log.error('refresh-failed', { error: String(error) }));
    }
    if (outcome !== 'posted') log.error('bell-not-posted', { key: bell.key, outcome, left: left.length });
    return outcome;
  }

  async function ringAll(bell: Bell, names: readonly PersonName[]): Promise<readonly Posting[]> {
    const posted: Posting[] = [];
    const inThread: PersonName[] = [];
    for (const name of names) {
      const told = (await chosenBy(name)) === 'direct' ? await ringDirect(bell, name) : undefined;
      // Who cannot be written to is called where the others are.
      if (told === undefined || (told.kind === 'rejected' && noWayTo.includes(told.error))) inThread.push(name);
      else posted.push(told);
    }
    if (inThread.length === 0) return posted;
    const told = await ringInThread(bell, inThread);
    const isShut = told.kind === 'rejected' && shut.includes(told.error);
    if (!isShut) return [...posted, told];
    // No later try gets in either: each is told alone.
    for (const name of inThread) posted.push(await ringDirect(bell, name));
    // Where somebody is told, nobody waits for who cannot be reached at all.
    const isHeard = posted.some(({ kind }) => kind === 'posted');
    return isHeard ? posted.filter((each) => each.kind !== 'rejected' || !noWayTo.includes(each.error)) : posted;
  }

  const chosenBy = async (name: PersonName) =>
    name === everybody ? 'thread' : (await desk.overview.voice(name)).rings;

  async function ringDirect(bell: Bell, name: PersonName): Promise<Posting> {
    const user = desk.roster.slackIdOf(bell.team, name);
    if (user === undefined) return { kind: 'rejected', error: 'no_slack_id' };
    const reached = await outbox.reach(user);
    if ('error' in reached) return { kind: 'rejected', error: reached.error };
    return ring(bell, [name], { channel: reached.channel, thread: undefined }, [], []);
  }

  /** In the thread that is there; where there is none yet, in the channel. */
  async function ringInThread(bell: Bell, names: readonly PersonName[]): Promise<Posting> {
    const subject = bell.answer.about?.find(hasOneMessage);
    const above = subject === undefined ? undefined : desk.standing.messageNow(subject);
    const channel = above?.channel ?? desk.channel();
    if (channel === undefined) return { kind: 'rejected', error: noChannel };
    const { mention, lines } = await whoIsMentioned(desk, bell.team, names, bell.answer.to[0]);
    if (mention.length === 0) log.error('bell-mentions-nobody', { key: bell.key });
    return ring(bell, names, { channel, thread: above?.ts }, mention, lines);
  }

  async function ring(
    { answer, key }: Bell,
    names: readonly PersonName[],
    to: Address,
    mention: readonly string[],
    more: readonly string[],
  ): Promise<Posting> {
    const { words } = await desk.overview.voice(answer.to[0]);
    const card = { ...answer.card, lines: [...answer.card.lines, ...more] };
    const actFirst = answer.kind === 'reminder';
    const message = cardMessage(card, { words, showing: `ring.${key}`, mention, actFirst });
    notes.trying(key, names, to);
    const posted = await outbox.ring(to, message, keyIn(desk, key));
    if (posted.kind === 'rejected') notes.became(key, names, 'wanted');
    if (posted.kind !== 'posted') return posted;
    notes.became(key, names, 'told');
    const subject = keptUnder(answer.about);
    desk.thread.keep({ ...to, ts: posted.ts, subject, message });
    needs.files.send(desk, card, { ...to, thread: to.thread ?? posted.ts });
    return posted;
  }

  /** Written down before every try: of what is not written down there was none. */
  async function wasTold(key: string): Promise<'yes' | 'no' | 'unknown'> {
    const tried = notes.unanswered(key);
    if (tried === undefined) return 'no';
    let isKnown = true;
    for (const { name, at, ...to } of tried) {
      const search = await outbox.find(to, keyIn(desk, key), at);
      if (search.kind === 'unknown') isKnown = false;
      else notes.became(key, [name], search.kind === 'found' ? 'told' : 'wanted');
    }
    if (!isKnown) return 'unknown';
    return notes.isToldToAll(key) ? 'yes' : 'no';
  }

  return { tell, wasTold };
}

const withoutOne = (keys: readonly string[], key: string): readonly string[] => keys.filter((other) => other !== key);

const keyIn = (desk: Desk, key: string): string => `${desk.crew}/${key}`;

/** Told when everybody is; who was told already is not told again. */
function outcomeOf(posted: readonly Posting[]): 'posted' | 'rejected' | 'unknown' {
  if (posted.some(({ kind }) => kind === 'unknown')) return 'unknown';
  return posted.some(({ kind }) => kind === 'rejected') ? 'rejected' : 'posted';
}
