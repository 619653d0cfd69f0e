// VOC content and exempt solvents: 40 CFR 51.100(s), 40 CFR 59.406(a), published examples.

import { countsAsVoc } from '../../core/calc/exempt-solvents.ts';
import {
  exemptLiquid,
  liquidOfContent,
  pouredTogether,
  type VocContent,
  type VocLiquid,
  vocContent,
} from '../../core/calc/voc.ts';
import { grams, gramsPerLitre, litres } from '../../core/units.ts';
import { answered, checkPublished, derived, seen } from './published-case.ts';

/** Grams a litre of a pound a US gallon. */
const pound = 453.59237 / 3.785411784;
const content = (...parts: readonly VocLiquid[]): VocContent => answered(vocContent(answered(pouredTogether(parts))));
const ofContent = (volume: number, gramsALitre: number): VocLiquid =>
  answered(liquidOfContent(litres(volume), gramsPerLitre(gramsALitre)));
const water = (volume: number): VocLiquid => ({
  volume: litres(volume),
  voc: grams(0),
  water: litres(volume),
  exempt: litres(0),
});

const kit = [ofContent(4, 250), ofContent(1, 400)] as const;
const acetone = (volume: number): VocLiquid => answered(exemptLiquid(litres(volume)));

const handbook = 'organic finishing handbook 2013, p. 817';
const arithmetic = '40 CFR 59.406(a), volumes additive';

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

checkPublished('VOC content', { seen: 1, run: 0, derived: 5, 'from-memory': 0 }, [
  seen(
    '3 volumes of A at 3.1, one of B at 1.8 lb/gal and 7 of water: 2.775 less water (2.75 printed)',
    handbook,
    () => content(ofContent(3, 3.1 * pound), ofContent(1, 1.8 * pound), water(7)).lessWaterAndExempt / pound,
    2.775,
    0.03,
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
  derived(
    'the slip of 0.76 is not repeated: 6 % VOC of 7.36 lb/gal and 52 % water by volume make 0.92 lb/gal',
    `${handbook}, third example`,
    () => {
      const voc = grams(0.06 * 7.36 * pound);
      const mixed = { volume: litres(1), voc, water: litres(0.52), exempt: litres(0) };
      return content(mixed).lessWaterAndExempt / pound;
    },
    0.92,
    0.005,
  ),
]);
