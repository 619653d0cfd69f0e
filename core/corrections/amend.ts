// Corrects the last act of a kind on one batch, can, part or place: only what is named changes; who, when and why are kept.

import { inOrder } from '../as-it-stands.ts';
import { findBatch } from '../batch/batch-decide.ts';
import { weighedIn } from '../batch/unnamed-cans.ts';
import { findCan } from '../can/can-decide.ts';
import type { FromCan } from '../can/can-events.ts';
import { type CommandOf, verbRows } from '../commands.ts';
import type { Component } from '../components.ts';
import { mayNotSettle, roleMissing } from '../crew/who-may.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import { type Entry, Fact, type NewEvent } from '../history.ts';
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
} from '../ids.ts';
import { known } from '../known.ts';
import type { Unclear } from '../objections.ts';
import { foldPart } from '../part/part.ts';
import { namedIn } from '../session/people-named.ts';
import { entriesIn, livePartNames, type Shop } from '../shop.ts';
import { type EpochMs, type Grams, grams } from '../units.ts';
import { actsOn, amendableVerbs, amendsOf } from '../verbs/amends.ts';
import type { AmendableVerb, Amendment, AmendTarget } from '../verbs/correction-verbs.ts';

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
      return { verb, part: nameIn(stream) };
    case 'place':
      return { verb, ...(stream === placeStream(defaultPlace) ? {} : { place: nameIn(stream) }) };
    case 'crew':
      return { verb };
    case 'session':
      return undefined;
  }
}

export function decideAmend(shop: Shop, said: Said<CommandOf<'amend'>>): Decision {
  const { of, change, why } = said.command;
  const stream = streamOf(shop, of);
  if (isFailed(stream)) return unclear(stream.failed);
  const candidates = entriesIn(shop).filter(
    (candidate) => candidate.stream === stream && leaves(of.verb, candidate.fact, change),
  );
  const ofThatMinute = targetAt(candidates, change);
  const entry = ofThatMinute ?? candidates.at(-1);
  if (entry === undefined) return unclear({ code: 'nothing-to-amend' });
  if (change.at !== undefined && change.at > said.now) {
    return unclear({ code: 'in-the-future', at: change.at, now: said.now });
  }
  const named = namedIn(shop, said, change.appliedBy === undefined ? [] : [change.appliedBy]);
  if (named.is === 'stranger') return named.decision;
  const appliedBy = change.appliedBy && named.asFiled(change.appliedBy);
  const fact = changed(of.verb, entry.fact, { ...change, ...known({ appliedBy }) });
  const happenedAt = ofThatMinute?.happenedAt ?? change.at ?? entry.happenedAt;
  if (happenedAt === entry.happenedAt && JSON.stringify(fact) === JSON.stringify(entry.fact)) {
    return unclear({ code: 'nothing-changed' });
  }
  // A release counts from when it was given: no correction moves it, nor makes one.
  if (fact.type === 'PartReleased' || releases(shop, { ...entry, fact, happenedAt })) {
    return unclear({ code: 'decision-stands' });
  }
  const wanted = fact.type === 'CanChecked' ? roleMissing(shop.crew, said.by, { say: 'check' }) : undefined;
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const put = [{ entry, fact, happenedAt }, ...namingsAfter(shop, entry, fact, happenedAt)];
  return accepted(
    ...put.map(
      ({ entry, fact, happenedAt }): NewEvent => ({
        streams: [entry.stream, ...entry.alsoUnder],
        happenedAt: said.now,
        body: { type: 'Amended', amends: entry.seq, to: { kind: 'corrected', fact, happenedAt }, why },
      }),
    ),
  );
}

/** A can that was named for a weighing gave at its time, and as much. */
function namingsAfter(shop: Shop, { seq }: Entry, fact: Fact, happenedAt: EpochMs) {
  const weights = Object.fromEntries(weighedIn(fact).map(({ component, grams }) => [component, grams]));
  return entriesIn(shop, ({ fact }) => fact.type === 'CanNamed' && fact.weighing === seq).flatMap((entry) => {
    if (entry.fact.type !== 'CanNamed') return [];
    const named: Fact = { ...entry.fact, ...recounted(entry.fact.fromCans, weights) };
    const isSame = happenedAt === entry.happenedAt && JSON.stringify(named) === JSON.stringify(entry.fact);
    return isSame ? [] : [{ entry, fact: named, happenedAt }];
  });
}

/** Whether with this in its place a part would be released that is not: moving a time decides nothing. */
function releases(shop: Shop, corrected: Entry): boolean {
  const part = nounOf(corrected.stream) === 'part' ? shop.parts.get(nameIn(corrected.stream)) : undefined;
  if (part === undefined || part.verdict?.is === 'released') return false;
  const entries = part.entries.map((entry) => (entry.seq === corrected.seq ? corrected : entry));
  return foldPart(part.name, entries.sort(inOrder)).verdict?.is === 'released';
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
  const batch = findBatch(shop, of.batch, () => true);
  return isFailed(batch) ? batch : batchStream(batch.number);
}

function changed(verb: AmendableVerb, was: Fact, change: Amendment): Fact {
  const fact = withWeights(was, change);
  const said = new Map<string, unknown>(Object.entries(change));
  const figures = (amendsOf(verb) ?? []).filter(({ name }) => said.has(name));
  if (figures.length === 0) return fact;
  return Fact.parse({
    ...fact,
    ...Object.fromEntries(figures.map(({ name, fact: field }) => [field, said.get(name)])),
  });
}

/** A weight corrects the part that it names, or the only one. */
function withWeights(fact: Fact, { partAGrams, partBGrams, grams: only }: Amendment): Fact {
  if (fact.type === 'PartsWeighed') {
    return { ...fact, ...recounted(fact.fromCans, { 'part-a': partAGrams, 'part-b': partBGrams }) };
  }
  if (fact.type !== 'PartWeighed' && fact.type !== 'PartAdded') return fact;
  const corrected = (fact.component === 'part-a' ? partAGrams : partBGrams) ?? only ?? fact.grams;
  return { ...fact, grams: corrected, ...recounted(fact.fromCans, { [fact.component]: corrected }) };
}

/** What came from the cans follows the corrected weight: the last can of a part gave what the others did not. */
function recounted(
  from: readonly FromCan[] | undefined,
  weights: Partial<Readonly<Record<Component, Grams | undefined>>>,
): { readonly fromCans?: FromCan[] } {
  if (from === undefined) return {};
  const fromCans = from.map((each, i) => {
    const weight = weights[each.component];
    const isLast = !from.slice(i + 1).some((other) => other.component === each.component);
    if (weight === undefined || !isLast) return each;
    const others = from.slice(0, i).filter((other) => other.component === each.component);
    return { ...each, grams: grams(Math.max(0, weight - others.reduce((sum, other) => sum + other.grams, 0))) };
  });
  return { fromCans };
}
