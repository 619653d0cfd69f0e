// What tells in one tongue that a line says what was done.

/** Patterns are of lower case, with accents. */
export interface DoneWords {
  /** How a line begins that tells what was done: never an order, a plan, or only how something stands. Somebody's name is `~`. */
  readonly is: RegExp;
  /** Behind a denial: what is no more of the list that it denies. */
  readonly byItself: RegExp;
  /** What a clause begins with that says when; phrases without accents. */
  readonly when: string;
  /** What a clause between commas begins with that says which thing is meant. */
  readonly which: string;
  /** Between two things that were done; else it puts off. */
  readonly thereupon: string;
  /** With a denial: what is still to come. */
  readonly notYet: string;
}
