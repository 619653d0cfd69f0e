// What an act says once it is put right, and what was told of the same thing elsewhere and follows it.

import { weighedIn } from '../batch/unnamed-cans.ts';
import type { FromCan } from '../can/can-events.ts';
import type { Component } from '../components.ts';
import { type Entry, Fact, type FactOf } from '../history.ts';
import type { Sheet } from '../products/sheet.ts';
import { entriesIn, type Shop } from '../shop.ts';
import { type EpochMs, type Grams, grams } from '../units.ts';
import { amendsOf } from '../verbs/amends.ts';
import type { AmendableVerb, Amendment } from '../verbs/correction-verbs.ts';

export interface Corrected {
  readonly entry: Entry;
  readonly fact: Fact;
  readonly happenedAt: EpochMs;
}

/** `sheet`: what is really mixed, of a batch whose product is put right. */
export function correctedFact(verb: AmendableVerb, was: Fact, change: Amendment, sheet: Sheet | undefined): Fact {
  const fact = withWeights(was, change);
  const said = new Map<string, unknown>(Object.entries({ ...change, ...(sheet && { ofSheet: sheet }) }));
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

/** Told of the same thing elsewhere: a can that was named for a weighing, the cans of a delivery that are open. */
export function following(shop: Shop, was: Entry, { fact, happenedAt }: Corrected): readonly Corrected[] {
  if (was.fact.type === 'StockReceived' && fact.type === 'StockReceived')
    return cansOfDelivery(shop, was, was.fact, fact);
  return namingsAfter(shop, was, fact, happenedAt);
}

/** A can that was named for a weighing gave at its time, and as much. */
function namingsAfter(shop: Shop, { seq }: Entry, fact: Fact, happenedAt: EpochMs): readonly Corrected[] {
  const weights = Object.fromEntries(weighedIn(fact).map(({ component, grams }) => [component, grams]));
  return entriesIn(shop, ({ fact }) => fact.type === 'CanNamed' && fact.weighing === seq).flatMap((entry) => {
    if (entry.fact.type !== 'CanNamed') return [];
    const named: Fact = { ...entry.fact, ...recounted(entry.fact.fromCans, weights) };
    const isSame = happenedAt === entry.happenedAt && JSON.stringify(named) === JSON.stringify(entry.fact);
    return isSame ? [] : [{ entry, fact: named, happenedAt }];
  });
}

type Delivery = FactOf<'StockReceived'>;

/** What was read off the delivery's label, where the can said the same. */
function cansOfDelivery(shop: Shop, { seq }: Entry, was: Delivery, is: Delivery): readonly Corrected[] {
  return entriesIn(shop, ({ fact }) => fact.type === 'CanOpened' && fact.delivery === seq).flatMap((entry) => {
    const { fact: can } = entry;
    if (can.type !== 'CanOpened') return [];
    const fact = {
      ...can,
      ...(can.lot === was.lot && { lot: is.lot }),
      ...(can.expires === was.expires && is.expires !== undefined && { expires: is.expires }),
    };
    const isSame = fact.lot === can.lot && fact.expires === can.expires;
    return isSame ? [] : [{ entry, fact, happenedAt: entry.happenedAt }];
  });
}
