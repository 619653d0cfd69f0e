// Ventilation of spraying, dipping and flow coating; flammable liquids (OSHA, 2015 annual edition of the CFR).

import { leastFaceVelocity } from '../../core/calc/booth.ts';
import { type Solvent, type SolventId, solvents } from '../../core/calc/solvents.ts';
import { shareOfLel, vapourFromDensity, vapourPerLitre } from '../../core/calc/vapour.ts';
import { faceFlow, flowForExposure } from '../../core/calc/ventilation.ts';
import {
  type CubicMetres,
  cubicFeetFromCubicMetres,
  cubicFeetPerMinuteFromCubicMetresPerHour,
  cubicMetres,
  cubicMetresPerLitreFromCubicFeetPerUsGallon,
  gramsPerMole,
  kilogramsPerLitre,
  litres,
  litresFromUsGallons,
  metresPerSecondFromFeetPerMinute,
  minutes,
  type Percent,
  partsPerMillion,
  percent,
  squareMetresFromSquareFeet,
} from '../../core/units.ts';
import { answered, checkPublished, derived, type PublishedCase, run, seen } from './published-case.ts';

const rule = '29 CFR 1910.94(c)(6)(ii)';
const tableG11 = '29 CFR 1910.94 Table G-11';
const tableG10 = '29 CFR 1910.94 Table G-10';
const fire = '29 CFR 1910.107';

const oshaLel = (solvent: Solvent): Percent => {
  const found = solvent.lowerExplosiveLimits.find((limit) => limit.source === 'osha-1910.94');
  if (found === undefined) throw new Error('no Table G-11 limit');
  return found.percent;
};
/** The regulation's own sum: 4 (100 - LEL) / LEL of the vapour. */
const airByRule = (vapour: CubicMetres, lel: Percent) => cubicMetres((4 * vapour * (100 - lel)) / lel);
/** With the table's own figures. */
const ruleAir = (solvent: Solvent, gallons: number) => {
  const vapour = cubicMetres((solvent.tabledVapour ?? 0) * litresFromUsGallons(gallons));
  return airByRule(vapour, oshaLel(solvent));
};
const cubicFeet = (solvent: Solvent, gallons: number): number => cubicFeetFromCubicMetres(ruleAir(solvent, gallons));

// Solvent, printed limit, air in ft3 a US gallon and in m3 a litre.
const diluted: readonly (readonly [SolventId, number, number, number])[] = [
  ['acetone', 2.6, 6593.2, 49.32],
  ['isopropyl-alcohol', 2.0, 8624.0, 64.51],
  ['propanol', 2.1, 8354.1, 62.49],
  ['methyl-ethyl-ketone', 1.8, 7856.0, 58.77],
  ['toluene', 1.4, 8564.1, 64.06],
  ['xylene', 1.0, 10454.4, 78.2],
  ['butyl-acetate', 1.7, 5736.1, 42.91],
  ['ethyl-acetate', 2.5, 5116.8, 38.28],
  ['ethanol', 4.3, 4914.1, 36.76],
  ['methanol', 7.3, 4104.2, 30.7],
  ['butanol', 1.4, 9916.3, 74.18],
  ['cyclohexanone', 1.1, 11220.7, 83.94],
  ['butoxyethanol', 1.1, 8919.0, 66.72],
  ['methyl-acetate', 3.1, 5001.3, 37.41],
  ['methyl-propyl-ketone', 1.5, 7985.1, 59.73],
  ['varnish-naphtha', 0.9, 9866.0, 73.8],
  ['mineral-spirits', 1.0, 9187.2, 68.73],
  ['propyl-acetate', 2.8, 3776.9, 28.25],
  ['isopropyl-acetate', 1.1, 10069.8, 75.33],
  ['isoamyl-acetate', 1.0, 8553.6, 63.99],
  ['turpentine', 0.8, 10316.8, 77.18],
];

const dilution: readonly PublishedCase[] = diluted.flatMap(([id, lel, perGallon, perLitre]) => [
  seen(`${id}: lower explosive limit ${lel} %`, tableG11, () => oshaLel(solvents[id]), lel),
  derived(`${id}: ${perGallon} ft3 of air a gallon`, tableG11, () => cubicFeet(solvents[id], 1), perGallon, 0.06),
  derived(
    `${id}: ${perLitre} m3 of air a litre`,
    tableG11,
    () => ruleAir(solvents[id], 1 / litresFromUsGallons(1)),
    perLitre,
    0.01,
  ),
]);

const examples: readonly PublishedCase[] = [
  seen('the printed example: a gallon of toluene takes 8,564 ft3', rule, () => cubicFeet(solvents.toluene, 1), 8564, 1),
  derived(
    'half a gallon of toluene in 30 minutes takes 142.7 cfm',
    rule,
    () => cubicFeet(solvents.toluene, 0.5) / 30,
    142.7,
    0.1,
  ),
  derived(
    'a litre of acetone an hour takes 49.32 m3/h',
    rule,
    () => ruleAir(solvents.acetone, 1 / litresFromUsGallons(1)),
    49.32,
    0.01,
  ),
  derived(
    'a gallon of 60/40 acetone and o-xylene takes 8,137.7 ft3, part by part',
    rule,
    () => cubicFeet(solvents.acetone, 0.6) + cubicFeet(solvents.xylene, 0.4),
    8137.7,
    1,
  ),
  derived(
    'toluene at its newer limit of 1.1 % takes 10,933 ft3 a gallon',
    rule,
    () => cubicFeetFromCubicMetres(airByRule(cubicMetres(30.4 * 0.028316846592), percent(1.1))),
    10_933,
    1,
  ),
  derived(
    'holding a litre of toluene an hour under 200 ppm takes 1,137 m3/h in a perfectly mixed room',
    'vapour volume over limit; ideal gas at 70 degF',
    () => {
      const toluene = { ...solvents.toluene, tabledVapour: cubicMetresPerLitreFromCubicFeetPerUsGallon(30.39) };
      const { density: _, ...tabledOnly } = toluene;
      const part = { solvent: tabledOnly, litres: litres(1), limitPpm: partsPerMillion(200) };
      return answered(flowForExposure([part], minutes(60), 1));
    },
    1137,
    1,
  ),
  seen('the share for spraying is a quarter of the limit', rule, () => shareOfLel.oshaSpray, 0.25),
  seen('the share for spraying in California is a fifth', 'Title 8 CCR 5153(d)', () => shareOfLel.californiaSpray, 0.2),
];

// lb/gal at 70 degF by the density correlation of Perry's Handbook (8th ed.), g/mol, ft3 of vapour a gallon, m3 a litre.
const fromDensity: readonly (readonly [string, number, number, number, number])[] = [
  ['acetone', 6.601, 58.08, 43.96, 0.3288],
  ['isopropyl alcohol', 6.556, 60.096, 42.2, 0.3157],
  ['ethanol', 6.587, 46.069, 55.31, 0.4137],
  ['methyl ethyl ketone', 6.707, 72.107, 35.98, 0.2691],
  ['toluene', 7.239, 92.141, 30.39, 0.2273],
  ['o-xylene', 7.336, 106.168, 26.73, 0.1999],
  ['m-xylene', 7.205, 106.168, 26.25, 0.1964],
  ['n-butyl acetate', 7.342, 116.16, 24.45, 0.1829],
  ['ethyl acetate', 7.496, 88.106, 32.91, 0.2462],
  ['methyl isobutyl ketone', 6.674, 100.161, 25.77, 0.1928],
  ['methoxypropyl acetate', 8.08, 132.159, 23.6, 0.177],
];

const perLitre = (poundsPerGallon: number, molar: number): number =>
  answered(vapourFromDensity(kilogramsPerLitre((poundsPerGallon * 119.826427317) / 1000), gramsPerMole(molar)));

const vapours: readonly PublishedCase[] = fromDensity.flatMap(([name, pounds, molar, feet, metres]) => [
  run(
    `${name}: ${feet} ft3 of vapour a gallon from its density`,
    'ideal gas at 70 degF; Perry 8th ed. density',
    () => perLitre(pounds, molar) / 0.0074805195,
    feet,
    feet * 0.0025,
  ),
  run(
    `${name}: ${metres} m3 of vapour a litre from its density`,
    'ideal gas at 70 degF; Perry 8th ed. density',
    () => perLitre(pounds, molar),
    metres,
    metres * 0.0025,
  ),
]);

// Ours takes the larger of the table's volume and the density's at 20 degC: within 2 % of the table (5 % for 2-propanol).
const against: readonly PublishedCase[] = (
  [
    ['acetone', 44.0],
    ['isopropyl-alcohol', 44.0],
    ['ethanol', 55.2],
    ['methyl-ethyl-ketone', 36.0],
    ['toluene', 30.4],
    ['xylene', 26.4],
    ['butyl-acetate', 24.8],
    ['ethyl-acetate', 32.8],
  ] as const
).map(([id, feet]) =>
  seen(
    `${id}: ${feet} ft3 of vapour a gallon beside our larger of two`,
    tableG11,
    () => answered(vapourPerLitre(solvents[id])) / 0.0074805195,
    feet,
    feet * 0.02,
  ),
);

const fpm = metresPerSecondFromFeetPerMinute;

const booths: readonly PublishedCase[] = [
  derived(
    'an open face of 10 by 8 ft at 100 ft/min passes 8,000 cfm',
    tableG10,
    () => cubicFeetPerMinuteFromCubicMetresPerHour(answered(faceFlow(squareMetresFromSquareFeet(80), fpm(100)))),
    8000,
    0.01,
  ),
  seen(
    'an open face, no electrostatics: 100 ft/min, though the table accepts 75',
    `${fire}(b)(5)(i)`,
    () => leastFaceVelocity['air-operated'],
    fpm(100),
  ),
  seen(
    'an open face, electrostatic: 60 ft/min, though the table accepts 50',
    `${fire}(b)(5)(i)`,
    () => leastFaceVelocity.electrostatic,
    fpm(60),
  ),
];

checkPublished('air that thins vapour', { seen: 32, run: 22, derived: 47, 'from-memory': 0 }, [
  ...dilution,
  ...examples,
  ...vapours,
  ...against,
]);
checkPublished('air through a booth', { seen: 2, run: 0, derived: 1, 'from-memory': 0 }, booths);
