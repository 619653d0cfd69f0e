// How a bell of one's own is asked for, in patterns and phrases of lower case without accents.

export interface RemindersTyped {
  /** From the beginning of the line up to what follows: when, and what for. Its group `alone`: a noun that may tell as well. */
  readonly asks: RegExp;
  /** What follows rings by itself when it is so. */
  readonly whenDone: RegExp;
  /** Before how long it is. */
  readonly within: readonly string[];
  /** Before an hour of the clock. */
  readonly atHour: readonly string[];
  /** Between that and what it is for. */
  readonly joints: readonly string[];
}
