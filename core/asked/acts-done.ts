// What was done with a thing, when and by whom: the acts of its history, or those of one kind.

import { type Verb, verbRows } from '../commands.ts';
import { type Entry, isAct } from '../history.ts';
import { batchStream, canStream, partStream, placeStream, type StreamId, sessionStream } from '../ids.ts';
import { entriesIn, type Shop } from '../shop.ts';
import type { ThingMeant } from './things-meant.ts';

/** In order of time. `act`: only those that it leaves behind. */
export function actsDone(shop: Shop, things: readonly ThingMeant[], act: Verb | undefined): readonly Entry[] {
  const streams = new Set(things.flatMap(streamOf));
  const people = new Set(things.flatMap((thing) => (thing.is === 'person' ? [thing.person] : [])));
  const isOf = ({ stream, alsoUnder, by }: Entry): boolean =>
    (streams.size === 0 || streams.has(stream) || alsoUnder.some((each) => streams.has(each))) &&
    (people.size === 0 || people.has(by));
  return entriesIn(shop, (entry) => isAct(entry) && isOf(entry) && isLeftBy(act, entry)).toSorted(
    (one, other) => one.happenedAt - other.happenedAt || one.seq - other.seq,
  );
}

function streamOf(thing: ThingMeant): readonly StreamId[] {
  switch (thing.is) {
    case 'batch':
      return [batchStream(thing.number)];
    case 'can':
      return [canStream(thing.number)];
    case 'session':
      return [sessionStream(thing.number)];
    case 'part':
      return [partStream(thing.part.name)];
    case 'place':
      return [placeStream(thing.place)];
    case 'person':
      return [];
  }
}

/** Of several verbs with one event, what tells them apart is in it. */
function isLeftBy(act: Verb | undefined, { fact }: Entry): boolean {
  if (act === undefined) return true;
  const { leaves, alsoLeaves = [] } = verbRows[act].options ?? {};
  if (leaves === undefined) return false;
  if (alsoLeaves.includes(fact.type)) return true;
  const { type, ...rest } = leaves;
  const said = new Map<string, unknown>(Object.entries(fact));
  return fact.type === type && Object.entries(rest).every(([field, value]) => said.get(field) === value);
}
