// One life of a program over a platform that limits, breaks, loses answers and deletes: it may end at any call, before it
// was made or after, and nothing of it goes on then.

import { makeCard } from '../../../bot/cards/card.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { MessageDesk } from '../../../bot/messages/desk.ts';
import type { Look } from '../../../bot/messages/look.ts';
import { createMail } from '../../../bot/messages/mail.ts';
import { createMessages } from '../../../bot/messages/messages.ts';
import type { Platform, Sent } from '../../../bot/messages/platform.ts';
import { createRings } from '../../../bot/messages/rings.ts';
import { createSender } from '../../../bot/messages/sender.ts';
import type { StreamId } from '../../../core/ids.ts';
import type { Postbox } from '../../../core/ports.ts';
import type { PlainText } from './plain-text-platform.ts';

/** `lost`: done, and nobody heard of it. `broken`: not done, and nobody knows. `deleted`: by somebody, just before. */
export type Fault = 'none' | 'limited' | 'unsent' | 'lost' | 'broken' | 'deleted' | 'ends-before' | 'ends-after';

/** What the record says of a batch. */
export interface Truth {
  acts: number;
  live: boolean;
}

export interface World {
  readonly plain: PlainText;
  readonly postbox: Postbox;
  readonly truth: Map<StreamId, Truth>;
  /** Of the next calls, in their order. */
  readonly faults: Fault[];
  /** Searches that said nothing: what was looked for may be there twice. */
  blind: number;
  now: number;
}

export interface Life {
  readonly desk: MessageDesk;
  readonly rings: ReturnType<typeof createRings>;
  readonly resumed: (id: string) => void;
  readonly ended: Promise<'ended'>;
}

const never = new Promise<never>(() => undefined);
const tick = () => new Promise((resolve) => setImmediate(resolve));

export const standingOf = ({ truth }: World, subject: StreamId) => {
  const { acts = 0, live = false } = truth.get(subject) ?? {};
  const actions = live ? [{ id: 'act', label: 'Act', line: `act ${subject}` }] : [];
  return { card: makeCard(`${subject} after ${acts}`, 'plain', { actions }), live, parts: [], language: 'en' };
};

const voice = {
  words: shipped.wordsIn('en'),
  language: 'en',
  units: 'metric',
  role: 'crew',
  rings: 'thread',
  clock: '',
} as const;

export function beginLife(world: World): Life {
  let isOver = false;
  let end: (how: 'ended') => void = () => undefined;
  const ended = new Promise<'ended'>((resolve) => {
    end = resolve;
  });
  const pace = {
    now: () => world.now,
    wait: async (ms: number) => {
      if (isOver) return never;
      world.now += ms;
      await tick();
    },
  };
  async function faulty<T>(call: () => Promise<Sent<T>>, onDeleted: () => void): Promise<Sent<T>> {
    await tick();
    if (isOver) return never;
    const fault = world.faults.shift() ?? 'none';
    const finish = () => {
      isOver = true;
      end('ended');
      return never;
    };
    switch (fault) {
      case 'limited':
        return { kind: 'limited', retryAfterMs: 3_000 };
      case 'unsent':
        return { kind: 'unsent', error: 'no line' };
      case 'broken':
        return { kind: 'unknown', error: 'no answer' };
      case 'lost':
        await call();
        return { kind: 'unknown', error: 'no answer' };
      case 'ends-before':
        return finish();
      case 'ends-after':
        await call();
        return finish();
      case 'deleted':
        onDeleted();
        return call();
      case 'none':
        return call();
    }
  }
  const { platform: sound, messages: there } = world.plain;
  const noneDeleted = () => undefined;
  const remove = (ts: string) => {
    const at = there.findIndex((each) => each.ts === ts && each.thread === undefined);
    if (at >= 0) there.splice(at, 1);
  };
  const platform: Platform = {
    ...sound,
    post: (to, look, key) => faulty(() => sound.post(to, look, key), noneDeleted),
    change: (channel, ts, look) =>
      faulty(
        () => sound.change(channel, ts, look),
        () => remove(ts),
      ),
    find: async (to, key, since) => {
      const asked = await faulty(async () => ({ kind: 'done', result: await sound.find(to, key, since) }), noneDeleted);
      if (asked.kind === 'done') return asked.result;
      world.blind += 1;
      return { kind: 'unknown' };
    },
  };
  const now = () => world.now;
  const log = { info: () => undefined, error: () => undefined };
  const mail = createMail({ platform, sender: createSender(pace), now });
  const overview = {
    standing: async (subject: StreamId) => standingOf(world, subject),
    liveSubjects: async () => [...world.truth].flatMap(([subject, { live }]) => (live ? [subject] : [])),
    voice: async () => voice,
  };
  const shared = { crew: 'crew', overview, mail, postbox: world.postbox, log, pace, now };
  const to = { team: () => 'T', channel: () => 'bay' };
  const messages = createMessages({ ...shared, ...to });
  const roster = { idOf: (_: string, name: string) => name, isGone: async () => false };
  // Nothing else of a desk is asked for here.
  const desk = { ...shared, ...to, roster, messages, isOurs: () => true } as unknown as MessageDesk;
  const rings = createRings({ ...shared, ...to, desk, files: { send: () => undefined } });
  return { desk, rings, ended, resumed: (id) => mail.resumed(id, 0) };
}

export const entry = (title: string): Look => ({
  card: makeCard(title, 'plain', { actions: [{ id: 'tap', label: 'Tap', line: 'tap' }] }),
  language: 'en',
  showing: title,
});
