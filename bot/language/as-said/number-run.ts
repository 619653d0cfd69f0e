// Numbers in words that stand one after the other, in every way that they can be cut: `eleven ninety eight` is 11 and 98, or 1198.

import type { Change } from './words.ts';

/** More ways are no speech any more. */
export const mostWays = 8;

export interface NumberInRun {
  readonly from: number;
  readonly to: number;
  readonly figures: string;
  /** `oh`: only ever the beginning of what is joined. */
  readonly nought: boolean;
  readonly digit: number | undefined;
}

export function cuts(run: readonly NumberInRun[]): readonly (readonly Change[])[] {
  const [first, ...rest] = run;
  if (first === undefined) return [[]];
  const alone = first.nought ? [] : cuts(rest).map((more) => [change([first], first.figures), ...more]);
  return [...alone, ...pairCut(run), ...digitCut(run)].slice(0, mostWays);
}

const change = (pieces: readonly NumberInRun[], text: string): Change => ({
  from: pieces[0]?.from ?? 0,
  to: pieces.at(-1)?.to ?? 0,
  text,
});

/** `impeller seven sixty sixty two`: the number of a thing is no hundreds. */
export function ofNamed(run: readonly NumberInRun[]): readonly (readonly Change[])[] {
  const [first, ...rest] = run;
  const [next] = rest;
  if (first?.digit === undefined || next === undefined || next.digit !== undefined || next.nought) return cuts(run);
  // `mezcla 2 602 gramos` would be one number.
  const mark = /^\d{3}$/.test(next.figures) ? ',' : '';
  return cuts(rest).map((more) => [change([first], first.figures + mark), ...more]);
}

/** `eleven ninety eight`, `twelve oh one`, `one ninety five`. */
function pairCut([first, second, third, ...rest]: readonly NumberInRun[]): readonly (readonly Change[])[] {
  if (first === undefined || second === undefined || !/^[1-9]\d?$/.test(first.figures)) return [];
  if (second.nought) {
    if (third?.digit === undefined) return [];
    const text = `${first.figures}0${third.digit}`;
    return cuts(rest).map((more) => [change([first, second, third], text), ...more]);
  }
  if (!/^[1-9]\d$/.test(second.figures)) return [];
  const after = third === undefined ? rest : [third, ...rest];
  return cuts(after).map((more) => [change([first, second], first.figures + second.figures), ...more]);
}

/** `one two oh one`: digit by digit, as far as they go; of twice as many two numbers. */
function digitCut(run: readonly NumberInRun[]): readonly (readonly Change[])[] {
  const end = run.findIndex(({ digit }) => digit === undefined);
  const digits = end === -1 ? run : run.slice(0, end);
  if (digits.length < 3 || digits[0]?.digit === 0) return [];
  const inOne = (pieces: readonly NumberInRun[]) => change(pieces, pieces.map(({ digit }) => digit).join(''));
  const half = digits.length / 2;
  const more = cuts(run.slice(digits.length)).map((rest) => [inOne(digits), ...rest]);
  return [...more, ...(half === 4 && end === -1 ? [[inOne(digits.slice(0, half)), inOne(digits.slice(half))]] : [])];
}
