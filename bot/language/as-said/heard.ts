// A line in other words, nearer to what the strict reader takes.

export interface Heard {
  readonly line: string;
  /** Whether the words can hardly have meant anything else. */
  readonly isSure: boolean;
}
