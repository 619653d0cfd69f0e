// A dry film told spot by spot: each is recorded as it is told, by whoever tells it, and together they are a set. What was left
// out of a spot, as its rule lets one, stays with it.

import type { Micrometres } from '../units.ts';
import type { FilmReading, Part } from './part.ts';

export interface SpotRead {
  readonly number: number;
  /** Beside the spot of this number, which failed: it marks how far that goes, and is no part of the mean. */
  readonly near: number | undefined;
  /** As the gauge showed them. */
  readonly readings: readonly Micrometres[];
  readonly dropped: readonly Micrometres[];
}

export interface FilmSet {
  readonly number: number;
  readonly spots: readonly SpotRead[];
  /** What the bare metal alone makes the gauge show. */
  readonly baseMicrometres: Micrometres | undefined;
  /** Why it was read again, after one that failed. */
  readonly retest: string | undefined;
}

/** Of the coat that is on it, in the order in which they were begun. */
export function filmSets({ films, coats }: Pick<Part, 'films' | 'coats'>): readonly FilmSet[] {
  const coat = coats.at(-1);
  return coat === undefined ? [] : setsIn(films.filter(({ at }) => at >= coat.at));
}

export function setsIn(films: readonly FilmReading[]): readonly FilmSet[] {
  const sets = new Map<number, FilmSet>();
  for (const { told, micrometres } of films) {
    if (told === undefined) continue;
    const before = sets.get(told.set);
    sets.set(told.set, {
      number: told.set,
      spots: spotsIn(told, micrometres).reduce(
        (spots, each) => withReadings(spots, { ...told, spot: each.spot }, each.micrometres),
        before?.spots ?? [],
      ),
      baseMicrometres: told.baseMicrometres ?? before?.baseMicrometres,
      retest: told.retest ?? before?.retest,
    });
  }
  return [...sets.values()];
}

type Told = NonNullable<FilmReading['told']>;

/** Which readings are of which spot. */
export function spotsIn(
  { spot, each }: Pick<Told, 'spot' | 'each'>,
  micrometres: readonly Micrometres[],
): readonly { readonly spot: number; readonly micrometres: readonly Micrometres[] }[] {
  return each === true
    ? micrometres.map((reading, i) => ({ spot: spot + i, micrometres: [reading] }))
    : [{ spot, micrometres }];
}

function withReadings(
  spots: readonly SpotRead[],
  { spot: number, near, dropped = [] }: Told,
  micrometres: readonly Micrometres[],
): readonly SpotRead[] {
  const before = spots.find((each) => each.number === number);
  // What was told before, and is left out now.
  const earlier = without(before?.readings ?? [], dropped);
  const spot: SpotRead = {
    number,
    near: near ?? before?.near,
    readings: [...earlier, ...micrometres],
    dropped: [...(before?.dropped ?? []), ...dropped],
  };
  return [...spots.filter((each) => each.number !== number), spot].sort((a, b) => a.number - b.number);
}

/** Each of them once. */
export function without(readings: readonly Micrometres[], dropped: readonly Micrometres[]): readonly Micrometres[] {
  const kept = [...readings];
  for (const one of dropped) {
    const at = kept.indexOf(one);
    if (at >= 0) kept.splice(at, 1);
  }
  return kept;
}
