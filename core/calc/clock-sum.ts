// The sum behind a clock's end, stretch by stretch: what each temperature wanted, what it earned, and what is only expected.

import type { Celsius, EpochMs } from '../units.ts';
import { epochMs } from '../units.ts';
import { heldFrom, piecesOf, type Run, readUpTo, type TemperatureLog } from './clock.ts';
import { type DoseRules, type Pace, type Piece, paceAt } from './dose.ts';
import { fastest, slowest } from './rate-law.ts';

/** All that a clock runs by. */
export interface ClockBasis {
  readonly rules: DoseRules;
  readonly runs: readonly Run[];
  readonly log: TemperatureLog;
}

export interface Stretch extends Piece, Pace {
  /** Not read yet: as the due time expects it. */
  readonly expected: boolean;
}

/** Up to `end`, which is the clock's own; neighbours at one temperature are one stretch. */
export function stretchesTo({ rules, runs, log }: ClockBasis, end: EpochMs): readonly Stretch[] {
  const last = runs.at(-1);
  if (last === undefined) return [];
  const read = epochMs(Math.min(end, readUpTo(rules, last, log)));
  const held = heldFrom(rules, log, read);
  return [
    ...stretchesOf(rules, piecesOf(rules, runs, log, read)),
    ...(read < end && last.to === undefined ? [expectedStretch(rules, { from: read, to: end, celsius: held })] : []),
  ];
}

export function stretchesOf(rules: DoseRules, pieces: readonly Piece[]): readonly Stretch[] {
  const merged: Stretch[] = [];
  for (const piece of pieces) {
    const before = merged.at(-1);
    if (before !== undefined && before.to === piece.from && before.celsius === piece.celsius) {
      merged[merged.length - 1] = { ...before, to: piece.to };
    } else {
      merged.push({ ...piece, ...paceAt(rules, piece.celsius), expected: false });
    }
  }
  return merged;
}

/** Where no credit is earned the due time goes on at the sheet's slowest. */
export function expectedStretch(rules: DoseRules, piece: { from: EpochMs; to: EpochMs; celsius: Celsius | undefined }) {
  const pace = paceAt(rules, piece.celsius);
  const without = 1 / (rules.caution === 'at-most' ? fastest(rules.law) : slowest(rules.law));
  return { ...piece, ...pace, perMinute: pace.perMinute > 0 ? pace.perMinute : without, expected: true };
}
