// A part's dry film against the rule that its sheet names: one of its own, ISO 19840, or SSPC-PA 2. Each rule refuses
// what it is not made for; a refusal accepts nothing.

import { leastReadingsOfSpot, spotsOfArea } from '../calc/film-count.ts';
import { judgeByJobRule } from '../calc/film-job-rule.ts';
import { correctedReading, judgeNominal, readingsNeeded, thinnestNominal } from '../calc/film-nominal.ts';
import { judgeArea, spotMeasurement } from '../calc/film-spots.ts';
import { isFailed } from '../failed.ts';
import type { FilmRule } from '../products/sheet-part.ts';
import type { Micrometres, SquareMetres } from '../units.ts';

export interface Beyond {
  readonly what: string;
  readonly measured: Micrometres;
  readonly limit: Micrometres;
  /** Of a set that is told spot by spot. */
  readonly spot?: number | undefined;
}

/** The standard by its name, or the sheet's own by its figures. */
export type FilmRuleNamed =
  | { readonly by: 'own'; readonly least: Micrometres; readonly most: Micrometres; readonly readings: number }
  | { readonly by: 'iso-19840' }
  | { readonly by: 'pa-2'; readonly level: number };

export type FilmFinding =
  /** Read before any coat is recorded. */
  | { readonly is: 'not-coated' }
  | { readonly is: 'no-rule' }
  | { readonly is: 'within'; readonly rule: FilmRuleNamed }
  | { readonly is: 'outside'; readonly rule: FilmRuleNamed; readonly findings: readonly Beyond[] }
  | { readonly is: 'cannot-tell'; readonly rule: FilmRuleNamed }
  | { readonly is: 'too-few'; readonly rule: FilmRuleNamed; readonly given: number; readonly needed: number }
  /** Of a set that is told spot by spot: it stays open until all are told. */
  | { readonly is: 'half'; readonly rule: FilmRuleNamed; readonly told: number; readonly needed: number }
  | { readonly is: 'area-unknown'; readonly rule: FilmRuleNamed }
  | { readonly is: 'does-not-apply'; readonly rule: FilmRuleNamed };

export function ruleNamed(rule: FilmRule): FilmRuleNamed {
  switch (rule.rule) {
    case 'own': {
      const { leastMicrometres: least, mostMicrometres: most, leastReadings: readings } = rule;
      return { by: 'own', least, most, readings };
    }
    case 'iso-19840':
      return { by: 'iso-19840' };
    case 'pa-2':
      return { by: 'pa-2', level: rule.level };
  }
}

/** Of readings in one line, none of which says its spot. */
export function judgeFilm(
  readings: readonly Micrometres[],
  rule: FilmRule | undefined,
  area: SquareMetres | undefined,
): FilmFinding {
  if (rule === undefined) return { is: 'no-rule' };
  switch (rule.rule) {
    case 'own':
      return byOwnRule(readings, rule);
    case 'iso-19840':
      return byNominal(readings, rule, area);
    case 'pa-2':
      return bySpots(readings, rule);
  }
}

function byOwnRule(readings: readonly Micrometres[], own: Extract<FilmRule, { rule: 'own' }>): FilmFinding {
  const rule = ruleNamed(own);
  const verdict = judgeByJobRule(readings, own, own.gauge);
  if (isFailed(verdict)) return { is: 'does-not-apply', rule };
  switch (verdict.verdict) {
    case 'within':
      return { is: 'within', rule };
    case 'cannot-tell':
      return { is: 'cannot-tell', rule };
    case 'too-few-readings':
      return { is: 'too-few', rule, given: readings.length, needed: own.leastReadings };
    case 'outside':
      return {
        is: 'outside',
        rule,
        findings: verdict.outside.map((measured) => {
          const below = measured < own.leastMicrometres;
          return {
            what: below ? 'reading below' : 'reading above',
            measured,
            limit: below ? own.leastMicrometres : own.mostMicrometres,
          };
        }),
      };
  }
}

function byNominal(
  readings: readonly Micrometres[],
  nominal: Extract<FilmRule, { rule: 'iso-19840' }>,
  area: SquareMetres | undefined,
): FilmFinding {
  const { nominalMicrometres, mostMicrometres, profile } = nominal;
  const rule = ruleNamed(nominal);
  if (nominalMicrometres < thinnestNominal) return { is: 'does-not-apply', rule };
  if (area === undefined) return { is: 'area-unknown', rule };
  const needed = readingsNeeded(area);
  if (typeof needed === 'number' && readings.length < needed) {
    return { is: 'too-few', rule, given: readings.length, needed };
  }
  const corrected = readings.map((reading) => correctedReading(reading, profile));
  const counted = corrected.filter((reading) => typeof reading === 'number');
  const verdict = judgeNominal(counted, area, { nominalMicrometres, mostMicrometres });
  if (isFailed(verdict) || counted.length < corrected.length) return { is: 'does-not-apply', rule };
  if (verdict.accepted) return { is: 'within', rule };
  return {
    is: 'outside',
    rule,
    findings: verdict.findings.flatMap((finding): readonly Beyond[] =>
      'measuredMicrometres' in finding
        ? [{ what: finding.what, measured: finding.measuredMicrometres, limit: finding.limitMicrometres }]
        : [{ what: finding.what, measured: verdict.meanMicrometres, limit: nominalMicrometres }],
    ),
  };
}

/** Readings in the order in which they were taken: three to a spot, five spots to an area. */
function bySpots(readings: readonly Micrometres[], pa2: Extract<FilmRule, { rule: 'pa-2' }>): FilmFinding {
  const rule = ruleNamed(pa2);
  const needed = spotsOfArea * leastReadingsOfSpot;
  if (readings.length < needed) return { is: 'too-few', rule, given: readings.length, needed };
  const spots: Micrometres[] = [];
  for (let i = 0; i + leastReadingsOfSpot <= readings.length; i += leastReadingsOfSpot) {
    const spot = spotMeasurement(readings.slice(i, i + leastReadingsOfSpot));
    if (isFailed(spot)) return { is: 'does-not-apply', rule };
    spots.push(spot);
  }
  const verdict = judgeArea(spots, pa2, pa2.level);
  if (isFailed(verdict)) return { is: 'does-not-apply', rule };
  const findings = verdict.findings.map(({ what, measuredMicrometres, limitMicrometres }) => ({
    what,
    measured: measuredMicrometres,
    limit: limitMicrometres,
  }));
  return verdict.accepted ? { is: 'within', rule } : { is: 'outside', rule, findings };
}
