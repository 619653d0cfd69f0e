// What a gas monitor's reading comes to: the limit of the law, beyond which it rings, and the stricter advice beside it. Of one
// moment at one place: limits of a whole day are taken for the moment too, which is the cautious side.

import type { LegalFrame } from './legal-frame.ts';

export const gases = ['lel', 'o2', 'co', 'h2s'] as const;
/** Vapour that burns as a share of its lower explosive limit, oxygen, carbon monoxide, hydrogen sulphide. */
export type Gas = (typeof gases)[number];

interface Limit {
  /** In per cent, or parts per million. */
  readonly value: number;
  readonly source: string;
}

interface GasLimits {
  readonly highest: Limit;
  readonly lowest?: Limit;
  /** Told with its ratio; it rings nobody. */
  readonly advised?: Limit;
}

export const unitOfGas: Readonly<Record<Gas, '%' | 'ppm'>> = { lel: '%', o2: '%', co: 'ppm', h2s: 'ppm' };

const hazardous = '29 CFR 1910.146(b)';
const burns: GasLimits = { highest: { value: 10, source: hazardous } };
const breathed: GasLimits = {
  highest: { value: 23.5, source: hazardous },
  lowest: { value: 19.5, source: hazardous },
};

const ppmLimit = (value: number, source: string): GasLimits => ({
  highest: { value, source: `${source}, from memory` },
});

/**
 * Of what is measured in ppm by whose law it is; NIOSH advises in the United States alone. `elsewhere`, and in Mexico, whose own
 * figures are not kept: the lowest of these.
 */
const inPpm: Readonly<Record<'co' | 'h2s', Readonly<Record<LegalFrame, GasLimits>>>> = {
  co: {
    us: {
      ...ppmLimit(50, '29 CFR 1910.1000 Table Z-1'),
      advised: { value: 35, source: 'NIOSH, from memory' },
    },
    eu: ppmLimit(20, 'Directive (EU) 2017/164'),
    uk: ppmLimit(20, 'EH40'),
    mexico: ppmLimit(20, 'Directive (EU) 2017/164'),
    elsewhere: ppmLimit(20, 'Directive (EU) 2017/164'),
  },
  h2s: {
    us: {
      ...ppmLimit(20, '29 CFR 1910.1000 Table Z-2'),
      advised: { value: 10, source: 'NIOSH, from memory' },
    },
    eu: ppmLimit(5, 'Directive 2009/161/EU'),
    uk: ppmLimit(5, 'EH40'),
    mexico: ppmLimit(5, 'Directive 2009/161/EU'),
    elsewhere: ppmLimit(5, 'Directive 2009/161/EU'),
  },
};

function limitsOf(gas: Gas, law: LegalFrame): GasLimits {
  switch (gas) {
    case 'lel':
      return burns;
    case 'o2':
      return breathed;
    case 'co':
    case 'h2s':
      return inPpm[gas][law];
  }
}

export interface GasVerdict {
  readonly is: 'over' | 'under' | 'within' | 'advised';
  readonly limit: Limit;
  /** Of the law, whatever is advised. */
  readonly highest: Limit;
}

/** A reading, and under whose law it was read. */
export interface GasRead {
  readonly gas: Gas;
  readonly value: number;
  readonly law: LegalFrame;
}

/** At the limit is beyond it for what burns: a monitor rounds. */
export function gasVerdict({ gas, value, law }: GasRead): GasVerdict {
  const { highest, lowest, advised } = limitsOf(gas, law);
  if (gas === 'lel' ? value >= highest.value : value > highest.value) return { is: 'over', limit: highest, highest };
  if (lowest !== undefined && value < lowest.value) return { is: 'under', limit: lowest, highest };
  if (advised !== undefined && value > advised.value) return { is: 'advised', limit: advised, highest };
  return { is: 'within', limit: lowest ?? highest, highest };
}

export const isBeyond = (read: GasRead): boolean => ['over', 'under'].includes(gasVerdict(read).is);

/** Whether an alarm tells of a reading beyond its limit: by what is noted with it then. */
export const isGasNote = (what: string, note: string | undefined): note is string =>
  what === 'emergency' && /^(?:LEL|O2|CO|H2S) [\d.]+ (?:%|ppm)$/.test(note ?? '');
