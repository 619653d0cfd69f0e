// The first words in a channel, once; and those to somebody, or in a channel, of no crew here.

import type { Postbox } from '../../core/ports.ts';
import type { Desk } from './crew-desk.ts';
import type { Homes } from './homes.ts';
import type { Inbound, Where } from './inbound.ts';
import type { Outbox } from './outbox.ts';
import type { ShowAnswer } from './show-answer.ts';
import { noCrewMessage, welcomeMessage } from './welcome.ts';

interface ArrivalsNeeds {
  readonly outbox: Outbox;
  readonly postbox: Postbox;
  readonly homes: Homes;
  readonly privately: ShowAnswer['privately'];
}

export function createArrivals({ outbox, postbox, homes, privately }: ArrivalsNeeds) {
  async function joined(desk: Desk, { team, channel }: Where): Promise<void> {
    const note = `joined/${team}/${channel ?? ''}`;
    if (channel === undefined || postbox.note(note) !== undefined) return;
    postbox.setNote(note, 'told');
    const { words } = await desk.overview.voice(undefined);
    await outbox.post({ channel, thread: undefined }, welcomeMessage(words), note);
    await desk.standing.refresh();
  }

  /** Whoever typed, tapped or invited us is told; a picture or a change asks nothing. */
  async function noCrew({ kind, where, id }: Inbound): Promise<void> {
    if (kind === 'picture' || kind === 'edited') return;
    if (kind === 'home') return homes.showNoCrew(where);
    const message = noCrewMessage(where.channel, id);
    if (kind !== 'joined') return privately(where, message, id);
    // The note of its welcome stays free: the channel may become a crew's yet.
    if (where.channel !== undefined) await outbox.post({ channel: where.channel, thread: undefined }, message, id);
  }

  return { joined, noCrew };
}
