// Supplied air that was said to be there, of a crew that records checks of it: the last one must have passed, and not long ago. Of a crew that records none the brief asks, and nothing objects.

import type { Rule } from '../rules.ts';
import type { EpochMs } from '../units.ts';
import { type BreathingCheck, whyNotFed } from './breathing-check.ts';
import type { SprayCase } from './spray-case.ts';
import type { SpraySettings } from './spray-settings.ts';
import { isAllowedIn } from './unknown-rules.ts';

export const breathingRules: readonly Rule<SprayCase>[] = [
  {
    code: 'breathing-air-not-fit',
    source: 'employer',
    liftedBy: 'nobody',
    since: 6,
    check: (situation) => {
      const unfit = unfitIn(situation);
      const isFailed = unfit !== undefined && unfit.because === 'failed';
      return isFailed ? { code: 'breathing-air-not-fit', check: unfit.check } : undefined;
    },
  },
  {
    code: 'breathing-air-unchecked',
    source: 'employer',
    liftedBy: 'supervisor',
    since: 6,
    check: (situation) => {
      const unfit = unfitIn(situation);
      if (unfit === undefined || unfit.because === 'failed') return undefined;
      if (isAllowedIn(situation.session, 'breathing-air-unchecked')) return undefined;
      return { code: 'breathing-air-unchecked', check: unfit.check, because: unfit.because };
    },
  },
];

/** Where none of the last checks serves: the newest, and why. One that serves is the one that is breathed from. */
function unfitIn({ session, settings, at }: SprayCase) {
  if (session.suppliedAir?.supplied !== true) return undefined;
  const judged = lastChecks(settings, at).map((check) => ({ check, because: whyNotFed(check, at) }));
  const newest = judged.toSorted((a, b) => b.check.at - a.check.at)[0];
  if (newest?.because === undefined || judged.some(({ because }) => because === undefined)) return undefined;
  return { check: newest.check, because: newest.because };
}

/** The last by then of each compressor; cylinders and what nobody named count as one. */
export function lastChecks({ breathing }: Pick<SpraySettings, 'breathing'>, at: EpochMs): readonly BreathingCheck[] {
  const last = new Map<string | undefined, BreathingCheck>();
  for (const check of breathing) if (check.at <= at) last.set(check.compressor, check);
  return [...last.values()];
}
