// How a can stands at a moment: whether gas is over it, its clocks, what holds it, and what may be done with it next, the
// likeliest first. Cards, board and lists only lay it out.

import type { CommandOf } from '../commands.ts';
import { actsOf, type Candidate, type Moment } from '../next-acts.ts';
import { type AtLeastClock, type AtMostClock, lasts, mayLast } from '../noun-clock.ts';
import type { Objection } from '../objections.ts';
import { editionOfToday } from '../rule-editions.ts';
import { objectionsTo } from '../rules.ts';
import type { EpochMs } from '../units.ts';
import { type Can, isCanLive, isGasSensitive } from './can.ts';
import { blanketTimes, type PreStirTimes, preStirTimes } from './can-clocks.ts';
import { canHolds, wasOpenedFirst } from './can-rules.ts';
import { type GasState, gasState } from './can-stock.ts';

export interface CanStatus {
  readonly can: Can;
  readonly phase: GasState;
  /** Since when the air is over it; `undefined` under gas, and where it needs none. */
  readonly lidOffSince: EpochMs | undefined;
  readonly clocks: readonly (AtLeastClock<'pre-stir'> | AtMostClock<'lid-off'>)[];
  /** How its sheet wants it stirred before it is poured, where it does. */
  readonly preStir: PreStirTimes | undefined;
  /** By a stir that runs or still serves. */
  readonly isStirred: boolean;
  readonly heldBy: readonly Objection[];
}

export function canStatus({ now }: Moment, can: Can): CanStatus {
  const times = blanketTimes(can);
  const preStir = preStirTimes(can, now);
  const stir = can.stirs.findLast(({ at }) => at <= now);
  return {
    can,
    phase: gasState(can, now),
    lidOffSince: times?.since,
    clocks: [
      ...(times === undefined ? [] : [mayLast('lid-off', now, times.since, times.doubtfulAt, times.ringAt)]),
      ...(stir === undefined || preStir?.doneAt === undefined ? [] : [lasts('pre-stir', now, stir.at, preStir.doneAt)]),
    ],
    preStir,
    isStirred: preStir?.servesUntil !== undefined && preStir.servesUntil >= now,
    heldBy: objectionsTo(canHolds, { can, at: now }, editionOfToday),
  };
}

export type CanActId = 'prestir-gas' | CommandOf<'check' | 'blanket' | 'prestir' | 'lid' | 'discard'>['verb'];

export function canActs({ can, phase, lidOffSince, preStir, isStirred }: CanStatus): readonly Candidate<CanActId>[] {
  if (!isCanLive(can)) return [];
  const { number } = can;
  const act = actsOf<CanActId>(String(number));
  if (phase.is === 'reacts') return [act('discard', { verb: 'discard', can: number, why: '-' })];
  const doubtful = phase.is === 'doubtful';
  const isOff = lidOffSince !== undefined;
  // The lid comes off with gas at hand: without it there is nothing to offer.
  const withGas = { can: number, handling: 'gas' } as const;
  const stir = wasOpenedFirst(can)
    ? act('prestir-gas', { verb: 'prestir', ...withGas })
    : act('prestir', { verb: 'prestir', can: number });
  return [
    ...(doubtful ? [act('check', { verb: 'check', can: number })] : []),
    ...(isOff ? [act('blanket', { verb: 'blanket', can: number })] : []),
    ...(preStir !== undefined && !isStirred ? [stir] : []),
    ...(!isOff && isGasSensitive(can) ? [act('lid', { verb: 'lid', ...withGas })] : []),
    ...(doubtful ? [act('discard', { verb: 'discard', can: number, why: '-' })] : []),
  ];
}
