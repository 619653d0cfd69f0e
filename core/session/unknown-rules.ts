// What nobody knows, or has run out, and could hurt whoever sprays or stands near: it never passes unasked. Whoever supervises
// may go on knowing it, by name, for this session; the confined space alone nobody lifts.

import { DateTime } from 'luxon';
import { solvents } from '../calc/solvents.ts';
import { lowestLel } from '../calc/vapour.ts';
import { isFailed } from '../failed.ts';
import type { ObjectionCode } from '../objections.ts';
import type { Rule } from '../rules.ts';
import { isConfined } from './confined-places.ts';
import { exposedIn, type Session } from './session.ts';
import { qualifications } from './session-commands.ts';
import type { NotSummed, RunOut } from './session-objections.ts';
import { gramsSprayed, type SprayCase } from './spray-case.ts';
import { datesAt } from './spray-settings.ts';

export const unknownRules: readonly Rule<SprayCase>[] = [
  {
    // 29 CFR 1910.146: what the employer's permit is for.
    code: 'confined-place',
    source: 'employer',
    liftedBy: 'nobody',
    since: 5,
    check: ({ session, settings, place = session.place }) =>
      isConfined(place, settings.confined) && session.fromOutside === undefined
        ? { code: 'confined-place', session: session.number, place }
        : undefined,
  },
  {
    code: 'not-qualified',
    source: 'employer',
    liftedBy: 'supervisor',
    since: 5,
    check: (situation) => {
      const ranOut = ranOutIn(situation);
      return ranOut.length === 0 || isAllowedIn(situation.session, 'not-qualified')
        ? undefined
        : { code: 'not-qualified', ranOut };
    },
  },
  {
    code: 'air-not-summed',
    source: 'regulation',
    liftedBy: 'supervisor',
    since: 5,
    check: (situation) => {
      const because = notSummed(situation);
      return because === undefined || isAllowedIn(situation.session, 'air-not-summed')
        ? undefined
        : { code: 'air-not-summed', session: situation.session.number, sheet: situation.session.sheet.name, because };
    },
  },
];

/** Of everybody exposed, by the dates that were known then. */
export function ranOutIn({ session, settings, zone, at }: Pick<SprayCase, 'session' | 'settings' | 'zone' | 'at'>) {
  const today = DateTime.fromMillis(at, { zone }).toISODate() ?? '';
  return exposedIn(session).flatMap((person): readonly RunOut[] => {
    const dates = datesAt(settings, person, at);
    return qualifications.flatMap((what) => {
      const until = dates[what];
      return until !== undefined && until < today ? [{ person, what, until }] : [];
    });
  });
}

/** Why there is no sum of the air against fire; `undefined` where there is one. */
export function notSummed(situation: Pick<SprayCase, 'session' | 'batch'>): NotSummed | undefined {
  const { spray } = situation.session.sheet;
  if (spray === undefined) return { is: 'sheet-silent' };
  const without = spray.solvents.map(({ solvent }) => solvent).filter((id) => isFailed(lowestLel(solvents[id])));
  if (without.length > 0) return { is: 'without-limit', solvents: without };
  return gramsSprayed(situation) === undefined ? { is: 'rate-unknown' } : undefined;
}

/** Somebody who may has gone on in this session, knowing it. */
export function isAllowedIn(session: Session, code: ObjectionCode): boolean {
  return session.entries.some(
    ({ fact, saidWith }) =>
      (fact.type === 'SprayStarted' || fact.type === 'CoatApplied') &&
      saidWith.permitted !== undefined &&
      saidWith.despite.includes(code),
  );
}
