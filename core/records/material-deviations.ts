// What went against a rule when cans were opened, checked and poured from, and when a pot was weighed or added to.

import { before } from '../as-it-stands.ts';
import { type Batch, foldBatch } from '../batch/batch.ts';
import { isRatioWithin } from '../batch/batch-rules.ts';
import { addRules, type WeighCase, weighRules } from '../batch/weigh-rules.ts';
import { ratioError } from '../calc/mixing.ts';
import { type Can, foldCan, leftGrams } from '../can/can.ts';
import type { FromCan } from '../can/can-events.ts';
import { checkRules, openRules } from '../can/can-rules.ts';
import type { Component } from '../components.ts';
import { localDay } from '../crew/local-day.ts';
import { isFor } from '../event-readers.ts';
import { isFailed } from '../failed.ts';
import type { Entry, FactOf } from '../history.ts';
import type { Objection } from '../objections.ts';
import { mixRatio } from '../products/sheet.ts';
import { objectionsTo } from '../rules.ts';
import { airLog, type Shop } from '../shop.ts';
import { lackingStep } from '../steps/step-rules.ts';

export function againstCan(shop: Shop, can: Can, entry: Entry): readonly Objection[] {
  const { fact, happenedAt: at } = entry;
  if (!isFor('can-rules', fact)) return [];
  switch (fact.type) {
    case 'CanOpened': {
      const { sheet, component, lot, expires, handling } = fact;
      return objectionsTo(
        openRules,
        {
          sheet,
          component,
          lot,
          expires,
          handling,
          onDate: localDay(shop.crew.zone, at),
        },
        entry.edition,
      );
    }
    case 'CanChecked':
      return objectionsTo(
        checkRules,
        { can, role: fact.role, nobodyLeads: fact.nobodyLeads === true, who: [] },
        entry.edition,
      );
  }
}

/** `found`: the batch as the entry found it. */
export function againstWeighing(
  shop: Shop,
  batch: Batch,
  found: Batch,
  entry: Entry,
  fact: FactOf<'PartsWeighed' | 'PartWeighed' | 'PartAdded'>,
): readonly Objection[] {
  const { happenedAt: at } = entry;
  const situation = (components: readonly Component[], from: readonly FromCan[] | undefined): WeighCase => ({
    batch: found,
    air: airLog(shop, batch.place),
    at,
    components,
    lacking: lackingStep(shop.crew.stepAnswers, batch, 'weigh', at),
    pours: (from ?? []).flatMap(({ can: number, grams }) => {
      const can = canBefore(shop.cans.get(number), entry);
      const onDate = localDay(shop.crew.zone, at);
      return can === undefined ? [] : [{ can, grams, leftGrams: leftGrams(can), sheet: batch.sheet.id, at, onDate }];
    }),
  });
  switch (fact.type) {
    case 'PartsWeighed':
      return [
        ...objectionsTo(weighRules, situation(['part-a', 'part-b'], fact.fromCans), entry.edition),
        ...ratioOut(batch, found, entry),
      ];
    case 'PartWeighed':
      return [
        ...objectionsTo(weighRules, situation([fact.component], fact.fromCans), entry.edition),
        ...ratioOut(batch, found, entry),
      ];
    case 'PartAdded': {
      const { component, grams } = fact;
      const added = { ...situation([component], fact.fromCans), component, grams };
      return [...objectionsTo(addRules, added, entry.edition), ...ratioOut(batch, found, entry)];
    }
  }
}

/** The can as the entry found it. */
function canBefore(can: Can | undefined, entry: Entry): Can | undefined {
  return can && (foldCan(before(can.entries, entry)) ?? can);
}

/** Off by the figures after this entry, unless more was added before anything was coated: that is judged there. */
function ratioOut(batch: Batch, found: Batch, entry: Entry): readonly Objection[] {
  const index = batch.entries.findIndex(({ seq }) => seq === entry.seq);
  const after = foldBatch([...found.entries, entry])?.weighing;
  if (after === undefined) return [];
  const later = batch.entries.slice(index + 1);
  const coated = later.findIndex(({ fact }) => fact.type === 'CoatApplied');
  const uncoated = coated === -1 ? later : later.slice(0, coated);
  if (uncoated.some(({ fact }) => fact.type === 'PartAdded')) return [];
  const error = ratioError(mixRatio(batch.sheet.ratio), after);
  if (!isFailed(error) && isRatioWithin(error, batch.sheet.ratio)) return [];
  const errorPercent = isFailed(error) ? Number.POSITIVE_INFINITY : error * 100;
  return [{ code: 'ratio-out', errorPercent, tolerancePercent: batch.sheet.ratio.tolerancePercent }];
}
