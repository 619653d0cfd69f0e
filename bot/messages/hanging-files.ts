// The answer to one person's question, with its files. They are for all to see only where the question was: in a thread.

import { crewStream } from '../../core/ids.ts';
import { type Card, fileNameOf, makeCard } from '../cards/card.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { Voice } from '../talk/overview.ts';
import type { AnswerDeps, Telling } from './desk.ts';
import type { Missing } from './files.ts';
import type { Address } from './platform.ts';
import { alone, tellPrivately } from './privately.ts';

export async function answeredWithFiles(deps: AnswerDeps, telling: Telling): Promise<void> {
  const { mail, files, log } = deps;
  const { desk, answer, where, id, own, crew } = telling;
  const { card } = answer;
  const inThread = where.thread === undefined ? undefined : where.channel;
  const isHere = inThread !== undefined || (where.channel !== undefined && mail.platform.isDirect(where.channel));
  const shown = withPaperLine(card, own.words, isHere);
  await alone(deps, telling, { card: shown, language: own.language, showing: id });
  if (card.image === null && card.paper === undefined) return;
  const reached = inThread === undefined ? await mail.reach(where.user) : { channel: inThread };
  const to = 'channel' in reached ? { channel: reached.channel, thread: where.thread } : undefined;
  const isAlone = to === undefined || mail.platform.isDirect(to.channel);
  const reader = isAlone ? own : crew;
  const told = (missing: Missing) => toldMissing(deps, telling, card, missing, to, reader);
  if (to !== undefined) return files.send(desk, card, to, told);
  log.error('nowhere-to-answer', { id });
  if (card.paper !== undefined) await told('missing');
}

/** Where the paper would have been; where nothing can be posted, to who asked. */
async function toldMissing(
  deps: AnswerDeps,
  { desk, where, id }: Telling,
  of: Card,
  missing: Missing,
  to: Address | undefined,
  { words, language }: Voice,
): Promise<void> {
  const showing = `${id}.file`;
  const look = { card: missingCard(of, words, missing), language, showing };
  if (to === undefined) {
    await tellPrivately(deps, where, look, showing);
    return;
  }
  const mention = where.thread === undefined ? [] : [where.user];
  const posted = await desk.messages.say(to, { ...look, mention }, `${id}/file`, crewStream);
  if (posted.kind !== 'posted') deps.log.error('missing-file-not-told', { id, outcome: posted.kind });
}

/** `isHere`: the file comes to the place of the card; otherwise as a direct message. */
function withPaperLine(card: Card, { chat }: Words, isHere: boolean): Card {
  if (card.paper === undefined) return card;
  const file = fileNameOf(card.paper);
  return { ...card, lines: [isHere ? chat.paperHere(file) : chat.paperAlone(file), ...card.lines] };
}

/** Of a card with a paper: a tap asks for it again. */
function missingCard({ paper = '', paperAgain }: Card, { chat }: Words, missing: Missing): Card {
  const file = fileNameOf(paper);
  const isUnsure = missing === 'unsure';
  return makeCard(isUnsure ? chat.paperUnsure(file) : chat.paperMissing(file), 'warn', {
    lines: [isUnsure ? chat.paperUnsureLine : chat.paperMissingLine],
    actions: paperAgain === undefined ? [] : [paperAgain],
  });
}
