// Taps on buttons: each is said like any line, once however often it is pressed, and what became of it stands where the
// button was.

import type { StreamId } from '../../core/ids.ts';
import type { Used } from '../messages/messages.ts';
import type { Where } from '../messages/platform.ts';
import type { Answer } from '../talk/answer.ts';
import type { Moved } from '../talk/pressed.ts';
import { answered } from './answering.ts';
import type { Desk } from './crew-desk.ts';
import type { Inbound, TapPlace } from './inbound.ts';
import { showingOf, versionOf } from './places.ts';
import type { SlackParts } from './slack-parts.ts';
import { messagesIn } from './slack-platform.ts';
import { handle, subjectAt } from './speaking.ts';

export type Tap = Extract<Inbound, { kind: 'tap' }>;
export type TapOn = Pick<Tap, 'line' | 'where' | 'message' | 'saidAt' | 'ephemeral'> & {
  readonly place?: TapPlace | undefined;
};

/** Two presses nearer than this were meant as one. */
const breathMs = 2_000;

export async function pressed(parts: SlackParts, desk: Desk, tap: Tap): Promise<void> {
  const { line, where, saidAt } = tap;
  // A second press of a wet thumb has its answer already, whatever has moved since the first.
  const id = pressOf(parts, tap);
  const pressed = async () => ({ label: tap.label, moved: movedAnyway(parts, desk, tap) });
  const answer = await handle(parts, desk, { text: line, where, id, saidAt, pressed });
  if (answer === undefined) return;
  if (tap.ephemeral) return answeredEphemeral(parts, desk, answer, tap);
  await answered(parts, desk, answer, where, tap.id, await usedTap(desk, answer, where, tap.message, tap.label));
}

/** A gloved thumb presses twice: the same button on the same showing within a breath is one act. */
function pressOf({ presses, now }: SlackParts, { showing, id, saidAt }: Tap): string {
  const at = saidAt ?? now();
  const before = presses.get(showing);
  if (before !== undefined && at - before.at < breathMs) return before.id;
  for (const [other, pressed] of presses) if (at - pressed.at >= breathMs) presses.delete(other);
  presses.set(showing, { id, at });
  return id;
}

/** Where that cannot be told, a tap, be it a cry for help, is said all the same; only what is decided on a card asks. */
function movedAnyway(parts: SlackParts, desk: Desk, tap: Tap): Moved {
  try {
    return movedUnder(parts, desk, tap);
  } catch (error) {
    parts.log.error('card-not-shown-anew', { id: tap.id, error: String(error) });
    return { is: 'older', now: undefined };
  }
}

/** Slack shows a change within some tenths of a second: a press just after it was aimed at what stood there before. */
export function movedUnder(parts: SlackParts, desk: Desk, tap: TapOn): Moved {
  const { line, where, message, place, saidAt, ephemeral } = tap;
  if (place === undefined) return { is: 'not' };
  const { block, button, hash } = place;
  if (ephemeral) return desk.toldAlone.isOlder(showingOf(block)) ? { is: 'older', now: undefined } : { is: 'not' };
  const press = { line, button, at: Math.min(saidAt ?? parts.now(), parts.now()) };
  if (where.via === 'home') return parts.homes.movedUnder(where.user, { ...press, row: block }, hash);
  const post = postUnder(parts, desk, where, message);
  return post === undefined ? { is: 'not' } : desk.messages.movedUnder(post, { ...press, version: versionOf(block) });
}

function postUnder({ postbox }: SlackParts, desk: Desk, { team, channel }: Where, message: string | undefined) {
  const post = channel === undefined || message === undefined ? undefined : postbox.postAt(team, channel, message);
  return post?.crew === desk.crew ? post : undefined;
}

/** What stands in place of a used button: who tapped what, and when. */
export async function usedTap(
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
async function answeredEphemeral(parts: SlackParts, desk: Desk, answer: Answer, tap: Tap): Promise<void> {
  const replaced = (answer.recorded || answer.kind === 'objection') && (await isReplaced(parts, desk, answer, tap));
  await answered(parts, desk, answer, { ...tap.where, via: replaced ? 'button' : 'command' }, tap.id);
}

async function isReplaced(
  { respond, tongues }: SlackParts,
  desk: Desk,
  answer: Answer,
  { where, id }: Tap,
): Promise<boolean> {
  if (where.responseUrl === undefined) return false;
  const { language } = await desk.overview.voice(answer.as ?? undefined);
  const look = { card: { ...answer.card, actions: [] }, language, showing: id };
  return respond(where.responseUrl, { replace_original: true, ...messagesIn(tongues)(look) });
}

/** What the message tells of on which it was tapped. */
export function subjectOn(parts: SlackParts, desk: Desk, { where, message }: Tap): StreamId | undefined {
  if (where.channel === undefined) return undefined;
  return postUnder(parts, desk, where, message)?.subject ?? subjectAt(parts, desk, where);
}
