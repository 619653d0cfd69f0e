// What went against a rule when cans were opened, checked and poured from, and when a pot was weighed or added to.

import { before } from '../as-it-stands.ts';
import { type Batch, foldBatch } from '../batch/batch.ts';
import { offRatio } from '../batch/batch-rules.ts';
import { poursOf } from '../batch/weigh-decide.ts';
import { addRules, namedRules, type WeighCase, weighRules } from '../batch/weigh-rules.ts';
import { type Can, foldCan } from '../can/can.ts';
import { blanketRules, canStirRules, checkRules, lidRules, openRules, shutRules } from '../can/can-rules.ts';
import { localDay } from '../crew/local-day.ts';
import { isFor } from '../event-readers.ts';
import type { Entry, FactOf } from '../history.ts';
import { recalledAt } from '../lot-recalls.ts';
import type { Objection } from '../objections.ts';
import { objectionsTo } from '../rules.ts';
import { airLog, type Shop } from '../shop.ts';
import { lackingStep } from '../steps/step-rules.ts';

export function againstCan(shop: Shop, can: Can, entry: Entry): readonly Objection[] {
  const { fact, happenedAt: at } = entry;
  if (!isFor('can-rules', fact)) return [];
  switch (fact.type) {
    case 'CanOpened': {
      const { sheet, component, lot, expires, handling } = fact;
      const onDate = localDay(shop.crew.zone, at);
      const recalled = recalledAt(shop.crew.recalls, { lot, component }, at);
      return objectionsTo(openRules, { sheet, component, lot, recalled, expires, handling, onDate }, entry.edition);
    }
    case 'CanChecked': {
      const { role, nobodyLeads = false } = fact;
      const found = { can: canBefore(can, entry), at };
      return objectionsTo(checkRules, { ...found, role, nobodyLeads, who: [] }, entry.edition);
    }
    case 'LidOff': {
      const { sheet, component } = can;
      return objectionsTo(
        lidRules,
        { sheet, component, handling: fact.handling, can: canBefore(can, entry), at },
        entry.edition,
      );
    }
    case 'LidOn':
      return objectionsTo(shutRules, { can: canBefore(can, entry), handling: fact.handling, at }, entry.edition);
    case 'CanBlanketed':
      return objectionsTo(blanketRules, { can: canBefore(can, entry), at }, entry.edition);
    case 'CanStirred':
      return objectionsTo(canStirRules, { can: canBefore(can, entry), handling: undefined, at }, entry.edition);
  }
}

/** The can as the entry found it. */
const canBefore = (can: Can, entry: Entry): Can => foldCan(before(can.entries, entry)) ?? can;

/** `found`: the batch as the entry found it. */
export function againstWeighing(
  shop: Shop,
  batch: Batch,
  found: Batch,
  entry: Entry,
  fact: FactOf<'PartsWeighed' | 'PartWeighed' | 'PartAdded'>,
): readonly Objection[] {
  const { happenedAt: at } = entry;
  const situation: WeighCase = {
    batch: found,
    air: airLog(shop, batch.place),
    at,
    components: fact.type === 'PartsWeighed' ? ['part-a', 'part-b'] : [fact.component],
    lacking: lackingStep(shop.crew.stepAnswers, batch, 'weigh', at),
    pours: poursOf(shop, batch, fact.fromCans ?? [], at, { found: (can) => canBefore(can, entry) }),
  };
  const { edition } = entry;
  const against =
    fact.type === 'PartAdded'
      ? objectionsTo(addRules, { ...situation, component: fact.component, grams: fact.grams }, edition)
      : objectionsTo(weighRules, situation, edition);
  return [...against, ...ratioOut(batch, found, entry)];
}

/** Of a pour whose can was named afterwards. */
export function againstNaming(shop: Shop, batch: Batch, entry: Entry, fact: FactOf<'CanNamed'>): readonly Objection[] {
  const found = (can: Can) => canBefore(can, entry);
  const pours = poursOf(shop, batch, fact.fromCans, entry.happenedAt, { found });
  return objectionsTo(namedRules, { pours }, entry.edition);
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
  const off = offRatio(batch.sheet, after);
  return off === undefined ? [] : [off];
}
