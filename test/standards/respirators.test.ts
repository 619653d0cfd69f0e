// Respirators and breathing air: 29 CFR 1910.134 (2015 annual edition), and the NIOSH Pocket Guide beside it.

import {
  type BreathingAir,
  breathingAirLimits,
  highestDewPoint,
  judgedBreathingAir,
} from '../../core/calc/breathing-air.ts';
import { cartridgeLife } from '../../core/calc/change-out.ts';
import { substances } from '../../core/calc/exposure-limits.ts';
import {
  assignedProtectionFactor,
  type Facepiece,
  maximumUse,
  nioshSuppliedAirFactors,
  type RespiratorType,
} from '../../core/calc/respirators.ts';
import { celsius, milligramsPerCubicMetre, partsPerMillion, percent } from '../../core/units.ts';
import { answered, checkPublished, derived, type PublishedCase, seen } from './published-case.ts';

/** What fails or was not read. */
const breathingAirFailures = (air: BreathingAir) =>
  judgedBreathingAir(air, 'grade-d').flatMap(({ item, is }) => (is === 'within' ? [] : [item]));

const table1 = '29 CFR 1910.134(d)(3)(i)(A) Table 1';
const facepieces: readonly Facepiece[] = [
  'quarter-mask',
  'half-mask',
  'full-facepiece',
  'helmet-or-hood',
  'loose-fitting',
];
const dash = 'no-figure';

// Facepieces in the order above, as printed.
const printed: readonly (readonly [RespiratorType, readonly (number | typeof dash)[]])[] = [
  ['air-purifying', [5, 10, 50, dash, dash]],
  ['powered-air-purifying', [dash, 50, 1000, 25, 25]],
  ['supplied-air-demand', [dash, 10, 50, dash, dash]],
  ['supplied-air-continuous-flow', [dash, 50, 1000, 25, 25]],
  ['supplied-air-pressure-demand', [dash, 50, 1000, dash, dash]],
  ['self-contained-demand', [dash, 10, 50, 50, dash]],
  ['self-contained-pressure-demand', [dash, dash, 10_000, 10_000, dash]],
];

const factorOf = (type: RespiratorType, facepiece: Facepiece, evidence: 'maker-has-tested' | 'none') => {
  const found = assignedProtectionFactor(type, facepiece, evidence);
  return typeof found === 'number' ? found : found.failed;
};

const factors = printed.flatMap(([type, row]) =>
  facepieces.map(
    (facepiece, column): PublishedCase =>
      seen(`${type}, ${facepiece}: ${row[column]}`, table1, () => factorOf(type, facepiece, 'none'), row[column]),
  ),
);

const evidence = printed.map(
  ([type, row]): PublishedCase =>
    (row[3] === 25 ? seen : derived)(
      `${type}, hood that the maker has tested: 1,000 only where the table prints 25 / 1,000`,
      `${table1}, note 4`,
      () => factorOf(type, 'helmet-or-hood', 'maker-has-tested'),
      row[3] === 25 ? 1000 : row[3],
    ),
);

const hdi = { ...substances.hdi, limitPpm: partsPerMillion(0.005) };
const card = 'NIOSH Pocket Guide, HDI card';

const use: readonly PublishedCase[] = [
  ...(
    [
      ['any', 0.05],
      ['continuous-flow', 0.125],
      ['full-facepiece', 0.25],
      // The product would be 10 ppm: the card prints a lower cap.
      ['full-facepiece-pressure-demand', 1],
    ] as const
  ).map(
    ([kind, ppm]): PublishedCase =>
      seen(
        `HDI, supplied air ${kind}: up to ${ppm} ppm`,
        card,
        () => answered(maximumUse(nioshSuppliedAirFactors[kind], hdi)).ppm,
        ppm,
        1e-9,
      ),
  ),
  derived(
    'toluene 200 ppm times 10 is capped by the IDLH of 500',
    '29 CFR 1910.1000 Table Z-2; NIOSH Pocket Guide',
    () => answered(maximumUse(10, { ...substances.toluene, limitPpm: partsPerMillion(200) })),
    { ppm: 500, cappedBy: 'idlh' },
  ),
  seen(
    'isopropyl alcohol 400 ppm times 25 is capped by the IDLH: the card prints up to 2,000',
    'NIOSH Pocket Guide',
    () => answered(maximumUse(25, { ...substances['isopropyl-alcohol'], limitPpm: partsPerMillion(400) })).ppm,
    2000,
  ),
  derived(
    'above a tenth of the lower explosive limit is hazardous: 1.0 % caps at 1,000 ppm',
    '29 CFR 1910.146(b)',
    () =>
      answered(
        maximumUse(50, { limitPpm: partsPerMillion(100), idlhPpm: partsPerMillion(2000), lelPercent: percent(1) }),
      ),
    { ppm: 1000, cappedBy: 'tenth-of-lel' },
  ),
];

const pure: BreathingAir = {
  oxygen: percent(20.9),
  oil: milligramsPerCubicMetre(0),
  carbonMonoxide: partsPerMillion(0),
  carbonDioxide: partsPerMillion(400),
  odour: 'none',
  dewPoint: celsius(-60),
  supply: { kind: 'cylinder' },
};
const compressor = { kind: 'compressor', ambient: celsius(20) } as const;
const edge = (says: string, at: Partial<BreathingAir>, past: Partial<BreathingAir>, item: string): PublishedCase =>
  seen(
    says,
    '29 CFR 1910.134(i)',
    () => [breathingAirFailures({ ...pure, ...at }), breathingAirFailures({ ...pure, ...past })],
    [[], [item]],
  );

const breathing: readonly PublishedCase[] = [
  edge('oxygen not below 19.5 %', { oxygen: percent(19.5) }, { oxygen: percent(19.4) }, 'oxygen'),
  edge('oxygen not above 23.5 %', { oxygen: percent(23.5) }, { oxygen: percent(23.6) }, 'oxygen'),
  edge('oil to 5 mg/m3', { oil: milligramsPerCubicMetre(5) }, { oil: milligramsPerCubicMetre(5.1) }, 'oil'),
  edge(
    'carbon monoxide to 10 ppm',
    { carbonMonoxide: partsPerMillion(10) },
    { carbonMonoxide: partsPerMillion(11) },
    'carbon-monoxide',
  ),
  edge(
    'carbon dioxide to 1,000 ppm',
    { carbonDioxide: partsPerMillion(1000) },
    { carbonDioxide: partsPerMillion(1001) },
    'carbon-dioxide',
  ),
  edge('no noticeable odour', { odour: 'none' }, { odour: 'noticeable' }, 'odour'),
  edge(
    'a cylinder to a dew point of -50 degF',
    { dewPoint: celsius(-45.56) },
    { dewPoint: celsius(-45.5) },
    'dew-point',
  ),
  edge(
    'a compressor to 5.56 degC below the ambient',
    { dewPoint: celsius(14.44), supply: compressor },
    { dewPoint: celsius(14.5), supply: compressor },
    'dew-point',
  ),
  derived(
    'what was not read fails',
    '29 CFR 1910.134(i) asks for every item',
    () => breathingAirFailures({ ...pure, carbonMonoxide: undefined }),
    ['carbon-monoxide'],
  ),
  seen(
    '-50 degF is printed as -45.6 degC',
    '29 CFR 1910.134(i)',
    () => breathingAirLimits.cylinderDewPoint,
    -45.6,
    0.05,
  ),
  derived(
    '10 degF below the ambient is an interval: at 20 degC the dew point may be 14.44',
    '29 CFR 1910.134(i)',
    () => highestDewPoint(compressor),
    14.4444,
    0.0001,
  ),
];

checkPublished('assigned protection factors', { seen: 37, run: 0, derived: 5, 'from-memory': 0 }, [
  ...factors,
  ...evidence,
]);
checkPublished('maximum use concentration', { seen: 5, run: 0, derived: 2, 'from-memory': 0 }, use);
checkPublished('breathing air', { seen: 9, run: 0, derived: 2, 'from-memory': 0 }, breathing);

const ruleOfThumb = 'OSHA Respiratory eTool, change schedules: rule of thumb, after AIHA chapter 36';
const life = (boils: number, ppm: number, humidity: number, pace: 'ordinary' | 'hard' = 'ordinary') => {
  const found = cartridgeLife({
    breathed: [{ boils: celsius(boils), ppm: partsPerMillion(ppm) }],
    ...{ humidity: percent(humidity), pace },
  });
  return 'hours' in found ? found.hours : found.failed;
};

checkPublished('change-out of cartridges', { seen: 3, run: 0, derived: 3, 'from-memory': 0 }, [
  seen('above 70 degC, less than 200 ppm: 8 h', ruleOfThumb, () => life(111, 199, 60), 8),
  seen('above 85 % humidity: half', ruleOfThumb, () => life(111, 199, 86), 4),
  seen('inverse to the work: twice is half', ruleOfThumb, () => life(111, 199, 60, 'hard'), 4),
  derived('both: a quarter', ruleOfThumb, () => life(111, 199, 86, 'hard'), 2),
  derived('at 70 degC it does not apply', ruleOfThumb, () => life(70, 10, 60), 'does-not-apply'),
  derived('at 200 ppm it does not apply', ruleOfThumb, () => life(111, 200, 60), 'does-not-apply'),
]);
