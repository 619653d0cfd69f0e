// What the shift's chapters share: how a line is written down, and how parts are named.

/** Wall clock, who, what. */
export type Said = readonly [at: string, as: string, line: string];

/** `plate-1` to `plate-10`. */
export const named = (kind: string, count: number): readonly string[] =>
  Array.from({ length: count }, (_, i) => `${kind}-${i + 1}`);
