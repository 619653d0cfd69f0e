// Of what is booked of a part, each that a table may have a column for.

export const partColumns = ['name', 'serial', 'job', 'customer', 'metal', 'wall', 'area', 'highest'] as const;
export type PartColumn = (typeof partColumns)[number];
