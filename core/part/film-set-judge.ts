// A set of spots against its rule, as far as it is told. A spot that fails fails at once; means are judged when their spots are
// whole; half a set is never within.

import { spotsOfArea } from '../calc/film-count.ts';
import { judgeByJobRule } from '../calc/film-job-rule.ts';
import { judgeNominal, nominalFloor } from '../calc/film-nominal.ts';
import { isAbove, isBelow, meanOf } from '../calc/film-readings.ts';
import { filmLimits, judgeArea } from '../calc/film-spots.ts';
import { isFailed } from '../failed.ts';
import type { FilmRule } from '../products/sheet-part.ts';
import { type Micrometres, micrometres, type SquareMetres, squareMetres } from '../units.ts';
import type { Beyond, FilmFinding } from './film-acceptance.ts';
import type { FilmSet, SpotRead } from './film-sets.ts';
import { type FilmTerms, lessOff, type TakenOff, takenOff } from './film-terms.ts';

const smallest = squareMetres(0.01);

export interface SpotJudged extends SpotRead {
  /** What counts of it, less what is taken off. */
  readonly counted: readonly Micrometres[];
  /** As read, and less what is taken off; `undefined` while readings of it lack. */
  readonly mean: { readonly read: Micrometres; readonly counted: Micrometres } | undefined;
  /** Readings that it still lacks. */
  readonly lacks: number;
  readonly beyond: readonly Beyond[];
}

export interface SetJudged {
  readonly set: FilmSet;
  readonly terms: FilmTerms;
  readonly off: TakenOff;
  readonly spots: readonly SpotJudged[];
  /** Of those that are asked for. */
  readonly told: number;
  /** Which comes next; `undefined` of a whole set. */
  readonly next: { readonly spot: number; readonly lacks: number } | undefined;
  readonly mean: Micrometres | undefined;
  readonly finding: FilmFinding;
}

export function judgeSet(set: FilmSet, terms: FilmTerms, area: SquareMetres | undefined): SetJudged {
  const off = takenOff(terms, set);
  const dropped = set.spots.reduce((sum, spot) => sum + spot.dropped.length, 0);
  const spots = set.spots.map((spot) => spotJudged(spot, terms, off, dropped <= terms.mostDropped));
  const asked = Array.from({ length: terms.spots }, (_, i) => i + 1);
  const lacks = (spot: number): number => spots.find(({ number }) => number === spot)?.lacks ?? terms.readingsOfSpot;
  const told = asked.filter((each) => lacks(each) === 0).length;
  const spot = asked.find((each) => lacks(each) > 0);
  const next = spot === undefined ? undefined : { spot, lacks: lacks(spot) };
  const ofMean = spots.filter(({ near }) => near === undefined);
  const counted = ofMean.flatMap((each) => each.mean?.counted ?? []);
  return {
    ...{ set, terms, off, spots, told, next },
    mean: counted.length === 0 ? undefined : micrometres(meanOf(counted)),
    finding: findingOf(terms, spots, told, area),
  };
}

function spotJudged(spot: SpotRead, terms: FilmTerms, off: TakenOff, mayDrop: boolean): SpotJudged {
  const read = mayDrop ? spot.readings : [...spot.readings, ...spot.dropped];
  const lacks = Math.max(0, terms.readingsOfSpot - spot.readings.length);
  const counted = read.map((reading) => lessOff(reading, off));
  const mean = lacks > 0 ? undefined : { read: micrometres(meanOf(read)), counted: micrometres(meanOf(counted)) };
  const beyond = lacks > 0 ? [] : spotBeyond(terms.rule, counted).map((each) => ({ ...each, spot: spot.number }));
  return { ...spot, counted, mean, lacks, beyond };
}

/** What of it fails by itself, whatever the others say. */
function spotBeyond(rule: FilmRule, counted: readonly Micrometres[]): readonly Beyond[] {
  switch (rule.rule) {
    case 'own': {
      const verdict = rule.judged === 'mean' ? undefined : judgeByJobRule(counted, rule, rule.gauge);
      if (verdict === undefined || isFailed(verdict)) return [];
      return verdict.outside.map((measured) => {
        const isThin = measured < rule.leastMicrometres;
        const limit = isThin ? rule.leastMicrometres : rule.mostMicrometres;
        return { what: isThin ? 'reading-below' : 'reading-above', measured, limit };
      });
    }
    case 'iso-19840': {
      const floor = nominalFloor(rule);
      return counted.flatMap((reading) => beyond('reading', reading, floor, rule.mostMicrometres));
    }
    case 'pa-2': {
      const limits = filmLimits(rule, rule.level);
      if (isFailed(limits)) return [];
      const { spotLeastMicrometres: least, spotMostMicrometres: most } = limits;
      return beyond('spot', micrometres(meanOf(counted)), least, most);
    }
  }
}

function beyond(
  what: 'spot' | 'reading',
  measured: Micrometres,
  least: Micrometres,
  most: Micrometres | undefined,
): readonly Beyond[] {
  if (isBelow(measured, least)) return [{ what: `${what}-below`, measured, limit: least }];
  if (most !== undefined && isAbove(measured, most)) return [{ what: `${what}-above`, measured, limit: most }];
  return [];
}

function findingOf(
  terms: FilmTerms,
  spots: readonly SpotJudged[],
  told: number,
  area: SquareMetres | undefined,
): FilmFinding {
  const { named: rule } = terms;
  const isWhole = told >= terms.spots;
  const ofMean = spots.filter(({ near, lacks }) => near === undefined && lacks === 0);
  const findings = [...spots.flatMap((spot) => spot.beyond), ...togetherBeyond(terms, ofMean, isWhole, area)];
  if (findings.length > 0) return { is: 'outside', rule, findings };
  if (!isWhole) return { is: 'half', rule, told, needed: terms.spots };
  if (!terms.isAreaTold) return { is: 'area-unknown', rule };
  return isDoubtful(terms.rule, ofMean) ? { is: 'cannot-tell', rule } : { is: 'within', rule };
}

/** Means: of an area of five spots as soon as it is whole, of all readings when all are there. */
function togetherBeyond(
  { rule, spots: asked }: FilmTerms,
  spots: readonly SpotJudged[],
  isWhole: boolean,
  area: SquareMetres | undefined,
): readonly Beyond[] {
  switch (rule.rule) {
    case 'own': {
      if (rule.judged === 'each-reading' || !isWhole) return [];
      const counted = spots.flatMap((spot) => spot.counted);
      const verdict = judgeByJobRule(counted, rule, rule.gauge);
      if (isFailed(verdict)) return [];
      return verdict.outside.flatMap((mean) => {
        const isThin = mean < rule.leastMicrometres;
        const limit = isThin ? rule.leastMicrometres : rule.mostMicrometres;
        return [{ what: isThin ? 'mean-below' : 'mean-above', measured: mean, limit }];
      });
    }
    case 'iso-19840': {
      if (!isWhole) return [];
      const counted = spots.flatMap((spot) => spot.counted);
      // How many it takes was asked above: here only what they say counts.
      const verdict = judgeNominal(counted, rule.spots === undefined ? (area ?? smallest) : smallest, rule);
      if (isFailed(verdict)) return [];
      return verdict.findings.flatMap((finding): readonly Beyond[] =>
        finding.what === 'mean-below' || finding.what === 'too-many-thin'
          ? [{ what: finding.what, measured: verdict.meanMicrometres, limit: rule.nominalMicrometres }]
          : [],
      );
    }
    case 'pa-2':
      return areasIn(asked).flatMap((numbers, i, areas) => {
        // What is read beyond those asked for belongs to the last.
        const own = spots.filter(
          ({ number }) => numbers.includes(number) || (number > asked && i === areas.length - 1),
        );
        const isThere = numbers.every((each) => own.some(({ number }) => number === each));
        const means = own.flatMap(({ mean }) => mean?.counted ?? []);
        const verdict = isThere ? judgeArea(means, rule, rule.level) : undefined;
        if (verdict === undefined || isFailed(verdict)) return [];
        return verdict.findings.flatMap(({ what, measuredMicrometres: measured, limitMicrometres: limit }) =>
          what === 'area-below' || what === 'area-above' ? [{ what, measured, limit }] : [],
        );
      });
  }
}

/** Their spots, five by five. */
function areasIn(asked: number): readonly (readonly number[])[] {
  const areas = Math.max(1, Math.floor(asked / spotsOfArea));
  const numbers = Array.from({ length: asked }, (_, i) => i + 1);
  // Of a count that makes no whole areas the last has the rest with it: none is judged by fewer than five.
  return Array.from({ length: areas }, (_, i) =>
    numbers.slice(i * spotsOfArea, i === areas - 1 ? undefined : (i + 1) * spotsOfArea),
  );
}

function isDoubtful(rule: FilmRule, spots: readonly SpotJudged[]): boolean {
  if (rule.rule !== 'own') return false;
  const verdict = judgeByJobRule(
    spots.flatMap((spot) => spot.counted),
    rule,
    rule.gauge,
  );
  return isFailed(verdict) || verdict.verdict === 'cannot-tell';
}
