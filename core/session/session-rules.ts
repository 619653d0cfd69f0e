// What a session allows when: to spray, and to close. Whether the air is enough is the employer's to judge: these rows
// only hold what was said against what is asked.

import { DateTime } from 'luxon';
import type { PersonName } from '../ids.ts';
import { known } from '../known.ts';
import { type Method, methodRows } from '../methods.ts';
import type { Objection } from '../objections.ts';
import type { Edition } from '../rule-editions.ts';
import { hadHappened, type Rule } from '../rules.ts';
import { hasRungIn } from '../stay-out.ts';
import { type EpochMs, minutesAfter } from '../units.ts';
import { breathingRules } from './breathing-rules.ts';
import { confinedCoat, type Within } from './confined-coats.ts';
import { peopleRules } from './people-rules.ts';
import { exposedIn, flushState, type Session, unacknowledged } from './session.ts';
import { sessionGears } from './session-commands.ts';
import type { LapsedBy } from './session-objections.ts';
import { fanMissing, flowAsked, type SprayCase, shortOf } from './spray-case.ts';
import { briefingAt, type SpraySettings } from './spray-settings.ts';
import { suppliedAirRules } from './supplied-air-rules.ts';
import { unknownRules } from './unknown-rules.ts';

export const sprayRules: readonly Rule<SprayCase>[] = [
  {
    // Never inside a tank by this brief: the employer's confined-space permit, 29 CFR 1910.146.
    code: 'inside-vessel',
    source: 'employer',
    liftedBy: 'nobody',
    check: ({ session }) =>
      session.insideVessel && session.fromOutside === undefined ? { code: 'inside-vessel' } : undefined,
  },
  {
    code: 'brief-lapsed',
    source: 'employer',
    liftedBy: 'nobody',
    check: (situation, edition) => {
      const because = lapsedBy(situation, edition);
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
    check: ({ session, settings }) => mayNotSpray(settings, session.sprayers),
  },
  {
    // Where there is no extraction, supplied air at the least for everybody exposed: common practice, no source.
    code: 'no-extraction-no-air',
    source: 'common practice, no source',
    liftedBy: 'nobody',
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
    check: (situation, edition) => {
      const { extraction, place } = situation.session;
      const asks = flowAsked(situation, edition);
      // Without a sum it is asked all the same since edition 5, and where supplied air is there but nobody speaks of a fan.
      if (edition < 5 && (asks === undefined || extraction === undefined)) return undefined;
      const missing = fanMissing(situation);
      return missing === undefined ? undefined : { code: 'fan-not-measured', missing, place, ...known({ asks }) };
    },
  },
  {
    code: 'fan-too-weak',
    source: 'regulation',
    liftedBy: 'supervisor',
    check: (situation, edition) => {
      const short = shortOf(situation, edition);
      return short.length === 0 ? undefined : { code: 'fan-too-weak', short };
    },
  },
  ...suppliedAirRules,
  ...unknownRules,
  ...peopleRules,
  ...breathingRules,
];

/** So long a gun may take to stop, once its fan is off. Our own choice, no source. */
const toStopMs = 60_000;

/** Asked of a gun that stops: whether it ran on after its fan was switched off. */
export const stoppedRules: readonly Rule<SprayCase>[] = sprayRules
  .filter(({ code }) => code === 'no-extraction-no-air' || code === 'fan-too-weak')
  .map((rule) => ({
    ...rule,
    since: 7,
    check: (situation, edition) => {
      const { extraction, spraying } = situation.session;
      const from = spraying.at(-1)?.from;
      const isOff = extraction?.running === false && from !== undefined && extraction.at >= from;
      return isOff && situation.at > extraction.at + toStopMs ? rule.check(situation, edition) : undefined;
    },
  }));

function mayNotSpray({ sprayers }: SpraySettings, meant: readonly PersonName[]): Objection | undefined {
  const people = sprayers.length === 0 ? [] : meant.filter((person) => !sprayers.includes(person));
  return people.length === 0 ? undefined : { code: 'may-not-spray', people };
}

/** What the brief was for has passed; `undefined` while it serves. A new person only has to acknowledge. */
export function lapsedBy(situation: SprayCase, edition: Edition): LapsedBy | undefined {
  const { session, settings, zone, batch, place, at } = situation;
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
  if (edition >= 6 && hasRungIn(situation.alarmsRung, session.place, { from: session.briefedAt, to: at }, edition))
    return 'alarm';
  const startedAt = session.spraying[0]?.from;
  const longest = session.sheet.spray?.longestSpellMinutes;
  if (startedAt !== undefined && longest !== undefined && at > minutesAfter(startedAt, longest)) return 'spell';
  return undefined;
}

/** A coat about to be said, where the crew briefs or has a session. */
export interface CoatUnderBriefCase {
  readonly method: Method;
  readonly settings: SpraySettings;
  readonly at: EpochMs;
  /** With whoever was said to spray among its sprayers. */
  readonly spray: SprayCase | undefined;
  /** Said to have sprayed it, and on no brief before. */
  readonly newcomer: PersonName | undefined;
  readonly within: Within;
}

const noBrief: Rule<CoatUnderBriefCase> = {
  code: 'no-brief',
  source: 'employer',
  liftedBy: 'supervisor',
  check: ({ method, settings, spray, at }, edition) => {
    if (!methodRows[method].atomised || spray !== undefined) return undefined;
    // Until edition 4 only of a crew that had briefed; since then of every crew that a supervisor has not excused from it.
    return (briefingAt(settings, at)?.on ?? edition >= 5) ? { code: 'no-brief' } : undefined;
  },
};

/** The fan or the supplied air was told anew since the gun began to run. */
function airSaidSince({ spraying, extraction, suppliedAir }: Session): boolean {
  const from = spraying.at(-1)?.from ?? 0;
  return [extraction, suppliedAir].some((said) => said !== undefined && said.at > from);
}

/** Once the gun was said to run, that was the moment to object to the air; what can lapse is asked at every coat. */
const atEveryCoat: readonly string[] = [
  ...['inside-vessel', 'brief-lapsed', 'brief-not-acknowledged', 'confined-place', 'not-qualified'],
];

export const coatUnderBriefRules: readonly Rule<CoatUnderBriefCase>[] = [
  noBrief,
  ...sprayRules.map(
    (rule): Rule<CoatUnderBriefCase> => ({
      ...rule,
      check: (coat, edition) => {
        const { method, spray, settings, newcomer } = coat;
        if (rule.code === 'confined-place') {
          const asked = methodRows[method].atomised && spray !== undefined ? rule.check(spray, edition) : undefined;
          return asked ?? (edition >= 7 ? confinedCoat(coat) : undefined);
        }
        if (!methodRows[method].atomised) return undefined;
        if (rule.code === 'may-not-spray' && newcomer !== undefined) return mayNotSpray(settings, [newcomer]);
        if (spray === undefined) return undefined;
        const begun = spray.session.spraying.length > 0 && (edition < 5 || !airSaidSince(spray.session));
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
