// Exposure limits, lower explosive limits, mixtures and parts per million.

import { checkPeaks, dayAverage, milligramsFromPpm, mixtureIndex, type PeakLimit } from '../../core/calc/exposure.ts';
import {
  dayLimitOf,
  type LimitBody,
  type LimitKind,
  lowestLimit,
  type SubstanceId,
  substances,
} from '../../core/calc/exposure-limits.ts';
import { type LimitSource, type Solvent, type SolventId, solvents } from '../../core/calc/solvents.ts';
import { lowestLel } from '../../core/calc/vapour.ts';
import { gramsPerMole, hours, minutes, partsPerMillion as ppm } from '../../core/units.ts';
import { answered, checkPublished, derived, fromMemory, type PublishedCase, seen } from './published-case.ts';

const z1 = '29 CFR 1910.1000 Table Z-1, Z-2';
const guide = 'NIOSH Pocket Guide and IDLH documentation';

const limitOf = (id: SubstanceId, body: LimitBody, kind: LimitKind): number | undefined =>
  substances[id].limits.find((found) => found.body === body && found.kind === kind)?.ppm;

// Substance, body, kind and the printed parts per million; undefined where none is printed.
const limits: readonly (readonly [SubstanceId, LimitBody, LimitKind, number | undefined])[] = [
  ['acetone', 'osha', 'average', 1000],
  ['acetone', 'niosh', 'average', 250],
  ['isopropyl-alcohol', 'osha', 'average', 400],
  ['isopropyl-alcohol', 'niosh', 'average', 400],
  ['isopropyl-alcohol', 'niosh', 'short-term', 500],
  ['ethanol', 'osha', 'average', 1000],
  ['ethanol', 'niosh', 'average', 1000],
  ['toluene', 'osha', 'average', 200],
  ['toluene', 'osha', 'ceiling', 300],
  ['toluene', 'niosh', 'average', 100],
  ['toluene', 'niosh', 'short-term', 150],
  ['xylene', 'osha', 'average', 100],
  ['xylene', 'niosh', 'average', 100],
  ['xylene', 'niosh', 'short-term', 150],
  ['butyl-acetate', 'osha', 'average', 150],
  ['butyl-acetate', 'niosh', 'average', 150],
  ['butyl-acetate', 'niosh', 'short-term', 200],
  ['methyl-ethyl-ketone', 'osha', 'average', 200],
  ['methyl-ethyl-ketone', 'niosh', 'average', 200],
  ['methyl-ethyl-ketone', 'niosh', 'short-term', 300],
  ['methoxypropyl-acetate', 'ontario', 'average', 50],
  ['butanol', 'osha', 'average', 100],
  ['methyl-isobutyl-ketone', 'osha', 'average', 100],
  ['methyl-acetate', 'osha', 'average', 200],
  ['butoxyethanol', 'osha', 'average', 50],
  ['hdi', 'osha', 'average', undefined],
  ['hdi', 'niosh', 'average', 0.005],
  ['hdi', 'niosh', 'ceiling', 0.02],
  ['mdi', 'osha', 'average', undefined],
  ['mdi', 'osha', 'ceiling', 0.02],
  ['mdi', 'niosh', 'average', 0.005],
  ['mdi', 'niosh', 'ceiling', 0.02],
];

const dangerous: readonly (readonly [SubstanceId, number])[] = [
  ['acetone', 2500],
  ['isopropyl-alcohol', 2000],
  ['ethanol', 3300],
  ['toluene', 500],
  ['xylene', 900],
  ['butyl-acetate', 1700],
];

checkPublished('exposure limits', { seen: 41, run: 0, derived: 2, 'from-memory': 0 }, [
  ...limits.map(([id, body, kind, printed]) =>
    seen(`${id}: ${body} ${kind} ${printed} ppm`, body === 'osha' ? z1 : guide, () => limitOf(id, body, kind), printed),
  ),
  ...dangerous.map(([id, printed]) =>
    seen(`${id}: IDLH ${printed} ppm`, guide, () => ({ idlhPpm: undefined, ...substances[id] }).idlhPpm, printed),
  ),
  seen(
    'MDI: IDLH 75 mg/m3',
    guide,
    () => answered(milligramsFromPpm(substances.mdi.idlhPpm, substances.mdi.molarMass)),
    75,
    0.001,
  ),
  seen('OSHA has no limit for HDI', z1, () => dayLimitOf(substances.hdi, 'osha'), {
    failed: 'no-figure',
    what: 'exposure-limit:osha:hexamethylene diisocyanate (HDI)',
  }),
  seen('OSHA has only a ceiling for MDI', z1, () => answered(dayLimitOf(substances.mdi, 'osha')).kind, 'ceiling'),
  derived(
    'toluene: the average of a body counts before its ceiling',
    z1,
    () => answered(dayLimitOf(substances.toluene, 'osha')).ppm,
    200,
  ),
  derived(
    'acetone: the lowest day limit is 250 ppm',
    guide,
    () => answered(lowestLimit(substances.acetone, 'average')).ppm,
    250,
  ),
]);

const lel = (id: SolventId, source: LimitSource): number | undefined => {
  const solvent: Solvent = solvents[id];
  return solvent.lowerExplosiveLimits.find((limit) => limit.source === source)?.percent;
};

// Solvent, NFPA 497 and IEC 60079-20-1 limits as printed, and the lowest of all that were read.
const explosive: readonly (readonly [SolventId, number | undefined, number | undefined, number])[] = [
  ['acetone', 2.5, 2.5, 2.5],
  ['isopropyl-alcohol', 2.0, 2.0, 2.0],
  ['ethanol', 3.3, 3.1, 3.1],
  ['toluene', 1.1, 1.0, 1.0],
  ['xylene', 0.9, 0.9, 0.9],
  ['butyl-acetate', 1.7, 1.2, 1.2],
  ['methyl-ethyl-ketone', 1.4, 1.5, 1.4],
  ['ethyl-acetate', 2.0, 2.0, 2.0],
  ['butanol', 1.4, 1.4, 1.4],
  ['methyl-isobutyl-ketone', undefined, 1.2, 1.2],
  ['cyclohexanone', 1.1, 1.3, 1.1],
  ['butoxyethanol', 1.1, 1.1, 1.1],
  ['propanol', 2.2, 2.1, 2.1],
  ['methanol', 6.0, 6.0, 6.0],
  ['methyl-acetate', 3.1, 3.1, 3.1],
  ['methyl-propyl-ketone', 1.5, undefined, 1.5],
  ['propyl-acetate', 1.7, 1.7, 1.7],
  ['isopropyl-acetate', 1.8, 1.7, 1.1],
  ['isoamyl-acetate', 1.0, undefined, 1.0],
  ['turpentine', 0.8, undefined, 0.8],
];

checkPublished('lower explosive limits', { seen: 40, run: 0, derived: 21, 'from-memory': 0 }, [
  ...explosive.flatMap(([id, nfpa, iec, lowest]) => [
    seen(`${id}: ${nfpa} %`, 'NFPA 497, 2008', () => lel(id, 'nfpa-497'), nfpa),
    seen(`${id}: ${iec} %`, 'IEC 60079-20-1', () => lel(id, 'iec-60079-20-1'), iec),
    derived(
      `${id}: the lowest published is ${lowest} %, and not the old table's alone`,
      'NFPA 497; IEC 60079-20-1; 29 CFR 1910.94 Table G-11; NIOSH Pocket Guide',
      () => {
        const { percent: found, oldTableOnly } = answered(lowestLel(solvents[id]));
        return { found, oldTableOnly };
      },
      { found: lowest, oldTableOnly: false },
    ),
  ]),
  derived(
    'mineral spirits: 1.0 % stands only in the old table, and is marked so',
    '29 CFR 1910.94 Table G-11',
    () => answered(lowestLel(solvents['mineral-spirits'])).oldTableOnly,
    true,
  ),
]);

// mg/m3 to one part per million, as the guide prints it or as molar mass over 24.45.
const converted: readonly (readonly [SubstanceId, number, typeof seen])[] = [
  ['acetone', 2.38, fromMemory],
  ['isopropyl-alcohol', 2.46, seen],
  ['ethanol', 1.89, seen],
  ['toluene', 3.77, seen],
  ['xylene', 4.34, derived],
  ['butyl-acetate', 4.75, derived],
  ['methyl-ethyl-ketone', 2.95, derived],
  ['methoxypropyl-acetate', 5.4, derived],
  ['hdi', 6.88, seen],
  ['mdi', 10.2, derived],
];

const peak: PeakLimit = { averagePpm: ppm(10), ceilingPpm: ppm(25), peakPpm: ppm(50), peakMinutes: minutes(10) };
const rule = '29 CFR 1910.1000(b)(3)';
const day = (...samples: readonly (readonly [number, number])[]) =>
  samples.map(([share, lasted]) => ({ ppm: ppm(share), hours: hours(lasted) }));
const breaches = (...samples: readonly (readonly [number, number])[]) =>
  answered(checkPeaks(peak, day(...samples))).breaches;
const against = (share: number, limit: number) => ({ ppm: ppm(share), limitPpm: ppm(limit) });

const sums: readonly PublishedCase[] = [
  ...converted.map(([id, printed, make]) =>
    make(
      `${id}: one part per million is ${printed} mg/m3`,
      'NIOSH Pocket Guide, 25 degC',
      () => answered(milligramsFromPpm(ppm(1), substances[id].molarMass)),
      printed,
      printed * 0.005,
    ),
  ),
  seen(
    'one part per million of 40 g/mol is 1.63496 mg/m3',
    'public library `chemicals`, after an industrial-ventilation manual',
    () => answered(milligramsFromPpm(ppm(1), gramsPerMole(40))),
    1.63496,
    1e-4,
  ),
  seen(
    'toluene: 100 ppm are 375 mg/m3 on the card',
    'NIOSH Pocket Guide',
    () => answered(milligramsFromPpm(ppm(100), substances.toluene.molarMass)),
    375,
    375 * 0.005,
  ),
  derived(
    'toluene: 100 ppm are 376.6 mg/m3',
    'ideal gas at 25 degC',
    () => answered(milligramsFromPpm(ppm(100), substances.toluene.molarMass)),
    376.6,
    0.05,
  ),
  seen(
    '2 h at 150, 2 h at 75 and 4 h at 50 ppm are 81.25 ppm over the day',
    '29 CFR 1910.1000(d)(1), its own example',
    () => answered(dayAverage(day([150, 2], [75, 2], [50, 4]))).ppm,
    81.25,
  ),
  seen(
    '500 of 1000, 45 of 200 and 40 of 200 ppm make 0.925',
    '29 CFR 1910.1000(d)(2), its own example',
    () => answered(mixtureIndex([against(500, 1000), against(45, 200), against(40, 200)])),
    0.925,
    1e-12,
  ),
  seen('50 ppm for ten minutes over a ceiling of 25 is within', rule, () => breaches([50, 1 / 6], [8, 7]), []),
  derived('50 ppm for eleven minutes is not', rule, () => breaches([50, 11 / 60], [8, 7]), ['ceiling-too-long']),
  derived('51 ppm at any time is not', rule, () => breaches([51, 1 / 60]), ['peak']),
  derived('25 ppm is not above the ceiling', rule, () => breaches([25, 3]), []),
  derived('an average above 10 is not', rule, () => breaches([11, 8]), ['average']),
];

checkPublished('exposure sums', { seen: 9, run: 0, derived: 10, 'from-memory': 1 }, sums);
