// What a speaker was asked last: it lets a line be understood that says no more than the answer.

export interface Open {
  /** What answers it, as if typed; in braces what is still to be said. */
  readonly line: string;
  /** A button's own words. */
  readonly label: string;
  /** What may be typed alone in its place, as the readers spell it. */
  readonly bare: readonly string[];
  /** False: it is only offered. */
  readonly isAsked: boolean;
}

export interface Last {
  readonly open: readonly Open[];
  /** A bell waits for their `ok`. */
  readonly rings: () => boolean;
}
