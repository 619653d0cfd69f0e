// Makes one message show what it should: derives the wish, and sends only a difference, in the message's turn. What was
// wished for meanwhile stays wished for.

import type { KeptPost } from '../../core/ports.ts';
import { stepTo } from './difference.ts';
import { faceOf, hasTaps, type Kept, keptIn, type Look } from './look.ts';
import { keyOf, type Room } from './room.ts';
import type { OnItsWay } from './showings.ts';

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

export async function standingWish(room: Room, subject: KeptPost['subject'], version: number): Promise<Wished> {
  const { card, live } = await room.overview.standing(subject);
  const { language } = await room.overview.voice(undefined);
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
