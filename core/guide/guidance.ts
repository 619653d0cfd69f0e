// What one person does now: one act or one wait, how long, and one thing that must not be done meanwhile. Data only; the
// words stand in each tongue's `guide.ts`.

import type { Component } from '../components.ts';
import type { CanNumber, PersonName, StreamId } from '../ids.ts';
import type { NextAct } from '../next-acts.ts';
import type { AtLeastClock, NounClock } from '../noun-clock.ts';
import type { ClockId, NextActId } from '../status.ts';
import type { EpochMs, Minutes } from '../units.ts';

export type Doing =
  | { readonly is: 'act'; readonly act: NextAct<NextActId> }
  | { readonly is: 'wait'; readonly clock: AtLeastClock<ClockId> }
  | { readonly is: 'read-air' | 'name-parts' | 'mix' | 'stay-out' }
  /** By one of these. */
  | { readonly is: 'countersign'; readonly person: PersonName; readonly by: readonly PersonName[] }
  /** It was coated with, and no part that is known waits for it. */
  | { readonly is: 'use-up'; readonly act: NextAct<NextActId> }
  /** None of it is open. */
  | { readonly is: 'open-can'; readonly component: Component }
  /** No can of it is known, neither open nor sealed. */
  | { readonly is: 'name-can'; readonly component: Component }
  /** It was opened and is not stirred up. */
  | { readonly is: 'stir-can'; readonly can: CanNumber; readonly act: NextAct<NextActId> };

/** `at`: until then, or from then on, as the sentence has it; `undefined` while nobody knows. */
export type MustNot =
  | { readonly is: 'go-in' | 'mix-in-unread-air' | 'mix-too-much' }
  | {
      readonly is:
        | 'use-dead-pot'
        | 'use-recalled'
        | 'use-reacting-can'
        | 'pour-unweighed'
        | 'pour-unstirred'
        | 'coat-unfiltered';
    }
  | { readonly is: 'open-without-gas' | 'leave-lid-off' | 'pour-in-doubt' | 'let-it-set' }
  | { readonly is: 'touch-prepared' | 'touch-hot' | 'take-out-unproved' | 'hand-over-unreleased' }
  | { readonly is: 'spray-unbriefed' | 'go-in-unprotected' | 'stop-extraction' }
  | {
      readonly is: 'use-too-early' | 'coat-too-late' | 'heat-too-early' | 'stand-too-long';
      readonly at: EpochMs | undefined;
    };

/** How long: by a clock that runs, or for how long a reading serves. */
export type Lasts =
  | { readonly by: 'clock'; readonly clock: NounClock<ClockId> }
  | { readonly by: 'reading'; readonly serves: Minutes }
  | { readonly by: 'blend'; readonly takes: Minutes }
  | { readonly by: 'nothing' };

/** From what cannot wait to what only has to last. */
export const weights = ['danger', 'ends', 'open', 'hands', 'ahead', 'last', 'waits', 'idle'] as const;

export interface Guidance {
  /** Whom it concerns; `undefined` of the shop. */
  readonly of?: StreamId;
  readonly doing: Doing;
  readonly lasts: Lasts;
  readonly never: MustNot;
  readonly weight: (typeof weights)[number];
}

/** The first of them: by weight, and of one weight whose clock ends first. */
export function firstOf(guidances: readonly Guidance[]): Guidance | undefined {
  return guidances.toSorted(
    (one, other) => weights.indexOf(one.weight) - weights.indexOf(other.weight) || endOf(one) - endOf(other),
  )[0];
}

const endOf = ({ lasts }: Guidance): number =>
  lasts.by === 'clock' ? (lasts.clock.dueAt ?? Number.MAX_SAFE_INTEGER) : Number.MAX_SAFE_INTEGER;

/** By this clock, where there is one. */
export const lastsBy = (clock: NounClock<ClockId> | undefined): Lasts =>
  clock === undefined ? { by: 'nothing' } : { by: 'clock', clock };

/** The first of what comes next that is wanted. */
export function firstAct(
  next: readonly NextAct<NextActId>[],
  ids: readonly NextActId[],
): NextAct<NextActId> | undefined {
  return ids.flatMap((id) => next.find((act) => act.id === id) ?? [])[0];
}

/** That act for this stream, where it comes next; by nothing that runs and for anybody's hands, unless told otherwise. */
export function acting(
  of: StreamId,
  act: NextAct<NextActId> | undefined,
  told: Pick<Guidance, 'never'> & Partial<Pick<Guidance, 'lasts' | 'weight'>>,
): readonly Guidance[] {
  return act === undefined
    ? []
    : [{ of, doing: { is: 'act', act }, lasts: { by: 'nothing' }, weight: 'hands', ...told }];
}

/** Nothing is to be done but to let this clock run. */
export const waiting = (of: StreamId, clock: AtLeastClock<ClockId>, never: MustNot): Guidance => ({
  ...{ of, doing: { is: 'wait', clock }, lasts: lastsBy(clock), never, weight: 'waits' },
});
