// Between what readings and figures usually lie, one row each with its source. What lies outside can be so, and is asked
// about once: mostly it is another unit, or a decimal sign that the thumb left out.

export interface UsualRange {
  readonly lowest: number;
  readonly highest: number;
  readonly source: 'common practice, no source' | 'from memory, no source';
}

const byPractice = (lowest: number, highest: number): UsualRange => ({
  ...{ lowest, highest },
  source: 'common practice, no source',
});

/** In the base unit of the slot. Of a film the part's sheet says more nearly what is usual. */
export const usualRanges = {
  /** Of a shop that is coated in, heated or not. */
  'air-temperature': byPractice(-15, 50),
  /** Indoors: fog is outside, and so is air that no heating dries. */
  humidity: byPractice(3, 99),
  /** Steel in the sun, and steel that has stood in the frost. */
  'surface-temperature': byPractice(-20, 60),
  'lowest-temperature': byPractice(-25, 40),
  /** In an oven for coatings. */
  'part-temperature': byPractice(-20, 260),
  'oven-temperature': byPractice(30, 300),
  /** From what plastics bear to what a casting does. */
  'highest-temperature': byPractice(40, 800),
  'wet-film': byPractice(0, 1_500),
  'dry-film': byPractice(0, 2_000),
  /** From a sample to a drum. */
  'can-mass': byPractice(20, 300_000),
  'door-time': byPractice(0, 60),
  /** Through a gun, in litres: a thimble rinses no passage. */
  'flush-volume': byPractice(0.02, 200),
  /** A booth's face gives 0.3 to 1 m/s, a duct more. */
  'face-velocity': byPractice(0.05, 3),
  /** Oxygen: air has 20.9 %. Of vapour nothing is asked, however much it is: what it means is told at once. */
  'gas-share': byPractice(0, 25),
  /** Of a booth or of its door. */
  area: byPractice(0.05, 60),
} as const satisfies Readonly<Record<string, UsualRange>>;

export type RangedSlot = keyof typeof usualRanges;

/** A film so many times the sheet's is more than a heavy hand: our own figure, no source. */
export const timesTheSheets = 3;
