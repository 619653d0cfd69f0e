// Which crew a channel or a person belongs to. Channels come from the crew's file; a lone crew whose file names none takes
// the first channel in which it is spoken to, until another is chosen on the home tab.

import type { Postbox } from '../../core/ports.ts';
import type { Desk } from './desk.ts';
import type { Where } from './inbound.ts';

export interface WhichCrew {
  /** Whose channel it is; `undefined`: nobody's yet. */
  readonly ownerOf: (channel: string) => Desk | undefined;
  readonly deskAt: (where: Where) => Desk | undefined;
}

export const channelNote = (crew: string): string => `channel/${crew}`;
const lastNote = (where: Where): string => `crew-of/${where.team}/${where.user}`;

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

  return {
    ownerOf,
    deskAt: (where) => {
      if (!isChannel(where.channel)) return ofPerson(where);
      const desk = ofChannel(where.channel);
      // In a direct message and on the home tab: the crew in whose channel they last spoke.
      if (desk !== undefined && desks.length > 1) postbox.setNote(lastNote(where), desk.crew);
      return desk;
    },
  };
}
