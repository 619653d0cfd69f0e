// How a spray session stands at a moment: its phase, its clocks, what holds it, and what may be done next, the likeliest
// first. Cards, board and lists only lay it out.

import type { Command } from '../commands.ts';
import { actsOf, type Candidate, type Moment } from '../next-acts.ts';
import { type AtLeastClock, type AtMostClock, lasts, mayLast } from '../noun-clock.ts';
import type { Objection, ObjectionCode } from '../objections.ts';
import { editionOfToday } from '../rule-editions.ts';
import { objectionsTo } from '../rules.ts';
import { type StayOut, stayOutOf } from '../stay-out.ts';
import { type EpochMs, litres, metresPerSecond, minutesAfter } from '../units.ts';
import { exposedIn, fanUntil, flushState, type Session, unacknowledged } from './session.ts';
import type { Gear } from './session-commands.ts';
import { sprayCase } from './session-decide.ts';
import { sprayRules } from './session-rules.ts';

export type SessionPhase =
  | { readonly is: 'briefed' | 'still' }
  | { readonly is: 'sprays'; readonly from: EpochMs }
  | { readonly is: 'closed'; readonly at: EpochMs };

export interface SessionStatus {
  readonly session: Session;
  readonly phase: SessionPhase;
  readonly clocks: readonly (AtMostClock<'spell'> | AtLeastClock<'fan'>)[];
  /** Why nobody sprays now; empty too once it is closed. */
  readonly heldBy: readonly Objection[];
  /** What keeps everybody out of its place. */
  readonly stayOut: StayOut | undefined;
}

export function sessionPhase({ closedAt, spraying }: Session): SessionPhase {
  if (closedAt !== undefined) return { is: 'closed', at: closedAt };
  const last = spraying.at(-1);
  if (last === undefined) return { is: 'briefed' };
  return last.to === undefined ? { is: 'sprays', from: last.from } : { is: 'still' };
}

export function sessionStatus({ shop, now }: Moment, session: Session): SessionStatus {
  const phase = sessionPhase(session);
  const first = session.spraying[0];
  const longest = session.sheet.spray?.longestSpellMinutes;
  const until = fanUntil(session);
  const spell =
    phase.is !== 'sprays' || first === undefined || longest === undefined
      ? []
      : [mayLast('spell', now, first.from, minutesAfter(first.from, longest))];
  const fan = phase.is !== 'closed' || until === undefined ? [] : [lasts('fan', now, phase.at, until)];
  const heldBy =
    phase.is === 'closed' ? [] : objectionsTo(sprayRules, sprayCase(shop, session, now, {}), editionOfToday);
  return { session, phase, clocks: [...spell, ...fan], heldBy, stayOut: stayOutOf(shop, session.place, now) };
}

export type SessionActId =
  | 'brief'
  | 'ack'
  | 'ack-for'
  | 'fan-on'
  | 'fan-unmeasured'
  | 'fan-off'
  | 'supplied-yes'
  | 'supplied-no'
  | 'moved-out'
  | 'flush-step'
  | 'flush'
  | 'vessels'
  | 'rags'
  | 'spray-on'
  | 'spray-off'
  | 'close';

/** Everything has been said, so that the gun is next: what still speaks against it is told on the tap. */
const saidOfSpraying: readonly ObjectionCode[] = sprayRules.map(({ code }) => code);

export function sessionActs({ session, phase, stayOut }: SessionStatus): readonly Candidate<SessionActId>[] {
  const { number, extraction, suppliedAir } = session;
  const act = actsOf<SessionActId>(String(number));
  const left = unacknowledged(session);
  const [someone = session.briefedBy] = exposedIn(session);
  const acks =
    left[0] === undefined
      ? []
      : [
          act('ack', { verb: 'ack', session: number }, { by: left[0] }),
          act('ack-for', { verb: 'ack', session: number, people: left }),
        ];
  const sprayOn: Command = { verb: 'spray-on', session: number };
  switch (phase.is) {
    case 'closed':
      return [act('brief', { verb: 'brief' })];
    case 'sprays':
      return [act('spray-off', { verb: 'spray-off', session: number }), ...acks];
    case 'briefed': {
      const fan = { verb: 'fan', session: number, running: true } as const;
      const supplied = (id: SessionActId, is: boolean) => act(id, { verb: 'supplied', session: number, supplied: is });
      const unsaid = left.length > 0 || extraction === undefined || suppliedAir === undefined;
      return [
        ...acks,
        ...(extraction === undefined
          ? [
              ...(stayOut === undefined
                ? [act('fan-on', { ...fan, faceMetresPerSecond: metresPerSecond(0.6) }), act('fan-unmeasured', fan)]
                : []),
              act('fan-off', { ...fan, running: false }),
            ]
          : []),
        ...(suppliedAir === undefined ? [supplied('supplied-yes', true), supplied('supplied-no', false)] : []),
        act('moved-out', { verb: 'near', session: number, people: [someone], goes: 'out' }),
        act('spray-on', sprayOn, unsaid ? {} : { despite: saidOfSpraying }),
      ];
    }
    case 'still':
      return [
        ...acks,
        ...(stayOut === undefined ? flushing(session) : []),
        act('spray-on', sprayOn),
        act('close', { verb: 'close', session: number }),
      ];
  }
}

/** The next solvent of the sheet's sequence; the whole where the sheet gives none. */
function flushing(session: Session): readonly Candidate<SessionActId>[] {
  const { number, rags } = session;
  const act = actsOf<SessionActId>(String(number));
  const whole = (gear: Gear) => ({ verb: 'flush', session: number, gear }) as const;
  const gun = flushState(session, 'gun');
  const [next] = gun.left;
  return [
    ...(gun.done || next === undefined
      ? []
      : [act('flush-step', { ...whole('gun'), solvent: next, litres: litres(0.3) })]),
    ...(gun.done ? [] : [act('flush', whole('gun'))]),
    ...(flushState(session, 'vessels').done ? [] : [act('vessels', whole('vessels'))]),
    ...(rags === undefined ? [act('rags', { verb: 'rags', session: number })] : []),
  ];
}
