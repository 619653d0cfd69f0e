// Where a rising condition turns from true to false between two ends, to the last bit that matters. Always the same
// halvings, so that a larger target never gives a smaller answer.

/** `isBelow(at)` says whether the place sought lies above `at`. */
export function bisect(lowest: number, highest: number, isBelow: (at: number) => boolean): number {
  let low = lowest;
  let high = highest;
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (isBelow(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
