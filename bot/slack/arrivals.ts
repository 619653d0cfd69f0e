// The first words in a channel, once; and those to somebody, or in a channel, of no crew here.

import { makeCard } from '../cards/card.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { Look } from '../messages/look.ts';
import type { Where } from '../messages/platform.ts';
import { tellPrivately } from '../messages/privately.ts';
import type { Voice } from '../talk/overview.ts';
import type { Desk } from './crew-desk.ts';
import type { Inbound } from './inbound.ts';
import type { SlackParts } from './slack-parts.ts';

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
  const look = noCrewLook(parts.homes.strangers(), where.channel, id);
  if (kind !== 'joined') {
    await tellPrivately(parts, where, look, id);
    return;
  }
  // The note of its welcome stays free: the channel may become a crew's yet.
  if (where.channel !== undefined) await parts.mail.post({ channel: where.channel, thread: undefined }, look, id);
}

function welcomeLook({ words, language }: Voice): Look {
  const card = makeCard(words.replies.greeting, 'plain', { lines: [...words.chat.joined, words.replies.caution] });
  return { card, language, showing: 'joined' };
}

/** In the first language there is: nothing is known of them. */
function noCrewLook(words: Words, channel: string | undefined, showing: string): Look {
  const known = channel !== undefined && !channel.startsWith('D');
  const lines = [known ? words.chat.noCrewHere(channel) : words.chat.noCrewOfYours, words.replies.nothingRecorded];
  return { card: makeCard(words.replies.notNow([]), 'warn', { lines }), language: 'en', showing };
}
