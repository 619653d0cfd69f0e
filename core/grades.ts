// What a surface or a film is graded in, in the published terms.

/**
 * How clean steel was made, in the published terms: ISO 8501-1 blast (Sa) and tool (St) grades, SSPC numbers (SP). The
 * series are near each other and not the same, so none is turned into another.
 */
export const surfaceGrades = [
  ...(['sa3', 'sa2.5', 'sa2', 'sa1', 'st3', 'st2'] as const),
  ...(['sp1', 'sp2', 'sp3', 'sp5', 'sp6', 'sp7', 'sp8', 'sp10', 'sp11', 'sp15'] as const),
] as const;
export type SurfaceGrade = (typeof surfaceGrades)[number];

/** ASTM D3359 method B runs from 5B (none away) to 0B, ISO 2409 from 0 (none away) to 5: never turned into each other. */
export const adhesionRatings = ['5B', '4B', '3B', '2B', '1B', '0B', '0', '1', '2', '3', '4', '5'] as const;
export type AdhesionRating = (typeof adhesionRatings)[number];

export const rubResults = ['no-effect', 'softened', 'through'] as const;
export type RubResult = (typeof rubResults)[number];
