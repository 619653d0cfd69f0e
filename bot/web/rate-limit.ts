// How often somebody may do something: so many at once, and one more each so many seconds.

export interface RateLimit {
  /** Zero, and counted; or the seconds to wait, and not counted. */
  readonly take: (who: string) => number;
}

interface Allowance {
  readonly atOnce: number;
  readonly secondsEach: number;
  /** Milliseconds of any clock that never goes back. */
  readonly now?: () => number;
}

/** More callers than this at once are no crew: the oldest are forgotten. */
const mostCallers = 1000;

export function rateLimit({ atOnce, secondsEach, now = () => performance.now() }: Allowance): RateLimit {
  const eachMs = secondsEach * 1000;
  /** By caller, the moment at which nothing is used up any more. */
  const freeAt = new Map<string, number>();
  return {
    take: (who) => {
      const at = now();
      const next = Math.max(freeAt.get(who) ?? at, at) + eachMs;
      const over = next - at - atOnce * eachMs;
      if (over > 0) return Math.ceil(over / 1000);
      freeAt.delete(who);
      freeAt.set(who, next);
      const [oldest] = freeAt.keys();
      if (freeAt.size > mostCallers && oldest !== undefined) freeAt.delete(oldest);
      return 0;
    },
  };
}
