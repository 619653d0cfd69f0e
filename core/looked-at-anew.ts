// What a correction, or an act told late, may make look otherwise though nobody waits for it any more: the parts that were coated
// from a pot, released since and gone. They are loaded with it, and judged with it.

import type { CommandOf, Verb } from './commands.ts';
import type { CrewId, StreamId } from './ids.ts';
import { nounOf } from './ids.ts';
import type { Store } from './ports.ts';
import { streamsTouched } from './seal.ts';
import { type EpochMs, minutes, minutesAfter } from './units.ts';

/** An air reading is never believed for longer, and no pot lives longer: what was done after it rests on another. */
const restsFor = minutes(24 * 60);

/** All that was told under these: of a pot its parts, of a can its pots. */
export async function touchedUnder(
  store: Pick<Store, 'readUnder'>,
  crew: CrewId,
  streams: readonly StreamId[],
): Promise<readonly StreamId[]> {
  const read = await Promise.all(streams.map((stream) => store.readUnder(crew, stream)));
  return [...streamsTouched(read.flatMap(({ envelopes }) => envelopes))];
}

/** `named`: what the act itself is about. */
export async function lookedAtAnew(
  store: Pick<Store, 'readUnder' | 'streamsBetween'>,
  crew: CrewId,
  { command, at, now }: { readonly command: CommandOf<Verb>; readonly at: EpochMs; readonly now: EpochMs },
  named: readonly StreamId[],
): Promise<readonly StreamId[]> {
  const corrects = command.verb === 'amend' || command.verb === 'undo';
  if (!corrects && at >= now) return [];
  const under = (streams: readonly StreamId[]) => touchedUnder(store, crew, streams);
  const ofNoun = (streams: readonly StreamId[], noun: ReturnType<typeof nounOf>) =>
    streams.filter((stream) => nounOf(stream) === noun);
  // Out of which can a pot was filled stands under both.
  const pots = ofNoun([...named, ...(await under(ofNoun(named, 'can')))], 'batch');
  const about = command.verb === 'amend' ? (command.change.at ?? now) : at;
  const reads = isOfPlace(command) || ofNoun(named, 'place').length > 0;
  const since = corrects ? minutesAfter(about, minutes(-restsFor)) : about;
  const until = minutesAfter(about, restsFor);
  const meanwhile = reads ? await store.streamsBetween(crew, since, until) : [];
  return [...(await under(pots)), ...ofNoun(meanwhile, 'batch'), ...ofNoun(meanwhile, 'part')];
}

/** Read in a place: what was done there rests on it, whatever it names. */
function isOfPlace(command: CommandOf<Verb>): boolean {
  const { verb } = command.verb === 'amend' ? command.of : command;
  return verb === 'air' || verb === 'surface' || verb === 'night';
}
