// Which batch something is about: a batch itself, or the batch of a part's last coat. A chat platform keeps one message
// for each.

import type { Command } from '../core/commands.ts';
import { batchStream, nameIn, nounOf, partStream, type StreamId } from '../core/ids.ts';
import { liveBatches, liveParts, type Shop } from '../core/shop.ts';

export function subjectOf(shop: Shop, stream: StreamId): StreamId | undefined {
  switch (nounOf(stream)) {
    case 'batch':
      return stream;
    case 'part': {
      const coat = shop.parts.get(nameIn(stream))?.coats.at(-1);
      return coat === undefined ? undefined : batchStream(coat.batch);
    }
    case 'can':
    case 'place':
    case 'session':
    case 'crew':
      return undefined;
  }
}

export function subjectsOf(shop: Shop, streams: readonly StreamId[]): readonly StreamId[] {
  return [...new Set(streams.flatMap((stream) => subjectOf(shop, stream) ?? []))];
}

/** What a command is about by what it names, before anything came of it. */
export function subjectsNamed(shop: Shop, command: Command): readonly StreamId[] {
  const batch = 'batch' in command && command.batch !== undefined ? [batchStream(command.batch)] : [];
  const parts =
    'parts' in command ? command.parts : 'part' in command && command.part !== undefined ? [command.part] : [];
  return subjectsOf(shop, [...batch, ...parts.map(partStream)]);
}

/** Batches for which somebody still waits, for the pot or for a part coated from it. */
export function liveSubjects(shop: Shop): readonly StreamId[] {
  const batches = liveBatches(shop).map((batch) => batchStream(batch.number));
  return subjectsOf(shop, [...batches, ...liveParts(shop).map((part) => partStream(part.name))]);
}
