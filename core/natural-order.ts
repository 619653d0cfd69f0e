// In which order names are listed: letters as a reader sorts them, numbers by their size, so that plate-2 stands before
// plate-10. The one comparison of names and streams for whatever people read.

const collator = new Intl.Collator('en', { numeric: true });

/** Never equal for two different names: an order that does not hang on where it started from. */
export function inNaturalOrder(a: string, b: string): number {
  return collator.compare(a, b) || (a === b ? 0 : a < b ? -1 : 1);
}
