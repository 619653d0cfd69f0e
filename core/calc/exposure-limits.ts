// Published limits for what people breathe in a coating shop, as printed. Data, and the lowest of them. A substance may
// have no limit from one body (HDI has none from OSHA) or only a ceiling (MDI): both stay visible.

import { type GramsPerMole, gramsPerMole, type PartsPerMillion, partsPerMillion } from '../units.ts';
import type { Result } from './refusal.ts';

export type LimitBody = 'osha' | 'niosh' | 'ontario';
/** Averaged over a working day, over 15 minutes, or never to be passed (HDI and MDI: as a 10-minute sample). */
export type LimitKind = 'average' | 'short-term' | 'ceiling';

export interface ExposureLimit {
  readonly body: LimitBody;
  readonly kind: LimitKind;
  readonly ppm: PartsPerMillion;
}

export interface Substance {
  readonly name: string;
  readonly cas: string;
  readonly molarMass: GramsPerMole;
  readonly limits: readonly ExposureLimit[];
  /** Immediately dangerous to life or health, NIOSH; absent where not determined or not read. */
  readonly idlhPpm?: PartsPerMillion;
  /** Where no IDLH stands: the highest use that the NIOSH card prints for any air-supplying respirator. */
  readonly highestUsePpm?: PartsPerMillion;
}

const limit = (body: LimitBody, kind: LimitKind, ppm: number): ExposureLimit => ({
  body,
  kind,
  ppm: partsPerMillion(ppm),
});
const osha = (ppm: number): ExposureLimit => limit('osha', 'average', ppm);
const niosh = (ppm: number): ExposureLimit => limit('niosh', 'average', ppm);
const shortTerm = (ppm: number): ExposureLimit => limit('niosh', 'short-term', ppm);

// OSHA: 29 CFR 1910.1000 Table Z-1, toluene Table Z-2. NIOSH: Pocket Guide and its IDLH documentation. Ontario: as a
// public reference library stores its list.
export const substances = {
  acetone: {
    name: 'acetone',
    cas: '67-64-1',
    molarMass: gramsPerMole(58.08),
    limits: [osha(1000), niosh(250)],
    idlhPpm: partsPerMillion(2500),
  },
  'isopropyl-alcohol': {
    name: 'isopropyl alcohol',
    cas: '67-63-0',
    molarMass: gramsPerMole(60.096),
    limits: [osha(400), niosh(400), shortTerm(500)],
    idlhPpm: partsPerMillion(2000),
  },
  ethanol: {
    name: 'ethanol',
    cas: '64-17-5',
    molarMass: gramsPerMole(46.069),
    limits: [osha(1000), niosh(1000)],
    idlhPpm: partsPerMillion(3300),
  },
  toluene: {
    name: 'toluene',
    cas: '108-88-3',
    molarMass: gramsPerMole(92.141),
    limits: [osha(200), limit('osha', 'ceiling', 300), niosh(100), shortTerm(150)],
    idlhPpm: partsPerMillion(500),
  },
  xylene: {
    name: 'xylene',
    cas: '1330-20-7',
    molarMass: gramsPerMole(106.168),
    limits: [osha(100), niosh(100), shortTerm(150)],
    idlhPpm: partsPerMillion(900),
  },
  'butyl-acetate': {
    name: 'n-butyl acetate',
    cas: '123-86-4',
    molarMass: gramsPerMole(116.16),
    limits: [osha(150), niosh(150), shortTerm(200)],
    idlhPpm: partsPerMillion(1700),
  },
  'methyl-ethyl-ketone': {
    name: 'methyl ethyl ketone',
    cas: '78-93-3',
    molarMass: gramsPerMole(72.107),
    limits: [osha(200), niosh(200), shortTerm(300)],
  },
  'methoxypropyl-acetate': {
    name: 'methoxypropyl acetate (PGMEA)',
    cas: '108-65-6',
    molarMass: gramsPerMole(132.159),
    limits: [limit('ontario', 'average', 50)],
  },
  butanol: { name: 'n-butanol', cas: '71-36-3', molarMass: gramsPerMole(74.123), limits: [osha(100)] },
  'methyl-isobutyl-ketone': {
    name: 'methyl isobutyl ketone',
    cas: '108-10-1',
    molarMass: gramsPerMole(100.161),
    limits: [osha(100)],
  },
  'methyl-acetate': { name: 'methyl acetate', cas: '79-20-9', molarMass: gramsPerMole(74.079), limits: [osha(200)] },
  butoxyethanol: { name: '2-butoxyethanol', cas: '111-76-2', molarMass: gramsPerMole(118.176), limits: [osha(50)] },
  hdi: {
    name: 'hexamethylene diisocyanate (HDI)',
    cas: '822-06-0',
    molarMass: gramsPerMole(168.196),
    limits: [niosh(0.005), limit('niosh', 'ceiling', 0.02)],
    highestUsePpm: partsPerMillion(1),
  },
  // IDLH is printed as 75 mg/m3; in parts per million at 25 degC that is 75 x 24.4654 / 250.257.
  mdi: {
    name: 'methylene bisphenyl isocyanate (MDI)',
    cas: '101-68-8',
    molarMass: gramsPerMole(250.257),
    limits: [limit('osha', 'ceiling', 0.02), niosh(0.005), limit('niosh', 'ceiling', 0.02)],
    idlhPpm: partsPerMillion((75 * 24.4654) / 250.257),
  },
} as const satisfies Record<string, Substance>;

export type SubstanceId = keyof typeof substances;

/** The lowest limit of that kind from any body, `no-figure` where none was read. */
export function lowestLimit(substance: Substance, kind: LimitKind): Result<ExposureLimit> {
  return lowestOf(substance, (found) => found.kind === kind, kind);
}

/** What one body asks for over the day: its average, or where it has only a ceiling, that; `no-figure` for neither. */
export function dayLimitOf(substance: Substance, body: LimitBody): Result<ExposureLimit> {
  const average = substance.limits.find((found) => found.body === body && found.kind === 'average');
  return average ?? lowestOf(substance, (found) => found.body === body, body);
}

function lowestOf(
  substance: Substance,
  counts: (limit: ExposureLimit) => boolean,
  what: string,
): Result<ExposureLimit> {
  const [first, ...others] = substance.limits.filter(counts);
  if (first === undefined) return { failed: 'no-figure', what: `exposure-limit:${what}:${substance.name}` };
  return others.reduce((least, next) => (next.ppm < least.ppm ? next : least), first);
}
