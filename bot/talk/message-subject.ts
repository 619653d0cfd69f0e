// What something is about: a batch itself or the batch of a part's last coat, a spray session, else the can, place or part
// itself. A chat platform keeps one message for each batch and each session.

import type { Command, CommandOf, Verb } from '../../core/commands.ts';
import {
  batchStream,
  canStream,
  crewStream,
  nameIn,
  nounOf,
  partStream,
  placeStream,
  type StreamId,
  sessionStream,
} from '../../core/ids.ts';
import { liveBatches, liveParts, openSessions, type Shop } from '../../core/shop.ts';

/** `undefined`: the crew as a whole. */
export function subjectOf(shop: Shop, stream: StreamId): StreamId | undefined {
  switch (nounOf(stream)) {
    case 'part': {
      const coat = shop.parts.get(nameIn(stream))?.coats.at(-1);
      return coat === undefined ? stream : batchStream(coat.batch);
    }
    case 'batch':
    case 'session':
    case 'can':
    case 'place':
      return stream;
    case 'crew':
    case 'instrument':
      return undefined;
  }
}

export function subjectsOf(shop: Shop, streams: readonly StreamId[]): readonly StreamId[] {
  return [...new Set(streams.flatMap((stream) => subjectOf(shop, stream) ?? []))];
}

/** A batch or a session: what happens to it stands in the thread of its one message. */
export function hasOneMessage(subject: StreamId): boolean {
  return nounOf(subject) === 'batch' || nounOf(subject) === 'session';
}

/** Under what a message with this answer is kept: a batch or session, else the first thing that it is about. */
export function keptUnder(about: readonly StreamId[] = []): StreamId {
  return about.find(hasOneMessage) ?? about[0] ?? crewStream;
}

/** What a command is about by what it names, before anything came of it. */
export function subjectsNamed(shop: Shop, command: Command): readonly StreamId[] {
  const named = <T>(value: T | undefined, streamOf: (value: T) => StreamId): readonly StreamId[] =>
    value === undefined ? [] : [streamOf(value)];
  const parts = 'parts' in command ? command.parts : [];
  return subjectsOf(shop, [
    ...('batch' in command ? named(command.batch, batchStream) : []),
    ...parts.map(partStream),
    ...('part' in command ? named(command.part, partStream) : []),
    ...(takesSession(command) ? named(command.session ?? onlySession(shop), sessionStream) : []),
    ...('can' in command ? named(command.can, canStream) : []),
    ...('place' in command ? named(command.place, placeStream) : []),
  ]);
}

const sessionVerbs = [
  'near',
  'ack',
  'fan',
  'supplied',
  'spray-on',
  'spray-off',
  'flush',
  'rags',
  'close',
] as const satisfies readonly Verb[];

/** Of a spray session that is there already. */
export function takesSession(command: Command): command is CommandOf<(typeof sessionVerbs)[number]> {
  const verbs: readonly Verb[] = sessionVerbs;
  return verbs.includes(command.verb);
}

function onlySession(shop: Shop): number | undefined {
  const [only, ...others] = openSessions(shop);
  return others.length === 0 ? only?.number : undefined;
}

/** Whatever somebody still waits for: a batch for its pot or for a part coated from it, a session for its end. */
export function liveSubjects(shop: Shop): readonly StreamId[] {
  const batches = liveBatches(shop).map((batch) => batchStream(batch.number));
  const sessions = openSessions(shop).map((session) => sessionStream(session.number));
  const parts = liveParts(shop).map((part) => partStream(part.name));
  return subjectsOf(shop, [...batches, ...parts, ...sessions]).filter(hasOneMessage);
}
