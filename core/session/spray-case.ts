// What the rules of spraying look at: the session as it was before the act, what is sprayed, what the crew has settled; and the
// air that it asks for against what the fan gives.

import type { Batch } from '../batch/batch.ts';
import { leastFaceVelocity, leastFaceVelocityOf } from '../calc/booth.ts';
import type { PlaceName } from '../ids.ts';
import { type Edition, editionOfToday } from '../rule-editions.ts';
import type { RungAlarm } from '../stay-out.ts';
import { type CubicMetresPerHour, cubicMetresPerHour, type EpochMs, type Grams, grams } from '../units.ts';
import type { Session } from './session.ts';
import { type AirNeed, airNeed, fanGives } from './session-air.ts';
import type { FanShort, FanUnknown } from './session-objections.ts';
import type { SpraySettings } from './spray-settings.ts';

export interface SprayCase {
  /** As it was before the act. */
  readonly session: Session;
  readonly settings: SpraySettings;
  readonly zone: string;
  /** Each that has rung, over or not. */
  readonly alarmsRung: readonly RungAlarm[];
  /** What is sprayed: of the session's batch, where it is known. */
  readonly batch: Batch | undefined;
  readonly place: PlaceName | undefined;
  readonly at: EpochMs;
}

/** How much is sprayed an hour: as said, or the whole pot; `undefined` where neither is known. */
export function gramsSprayed({
  session,
  batch,
}: Pick<SprayCase, 'session' | 'batch'>): { readonly gramsPerHour: Grams; readonly assumed: boolean } | undefined {
  if (session.gramsPerHour !== undefined) return { gramsPerHour: session.gramsPerHour, assumed: false };
  if (batch === undefined) return undefined;
  const { weighing, plannedGrams } = batch;
  const pot = weighing === undefined ? plannedGrams : grams(weighing.partAGrams + weighing.partBGrams);
  return { gramsPerHour: pot, assumed: true };
}

export function needOf(
  situation: Pick<SprayCase, 'session' | 'batch' | 'settings'>,
  edition: Edition = editionOfToday,
): AirNeed | undefined {
  const sprayed = gramsSprayed(situation);
  if (sprayed === undefined) return undefined;
  const { lelShare: share, mixingFactor, law, dayLimits } = situation.settings;
  const assumed = { share, mixingFactor, law: law.frame, dayLimits };
  return airNeed(situation.session.sheet, sprayed.gramsPerHour, assumed, edition);
}

/** Below the explosive limit always; below the breathing limits too where nobody has supplied air. */
function flowsAsked(
  situation: SprayCase,
  edition: Edition,
): readonly { of: 'lel' | 'exposure'; asks: CubicMetresPerHour }[] {
  const need = needOf(situation, edition);
  const breathes = situation.session.suppliedAir?.supplied !== true;
  return [
    ...(need?.forLel === undefined ? [] : [{ of: 'lel' as const, asks: need.forLel }]),
    ...(need?.forExposure === undefined || !breathes ? [] : [{ of: 'exposure' as const, asks: need.forExposure }]),
  ];
}

export function flowAsked(situation: SprayCase, edition: Edition): CubicMetresPerHour | undefined {
  const asked = flowsAsked(situation, edition).map(({ asks }) => asks);
  return asked.length === 0 ? undefined : cubicMetresPerHour(Math.max(...asked));
}

/** What is not known of the fan; nothing where there is none, which other rules ask about. */
export function fanMissing({ session, settings }: SprayCase): FanUnknown | undefined {
  const { extraction, suppliedAir, place } = session;
  // With neither said, what is asked for is that one of them is.
  if (extraction === undefined) return suppliedAir?.supplied === true ? 'extraction' : undefined;
  if (!extraction.running) return undefined;
  if (extraction.faceMetresPerSecond === undefined) return 'velocity';
  return settings.booths.has(place) ? undefined : 'booth';
}

export function shortOf(situation: SprayCase, edition: Edition): readonly FanShort[] {
  const { session, settings } = situation;
  const { extraction } = session;
  if (extraction === undefined) return [];
  const velocity = extraction.faceMetresPerSecond;
  const booth = settings.booths.get(session.place);
  const gives = extraction.running ? fanGives(booth, velocity) : cubicMetresPerHour(0);
  const least = edition < 6 ? leastFaceVelocity['air-operated'] : leastFaceVelocityOf(booth?.faceSquareMetres);
  return [
    ...(extraction.running && velocity !== undefined && velocity < least
      ? [{ of: 'face' as const, gives: velocity, asks: least }]
      : []),
    ...(gives === undefined
      ? []
      : flowsAsked(situation, edition).flatMap(({ of, asks }) => (gives < asks ? [{ of, gives, asks }] : []))),
  ];
}
