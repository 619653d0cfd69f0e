// Taps on buttons: each is said like any line, once however often it is pressed, and what became of it stands where the
// button was.

import type { StreamId } from '../../core/ids.ts';
import type { Log, Postbox } from '../../core/ports.ts';
import type { Answer } from '../talk/answer.ts';
import type { Moved } from '../talk/pressed.ts';
import type { Answering, Used } from './answering.ts';
import { cardMessage } from './card-blocks.ts';
import type { Desk } from './crew-desk.ts';
import type { Homes } from './homes.ts';
import type { Inbound, TapPlace, Where } from './inbound.ts';
import { versionOf } from './places.ts';
import type { Respond } from './respond.ts';
import type { Speaking } from './speaking.ts';

export type Tap = Extract<Inbound, { kind: 'tap' }>;
export type TapOn = Pick<Tap, 'line' | 'where' | 'message' | 'saidAt' | 'ephemeral'> & {
  readonly place?: TapPlace | undefined;
};

interface TapsNeeds {
  readonly speaking: Speaking;
  readonly answering: Answering;
  readonly homes: Pick<Homes, 'movedUnder'>;
  readonly respond: Respond;
  readonly postbox: Postbox;
  readonly now: () => number;
  readonly log: Log;
}

/** Two presses nearer than this were meant as one. */
const breathMs = 2_000;

export function createTaps({ speaking, answering, homes, respond, postbox, now, log }: TapsNeeds) {
  const presses = new Map<string, { readonly id: string; readonly at: number }>();

  async function pressed(desk: Desk, tap: Tap): Promise<void> {
    const { line, where, saidAt } = tap;
    // A second press of a wet thumb has its answer already, whatever has moved since the first.
    const id = pressOf(tap);
    const pressed = async () => ({ label: tap.label, moved: await movedAnyway(desk, tap) });
    const answer = await speaking.handle(desk, { text: line, where, id, saidAt, pressed });
    if (answer === undefined) return;
    if (tap.ephemeral) return answeredEphemeral(desk, answer, tap);
    await answering.answered(desk, answer, where, tap.id, await usedTap(desk, answer, where, tap.message, tap.label));
  }

  /** A gloved thumb presses twice: the same button on the same showing within a breath is one act. */
  function pressOf({ showing, id, saidAt }: Tap): string {
    const at = saidAt ?? now();
    const before = presses.get(showing);
    if (before !== undefined && at - before.at < breathMs) return before.id;
    for (const [other, pressed] of presses) if (at - pressed.at >= breathMs) presses.delete(other);
    presses.set(showing, { id, at });
    return id;
  }

  /** Where that cannot be told, a tap, be it a cry for help, is said all the same; only what is decided on a card asks. */
  async function movedAnyway(desk: Desk, tap: Tap): Promise<Moved> {
    try {
      return await movedUnder(desk, tap);
    } catch (error) {
      log.error('card-not-shown-anew', { id: tap.id, error: String(error) });
      return { is: 'older', now: undefined };
    }
  }

  /** Slack shows a change within some tenths of a second: a press just after it was aimed at what stood there before. */
  async function movedUnder(desk: Desk, { line, where, message, place, saidAt, ephemeral }: TapOn): Promise<Moved> {
    if (place === undefined || ephemeral) return { is: 'not' };
    const { block, button, hash } = place;
    const press = { line, button, at: Math.min(saidAt ?? now(), now()) };
    if (where.via === 'home') return homes.movedUnder(where.user, { ...press, row: block }, hash);
    const { team, channel } = where;
    const post = channel === undefined || message === undefined ? undefined : postbox.postAt(team, channel, message);
    if (post === undefined || post.crew !== desk.crew) return { is: 'not' };
    if (post.role === 'standing') return desk.standing.movedUnder(post, { ...press, version: versionOf(block) });
    return desk.thread.isOver(post) ? { is: 'older', now: undefined } : { is: 'not' };
  }

  /** What stands in place of a used button: who tapped what, and when. */
  async function usedTap(
    desk: Desk,
    answer: Answer,
    where: Where,
    ts: string | undefined,
    label: string,
  ): Promise<Used | undefined> {
    if (ts === undefined || where.channel === undefined || !answer.recorded) return undefined;
    const { words, clock } = await desk.overview.voice(undefined);
    return { ts, channel: where.channel, outcome: words.chat.tapped(answer.as ?? '', label, clock) };
  }

  /** A message that only its reader sees is replaced by what came of it. */
  async function answeredEphemeral(desk: Desk, answer: Answer, tap: Tap): Promise<void> {
    const replaced = (answer.recorded || answer.kind === 'objection') && (await isReplaced(desk, answer, tap));
    await answering.answered(desk, answer, { ...tap.where, via: replaced ? 'button' : 'command' }, tap.id);
  }

  async function isReplaced(desk: Desk, answer: Answer, { where, id }: Tap): Promise<boolean> {
    if (where.responseUrl === undefined) return false;
    const { words } = await desk.overview.voice(answer.as ?? undefined);
    const card = { ...answer.card, actions: [] };
    return respond(where.responseUrl, { replace_original: true, ...cardMessage(card, { words, showing: id }) });
  }

  /** What the message tells of on which it was tapped. */
  function subjectOn(desk: Desk, { where, message }: Tap): StreamId | undefined {
    if (where.channel === undefined) return undefined;
    const on = message === undefined ? undefined : postbox.postAt(where.team, where.channel, message);
    return on?.crew === desk.crew ? on.subject : speaking.subjectAt(desk, where);
  }

  return { pressed, movedUnder, usedTap, subjectOn };
}
