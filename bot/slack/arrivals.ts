// The first words in a channel, once; and those to somebody, or in a channel, of no crew here.

import type { Where } from '../messages/platform.ts';
import { tellPrivately } from '../messages/privately.ts';
import type { Desk } from './crew-desk.ts';
import type { Inbound } from './inbound.ts';
import type { SlackParts } from './slack-parts.ts';
import { noCrewLook, welcomeLook } from './welcome.ts';

export async function joined({ mail, postbox }: SlackParts, desk: Desk, { team, channel }: Where): Promise<void> {
  const note = `joined/${team}/${channel ?? ''}`;
  if (channel === undefined || postbox.note(note) !== undefined) return;
  postbox.setNote(note, 'told');
  const voice = await desk.overview.voice(undefined);
  await mail.post({ channel, thread: undefined }, welcomeLook(voice), note);
  await desk.messages.refresh();
}

/** Whoever typed, tapped or invited us is told; a picture or a change asks nothing. */
export async function noCrew(parts: SlackParts, { kind, where, id }: Inbound): Promise<void> {
  if (kind === 'picture' || kind === 'edited') return;
  if (kind === 'home') return parts.homes.showNoCrew(where);
  const look = noCrewLook(where.channel, id);
  if (kind !== 'joined') {
    await tellPrivately(parts, where, look, id);
    return;
  }
  // The note of its welcome stays free: the channel may become a crew's yet.
  if (where.channel !== undefined) await parts.mail.post({ channel: where.channel, thread: undefined }, look, id);
}
