// To one person alone, where they are: by the address that came with what they said, whispered in the channel, or written
// to them directly.

import { isFailed } from '../../core/failed.ts';
import type { Log } from '../../core/ports.ts';
import { makeCard } from '../cards/card.ts';
import { keptUnder } from '../talk/message-subject.ts';
import type { Voice } from '../talk/overview.ts';
import type { Telling } from './desk.ts';
import type { Look } from './look.ts';
import type { Mail } from './mail.ts';
import type { Said } from './messages.ts';
import type { Where } from './platform.ts';

export interface Private {
  readonly mail: Mail;
  readonly log: Log;
}

/** Where it is, where that is a message of its own. */
export async function tellPrivately(
  { mail, log }: Private,
  where: Where,
  look: Look,
  id: string,
): Promise<Omit<Said, 'subject' | 'look'> | undefined> {
  if (await mail.whisper(where, look)) return undefined;
  const isHere = where.channel !== undefined && mail.platform.isDirect(where.channel);
  const reached = isHere ? { channel: where.channel } : await mail.reach(where.user);
  if (isFailed(reached) || reached.channel === undefined) {
    log.error('nowhere-to-answer', { id });
    return undefined;
  }
  const to = { channel: reached.channel, thread: isHere ? where.thread : undefined };
  const posted = await mail.post(to, look, id);
  if (posted.kind === 'posted') return { ...to, ts: posted.ts };
  log.error('answer-not-posted', { id, outcome: posted.kind });
  return undefined;
}

const ownLook = ({ answer, own, id }: Telling): Look => ({
  card: answer.card,
  language: own.language,
  showing: id,
});

/** To whoever said it. Where that is a message of its own, its taps give way too. */
export async function alone(deps: Private, telling: Telling, look = ownLook(telling)): Promise<void> {
  const { desk, where, id, answer } = telling;
  desk.toldAlone.told(look.showing, answer);
  const said = await tellPrivately(deps, where, look, id);
  const { about, moved = [] } = answer;
  if (said !== undefined) desk.messages.keep({ ...said, subject: keptUnder(about), moved, look });
}

/** Of something that went otherwise: to one person alone. */
export async function warn(
  deps: Private,
  where: Where,
  id: string,
  { language }: Pick<Voice, 'language'>,
  title: string,
  lines: readonly string[],
): Promise<void> {
  const showing = `${id}:told`;
  await tellPrivately(deps, where, { card: makeCard(title, 'warn', { lines }), language, showing }, showing);
}
