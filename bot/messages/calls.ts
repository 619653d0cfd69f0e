// Whom a card calls is called: a mention in the message that is posted, which pushes, or a message to them alone, where
// they chose that, where there is no message that they could read, and in need in any case. Who was told is said only
// after that, and of whom; whoever was not is named, since somebody has to call them.

import { isFailed } from '../../core/failed.ts';
import type { PersonName } from '../../core/ids.ts';
import { makeCard } from '../cards/card.ts';
import { calledBy } from '../cards/whom-to-call.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { Answer } from '../talk/answer.ts';
import { keptUnder } from '../talk/message-subject.ts';
import type { AnswerDeps, MessageDesk, Telling } from './desk.ts';
import type { Look } from './look.ts';
import type { Said } from './messages.ts';
import { tellPrivately } from './privately.ts';

interface Outcome {
  readonly name: PersonName;
  readonly by: 'mention' | 'message' | 'nothing';
}

/** In need both ways; else a mention does, unless they chose a message of their own. */
async function wayTo(desk: MessageDesk, { card }: Answer, name: PersonName) {
  const isDirect = (await desk.overview.voice(name)).rings === 'direct';
  return { mention: card.alarm === true || !isDirect, message: card.alarm === true || isDirect };
}

/** The platform's names of whom its message is to mention. */
export async function mentionFor({ desk, answer, where }: Telling): Promise<readonly string[]> {
  const ids = calledBy(answer).map(async (name) =>
    (await wayTo(desk, answer, name)).mention ? desk.roster.idOf(where.team, name) : undefined,
  );
  return (await Promise.all(ids)).flatMap((id) => id ?? []);
}

/**
 * Calls who is left to be called, and says who was reached: under `said`, which others read, or where there is no such
 * message to whoever spoke.
 */
export async function callThem(deps: AnswerDeps, telling: Telling, said: Said | undefined): Promise<void> {
  const { desk, id, own, crew } = telling;
  const called = calledBy(telling.answer);
  if (called.length === 0) return;
  const outcomes = await Promise.all(called.map((name) => callOne(deps, telling, name, said)));
  const missed = named(outcomes, (by) => by === 'nothing');
  const told = named(outcomes, (by) => by !== 'nothing');
  if (missed.length > 0) deps.log.error('call-not-heard', { id, people: missed.join(', ') });
  // A mention says by itself whom it called.
  if (said !== undefined && outcomes.every(({ by }) => by === 'mention')) return;
  const linesIn = ({ chat }: Words): readonly string[] => [
    ...(told.length === 0 ? [] : [chat.told(told)]),
    ...(missed.length === 0 ? [] : [chat.notReached(missed)]),
  ];
  if (said !== undefined && (await desk.messages.addUnder(said, linesIn(crew.words)))) return;
  const [title = '', ...lines] = linesIn(own.words);
  const card = makeCard(title, missed.length === 0 ? 'plain' : 'warn', { lines });
  const showing = `${id}.called`;
  await tellPrivately(deps, telling.where, { card, language: own.language, showing }, showing);
}

const named = (outcomes: readonly Outcome[], isIt: (by: Outcome['by']) => boolean): readonly PersonName[] =>
  outcomes.flatMap(({ name, by }) => (isIt(by) ? [name] : []));

async function callOne(deps: AnswerDeps, telling: Telling, name: PersonName, said: Said | undefined): Promise<Outcome> {
  const { desk, answer, where, id } = telling;
  const user = desk.roster.idOf(where.team, name);
  if (user === undefined || (await desk.roster.isGone(user))) return { name, by: 'nothing' };
  const way = await wayTo(desk, answer, name);
  if (said !== undefined && way.mention && !way.message) return { name, by: 'mention' };
  return { name, by: (await messaged(deps, telling, user, `${id}/call/${name}`)) ? 'message' : 'nothing' };
}

/** The card as the crew reads it. What could not be recorded is for whoever said it to say again. */
async function messaged({ mail }: AnswerDeps, { desk, answer, crew }: Telling, user: string, key: string) {
  const reached = await mail.reach(user);
  if (isFailed(reached)) return false;
  const shown = answer.forAll ?? answer.card;
  const card = answer.kind === 'error' ? { ...shown, actions: [] } : shown;
  const under = answer.as === null ? [] : [crew.words.chat.by(answer.as)];
  const look: Look = { card, language: crew.language, showing: key, actFirst: true, under };
  const to = { channel: reached.channel, thread: undefined };
  return (await desk.messages.say(to, look, key, keptUnder(answer.about))).kind === 'posted';
}
