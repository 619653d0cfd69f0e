// What rests on an instrument, over the whole record: the parts, pots and places that were read with it, by what is filed under it;
// what was coated of those pots; and of a place all that was done there since its last good check.

import { asItStands } from './as-it-stands.ts';
import type { Envelope } from './history.ts';
import { type CrewId, instrumentStream, nounOf, type StreamId } from './ids.ts';
import { touchedUnder } from './looked-at-anew.ts';
import type { Store } from './ports.ts';
import { type EpochMs, epochMs } from './units.ts';

/** `until`: what is read later is judged when it is. */
export async function foundUnder(
  store: Pick<Store, 'readUnder' | 'streamsBetween'>,
  crew: CrewId,
  instrument: string,
  { at, until }: { readonly at: EpochMs; readonly until: EpochMs },
): Promise<readonly StreamId[]> {
  const { envelopes } = await store.readUnder(crew, instrumentStream(instrument));
  const since = asItStands(envelopes).findLast(
    ({ fact, happenedAt }) => fact.type === 'InstrumentChecked' && fact.result === 'ok' && happenedAt < at,
  )?.happenedAt;
  const read = envelopes.filter(
    ({ happenedAt, body }) => body.type === 'Amended' || since === undefined || happenedAt >= since,
  );
  const streams = [...new Set(read.flatMap(({ stream, alsoUnder }) => [stream, ...alsoUnder]))];
  const ofNoun = (noun: ReturnType<typeof nounOf>, of = streams) => of.filter((stream) => nounOf(stream) === noun);
  const inPlaces = read.filter(({ stream }) => nounOf(stream) === 'place').map(readAt);
  const first = epochMs(Math.min(until, ...inPlaces));
  const meanwhile = inPlaces.length === 0 ? [] : await store.streamsBetween(crew, first, until);
  const pots = [...ofNoun('batch'), ...ofNoun('batch', [...meanwhile])];
  const coated = await touchedUnder(store, crew, [...new Set(pots)]);
  return [...ofNoun('part'), ...ofNoun('place'), ...pots, ...coated, ...ofNoun('part', [...meanwhile])].filter(
    (stream, i, all) => nounOf(stream) !== 'instrument' && all.indexOf(stream) === i,
  );
}

/** Put right to this instrument, its own time stands in the correction. */
const readAt = ({ body, happenedAt }: Envelope): EpochMs =>
  body.type === 'Amended' && body.to.kind === 'corrected' ? body.to.happenedAt : happenedAt;
