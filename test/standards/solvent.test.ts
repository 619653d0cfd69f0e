// VOC content and exempt solvents: 40 CFR 51.100(s), 40 CFR 59.406(a), published examples.

import { countsAsVoc } from '../../core/calc/exempt-solvents.ts';
import {
  defaultSolventDensity,
  exemptLiquid,
  liquidOfContent,
  pouredTogether,
  type VocContent,
  type VocLiquid,
  vocContent,
  vocPerLitreOfSolids,
} from '../../core/calc/voc.ts';
import { type Composition, liquidFromWeights, volumeSolids } from '../../core/calc/voc-weights.ts';
import {
  fraction,
  grams,
  gramsPerLitre,
  gramsPerLitreFromPoundsPerGallon,
  kilogramsPerLitre,
  litres,
  poundsPerGallonFromGramsPerLitre,
} from '../../core/units.ts';
import { answered, checkPublished, derived, seen } from './published-case.ts';

const pounds = (content: number) => gramsPerLitreFromPoundsPerGallon(content);
const density = (poundsPerGallon: number) => kilogramsPerLitre(pounds(poundsPerGallon) / 1000);
const content = (...parts: readonly VocLiquid[]): VocContent => answered(vocContent(answered(pouredTogether(parts))));
const ofContent = (volume: number, gramsALitre: number): VocLiquid =>
  answered(liquidOfContent(litres(volume), gramsPerLitre(gramsALitre)));
const water = (volume: number): VocLiquid => ({
  volume: litres(volume),
  voc: grams(0),
  water: litres(volume),
  exempt: litres(0),
});
const fromSheet = (composition: Composition): VocContent =>
  content(answered(liquidFromWeights(litres(1), composition)));

const waterborne: Composition = {
  density: density(8.52),
  solids: fraction(0.208),
  water: { share: fraction(0.53), density: density(8.33) },
  exempt: [],
};
const solventborne: Composition = {
  density: kilogramsPerLitre(1.2),
  solids: fraction(0.6),
  water: { share: fraction(0), density: kilogramsPerLitre(1) },
  exempt: [{ share: fraction(0.15), density: kilogramsPerLitre(0.79224) }],
};
const kit = [ofContent(4, 250), ofContent(1, 400)] as const;
const acetone = (volume: number): VocLiquid => answered(exemptLiquid(litres(volume)));

const column = "expert column of a paint trade's resource centre, March 2004";
const handbook = 'organic finishing handbook 2013, p. 817';
const arithmetic = '40 CFR 59.406(a), volumes additive';
const solidsRule = '30 TAC 115.423';

const perSolids = (poundsPerGallon: number): number =>
  poundsPerGallonFromGramsPerLitre(answered(vocPerLitreOfSolids(pounds(poundsPerGallon), defaultSolventDensity)));

checkPublished('what counts as VOC', { seen: 17, run: 0, derived: 1, 'from-memory': 0 }, [
  ...[
    'acetone',
    'methyl-acetate',
    'parachlorobenzotrifluoride',
    'dimethyl-carbonate',
    'methyl-formate',
    'propylene-carbonate',
  ].map((name) => seen(`${name} is exempt`, '40 CFR 51.100(s)', () => countsAsVoc(name, 'limit'), false)),
  seen(
    't-butyl acetate is exempt against a limit',
    '40 CFR 51.100(s)(5), 2015',
    () => countsAsVoc('t-butyl-acetate', 'limit'),
    false,
  ),
  seen(
    't-butyl acetate counts in the records',
    '40 CFR 51.100(s)(5), 2015',
    () => countsAsVoc('t-butyl-acetate', 'record'),
    true,
  ),
  seen('acetone does not count in the records', '40 CFR 51.100(s)', () => countsAsVoc('acetone', 'record'), false),
  ...[
    'isopropyl-alcohol',
    'ethanol',
    'methyl-ethyl-ketone',
    'methyl-isobutyl-ketone',
    'toluene',
    'xylene',
    'butyl-acetate',
    'methoxypropyl-acetate',
  ].map((name) => seen(`${name} counts`, '40 CFR 51.100(s), absent from it', () => countsAsVoc(name, 'limit'), true)),
  derived(
    'a name like a built-in property counts',
    '40 CFR 51.100(s), absent from it',
    () => countsAsVoc('constructor', 'limit'),
    true,
  ),
]);

checkPublished('VOC content', { seen: 4, run: 0, derived: 16, 'from-memory': 0 }, [
  seen(
    'waterborne coating: 4.87 lb/gal less water',
    column,
    () => poundsPerGallonFromGramsPerLitre(fromSheet(waterborne).lessWaterAndExempt),
    4.87,
    0.01,
  ),
  seen(
    'waterborne coating: 2.23 lb/gal actual',
    column,
    () => poundsPerGallonFromGramsPerLitre(fromSheet(waterborne).actual),
    2.23,
    0.01,
  ),
  seen(
    '3 volumes of A at 3.1, one of B at 1.8 lb/gal and 7 of water: 2.775 less water (2.75 printed)',
    handbook,
    () =>
      poundsPerGallonFromGramsPerLitre(
        content(ofContent(3, pounds(3.1)), ofContent(1, pounds(1.8)), water(7)).lessWaterAndExempt,
      ),
    2.775,
    0.03,
  ),
  derived('coating with acetone: 300.0 g/L actual', arithmetic, () => fromSheet(solventborne).actual, 300, 0.1),
  derived(
    'coating with acetone: 0.2272 L of it in a litre',
    arithmetic,
    () => answered(liquidFromWeights(litres(1), solventborne)).exempt,
    0.2272,
    0.0001,
  ),
  derived(
    'coating with acetone: 388.2 g/L less exempt',
    arithmetic,
    () => fromSheet(solventborne).lessWaterAndExempt,
    388.2,
    0.1,
  ),
  derived(
    'coating with acetone: 3.240 lb/gal less exempt',
    arithmetic,
    () => poundsPerGallonFromGramsPerLitre(fromSheet(solventborne).lessWaterAndExempt),
    3.24,
    0.001,
  ),
  derived(
    'the same with isopropyl alcohol in its place: 480 g/L both ways',
    arithmetic,
    () => {
      const { actual, lessWaterAndExempt } = fromSheet({ ...solventborne, exempt: [] });
      return [Math.abs(actual - 480) < 0.1, Math.abs(lessWaterAndExempt - 480) < 0.1];
    },
    [true, true],
  ),
  derived('kit of 4 volumes at 250 and one at 400 g/L: 280', arithmetic, () => content(...kit).actual, 280, 0.1),
  derived(
    'the kit thinned by a tenth with 790 g/L: 326.4',
    arithmetic,
    () => content(...kit, ofContent(0.5, 790)).lessWaterAndExempt,
    326.4,
    0.1,
  ),
  derived(
    'the kit thinned by a tenth with acetone: still 280 against a limit',
    'EPA memorandum of 1983: exempt solvent is taken off like water',
    () => content(...kit, acetone(0.5)).lessWaterAndExempt,
    280,
    0.1,
  ),
  derived(
    'the kit thinned by a tenth with acetone: 254.5 actual',
    arithmetic,
    () => content(...kit, acetone(0.5)).actual,
    254.5,
    0.1,
  ),
  derived('3.5 lb/gal is 6.674 lb a gallon of solids', solidsRule, () => perSolids(3.5), 6.674, 0.01),
  derived('2.8 lb/gal is 4.519', solidsRule, () => perSolids(2.8), 4.519, 0.01),
  derived('3.0 lb/gal is 5.064', solidsRule, () => perSolids(3), 5.064, 0.01),
  derived('4.3 lb/gal is 10.343', solidsRule, () => perSolids(4.3), 10.343, 0.01),
  derived(
    'volatiles 440 g/L of 860 g/L leave 0.4884 of solids',
    '40 CFR 63.3941(b)(4)',
    () => answered(volumeSolids(gramsPerLitre(440), gramsPerLitre(860))),
    0.4884,
    0.0005,
  ),
  derived('one lb/gal is 119.826 g/L', 'exact definitions', () => pounds(1), 119.826, 0.0005),
  derived(
    'the slip of 0.76 is not repeated: 6 % VOC, 42 % solids and 52 % water by volume make 0.92 lb/gal',
    `${handbook}, third example`,
    () => {
      const voc = grams(0.06 * defaultSolventDensity);
      const mixed = { volume: litres(1), voc, water: litres(0.52), exempt: litres(0) };
      return poundsPerGallonFromGramsPerLitre(content(mixed).lessWaterAndExempt);
    },
    0.92,
    0.005,
  ),
  seen('a lb/gal of a handbook is 119.8 g/L', 'handbooks', () => pounds(1), 119.8, 0.05),
]);
