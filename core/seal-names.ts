// The sums that a record may be sealed by, by name (core/seal-sums.ts makes them).

export const sealNames = ['sha256/1', 'sha256/2'] as const;
export type SealName = (typeof sealNames)[number];

/** What is recorded from now on is sealed by it. */
export const sealOfToday: SealName = 'sha256/2';
