// A line in other words, nearer to what the strict reader takes.

export interface Heard {
  readonly line: string;
  /** Whether the words can hardly have meant anything else. */
  readonly isSure: boolean;
  /** As it was before known parts were put by their names: `brackets 1 thru 8` may be of new ones. */
  readonly unlisted?: string;
}
