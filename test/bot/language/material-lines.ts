// Lines about cans, weighing in pieces, what a pot goes through, stock and plans, as a thumb types them. Invented.

import {
  grams,
  gramsFromOunces,
  gramsFromPounds,
  litres,
  litresFromUsGallons,
  micrometres,
  micrometresFromMils,
  revolutionsPerMinute,
  squareMetres,
  squareMetresFromSquareFeet,
  squareMetresPerHour,
} from '../../../core/units.ts';
import { utc } from './shop-at-ten.ts';
import { act, ask, happenedAt, miss, type TypedLine } from './typed-line.ts';

const openA = { verb: 'open', component: 'part-a', lot: '7731', grams: grams(5000) } as const;
const sixPlates = { ask: 'plan', parts: [{ count: 6, eachSquareMetres: squareMetres(0.8) }], method: 'spray' } as const;

export const materialLines: readonly TypedLine[] = [
  // Cans.
  act('open A lot 7731 5kg', openA),
  act('Open a lot 7731 5 kg.', openA),
  act('opened part A, lot: 7731, 5kg', openA),
  act('open A 5kg lot 7731 gas', { ...openA, handling: 'gas' }),
  act('open A lot 7731 5kg argon at hand', { ...openA, handling: 'gas' }),
  act('open A lot 7731 5kg whole', { ...openA, handling: 'whole' }),
  act('open A lot 7731 5kg exp 2026-12 gas', { ...openA, expires: '2026-12-31', handling: 'gas' }),
  act('open A lot 7731 exp 12/2026 5kg', { ...openA, expires: '2026-12-31' }),
  act('open A lot 7731 5kg expires 2028-02', { ...openA, expires: '2028-02-29' }),
  act(
    'open A lot 7731 5kg exp 2026-12-24 at 9:40',
    { ...openA, expires: '2026-12-24' },
    happenedAt('2026-03-02T09:40'),
  ),
  act('open A lot 7731 5kg in 6l clear', { ...openA, litres: litres(6), sheet: 'demo-clear' }),
  act('open B lot B-22/7 1 gal 11lb build', {
    ...{ verb: 'open', component: 'part-b', lot: 'B-22/7', sheet: 'demo-build' },
    ...{ grams: gramsFromPounds(11), litres: litresFromUsGallons(1) },
  }),
  act('open A lot 7731 1gal exp 2026-12 gas', {
    ...{ verb: 'open', component: 'part-a', lot: '7731', litres: litresFromUsGallons(1) },
    ...{ expires: '2026-12-31', handling: 'gas' },
  }),
  act('open B lot 7731 3,8l', { verb: 'open', component: 'part-b', lot: '7731', litres: litres(3.8) }),
  act('open A lot 9:40 5kg', { ...openA, lot: '9:40' }),
  act('open A lot “77 31” 5kg', { ...openA, lot: '77 31' }),
  miss('open lot 7731 5kg', 'incomplete', '', 'open A lot 7731 5kg'),
  miss('open A 5kg', 'incomplete', ''),
  act('open A lot 7731', { verb: 'open', component: 'part-a', lot: '7731' }),
  miss('open A lot 7731 5', 'unit-missing', '5', 'open A lot 7731 5kg'),
  miss('open A lot 7731 5kg exp soon', 'incomplete', 'soon'),
  miss('open A lot 7731 5kg exp 2026-13', 'impossible', '2026-13'),
  miss('open A lot 7731 5kg sunny', 'unknown-sheet', 'sunny', 'open A lot 7731 5kg demo-build'),
  act('lid 3', { verb: 'lid', can: 3 }),
  act('lid off can 3', { verb: 'lid', can: 3 }),
  act('lid 3 gas', { verb: 'lid', can: 3, handling: 'gas' }),
  act('lid off can 3 argon at hand', { verb: 'lid', can: 3, handling: 'gas' }),
  act('shut 3', { verb: 'shut', can: 3 }),
  act('lid on can 3 used whole', { verb: 'shut', can: 3, handling: 'whole' }),
  act('shut can 3 with gas', { verb: 'shut', can: 3, handling: 'gas' }),
  act('blanket 3', { verb: 'blanket', can: 3 }),
  act('blanket', { verb: 'blanket' }),
  act('blanketed can 3 at 9:40', { verb: 'blanket', can: 3 }, happenedAt('2026-03-02T09:40')),
  act('gassed 3 10m ago', { verb: 'blanket', can: 3 }, happenedAt('2026-03-02T09:50')),
  miss('blamket 3', 'unknown-verb', 'blamket', 'blanket 3'),
  act('check 3', { verb: 'check', can: 3 }),
  act('checked can 3', { verb: 'check', can: 3 }),
  act('prestir 3', { verb: 'prestir', can: 3 }),
  act('stir can 3', { verb: 'prestir', can: 3 }),
  act('received 4x5kg A lot 7731 exp 12/2026', {
    ...{ verb: 'received', count: 4, component: 'part-a', lot: '7731', grams: grams(5000), expires: '2026-12-31' },
  }),
  act('received 5kg B lot 8', { verb: 'received', component: 'part-b', lot: '8', grams: grams(5000) }),
  act('delivered 2 x 1kg of part A lot 7731', {
    ...{ verb: 'received', count: 2, component: 'part-a', lot: '7731', grams: grams(1000) },
  }),
  act('received 4 cans of 5kg A lot 7731', {
    ...{ verb: 'received', count: 4, component: 'part-a', lot: '7731', grams: grams(5000) },
  }),
  miss('received 4x A lot 7731', 'incomplete', ''),
  act('drawn 1 A can 3', { verb: 'drawn', batch: 1, component: 'part-a', cans: [3] }),
  act('drawn from can 3 4 part B batch 1', { verb: 'drawn', batch: 1, component: 'part-b', cans: [3, 4] }),
  act('weighed 1 A from can 3', { verb: 'drawn', batch: 1, component: 'part-a', cans: [3] }),
  act('prestir 3 gas', { verb: 'prestir', can: 3, handling: 'gas' }),
  act('stir can 3 argon at hand', { verb: 'prestir', can: 3, handling: 'gas' }),
  act('weigh 1 a 1201g gas', { verb: 'weigh', batch: 1, partAGrams: grams(1201), handling: 'gas' }),
  act('weigh 1 1201g 1198g gas at hand can 3', {
    ...{ verb: 'weigh', batch: 1, partAGrams: grams(1201), partBGrams: grams(1198) },
    ...{ cans: [3], handling: 'gas' },
  }),
  act('add 1 a 14g whole', { verb: 'add', batch: 1, component: 'part-a', grams: grams(14), handling: 'whole' }),
  act('prestir 3 250 r/min', { verb: 'prestir', can: 3, revolutionsPerMinute: revolutionsPerMinute(250) }),
  act('discard 3 gelled in the can', { verb: 'discard', can: 3, why: 'gelled in the can' }),
  act('discard can 3 at 9:40 a brick', { verb: 'discard', can: 3, why: 'a brick' }, happenedAt('2026-03-02T09:40')),
  miss('discard 3', 'incomplete', ''),
  miss('discard', 'incomplete', ''),

  // Weighing one by one, from cans, and adding.
  act('weigh 1 a 1201g', { verb: 'weigh', batch: 1, partAGrams: grams(1201) }),
  act('weigh 1 b1198g', { verb: 'weigh', batch: 1, partBGrams: grams(1198) }),
  act('weigh 1 b 2lb 10oz', { verb: 'weigh', batch: 1, partBGrams: gramsFromOunces(42) }),
  act('weigh 1 1201g 1198g can 3 4', {
    ...{ verb: 'weigh', batch: 1, cans: [3, 4] },
    ...{ partAGrams: grams(1201), partBGrams: grams(1198) },
  }),
  act('weigh 1 a 1201g from cans 3 and 5', { verb: 'weigh', batch: 1, cans: [3, 5], partAGrams: grams(1201) }),
  miss('weigh 1 1201g 1198g can', 'incomplete', 'can'),
  act('add 1 b 14g', { verb: 'add', batch: 1, component: 'part-b', grams: grams(14) }),
  act('added 14 g of A', { verb: 'add', component: 'part-a', grams: grams(14) }),
  act('add 1 b 14g can 4', { verb: 'add', batch: 1, component: 'part-b', grams: grams(14), cans: [4] }),
  miss('add 1 14g', 'incomplete', '', 'add 1 a 14g'),
  act('mix 2.4kg in 5l', { verb: 'mix', amount: { kind: 'mass', grams: grams(2400) }, vesselLitres: litres(5) }),
  act('mix 2.4kg in stainless 5l', {
    ...{ verb: 'mix', amount: { kind: 'mass', grams: grams(2400) } },
    ...{ vesselLitres: litres(5), vesselOf: 'stainless' },
  }),
  act('mix 2.4kg in glass', { verb: 'mix', amount: { kind: 'mass', grams: grams(2400) }, vesselOf: 'glass' }),
  ask('card impeller-7', { ask: 'card', of: { part: 'impeller-7' } }),
  // Neither yes nor no is a guess: it is asked.
  miss('confirm bonding', 'incomplete', '', 'confirm bonding yes'),
  miss('bonded', 'incomplete', '', 'bonded yes'),
  // Nor is a figure a yes, or what is still to come.
  miss('confirm bonding 99%', 'left-over', '99%'),
  miss('confirm bonding yes 99%', 'left-over', '99%'),
  miss('bonded 99%', 'left-over', '99%'),
  miss('clean oven 99%', 'left-over', '99%'),
  miss('confirm bonding not yet', 'left-over', 'not'),
  miss('confirm bonding later', 'left-over', 'later'),
  miss('confirm bonding tomorrow', 'left-over', 'tomorrow'),
  act('papers yes', { verb: 'confirm', step: 'papers', kept: true }),
  act('papers no', { verb: 'confirm', step: 'papers', kept: false }),
  act('bonded yes', { verb: 'confirm', step: 'bonding', kept: true }),
  act('clean oven yes', { verb: 'confirm', step: 'clean-oven', kept: true }),
  act('confirm oven-clean no', { verb: 'confirm', step: 'clean-oven', kept: false }),
  act('equipment rated 3 yes', { verb: 'confirm', batch: 3, step: 'equipment', kept: true }),
  act('confirmed 3 rated yes', { verb: 'confirm', batch: 3, step: 'equipment', kept: true }),
  act('confirm clean-oven no', { verb: 'confirm', step: 'clean-oven', kept: false }),
  act('mix 2l in 5l', { verb: 'mix', amount: { kind: 'volume', litres: litres(2) }, vesselLitres: litres(5) }),

  // A pot's lid, and what drains.
  act('uncover 1', { verb: 'uncover', batch: 1 }),
  act('covered 1', { verb: 'cover', batch: 1 }),
  act('catch 2 300g', { verb: 'catch', batch: 2, grams: grams(300) }),
  act('caught 300 g', { verb: 'catch', grams: grams(300) }),
  miss('catch 2', 'incomplete', ''),

  // Called back.
  act('instrument gauge-2 gauge due 2027-03-01', {
    ...{ verb: 'instrument', name: 'gauge-2', kind: 'gauge', due: '2027-03-01' },
  }),
  act('instrument Spark-1 holiday tester', { verb: 'instrument', name: 'spark-1', kind: 'holiday-tester' }),
  act('instrument gauge-2 retired', { verb: 'instrument', name: 'gauge-2', retired: true }),
  act('calibrated gauge-2 ok next 2027-03-01', {
    verb: 'calibrated',
    name: 'gauge-2',
    result: 'ok',
    next: '2027-03-01',
  }),
  act('calibrated gauge-2 failed', { verb: 'calibrated', name: 'gauge-2', result: 'failed' }),
  miss('calibrated gauge-2', 'incomplete', '', 'calibrated gauge-2 passed'),
  ask('instruments', { ask: 'instruments' }),
  act('weigh 1 1201g 1198g with scale-1', {
    ...{ verb: 'weigh', batch: 1, partAGrams: grams(1201), partBGrams: grams(1198), instrument: 'scale-1' },
  }),
  act('recall lot 7731 the maker calls it back', { verb: 'recall', lot: '7731', why: 'the maker calls it back' }),
  act('recall B lot 8820 for gelling', { verb: 'recall', lot: '8820', component: 'part-b', why: 'gelling' }),
  act('recalled lot "88/20" A "gels"', { verb: 'recall', lot: '88/20', component: 'part-a', why: 'gels' }),
  miss('recall lot 7731', 'incomplete', ''),
  act('recall-over lot 7731 cleared', { verb: 'recall-over', lot: '7731', why: 'cleared' }),

  // Correcting them.
  act('amend 3 blanket at 9:40 told late', {
    ...{ verb: 'amend', of: { verb: 'blanket', can: 3 }, change: { at: utc('2026-03-02T09:40') }, why: 'told late' },
  }),
  act('amend open 3 4.5kg wrong label', {
    ...{ verb: 'amend', of: { verb: 'open', can: 3 }, change: { grams: grams(4500) }, why: 'wrong label' },
  }),
  act('amend 1 weigh b 1189g wrong scale', {
    ...{ verb: 'amend', of: { verb: 'weigh', batch: 1 }, change: { partBGrams: grams(1189) }, why: 'wrong scale' },
  }),
  act('amend open 3 lot 7732 exp 2026-11 misread', {
    ...{ verb: 'amend', of: { verb: 'open', can: 3 }, change: { lot: '7732', expires: '2026-11-30' }, why: 'misread' },
  }),
  act('amend received lot 7732 misread', {
    ...{ verb: 'amend', of: { verb: 'received' }, change: { lot: '7732' }, why: 'misread' },
  }),
  act('amend 1 mix sheet demo-build wrong product', {
    ...{ verb: 'amend', of: { verb: 'mix', batch: 1 }, change: { ofSheet: 'demo-build' }, why: 'wrong product' },
  }),

  // Settings and questions.
  act('set morning 6', { verb: 'set', setting: { name: 'morning', hour: 6 } }),
  act('set rate 4m2/h', { verb: 'set', setting: { name: 'rate', squareMetresPerHour: squareMetresPerHour(4) } }),
  act('set rate 3,5 m2/h', { verb: 'set', setting: { name: 'rate', squareMetresPerHour: squareMetresPerHour(3.5) } }),
  act('set rate 43 sqft per hour', {
    verb: 'set',
    setting: { name: 'rate', squareMetresPerHour: squareMetresPerHour(squareMetresFromSquareFeet(43)) },
  }),
  miss('set rate 4', 'unit-missing', '4', 'set rate 4m2/h'),
  miss('set rate 0m2/h', 'impossible', '0m2/h'),
  ask('stock', { ask: 'stock' }),
  miss('stcok', 'unknown-verb', 'stcok', 'stock'),
  ask('plan 6x0.8m2 spray 12um', { ...sixPlates, dryFilmMicrometres: micrometres(12) }),
  ask('plan 6 x 0.8 m² spray', sixPlates),
  ask('plan 6×0.8m2 hvlp 0.5mil', { ...sixPlates, dryFilmMicrometres: micrometresFromMils(0.5) }),
  ask('plan 6x0.8m2 spray ready 13:00', { ...sixPlates, readyAt: utc('2026-03-02T13:00') }),
  ask('plan 6x0.8m2 spray ready at 9:00', { ...sixPlates, readyAt: utc('2026-03-03T09:00') }),
  ask('plan impeller-7 valve-3 flow', {
    ask: 'plan',
    parts: [{ part: 'impeller-7' }, { part: 'valve-3' }],
    method: 'flow',
  }),
  ask('plan 12ft2 brush build', {
    ...{ ask: 'plan', method: 'brush', sheet: 'demo-build' },
    parts: [{ count: 1, eachSquareMetres: squareMetres(squareMetresFromSquareFeet(12)) }],
  }),
  miss('plan 6x0.8m2', 'incomplete', '', 'plan 6x0.8m2 spray'),
  miss('plan spray', 'incomplete', ''),
  miss('plan 6x0.8 spray', 'left-over', '6x0.8'),
];
