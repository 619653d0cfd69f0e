// Messages out, each under a key: where a post has no answer, or may have been made by an earlier life, it is looked for
// by its key before it is posted again.

import { type Failed, failed } from '../../core/failed.ts';
import type { Look } from './look.ts';
import type { Address, Platform, Search, Sent, Where } from './platform.ts';
import type { Sender } from './sender.ts';

export type Posting =
  | { readonly kind: 'posted'; readonly ts: string }
  | { readonly kind: 'rejected'; readonly error: string }
  | { readonly kind: 'unknown' };

/** `gone`: the message can no longer be changed. `refused`: not like this. `failed`: perhaps another time. */
export type Changing =
  | { readonly kind: 'done' }
  | { readonly kind: 'gone' | 'refused' | 'failed'; readonly error: string };

export interface Mail {
  readonly platform: Platform;
  /** Waits its turn and the platform's limits. `since`: it may have been posted already, from then on. */
  readonly post: (to: Address, look: Look, key: string, since?: number) => Promise<Posting>;
  /** One try: for a bell, whose ringer knows when to try again. */
  readonly ring: (to: Address, look: Look, key: string) => Promise<Posting>;
  /** As it is when its turn has come; `undefined`: nothing to change any more. */
  readonly change: (channel: string, ts: string, make: MakeLook) => Promise<Changing>;
  /** Only that person sees it, where they said something: an answer to their own act. False: not taken. */
  readonly whisper: (where: Where, look: Look) => Promise<boolean>;
  readonly find: (to: Address, key: string, since: number) => Promise<Search>;
  /** The channel in which somebody is written to alone, or why there is none. */
  readonly reach: (user: string) => Promise<{ readonly channel: string } | Failed<string>>;
  /** Taken in by an earlier life at that time, and worked off by this one: it may have been answered then. */
  readonly resumed: (id: string, since: number) => void;
}

/** `waited`: what was to be shown when it was asked for may be over. */
export type MakeLook = (waited: boolean) => Promise<Look | undefined>;

interface Parts {
  readonly platform: Platform;
  readonly sender: Sender;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly resumed: Map<string, number>;
  readonly direct: Map<string, string>;
}

export function createMail(deps: Pick<Parts, 'platform' | 'sender' | 'now'>): Mail {
  const parts: Parts = { ...deps, resumed: new Map(), direct: new Map() };
  const { platform, sender } = deps;
  return {
    platform,
    find: platform.find,
    post: (to, look, key, since) => post(parts, to, look, key, since),
    ring: async (to, look, key) =>
      postingOf(
        await sender.sendNow(to.channel, platform.limitOf('post', to.channel), () => platform.post(to, look, key)),
      ),
    change: (channel, ts, make) => change(parts, channel, ts, make),
    whisper: (where, look) => whisper(parts, where, look),
    reach: (user) => reach(parts, user),
    resumed: (id, since) => {
      parts.resumed.set(id, since);
    },
  };
}

async function post(parts: Parts, to: Address, look: Look, key: string, known?: number): Promise<Posting> {
  const { platform, sender, now } = parts;
  const limit = platform.limitOf('post', to.channel);
  const send = async () => postingOf(await sender.send(to.channel, limit, () => platform.post(to, look, key)));
  const earlier = known ?? [...parts.resumed].find(([id]) => key.includes(id))?.[1];
  const before = earlier === undefined ? undefined : await platform.find(to, key, earlier);
  if (before?.kind === 'found') return { kind: 'posted', ts: before.ts };
  const since = now();
  const first = await send();
  if (first.kind !== 'unknown') return first;
  const search = await platform.find(to, key, since);
  return search.kind === 'found' ? { kind: 'posted', ts: search.ts } : send();
}

async function change({ platform, sender }: Parts, channel: string, ts: string, make: MakeLook): Promise<Changing> {
  const sent = await sender.send(channel, platform.limitOf('change', channel), async (waited) => {
    const look = await make(waited);
    return look === undefined ? { kind: 'done', result: undefined } : platform.change(channel, ts, look);
  });
  if (sent.kind === 'done') return { kind: 'done' };
  if (sent.kind === 'limited') return { kind: 'failed', error: 'limited' };
  if (sent.kind !== 'refused') return { kind: 'failed', error: sent.error };
  return { kind: platform.isClosed('message', sent.error) ? 'gone' : 'refused', error: sent.error };
}

async function whisper({ platform, sender }: Parts, where: Where, look: Look): Promise<boolean> {
  if (await platform.reply(where, look)) return true;
  const { channel, thread, user } = where;
  if (channel === undefined || platform.isDirect(channel)) return false;
  const limit = platform.limitOf('whisper', channel);
  const sent = await sender.send(channel, limit, () => platform.whisper({ channel, thread }, user, look));
  return sent.kind === 'done';
}

async function reach({ platform, direct }: Parts, user: string): ReturnType<Mail['reach']> {
  const known = direct.get(user);
  if (known !== undefined) return { channel: known };
  const opened = await platform.open(user);
  if (opened.kind !== 'done') return failed('error' in opened ? opened.error : 'no_answer');
  direct.set(user, opened.result);
  return { channel: opened.result };
}

function postingOf(sent: Sent<string>): Posting {
  switch (sent.kind) {
    case 'done':
      return { kind: 'posted', ts: sent.result };
    case 'limited':
      return { kind: 'rejected', error: 'limited' };
    case 'refused':
    case 'unsent':
      return { kind: 'rejected', error: sent.error };
    case 'unknown':
      return { kind: 'unknown' };
  }
}
