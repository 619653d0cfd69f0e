// Where an answer goes: what was recorded, once and for all to see, into the thread of its batch; what concerns only whoever
// typed it, to them alone; an objection where its tap is open to anyone.

import type { StreamId } from '../../core/ids.ts';
import type { Log } from '../../core/ports.ts';
import type { Answer } from '../answer.ts';
import type { Card } from '../cards/card.ts';
import type { Words } from '../language/words/languages.ts';
import { type CardMessage, cardMessage } from './card-blocks.ts';
import type { Desk } from './desk.ts';
import type { FileUploads, Missing } from './file-uploads.ts';
import type { Where } from './inbound.ts';
import type { Address, Outbox } from './outbox.ts';
import { missingCard, withPaperLine } from './paper-cards.ts';
import type { Respond } from './respond.ts';

export interface ShowAnswer {
  readonly show: (desk: Desk, answer: Answer, where: Where, id: string) => Promise<void>;
  /** To one person alone, where they are. */
  readonly privately: (where: Where, message: CardMessage, id: string) => Promise<void>;
}

export interface ShowAnswerNeeds {
  readonly outbox: Outbox;
  readonly files: FileUploads;
  readonly respond: Respond;
  readonly log: Log;
}

export function createShowAnswer({ outbox, files, respond, log }: ShowAnswerNeeds): ShowAnswer {
  async function show(desk: Desk, answer: Answer, where: Where, id: string): Promise<void> {
    const { words } = await desk.overview.voice(answer.as ?? undefined);
    const [subject] = answer.about ?? [];
    switch (answer.kind) {
      case 'reply':
        if (!answer.recorded) return answeredAlone(desk, answer, where, id, words);
        return subject === undefined
          ? recordedAlone(desk, answer, where, id, words)
          : recordedOf(desk, subject, answer, where, id, words);
      case 'objection':
        return objected(desk, subject, answer, where, id, words);
      case 'misread':
        return privately(where, rendered(answer, words, id), id);
      case 'error':
        await privately(where, rendered(answer, words, id), id);
        return toOthers(desk, answer, where, id, words);
      case 'reminder':
      case 'digest':
        return;
      default: {
        const never: never = answer.kind;
        return never;
      }
    }
  }

  const rendered = (answer: Answer, words: Words, showing: string, under: readonly string[] = []): CardMessage =>
    cardMessage(answer.card, { words, showing, under });

  /** A question of one person. Its files are for all to see only where the question was: in a thread. */
  async function answeredAlone(desk: Desk, answer: Answer, where: Where, id: string, words: Words): Promise<void> {
    const { card } = answer;
    const inThread = where.thread === undefined ? undefined : where.channel;
    const isHere = inThread !== undefined || where.channel?.startsWith('D') === true;
    await privately(where, cardMessage(withPaperLine(card, words, isHere), { words, showing: id }), id);
    if (card.image === null && card.paper === undefined) return;
    const channel = inThread ?? (await outbox.directTo(where.user));
    const to = channel === undefined ? undefined : { channel, thread: where.thread };
    const told = (missing: Missing) => toldMissing(missingCard(card, words, missing), to, where, id, words);
    if (to !== undefined) return files.send(desk, card, to, told);
    log.error('nowhere-to-answer', { id });
    if (card.paper !== undefined) await told('missing');
  }

  /** Where the paper would have been; where nothing can be posted, to who asked. */
  async function toldMissing(card: Card, to: Address | undefined, where: Where, id: string, words: Words) {
    const showing = `${id}.file`;
    if (to === undefined) return privately(where, cardMessage(card, { words, showing }), showing);
    const mention = where.thread === undefined ? [] : [where.user];
    const posted = await outbox.post(to, cardMessage(card, { words, showing, mention }), `${id}/file`);
    if (posted.kind !== 'posted') log.error('missing-file-not-told', { id, outcome: posted.kind });
  }

  /** Into the thread of its batch, with only those taps that the batch's own message has not. */
  async function recordedOf(desk: Desk, subject: StreamId, answer: Answer, where: Where, id: string, words: Words) {
    const place = await desk.batches.messageOf(subject);
    if (place === undefined) return privately(where, rendered(answer, words, id), id);
    const { post, fresh } = place;
    if (!fresh) {
      const { card } = await desk.overview.standing(subject);
      const there = new Set(card.actions.map(({ line }) => line));
      const actions = answer.card.actions.filter(({ line }) => !there.has(line));
      const under = answer.as === null ? [] : [words.chat.by(answer.as)];
      const message = cardMessage({ ...answer.card, actions }, { words, showing: id, under });
      await desk.thread.say({ channel: post.channel, thread: post.ts }, message, id, subject);
    }
    const inThread = where.channel === post.channel && (where.thread === post.ts || where.via === 'button');
    if (inThread || where.via === 'home') return;
    const card = { ...answer.card, title: words.chat.takenTo(answer.card.title), actions: [] };
    const elsewhere = where.channel === post.channel ? { ...card, facts: [], lines: [], hazards: [] } : card;
    await privately(where, cardMessage(elsewhere, { words, showing: id }), id);
  }

  /** A reading of the room, a part noted, a setting: said once where it was typed. */
  async function recordedAlone(desk: Desk, answer: Answer, where: Where, id: string, words: Words): Promise<void> {
    const outside = where.via === 'home' || where.channel?.startsWith('D') === true;
    if (outside && answer.card.tone === 'stop') await toCrew(desk, answer, id, words);
    // The home tab shows it by itself, but for what somebody must read at once.
    if (where.via === 'home' && answer.card.tone !== 'stop') return;
    const under = answer.as === null ? [] : [words.chat.by(answer.as)];
    const message = rendered(answer, words, id, under);
    const address = addressOf(where);
    if (address === undefined) return privately(where, message, id);
    const posted = await outbox.post(address, message, id);
    if (posted.kind !== 'posted') log.error('answer-not-posted', { id, outcome: posted.kind });
  }

  /** Trouble is everybody's, wherever it was said. */
  async function toCrew(desk: Desk, answer: Answer, id: string, words: Words): Promise<void> {
    const channel = desk.channel();
    if (channel === undefined) return;
    const message = rendered(answer, words, `${id}.crew`, answer.as === null ? [] : [words.chat.by(answer.as)]);
    await outbox.post({ channel, thread: undefined }, message, `${id}/crew`);
  }

  async function objected(
    desk: Desk,
    subject: StreamId | undefined,
    answer: Answer,
    where: Where,
    id: string,
    words: Words,
  ) {
    const place = subject === undefined ? undefined : await desk.batches.messageOf(subject);
    const address = place === undefined ? addressOf(where) : { channel: place.post.channel, thread: place.post.ts };
    if (address === undefined) return privately(where, rendered(answer, words, id), id);
    const speaker =
      desk.slackCrew.channels.includes(address.channel) || address.channel === desk.channel() ? [where.user] : [];
    const message = cardMessage(answer.card, { words, showing: id, mention: speaker });
    const posted = await outbox.post(address, message, id);
    if (posted.kind === 'posted' && subject !== undefined) {
      desk.thread.keep({ ...address, ts: posted.ts, subject, message });
    }
    if (posted.kind !== 'posted') await privately(where, message, id);
  }

  /** `undefined`: there is no channel to say it in, only the person. */
  function addressOf(where: Where): Address | undefined {
    if (where.channel === undefined || where.channel.startsWith('D')) return undefined;
    return { channel: where.channel, thread: where.thread };
  }

  async function privately(where: Where, message: CardMessage, id: string): Promise<void> {
    if (where.via === 'command' && where.responseUrl !== undefined) {
      if (await respond(where.responseUrl, { response_type: 'ephemeral', ...message })) return;
    }
    const direct = where.channel?.startsWith('D') === true;
    if (where.channel !== undefined && !direct) {
      if (await outbox.whisper({ channel: where.channel, thread: where.thread }, where.user, message)) return;
    }
    const channel = direct ? where.channel : await outbox.directTo(where.user);
    if (channel === undefined) return log.error('nowhere-to-answer', { id });
    const posted = await outbox.post({ channel, thread: direct ? where.thread : undefined }, message, id);
    if (posted.kind !== 'posted') log.error('answer-not-posted', { id, outcome: posted.kind });
  }

  /** The lead is told what could not be recorded, wherever it was typed. */
  async function toOthers(desk: Desk, answer: Answer, where: Where, id: string, words: Words): Promise<void> {
    for (const name of answer.to) {
      const user = name === answer.as ? undefined : desk.roster.slackIdOf(where.team, name);
      const channel = user === undefined ? undefined : await outbox.directTo(user);
      if (channel === undefined) continue;
      const card = { ...answer.card, actions: [] };
      await outbox.post({ channel, thread: undefined }, cardMessage(card, { words, showing: id }), `${id}/${name}`);
    }
  }

  return { show, privately };
}
