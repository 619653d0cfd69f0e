// Which spot each of some readings is of, where it was not said: the next that lacks some.

import type { Micrometres } from '../units.ts';
import type { SpotSaid } from '../verbs/said.ts';
import type { SetJudged } from './film-set-judge.ts';
import { without } from './film-sets.ts';
import type { FilmTerms } from './film-terms.ts';

export interface SpotNumbered {
  readonly spot: number;
  readonly near?: number | undefined;
  readonly micrometres: readonly Micrometres[];
  readonly dropped?: readonly Micrometres[] | undefined;
}

/** Those of one reading each that follow one another are recorded together. */
export interface SpotsNumbered extends SpotNumbered {
  readonly each?: true | undefined;
}

export function joined(spots: readonly SpotNumbered[], { readingsOfSpot }: FilmTerms): readonly SpotsNumbered[] {
  if (readingsOfSpot > 1) return spots;
  const found: SpotsNumbered[] = [];
  for (const spot of spots) {
    const before = found.at(-1);
    const follows =
      before !== undefined &&
      isPlain(before) &&
      isPlain(spot) &&
      (before.each === true || before.micrometres.length === 1) &&
      spot.micrometres.length === 1 &&
      spot.spot === before.spot + before.micrometres.length;
    if (!follows) found.push(spot);
    else found.splice(-1, 1, { ...before, each: true, micrometres: [...before.micrometres, ...spot.micrometres] });
  }
  return found;
}

const isPlain = ({ near, dropped }: SpotNumbered): boolean => near === undefined && dropped === undefined;

export function numbered(
  told: readonly SpotSaid[],
  terms: FilmTerms,
  set: SetJudged | undefined,
): readonly SpotNumbered[] {
  const has = new Map((set?.spots ?? []).map(({ number, readings }) => [number, readings.length]));
  return told.flatMap(({ spot, near, micrometres: read, dropped }) => {
    // Those that are left out may be told among the others as well.
    const micrometres = without(read, dropped ?? []);
    const isOfNext = micrometres.length >= terms.readingsOfSpot || micrometres.length < read.length;
    // Of a rule that takes one reading a spot the others are of those behind it.
    if (
      spot !== undefined &&
      told.length === 1 &&
      terms.readingsOfSpot === 1 &&
      near === undefined &&
      dropped === undefined
    )
      return micrometres.map((reading, i) => ({ spot: spot + i, micrometres: [reading] }));
    const named =
      spot ?? (near === undefined && dropped === undefined ? undefined : besides(has, terms, near, isOfNext));
    const each =
      named === undefined ? nextOnes(micrometres, terms, has) : [{ spot: named, near, micrometres, dropped }];
    for (const one of each) has.set(one.spot, (has.get(one.spot) ?? 0) + one.micrometres.length);
    return each;
  });
}

/** What marks a bare spot comes behind those that are asked for; a reading in place of one left out is of the spot told last. */
function besides(
  has: ReadonlyMap<number, number>,
  { spots, readingsOfSpot }: FilmTerms,
  near: number | undefined,
  isOfNext: boolean,
): number {
  const highest = Math.max(0, ...has.keys());
  if (near !== undefined) return Math.max(spots, highest) + 1;
  return isOfNext ? firstOpen(has, readingsOfSpot) : Math.max(1, highest);
}

/** More than would fill one spot are several, cut as the rule counts them. */
function nextOnes(
  micrometres: readonly Micrometres[],
  { readingsOfSpot: full }: FilmTerms,
  before: ReadonlyMap<number, number>,
): readonly SpotNumbered[] {
  const has = new Map(before);
  const found: SpotNumbered[] = [];
  let left = micrometres;
  while (left.length > 0) {
    const spot = firstOpen(has, full);
    const lacks = full - (has.get(spot) ?? 0);
    // A spot may have more readings than it needs.
    const take = full > 1 && left.length < 2 * full ? left.length : lacks;
    found.push({ spot, micrometres: left.slice(0, take) });
    has.set(spot, (has.get(spot) ?? 0) + take);
    left = left.slice(take);
  }
  return found;
}

function firstOpen(has: ReadonlyMap<number, number>, full: number): number {
  let spot = 1;
  while ((has.get(spot) ?? 0) >= full) spot += 1;
  return spot;
}
