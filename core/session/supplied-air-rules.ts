// Who may spray without supplied air: nobody where the extraction is not known or not enough, or where the sheet names a
// respiratory sensitiser or leaves it open, since no sum of solvents knows mist. Elsewhere it rests on the supervisor's standing
// assessment for that booth, product and method.

import { DateTime } from 'luxon';
import type { Edition } from '../rule-editions.ts';
import type { Rule } from '../rules.ts';
import type { OnlySupplied } from './session-objections.ts';
import { fanMissing, needOf, type SprayCase, shortOf } from './spray-case.ts';
import { type Assessment, assessedAt } from './spray-settings.ts';
import { isAllowedIn, notSummed } from './unknown-rules.ts';

export const suppliedAirRules: readonly Rule<SprayCase>[] = [
  {
    code: 'supplied-air-or-none',
    source: 'employer',
    liftedBy: 'nobody',
    since: 5,
    check: (situation, edition) => {
      const because = whyOnlySupplied(situation, edition);
      if (because === undefined) return undefined;
      const { number: session, suppliedAir } = situation.session;
      return { code: 'supplied-air-or-none', session, because, air: suppliedAir === undefined ? 'not-said' : 'none' };
    },
  },
  {
    code: 'no-assessment',
    source: 'employer',
    liftedBy: 'supervisor',
    since: 5,
    check: (situation, edition) => {
      const { session } = situation;
      const { extraction, suppliedAir, place, sheet } = session;
      if (suppliedAir?.supplied === true || extraction?.running !== true) return undefined;
      if (whyOnlySupplied(situation, edition) !== undefined || isAllowedIn(session, 'no-assessment')) return undefined;
      const last = assessmentFor(situation);
      if (last !== undefined && isStanding(last, situation)) return undefined;
      const ended = last === undefined || last.supplied === true ? {} : { ended: last.until };
      return { code: 'no-assessment', session: session.number, place, sheet: sheet.id, product: sheet.name, ...ended };
    },
  },
];

/** The last that was given by then for this booth, this revision of the product's sheet, and spraying. */
export function assessmentFor({ session, settings, at }: Pick<SprayCase, 'session' | 'settings' | 'at'>) {
  return assessedAt(settings, { place: session.place, sheet: session.sheet, method: 'spray' }, at);
}

/** It counts on its last day too. */
export function isStanding({ until, supplied }: Assessment, situation: Pick<SprayCase, 'zone' | 'at'>): boolean {
  return supplied !== true && until >= dayOf(situation);
}

const dayOf = ({ zone, at }: Pick<SprayCase, 'zone' | 'at'>): string =>
  DateTime.fromMillis(at, { zone }).toISODate() ?? '';

/** Nothing where supplied air was said, nor where there is no extraction: that has its own rule. */
function whyOnlySupplied(situation: SprayCase, edition: Edition): OnlySupplied | undefined {
  const { sheet, extraction, suppliedAir } = situation.session;
  if (suppliedAir?.supplied === true || extraction?.running !== true) return undefined;
  if (sheet.sensitisers === undefined) return { is: 'sensitiser-open', sheet: sheet.name };
  const { named } = sheet.sensitisers;
  if (named.length > 0) return { is: 'sensitiser', sheet: sheet.name, kinds: named.map(({ kind }) => kind) };
  if (fanMissing(situation) !== undefined) return { is: 'not-measured' };
  const need = needOf(situation, edition);
  const isSummed = notSummed(situation) === undefined && need?.forExposure !== undefined;
  if (!isSummed || need.withoutLimit.length > 0) return { is: 'not-summed' };
  return shortOf(situation, edition).length > 0 ? { is: 'falls-short' } : undefined;
}
