// Parts that have gone out, by their name however it is spelt, or by the number that it ends in: what went on one is asked for a year
// later. The record is searched where somebody names what is not here, and only then.

import type { PartName } from '../../../core/ids.ts';
import { withoutAccents } from '../typed/without-accents.ts';

export interface PartsGone {
  readonly called: (name: string) => readonly PartName[];
  readonly ending: (number: string) => readonly PartName[];
}

/** `names`: of all that the record has of this crew, those that are here among them. */
export function partsGone(names: () => readonly PartName[], here: readonly PartName[]): PartsGone {
  let found: readonly PartName[] | undefined;
  const all = (): readonly PartName[] => {
    if (found === undefined) {
      const live = new Set(here);
      found = names().filter((name) => !live.has(name));
    }
    return found;
  };
  return {
    called: (name) => {
      const wanted = bareName(name);
      return all().filter((each) => bareName(each) === wanted);
    },
    ending: (number) => all().filter((name) => endsIn(name, number)),
  };
}

export const endsIn = (part: PartName, number: string | undefined): boolean => /\d+$/.exec(part)?.[0] === number;

/** `impeller 7`, `Impeller-07`. */
export const bareName = (name: string): string =>
  withoutAccents(name.toLowerCase())
    .replace(/[^a-z0-9]/g, '')
    .replace(/(?<=\D)0+(?=\d)/, '');
