// A spot of a dry film put right by its number: of several that one line told it alone changes, and one that several lines told is what
// it is put right to.

import type { Entry, Fact, FactOf } from '../history.ts';
import { spotsIn } from '../part/film-sets.ts';
import { entriesIn, type Shop } from '../shop.ts';
import type { Amendment, AmendTarget } from '../verbs/correction-verbs.ts';

export const isOfSpot = (fact: Fact, { spot }: Pick<AmendTarget, 'spot'>): boolean =>
  spot === undefined || (fact.type === 'FilmRead' && spotsOf(fact).includes(spot));

function spotsOf({ spot, each, micrometres }: FactOf<'FilmRead'>): readonly number[] {
  return spot === undefined ? [] : spotsIn({ spot, each }, micrometres).map((one) => one.spot);
}

/** What the whole act says then. */
export function amongOthers(fact: Fact, { spot }: AmendTarget, change: Amendment): Amendment {
  const readings = change.filmMicrometres;
  if (fact.type !== 'FilmRead' || fact.each !== true || fact.spot === undefined || readings === undefined)
    return change;
  const at = spot === undefined ? undefined : spot - fact.spot;
  if (at === undefined) return change;
  const before = fact.micrometres;
  return { ...change, filmMicrometres: [...before.slice(0, at), ...readings, ...before.slice(at + readings.length)] };
}

/** The other lines that told it. */
export function besidesOfSpot(shop: Shop, { seq, stream, fact }: Entry, { spot }: AmendTarget): readonly Entry[] {
  const set = fact.type === 'FilmRead' ? fact.set : undefined;
  if (spot === undefined || set === undefined) return [];
  return entriesIn(shop, (other) => other.stream === stream && other.seq !== seq).filter(
    (other) =>
      other.fact.type === 'FilmRead' &&
      other.fact.set === set &&
      other.fact.each === undefined &&
      isOfSpot(other.fact, { spot }),
  );
}
