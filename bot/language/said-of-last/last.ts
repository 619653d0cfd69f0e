// What a speaker was asked and has said last: it lets a line be understood that says no more than the answer, or what of it was
// wrong.

import type { Command } from '../../../core/commands.ts';
import type { EpochMs } from '../../../core/units.ts';

export interface Open {
  /** What answers it, as if typed; in braces what is still to be said. */
  readonly line: string;
  /** A button's own words. */
  readonly label: string;
  /** What may be typed alone in its place, as the readers spell it. */
  readonly bare: readonly string[];
  /** The question that it answers. */
  readonly asks?: string;
  /** False: it is only offered. */
  readonly isAsked: boolean;
  /** Among those of a card that asks which is meant, from 1. */
  readonly place?: number;
  /** There is no other on it. */
  readonly isOnly?: true;
}

/** The speaker's latest act. */
export interface SaidAct {
  /** Of its entry. */
  readonly entry: number;
  /** The act as its line, where it is known. */
  readonly line: string | undefined;
  readonly happenedAt: EpochMs;
  /** Said within the last minutes. */
  readonly isFresh: boolean;
  /** The same, where it is not of this minute. */
  readonly at: EpochMs | undefined;
  /** What `amend` calls it, where it can be put right. */
  readonly target: string | undefined;
  /** Which entry a command would put right. */
  readonly corrects: (command: Command) => number | undefined;
  /** Their last card was of something that was not recorded. */
  readonly isBeforeLast: boolean;
}

export interface Last {
  readonly open: readonly Open[];
  readonly said: () => SaidAct | undefined;
  /** What they said last of all, which was objected to, as its line: it may be put right before it is an act. */
  readonly objected: () => string | undefined;
  /** A bell waits for their `ok`. */
  readonly rings: () => boolean;
}
