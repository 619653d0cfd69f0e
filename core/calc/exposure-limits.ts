// Published limits for what people breathe in a coating shop, each with the source that prints it. Data; which of them counts
// in a country is decided in day-limit.ts. A substance may have no limit from one body (HDI has none from OSHA) or only a
// ceiling (MDI): both stay visible.

import {
  type GramsPerMole,
  gramsPerMole,
  type Minutes,
  minutes,
  type PartsPerMillion,
  partsPerMillion,
} from '../units.ts';
import type { Result } from './refusal.ts';

/** `osha`: law of the United States; `eu`: of the European Union; `uk`, `mexico`, `ontario`: of these. `niosh` only recommends. */
export const limitBodies = ['osha', 'niosh', 'ontario', 'eu', 'uk', 'mexico'] as const;
export type LimitBody = (typeof limitBodies)[number];
/** Averaged over a working day, over 15 minutes, or never to be passed (HDI and MDI: as a 10-minute sample). */
export type LimitKind = 'average' | 'short-term' | 'ceiling';

export interface ExposureLimit {
  readonly body: LimitBody;
  readonly kind: LimitKind;
  readonly ppm: PartsPerMillion;
  readonly source: string;
  /** The edition of the rules from which on it counts; left out, the first. */
  readonly since?: number;
  /** Above a ceiling, up to so much and for so long in a shift. */
  readonly peak?: { readonly ppm: PartsPerMillion; readonly minutes: Minutes };
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

export type WithLimits = Pick<Substance, 'name' | 'limits'>;

const limit = (body: LimitBody, kind: LimitKind, ppm: number, source: string): ExposureLimit => ({
  ...{ body, kind, source },
  ppm: partsPerMillion(ppm),
});
const newer = (found: ExposureLimit): ExposureLimit => ({ ...found, since: 6 });

const tableZ1 = '29 CFR 1910.1000, Table Z-1';
const guide = 'NIOSH Pocket Guide';
const osha = (ppm: number): ExposureLimit => limit('osha', 'average', ppm, tableZ1);
const niosh = (ppm: number): ExposureLimit => limit('niosh', 'average', ppm, guide);
const shortTerm = (ppm: number): ExposureLimit => limit('niosh', 'short-term', ppm, guide);

type Directive = '2000/39/EC' | '2006/15/EC' | '2017/164/EU';
/** Indicative: each member state sets its own, which may be lower. Over the day and over 15 minutes. */
const eu = (directive: Directive, ppm: number, short?: number): readonly ExposureLimit[] =>
  both('eu', ppm, short, `Directive ${directive}, from memory`);
const uk = (ppm: number, short?: number) => both('uk', ppm, short, 'EH40/2005, fourth edition, from memory');
const mexico = (ppm: number, short?: number) => both('mexico', ppm, short, 'NOM-010-STPS-2014, from memory');

function both(body: LimitBody, ppm: number, short: number | undefined, source: string): readonly ExposureLimit[] {
  const day = newer(limit(body, 'average', ppm, source));
  return short === undefined ? [day] : [day, newer(limit(body, 'short-term', short, source))];
}

/** So much of the group NCO, of which a diisocyanate has two: 24.055 L/mol at 20 degC, as the laws count. */
const nco = (microgramsPerCubicMetre: number): number => ((microgramsPerCubicMetre / 1000) * 24.055) / (2 * 42.017);
/** As read, with its years before 2029 in which 10 and 20 still hold. */
const annexOne = 'Directive 98/24/EC, annex I: 6 and 12 ug NCO/m3 (10 and 20 until 31 December 2028)';
const isocyanates: readonly ExposureLimit[] = [
  newer(limit('eu', 'average', nco(6), annexOne)),
  newer(limit('eu', 'short-term', nco(12), annexOne)),
  newer(limit('uk', 'average', nco(20), 'EH40/2005: 0.02 mg NCO/m3, from memory')),
  newer(limit('uk', 'short-term', nco(70), 'EH40/2005: 0.07 mg NCO/m3, from memory')),
  ...mexico(0.005),
];

export const substances = {
  acetone: {
    name: 'acetone',
    cas: '67-64-1',
    molarMass: gramsPerMole(58.08),
    limits: [osha(1000), niosh(250), ...eu('2000/39/EC', 500), ...uk(500, 1500), ...mexico(500, 750)],
    idlhPpm: partsPerMillion(2500),
  },
  // None from the European Union.
  'isopropyl-alcohol': {
    name: 'isopropyl alcohol',
    cas: '67-63-0',
    molarMass: gramsPerMole(60.096),
    limits: [osha(400), niosh(400), shortTerm(500), ...uk(400, 500), ...mexico(200, 400)],
    idlhPpm: partsPerMillion(2000),
  },
  ethanol: {
    name: 'ethanol',
    cas: '64-17-5',
    molarMass: gramsPerMole(46.069),
    limits: [osha(1000), niosh(1000), ...uk(1000)],
    idlhPpm: partsPerMillion(3300),
  },
  toluene: {
    name: 'toluene',
    cas: '108-88-3',
    molarMass: gramsPerMole(92.141),
    limits: [
      limit('osha', 'average', 200, '29 CFR 1910.1000, Table Z-2'),
      {
        ...limit('osha', 'ceiling', 300, '29 CFR 1910.1000, Table Z-2'),
        peak: { ppm: partsPerMillion(500), minutes: minutes(10) },
      },
      ...[niosh(100), shortTerm(150), ...eu('2006/15/EC', 50, 100), ...uk(50, 100), ...mexico(20)],
    ],
    idlhPpm: partsPerMillion(500),
  },
  xylene: {
    name: 'xylene',
    cas: '1330-20-7',
    molarMass: gramsPerMole(106.168),
    limits: [osha(100), niosh(100), shortTerm(150), ...eu('2000/39/EC', 50, 100), ...uk(50, 100), ...mexico(100, 150)],
    idlhPpm: partsPerMillion(900),
  },
  'butyl-acetate': {
    name: 'n-butyl acetate',
    cas: '123-86-4',
    molarMass: gramsPerMole(116.16),
    limits: [
      ...[osha(150), niosh(150), shortTerm(200)],
      newer(limit('eu', 'average', 50, 'Directive (EU) 2019/1831')),
      newer(limit('eu', 'short-term', 150, 'Directive (EU) 2019/1831')),
      ...[...uk(150, 200), ...mexico(150, 200)],
    ],
    idlhPpm: partsPerMillion(1700),
  },
  'methyl-ethyl-ketone': {
    name: 'methyl ethyl ketone',
    cas: '78-93-3',
    molarMass: gramsPerMole(72.107),
    limits: [
      ...[osha(200), niosh(200), shortTerm(300), ...eu('2000/39/EC', 200, 300), ...uk(200, 300), ...mexico(200, 300)],
    ],
  },
  'methoxypropyl-acetate': {
    name: 'methoxypropyl acetate (PGMEA)',
    cas: '108-65-6',
    molarMass: gramsPerMole(132.159),
    limits: [
      limit('ontario', 'average', 50, 'Ontario’s list, as a public reference library stores it'),
      newer(limit('eu', 'average', 50, 'Directive 2000/39/EC')),
      newer(limit('eu', 'short-term', 100, 'Directive 2000/39/EC')),
      ...uk(50, 100),
    ],
  },
  butanol: {
    name: 'n-butanol',
    cas: '71-36-3',
    molarMass: gramsPerMole(74.123),
    limits: [
      osha(100),
      newer(limit('niosh', 'ceiling', 50, 'NIOSH Pocket Guide, from memory')),
      newer(limit('uk', 'short-term', 50, 'EH40/2005, fourth edition, from memory')),
      ...mexico(20),
    ],
  },
  'methyl-isobutyl-ketone': {
    name: 'methyl isobutyl ketone',
    cas: '108-10-1',
    molarMass: gramsPerMole(100.161),
    limits: [
      osha(100),
      newer(limit('niosh', 'average', 50, 'NIOSH Pocket Guide, from memory')),
      newer(limit('niosh', 'short-term', 75, 'NIOSH Pocket Guide, from memory')),
      ...[...eu('2000/39/EC', 20, 50), ...uk(50, 100)],
    ],
  },
  'methyl-acetate': {
    name: 'methyl acetate',
    cas: '79-20-9',
    molarMass: gramsPerMole(74.079),
    limits: [osha(200), newer(limit('niosh', 'average', 200, 'NIOSH Pocket Guide, from memory')), ...uk(200, 250)],
  },
  'ethyl-acetate': {
    name: 'ethyl acetate',
    cas: '141-78-6',
    molarMass: gramsPerMole(88.106),
    limits: [
      newer(limit('osha', 'average', 400, `${tableZ1}, from memory`)),
      newer(limit('niosh', 'average', 400, 'NIOSH Pocket Guide, from memory')),
      ...[...eu('2017/164/EU', 200, 400), ...uk(200, 400), ...mexico(400)],
    ],
  },
  'propyl-acetate': {
    name: 'n-propyl acetate',
    cas: '109-60-4',
    molarMass: gramsPerMole(102.133),
    limits: [newer(osha(200)), newer(niosh(200)), newer(shortTerm(250)), ...uk(200, 250)],
    idlhPpm: partsPerMillion(1700),
  },
  cyclohexanone: {
    name: 'cyclohexanone',
    cas: '108-94-1',
    molarMass: gramsPerMole(98.145),
    limits: [
      newer(limit('osha', 'average', 50, `${tableZ1}, from memory`)),
      newer(limit('niosh', 'average', 25, 'NIOSH Pocket Guide, from memory')),
      ...[...eu('2000/39/EC', 10, 20), ...uk(10, 20), ...mexico(20, 50)],
    ],
  },
  butoxyethanol: {
    name: '2-butoxyethanol',
    cas: '111-76-2',
    molarMass: gramsPerMole(118.176),
    limits: [
      ...[osha(50), newer(niosh(5))],
      newer(limit('eu', 'average', 20, 'Directive 2000/39/EC')),
      newer(limit('eu', 'short-term', 50, 'Directive 2000/39/EC')),
      ...[...uk(25, 50), ...mexico(20)],
    ],
    idlhPpm: partsPerMillion(700),
  },
  hdi: {
    name: 'hexamethylene diisocyanate (HDI)',
    cas: '822-06-0',
    molarMass: gramsPerMole(168.196),
    limits: [niosh(0.005), limit('niosh', 'ceiling', 0.02, guide), ...isocyanates],
    highestUsePpm: partsPerMillion(1),
  },
  // IDLH is printed as 75 mg/m3; in parts per million at 25 degC that is 75 x 24.4654 / 250.257.
  mdi: {
    name: 'methylene bisphenyl isocyanate (MDI)',
    cas: '101-68-8',
    molarMass: gramsPerMole(250.257),
    limits: [
      limit('osha', 'ceiling', 0.02, tableZ1),
      ...[niosh(0.005), limit('niosh', 'ceiling', 0.02, guide), ...isocyanates],
    ],
    idlhPpm: partsPerMillion((75 * 24.4654) / 250.257),
  },
} as const satisfies Record<string, Substance>;

export type SubstanceId = keyof typeof substances;

export const substanceIds = Object.keys(substances) as [SubstanceId];

/** The lowest limit of that kind from any body, `no-figure` where none was read. */
export function lowestLimit(substance: WithLimits, kind: LimitKind): Result<ExposureLimit> {
  return lowestOf(substance, (found) => found.kind === kind, kind);
}

/** What one body asks for over the day: its average, or where it has only a ceiling, that; `no-figure` for neither. */
export function dayLimitOf(substance: WithLimits, body: LimitBody): Result<ExposureLimit> {
  const average = substance.limits.find((found) => found.body === body && found.kind === 'average');
  return average ?? lowestOf(substance, (found) => found.body === body, body);
}

function lowestOf(
  substance: WithLimits,
  counts: (limit: ExposureLimit) => boolean,
  what: string,
): Result<ExposureLimit> {
  const [first, ...others] = substance.limits.filter(counts);
  if (first === undefined) return { failed: 'no-figure', what: `exposure-limit:${what}:${substance.name}` };
  return others.reduce((least, next) => (next.ppm < least.ppm ? next : least), first);
}
