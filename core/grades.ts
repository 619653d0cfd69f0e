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

/** Each series from the least clean: ISO 8501-1 and SSPC, their order from memory. SP 1 and SP 8 stand alone. */
const gradeSeries: readonly (readonly SurfaceGrade[])[] = [
  ['sa1', 'sa2', 'sa2.5', 'sa3'],
  ['st2', 'st3'],
  ['sp7', 'sp6', 'sp10', 'sp5'],
  ['sp2', 'sp3', 'sp15', 'sp11'],
];

/** As clean as was asked, or cleaner. */
export function isAsClean(grade: SurfaceGrade, asked: SurfaceGrade): boolean {
  const series = gradeSeries.find((each) => each.includes(asked)) ?? [asked];
  return series.indexOf(grade) >= series.indexOf(asked);
}

/** What is taken off a surface before its coat. Oil and grease go together, as the standards name them. */
export const contaminants = ['grease', 'dust', 'rust', 'old-coat'] as const;
export type Contaminant = (typeof contaminants)[number];

/**
 * What is off by then, as each grade is worded: ISO 8501-1, whose steel is freed of loose dust and debris too, and SSPC, from memory.
 * An old coat that holds may stay but on the cleanest.
 */
export function takenOffTo(grade: SurfaceGrade): readonly Contaminant[] {
  switch (grade) {
    case 'sa3':
    case 'sa2.5':
    case 'sp5':
    case 'sp10':
    case 'sp6':
    case 'sp11':
    case 'sp15':
      return contaminants;
    case 'sa2':
    case 'sa1':
    case 'st3':
    case 'st2':
    case 'sp7':
      return ['grease', 'dust', 'rust'];
    case 'sp2':
    case 'sp3':
    case 'sp8':
      return ['grease', 'rust'];
    case 'sp1':
      return ['grease'];
  }
}

/** What it is taken off by, besides a solvent. */
export const prepWays = ['blasting', 'grinding', 'sanding', 'wiping'] as const;
export type PrepWay = (typeof prepWays)[number];

/** Of what it is sanded with, as ISO 6344 names the coarser and finer ones. */
export const grits = [
  ...(['p24', 'p36', 'p40', 'p60', 'p80', 'p100', 'p120', 'p150', 'p180', 'p220'] as const),
  ...(['p240', 'p280', 'p320', 'p360', 'p400', 'p500', 'p600', 'p800', 'p1000'] as const),
] as const;
export type Grit = (typeof grits)[number];

/** ASTM D3359 method B runs from 5B (none away) to 0B, ISO 2409 from 0 (none away) to 5: never turned into each other. */
export const adhesionRatings = ['5B', '4B', '3B', '2B', '1B', '0B', '0', '1', '2', '3', '4', '5'] as const;
export type AdhesionRating = (typeof adhesionRatings)[number];

/** ASTM F22: whether a film of water lay unbroken on the cleaned steel. */
export const waterBreaks = ['held', 'broke'] as const;
export type WaterBreak = (typeof waterBreaks)[number];

export const rubResults = ['no-effect', 'softened', 'through'] as const;
export type RubResult = (typeof rubResults)[number];
