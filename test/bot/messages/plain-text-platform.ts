// A chat platform of plain text in an array: what a message says, who is mentioned by it, how often it was changed. All
// that a platform has to do, and nothing else.

import { cardText } from '../../../bot/cards/card.ts';
import type { Look } from '../../../bot/messages/look.ts';
import type { Platform, Sent } from '../../../bot/messages/platform.ts';

export interface PlainMessage {
  readonly channel: string;
  readonly thread: string | undefined;
  readonly ts: string;
  readonly key: string;
  readonly mention: readonly string[];
  text: string;
  changes: number;
}

export interface PlainText {
  readonly platform: Platform;
  readonly messages: PlainMessage[];
  readonly whispers: { readonly to: string; readonly text: string }[];
}

const done = <T>(result: T): Sent<T> => ({ kind: 'done', result });
const shown = ({ card, mention = [], under = [] }: Look): string =>
  [cardText({ ...card, title: [card.title, ...mention.map((id) => `@${id}`)].join(' ') }), ...under].join('\n');

export function plainText(): PlainText {
  const messages: PlainMessage[] = [];
  const whispers: { to: string; text: string }[] = [];
  let made = 0;
  const platform: Platform = {
    post: async (to, look, key) => {
      made += 1;
      const ts = String(made).padStart(6, '0');
      messages.push({ ...to, ts, key, mention: look.mention ?? [], text: shown(look), changes: 0 });
      return done(ts);
    },
    change: async (channel, ts, look) => {
      const message = messages.find((each) => each.channel === channel && each.ts === ts);
      if (message === undefined) return { kind: 'refused', error: 'gone' };
      Object.assign(message, { text: shown(look), changes: message.changes + 1 });
      return done(undefined);
    },
    find: async ({ channel, thread }, key) => {
      const found = messages.find((each) => each.channel === channel && each.thread === thread && each.key === key);
      return found === undefined ? { kind: 'none' } : { kind: 'found', ts: found.ts };
    },
    whisper: async (_, user, look) => done(whispers.push({ to: user, text: shown(look) })),
    reply: async () => false,
    open: async (user) => done(`direct-${user}`),
    isDirect: (channel) => channel.startsWith('direct-'),
    limitOf: (doing) => ({ name: doing, spacingMs: 0 }),
    isClosed: (_, error) => error === 'gone',
    places: ({ card }) =>
      card.actions.map(({ label, line }, button) => ({ row: '', at: { row: 0, button }, label, line })),
    keepsChoice: () => false,
  };
  return { platform, messages, whispers };
}
