// Bells: a mention of whoever must act in the thread of its batch, or a direct message to who chose that. A plain post in
// a channel wakes nobody's phone. A bell waits for nothing: what the platform does not take at once is tried again in a
// moment, for those alone who have not been told. What rings for many parts in one breath is one message.

import { isFailed } from '../../core/failed.ts';
import type { PersonName } from '../../core/ids.ts';
import type { Log, Postbox } from '../../core/ports.ts';
import type { Answer } from '../talk/answer.ts';
import type { FrontEnd } from '../talk/front-end.ts';
import { hasOneMessage, keptUnder } from '../talk/message-subject.ts';
import type { MessageDesk } from './desk.ts';
import type { Files } from './files.ts';
import type { Mail, Posting } from './mail.ts';
import type { Address } from './platform.ts';
import { createRingNotes, type RingNotes } from './ring-notes.ts';
import { whoIsMentioned } from './who-is-mentioned.ts';

export interface RingsDeps {
  readonly desk: MessageDesk;
  readonly mail: Mail;
  readonly files: Files;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
  readonly now: () => number;
  readonly log: Log;
}

interface Belfry extends RingsDeps {
  readonly notes: RingNotes;
}

interface Bell {
  readonly answer: Answer;
  readonly key: string;
  readonly team: string;
}

const noChannel = 'no_channel';
const noId = 'no_id';
/** Stands for whoever reads the channel, where a bell names nobody. */
const everybody: PersonName = '';

export function createRings(deps: RingsDeps): Pick<FrontEnd, 'tell' | 'wasTold'> {
  const belfry: Belfry = { ...deps, notes: createRingNotes(deps.desk.crew, deps.postbox, deps.now) };
  return { tell: (answer) => tell(belfry, answer), wasTold: (key) => wasTold(belfry, key) };
}

async function tell(belfry: Belfry, answer: Answer): Promise<'posted' | 'rejected' | 'unknown'> {
  const { notes, desk, log } = belfry;
  const team = belfry.team();
  if (team === undefined) return 'rejected';
  const { together } = answer;
  const key = answer.key ?? answer.at;
  const bell: Bell = { answer: { ...answer, card: together?.card ?? answer.card }, team, key };
  if (notes.takeCovered(key)) return 'posted';
  const left = notes.begin(key, answer.to.length === 0 ? [everybody] : answer.to);
  const outcome = outcomeOf(await ringAll(belfry, bell, left));
  if (outcome === 'posted') {
    // Each of them is asked for by itself in a moment, and is recorded as having rung.
    if (together !== undefined) notes.cover(withoutOne(together.keys, key), answer.to);
    // What may be tapped has changed with the time; a bell never waits for that.
    const refreshed = desk.messages.refresh(answer.about);
    void refreshed.catch((error: unknown) => log.error('refresh-failed', { error: String(error) }));
  }
  if (outcome !== 'posted') log.error('bell-not-posted', { key, outcome, left: left.length });
  return outcome;
}

async function ringAll(belfry: Belfry, bell: Bell, names: readonly PersonName[]): Promise<readonly Posting[]> {
  const posted: Posting[] = [];
  const inThread: PersonName[] = [];
  for (const name of names) {
    const told = (await isDirect(belfry, name)) ? await ringDirect(belfry, bell, name) : undefined;
    // Who cannot be written to is called where the others are.
    if (told === undefined || cannotReach(belfry, told)) inThread.push(name);
    else posted.push(told);
  }
  if (inThread.length === 0) return posted;
  const told = await ringInThread(belfry, bell, inThread);
  if (!isShut(belfry, told)) return [...posted, told];
  // No later try gets in either: each is told alone.
  for (const name of inThread) posted.push(await ringDirect(belfry, bell, name));
  // Where somebody is told, nobody waits for who cannot be reached at all.
  const isHeard = posted.some(({ kind }) => kind === 'posted');
  return isHeard ? posted.filter((each) => !cannotReach(belfry, each)) : posted;
}

const isDirect = async ({ desk }: Belfry, name: PersonName) =>
  name !== everybody && (await desk.overview.voice(name)).rings === 'direct';

/** No message of their own can be opened for them, now or later. */
const cannotReach = ({ mail }: Belfry, told: Posting): boolean =>
  told.kind === 'rejected' && (told.error === noId || mail.platform.isClosed('person', told.error));

const isShut = ({ mail }: Belfry, told: Posting): boolean =>
  told.kind === 'rejected' && (told.error === noChannel || mail.platform.isClosed('channel', told.error));

async function ringDirect(belfry: Belfry, bell: Bell, name: PersonName): Promise<Posting> {
  const user = belfry.desk.roster.idOf(bell.team, name);
  if (user === undefined) return { kind: 'rejected', error: noId };
  const reached = await belfry.mail.reach(user);
  if (isFailed(reached)) return { kind: 'rejected', error: reached.failed };
  return ring(belfry, bell, [name], { channel: reached.channel, thread: undefined }, { mention: [], lines: [] });
}

/** In the thread that is there; where there is none yet, in the channel. */
async function ringInThread(belfry: Belfry, bell: Bell, names: readonly PersonName[]): Promise<Posting> {
  const { desk, log } = belfry;
  const subject = bell.answer.about?.find(hasOneMessage);
  const above = subject === undefined ? undefined : desk.messages.messageNow(subject);
  const channel = above?.channel ?? desk.channel();
  if (channel === undefined) return { kind: 'rejected', error: noChannel };
  const mentioned = await whoIsMentioned(desk, bell.team, names, bell.answer.to[0]);
  if (mentioned.mention.length === 0) log.error('bell-mentions-nobody', { key: bell.key });
  return ring(belfry, bell, names, { channel, thread: above?.ts }, mentioned);
}

async function ring(
  { desk, mail, files, notes }: Belfry,
  { answer, key }: Bell,
  names: readonly PersonName[],
  to: Address,
  { mention, lines }: { readonly mention: readonly string[]; readonly lines: readonly string[] },
): Promise<Posting> {
  const { language } = await desk.overview.voice(answer.to[0]);
  const card = { ...answer.card, lines: [...answer.card.lines, ...lines] };
  const look = { card, language, showing: `ring.${key}`, mention, actFirst: answer.kind === 'reminder' };
  notes.trying(key, names, to);
  const posted = await mail.ring(to, look, keyIn(desk, key));
  if (posted.kind === 'rejected') notes.became(key, names, 'wanted');
  if (posted.kind !== 'posted') return posted;
  notes.became(key, names, 'told');
  desk.messages.keep({ ...to, ts: posted.ts, subject: keptUnder(answer.about), look });
  files.send(desk, card, { ...to, thread: to.thread ?? posted.ts });
  return posted;
}

/** Written down before every try: of what is not written down there was none. */
async function wasTold({ notes, mail, desk }: Belfry, key: string): Promise<'yes' | 'no' | 'unknown'> {
  const tried = notes.unanswered(key);
  if (tried === undefined) return 'no';
  let isKnown = true;
  for (const { name, at, ...to } of tried) {
    const search = await mail.find(to, keyIn(desk, key), at);
    if (search.kind === 'unknown') isKnown = false;
    else notes.became(key, [name], search.kind === 'found' ? 'told' : 'wanted');
  }
  if (!isKnown) return 'unknown';
  return notes.isToldToAll(key) ? 'yes' : 'no';
}

const withoutOne = (keys: readonly string[], key: string): readonly string[] => keys.filter((other) => other !== key);

const keyIn = (desk: MessageDesk, key: string): string => `${desk.crew}/${key}`;

/** Told when everybody is; who was told already is not told again. */
function outcomeOf(posted: readonly Posting[]): 'posted' | 'rejected' | 'unknown' {
  if (posted.some(({ kind }) => kind === 'unknown')) return 'unknown';
  return posted.some(({ kind }) => kind === 'rejected') ? 'rejected' : 'posted';
}
