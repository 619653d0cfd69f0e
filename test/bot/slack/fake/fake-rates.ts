// The stand-in's own limits, as the real one has them: one message a second in a channel, fifty changes a minute.

const spacingMs = 1_000;
const changesAMinute = 50;
const minuteMs = 60_000;

/** Seconds to wait before this call would be taken; `undefined`: it is taken, and counts. `now`: milliseconds. */
export type Rates = (method: string, channel: string) => number | undefined;

export function fakeRates(now: () => number): Rates {
  const postedAt = new Map<string, number>();
  let changedAt: number[] = [];
  return (method, channel) => {
    const at = now();
    if (method === 'chat.postMessage') {
      const wait = (postedAt.get(channel) ?? Number.NEGATIVE_INFINITY) + spacingMs - at;
      if (wait > 0) return Math.ceil(wait / 1000);
      postedAt.set(channel, at);
    }
    if (method === 'chat.update') {
      changedAt = changedAt.filter((before) => at - before < minuteMs);
      const [oldest = at] = changedAt;
      if (changedAt.length >= changesAMinute) return Math.ceil((oldest + minuteMs - at) / 1000);
      changedAt.push(at);
    }
    return undefined;
  };
}
