// A clock as a dose: progress is the integral of rate(T) over the time the thing ran, done at 1. Exact: the
// temperature is a step function, so the integral is a sum over pieces. Which way a piece without a figure errs
// depends on the clock: one that must last at least so long gets nothing for it (or the sheet's slowest, if the sheet
// says so); one that may last at most so long runs at the sheet's fastest.

import type { Celsius, EpochMs, Minutes } from '../units.ts';
import { epochMs, minutes, minutesAfter, minutesBetween } from '../units.ts';
import { durationAt, fastest, needsTemperature, type RateLaw, slowest } from './rate-law.ts';

/** The rounding of a sum of binary fractions: less than 0.1 ms in a day. */
const rounding = 1e-9;

export type Caution = 'at-least' | 'at-most';

/** What counts, piece by piece, in order and without overlap: when it ran, and at what temperature if known. */
export interface Piece {
  readonly from: EpochMs;
  readonly to: EpochMs;
  /** `undefined`: nobody read it, or the reading was too old. */
  readonly celsius: Celsius | undefined;
}

export type NoFigure = 'unknown' | 'below' | 'above';

export interface DoseRules {
  readonly law: RateLaw;
  readonly caution: Caution;
  /** What an at-least clock gets where the sheet gives no figure. */
  readonly withoutFigure: 'nothing' | 'slowest';
}

export interface Dose {
  /** 0 at the start, done at 1; may pass 1. Ask `doneAt` whether it is done. */
  readonly progress: number;
  /** When it first reached the target, `undefined` while it has not. */
  readonly doneAt: EpochMs | undefined;
  /** Time that ran, whatever credit it got. */
  readonly ranMinutes: Minutes;
  /** Time for which the sheet or the readings gave no figure, by reason. */
  readonly withoutFigureMinutes: Readonly<Record<NoFigure, Minutes>>;
}

/** The dose over the pieces. `target` is the share that counts as done: 1, or less for a ring on the way. */
export function dose(rules: DoseRules, pieces: readonly Piece[], target = 1): Dose {
  let progress = 0;
  let doneAt: EpochMs | undefined;
  let ran = 0;
  const without = { unknown: 0, below: 0, above: 0 };
  for (const piece of pieces) {
    const lasted = minutesBetween(piece.from, piece.to);
    if (lasted <= 0) continue;
    const pace = paceAt(rules, piece.celsius);
    ran += lasted;
    if (pace.why !== undefined) without[pace.why] += lasted;
    const gained = lasted * pace.perMinute;
    if (doneAt === undefined && progress + gained >= target - rounding) {
      const reached = minutesAfter(piece.from, minutes((target - progress) / pace.perMinute));
      doneAt = epochMs(Math.min(piece.to, reached));
    }
    progress += gained;
  }
  return {
    progress,
    doneAt,
    ranMinutes: minutes(ran),
    withoutFigureMinutes: {
      unknown: minutes(without.unknown),
      below: minutes(without.below),
      above: minutes(without.above),
    },
  };
}

export interface Pace {
  /** Share of the whole that a minute at this temperature adds. */
  readonly perMinute: number;
  /** Why the sheet has no figure here, `undefined` where it has one. */
  readonly why: NoFigure | undefined;
}

/** What a minute at this temperature adds, on the clock's cautious side. */
export function paceAt(rules: DoseRules, temperature: Celsius | undefined): Pace {
  const { law } = rules;
  if (law.kind === 'plain' && !needsTemperature(law)) return { perMinute: 1 / law.minutes, why: undefined };
  if (temperature === undefined) return { perMinute: withoutFigure(rules), why: 'unknown' };
  const found = durationAt(law, temperature);
  if (found.given) return { perMinute: 1 / found.minutes, why: undefined };
  return { perMinute: withoutFigure(rules), why: found.side };
}

function withoutFigure(rules: DoseRules): number {
  if (rules.caution === 'at-most') return 1 / fastest(rules.law);
  return rules.withoutFigure === 'slowest' ? 1 / slowest(rules.law) : 0;
}

/**
 * When the dose will be full if it runs on from `from` at this temperature. Always a time: where no credit is earned,
 * the sheet's slowest stands in, so that something rings and asks.
 */
export function projectedDone(
  rules: DoseRules,
  progress: number,
  from: EpochMs,
  temperature: Celsius | undefined,
  target = 1,
): EpochMs {
  const pace = paceAt(rules, temperature);
  const perMinute = pace.perMinute > 0 ? pace.perMinute : 1 / slowest(rules.law);
  return minutesAfter(from, minutes(Math.max(0, target - progress) / perMinute));
}
