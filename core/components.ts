// The two parts of the material, by name.

export const components = ['part-a', 'part-b'] as const;
export type Component = (typeof components)[number];
