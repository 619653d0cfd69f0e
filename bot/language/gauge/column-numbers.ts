// Whether some figures may be numbered: 1, 2, 3 … at even distances, with readings between. Then nobody can tell which are readings.

/** Between one number and the next; `undefined` where they are not numbered. */
export function numberedEvery(values: readonly number[]): number | undefined {
  if (values.length < fewestNumbered || values[0] !== 1) return undefined;
  for (let every = 2; every <= values.length / 2; every++) {
    const numbers = values.filter((_, i) => i % every === 0);
    if (values.length % every === 0 && numbers.every((value, i) => value === i + 1)) return every;
  }
  return undefined;
}

/** Two numbers with a reading each. */
const fewestNumbered = 4;
