// Makes a channel the crew's: where nobody else's batches go, and where Batchbell has been invited.

import { z } from 'zod';
import type { Postbox } from '../../core/ports.ts';
import type { Desk } from './crew-desk.ts';
import type { Call } from './slack-client.ts';
import { channelNote, type WhichCrew } from './which-crew.ts';

export type ChannelFault = 'taken' | 'not-invited' | 'not-asked';

const Info = z.object({
  channel: z.object({ is_member: z.boolean().default(false), is_archived: z.boolean().default(false) }),
});

export async function takeChannel(
  { call, which, postbox }: { readonly call: Call; readonly which: WhichCrew; readonly postbox: Postbox },
  desk: Desk,
  channel: string,
): Promise<ChannelFault | undefined> {
  const owner = which.ownerOf(channel);
  if (owner !== undefined && owner !== desk) return 'taken';
  const called = await call('conversations.info', { channel });
  if (called.kind !== 'done') return called.kind === 'refused' ? 'not-invited' : 'not-asked';
  const info = Info.safeParse(called.result).data?.channel;
  if (info === undefined || !info.is_member || info.is_archived) return 'not-invited';
  postbox.setNote(channelNote(desk.crew), channel);
  return undefined;
}
