// Coverage, wet film, mixing by volume and transfer efficiency against published and derived values.

import { coatingNeed, dryFilmFromUse, type Losses } from '../../core/calc/coating-need.ts';
import { volumeFromMass } from '../../core/calc/density.ts';
import { dryFilmFrom, type FilmMake, theoreticalCoverage, wetFilmFor } from '../../core/calc/film-build.ts';
import { partsByWeight, splitMass } from '../../core/calc/mixing.ts';
import {
  type ApplicationMethod,
  transferEfficiencies,
  transferEfficiencyOf,
} from '../../core/calc/transfer-efficiency.ts';
import {
  fraction,
  grams,
  gramsFromPounds,
  kilogramsPerLitre,
  litres,
  micrometres,
  micrometresFromMils,
  milsFromMicrometres,
  squareMetres,
  squareMetresFromSquareFeet,
  usGallonsFromLitres,
} from '../../core/units.ts';
import { answered, checkPublished, derived, fromMemory, type PublishedCase, seen } from './published-case.ts';

const bulletin = 'spreading-rate bulletin of a coating maker';
const guide = 'estimating guide, spreading-rate table';
const handbook = 'MIL-HDBK-1110, 2.1.5';
const gaugePage = 'wet-film page of a gauge maker';
const exact = '231 in3 a US gallon, 144 in2 a square foot, exact definitions';

const make = (solids: number, thinner = 0): FilmMake => ({
  volumeSolids: fraction(solids),
  thinnerShare: fraction(thinner),
});
const only = (transferEfficiency: number): Losses => ({
  transferEfficiency: fraction(transferEfficiency),
  profileLitresPerSquareMetre: 0,
  hoseLitres: litres(0),
  gunLitres: litres(0),
  filterLitres: litres(0),
});

/** Square feet a US gallon, from square metres a litre. */
const feetOfGallon = (coverage: number) => (coverage * 3.785411784) / 0.09290304;
const feetPerGallon = (mils: number, solids: number) =>
  feetOfGallon(answered(theoreticalCoverage(micrometresFromMils(mils), fraction(solids))));
/** As the handbook does, which rounds the 1,604 square feet of a gallon at a mil to 1,600. */
const withHandbookConstant = (mils: number, solids: number) =>
  (feetPerGallon(mils, solids) / feetPerGallon(1, 1)) * 1600;

const spreading: readonly PublishedCase[] = [
  seen('a gallon of pure solids at 1 mil covers 1,604.17 ft2', gaugePage, () => feetPerGallon(1, 1), 1604.17, 0.01),
  seen('65 % solids at 5 mil cover 208.52 ft2 a gallon', bulletin, () => feetPerGallon(5, 0.65), 208.52, 0.05),
  seen(
    '65 % solids at 125 um cover 5.2 m2 a litre',
    bulletin,
    () => theoreticalCoverage(micrometres(125), fraction(0.65)),
    5.2,
    0.01,
  ),
  seen('35 % solids at 2 mil cover 281 ft2 a gallon', guide, () => feetPerGallon(2, 0.35), 281, 1),
  ...[
    [1, 802],
    [2, 401],
    [3, 267],
    [4, 201],
    [5, 160],
    [6, 134],
    [8, 100],
    [10, 80],
  ].map(([mils = 0, feet = 0]) =>
    seen(`50 % solids at ${mils} mil cover ${feet} ft2 a gallon`, guide, () => feetPerGallon(mils, 0.5), feet, 1),
  ),
  ...[
    [1, 1, 1600],
    [2, 1, 800],
    [4, 1, 400],
    [2, 0.5, 400],
    [4, 0.5, 200],
  ].map(([mils = 0, solids = 0, feet = 0]) =>
    seen(
      `${solids * 100} % solids at ${mils} mil cover ${feet} ft2 with the constant 1,600`,
      handbook,
      () => withHandbookConstant(mils, solids),
      feet,
      1e-9,
    ),
  ),
  derived(
    '50 % solids at 1 mil cover 800 ft2, where a copy of the handbook prints 600',
    `slip in ${handbook}`,
    () => withHandbookConstant(1, 0.5),
    800,
    1e-9,
  ),
  seen('a gallon wet at 10 mil covers 160.417 ft2', gaugePage, () => feetPerGallon(10, 1), 160.417, 0.01),
  derived(
    '1 m2/L is 40.7458 ft2/gal',
    exact,
    () => feetOfGallon(answered(theoreticalCoverage(micrometres(1000), fraction(1)))),
    40.7458,
    0.0001,
  ),
];

const build: readonly PublishedCase[] = [
  seen(
    '8 mil wet of 35 % solids dry to 2.8 mil',
    guide,
    () => milsFromMicrometres(answered(dryFilmFrom(micrometresFromMils(8), make(0.35)))),
    2.8,
    0.01,
  ),
  derived(
    '8 mil wet of 35 % solids thinned 10 % dry to 2.545 mil',
    `formula of the ${guide}`,
    () => milsFromMicrometres(answered(dryFilmFrom(micrometresFromMils(8), make(0.35, 0.1)))),
    2.545,
    0.03,
  ),
  derived(
    '2.5 mil dry of 50 % solids thinned 10 % want 5.5 mil wet',
    'WFT = DFT (1 + t) / VS',
    () => milsFromMicrometres(answered(wetFilmFor(micrometresFromMils(2.5), make(0.5, 0.1)))),
    5.5,
    0.01,
  ),
  derived(
    '120 ft2 at 3 mil of 55 % solids at 65 % transfer want 0.6277 gallons',
    exact,
    () =>
      usGallonsFromLitres(
        answered(coatingNeed(squareMetresFromSquareFeet(120), micrometresFromMils(3), make(0.55), only(0.65)))
          .mixedLitres,
      ),
    0.6277,
    0.001,
  ),
  derived(
    'which are 2.376 litres',
    exact,
    () =>
      answered(coatingNeed(squareMetresFromSquareFeet(120), micrometresFromMils(3), make(0.55), only(0.65)))
        .mixedLitres,
    2.376,
    0.001,
  ),
  derived(
    '25 m2 at 75 um of 55 % solids at 65 % transfer want 5.245 litres',
    'area DFT / (VS TE)',
    () => answered(coatingNeed(squareMetres(25), micrometres(75), make(0.55), only(0.65))).mixedLitres,
    5.245,
    0.001,
  ),
  seen(
    '10 lb of a 10 lb/gal coating of 50 % solids on 100 ft2 leave 8.02 mil: pounds are grams divided by 453.6, where the column multiplies',
    'expert column, paints-and-coatings resource centre, December 2007',
    () => {
      const used = answered(volumeFromMass(gramsFromPounds(10), kilogramsPerLitre(1.19826427317)));
      return milsFromMicrometres(answered(dryFilmFromUse(used, squareMetresFromSquareFeet(100), make(0.5), only(1))));
    },
    (1604 * 0.5) / 100,
    0.001,
  ),
];

const fourToOne = {
  basis: 'volume',
  partsA: 4,
  partsB: 1,
  densities: { partAKilogramsPerLitre: kilogramsPerLitre(1.35), partBKilogramsPerLitre: kilogramsPerLitre(1.05) },
} as const;
const byWeight = () => answered(partsByWeight(fourToOne));

const volumes: readonly PublishedCase[] = [
  derived(
    '4 : 1 by volume at 1.35 and 1.05 kg/L is 5.143 : 1 by weight',
    '4 x 1.35 / 1.05',
    () => byWeight().partsA / byWeight().partsB,
    5.143,
    0.01,
  ),
  derived('which is 100 : 19.44', '105 / 5.4', () => (100 * byWeight().partsB) / byWeight().partsA, 19.44, 0.01),
  derived(
    'and Part B is 16.28 % of the mix by weight',
    '1.05 / 6.45',
    () => answered(splitMass(grams(100), fourToOne)).partBGrams,
    16.28,
    0.01,
  ),
];

const methods: readonly (readonly [ApplicationMethod, number, number])[] = [
  ['air-atomised', 0.25, 0.4],
  ['airless', 0.25, 0.45],
  ['manual-electrostatic', 0.6, 0.6],
  ['automatic-electrostatic', 0.7, 0.85],
  ['rotating-electrostatic', 0.8, 0.9],
  ['dip', 0.9, 0.85],
  ['flow', 0.9, 0.85],
];

const transfer: readonly PublishedCase[] = [
  ...methods.flatMap(([method, furniture, appliances]) => [
    seen(
      `${method}: ${furniture} of the solids stay on`,
      '40 CFR 60.313, metal furniture',
      () => transferEfficiencies[method].metalFurniture,
      furniture,
    ),
    seen(
      `${method}: ${appliances} of the solids stay on`,
      '40 CFR 60.453, large appliances',
      () => transferEfficiencies[method].largeAppliances,
      appliances,
    ),
    derived(
      `${method}: the plan takes the lower of the two`,
      '40 CFR 60.313 and 60.453',
      () => transferEfficiencyOf(method),
      Math.min(furniture, appliances),
    ),
  ]),
  fromMemory(
    'HVLP leaves 65 % on the part',
    'usual floor of Californian district rules, not seen',
    () => transferEfficiencyOf('hvlp'),
    0.65,
  ),
  fromMemory(
    'brush or roller leaves 90 % on the part',
    'planning figure, no source',
    () => transferEfficiencyOf('brush-or-roller'),
    0.9,
  ),
];

checkPublished(
  'coverage, wet film, mixing and transfer efficiency',
  { seen: 34, run: 0, derived: 17, 'from-memory': 2 },
  [...spreading, ...build, ...volumes, ...transfer],
);
