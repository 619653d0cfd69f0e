// What a crew says of its people: who is what, and where a bell finds them.

/** Each may settle what the one before it may, and more. */
export const roles = ['crew', 'lead', 'supervisor'] as const;
export type Role = (typeof roles)[number];

/** In the thread of the batch, with a mention; or in a direct message. */
export const ringsTo = ['thread', 'direct'] as const;
export type RingsTo = (typeof ringsTo)[number];
