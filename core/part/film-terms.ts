// What a rule asks of a set that is told spot by spot: how many spots, how many readings of each, what comes off a reading, and
// which readings may be left out.

import { filmCount, leastReadingsOfSpot, spotsOfArea } from '../calc/film-count.ts';
import { mostReadAgain, profileOff, readingsNeeded, thinnestNominal } from '../calc/film-nominal.ts';
import { isFailed } from '../failed.ts';
import type { FilmRule } from '../products/sheet-part.ts';
import { type Micrometres, micrometres, type SquareMetres, squareMetres } from '../units.ts';
import { type FilmRuleNamed, ruleNamed } from './film-acceptance.ts';
import type { FilmSet } from './film-sets.ts';

/** What is taken off each reading, and by whose word. */
export type TakenOff =
  | { readonly is: 'profile'; readonly micrometres: Micrometres }
  /** Its gauge was set on the profile. */
  | { readonly is: 'set-on-profile' }
  /** The bare metal's own reading. */
  | { readonly is: 'base'; readonly micrometres: Micrometres }
  | { readonly is: 'none' };

export interface FilmTerms {
  readonly rule: FilmRule;
  readonly named: FilmRuleNamed;
  readonly spots: number;
  readonly readingsOfSpot: number;
  /** Where it counts by area and nobody has said the part's, the fewest are asked, and nothing passes by them. */
  readonly isAreaTold: boolean;
  /** Of all readings of a set. */
  readonly mostDropped: number;
}

/** `undefined` where the rule refuses the film: nothing is asked by it. */
export function filmTerms(rule: FilmRule, area: SquareMetres | undefined): FilmTerms | undefined {
  const named = ruleNamed(rule);
  switch (rule.rule) {
    case 'own':
      return { rule, named, spots: rule.leastReadings, readingsOfSpot: 1, isAreaTold: true, mostDropped: 0 };
    case 'iso-19840': {
      if (rule.nominalMicrometres < thinnestNominal) return undefined;
      const spots = rule.spots ?? readingsNeeded(area ?? smallest);
      return isFailed(spots)
        ? undefined
        : {
            ...{ rule, named, spots, readingsOfSpot: 1, isAreaTold: area !== undefined || rule.spots !== undefined },
            mostDropped: Math.floor(spots * mostReadAgain),
          };
    }
    case 'pa-2': {
      const fewest = { spots: rule.spots ?? spotsOfArea };
      const count = area === undefined || rule.spots !== undefined ? fewest : filmCount(area);
      return isFailed(count)
        ? undefined
        : {
            ...{ rule, named, spots: count.spots, readingsOfSpot: leastReadingsOfSpot },
            ...{ isAreaTold: area !== undefined || rule.spots !== undefined, mostDropped: Number.POSITIVE_INFINITY },
          };
    }
  }
}

const smallest = squareMetres(0.01);

/** ISO 19840 takes off what its profile asks and nothing else. */
export function takenOff({ rule }: FilmTerms, { baseMicrometres: base }: Pick<FilmSet, 'baseMicrometres'>): TakenOff {
  if (rule.rule === 'iso-19840') {
    const off = profileOff(rule.profile);
    return off === 0 ? { is: 'set-on-profile' } : { is: 'profile', micrometres: off };
  }
  return base === undefined ? { is: 'none' } : { is: 'base', micrometres: base };
}

export const lessOff = (reading: number, off: TakenOff): Micrometres =>
  micrometres('micrometres' in off ? reading - off.micrometres : reading);
