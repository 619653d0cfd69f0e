// What went against a rule, by the record as it now stands: the same rules that object before an act are asked again
// over every act, so that a correction makes and unmakes deviations by itself.

import { before } from '../as-it-stands.ts';
import { coatAtWorstRules } from '../batch/at-worst.ts';
import { type Batch, foldBatch } from '../batch/batch.ts';
import {
  catchRules,
  coatFromBatchRules,
  filterRules,
  mixRules,
  potRules,
  stirRules,
  stopRules,
} from '../batch/batch-rules.ts';
import { firstCleaning } from '../batch/gear-to-clean.ts';
import { editionFor } from '../batch/judge-anew.ts';
import { lidRules } from '../batch/lid.ts';
import { recalledIn } from '../can/recalled-in.ts';
import { coatClimate } from '../coat/coat-climate.ts';
import { vesselsFreeAt } from '../coat/vessels-free.ts';
import { againstBegun } from '../crew/alarm-rules.ts';
import { keepsPrep } from '../crew/keeps-prep.ts';
import { scalesAt } from '../crew/scales.ts';
import { isFor } from '../event-readers.ts';
import { isSprayed } from '../film-tests.ts';
import type { Entry, FactOf } from '../history.ts';
import { nameIn, nounOf, numberIn } from '../ids.ts';
import { coatRestsOn, readingCase, readingRules, releaseRestsOn } from '../instrument/rests-on-readings.ts';
import { known } from '../known.ts';
import { permittedFor } from '../lifts.ts';
import type { Objection } from '../objections.ts';
import type { Reading } from '../part/answered.ts';
import { askedOf, failedBy, isMarked } from '../part/failed-readings.ts';
import { filmSheet } from '../part/film-rule.ts';
import { foldPart, type Part } from '../part/part.ts';
import { neededFor } from '../part/part-decide.ts';
import { coatOnPartRules, cureRules, dryRules, outRules, type PartCase } from '../part/part-rules.ts';
import { askedForRelease, halfTold } from '../part/release-asked.ts';
import { dispositionRules, heldRules, leftRules, releaseRules } from '../part/release-rules.ts';
import { surfaceAsked } from '../part/surface-limits.ts';
import { airServing } from '../place/place.ts';
import { type Edition, editions } from '../rule-editions.ts';
import { objectionsTo, type Rule } from '../rules.ts';
import { cleaningRules } from '../session/cleaning-rules.ts';
import { againstCoatUnderBrief, againstSession } from '../session/session-deviations.ts';
import { standing } from '../settled.ts';
import { airLog, batchOf, entriesIn, type Shop } from '../shop.ts';
import { isFlushedWith } from '../steps/alcohol.ts';
import { bottleIsKept, lackingBottle, lackingStep, stepIsKept } from '../steps/step-rules.ts';
import { againstCan, againstNaming, againstWeighing } from './material-deviations.ts';

export interface Deviation {
  readonly entry: Entry;
  readonly objection: Objection;
  /** Why it was allowed beforehand, if it was. */
  readonly permitted: string | undefined;
}

/** Of what is loaded and wanted, in the order in which it was recorded: the rules are asked over no other entry. */
export function deviationsIn(shop: Shop, wanted: (entry: Entry) => boolean = () => true): readonly Deviation[] {
  return entriesIn(shop, wanted).flatMap((entry) =>
    [...objectionsAgainst(shop, asJudged(shop, entry)), ...againstBegun(shop, entry)].map((objection) => ({
      entry,
      objection,
      permitted: permittedFor(entry.saidWith, objection),
    })),
  );
}

/** What a correction or a late reading has made wrong: deviations of acts that had none of that code before, or lay elsewhere. */
export function newDeviations(before: Shop, after: Shop): readonly Deviation[] {
  const name = ({ entry, objection }: Deviation) => `${entry.seq} ${objection.code}`;
  const known = new Set(deviationsIn(before).map(name));
  const stood = new Set(entriesIn(before).map(({ seq }) => seq));
  const isMoved = ({ fact }: Entry) => fact.type === 'CoatApplied' && fact.toldOf !== undefined;
  const judged = deviationsIn(after, (entry) => stood.has(entry.seq) || isMoved(entry));
  return judged.filter((deviation) => !known.has(name(deviation)));
}

/** With the edition by which it is judged now. A coat is an act of its batch too. */
function asJudged(shop: Shop, entry: Entry): Entry {
  const stream = [entry.stream, ...entry.alsoUnder].find((each) => nounOf(each) === 'batch');
  const batch = stream === undefined ? undefined : shop.batches.get(numberIn(stream));
  return batch === undefined ? entry : { ...entry, edition: editionFor(batch, entry) };
}

/** By which editions of the rules these are judged, each once. */
export function editionsOf(shop: Shop, entries: readonly Entry[]): readonly Edition[] {
  const judging = new Set(entries.map((entry) => asJudged(shop, entry).edition));
  return editions.filter((edition) => judging.has(edition));
}

function objectionsAgainst(shop: Shop, entry: Entry): readonly Objection[] {
  const ofReading = objectionsTo(readingRules, readingCase(shop, entry), entry.edition);
  return [...ofReading, ...againstNoun(shop, entry)];
}

function againstNoun(shop: Shop, entry: Entry): readonly Objection[] {
  switch (nounOf(entry.stream)) {
    case 'batch': {
      const batch = shop.batches.get(numberIn(entry.stream));
      return batch === undefined ? [] : againstBatch(shop, batch, entry);
    }
    case 'can': {
      const can = shop.cans.get(numberIn(entry.stream));
      return can === undefined ? [] : againstCan(shop, can, entry);
    }
    case 'session': {
      const session = shop.sessions.get(numberIn(entry.stream));
      if (session === undefined) return [];
      const batch = session.batch === undefined ? undefined : shop.batches.get(session.batch);
      return [
        ...againstSession(shop, session, entry, vesselsFreeAt(shop, session)),
        ...(batch === undefined ? [] : againstBottle(shop, batch, entry)),
      ];
    }
    case 'part': {
      const part = shop.parts.get(nameIn(entry.stream));
      return part === undefined ? [] : againstPart(shop, part, entry);
    }
    case 'crew':
      return entry.fact.type === 'GearFlushed'
        ? objectionsTo([bottleIsKept], { lacking: lackingBottle(shop, entry) }, entry.edition)
        : [];
    // Readings are held against nothing but what they were made with: what rests on them is.
    case 'place':
    case 'instrument':
      return [];
  }
}

/** A flush with what the crew knew to be weaker than the sheet asks. */
function againstBottle(shop: Shop, batch: Batch, entry: Entry): readonly Objection[] {
  if (!isFlushedWith(batch.sheet, entry)) return [];
  const lacking = lackingStep(shop.crew.stepAnswers, batch, 'flush', entry.happenedAt);
  return objectionsTo([stepIsKept], { lacking }, entry.edition);
}

/** The batch as the entry found it. */
function batchBefore(batch: Batch, entry: Entry): Batch {
  return foldBatch(before(batch.entries, entry)) ?? batch;
}

function againstBatch(shop: Shop, batch: Batch, entry: Entry): readonly Objection[] {
  const { fact, happenedAt: at } = entry;
  if (!isFor('batch-rules', fact)) return [];
  const situation = { batch: batchBefore(batch, entry), air: airLog(shop, batch.place), at };
  const against = <Case>(rules: readonly Rule<Case>[], of: Case) => objectionsTo(rules, of, entry.edition);
  switch (fact.type) {
    case 'BatchOpened': {
      const limitMinutes = standing(shop.crew, 'air-limit').minutes;
      const serving = airServing(shop.places.get(batch.place), at, limitMinutes);
      const { sheet, plannedGrams, vesselLitres, air } = fact;
      return against(mixRules, {
        ...{ ...serving, sheet, grams: plannedGrams, vesselLitres, limitMinutes },
        scales: scalesAt(shop.crew, at),
        // A reading corrected since counts as corrected; the batch's own copy only where the place has none.
        celsius: serving.celsius ?? air?.celsius,
        relativeHumidityPercent: serving.relativeHumidityPercent ?? air?.relativeHumidityPercent,
      });
    }
    case 'PartsWeighed':
    case 'PartWeighed':
    case 'PartAdded':
      return againstWeighing(shop, batch, situation.batch, entry, fact);
    case 'CanNamed':
      return againstNaming(shop, batch, entry, fact);
    case 'MixCaught':
      return against(catchRules, { ...situation, caughtGrams: fact.grams });
    case 'PotUncovered':
      return against(lidRules, { batch, from: at });
    case 'GearFlushed':
      return [
        ...against(cleaningRules, { first: firstCleaning(situation.batch, fact.gear, at) }),
        ...againstBottle(shop, batch, entry),
      ];
    case 'StirrerStarted':
      return against(stirRules, situation);
    case 'StirrerStopped':
      return against(stopRules, situation);
    case 'PotEmptied':
      return against(potRules.empty, situation);
    case 'MixFiltered':
      return against(filterRules, { ...situation, filter: fact });
  }
}

function againstPart(shop: Shop, part: Part, entry: Entry): readonly Objection[] {
  const { fact, happenedAt: at } = entry;
  if (!isFor('part-rules', fact)) return [];
  const found = foldPart(part.name, before(part.entries, entry));
  const against = <Case>(rules: readonly Rule<Case>[], of: Case) => objectionsTo(rules, of, entry.edition);
  if (fact.type === 'CoatApplied') return againstCoat(shop, found, entry, fact);
  const batch = batchOf(shop, found);
  const situation: PartCase = { part: found, sheet: batch?.sheet, air: airLog(shop, batch?.place), at };
  switch (fact.type) {
    case 'FilmDry':
      return against(dryRules, situation);
    case 'CureStarted': {
      const { way: kind, setCelsius } = fact;
      const way = kind === 'oven' ? { kind, ...known({ setCelsius }) } : { kind };
      return against(cureRules, { ...situation, ...neededFor(shop, found, way, at) });
    }
    case 'CureEnded':
      return against(outRules, situation);
    case 'PartLeft':
      return against(leftRules, situation);
    case 'HoldAssigned':
      return against(heldRules, situation);
    case 'PartDisposed':
      return againstDisposed(shop, situation, fact, entry);
    case 'PartReleased':
      // Without what no hold names: nobody who released before readings held anything is marked anew.
      return against(releaseRules, {
        ...situation,
        unlifted: [],
        by: entry.by,
        asked: askedForRelease(shop, found, at, entry.edition),
        half: halfTold(found, filmSheet(shop, found, at)),
        ...releaseRestsOn(shop, found, at),
      });
    case 'FilmRead':
    case 'AdhesionTested':
    case 'SolventRubbed':
    case 'FilmTested':
    case 'PartTemperatureRead':
      return againstReading(shop, part, found, entry, fact);
  }
}

function againstCoat(shop: Shop, found: Part, entry: Entry, fact: FactOf<'CoatApplied'>): readonly Objection[] {
  const { happenedAt: at } = entry;
  const against = <Case>(rules: readonly Rule<Case>[], of: Case) => objectionsTo(rules, of, entry.edition);
  const batch = shop.batches.get(fact.batch);
  if (batch === undefined) return [];
  const { method, pass } = fact;
  const read = coatClimate(shop, batch.place, found, at);
  const air = airLog(shop, batch.place);
  const pot = batchBefore(batch, entry);
  const asked = surfaceAsked(shop, found, batch.sheet, at);
  const restsOn = coatRestsOn(shop, pot, found, at);
  return [
    ...against(coatFromBatchRules, { batch: pot, air, at, method, recalled: recalledIn(shop, pot, at) }),
    ...against(coatAtWorstRules, { batch: pot, air, at }),
    ...againstCoatUnderBrief(shop, entry),
    ...against(coatOnPartRules, {
      ...read,
      ...restsOn,
      ...{
        part: found,
        sheet: batch.sheet,
        air,
        at,
        method,
        pass,
        asked,
        keepsPrep: keepsPrep(shop.crew, entry.seq),
      },
    }),
  ];
}

/** Of those that held the part: what was read before readings did is not marked anew. */
function againstReading(shop: Shop, part: Part, found: Part, entry: Entry, fact: Reading): readonly Objection[] {
  const sheet = filmSheet(shop, found, entry.happenedAt);
  const asked = askedOf(shop, part, entry);
  const failed = failedBy(fact, { part, sheet, asked, films: found.films, sprayed: isSprayed(found) });
  return failed !== undefined && isMarked(part, failed.reading) ? [failed.objection] : [];
}

/** A concession is followed by its release, where all of it is asked. */
function againstDisposed(
  shop: Shop,
  situation: PartCase,
  disposed: FactOf<'PartDisposed'>,
  { by, edition }: Entry,
): readonly Objection[] {
  if (disposed.as === 'concession') return [];
  const asked = askedForRelease(shop, situation.part, situation.at, edition);
  const half = halfTold(situation.part, filmSheet(shop, situation.part, situation.at));
  return objectionsTo(
    dispositionRules[disposed.as],
    { ...situation, ...releaseRestsOn(shop, situation.part, situation.at), unlifted: [], by, disposed, asked, half },
    edition,
  );
}
