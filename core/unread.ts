// What follows from events that do not read (core/unread-event.ts). Nobody's bells fall silent for them: a batch, can, part or session that one stands under is
// left as it is (nothing more is recorded on it, its bells ring as they were last planned), a place is read from behind the
// last one, since a reading stands by itself, and the crew's settings go on without it. Whoever leads is told.

import { type EventBody, isActType } from './history.ts';
import { batchStream, nameIn, nounOf, type StreamId } from './ids.ts';
import { batchOf, type Shop } from './shop.ts';
import { isUnreadAct, RestsOnUnread, type UnreadEvent } from './unread-event.ts';

/** Why nothing more can be said of this stream; empty where it reads. */
export function unreadUnder({ unread }: Shop, stream: StreamId): readonly UnreadEvent[] {
  const noun = nounOf(stream);
  return noun === 'place' || noun === 'crew' ? [] : (unread.get(stream) ?? []).filter(isUnreadAct);
}

/** Its bells cannot be planned anew: they stay as they are. */
export function keepsItsBells(shop: Shop, stream: StreamId): boolean {
  if (unreadUnder(shop, stream).length > 0) return true;
  const part = nounOf(stream) === 'part' ? shop.parts.get(nameIn(stream)) : undefined;
  // Its clocks run by the sheet of a batch whose opening does not read.
  return part !== undefined && part.coats.length > 0 && batchOf(shop, part) === undefined;
}

interface Written {
  readonly streams: readonly StreamId[];
  readonly body: EventBody;
}

/**
 * Throws `RestsOnUnread` where these events would rest on what is not known. That a bell was heard rests on nothing;
 * a bell of such a stream that is put off would never ring again; a release rests on the batches as well.
 */
export function mustRead(shop: Shop, events: readonly Written[]): void {
  if (shop.unread.size === 0) return;
  const resting = events
    .filter(({ body }) => isActType(body.type) || body.type === 'RingSnoozed')
    .flatMap(({ streams, body }) => [...streams, ...(body.type === 'PartReleased' ? batchesUnder(shop, streams) : [])]);
  const broken = [...new Set(resting)].flatMap((stream) => unreadUnder(shop, stream));
  if (broken.length > 0) throw new RestsOnUnread([...new Map(broken.map((event) => [event.seq, event])).values()]);
}

function batchesUnder(shop: Shop, streams: readonly StreamId[]): readonly StreamId[] {
  return streams
    .filter((stream) => nounOf(stream) === 'part')
    .flatMap((stream) => shop.parts.get(nameIn(stream))?.coats ?? [])
    .map(({ batch }) => batchStream(batch));
}

/** Each once, in the record's order. */
export function unreadIn({ unread }: Pick<Shop, 'unread'>): readonly UnreadEvent[] {
  const bySeq = new Map([...unread.values()].flat().map((event) => [event.seq, event]));
  return [...bySeq.values()].sort((a, b) => a.seq - b.seq);
}
