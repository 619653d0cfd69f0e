// What a crew sees on a chat platform, as wishes that are derived from the record: one message for each batch and each
// session, posted once and changed in place as it moves on, with its events in its thread; and those events, whose taps
// give way once what they tell of has moved on. Where each stands is kept durably, so that a restart goes on with it.

import { crewStream, type StreamId } from '../../core/ids.ts';
import type { KeptPost } from '../../core/ports.ts';
import { hasOneMessage } from '../talk/message-subject.ts';
import { howItMoved, type Moved, type Press } from '../talk/pressed.ts';
import { createTurns } from '../time/turns.ts';
import { hasTaps, keptIn, type Look, withoutTaps, withUnder } from './look.ts';
import type { Posting } from './mail.ts';
import type { Address } from './platform.ts';
import { keyOf, postStanding, type Room, type RoomDeps, reconcile, type Standing, shownAs } from './reconcile.ts';
import { createRounds, type Rounds } from './rounds.ts';
import { createShowings } from './showings.ts';

export interface Said extends Address {
  readonly ts: string;
  /** The batch or session, else the stream that it tells of. */
  readonly subject: StreamId;
  /** What it tells of beside that. */
  readonly moved?: readonly StreamId[];
  readonly look: Look;
}

/** What was tapped on which message, for what then stands in place of its buttons. */
export interface Used {
  readonly channel: string;
  readonly ts: string;
  readonly outcome: string;
}

export interface Messages {
  /** Of a batch or session; `undefined` where there is none and nowhere to post it. */
  readonly messageOf: (subject: StreamId) => Promise<Standing | undefined>;
  /** The message that is there already: nothing is waited for. */
  readonly messageNow: (subject: StreamId) => KeptPost | undefined;
  /** Shows each as it should be now, those `first` that somebody just touched; only what differs is sent. */
  readonly refresh: (first?: readonly StreamId[]) => Promise<void>;
  /** A list of taps is shown once more. */
  readonly showAgain: (subject: StreamId) => Promise<void>;
  readonly say: (to: Address, look: Look, key: string, subject: StreamId) => Promise<Posting>;
  /** Keeps what was posted, so that its taps can be taken away. */
  readonly keep: (said: Said) => void;
  /** They moved on: nothing said of them before offers taps any more, nor does what was tapped, whatever it tells of. */
  readonly settle: (streams: readonly StreamId[], used?: Used) => Promise<void>;
  /** What is known only after it was posted; a change calls nobody. False where the platform did not take it. */
  readonly addUnder: (said: Said, lines: readonly string[]) => Promise<boolean>;
  /** How a message had moved under a press on it; by what it showed in the last moments. */
  readonly movedUnder: (post: KeptPost, press: PressOn) => Moved;
}

/** `version`: of the showing that was pressed. */
export type PressOn = Omit<Press, 'row' | 'isOlder'> & { readonly version: number | undefined };

/** The crew's own stream never moves on as a whole: of its messages so many newest can still give way. */
const crewKept = 40;

export function createMessages(deps: RoomDeps): Messages {
  const own = { showings: createShowings(deps.now), turns: createTurns<string>() };
  const room: Room = { ...deps, ...own, posting: new Map(), urgent: new Set() };
  const { crew, postbox, mail } = deps;
  const rounds = createRounds({ pace: deps.pace, log: deps.log, round: () => round(room) });
  const keep = (said: Said) => keepSaid(room, said);
  return {
    keep,
    messageOf: (subject) => messageOf(room, subject),
    messageNow: (subject) => postbox.standingOf(crew, subject),
    movedUnder: (post, press) => movedUnder(room, post, press),
    addUnder: (said, lines) => addUnder(room, said, lines),
    settle: (streams, used) => settle(room, rounds, streams, used),
    refresh: (first = []) => {
      for (const subject of first) room.urgent.add(subject);
      return rounds.now();
    },
    showAgain: async (subject) => {
      const post = postbox.standingOf(crew, subject);
      if (post?.open === true) await reconcile(room, post, true);
    },
    say: async (to, look, key, subject) => {
      const posted = await mail.post(to, look, key);
      if (posted.kind === 'posted') keep({ ...to, ts: posted.ts, subject, look });
      return posted;
    },
  };
}

async function messageOf(room: Room, subject: StreamId): Promise<Standing | undefined> {
  const { posting, postbox, crew } = room;
  if (!hasOneMessage(subject)) return undefined;
  const post = postbox.standingOf(crew, subject);
  if (post?.open === true) return { post, fresh: false };
  const under = posting.get(subject);
  // Whoever asks meanwhile finds it there already.
  if (under !== undefined) return under.then((made) => made && { ...made, fresh: false });
  const made = postStanding(room, subject, post).finally(() => posting.delete(subject));
  posting.set(subject, made);
  return made;
}

async function round(room: Room): Promise<boolean> {
  const { crew, postbox, overview, urgent } = room;
  const fresh = new Set<StreamId>();
  let all = true;
  async function show(post: KeptPost | undefined): Promise<void> {
    if (post?.open !== true || (post.role === 'standing' && fresh.has(post.subject))) return;
    all = (await reconcile(room, post)) !== 'behind' && all;
  }
  async function urgentFirst(): Promise<void> {
    for (const subject of urgent) {
      urgent.delete(subject);
      fresh.delete(subject);
      await show(postbox.standingOf(crew, subject));
      fresh.add(subject);
    }
  }
  await urgentFirst();
  for (const post of postbox.openPosts(crew)) {
    if (post.role === 'said' && keptIn(post.shown)?.wish === undefined) continue;
    await show(post);
    await urgentFirst();
  }
  // Without a place for it nothing is behind.
  if (room.team() === undefined || room.channel() === undefined) return all;
  for (const subject of await overview.liveSubjects()) {
    if (postbox.standingOf(crew, subject)?.open !== true) all = (await messageOf(room, subject)) !== undefined && all;
  }
  return all;
}

const openSaid = ({ postbox, crew }: Room): readonly KeptPost[] =>
  postbox.openPosts(crew).filter(({ role }) => role === 'said');

function keepSaid(room: Room, { channel, thread, ts, subject, look, moved = [] }: Said): void {
  const { crew, postbox } = room;
  const team = room.team();
  if (team === undefined || !hasTaps(look)) return;
  const head = { team, channel, ts, crew, subject, thread } as const;
  postbox.keep({ ...head, role: 'said', version: 1, shown: shownAs({ look, moved }), open: true });
  if (subject !== crewStream) return;
  const old = openSaid(room).filter((post) => post.subject === crewStream);
  for (const post of old.slice(0, -crewKept)) postbox.keep({ ...post, open: false });
}

/** What is said from now on is newer than what moved: only what stands here now gives way, whenever the platform takes it. */
async function settle(room: Room, rounds: Rounds, streams: readonly StreamId[], used?: Used): Promise<void> {
  const isUsed = (post: KeptPost) => used !== undefined && keyOf(post) === keyOf(used);
  const giving = openSaid(room).filter((post) => {
    const kept = keptIn(post.shown);
    const tellsOf = [post.subject, ...(kept?.moved ?? [])];
    if (!isUsed(post) && !streams.some((stream) => tellsOf.includes(stream))) return false;
    if (kept === undefined) room.postbox.keep({ ...post, open: false });
    if (kept === undefined || isOver(post)) return false;
    const wish = withoutTaps(kept.wish ?? kept.look, isUsed(post) ? used?.outcome : undefined);
    room.postbox.keep({ ...post, shown: shownAs({ ...kept, wish }) });
    return true;
  });
  for (const post of giving) if ((await reconcile(room, post)) === 'behind') rounds.behind();
}

/** Its taps have given way, or are about to: what it tells of has moved on. */
function isOver({ open, shown }: KeptPost): boolean {
  const kept = keptIn(shown);
  return !open || kept === undefined || !hasTaps(kept.wish ?? kept.look);
}

/** Where its taps have given way meanwhile they stay away. */
async function addUnder(room: Room, { channel, ts, look }: Said, lines: readonly string[]): Promise<boolean> {
  const { postbox, mail } = room;
  const team = room.team();
  const post = team === undefined ? undefined : postbox.postAt(team, channel, ts);
  const kept = post === undefined ? undefined : keptIn(post.shown);
  if (post?.open === true && kept !== undefined) {
    const wish = withUnder(kept.wish ?? kept.look, lines);
    postbox.keep({ ...post, shown: shownAs({ ...kept, wish }) });
    return (await reconcile(room, post)) === 'shown';
  }
  const more = withUnder(post === undefined ? look : withoutTaps(look, undefined), lines);
  return (await mail.change(channel, ts, async () => more)).kind === 'done';
}

function movedUnder({ showings, mail }: Room, post: KeptPost, { version, ...press }: PressOn): Moved {
  if (post.role === 'said') return isOver(post) ? { is: 'older', now: undefined } : { is: 'not' };
  const isOlder = version !== undefined && version < post.version;
  const shown = showings.of(keyOf(post));
  const look = keptIn(post.shown)?.look;
  // A life that has shown nothing yet goes by what an earlier one showed.
  const before = look === undefined ? [] : [{ since: 0, places: mail.platform.places(look) }];
  return howItMoved(shown.length > 0 ? shown : before, { ...press, row: '', isOlder });
}
