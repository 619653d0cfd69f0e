// Makes one message show what it should: derives the wish, and sends only a difference, in the message's turn. A post is
// written down before it is tried, so that what had no answer, or what an earlier life had sent when it ended, is looked
// for and not posted again.

import { z } from 'zod';
import type { CrewId, StreamId } from '../../core/ids.ts';
import type { KeptPost, Log, Postbox } from '../../core/ports.ts';
import type { Overview } from '../talk/overview.ts';
import type { Pace } from '../time/pace.ts';
import type { Turns } from '../time/turns.ts';
import { stepTo } from './difference.ts';
import { faceOf, hasTaps, type Kept, keptIn, type Look } from './look.ts';
import type { Mail } from './mail.ts';
import type { OnItsWay, Showings } from './showings.ts';

/** What one crew's messages share: where they go, what is known of them, and what is being done to them. */
export interface RoomDeps {
  readonly crew: CrewId;
  readonly overview: Pick<Overview, 'standing' | 'liveSubjects'>;
  readonly mail: Mail;
  readonly postbox: Postbox;
  readonly team: () => string | undefined;
  /** The crew's; `undefined` while there is none. */
  readonly channel: () => string | undefined;
  readonly pace: Pace;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly log: Log;
}

export interface Room extends RoomDeps {
  readonly showings: Showings;
  /** One change at a time of a message. */
  readonly turns: Turns<string>;
  readonly posting: Map<StreamId, Promise<Standing | undefined>>;
  /** Touched last, to be shown before all others. */
  readonly urgent: Set<StreamId>;
}

/** The message of a batch or session; posted now if it was not there (`fresh`). */
export interface Standing {
  readonly post: KeptPost;
  readonly fresh: boolean;
}

export const keyOf = ({ channel, ts }: Pick<KeptPost, 'channel' | 'ts'>): string => `${channel}/${ts}`;

interface Wished {
  readonly look: Look;
  readonly live: boolean;
}

/** `behind`: to be tried again. `given-up`: it would be refused again, or is not there any more. */
export type Became = 'shown' | 'given-up' | 'behind';

export const shownAs = (kept: Kept): string => JSON.stringify(kept);

/** Of a batch or session by how it stands; of what was said beside it by what became of that since. */
async function wishFor(room: Room, post: KeptPost): Promise<Wished | undefined> {
  if (post.role === 'standing') return standingWish(room, post.subject, post.version + 1);
  const kept = keptIn(post.shown);
  if (kept === undefined) return undefined;
  const look = kept.wish ?? kept.look;
  return { look, live: hasTaps(look) };
}

async function standingWish(room: Room, subject: KeptPost['subject'], version: number): Promise<Wished> {
  const { card, live, language } = await room.overview.standing(subject);
  return { look: { card, language, showing: `${subject}.${version}` }, live };
}

/** `evenIfSame`: a list is shown anew for its next choice. */
export function reconcile(room: Room, seen: KeptPost, evenIfSame = false): Promise<Became> {
  return room.turns.take(keyOf(seen), () => inTurn(room, seen, evenIfSame));
}

async function inTurn(room: Room, seen: KeptPost, evenIfSame: boolean): Promise<Became> {
  const first = await difference(room, seen, evenIfSame);
  // Most have not changed: they cost no turn of their channel.
  if (first === undefined) return 'shown';
  let sent: Wished = first;
  let onItsWay: OnItsWay | undefined;
  const changed = await room.mail.change(seen.channel, seen.ts, async (waited) => {
    const now = waited ? await difference(room, seen, evenIfSame) : first;
    onItsWay?.lost();
    onItsWay = now && room.showings.sending(keyOf(seen), () => room.mail.platform.places(now.look));
    sent = now ?? sent;
    return now?.look;
  });
  if (changed.kind === 'done') onItsWay?.arrived();
  else onItsWay?.lost();
  switch (changed.kind) {
    case 'done':
      keepShown(room, seen, sent);
      return 'shown';
    // Somebody deleted it: what still runs gets another.
    case 'gone':
      room.postbox.keep({ ...seen, open: false });
      return 'given-up';
    // The same would be refused again: only what comes next is sent.
    case 'refused':
      room.log.error('message-not-changed', { subject: seen.subject, error: changed.error });
      keepShown(room, seen, sent);
      return 'given-up';
    case 'failed':
      return 'behind';
  }
}

async function difference(room: Room, seen: KeptPost, evenIfSame: boolean): Promise<Wished | undefined> {
  const { postbox, mail } = room;
  const post = postbox.postAt(seen.team, seen.channel, seen.ts);
  if (post?.open !== true) return undefined;
  const wish = await wishFor(room, post);
  if (wish === undefined) {
    postbox.keep({ ...post, open: false });
    return undefined;
  }
  const { look, live } = wish;
  const before = keptIn(post.shown)?.look;
  const step = stepTo({ face: faceOf(look), live }, { face: before === undefined ? '' : faceOf(before), open: true });
  return step === 'change' || (evenIfSame && mail.platform.keepsChoice(look)) ? wish : undefined;
}

/** What was wished for while it was on its way is still to come. */
function keepShown({ postbox }: Room, seen: KeptPost, { look, live }: Wished): void {
  const post = postbox.postAt(seen.team, seen.channel, seen.ts) ?? seen;
  const { wish, ...before } = keptIn(post.shown) ?? {};
  const later = wish === undefined || faceOf(wish) === faceOf(look) ? {} : { wish };
  const shown = shownAs({ ...before, look, ...later });
  postbox.keep({ ...post, version: post.version + 1, shown, open: live || 'wish' in later });
}

const Tried = z.object({ channel: z.string(), key: z.string(), at: z.number() });

/** `before`: its earlier message, which is closed. */
export async function postStanding(
  room: Room,
  subject: StreamId,
  before: KeptPost | undefined,
): Promise<Standing | undefined> {
  const { crew, postbox, mail, showings } = room;
  const wish = await standingWish(room, subject, 1);
  // What is finished keeps its message: what is said of it later goes into its thread.
  if (before !== undefined && !wish.live) return { post: before, fresh: false };
  const [team, channel] = [room.team(), room.channel()];
  if (team === undefined || channel === undefined) return undefined;
  const note = `posting/${crew}/${subject}`;
  const key = `standing/${subject}/${before?.ts ?? 1}`;
  const tried = Tried.safeParse(JSON.parse(postbox.note(note) ?? '{}')).data;
  const since = tried?.key === key && tried.channel === channel ? tried.at : undefined;
  if (since === undefined) postbox.setNote(note, JSON.stringify({ channel, key, at: room.now() }));
  const posted = await mail.post({ channel, thread: undefined }, wish.look, key, since);
  if (posted.kind === 'rejected') postbox.setNote(note, undefined);
  if (posted.kind !== 'posted') return undefined;
  const head = { team, channel, ts: posted.ts, crew, subject, thread: undefined, version: 1 } as const;
  // What an earlier try had sent may have said something else.
  const known =
    since === undefined ? { shown: shownAs({ look: wish.look }), open: wish.live } : { shown: '', open: true };
  const post: KeptPost = { ...head, role: 'standing', ...known };
  postbox.keep(post);
  postbox.setNote(note, undefined);
  showings.sending(keyOf(post), () => mail.platform.places(wish.look));
  return { post, fresh: true };
}
