// What was read of the air that hoods and masks are fed with, held item by item against the standard by which it was checked.

import { type BreathingAirItem, type ItemJudged, judgedBreathingAir } from '../calc/breathing-air.ts';
import type { FactOf } from '../history.ts';
import type { PersonName } from '../ids.ts';
import { type EpochMs, minutes, minutesAfter } from '../units.ts';

export type BreathingFact = FactOf<'BreathingAirChecked'>;

export interface BreathingCheck {
  readonly at: EpochMs;
  readonly by: PersonName;
  readonly compressor: string | undefined;
  /** Outside what its standard asks. */
  readonly fails: readonly BreathingAirItem[];
  readonly notRead: readonly BreathingAirItem[];
}

export function judgedCheck(fact: BreathingFact): readonly ItemJudged[] {
  const { oxygen, oil, carbonMonoxide, carbonDioxide, odour, dewPoint, cylinder, ambientCelsius: ambient } = fact;
  const supply = cylinder ? { kind: 'cylinder' as const } : { kind: 'compressor' as const, ambient };
  return judgedBreathingAir({ oxygen, oil, carbonMonoxide, carbonDioxide, odour, dewPoint, supply }, fact.standard);
}

export function breathingCheck(fact: BreathingFact, at: EpochMs, by: PersonName): BreathingCheck {
  const judged = judgedCheck(fact);
  const those = (is: ItemJudged['is']) => judged.flatMap((each) => (each.is === is ? [each.item] : []));
  return { at, by, compressor: fact.compressor, fails: those('outside'), notRead: those('not-read') };
}

/** Three months: EN 12021's practice in Europe, and common practice, no source, elsewhere. */
const servesMinutes = minutes(92 * 24 * 60);

export const checkServesUntil = ({ at }: BreathingCheck): EpochMs => minutesAfter(at, servesMinutes);

/** What makes a check no check: what people cannot do without was not read. Smell and dew point are told as not read. */
const needed: readonly BreathingAirItem[] = ['oxygen', 'carbon-monoxide', 'carbon-dioxide', 'oil'];

/** Why air checked so feeds nobody at `at`; `undefined` where it does. */
export function whyNotFed(check: BreathingCheck, at: EpochMs): 'failed' | 'not-whole' | 'overdue' | undefined {
  if (check.fails.length > 0) return 'failed';
  if (check.notRead.some((item) => needed.includes(item))) return 'not-whole';
  return checkServesUntil(check) < at ? 'overdue' : undefined;
}
