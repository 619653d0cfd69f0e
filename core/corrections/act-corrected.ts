// Which act a correction is about: how it is named, under which stream it lies, and which of several of its kind is meant.

import { findBatch } from '../batch/batch-decide.ts';
import { findCan } from '../can/can-decide.ts';
import { verbRows } from '../commands.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { Entry, Fact } from '../history.ts';
import {
  batchStream,
  canStream,
  crewStream,
  defaultPlace,
  nameIn,
  nounOf,
  numberIn,
  partStream,
  placeStream,
  type StreamId,
  sessionStream,
} from '../ids.ts';
import { known } from '../known.ts';
import type { Unclear } from '../objections.ts';
import { findSession } from '../session/session-decide.ts';
import { entriesIn, livePartNames, type Shop } from '../shop.ts';
import { actsOn, amendableVerbs } from '../verbs/amends.ts';
import type { AmendableVerb, Amendment, AmendTarget } from '../verbs/correction-verbs.ts';
import { isOfSpot } from './spot-corrected.ts';

/** Whether a fact is what a verb left behind, and one that this change could put right. */
function leaves(verb: AmendableVerb, fact: Fact, { partAGrams, partBGrams }: Amendment): boolean {
  // A part weighed alone is put right by its own weight, or by what is no weight.
  if (verb === 'weigh' && fact.type === 'PartWeighed') {
    const named = partAGrams !== undefined || partBGrams !== undefined;
    return !named || (fact.component === 'part-a' ? partAGrams : partBGrams) !== undefined;
  }
  const has: ReadonlyMap<string, unknown> = new Map(Object.entries(fact));
  return Object.entries(verbRows[verb].options?.leaves ?? {}).every(([name, value]) => has.get(name) === value);
}

/** How an act is named where it is corrected; `undefined` where nothing in it can be. */
export function amendTargetOf({ stream, fact }: Pick<Entry, 'stream' | 'fact'>): AmendTarget | undefined {
  const verb = amendableVerbs.find((each) => leaves(each, fact, {}));
  if (verb === undefined) return undefined;
  switch (nounOf(stream)) {
    case 'batch':
      return { verb, batch: numberIn(stream) };
    case 'can':
      return { verb, can: numberIn(stream) };
    case 'part':
      return { verb, part: nameIn(stream), ...known({ spot: spotOf(fact) }) };
    case 'place':
      return { verb, ...(stream === placeStream(defaultPlace) ? {} : { place: nameIn(stream) }) };
    case 'crew':
    case 'instrument':
      return { verb };
    case 'session':
      return { verb, session: numberIn(stream) };
  }
}

/** Of several that one line told none is named. */
const spotOf = (fact: Fact): number | undefined =>
  fact.type === 'FilmRead' && fact.each === undefined ? fact.spot : undefined;

/** The act that stands, and whether the time that was said names it: then it is no time to be put right. */
export interface ActMeant {
  readonly entry: Entry;
  readonly isOfThatMinute: boolean;
}

/** The last of its kind, or the one of that minute. */
export function actMeant(shop: Shop, of: AmendTarget, change: Amendment): ActMeant | Failed<Unclear> {
  const stream = streamOf(shop, of);
  if (isFailed(stream)) return stream;
  const candidates = entriesIn(shop).filter(
    (candidate) =>
      candidate.stream === stream && leaves(of.verb, candidate.fact, change) && isOfSpot(candidate.fact, of),
  );
  const ofThatMinute = targetAt(candidates, change);
  const entry = ofThatMinute ?? candidates.at(-1);
  if (entry === undefined) return failed({ code: 'nothing-to-amend' });
  return { entry, isOfThatMinute: ofThatMinute !== undefined };
}

/** A time at which one of them stands names that one: `amend air 19C at 8:20` corrects the reading of 8:20. */
function targetAt(candidates: readonly Entry[], { at, ...figures }: Amendment): Entry | undefined {
  if (at === undefined || Object.keys(figures).length === 0) return undefined;
  return candidates.findLast((candidate) => Math.abs(candidate.happenedAt - at) < 60_000);
}

function streamOf(shop: Shop, of: AmendTarget): StreamId | Failed<Unclear> {
  if (of.part !== undefined) {
    return shop.parts.has(of.part)
      ? partStream(of.part)
      : failed({ code: 'no-such-part', part: of.part, live: livePartNames(shop) });
  }
  const noun = actsOn(of.verb);
  if (noun === 'place') return placeStream(of.place ?? defaultPlace);
  if (noun === 'crew') return crewStream;
  if (noun === 'can') {
    const can = findCan(shop, of.can, () => true);
    return isFailed(can) ? can : canStream(can.number);
  }
  if (noun === 'session') {
    const session = findSession(shop, of.session);
    return isFailed(session) ? session : sessionStream(session.number);
  }
  const batch = findBatch(shop, of.batch, () => true);
  return isFailed(batch) ? batch : batchStream(batch.number);
}
