// Whom a card calls is called: a mention in the message that is posted, which pushes, or a message to them alone, where
// they chose that, where there is no message that they could read, and in need in any case. Who was told is said only
// after that, and of whom; whoever was not is named, since somebody has to call them.

import type { PersonName } from '../../core/ids.ts';
import type { Log } from '../../core/ports.ts';
import { type Card, makeCard } from '../cards/card.ts';
import { calledBy } from '../cards/whom-to-call.ts';
import type { Words } from '../language/tongues/languages.ts';
import type { Answer } from '../talk/answer.ts';
import { keptUnder } from '../talk/message-subject.ts';
import { cardMessage } from './card-blocks.ts';
import type { Desk } from './crew-desk.ts';
import type { Outbox } from './outbox.ts';
import type { PostedEvent } from './thread-events.ts';

export interface Calls {
  /** Slack ids of whom its message is to mention. */
  readonly mentionFor: (desk: Desk, answer: Answer, team: string) => Promise<readonly string[]>;
  /** Calls who is left to be called, and says who was reached: under `said`, or by `privately` to whoever spoke. */
  readonly call: (desk: Desk, answer: Answer, how: HowToCall) => Promise<void>;
}

export interface HowToCall {
  readonly team: string;
  /** Of the delivery. */
  readonly id: string;
  /** The message that stands where others read it; `undefined`: there is none, or nobody knows. */
  readonly said: PostedEvent | undefined;
  readonly privately: (card: Card, words: Words) => Promise<void>;
}

interface Outcome {
  readonly name: PersonName;
  readonly by: 'mention' | 'message' | 'nothing';
}

export function createCalls({ outbox, log }: { readonly outbox: Outbox; readonly log: Log }): Calls {
  /** In need both ways; else a mention does, unless they chose a message of their own. */
  async function wayTo(desk: Desk, { card }: Answer, name: PersonName) {
    const isDirect = (await desk.overview.voice(name)).rings === 'direct';
    return { mention: card.alarm === true || !isDirect, message: card.alarm === true || isDirect };
  }

  async function mentionFor(desk: Desk, answer: Answer, team: string): Promise<readonly string[]> {
    const ids = calledBy(answer).map(async (name) =>
      (await wayTo(desk, answer, name)).mention ? desk.roster.slackIdOf(team, name) : undefined,
    );
    return (await Promise.all(ids)).flatMap((id) => id ?? []);
  }

  async function call(desk: Desk, answer: Answer, { team, id, said, privately }: HowToCall): Promise<void> {
    const outcomes = await Promise.all(
      calledBy(answer).map(async (name): Promise<Outcome> => {
        const user = desk.roster.slackIdOf(team, name);
        if (user === undefined || (await desk.roster.isGone(user))) return { name, by: 'nothing' };
        const way = await wayTo(desk, answer, name);
        if (said !== undefined && way.mention && !way.message) return { name, by: 'mention' };
        return { name, by: (await messaged(desk, answer, user, `${id}/call/${name}`)) ? 'message' : 'nothing' };
      }),
    );
    const named = (isIt: (by: Outcome['by']) => boolean) =>
      outcomes.flatMap(({ name, by }) => (isIt(by) ? [name] : [])).join(', ');
    const missed = named((by) => by === 'nothing');
    if (missed !== '') log.error('call-not-heard', { id, people: missed });
    // A mention says by itself whom it called.
    if (said !== undefined && outcomes.every(({ by }) => by === 'mention')) return;
    if (outcomes.length === 0) return;
    const linesIn = ({ chat }: Words): readonly string[] => {
      const told = named((by) => by !== 'nothing');
      return [...(told === '' ? [] : [chat.told(told)]), ...(missed === '' ? [] : [chat.notReached(missed)])];
    };
    const { words } = await desk.overview.voice(undefined);
    if (said !== undefined && (await desk.thread.addUnder(said, linesIn(words)))) return;
    const own = (await desk.overview.voice(answer.as ?? undefined)).words;
    const [title = '', ...lines] = linesIn(own);
    await privately(makeCard(title, missed === '' ? 'plain' : 'warn', { lines }), own);
  }

  /** The card as the crew reads it. What could not be recorded is for whoever said it to say again. */
  async function messaged(desk: Desk, answer: Answer, user: string, key: string): Promise<boolean> {
    const channel = await outbox.directTo(user);
    if (channel === undefined) return false;
    const { words } = await desk.overview.voice(undefined);
    const card = answer.forAll ?? answer.card;
    const shown = answer.kind === 'error' ? { ...card, actions: [] } : card;
    const under = answer.as === null ? [] : [words.chat.by(answer.as)];
    const message = cardMessage(shown, { words, showing: key, actFirst: true, under });
    const posted = await outbox.post({ channel, thread: undefined }, message, key);
    if (posted.kind !== 'posted') return false;
    desk.thread.keep({ channel, thread: undefined, ts: posted.ts, subject: keptUnder(answer.about), message });
    return true;
  }

  return { mentionFor, call };
}
