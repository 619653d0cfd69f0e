// The clock by which pauses and limits are kept.

export interface Pace {
  /** Milliseconds that only go forward. */
  readonly now: () => number;
  readonly wait: (ms: number) => Promise<void>;
  /** Does it then, without keeping the program running for it; where there is none, `wait` serves. */
  readonly later?: (ms: number, work: () => void) => void;
}

export const wallPace: Pace = {
  now: () => performance.now(),
  wait: (ms) =>
    new Promise((resolve) => {
      setTimeout(resolve, ms);
    }),
  later: (ms, work) => {
    setTimeout(work, ms).unref();
  },
};
