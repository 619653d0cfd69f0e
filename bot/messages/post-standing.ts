// Posts the message of a batch or session, once: written down before the try, so that what no answer came to, or what an
// earlier life had sent when it ended, is looked for and not posted again.

import { z } from 'zod';
import type { StreamId } from '../../core/ids.ts';
import type { KeptPost } from '../../core/ports.ts';
import { shownAs, standingWish } from './reconcile.ts';
import { keyOf, type Room, type Standing } from './room.ts';

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
