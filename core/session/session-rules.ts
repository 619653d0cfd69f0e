// What a session allows when: to spray, and to close. Whether the air is enough is the employer's to judge: these rows
// only hold what was said against what is asked.

import { DateTime } from 'luxon';
import type { Batch } from '../batch/batch.ts';
import { leastFaceVelocity } from '../calc/booth.ts';
import type { PlaceName } from '../ids.ts';
import { type Method, methodRows } from '../methods.ts';
import { hadHappened, type Rule } from '../rules.ts';
import {
  type CubicMetresPerHour,
  cubicMetresPerHour,
  type EpochMs,
  type Grams,
  grams,
  minutesAfter,
} from '../units.ts';
import { exposedIn, flushState, type Session, unacknowledged } from './session.ts';
import { type AirNeed, airNeed, fanGives } from './session-air.ts';
import { sessionGears } from './session-commands.ts';
import type { FanShort, LapsedBy } from './session-objections.ts';
import { briefsAt, type SpraySettings } from './spray-settings.ts';

export interface SprayCase {
  /** As it was before the act. */
  readonly session: Session;
  readonly settings: SpraySettings;
  readonly zone: string;
  /** What is sprayed: of the session's batch, where it is known. */
  readonly batch: Batch | undefined;
  readonly place: PlaceName | undefined;
  readonly at: EpochMs;
}

export const sprayRules: readonly Rule<SprayCase>[] = [
  {
    // Never inside a tank by this brief: the employer's confined-space permit, 29 CFR 1910.146.
    code: 'inside-vessel',
    source: 'employer',
    liftedBy: 'nobody',
    check: ({ session }) => (session.insideVessel ? { code: 'inside-vessel' } : undefined),
  },
  {
    code: 'brief-lapsed',
    source: 'employer',
    liftedBy: 'nobody',
    check: (situation) => {
      const because = lapsedBy(situation);
      return because === undefined ? undefined : { code: 'brief-lapsed', session: situation.session.number, because };
    },
  },
  {
    code: 'brief-not-acknowledged',
    source: 'employer',
    liftedBy: 'nobody',
    check: ({ session }) => {
      const people = unacknowledged(session);
      return people.length === 0 ? undefined : { code: 'brief-not-acknowledged', session: session.number, people };
    },
  },
  {
    code: 'may-not-spray',
    source: 'employer',
    liftedBy: 'supervisor',
    check: ({ session, settings }) => {
      if (settings.sprayers.length === 0) return undefined;
      const people = session.sprayers.filter((person) => !settings.sprayers.includes(person));
      return people.length === 0 ? undefined : { code: 'may-not-spray', people };
    },
  },
  {
    // Where there is no extraction, supplied air at the least for everybody exposed: common practice, no source.
    code: 'no-extraction-no-air',
    source: 'common practice, no source',
    liftedBy: 'supervisor',
    check: ({ session: { extraction, suppliedAir } }) => {
      if (extraction?.running === true || suppliedAir?.supplied === true) return undefined;
      return {
        code: 'no-extraction-no-air',
        extraction: extraction === undefined ? 'not-said' : 'off',
        air: suppliedAir === undefined ? 'not-said' : 'none',
      };
    },
  },
  {
    code: 'fan-not-measured',
    source: 'regulation',
    liftedBy: 'supervisor',
    check: (situation) => {
      const { session, settings } = situation;
      const asks = flowAsked(situation);
      if (asks === undefined || session.extraction?.running !== true) return undefined;
      if (session.extraction.faceMetresPerSecond === undefined)
        return { code: 'fan-not-measured', missing: 'velocity', asks };
      return settings.booths.has(session.place) ? undefined : { code: 'fan-not-measured', missing: 'booth', asks };
    },
  },
  {
    code: 'fan-too-weak',
    source: 'regulation',
    liftedBy: 'supervisor',
    check: (situation) => {
      const short = shortOf(situation);
      return short.length === 0 ? undefined : { code: 'fan-too-weak', short };
    },
  },
];

/** What the brief was for has passed; `undefined` while it serves. A new person only has to acknowledge. */
export function lapsedBy({ session, settings, zone, batch, place, at }: SprayCase): LapsedBy | undefined {
  const from = session.startsAt ?? session.briefedAt;
  if (at < session.briefedAt) return 'later';
  if (hadHappened(session.closedAt, at)) return 'closed';
  if (batch !== undefined && session.batch !== undefined && batch.number !== session.batch) return 'batch';
  if (place !== undefined && place !== session.place) return 'booth';
  const dayOf = (time: EpochMs) => DateTime.fromMillis(time, { zone }).toISODate();
  // A shift that works past midnight briefs anew: an empty log of shifts cannot tell whether it is the same one.
  if (dayOf(from) !== dayOf(at) && at > from) return 'shift';
  const changed = settings.shiftChanges.some(
    (shift) =>
      shift.at > session.briefedAt &&
      shift.at <= at &&
      (shift.by === undefined || exposedIn(session).includes(shift.by)),
  );
  if (changed) return 'shift';
  const startedAt = session.spraying[0]?.from;
  const longest = session.sheet.spray?.longestSpellMinutes;
  if (startedAt !== undefined && longest !== undefined && at > minutesAfter(startedAt, longest)) return 'spell';
  return undefined;
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

export function needOf(situation: Pick<SprayCase, 'session' | 'batch' | 'settings'>): AirNeed | undefined {
  const sprayed = gramsSprayed(situation);
  if (sprayed === undefined) return undefined;
  const { lelShare, mixingFactor } = situation.settings;
  return airNeed(situation.session.sheet, sprayed.gramsPerHour, { share: lelShare, mixingFactor });
}

/** Below the explosive limit always; below the breathing limits too where nobody has supplied air. */
function flowsAsked(situation: SprayCase): readonly { of: 'lel' | 'exposure'; asks: CubicMetresPerHour }[] {
  const need = needOf(situation);
  const breathes = situation.session.suppliedAir?.supplied !== true;
  return [
    ...(need?.forLel === undefined ? [] : [{ of: 'lel' as const, asks: need.forLel }]),
    ...(need?.forExposure === undefined || !breathes ? [] : [{ of: 'exposure' as const, asks: need.forExposure }]),
  ];
}

function flowAsked(situation: SprayCase): CubicMetresPerHour | undefined {
  const asked = flowsAsked(situation).map(({ asks }) => asks);
  return asked.length === 0 ? undefined : cubicMetresPerHour(Math.max(...asked));
}

function shortOf(situation: SprayCase): readonly FanShort[] {
  const { session, settings } = situation;
  const { extraction } = session;
  if (extraction === undefined) return [];
  const velocity = extraction.faceMetresPerSecond;
  const gives = extraction.running ? fanGives(settings.booths.get(session.place), velocity) : cubicMetresPerHour(0);
  const least = leastFaceVelocity['air-operated'];
  return [
    ...(extraction.running && velocity !== undefined && velocity < least
      ? [{ of: 'face' as const, gives: velocity, asks: least }]
      : []),
    ...(gives === undefined
      ? []
      : flowsAsked(situation).flatMap(({ of, asks }) => (gives < asks ? [{ of, gives, asks }] : []))),
  ];
}

/** A coat about to be said, where the crew briefs or has a session. */
export interface CoatUnderBriefCase {
  readonly method: Method;
  readonly settings: SpraySettings;
  readonly at: EpochMs;
  readonly spray: SprayCase | undefined;
}

const noBrief: Rule<CoatUnderBriefCase> = {
  code: 'no-brief',
  source: 'employer',
  liftedBy: 'supervisor',
  check: ({ method, settings, spray, at }) =>
    methodRows[method].atomised && spray === undefined && briefsAt(settings, at) ? { code: 'no-brief' } : undefined,
};

/** Once the gun was said to run, that was the moment to object to the air; what can lapse is asked at every coat. */
const atEveryCoat: readonly string[] = ['inside-vessel', 'brief-lapsed', 'brief-not-acknowledged'];

export const coatUnderBriefRules: readonly Rule<CoatUnderBriefCase>[] = [
  noBrief,
  ...sprayRules.map(
    (rule): Rule<CoatUnderBriefCase> => ({
      ...rule,
      check: ({ method, spray }, edition) => {
        if (!methodRows[method].atomised || spray === undefined) return undefined;
        const begun = spray.session.spraying.length > 0;
        return begun && !atEveryCoat.includes(rule.code) ? undefined : rule.check(spray, edition);
      },
    }),
  ),
];

export interface CloseCase {
  readonly session: Session;
}

export const closeRules: readonly Rule<CloseCase>[] = [
  {
    code: 'gear-not-flushed',
    source: 'sheet',
    liftedBy: 'lead',
    check: ({ session }) => {
      for (const gear of sessionGears) {
        const { done, left } = flushState(session, gear);
        if (!done) return { code: 'gear-not-flushed', gear, left };
      }
      return undefined;
    },
  },
  {
    // Rags in metal cans, 29 CFR 1910.107(g)(3); discarded filters, 1910.107(b)(5)(ii).
    code: 'rags-not-canned',
    source: 'regulation',
    liftedBy: 'lead',
    check: ({ session }) =>
      session.spraying.length > 0 && session.rags === undefined ? { code: 'rags-not-canned' } : undefined,
  },
];
