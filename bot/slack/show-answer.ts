// Where an answer goes: what was recorded, once and for all to see, into the thread of its batch or session; what concerns
// only whoever typed it, to them alone; an objection where its tap is open to anyone. What many read is in the crew's
// language, what one reads is in theirs.

import { crewStream, type StreamId } from '../../core/ids.ts';
import type { Log } from '../../core/ports.ts';
import { type Card, makeCard } from '../cards/card.ts';
import type { Words } from '../language/tongues/languages.ts';
import type { Answer } from '../talk/answer.ts';
import { hasOneMessage, keptUnder } from '../talk/message-subject.ts';
import type { Calls } from './calls.ts';
import { type CardMessage, cardMessage } from './card-blocks.ts';
import type { Desk } from './crew-desk.ts';
import type { FileUploads, Missing } from './file-uploads.ts';
import type { Where } from './inbound.ts';
import type { Address, Outbox, Posting } from './outbox.ts';
import { missingCard, withPaperLine } from './paper-cards.ts';
import type { Respond } from './respond.ts';
import type { PostedEvent } from './thread-events.ts';

export interface ShowAnswer {
  readonly show: (desk: Desk, answer: Answer, where: Where, id: string) => Promise<void>;
  /** Of something that went otherwise: to one person alone. */
  readonly warn: (where: Where, id: string, words: Words, title: string, lines: readonly string[]) => Promise<void>;
  /** To one person alone, where they are. */
  readonly privately: (where: Where, message: CardMessage, id: string) => Promise<void>;
}

export interface ShowAnswerNeeds {
  readonly outbox: Outbox;
  readonly calls: Calls;
  readonly files: FileUploads;
  readonly respond: Respond;
  readonly log: Log;
}

interface SaidToAll {
  /** Of the message, to find it by. */
  readonly key: string;
  readonly showing?: string;
  /** Only these taps; all where nothing is said. */
  readonly actions?: (action: Card['actions'][number]) => boolean;
  readonly mention?: readonly string[];
}

export function createShowAnswer({ outbox, calls, files, respond, log }: ShowAnswerNeeds): ShowAnswer {
  async function show(desk: Desk, answer: Answer, where: Where, id: string): Promise<void> {
    const { words } = await desk.overview.voice(answer.as ?? undefined);
    const subject = answer.about?.find(hasOneMessage);
    switch (answer.kind) {
      case 'reply':
        if (!answer.recorded) return answeredAlone(desk, answer, where, id, words);
        return called(
          desk,
          answer,
          where,
          id,
          subject === undefined
            ? await recordedAlone(desk, answer, where, id, words)
            : await recordedOf(desk, subject, answer, where, id, words),
        );
      case 'objection':
        return objected(desk, subject, answer, where, id, words);
      case 'misread':
        return alone(desk, answer, where, rendered(answer, words, id), id);
      case 'error':
        await alone(desk, answer, where, rendered(answer, words, id), id);
        return called(desk, answer, where, id, undefined);
      case 'reminder':
      case 'digest':
        return;
      default: {
        const never: never = answer.kind;
        return never;
      }
    }
  }

  /** After the answer, for which nobody waits. */
  const called = (desk: Desk, answer: Answer, where: Where, id: string, said: PostedEvent | undefined) =>
    calls.call(desk, answer, {
      ...{ team: where.team, id, said },
      privately: (card, words) =>
        privately(where, cardMessage(card, { words, showing: `${id}.called` }), `${id}.called`),
    });

  const rendered = (answer: Answer, words: Words, showing: string): CardMessage =>
    cardMessage(answer.card, { words, showing });

  const crewWords = async (desk: Desk): Promise<Words> => (await desk.overview.voice(undefined)).words;

  /** Where many read it; its taps stand until they are used, or until what it tells of has moved on. */
  async function sayToAll(
    desk: Desk,
    answer: Answer,
    to: Address,
    { key, showing = key, actions, mention = [] }: SaidToAll,
  ): Promise<Posting & { readonly said?: PostedEvent }> {
    const words = await crewWords(desk);
    const card = answer.forAll ?? answer.card;
    const under = answer.as === null || answer.kind === 'objection' ? [] : [words.chat.by(answer.as)];
    const shown = actions === undefined ? card : { ...card, actions: card.actions.filter(actions) };
    const message = cardMessage(shown, { words, showing, under, mention });
    const subject = keptUnder(answer.about);
    const posted = await desk.thread.say(to, message, key, subject);
    if (posted.kind === 'posted') return { ...posted, said: { ...to, ts: posted.ts, subject, message } };
    log.error('answer-not-posted', { id: key, outcome: posted.kind });
    return posted;
  }

  /** To whoever said it. Where that is a message of its own, its taps give way too. */
  function alone(desk: Desk, answer: Answer, where: Where, message: CardMessage, id: string): Promise<void> {
    const keep = (to: Address, ts: string) =>
      desk.thread.keep({ ...to, ts, subject: keptUnder(answer.about), message });
    return privatelyKept(where, message, id, keep);
  }

  /** A question of one person. Its files are for all to see only where the question was: in a thread. */
  async function answeredAlone(desk: Desk, answer: Answer, where: Where, id: string, words: Words): Promise<void> {
    const { card } = answer;
    const inThread = where.thread === undefined ? undefined : where.channel;
    const isHere = inThread !== undefined || where.channel?.startsWith('D') === true;
    await alone(desk, answer, where, cardMessage(withPaperLine(card, words, isHere), { words, showing: id }), id);
    if (card.image === null && card.paper === undefined) return;
    const channel = inThread ?? (await outbox.directTo(where.user));
    const to = channel === undefined ? undefined : { channel, thread: where.thread };
    const isAlone = to === undefined || to.channel.startsWith('D');
    const theirs = isAlone ? words : await crewWords(desk);
    const told = (missing: Missing) => toldMissing(desk, missingCard(card, theirs, missing), to, where, id, theirs);
    if (to !== undefined) return files.send(desk, card, to, told);
    log.error('nowhere-to-answer', { id });
    if (card.paper !== undefined) await told('missing');
  }

  /** Where the paper would have been; where nothing can be posted, to who asked. */
  async function toldMissing(
    desk: Desk,
    card: Card,
    to: Address | undefined,
    where: Where,
    id: string,
    words: Words,
  ): Promise<void> {
    const showing = `${id}.file`;
    if (to === undefined) return privately(where, cardMessage(card, { words, showing }), showing);
    const mention = where.thread === undefined ? [] : [where.user];
    const message = cardMessage(card, { words, showing, mention });
    const posted = await desk.thread.say(to, message, `${id}/file`, crewStream);
    if (posted.kind !== 'posted') log.error('missing-file-not-told', { id, outcome: posted.kind });
  }

  /**
   * Into the thread of its batch or session, with only those taps that the message above it has not. A message that was
   * just posted for it says it already, but calls nobody.
   */
  async function recordedOf(
    desk: Desk,
    subject: StreamId,
    answer: Answer,
    where: Where,
    id: string,
    words: Words,
  ): Promise<PostedEvent | undefined> {
    const place = await desk.standing.messageOf(subject);
    const mention = await calls.mentionFor(desk, answer, where.team);
    if (place === undefined) {
      await alone(desk, answer, where, rendered(answer, words, id), id);
      return undefined;
    }
    let said: PostedEvent | undefined;
    const { post, fresh } = place;
    if (!fresh || mention.length > 0) {
      const { card } = await desk.overview.standing(subject);
      const there = new Set(card.actions.map(({ line }) => line));
      const to = { channel: post.channel, thread: post.ts };
      const posted = await sayToAll(desk, answer, to, { key: id, actions: ({ line }) => !there.has(line), mention });
      said = posted.said;
      // Nobody else reads it there: whoever typed must.
      if (posted.kind === 'rejected') {
        await alone(desk, answer, where, rendered(answer, words, id), id);
        return undefined;
      }
    }
    const inThread = where.channel === post.channel && (where.thread === post.ts || where.via === 'button');
    if (inThread || where.via === 'home') return said;
    const card = { ...answer.card, title: words.chat.takenTo(answer.card.title), actions: [] };
    const elsewhere = where.channel === post.channel ? { ...card, facts: [], lines: [], hazards: [] } : card;
    await privately(where, cardMessage(elsewhere, { words, showing: id }), id);
    return said;
  }

  /** A reading of the room, a part noted, a setting: said once where it was typed. */
  async function recordedAlone(
    desk: Desk,
    answer: Answer,
    where: Where,
    id: string,
    words: Words,
  ): Promise<PostedEvent | undefined> {
    const outside = where.via === 'home' || where.channel?.startsWith('D') === true;
    const mention = await calls.mentionFor(desk, answer, where.team);
    const toAll = outside && answer.card.tone === 'stop' ? await toCrew(desk, answer, id, mention) : undefined;
    // The home tab shows it by itself, but for what somebody must read at once.
    if (where.via === 'home' && answer.card.tone !== 'stop') return toAll;
    const address = addressOf(where);
    const posted = address === undefined ? undefined : await sayToAll(desk, answer, address, { key: id, mention });
    if (posted?.kind === 'posted' || posted?.kind === 'unknown') return posted.said ?? toAll;
    await alone(desk, answer, where, rendered(answer, words, id), id);
    return toAll;
  }

  /** Trouble is everybody's, wherever it was said. */
  async function toCrew(
    desk: Desk,
    answer: Answer,
    id: string,
    mention: readonly string[],
  ): Promise<PostedEvent | undefined> {
    const channel = desk.channel();
    if (channel === undefined) return undefined;
    const as = { key: `${id}/crew`, showing: `${id}.crew`, mention };
    return (await sayToAll(desk, answer, { channel, thread: undefined }, as)).said;
  }

  async function objected(
    desk: Desk,
    subject: StreamId | undefined,
    answer: Answer,
    where: Where,
    id: string,
    words: Words,
  ) {
    const place = subject === undefined ? undefined : await desk.standing.messageOf(subject);
    const address = place === undefined ? addressOf(where) : { channel: place.post.channel, thread: place.post.ts };
    if (address === undefined) return alone(desk, answer, where, rendered(answer, words, id), id);
    const isCrews = desk.slackCrew.channels.includes(address.channel) || address.channel === desk.channel();
    const posted = await sayToAll(desk, answer, address, { key: id, mention: isCrews ? [where.user] : [] });
    if (posted.kind !== 'posted') await alone(desk, answer, where, rendered(answer, words, id), id);
    if (subject !== undefined && where.via === 'button') await desk.standing.showAgain(subject);
  }

  /** `undefined`: there is no channel to say it in, only the person. */
  function addressOf(where: Where): Address | undefined {
    if (where.channel === undefined || where.channel.startsWith('D')) return undefined;
    return { channel: where.channel, thread: where.thread };
  }

  const privately = (where: Where, message: CardMessage, id: string): Promise<void> =>
    privatelyKept(where, message, id, () => undefined);

  async function privatelyKept(
    where: Where,
    message: CardMessage,
    id: string,
    keep: (to: Address, ts: string) => void,
  ): Promise<void> {
    if (where.via === 'command' && where.responseUrl !== undefined) {
      if (await respond(where.responseUrl, { response_type: 'ephemeral', ...message })) return;
    }
    const direct = where.channel?.startsWith('D') === true;
    if (where.channel !== undefined && !direct) {
      if (await outbox.whisper({ channel: where.channel, thread: where.thread }, where.user, message)) return;
    }
    const channel = direct ? where.channel : await outbox.directTo(where.user);
    if (channel === undefined) return log.error('nowhere-to-answer', { id });
    const to = { channel, thread: direct ? where.thread : undefined };
    const posted = await outbox.post(to, message, id);
    if (posted.kind === 'posted') keep(to, posted.ts);
    else log.error('answer-not-posted', { id, outcome: posted.kind });
  }

  async function warn(where: Where, id: string, words: Words, title: string, lines: readonly string[]): Promise<void> {
    const showing = `${id}:told`;
    await privately(where, cardMessage(makeCard(title, 'warn', { lines }), { words, showing }), showing);
  }

  return { show, warn, privately };
}
