// What a chat platform is to its messages: it shows a look, and says what became of each try. A folder of its own
// translates both; when to try, again or elsewhere is decided here, for all of them alike.

import type { Place } from '../talk/pressed.ts';
import type { Look } from './look.ts';

/** Where a message is, or belongs: the thread's first message names the thread. */
export interface Address {
  readonly channel: string;
  readonly thread: string | undefined;
}

/** Where something was said, tapped or opened, and so where its answer belongs. */
export interface Where {
  /** The workspace that we are installed in, whosever somebody is. */
  readonly team: string;
  readonly user: string;
  readonly channel: string | undefined;
  /** The thread's first message. */
  readonly thread: string | undefined;
  readonly via: 'command' | 'mention' | 'direct' | 'button' | 'home' | 'form';
  /** A one-time address for answers to whoever said it. */
  readonly responseUrl: string | undefined;
}

/** What became of one try. */
export type Sent<T> =
  | { readonly kind: 'done'; readonly result: T }
  | { readonly kind: 'limited'; readonly retryAfterMs: number }
  /** The platform says no: it has not happened. */
  | { readonly kind: 'refused'; readonly error: string }
  /** It never left. */
  | { readonly kind: 'unsent'; readonly error: string }
  /** No answer: it may have happened. */
  | { readonly kind: 'unknown'; readonly error: string };

/** What a refusal says, in the platform's own words: nothing gets into this channel, to this person, on this message. */
export type Closed = 'channel' | 'person' | 'message';

export type Search =
  | { readonly kind: 'found'; readonly ts: string }
  | { readonly kind: 'none' }
  | { readonly kind: 'unknown' };

/** What is limited by itself, and how far apart it has to be. */
export interface Limit {
  readonly name: string;
  readonly spacingMs: number;
}

/** Every call is one try. */
export interface Platform {
  /** Its name, unique in its channel. */
  readonly post: (to: Address, look: Look, key: string) => Promise<Sent<string>>;
  readonly change: (channel: string, ts: string, look: Look) => Promise<Sent<unknown>>;
  /** By the key under which it was posted. */
  readonly find: (to: Address, key: string, since: number) => Promise<Search>;
  /** Only that person sees it, and only for a while. */
  readonly whisper: (to: Address, user: string, look: Look) => Promise<Sent<unknown>>;
  /** By the one-time address that came with what was said; false where there is none, or none any more. */
  readonly reply: (where: Where, look: Look) => Promise<boolean>;
  /** The channel in which somebody is written to alone. */
  readonly open: (user: string) => Promise<Sent<string>>;
  readonly isDirect: (channel: string) => boolean;
  readonly limitOf: (doing: 'post' | 'change' | 'whisper', channel: string) => Limit;
  readonly isClosed: (closed: Closed, error: string) => boolean;
  /** Where on it each tap stands. */
  readonly places: (look: Look) => readonly Place[];
  /** It has a list that keeps its last choice, and takes the same one no second time, until it is shown once more. */
  readonly keepsChoice: (look: Look) => boolean;
}
