// Says lines to a crew's host: one after the other in the order of arrival, under the name of whoever said them, with the
// batch in whose thread they were said. What is shown may wait for Slack; what is decided does not.

import type { StreamId } from '../../core/ids.ts';
import { known } from '../../core/known.ts';
import { epochMs } from '../../core/units.ts';
import { writeName } from '../language/people-typed.ts';
import type { Where } from '../messages/platform.ts';
import type { Pressed } from '../talk/pressed.ts';
import type { Desk } from './crew-desk.ts';
import type { SlackParts } from './slack-parts.ts';

export interface Said {
  readonly text: string;
  readonly where: Where;
  /** Of the delivery, for the record. */
  readonly id: string;
  readonly saidAt: number | undefined;
  /** Of a tap or its form: judged when its turn comes, by what was recorded before it. */
  readonly pressed?: () => Promise<Pressed>;
}

export function handle(parts: SlackParts, desk: Desk, { text, where, id, saidAt, pressed }: Said) {
  const about = subjectAt(parts, desk, where);
  const said = notFromTheFuture(parts, saidAt);
  return parts.turns.take(desk, async () => {
    const as = await desk.roster.personOf(where.team, where.user);
    const how = await pressed?.();
    const line = { text: await withNames(parts, desk, text, where.team), as, in: id, id };
    return desk.host.handle({ ...line, ...known({ saidAt: said, about, pressed: how }) });
  });
}

/** One name is one word to the reader: in quotes where it has a space or would mean something else. */
export async function withNames({ tongues }: SlackParts, desk: Desk, text: string, team: string): Promise<string> {
  const names = new Map<string, string>();
  for (const [mention, user = ''] of text.matchAll(/<@([UW][A-Z0-9]+)>/g)) {
    names.set(mention, writeName(await desk.roster.nameOf(team, user), tongues.every));
  }
  return text.replaceAll(/<@[UW][A-Z0-9]+>/g, (mention) => names.get(mention) ?? mention);
}

/** Slack's clock may be ahead of ours: nobody speaks from the future. */
export const notFromTheFuture = ({ now }: SlackParts, saidAt: number | undefined) =>
  saidAt === undefined ? undefined : epochMs(Math.min(saidAt, now()));

/** What the message above a thread tells of. */
export function subjectAt(
  { postbox }: SlackParts,
  { crew }: Desk,
  { team, channel, thread }: Where,
): StreamId | undefined {
  const post = channel === undefined || thread === undefined ? undefined : postbox.postAt(team, channel, thread);
  return post?.crew === crew ? post.subject : undefined;
}
