// Lines round a pot as a thumb types them: mixing, weighing, stirring, and when and how it was meant. Invented; common practice
// and our own choice, no source.

import type { Command } from '../../../core/commands.ts';
import {
  celsius,
  grams,
  gramsFromOunces,
  litres,
  litresFromUsFluidOunces,
  litresFromUsGallons,
  micrometres,
  percent,
  revolutionsPerMinute,
} from '../../../core/units.ts';
import type { Amount } from '../../../core/verbs/said.ts';
import { utc } from './shop-at-ten.ts';
import { act, happened, happenedAt, miss, type TypedLine } from './typed-line.ts';

const mass = (amount: number): Amount => ({ kind: 'mass', grams: grams(amount) });
const volume = (amount: number): Amount => ({ kind: 'volume', litres: litres(amount) });
const mix2400: Command = { verb: 'mix', amount: mass(2400) };
const _air24: Command = { verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } };
const weighed: Command = { verb: 'weigh', batch: 1, partAGrams: grams(1201), partBGrams: grams(1198) };
const ounces = (pounds: number, more: number) => gramsFromOunces(pounds * 16 + more);
const _sprayed: Command = { verb: 'coat', parts: ['impeller-7'], batch: 1, method: 'spray' };
const _usedAcetone: Command = { verb: 'used', material: 'acetone', amount: volume(0.5), use: 'gun-cleaning' };
const _range = { kind: 'range', from: '2026-03-01', to: '2026-03-07' } as const;
const _dry: Command = { verb: 'dry', parts: ['impeller-7'] };
const _ovenCure: Command = { verb: 'cure', parts: ['impeller-7'], way: { kind: 'oven', setCelsius: celsius(90) } };
const _films = (...readings: readonly number[]): Command => ({
  verb: 'film',
  part: 'impeller-7',
  dryFilmMicrometres: readings.map(micrometres),
});
const _held: Command = { verb: 'hold', parts: ['impeller-7'], why: 'orange peel' };
const stir1: Command = { verb: 'stir', batch: 1 };
const filter1: Command = { verb: 'filter', batch: 1 };
const _reweighed = (why: string): Command => ({
  verb: 'amend',
  of: { verb: 'weigh', batch: 1 },
  change: { partAGrams: grams(1201), partBGrams: grams(1189) },
  why,
});

export const potLines: readonly TypedLine[] = [
  // No vessel of a mix holds two thousand litres.
  miss('mix 2kg in 2000l', 'impossible', '2000l'),
  // Mixing: units glued, spaced, capital, comma, imperial.
  act('mix 2.4kg', mix2400),
  act('mix 2.4 kg', mix2400),
  act('Mix 2,4 kg', mix2400),
  act('MIX 2400G', mix2400),
  act('mix2.4kg', mix2400),
  act('mix  2.4kg.', mix2400),
  act('/mix 2.4 kilos please', mix2400),
  act('@batchbell mix 2.4kg', mix2400),
  act('mix 2.4kg 🙂', mix2400),
  act('mix 2.4kg build', { verb: 'mix', amount: mass(2400), sheet: 'demo-build' }),
  act('mix 2.4kg of demo-clear at 24C 48%', {
    verb: 'mix',
    amount: mass(2400),
    sheet: 'demo-clear',
    air: { celsius: celsius(24), relativeHumidityPercent: percent(48) },
  }),
  act('24h ago mix 2.4kg', mix2400, happenedAt('2026-03-01T10:00')),
  act('mix 1.201kg', { verb: 'mix', amount: mass(1201) }),
  act('mix 1,201.5 g', { verb: 'mix', amount: mass(1201.5) }),
  act('mix 0,750kg', { verb: 'mix', amount: mass(750) }),
  act('mix l201g', { verb: 'mix', amount: mass(1201) }),
  act('mix 2l', { verb: 'mix', amount: volume(2) }),
  act('mix 500ml', { verb: 'mix', amount: volume(0.5) }),
  act('mix 16 fl oz', { verb: 'mix', amount: { kind: 'volume', litres: litresFromUsFluidOunces(16) } }),
  act('mix 1/2 gal', { verb: 'mix', amount: { kind: 'volume', litres: litresFromUsGallons(0.5) } }),
  act('mix 1½gal', { verb: 'mix', amount: { kind: 'volume', litres: litresFromUsGallons(1.5) } }),
  act('mix 2lb 10oz', { verb: 'mix', amount: { kind: 'mass', grams: ounces(2, 10) } }),
  act('mix 2lb10', { verb: 'mix', amount: { kind: 'mass', grams: ounces(2, 10) } }),
  act('mix 42oz', { verb: 'mix', amount: { kind: 'mass', grams: gramsFromOunces(42) } }),
  miss('mix 2.4', 'unit-missing', '2.4', 'mix 2.4kg'),
  miss('mix 1,201g', 'ambiguous-number', '1,201g', 'mix 1201g'),
  miss('mix 1.201ml', 'ambiguous-number', '1.201ml', 'mix 1201mL'),
  miss('mix 1,201kg', 'ambiguous-number', '1,201kg', 'mix 1.201kg'),
  miss('mix 1 201g', 'ambiguous-number', '1 201g', 'mix 1201g'),
  miss('mix -1kg', 'impossible', '-1kg'),
  miss('mix –1 kg', 'impossible', '-1 kg'),
  miss('mix 0kg', 'impossible', '0kg'),
  miss('mix 24000kg', 'impossible', '24000kg'),
  miss('mix 2kg 400g', 'left-over', '400g'),
  miss('mix 2.4kg 24C 23C', 'left-over', '23C'),
  miss('mix 2.4kg 48', 'unit-missing', '48', 'mix 2.4kg 48C'),
  miss('mix 2.4kg at 20', 'ambiguous-number', '20', 'mix 2.4kg at 20C'),
  miss('mix 2.4kg demo', 'ambiguous-name', 'demo', 'mix 2.4kg demo-clear'),
  miss('mix 2.4kg biuld', 'unknown-sheet', 'biuld', 'mix 2.4kg demo-build'),
  miss('mix two kg', 'left-over', 'two'),
  miss('mix 24.kg', 'left-over', '24.kg'),
  miss('mix 24C', 'incomplete', ''),
  miss('mxi 2.4kg', 'unknown-verb', 'mxi', 'mix 2.4kg'),
  miss('2.4kg', 'unknown-verb', '2.4kg', 'mix 2.4kg'),

  miss('mix I201kg', 'impossible', 'I201kg'),
  // Weighing: A then B, letters, the last unit for both, the letter O, which number is the batch.
  act('weigh 1 1201g 1198g', weighed),
  act('weigh1 1201g 1198g', weighed),
  act('Weigh 1 1201 G 1198 G', weighed),
  act('weigh 1 1201 1198g', weighed),
  act('weigh 1 12O1g 1198g', weighed),
  act('weigh 1 1201g 1l98g', weighed),
  act('weigh 1 1201g1198g', weighed),
  act('weigh 1 1201g/1198g', weighed),
  act('weigh 1, 1201g, 1198g', weighed),
  act('weigh 1 a 1201g b 1198g', weighed),
  act('weigh 1 b 1198g a 1201g', weighed),
  act('weigh 1 A:1201g B:1198g', weighed),
  act('weigh 1 a1201g b1198g', weighed),
  act('weigh 1 1201g of A with 1198g of B', weighed),
  act('weigh 1201g 1198g batch 1', weighed),
  miss('weigh 1 1,201kg 1198g', 'ambiguous-number', '1,201kg', 'weigh 1 1.201kg 1198g'),
  act('weigh 1 1.201kg 1.198kg', weighed),
  act("weigh 1 1'201g 1'198g", weighed),
  act('weigh 1201 1198g', { verb: 'weigh', partAGrams: grams(1201), partBGrams: grams(1198) }),
  act('weigh 1 2lb 10oz 2lb 9oz', {
    verb: 'weigh',
    batch: 1,
    partAGrams: ounces(2, 10),
    partBGrams: ounces(2, 9),
  }),
  miss('weigh 1 1198g', 'incomplete', '', 'weigh 1 a 1198g'),
  miss('weigh 1 1201 1198', 'unit-missing', '1198', 'weigh 1 1201 1198g'),
  miss('weigh 1 1201g 1198', 'unit-missing', '1198', 'weigh 1 1201g 1198g'),
  miss('weigh 1 1.201 1198g', 'ambiguous-number', '1.201', 'weigh 1 1201g 1198g'),
  miss('weigh 1201g 1198g 1', 'left-over', '1', 'weigh 1201g 1198g batch 1'),
  miss('weigh 1 1201g 1198g 1190g', 'left-over', '1190g'),
  miss('weigh 1 a 1201g 1198g b', 'left-over', 'a'),
  miss('weigh 1 1201o 1198g', 'left-over', '1201o'),
  miss('weigh 1 1201g - 1198g', 'left-over', '-'),
  miss('weigh 1 0g 1198g', 'impossible', '0g'),
  miss('weigh 1 1201ml 1198ml', 'left-over', '1201ml'),
  miss('wiegh 1 1201g 1198g', 'unknown-verb', 'wiegh', 'weigh 1 1201g 1198g'),
  miss('weigj1 1201g 1198g', 'unknown-verb', 'weigj1', 'weigh 1 1201g 1198g'),

  // Stirring, filtering, the end of a pot.
  act('stir 1', stir1),
  act('stir', { verb: 'stir' }),
  act('stir 1 400rpm', { ...stir1, revolutionsPerMinute: revolutionsPerMinute(400) }),
  act('Stirring 1 400 RPM', { ...stir1, revolutionsPerMinute: revolutionsPerMinute(400) }),
  act('filter 1 1um glass second vessel', {
    ...filter1,
    ...{ filterMicrometres: micrometres(1), filterOf: 'glass-fibre', filteredInto: 'second-vessel' },
  }),
  act('filter 1 through 1 micron glass fibre into a second clean vessel', {
    ...filter1,
    ...{ filterMicrometres: micrometres(1), filterOf: 'glass-fibre', filteredInto: 'second-vessel' },
  }),
  act('filtered 1 5um nylon, same vessel', {
    ...filter1,
    ...{ filterMicrometres: micrometres(5), filterOf: 'nylon', filteredInto: 'same-vessel' },
  }),
  act('filter 1 stainless mesh no second vessel', {
    ...filter1,
    ...{ filterOf: 'stainless-mesh', filteredInto: 'same-vessel' },
  }),
  miss('filter 1 0um', 'impossible', '0um'),
  act('amend 1 filter 2um "misread"', {
    ...{ verb: 'amend', of: { verb: 'filter', batch: 1 } },
    ...{ change: { filterMicrometres: micrometres(2) }, why: 'misread' },
  }),
  act('amend 1 filter same vessel', {
    ...{ verb: 'amend', of: { verb: 'filter', batch: 1 } },
    ...{ change: { filteredInto: 'same-vessel' }, why: '' },
  }),
  act('amend 1 stir 350rpm', {
    ...{ verb: 'amend', of: { verb: 'stir', batch: 1 } },
    ...{ change: { revolutionsPerMinute: revolutionsPerMinute(350) }, why: '' },
  }),
  miss('stir 1 400', 'unit-missing', '400', 'stir 1 400rpm'),
  miss('stir 1 40000rpm', 'impossible', '40000rpm'),
  act('STIR1.', stir1),
  act('stir #1', stir1),
  act('stir batch no. 1 pls', stir1),
  act('stir1️⃣', stir1),
  act('stop 1', { verb: 'stop', batch: 1 }),
  act('stirrer off 1', { verb: 'stop', batch: 1 }),
  act('filter 1', filter1),
  act('filtered batch 1', filter1),
  act('thick 1', { verb: 'thick', batch: 1 }),
  act('gelled 2!', { verb: 'gel', batch: 2 }),
  act('judge anew batch 12', { verb: 'judge', batch: 12 }),
  act('judged again 2', { verb: 'judge', batch: 2 }),
  act('empty 1 200g', { verb: 'empty', batch: 1, leftGrams: grams(200) }),
  act('pot empty', { verb: 'empty' }),
  miss('sitr 1', 'unknown-verb', 'sitr', 'stir 1'),
  miss('fitler 1', 'unknown-verb', 'fitler', 'filter 1'),
  miss('1 stir', 'unknown-verb', '1', 'stir 1'),
  miss('stir 1 2', 'left-over', '2'),
  miss('stir 0', 'impossible', '0'),
  miss('stir 1.5', 'impossible', '1.5'),
  miss('empty 1 200', 'unit-missing', '200', 'empty 1 200g'),
  miss('stir 1 slowly', 'left-over', 'slowly'),

  // When and how it was meant.
  act('filter 1 at 9:40', filter1, happenedAt('2026-03-02T09:40')),
  act('filter 1 at 9.40', filter1, happenedAt('2026-03-02T09:40')),
  act('filter 1 at 0940', filter1, happenedAt('2026-03-02T09:40')),
  act('filter 1 at9:40', filter1, happenedAt('2026-03-02T09:40')),
  act('filter 1 at 9', filter1, happenedAt('2026-03-02T09:00')),
  act('filter 1 9:40am', filter1, happenedAt('2026-03-02T09:40')),
  act('filter 1 at 9:40 AM', filter1, happenedAt('2026-03-02T09:40')),
  act('at 9:40 filter 1', filter1, happenedAt('2026-03-02T09:40')),
  act('filter 1 at 11:30 pm', filter1, happenedAt('2026-03-01T23:30')),
  act('filter 1 yesterday 16:00', filter1, happenedAt('2026-03-01T16:00')),
  act('filter 1 at 16:00 yesterday', filter1, happenedAt('2026-03-01T16:00')),
  act('filter 1 at 2026-03-02 9:40', filter1, happenedAt('2026-03-02T09:40')),
  act('filter 1 at 2026-03-02T09:40', filter1, happenedAt('2026-03-02T09:40')),
  act('filter 1 10m ago', filter1, happenedAt('2026-03-02T09:50')),
  act('filter 1 10 min ago', filter1, happenedAt('2026-03-02T09:50')),
  act('filter 1 1h20 ago', filter1, happenedAt('2026-03-02T08:40')),
  act('filter 1 half an hour ago', filter1, happenedAt('2026-03-02T09:30')),
  act('filter 1 at 10:00', filter1, { at: utc('2026-03-02T10:00') }),
  act('filter 1 already', filter1, { stance: happened }),
  act('already filtered 1', filter1, { stance: happened }),
  act('filter 1 permit the sheet allows it, says Kari', filter1, {
    stance: { is: 'permitted', why: 'the sheet allows it, says Kari' },
  }),
  act('filter 1 at 9:40 permit “lead agreed”', filter1, {
    at: utc('2026-03-02T09:40'),
    stance: { is: 'permitted', why: 'lead agreed' },
  }),
  miss('filter 1 at 11:00', 'in-the-future', '11:00', 'filter 1 at 11:00 yesterday'),
  miss('filter 1 at 9:40pm', 'in-the-future', '9:40pm', 'filter 1 at 9:40pm yesterday'),
  miss('filter 1 at 2026-03-03 9:40', 'in-the-future', '9:40'),
  miss('filter 1 at 25:00', 'impossible', '25:00'),
  miss('filter 1 at 9:4', 'impossible', '9:4'),
  miss('filter 1 at 2026-02-30 9:40', 'impossible', '2026-02-30'),
  miss('filter 1 at', 'incomplete', 'at'),
  miss('filter 1 yesterday', 'incomplete', 'yesterday'),
  miss('filter 1 10 ago', 'unit-missing', '10', 'filter 1 10min ago'),
  miss('filter 1 permit', 'incomplete', 'permit'),
  miss('filter 1 permit Kari agreed at 9:40', 'ambiguous-time', 'at 9:40', 'filter 1 at 9:40 permit Kari agreed'),
];
