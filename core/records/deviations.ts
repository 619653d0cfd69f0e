// What went against a rule, by the record as it now stands: the same rules that object before an act are asked again
// over every act, so that a correction makes and unmakes deviations by itself.

import type { Batch } from '../batch/batch.ts';
import { coatFromBatchRules, filterRules, mixRules, stirRules } from '../batch/batch-rules.ts';
import { ratioError } from '../calc/mixing.ts';
import { isRefused } from '../calc/refusal.ts';
import type { Entry } from '../history.ts';
import { nameIn, nounOf } from '../ids.ts';
import type { Objection } from '../objections.ts';
import { foldPart, type Part } from '../part/part.ts';
import { batchOf } from '../part/part-decide.ts';
import { coatOnPartRules, cureRules, outRules, type PartCase, releaseRules } from '../part/part-rules.ts';
import { airServing } from '../place/place.ts';
import { mixRatio } from '../products/sheet.ts';
import { objectionsTo } from '../rules.ts';
import { airLog, entriesIn, type Shop } from '../shop.ts';

export interface Deviation {
  readonly entry: Entry;
  readonly objection: Objection;
  /** Why it was allowed beforehand, if it was. */
  readonly permitted: string | undefined;
}

/** Of everything loaded, in the order in which it was recorded. */
export function deviationsIn(shop: Shop): readonly Deviation[] {
  return entriesIn(shop).flatMap((entry) =>
    objectionsAgainst(shop, entry).map((objection) => ({ entry, objection, permitted: entry.saidWith.permitted })),
  );
}

function objectionsAgainst(shop: Shop, entry: Entry): readonly Objection[] {
  switch (nounOf(entry.stream)) {
    case 'batch': {
      const batch = shop.batches.get(Number(nameIn(entry.stream)));
      return batch === undefined ? [] : againstBatch(shop, batch, entry);
    }
    case 'part': {
      const part = shop.parts.get(nameIn(entry.stream));
      return part === undefined ? [] : againstPart(shop, part, entry);
    }
    default:
      return [];
  }
}

function againstBatch(shop: Shop, batch: Batch, entry: Entry): readonly Objection[] {
  const { fact, happenedAt: at } = entry;
  const situation = { batch, air: airLog(shop, batch.place), at };
  switch (fact.type) {
    case 'BatchOpened': {
      const limitMinutes = shop.crew.airLimitMinutes;
      const serving = airServing(shop.places.get(batch.place), at, limitMinutes);
      // A reading corrected since counts as corrected; the batch's own copy only where the place has none.
      const read = {
        ...serving,
        celsius: serving.celsius ?? fact.air?.celsius,
        relativeHumidityPercent: serving.relativeHumidityPercent ?? fact.air?.relativeHumidityPercent,
      };
      return objectionsTo(mixRules, { sheet: fact.sheet, grams: fact.plannedGrams, limitMinutes, ...read });
    }
    case 'PartsWeighed': {
      const error = ratioError(mixRatio(batch.sheet.ratio), fact);
      const { tolerancePercent } = batch.sheet.ratio;
      if (!isRefused(error) && Math.abs(error) * 100 <= tolerancePercent) return [];
      return [
        {
          code: 'ratio-out',
          errorPercent: isRefused(error) ? Number.POSITIVE_INFINITY : error * 100,
          tolerancePercent,
        },
      ];
    }
    case 'StirrerStarted':
      return objectionsTo(stirRules, situation);
    case 'MixFiltered':
      return objectionsTo(filterRules, situation);
    default:
      return [];
  }
}

function againstPart(shop: Shop, part: Part, entry: Entry): readonly Objection[] {
  const { fact, happenedAt: at } = entry;
  const before = foldPart(
    part.name,
    part.entries.slice(
      0,
      part.entries.findIndex(({ seq }) => seq === entry.seq),
    ),
  );
  if (fact.type === 'CoatApplied') {
    const batch = shop.batches.get(fact.batch);
    if (batch === undefined) return [];
    const read = airServing(shop.places.get(batch.place), at, shop.crew.airLimitMinutes);
    return [
      ...objectionsTo(coatFromBatchRules, { batch, air: airLog(shop, batch.place), at, method: fact.method }),
      ...objectionsTo(coatOnPartRules, { part: before, sheet: batch.sheet, at, ...read }),
    ];
  }
  if (before === undefined) return [];
  const batch = batchOf(shop, before);
  const situation: PartCase = { part: before, sheet: batch?.sheet, air: airLog(shop, batch?.place), at };
  switch (fact.type) {
    case 'CureStarted': {
      const set = fact.setCelsius === undefined ? {} : { setCelsius: fact.setCelsius };
      const way = fact.way === 'oven' ? { kind: 'oven' as const, ...set } : { kind: 'room' as const };
      return objectionsTo(cureRules, { ...situation, way });
    }
    case 'CureEnded':
      return objectionsTo(outRules, situation);
    case 'PartReleased':
      return objectionsTo(releaseRules, situation);
    default:
      return [];
  }
}
