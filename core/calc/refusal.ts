// What a sum answers in place of NaN (`isFailed` tells): which input it cannot work with, what was given, and what it
// needs. Data only; the catalogue has the words.

export type Refusal =
  /** The input lies outside what the source covers or what can be. */
  | {
      readonly failed: 'out-of-range';
      readonly what: string;
      readonly given: number;
      readonly lowest: number;
      readonly highest: number;
    }
  /** The target is never reached (heating to or above the air's temperature, purging below the gas's own oxygen). */
  | { readonly failed: 'never-reached'; readonly what: string; readonly given: number; readonly limit: number }
  /** The source holds only for a nearer jump than the one asked for. */
  | { readonly failed: 'too-far'; readonly what: string; readonly given: number; readonly furthest: number }
  /** The rule does not apply to this case at all (a thin film, no readings, a Biot number too high). */
  | { readonly failed: 'does-not-apply'; readonly what: string; readonly given: number; readonly limit: number }
  /** The table has no such row. */
  | { readonly failed: 'no-figure'; readonly what: string };

export type Result<T> = T | Refusal;

/** `undefined` when `given` lies within both ends, else the refusal. NaN never lies within. */
export function outOfRange(what: string, given: number, lowest: number, highest: number): Refusal | undefined {
  return given >= lowest && given <= highest ? undefined : { failed: 'out-of-range', what, given, lowest, highest };
}
