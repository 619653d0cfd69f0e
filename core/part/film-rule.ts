// By which rule the dry film of a part is judged: that of its sheet, or the one that its job names in its place. What the job leaves
// out of its rule is the sheet's; where neither gives it there is no rule, and nothing passes by it.

import { type JobFilmRule, jobLimits } from '../crew/job-limits.ts';
import { known } from '../known.ts';
import type { Sheet } from '../products/sheet.ts';
import type { FilmRule } from '../products/sheet-part.ts';
import { batchOf, type Shop } from '../shop.ts';
import { type EpochMs, fraction, micrometres } from '../units.ts';
import type { Part } from './part.ts';

/** The sheet of its coat, with the rule that holds for this part. */
export function filmSheet(shop: Shop, part: Part, at: EpochMs): Sheet | undefined {
  const sheet = batchOf(shop, part)?.sheet;
  const asked = jobLimits(shop.crew, part.details.job, at)?.filmRule;
  if (sheet === undefined || asked === undefined) return sheet;
  const { filmRule, ...others } = sheet;
  return { ...others, ...known({ filmRule: ruleAsked(asked, filmRule) }) };
}

/** SSPC-PA 2 takes level 3 where nobody names one: from memory. */
const usualLevel = 3;
/** Of a nominal film: what ISO 12944-5 advises, from memory. */
const mostOfNominal = 3;
/** By the standards, of any area. */
const fewestSpots = 5;
/** Of a thin film whose job says no number: our own choice. */
const usualReadings = 5;
/** What a gauge may be off by, where the sheet names none: from memory of what their makers state, no source. */
const usualGauge = { fixedMicrometres: micrometres(1), share: fraction(0.03) };

function ruleAsked(asked: JobFilmRule, ofSheet: FilmRule | undefined): FilmRule | undefined {
  const source = 'asked by the job';
  const least = asked.leastMicrometres ?? leastOf(ofSheet);
  const most = asked.mostMicrometres ?? (asked.leastMicrometres === undefined ? ofSheet?.mostMicrometres : undefined);
  if (least === undefined) return undefined;
  const spots = asked.spots && Math.max(fewestSpots, asked.spots);
  switch (asked.rule ?? ofSheet?.rule ?? 'own') {
    case 'own': {
      if (most === undefined) return undefined;
      const own = ofSheet?.rule === 'own' ? ofSheet : undefined;
      const leastReadings = asked.spots ?? own?.leastReadings ?? usualReadings;
      const gauge = own?.gauge ?? usualGauge;
      return {
        ...{ rule: 'own', leastMicrometres: least, mostMicrometres: most, leastReadings },
        ...{ judged: 'each-reading', gauge, source },
      };
    }
    case 'iso-19840': {
      const profile = ofSheet?.rule === 'iso-19840' ? ofSheet.profile : 'not-known';
      const mostMicrometres = most ?? micrometres(least * mostOfNominal);
      return {
        ...{ rule: 'iso-19840', nominalMicrometres: least, mostMicrometres, profile, source },
        ...known({ spots }),
      };
    }
    case 'pa-2': {
      if (most === undefined) return undefined;
      const level = asked.level ?? (ofSheet?.rule === 'pa-2' ? ofSheet.level : usualLevel);
      return {
        ...{ rule: 'pa-2', leastMicrometres: least, mostMicrometres: most, level, source },
        ...known({ spots }),
      };
    }
  }
}

const leastOf = (rule: FilmRule | undefined) =>
  rule?.rule === 'iso-19840' ? rule.nominalMicrometres : rule?.leastMicrometres;
