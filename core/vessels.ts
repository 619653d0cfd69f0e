// What a mixing vessel and its tools may be of.

export const vesselMaterials = ['glass', 'stainless', 'hdpe'] as const;
export type VesselMaterial = (typeof vesselMaterials)[number];
