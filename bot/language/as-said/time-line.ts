// What the readings of a spoken time look at, and what they make of it.

import type { LineContext } from '../reading.ts';
import type { NumberWords, TimeWords } from '../tongues/typed.ts';
import { belowHundred, digitSaid } from './number-words.ts';
import type { Said } from './words.ts';

export interface TimeLine {
  readonly said: readonly Said[];
  readonly times: TimeWords;
  readonly numbers: NumberWords;
  readonly context: LineContext;
}

export interface TimeAt {
  /** Index of the word after it. */
  readonly to: number;
  /** What is said instead, each time that it may be. */
  readonly texts: readonly string[];
  readonly isSure: boolean;
}

export interface Figure {
  readonly value: number;
  readonly to: number;
  readonly inFigures: boolean;
}

/** Below a hundred, in words or figures. */
export function figureAt({ said, numbers }: TimeLine, at: number): Figure | undefined {
  const typed = said[at]?.word ?? '';
  if (/^\d{1,2}$/.test(typed)) return { value: Number(typed), to: at + 1, inFigures: true };
  const whole = typed === 'a' ? undefined : belowHundred(said, at, numbers);
  return whole === undefined ? undefined : { ...whole, inFigures: false };
}

/** Minutes behind an hour: `forty`, `oh five`, `40`. */
export function minutesAt(line: TimeLine, at: number): Figure | undefined {
  const { said, numbers } = line;
  const digit = numbers.nought.includes(said[at]?.word ?? '') ? digitSaid(said[at + 1]?.word, numbers) : undefined;
  if (digit !== undefined) return { value: digit, to: at + 2, inFigures: false };
  const figure = figureAt(line, at);
  const isMinute = figure !== undefined && figure.value < 60 && (figure.value > 9 || said[at]?.word.length === 2);
  return isMinute ? figure : undefined;
}
