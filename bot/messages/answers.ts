// Where an answer goes: what was recorded, once and for all to see, into the thread of its batch or session; what concerns
// only whoever typed it, to them alone; an objection where its tap is open to anyone. What many read is in the crew's
// language, what one reads is in theirs.

import type { StreamId } from '../../core/ids.ts';
import type { Card } from '../cards/card.ts';
import type { Answer } from '../talk/answer.ts';
import { hasOneMessage, keptUnder } from '../talk/message-subject.ts';
import { callThem, mentionFor } from './calls.ts';
import type { AnswerDeps, MessageDesk, Telling } from './desk.ts';
import { answeredWithFiles } from './hanging-files.ts';
import type { Look } from './look.ts';
import type { Posting } from './mail.ts';
import type { Said } from './messages.ts';
import type { Address, Where } from './platform.ts';
import { alone, tellPrivately } from './privately.ts';

interface SaidToAll {
  /** Of the message, to find it by. */
  readonly key: string;
  readonly showing?: string;
  /** Only these taps; all where nothing is said. */
  readonly actions?: (action: Card['actions'][number]) => boolean;
  readonly mention?: readonly string[];
}

export async function showAnswer(
  deps: AnswerDeps,
  desk: MessageDesk,
  answer: Answer,
  where: Where,
  id: string,
): Promise<void> {
  const crew = await desk.overview.voice(undefined);
  const own = answer.as === null ? crew : await desk.overview.voice(answer.as);
  const telling: Telling = { desk, answer, where, id, own, crew };
  switch (answer.kind) {
    case 'reply':
      if (!answer.recorded) return answeredWithFiles(deps, telling);
      return call(deps, telling, await recorded(deps, telling));
    case 'objection':
      return objected(deps, telling);
    case 'misread':
      return alone(deps, telling);
    case 'error':
      await alone(deps, telling);
      return call(deps, telling, undefined);
    case 'reminder':
    case 'digest':
      return;
  }
}

/** After the answer, for which nobody waits. */
const call = (deps: AnswerDeps, telling: Telling, said: Said | undefined) => callThem(deps, telling, said);

/** Where many read it; its taps stand until they are used, or until what it tells of has moved on. */
async function sayToAll(
  { log }: AnswerDeps,
  { desk, answer, crew }: Telling,
  to: Address,
  { key, showing = key, actions, mention = [] }: SaidToAll,
): Promise<Posting & { readonly said?: Said }> {
  const shown = answer.forAll ?? answer.card;
  const card = actions === undefined ? shown : { ...shown, actions: shown.actions.filter(actions) };
  const under = answer.as === null || answer.kind === 'objection' ? [] : [crew.words.chat.by(answer.as)];
  const look: Look = { card, language: crew.language, showing, under, mention };
  const subject = keptUnder(answer.about);
  const posted = await desk.messages.say(to, look, key, subject);
  if (posted.kind === 'posted') return { ...posted, said: { ...to, ts: posted.ts, subject, look } };
  log.error('answer-not-posted', { id: key, outcome: posted.kind });
  return posted;
}

async function recorded(deps: AnswerDeps, telling: Telling): Promise<Said | undefined> {
  const subject = telling.answer.about?.find(hasOneMessage);
  const mention = await mentionFor(telling);
  if (subject === undefined) return recordedAlone(deps, telling, mention);
  const place = await telling.desk.messages.messageOf(subject);
  if (place !== undefined) return recordedUnder(deps, telling, subject, place, mention);
  await alone(deps, telling);
  return undefined;
}

/**
 * Into the thread of its batch or session, with only those taps that the message above it has not. A message that was
 * just posted for it says it already, but calls nobody.
 */
async function recordedUnder(
  deps: AnswerDeps,
  telling: Telling,
  subject: StreamId,
  { post, fresh }: NonNullable<Awaited<ReturnType<MessageDesk['messages']['messageOf']>>>,
  mention: readonly string[],
): Promise<Said | undefined> {
  const { desk, answer, where, id, own } = telling;
  let said: Said | undefined;
  if (!fresh || mention.length > 0) {
    const { card } = await desk.overview.standing(subject);
    const there = new Set(card.actions.map(({ line }) => line));
    const to = { channel: post.channel, thread: post.ts };
    const posted = await sayToAll(deps, telling, to, { key: id, actions: ({ line }) => !there.has(line), mention });
    said = posted.said;
    // Nobody else reads it there: whoever typed must.
    if (posted.kind === 'rejected') {
      await alone(deps, telling);
      return undefined;
    }
  }
  const inThread = where.channel === post.channel && (where.thread === post.ts || where.via === 'button');
  if (inThread || where.via === 'home') return said;
  const card = { ...answer.card, title: own.words.chat.takenTo(answer.card.title), actions: [] };
  const elsewhere = where.channel === post.channel ? { ...card, facts: [], lines: [], hazards: [] } : card;
  await tellPrivately(deps, where, { card: elsewhere, language: own.language, showing: id }, id);
  return said;
}

/** A reading of the room, a part noted, a setting: said once where it was typed. */
async function recordedAlone(
  deps: AnswerDeps,
  telling: Telling,
  mention: readonly string[],
): Promise<Said | undefined> {
  const { answer, where, id } = telling;
  const outside = where.via === 'home' || isDirect(deps, where);
  const toAll = outside && answer.card.tone === 'stop' ? await toCrew(deps, telling, mention) : undefined;
  // The home tab shows it by itself, but for what somebody must read at once.
  if (where.via === 'home' && answer.card.tone !== 'stop') return toAll;
  const address = addressOf(deps, where);
  const posted = address === undefined ? undefined : await sayToAll(deps, telling, address, { key: id, mention });
  if (posted?.kind === 'posted' || posted?.kind === 'unknown') return posted.said ?? toAll;
  await alone(deps, telling);
  return toAll;
}

/** Trouble is everybody's, wherever it was said. */
async function toCrew(deps: AnswerDeps, telling: Telling, mention: readonly string[]): Promise<Said | undefined> {
  const channel = telling.desk.channel();
  if (channel === undefined) return undefined;
  const as = { key: `${telling.id}/crew`, showing: `${telling.id}.crew`, mention };
  return (await sayToAll(deps, telling, { channel, thread: undefined }, as)).said;
}

async function objected(deps: AnswerDeps, telling: Telling): Promise<void> {
  const { desk, answer, where, id } = telling;
  const subject = answer.about?.find(hasOneMessage);
  const place = subject === undefined ? undefined : await desk.messages.messageOf(subject);
  const address = place === undefined ? addressOf(deps, where) : { channel: place.post.channel, thread: place.post.ts };
  if (address === undefined) return alone(deps, telling);
  const mention = desk.isOurs(address.channel) ? [where.user] : [];
  const posted = await sayToAll(deps, telling, address, { key: id, mention });
  if (posted.kind !== 'posted') await alone(deps, telling);
  if (subject !== undefined && where.via === 'button') await desk.messages.showAgain(subject);
}

const isDirect = ({ mail }: AnswerDeps, { channel }: Where): boolean =>
  channel !== undefined && mail.platform.isDirect(channel);

/** `undefined`: there is no channel to say it in, only the person. */
function addressOf(deps: AnswerDeps, where: Where): Address | undefined {
  if (where.channel === undefined || isDirect(deps, where)) return undefined;
  return { channel: where.channel, thread: where.thread };
}
