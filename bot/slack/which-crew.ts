// Which crew something belongs to. What lies on a crew's own message or form is that crew's, whoever taps it; else the
// channel says it, and in a direct message where somebody last spoke. Channels come from the crew's file; a lone crew whose
// file names none takes the first channel in which it is spoken to, until another is chosen on the home tab.

import type { Postbox } from '../../core/ports.ts';
import type { Where } from '../messages/platform.ts';
import type { Desk } from './crew-desk.ts';
import type { Inbound } from './inbound.ts';

/** What was touched. */
export interface Touched {
  readonly message?: string | undefined;
  /** As written on it. */
  readonly crew?: string | undefined;
}

export interface WhichCrew {
  /** Whose channel it is; `undefined`: nobody's yet. */
  readonly ownerOf: (channel: string) => Desk | undefined;
  readonly deskAt: (where: Where, touched?: Touched) => Desk | undefined;
}

export const channelNote = (crew: string): string => `channel/${crew}`;
const lastNote = (where: Where): string => `crew-of/${where.team}/${where.user}`;

export const touchedBy = (inbound: Inbound): Touched => ({
  message: 'message' in inbound ? inbound.message : undefined,
  crew: 'crew' in inbound ? inbound.crew : undefined,
});

export function createWhichCrew(desks: readonly Desk[], postbox: Postbox): WhichCrew {
  const isChannel = (channel: string | undefined): channel is string =>
    channel !== undefined && !channel.startsWith('D');

  const ownerOf = (channel: string): Desk | undefined =>
    desks.find((desk) => desk.slackCrew.channels.includes(channel) || desk.channel() === channel);

  function ofChannel(channel: string): Desk | undefined {
    const named = ownerOf(channel);
    if (named !== undefined) return named;
    const [only] = desks;
    if (only === undefined || desks.length > 1 || only.slackCrew.channels.length > 0) return undefined;
    if (only.channel() !== undefined) return undefined;
    postbox.setNote(channelNote(only.crew), channel);
    return only;
  }

  function ofPerson(where: Where): Desk | undefined {
    if (desks.length === 1) return desks[0];
    const last = postbox.note(lastNote(where));
    const theirs = desks.filter((desk) => desk.roster.has(where.user));
    return theirs.find(({ crew }) => crew === last) ?? theirs[0] ?? desks.find(({ crew }) => crew === last);
  }

  /** By the message that was touched, the thread in which it lies, or what is written on it. */
  function ofTouched({ team, channel, thread }: Where, { message, crew }: Touched): Desk | undefined {
    const posts = channel === undefined ? [] : [message, thread].flatMap((ts) => ts ?? []);
    const kept = posts.flatMap((ts) => postbox.postAt(team, channel ?? '', ts)?.crew ?? [])[0];
    return desks.find((desk) => desk.crew === kept) ?? desks.find((desk) => desk.crew === crew);
  }

  return {
    ownerOf,
    deskAt: (where, touched = {}) => {
      const own = ofTouched(where, touched) ?? (isChannel(where.channel) ? ofChannel(where.channel) : undefined);
      if (own === undefined) return isChannel(where.channel) ? undefined : ofPerson(where);
      // In a direct message and on the home tab: the crew with which they last had to do.
      if (desks.length > 1) postbox.setNote(lastNote(where), own.crew);
      return own;
    },
  };
}
