// What the page has to tell, in the order in which it happened, numbered for good: a phone that was away asks for all
// after the last number that it saw. Rings reach the disk before they count as posted.

import { randomBytes } from 'node:crypto';
import type { Log } from '../../core/ports.ts';
import { type Answer, hasMovedOn } from '../talk/answer.ts';
import type { Delivery, FrontEnd } from '../talk/front-end.ts';
import { type ConversationFile, openConversationFile, type Post } from './conversation-file.ts';

export interface Conversation extends Pick<FrontEnd, 'tell' | 'wasTold'> {
  /** Another conversation has other numbers: a page that saw that one starts anew. */
  readonly id: string;
  readonly latest: () => number;
  /** An answer given anywhere, so that the whole crew sees what was recorded. The same delivery twice is one post. */
  readonly heard: (delivery: Pick<Delivery, 'text' | 'id'>, answer: Answer) => void;
  /** The answer that stands for a delivery: the same for ever. */
  readonly answered: (delivery: string) => Post | undefined;
  /** The last answer to it, be it only that nothing could be recorded. */
  readonly lastTo: (delivery: string) => Post | undefined;
  /** The post has an older card: what it tells of was recorded upon after it. */
  readonly hasMovedOn: (n: number) => boolean;
  readonly newest: (count: number, person: string) => readonly Post[];
  /** `gone`: some of them are no longer kept. */
  readonly after: (n: number, person: string) => readonly Post[] | 'gone';
  readonly follow: (listener: (post: Post) => void) => () => void;
  readonly close: () => void;
}

/** A shift of a big crew is some hundreds. */
const kept = 1000;

/** `folder`: where it outlives the process; `undefined`: it does not. */
export function openConversation(folder: string | undefined, log: Log): Conversation {
  const file = folder === undefined ? undefined : fileIn(folder, log);
  const id = file?.id ?? randomBytes(4).toString('hex');
  let posts: readonly Post[] = file?.posts ?? [];
  // The last posts before a power cut may be lost from the file, though phones saw them: their numbers are not used again.
  const before = posts.at(-1)?.n;
  let last = before === undefined ? 0 : before + kept;
  const listeners = new Set<(post: Post) => void>();

  function add(content: Omit<Post, 'n'>, durably: boolean): void {
    last += 1;
    const post = { n: last, ...content };
    posts = [...posts.slice(posts.length >= kept ? 1 : 0), post];
    file?.add(post, durably);
    for (const listener of listeners) listener(post);
  }

  const answered = (delivery: string) => posts.findLast((post) => post.delivery === delivery);

  return {
    id,
    latest: () => last,
    answered,
    lastTo: (delivery) => posts.findLast((post) => post.answer.in === delivery),
    tell: async (answer) => {
      add({ said: null, delivery: null, answer }, true);
      return 'posted';
    },
    wasTold: async (numberedKey) => (posts.some(({ answer }) => answer.key === numberedKey) ? 'yes' : 'no'),
    heard: (delivery, answer) => {
      if (delivery.id !== undefined && answered(delivery.id) !== undefined) return;
      // What could not be recorded may come again under the same id, and then be answered otherwise.
      const settled = answer.code !== 'not-recorded';
      add({ said: delivery.text, delivery: settled ? (delivery.id ?? null) : null, answer }, false);
    },
    hasMovedOn: (n) => {
      const post = posts.find((each) => each.n === n);
      return post !== undefined && posts.some((later) => later.n > n && hasMovedOn(post.answer, later.answer));
    },
    newest: (count, person) => posts.filter((post) => isSeenBy(post, person)).slice(-count),
    after: (n, person) => {
      const oldest = posts[0]?.n ?? 1;
      if (n > last || (n < oldest - 1 && oldest > 1)) return 'gone';
      return posts.filter((post) => post.n > n && isSeenBy(post, person));
    },
    follow: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: () => file?.close(),
  };
}

/** A folder that cannot be written now must not keep the bells from ringing: then it lives in memory. */
function fileIn(folder: string, log: Log): ConversationFile | undefined {
  try {
    return openConversationFile(folder, kept, log);
  } catch (error) {
    log.error('page-file-not-opened', { error: String(error) });
    return undefined;
  }
}

/** What stands in the record and what rings is everybody's; a misread or a question is the speaker's own. */
export function isSeenBy({ answer }: Post, person: string): boolean {
  return answer.key !== null || answer.recorded || isFor(answer, person);
}

/** Meant for this person: their own line, a bell that they are to hear, or what another said that they must know of. */
export function isFor(answer: Answer, person: string): boolean {
  return answer.as === person || answer.to.includes(person) || answer.card.ping.includes(person);
}

/** Whether it sounds for this person: nobody's own line does. */
export function ringsFor(answer: Answer, person: string): boolean {
  return answer.as !== person && isFor(answer, person);
}
