// Two hundred invented lines as a thumb types them, each with what it must be read as. A misread among them names the
// piece that stopped it; `offers` is the first line offered instead. Common practice and our own choice, no source.

import type { MisreadCode } from '../../../bot/language/reading.ts';
import type { Amount, Command, Question, Stance } from '../../../core/commands.ts';
import {
  celsius,
  celsiusFromFahrenheit,
  type EpochMs,
  grams,
  gramsFromOunces,
  litres,
  litresFromUsFluidOunces,
  litresFromUsGallons,
  micrometres,
  micrometresFromMils,
  milligramsPerSquareMetre,
  millimetres,
  minutes,
  percent,
  squareMetres,
  squareMetresFromSquareFeet,
} from '../../../core/units.ts';
import { materialLines } from './material-lines.ts';
import { sessionLines } from './session-lines.ts';
import { utc } from './shop-at-ten.ts';
import { spanishLines } from './spanish-lines.ts';

export type Expected =
  | { readonly kind: 'command'; readonly command: Command; readonly at?: EpochMs; readonly stance?: Stance }
  | { readonly kind: 'question'; readonly question: Question }
  | { readonly kind: 'silence' }
  | { readonly kind: 'misread'; readonly code: MisreadCode; readonly token: string; readonly offers?: string };

export interface ThumbTypedLine {
  readonly line: string;
  readonly expected: Expected;
}

interface Manner {
  readonly at?: EpochMs;
  readonly stance?: Stance;
}

const act = (line: string, command: Command, manner: Manner = {}): ThumbTypedLine => ({
  line,
  expected: { kind: 'command', command, ...manner },
});
const ask = (line: string, question: Question): ThumbTypedLine => ({ line, expected: { kind: 'question', question } });
const miss = (line: string, code: MisreadCode, token: string, offers?: string): ThumbTypedLine => ({
  line,
  expected: { kind: 'misread', code, token, ...(offers !== undefined && { offers }) },
});

const mass = (amount: number): Amount => ({ kind: 'mass', grams: grams(amount) });
const volume = (amount: number): Amount => ({ kind: 'volume', litres: litres(amount) });
const mix2400: Command = { verb: 'mix', amount: mass(2400) };
const air24: Command = { verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } };
const weighed: Command = { verb: 'weigh', batch: 1, partAGrams: grams(1201), partBGrams: grams(1198) };
const ounces = (pounds: number, more: number) => gramsFromOunces(pounds * 16 + more);
const sprayed: Command = { verb: 'coat', parts: ['impeller-7'], batch: 1, method: 'spray' };
const usedAcetone: Command = { verb: 'used', material: 'acetone', amount: volume(0.5), use: 'gun-cleaning' };
const range = { kind: 'range', from: '2026-03-01', to: '2026-03-07' } as const;
const dry: Command = { verb: 'dry', parts: ['impeller-7'] };
const ovenCure: Command = { verb: 'cure', parts: ['impeller-7'], way: { kind: 'oven', setCelsius: celsius(90) } };
const films = (...readings: readonly number[]): Command => ({
  verb: 'film',
  part: 'impeller-7',
  dryFilmMicrometres: readings.map(micrometres),
});
const held: Command = { verb: 'hold', parts: ['impeller-7'], why: 'orange peel' };
const stir1: Command = { verb: 'stir', batch: 1 };
const filter1: Command = { verb: 'filter', batch: 1 };
const happened: Stance = { is: 'happened' };
const happenedAt = (iso: string): Manner => ({ at: utc(iso), stance: happened });
const reweighed = (why: string): Command => ({
  verb: 'amend',
  of: { verb: 'weigh', batch: 1 },
  change: { partAGrams: grams(1201), partBGrams: grams(1189) },
  why,
});

export const thumbTypedLines: readonly ThumbTypedLine[] = [
  ...materialLines,
  ...sessionLines,
  ...spanishLines,
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

  // Parts and their coats.
  act('part impeller-7', { verb: 'part', part: 'impeller-7', details: {} }),
  act('part impeller-7 serial 4411 job 88 customer x cast-iron 12mm 0.8m2 max 120C', {
    verb: 'part',
    part: 'impeller-7',
    details: {
      serial: '4411',
      job: '88',
      customer: 'x',
      metal: 'cast-iron',
      wallMillimetres: millimetres(12),
      areaSquareMetres: squareMetres(0.8),
      highestCelsius: celsius(120),
    },
  }),
  act('part Rail-2 cast iron 0.5 in 8 sq ft max 250F', {
    verb: 'part',
    part: 'rail-2',
    details: {
      metal: 'cast-iron',
      wallMillimetres: millimetres(12.7),
      areaSquareMetres: squareMetresFromSquareFeet(8),
      highestCelsius: celsiusFromFahrenheit(250),
    },
  }),
  act('part rail-2 customer “Harbour Works” 0,8 m²', {
    verb: 'part',
    part: 'rail-2',
    details: { customer: 'Harbour Works', areaSquareMetres: squareMetres(0.8) },
  }),
  act('coat impeller-7 1 spray', sprayed),
  act('Coat IMPELLER–7 1 Spray', sprayed),
  act('spray impeller-7 1', sprayed),
  act('sprayed 1 impeller-7', sprayed),
  act('coat impeller-7 with batch 1 by spray', sprayed),
  act('coat impeller-7 1 spray already', sprayed, { stance: happened }),
  act('coat impeller-7 valve-3 1 dip', {
    verb: 'coat',
    parts: ['impeller-7', 'valve-3'],
    batch: 1,
    method: 'dip',
  }),
  act('flow coat impeller-7, valve-3 and plate-12', {
    verb: 'coat',
    parts: ['impeller-7', 'valve-3', 'plate-12'],
    method: 'flow',
  }),
  miss('coat impeller 7 1 spray', 'ambiguous-number', 'impeller 7', 'coat impeller-7 1 spray'),
  miss('coat impeller-7 1', 'incomplete', '', 'coat impeller-7 1 flow'),
  miss('coat impeller-7 1 sprya', 'left-over', 'sprya', 'coat impeller-7 1 spray'),
  miss('coat impeller-7 1 spray dip', 'left-over', 'dip'),
  miss('coat 1 spray', 'incomplete', ''),
  miss('cota impeller-7 1 spray', 'unknown-verb', 'cota', 'coat impeller-7 1 spray'),
  miss('coat impeller-7 1 spray not', 'left-over', 'not'),
  miss('coat impeller-7 1 spray?', 'left-over', '?', 'coat impeller-7 1 spray'),

  // Flash-off, cure, films, hold and release.
  act('dry impeller-7', dry),
  act('dry to touch impeller-7', dry),
  miss('impeller-7 dry', 'unknown-verb', 'impeller-7', 'dry impeller-7'),
  miss('dry impeller-7 twice', 'left-over', 'twice'),
  act('cure impeller-7 oven 90C', ovenCure),
  act('cure impeller-7 in the oven at 194F', ovenCure),
  act('cure impeller-7 room', { verb: 'cure', parts: ['impeller-7'], way: { kind: 'room' } }),
  miss('cure impeller-7 oven at 90', 'unit-missing', '90', 'cure impeller-7 oven at 90C'),
  miss('cure impeller-7 oven 900C', 'impossible', '900C'),
  miss('cure impeller-7', 'incomplete', '', 'cure impeller-7 oven'),
  act('temp impeller-7 88C', { verb: 'temp', part: 'impeller-7', celsius: celsius(88) }),
  act('temp 88 °C', { verb: 'temp', celsius: celsius(88) }),
  miss('temp impeller-7 88', 'unit-missing', '88', 'temp impeller-7 88C'),
  act('out impeller-7', { verb: 'out', parts: ['impeller-7'] }),
  act('film impeller-7 12 14 13um', films(12, 14, 13)),
  act('film impeller-7 12,14,13µm', films(12, 14, 13)),
  act('dft impeller-7 12/14/13 microns', films(12, 14, 13)),
  act('film impeller-7 12,5um', films(12.5)),
  act('film impeller-7 0.5mil', {
    verb: 'film',
    part: 'impeller-7',
    dryFilmMicrometres: [micrometresFromMils(0.5)],
  }),
  act('wet film impeller-7 60um', { verb: 'wet', part: 'impeller-7', wetFilmMicrometres: [micrometres(60)] }),
  miss('film impeller-7 12,14um', 'ambiguous-number', '12,14um', 'film impeller-7 12.14um'),
  miss('film impeller-7 12 14 13', 'unit-missing', '13', 'film impeller-7 12 14 13um'),
  miss('film impeller 7 12um', 'ambiguous-number', 'impeller 7', 'film impeller-7 12um'),
  act('hold impeller-7 orange peel', held),
  act('hold impeller-7: orange peel', held),
  act('hold impeller-7 orange peel at 9:40', held, happenedAt('2026-03-02T09:40')),
  act('hold impeller-7 and valve-3 runs on the lip', {
    verb: 'hold',
    parts: ['impeller-7', 'valve-3'],
    why: 'runs on the lip',
  }),
  miss('hold impeller-7', 'incomplete', ''),
  act('release impeller-7', { verb: 'release', parts: ['impeller-7'] }),
  miss('realese impeller-7', 'unknown-verb', 'realese', 'release impeller-7'),

  // Air, surface, night.
  act('air 24C 48%', air24),
  act('24C 48%', air24),
  act('48 % 24 degC', air24),
  act('air 24ºC/48rh', air24),
  act('air 24c48%', air24),
  act('air 2O C', { verb: 'air', air: { celsius: celsius(20) } }),
  act('air 24,5C', { verb: 'air', air: { celsius: celsius(24.5) } }),
  act('air –5C', { verb: 'air', air: { celsius: celsius(-5) } }),
  act('75F', { verb: 'air', air: { celsius: celsiusFromFahrenheit(75) } }),
  act('air 24C 48% booth', { ...air24, place: 'booth' }),
  miss('air 240C', 'impossible', '240C'),
  miss('88C', 'impossible', '88C', 'temp 88C'),
  miss('air 24C 148%', 'impossible', '148%'),
  miss('air - 5C', 'left-over', '-'),
  miss('air 24 48', 'unit-missing', '24', 'air 24C 48%'),
  miss('air 24° 48%', 'unit-missing', '24°', 'air 24C 48%'),
  miss('air 24C 48% boooth', 'left-over', 'boooth', 'air 24C 48% booth'),
  miss('air', 'incomplete', ''),
  act('surface 22C', { verb: 'surface', celsius: celsius(22) }),
  act('night 16C', { verb: 'night', lowestCelsius: celsius(16) }),

  // Amending, settings, questions.
  act('amend 1 weigh 1201g 1189g wrong scale', reweighed('wrong scale')),
  act('amend 1 weigh at 9:40 typed late', {
    verb: 'amend',
    of: { verb: 'weigh', batch: 1 },
    change: { at: utc('2026-03-02T09:40') },
    why: 'typed late',
  }),
  act('amend air 22C typo', { verb: 'amend', of: { verb: 'air' }, change: { celsius: celsius(22) }, why: 'typo' }),
  act('amend impeller-7 coat at 9:10 wrong time', {
    verb: 'amend',
    of: { verb: 'coat', part: 'impeller-7' },
    change: { at: utc('2026-03-02T09:10') },
    why: 'wrong time',
  }),
  miss('amend impeller-7 coat at 14:00', 'in-the-future', '14:00', 'amend impeller-7 coat at 14:00 yesterday'),
  miss('amend 1 weigh 1189g', 'ambiguous-number', '1189g', 'amend 1 weigh a 1189g'),
  miss('amend 1 weigh wrong scale', 'incomplete', ''),
  act('undo', { verb: 'undo' }),
  act('got it', { verb: 'ok' }),
  miss('👍', 'unknown-verb', '', 'ok'),
  act('set air-limit 3h', { verb: 'set', setting: { name: 'air-limit', minutes: 180 } }),
  act('set digest 5pm', { verb: 'set', setting: { name: 'digest', hour: 17 } }),
  ask('day', { ask: 'day', day: { kind: 'today' } }),
  ask('day 2026-3-2', { ask: 'day', day: { kind: 'date', date: '2026-03-02' } }),
  miss('dya yesterday', 'unknown-verb', 'dya', 'day yesterday'),

  // The past: stretches, traces, finding, paper, solvent, proof.
  act('used acetone 500ml gun-cleaning', usedAcetone),
  act('used acetone 500ml gun cleaning', usedAcetone),
  act('Used 500 mL acetone flush', usedAcetone),
  act('used isopropyl alcohol 2l', {
    verb: 'used',
    material: 'isopropyl-alcohol',
    amount: volume(2),
    use: 'other',
  }),
  miss('used acetone', 'incomplete', ''),
  miss('used 500ml', 'incomplete', ''),
  act('set voc-limit 300kg/month', {
    verb: 'set',
    setting: { name: 'voc-limit', grams: grams(300_000), per: 'month' },
  }),
  act('set voc-limit 12 kg a day', { verb: 'set', setting: { name: 'voc-limit', grams: grams(12_000), per: 'day' } }),
  miss('set voc-limit 300kg', 'unit-missing', '300kg'),
  ask('week', { ask: 'week', span: { kind: 'week', which: 'this' } }),
  ask('week last', { ask: 'week', span: { kind: 'week', which: 'last' } }),
  ask('month', { ask: 'month', span: { kind: 'month', which: 'this' } }),
  ask('from 2026-03-01 to 2026-03-07', { ask: 'from', span: range }),
  miss('from 2026-03-07 to 2026-03-01', 'impossible', '2026-03-01'),
  miss('from 2026-02-30 to 2026-03-01', 'impossible', '2026-02-30'),
  miss('from', 'incomplete', ''),
  ask('trace impeller-7', { ask: 'trace', of: { part: 'impeller-7' } }),
  ask('Trace Impeller-7.', { ask: 'trace', of: { part: 'impeller-7' } }),
  ask('trace lot 7731', { ask: 'trace', of: { lot: '7731' } }),
  ask('trace lot B-44/2', { ask: 'trace', of: { lot: 'B-44/2' } }),
  ask('trace 1', { ask: 'trace', of: { batch: 1 } }),
  ask('trace batch 12', { ask: 'trace', of: { batch: 12 } }),
  miss('trace', 'incomplete', ''),
  ask('find 4411', { ask: 'find', key: 'any', value: '4411' }),
  ask('find job 88', { ask: 'find', key: 'job', value: '88' }),
  ask('find customer Harbour Works', { ask: 'find', key: 'customer', value: 'Harbour Works' }),
  ask('find 2026-03-02', { ask: 'find', key: 'date', value: '2026-03-02' }),
  miss('fnid 4411', 'unknown-verb', 'fnid', 'find 4411'),
  miss('find', 'incomplete', ''),
  ask('traveller impeller-7', { ask: 'traveller', of: { part: 'impeller-7' } }),
  ask('traveller job 88', { ask: 'traveller', of: { job: '88' } }),
  ask('export', { ask: 'export', span: { kind: 'day', day: 'today' }, form: 'csv' }),
  ask('export week jsonl', { ask: 'export', span: { kind: 'week', which: 'this' }, form: 'jsonl' }),
  ask('export 2026-03-01 to 2026-03-07 csv', { ask: 'export', span: range, form: 'csv' }),
  ask('voc', { ask: 'voc', span: { kind: 'month', which: 'this' } }),
  ask('voc year', { ask: 'voc', span: { kind: 'year' } }),
  ask('voc last month', { ask: 'voc', span: { kind: 'month', which: 'last' } }),
  ask('verify', { ask: 'verify' }),
  ask('verify 3F9A 12c4…', { ask: 'verify', hash: '3f9a12c4' }),
  miss('verify harder', 'left-over', 'harder'),
  ask('backup friday.sqlite', { ask: 'backup', file: 'friday.sqlite' }),
  miss('backup', 'incomplete', ''),
  ask('keep', { ask: 'keep' }),
  ask('mix?', { ask: 'help', verb: 'mix' }),
  { line: '# scale is back', expected: { kind: 'silence' } },

  // Parts come in, surfaces, the oven's door, tests, people.
  act('part impeller-7 cast-iron 12mm; part valve-3 steel', {
    verb: 'part',
    part: 'impeller-7',
    details: { metal: 'cast-iron', wallMillimetres: millimetres(12) },
    more: [{ part: 'valve-3', details: { metal: 'steel' } }],
  }),
  act(
    'part rail-2 customer "Dock; two"\r\n# the small one\nPart lid-1 0.2m2 at 9:40',
    {
      ...{ verb: 'part', part: 'rail-2', details: { customer: 'Dock; two' } },
      more: [{ part: 'lid-1', details: { areaSquareMetres: squareMetres(0.2) } }],
    },
    happenedAt('2026-03-02T09:40'),
  ),
  miss('part lid-1 steel; part lid-2 6', 'unit-missing', '6', 'part lid-1 steel; part lid-2 6mm'),
  miss('part lid-1 steel; air 24C', 'left-over', 'air'),
  miss('part lid-1 steel; part lid-1 brass', 'left-over', 'lid-1'),
  act('prep impeller-7 sa2.5 60um', {
    ...{ verb: 'prep', parts: ['impeller-7'], grade: 'sa2.5' },
    profileMicrometres: micrometres(60),
  }),
  act('Prep impeller-7 Sa 2½ 2.4 mil salts 12 mg/m² dust 1', {
    ...{ verb: 'prep', parts: ['impeller-7'], grade: 'sa2.5', profileMicrometres: micrometresFromMils(2.4) },
    ...{ saltsMilligramsPerSquareMetre: milligramsPerSquareMetre(12), dustRating: 1 },
  }),
  act('blasted impeller-7 and valve-3 SSPC SP-10', { verb: 'prep', parts: ['impeller-7', 'valve-3'], grade: 'sp10' }),
  miss('prep impeller-7', 'incomplete', '', 'prep impeller-7 sa2.5'),
  miss('prep impeller-7 sa2.5 salts 12', 'unit-missing', '12', 'prep impeller-7 sa2.5 salts 12mg/m2'),
  miss('prep impeller-7 sa2.5 dust 9', 'impossible', '9'),
  miss('prep impeller-7 sa2.5 60', 'unit-missing', '60', 'prep impeller-7 sa2.5 60um'),
  act('surface impeller-7 19C', { verb: 'surface', part: 'impeller-7', celsius: celsius(19) }),
  act('steel 19C plate-9', { verb: 'surface', part: 'plate-9', celsius: celsius(19) }),
  act('surface 19C booth', { verb: 'surface', place: 'booth', celsius: celsius(19) }),
  act('coat impeller-7 1 spray touch-up', { ...sprayed, pass: 'same-coat' }),
  act('door impeller-7 5m', { verb: 'door', parts: ['impeller-7'], openMinutes: minutes(5) }),
  act('door', { verb: 'door', parts: [] }),
  act('out', { verb: 'out', parts: [] }),
  act('adhesion impeller-7 5B', { verb: 'adhesion', part: 'impeller-7', rating: '5B' }),
  act('adhesion coupon impeller-7 1', { verb: 'adhesion', part: 'impeller-7', rating: '1', coupon: true }),
  miss('adhesion impeller-7', 'incomplete', '', 'adhesion impeller-7 5B'),
  act('rub impeller-7 50 ok', { verb: 'rub', part: 'impeller-7', doubleRubs: 50, result: 'no-effect' }),
  act('rubbed impeller-7 25 double rubs soft', {
    ...{ verb: 'rub', part: 'impeller-7', doubleRubs: 25, result: 'softened' },
  }),
  miss('rub impeller-7 50', 'incomplete', '', 'rub impeller-7 50 no-effect'),
  act('snooze 5m', { verb: 'snooze', minutes: minutes(5) }),
  act('snooze part/impeller-7/cure-done 10 min', {
    ...{ verb: 'snooze', minutes: minutes(10), key: 'part/impeller-7/cure-done' },
  }),
  miss('snooze', 'incomplete', '', 'snooze 5m'),
  miss('snooze 2h', 'impossible', '2h'),
  act('shift on', { verb: 'shift', on: true }),
  act('Shift off at 9:40', { verb: 'shift', on: false }, happenedAt('2026-03-02T09:40')),
  miss('shift', 'incomplete', '', 'shift on'),
  act('hand over to Kari', { verb: 'handover', to: 'kari' }),
  miss('handover', 'incomplete', ''),
  act('take over', { verb: 'takeover' }),
  { line: '  ', expected: { kind: 'silence' } },
];
