// Solvents that a coating shop meets: how much vapour a litre makes and from how little of it air can burn, each figure
// as its source prints it. Data only; which of two published figures to use is decided in vapour.ts.

import {
  type Celsius,
  type CubicMetresPerLitre,
  celsius,
  celsiusFromFahrenheit,
  cubicMetresPerLitreFromCubicFeetPerUsGallon,
  type GramsPerMole,
  gramsPerMole,
  type KilogramsPerLitre,
  kilogramsPerLitre,
  type Percent,
  percent,
} from '../units.ts';

/**
 * `osha-1910.94`: 29 CFR 1910.94 Table G-11, old figures, several too high. `nfpa-497`: NFPA 497, 2008.
 * `iec-60079-20-1`: IEC 60079-20-1. `niosh-card`: NIOSH Pocket Guide.
 */
export type LimitSource = 'osha-1910.94' | 'nfpa-497' | 'iec-60079-20-1' | 'niosh-card';

export interface PublishedLimit {
  readonly percent: Percent;
  readonly source: LimitSource;
  /** The edition of the rules from which on it counts; left out, the first. */
  readonly since?: number;
}

export interface Solvent {
  /** Vapour of a litre of liquid at 70 degF, Table G-11 (printed in cubic feet per US gallon). */
  readonly tabledVapour?: CubicMetresPerLitre;
  /** Per cent by volume of air, lower end. */
  readonly lowerExplosiveLimits: readonly PublishedLimit[];
  /** From standard atomic weights. */
  readonly molarMass?: GramsPerMole;
  /** At 20 degC: the correlation in Perry's Chemical Engineers' Handbook, 8th ed. */
  readonly density?: KilogramsPerLitre;
  readonly flashPointCelsius?: Celsius;
  readonly boilingPointCelsius?: Celsius;
}

type Limits = { readonly [source in LimitSource]?: number };
interface More {
  readonly molar?: number;
  readonly density?: number;
  readonly flash?: Celsius;
  readonly boils?: Celsius;
  /** Read since the rules' edition 6. */
  readonly newer?: Limits;
}

function solvent(cubicFeetPerGallon: number | undefined, limits: Limits, more: More = {}): Solvent {
  const published = [...printed(limits), ...printed(more.newer ?? {}).map((found) => ({ ...found, since: 6 }))];
  return {
    lowerExplosiveLimits: published,
    ...(cubicFeetPerGallon !== undefined && {
      tabledVapour: cubicMetresPerLitreFromCubicFeetPerUsGallon(cubicFeetPerGallon),
    }),
    ...(more.molar !== undefined && { molarMass: gramsPerMole(more.molar) }),
    ...(more.density !== undefined && { density: kilogramsPerLitre(more.density) }),
    ...(more.flash !== undefined && { flashPointCelsius: more.flash }),
    ...(more.boils !== undefined && { boilingPointCelsius: more.boils }),
  };
}

const sources: readonly LimitSource[] = ['osha-1910.94', 'nfpa-497', 'iec-60079-20-1', 'niosh-card'];

function printed(limits: Limits): readonly PublishedLimit[] {
  return sources.flatMap((source) => {
    const found = limits[source];
    return found === undefined ? [] : [{ percent: percent(found), source }];
  });
}

const f = celsiusFromFahrenheit;
const c = celsius;

// Flash points: the lowest of the Pocket Guide's, NFPA 497's and IEC 60079-20-1's of those that were read. Boiling points: Pocket Guide,
// for acetone a national laboratory's solvent summary; of a range the lower end.
export const solvents = {
  acetone: solvent(
    44.0,
    { 'osha-1910.94': 2.6, 'nfpa-497': 2.5, 'iec-60079-20-1': 2.5 },
    { molar: 58.08, density: 0.7922, flash: c(-20), boils: f(133) },
  ),
  'isopropyl-alcohol': solvent(
    44.0,
    { 'osha-1910.94': 2.0, 'nfpa-497': 2.0, 'iec-60079-20-1': 2.0, 'niosh-card': 2.0 },
    { molar: 60.096, density: 0.7867, flash: f(53), boils: f(181) },
  ),
  ethanol: solvent(
    55.2,
    { 'osha-1910.94': 4.3, 'nfpa-497': 3.3, 'iec-60079-20-1': 3.1, 'niosh-card': 3.3 },
    { molar: 46.069, density: 0.7903, flash: c(12), boils: f(173) },
  ),
  toluene: solvent(
    30.4,
    { 'osha-1910.94': 1.4, 'nfpa-497': 1.1, 'iec-60079-20-1': 1.0, 'niosh-card': 1.1 },
    { molar: 92.141, density: 0.8685, flash: c(4), boils: f(232) },
  ),
  // Mixed isomers: the table's volume is for o-xylene; density of o-xylene, the heaviest; flash point of the lowest.
  xylene: solvent(
    26.4,
    { 'osha-1910.94': 1.0, 'nfpa-497': 0.9, 'iec-60079-20-1': 0.9, 'niosh-card': 0.9 },
    { molar: 106.168, density: 0.8799, flash: c(25), boils: c(138.35) },
  ),
  'butyl-acetate': solvent(
    24.8,
    { 'osha-1910.94': 1.7, 'nfpa-497': 1.7, 'iec-60079-20-1': 1.2, 'niosh-card': 1.7 },
    { molar: 116.16, density: 0.8809, flash: c(22), boils: c(126.15) },
  ),
  'methyl-ethyl-ketone': solvent(
    36.0,
    { 'osha-1910.94': 1.8, 'nfpa-497': 1.4, 'iec-60079-20-1': 1.5 },
    { molar: 72.107, density: 0.8049, flash: c(-10), boils: c(80) },
  ),
  'methyl-isobutyl-ketone': solvent(
    undefined,
    { 'iec-60079-20-1': 1.2 },
    { molar: 100.161, density: 0.8007, flash: c(16) },
  ),
  'ethyl-acetate': solvent(
    32.8,
    { 'osha-1910.94': 2.5, 'nfpa-497': 2.0, 'iec-60079-20-1': 2.0 },
    { molar: 88.106, density: 0.8995, flash: c(-4) },
  ),
  butanol: solvent(
    35.2,
    { 'osha-1910.94': 1.4, 'nfpa-497': 1.4, 'iec-60079-20-1': 1.4 },
    { molar: 74.123, flash: c(35) },
  ),
  // Table G-11 gives its limit at 212 degF, where it is lower than in a cool room; NFPA's 1.1 agrees.
  cyclohexanone: solvent(
    31.2,
    { 'osha-1910.94': 1.1, 'nfpa-497': 1.1, 'iec-60079-20-1': 1.3 },
    { molar: 98.145, flash: c(43) },
  ),
  butoxyethanol: solvent(
    24.8,
    { 'osha-1910.94': 1.1, 'nfpa-497': 1.1, 'iec-60079-20-1': 1.1 },
    { molar: 118.176, flash: c(61) },
  ),
  // No lower limit was read in a published table: what needs one is refused, not guessed. Flash and boiling point and
  // density from a public collection of data sheets.
  'methoxypropyl-acetate': solvent(undefined, {}, { molar: 132.159, density: 0.968, flash: c(42), boils: c(145.8) }),
  propanol: solvent(44.8, { 'osha-1910.94': 2.1 }, { flash: c(15), newer: { 'nfpa-497': 2.2, 'iec-60079-20-1': 2.1 } }),
  methanol: solvent(80.8, { 'osha-1910.94': 7.3 }, { flash: c(9), newer: { 'nfpa-497': 6.0, 'iec-60079-20-1': 6.0 } }),
  'methyl-acetate': solvent(
    40.0,
    { 'osha-1910.94': 3.1 },
    { flash: c(-10), newer: { 'nfpa-497': 3.1, 'iec-60079-20-1': 3.1 } },
  ),
  'methyl-propyl-ketone': solvent(30.4, { 'osha-1910.94': 1.5 }, { flash: c(7), newer: { 'nfpa-497': 1.5 } }),
  // Of these two naphthas no newer table was read.
  'varnish-naphtha': solvent(22.4, { 'osha-1910.94': 0.9 }),
  'mineral-spirits': solvent(23.2, { 'osha-1910.94': 1.0 }),
  // NIOSH prints its limit for 100 degF.
  'propyl-acetate': solvent(
    27.2,
    { 'osha-1910.94': 2.8 },
    { flash: c(10), newer: { 'nfpa-497': 1.7, 'iec-60079-20-1': 1.7, 'niosh-card': 1.7 } },
  ),
  'isopropyl-acetate': solvent(
    28.0,
    { 'osha-1910.94': 1.1 },
    { flash: c(1), newer: { 'nfpa-497': 1.8, 'iec-60079-20-1': 1.7 } },
  ),
  'isoamyl-acetate': solvent(21.6, { 'osha-1910.94': 1.0 }, { flash: c(25), newer: { 'nfpa-497': 1.0 } }),
  turpentine: solvent(20.8, { 'osha-1910.94': 0.8 }, { flash: c(35), newer: { 'nfpa-497': 0.8 } }),
} as const satisfies Record<string, Solvent>;

export type SolventId = keyof typeof solvents;
/** As its figures were kept in that edition of the rules. */
export function solventAsIn(solvent: Solvent, edition: number): Solvent {
  const kept = solvent.lowerExplosiveLimits.filter(({ since = 1 }) => since <= edition);
  return { ...solvent, lowerExplosiveLimits: kept };
}

export const solventIds = Object.keys(solvents) as SolventId[];
