// Corrects the last act of a kind on one batch, can, part or place: only what is named changes; who, when and why are kept.

import { findBatch } from '../batch/batch-decide.ts';
import { findCan } from '../can/can-decide.ts';
import type { FromCan } from '../can/can-events.ts';
import type { Amendment, AmendTarget, CommandOf, Verb } from '../commands.ts';
import type { Component } from '../components.ts';
import { mayNotSettle, roleShort } from '../crew/who-may-set.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { type Entry, type Fact, inOrder } from '../history.ts';
import {
  batchStream,
  canStream,
  defaultPlace,
  nameIn,
  nounOf,
  numberIn,
  partStream,
  placeStream,
  type StreamId,
} from '../ids.ts';
import { foldPart } from '../part/part.ts';
import { entriesIn, livePartNames, type Shop } from '../shop.ts';
import { type Grams, grams } from '../units.ts';

/** Whether a fact is what a verb left behind, and one that this change could put right. */
type Leaves = (fact: Fact, change: Amendment) => boolean;

const isA =
  (type: Fact['type']): Leaves =>
  (fact) =>
    fact.type === type;

const isSeen =
  (seen: 'thick' | 'gelled'): Leaves =>
  (fact) =>
    fact.type === 'MixThickened' && fact.seen === seen;

const isFilm =
  (state: 'wet' | 'dry'): Leaves =>
  (fact) =>
    fact.type === 'FilmRead' && fact.state === state;

/** A part weighed alone is put right by its own weight, or by a time. */
const isWeighing: Leaves = (fact, { partAGrams, partBGrams }) => {
  if (fact.type !== 'PartWeighed') return fact.type === 'PartsWeighed';
  const named = partAGrams !== undefined || partBGrams !== undefined;
  return !named || (fact.component === 'part-a' ? partAGrams : partBGrams) !== undefined;
};

/** What a verb leaves behind; verbs without it cannot be amended. The reader's table has the same verbs, a test says. */
export const leavesOf: Readonly<Partial<Record<Verb, Leaves>>> = {
  mix: isA('BatchOpened'),
  weigh: isWeighing,
  add: isA('PartAdded'),
  open: isA('CanOpened'),
  lid: isA('LidOff'),
  blanket: isA('CanBlanketed'),
  check: isA('CanChecked'),
  prestir: isA('CanStirred'),
  discard: isA('CanDiscarded'),
  stir: isA('StirrerStarted'),
  stop: isA('StirrerStopped'),
  cover: isA('PotCovered'),
  uncover: isA('PotUncovered'),
  filter: isA('MixFiltered'),
  catch: isA('MixCaught'),
  thick: isSeen('thick'),
  gel: isSeen('gelled'),
  empty: isA('PotEmptied'),
  prep: isA('SurfacePrepared'),
  coat: isA('CoatApplied'),
  dry: isA('FilmDry'),
  cure: isA('CureStarted'),
  temp: isA('PartTemperatureRead'),
  door: isA('DoorOpened'),
  out: isA('CureEnded'),
  wet: isFilm('wet'),
  film: isFilm('dry'),
  release: isA('PartReleased'),
  hold: isA('PartHeld'),
  air: isA('AirRead'),
  surface: isA('SurfaceRead'),
  night: isA('LowestRead'),
};

/** How an act is named where it is corrected; `undefined` where nothing in it can be. */
export function amendTargetOf({ stream, fact }: Pick<Entry, 'stream' | 'fact'>): AmendTarget | undefined {
  const verbs = Object.keys(leavesOf) as (keyof typeof leavesOf)[];
  const verb = verbs.find((each) => leavesOf[each]?.(fact, {}) === true);
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
    case 'session':
    case 'crew':
      return undefined;
  }
}

export function decideAmend(shop: Shop, said: Said<CommandOf<'amend'>>): Decision {
  const { of, change, why } = said.command;
  const stream = streamOf(shop, of);
  if (typeof stream !== 'string') return stream;
  const leaves = leavesOf[of.verb];
  const candidates = entriesIn(shop).filter(
    (candidate) => candidate.stream === stream && leaves?.(candidate.fact, change) === true,
  );
  const ofThatMinute = targetAt(candidates, change);
  const entry = ofThatMinute ?? candidates.at(-1);
  if (entry === undefined) return unclear({ code: 'nothing-to-amend' });
  if (change.at !== undefined && change.at > said.now) {
    return unclear({ code: 'in-the-future', at: change.at, now: said.now });
  }
  const fact = changed(entry.fact, change);
  const happenedAt = ofThatMinute?.happenedAt ?? change.at ?? entry.happenedAt;
  if (happenedAt === entry.happenedAt && JSON.stringify(fact) === JSON.stringify(entry.fact)) {
    return unclear({ code: 'nothing-changed' });
  }
  // A release counts from when it was given: no correction moves it, nor makes one.
  if (fact.type === 'PartReleased' || releases(shop, { ...entry, fact, happenedAt })) {
    return unclear({ code: 'decision-stands' });
  }
  const wanted = fact.type === 'CanChecked' ? roleShort(shop.crew, said.by, 'lead') : undefined;
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  return {
    kind: 'accepted',
    events: [
      {
        streams: [entry.stream, ...entry.alsoUnder],
        happenedAt: said.now,
        body: { type: 'Amended', amends: entry.seq, to: { kind: 'corrected', fact, happenedAt }, why },
        saidWith: { despite: [] },
      },
    ],
  };
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

function streamOf(shop: Shop, of: AmendTarget): StreamId | Extract<Decision, { kind: 'unclear' }> {
  if (of.part !== undefined) {
    return shop.parts.has(of.part)
      ? partStream(of.part)
      : { kind: 'unclear', unclear: { code: 'no-such-part', part: of.part, live: livePartNames(shop) } };
  }
  if (of.verb === 'air' || of.verb === 'surface' || of.verb === 'night') {
    return placeStream(of.place ?? defaultPlace);
  }
  if (isCanVerb(of.verb)) {
    const can = findCan(shop, of.can, () => true);
    return 'kind' in can ? can : canStream(can.number);
  }
  const batch = findBatch(shop, of.batch, () => true);
  return 'kind' in batch ? batch : batchStream(batch.number);
}

function isCanVerb(verb: Verb): boolean {
  switch (verb) {
    case 'open':
    case 'lid':
    case 'blanket':
    case 'check':
    case 'prestir':
    case 'discard':
      return true;
    default:
      return false;
  }
}

function changed(fact: Fact, change: Amendment): Fact {
  switch (fact.type) {
    case 'PartsWeighed':
      return {
        ...fact,
        partAGrams: change.partAGrams ?? fact.partAGrams,
        partBGrams: change.partBGrams ?? fact.partBGrams,
        ...recounted(fact.fromCans, { 'part-a': change.partAGrams, 'part-b': change.partBGrams }),
      };
    case 'PartWeighed':
    case 'PartAdded': {
      const more = fact.component === 'part-a' ? change.partAGrams : change.partBGrams;
      const corrected = more ?? change.grams ?? fact.grams;
      return { ...fact, grams: corrected, ...recounted(fact.fromCans, { [fact.component]: corrected }) };
    }
    case 'CanOpened':
    case 'MixCaught':
      return change.grams === undefined ? fact : { ...fact, grams: change.grams };
    case 'CoatApplied':
      return { ...fact, method: change.method ?? fact.method };
    case 'PotEmptied':
      return change.leftGrams === undefined ? fact : { ...fact, leftGrams: change.leftGrams };
    case 'AirRead': {
      const celsius = change.celsius ?? fact.celsius;
      const relativeHumidityPercent = change.relativeHumidityPercent ?? fact.relativeHumidityPercent;
      return {
        type: 'AirRead',
        ...(celsius === undefined ? {} : { celsius }),
        ...(relativeHumidityPercent === undefined ? {} : { relativeHumidityPercent }),
      };
    }
    case 'SurfaceRead':
    case 'PartTemperatureRead':
      return { ...fact, celsius: change.celsius ?? fact.celsius };
    case 'LowestRead':
      return { ...fact, lowestCelsius: change.celsius ?? fact.lowestCelsius };
    case 'CureStarted':
      return change.celsius === undefined ? fact : { ...fact, setCelsius: change.celsius };
    case 'FilmRead':
      return change.filmMicrometres === undefined ? fact : { ...fact, micrometres: [...change.filmMicrometres] };
    default:
      return fact;
  }
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
