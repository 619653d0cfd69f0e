// What a gas monitor's reading comes to: the limit of the law, beyond which it rings, and the stricter advice beside it. Of one
// moment at one place: limits of a whole day are taken for the moment too, which is the cautious side.

export const gases = ['lel', 'o2', 'co', 'h2s'] as const;
/** Vapour that burns as a share of its lower explosive limit, oxygen, carbon monoxide, hydrogen sulphide. */
export type Gas = (typeof gases)[number];

interface Limit {
  /** In per cent, or parts per million. */
  readonly value: number;
  readonly source: string;
}

interface GasRow {
  readonly unit: '%' | 'ppm';
  readonly highest: Limit;
  readonly lowest?: Limit;
  /** Told with its ratio; it rings nobody. */
  readonly advised?: Limit;
}

const hazardous = '29 CFR 1910.146(b)';

/** The tables of 29 CFR 1910.1000 and NIOSH's figures: from memory, with 1910.146(b) read. */
export const gasRows: Readonly<Record<Gas, GasRow>> = {
  lel: { unit: '%', highest: { value: 10, source: hazardous } },
  o2: { unit: '%', highest: { value: 23.5, source: hazardous }, lowest: { value: 19.5, source: hazardous } },
  co: {
    unit: 'ppm',
    highest: { value: 50, source: '29 CFR 1910.1000 Table Z-1' },
    advised: { value: 35, source: 'NIOSH' },
  },
  h2s: {
    unit: 'ppm',
    highest: { value: 20, source: '29 CFR 1910.1000 Table Z-2' },
    advised: { value: 10, source: 'NIOSH' },
  },
};

export type GasVerdict = { readonly is: 'over' | 'under' | 'within' | 'advised'; readonly limit: Limit };

/** At the limit is beyond it for what burns: a monitor rounds. */
export function gasVerdict(gas: Gas, value: number): GasVerdict {
  const { highest, lowest, advised } = gasRows[gas];
  if (gas === 'lel' ? value >= highest.value : value > highest.value) return { is: 'over', limit: highest };
  if (lowest !== undefined && value < lowest.value) return { is: 'under', limit: lowest };
  if (advised !== undefined && value > advised.value) return { is: 'advised', limit: advised };
  return { is: 'within', limit: lowest ?? highest };
}

export const isBeyond = (gas: Gas, value: number): boolean => ['over', 'under'].includes(gasVerdict(gas, value).is);
