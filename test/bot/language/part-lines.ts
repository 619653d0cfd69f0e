// Lines round a part as a thumb types them: surfaces, coats, flash-off, cure, films, the room's air. Invented; common practice and
// our own choice, no source.

import type { Command } from '../../../core/commands.ts';
import {
  celsius,
  celsiusFromFahrenheit,
  grams,
  gramsFromOunces,
  litres,
  litresFromMillilitres,
  megapascals,
  micrometres,
  micrometresFromMils,
  microsiemensPerCentimetre,
  milligramsPerSquareMetre,
  millimetres,
  minutes,
  percent,
  squareMetres,
  squareMetresFromSquareFeet,
  volts,
} from '../../../core/units.ts';
import type { Amount } from '../../../core/verbs/said.ts';
import { act, happened, happenedAt, miss, type TypedLine } from './typed-line.ts';

const mass = (amount: number): Amount => ({ kind: 'mass', grams: grams(amount) });
const volume = (amount: number): Amount => ({ kind: 'volume', litres: litres(amount) });
const _mix2400: Command = { verb: 'mix', amount: mass(2400) };
const air24: Command = { verb: 'air', air: { celsius: celsius(24), relativeHumidityPercent: percent(48) } };
const _weighed: Command = { verb: 'weigh', batch: 1, partAGrams: grams(1201), partBGrams: grams(1198) };
const _ounces = (pounds: number, more: number) => gramsFromOunces(pounds * 16 + more);
const sprayed: Command = { verb: 'coat', parts: ['impeller-7'], batch: 1, method: 'spray' };
const _usedAcetone: Command = { verb: 'used', material: 'acetone', amount: volume(0.5), use: 'gun-cleaning' };
const _range = { kind: 'range', from: '2026-03-01', to: '2026-03-07' } as const;
const dry: Command = { verb: 'dry', parts: ['impeller-7'] };
const ovenCure: Command = { verb: 'cure', parts: ['impeller-7'], way: { kind: 'oven', setCelsius: celsius(90) } };
const films = (...readings: readonly number[]): Command => ({
  verb: 'film',
  part: 'impeller-7',
  dryFilmMicrometres: readings.map(micrometres),
});
const held: Command = { verb: 'hold', parts: ['impeller-7'], why: 'orange peel' };
const _stir1: Command = { verb: 'stir', batch: 1 };
const _filter1: Command = { verb: 'filter', batch: 1 };
const _reweighed = (why: string): Command => ({
  verb: 'amend',
  of: { verb: 'weigh', batch: 1 },
  change: { partAGrams: grams(1201), partBGrams: grams(1189) },
  why,
});

export const partLines: readonly TypedLine[] = [
  // Parts and their coats.
  act('part impeller-7', { verb: 'part', part: 'impeller-7', details: {} }),
  act('bears impeller-7 120C', { verb: 'part', part: 'impeller-7', details: { highestCelsius: celsius(120) } }),
  act('part impeller-7 bears 120C', { verb: 'part', part: 'impeller-7', details: { highestCelsius: celsius(120) } }),
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
  act('part rail-4 job 90 zamak 3mm 1m2', {
    ...{ verb: 'part', part: 'rail-4' },
    details: { job: '90', wallMillimetres: millimetres(3), areaSquareMetres: squareMetres(1) },
    unread: ['zamak'],
  }),
  act('part rail-4 wo 88 3mm', {
    verb: 'part',
    part: 'rail-4',
    details: { wallMillimetres: millimetres(3) },
    unread: ['wo', '88'],
  }),
  act('part rail-4 ally 3mm', {
    verb: 'part',
    part: 'rail-4',
    details: { metal: 'aluminium', wallMillimetres: millimetres(3) },
  }),
  act('part rail-4 galvanised', { verb: 'part', part: 'rail-4', details: { metal: 'galvanised-steel' } }),
  act('part rail-4 galv steel', { verb: 'part', part: 'rail-4', details: { metal: 'galvanised-steel' } }),
  act('pieza barandal-2 obra 88 galvanizado', {
    verb: 'part',
    part: 'barandal-2',
    details: { job: '88', metal: 'galvanised-steel' },
  }),
  miss('part pump cover', 'left-over', 'cover'),
  miss('part rail-4 3mm 88', 'unit-missing', '88', 'part rail-4 3mm 88m2'),
  act('part rail-2 customer “Invented Customer A” 0,8 m²', {
    verb: 'part',
    part: 'rail-2',
    details: { customer: 'Invented Customer A', areaSquareMetres: squareMetres(0.8) },
  }),
  act('coat impeller-7 1 spray', sprayed),
  act('Coat IMPELLER–7 1 Spray', sprayed),
  act('spray impeller-7 1', sprayed),
  act('sprayed 1 impeller-7', sprayed),
  act('coat impeller-7 with batch 1 by spray', sprayed),
  act('coat impeller-7 1 spray by kari', { ...sprayed, appliedBy: 'kari' }),
  act('sprayed 1 impeller-7 by Kari at 9:40', { ...sprayed, appliedBy: 'Kari' }, happenedAt('2026-03-02T09:40')),
  act('coat impeller-7 1 brush by omar', { ...sprayed, method: 'brush', appliedBy: 'omar' }),
  act('amend impeller-7 coat by omar wrong name', {
    ...{ verb: 'amend', of: { verb: 'coat', part: 'impeller-7' }, change: { appliedBy: 'omar' }, why: 'wrong name' },
  }),
  act('amend impeller-7 coat batch 2 wrong pot', {
    ...{ verb: 'amend', of: { verb: 'coat', part: 'impeller-7' }, change: { ofBatch: 2 }, why: 'wrong pot' },
  }),
  act('amend impeller-7 coat 2 "wrong pot"', {
    ...{ verb: 'amend', of: { verb: 'coat', part: 'impeller-7' }, change: { ofBatch: 2 }, why: 'wrong pot' },
  }),
  act('amend impeller-7 coat part valve-3 wrong tag', {
    ...{ verb: 'amend', of: { verb: 'coat', part: 'impeller-7' }, change: { onPart: 'valve-3' }, why: 'wrong tag' },
  }),
  act('amend impeller-7 hold runs at the flange', {
    ...{ verb: 'amend', of: { verb: 'hold', part: 'impeller-7' }, change: { holdWhy: 'runs at the flange' }, why: '' },
  }),
  miss('coat impeller-7 1 spray by hand', 'left-over', 'hand'),
  act('coat impeller-7 1 spray already', sprayed, { stance: happened }),
  act('coat impeller-7 valve-3 1 dip', {
    verb: 'coat',
    parts: ['impeller-7', 'valve-3'],
    batch: 1,
    method: 'dip',
  }),
  act('coat p1,p2 1 dip', { verb: 'coat', parts: ['p1', 'p2'], batch: 1, method: 'dip' }),
  act('dry impeller-7,valve-3', { verb: 'dry', parts: ['impeller-7', 'valve-3'] }),
  act('hold p1,valve-3 runs, sags', { verb: 'hold', parts: ['p1', 'valve-3'], why: 'runs, sags' }),
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
  act('shipped impeller-7', { verb: 'shipped', parts: ['impeller-7'] }),
  // Who sees to a hold, and what becomes of it.
  act('see-to impeller-7 kari', { verb: 'see-to', parts: ['impeller-7'], owner: 'kari' }),
  act('see to impeller-7 kari sand and recoat', {
    ...{ verb: 'see-to', parts: ['impeller-7'] },
    ...{ owner: 'kari', toDo: 'sand and recoat' },
  }),
  act('rework impeller-7 runs at the lip', { verb: 'rework', parts: ['impeller-7'], why: 'runs at the lip' }),
  act('redo impeller-7', { verb: 'rework', parts: ['impeller-7'] }),
  act('scrap impeller-7 cracked', { verb: 'scrap', parts: ['impeller-7'], why: 'cracked' }),
  act('scrap 3 gelled in the can', { verb: 'discard', can: 3, why: 'gelled in the can' }),
  act('return impeller-7 to the customer wrong alloy', {
    ...{ verb: 'return', parts: ['impeller-7'] },
    ...{ to: 'customer', why: 'wrong alloy' },
  }),
  act('concession impeller-7 Ms. Hale, letter QA-118 of 1 March', {
    ...{ verb: 'concession', parts: ['impeller-7'] },
    ...{ person: 'Ms. Hale', document: 'QA-118', date: '2026-03-01' },
  }),
  act('release impeller-7', { verb: 'release', parts: ['impeller-7'] }),
  miss('realese impeller-7', 'unknown-verb', 'realese', 'release impeller-7'),

  // Air, surface, night.
  act('air 24C 48%', air24),
  act('air 24C wet 17C', { verb: 'air', air: { celsius: celsius(24) }, wetBulbCelsius: celsius(17) }),
  act('air 24C wet bulb 17C', { verb: 'air', air: { celsius: celsius(24) }, wetBulbCelsius: celsius(17) }),
  act('weather 24C wb 17C booth', {
    ...{ verb: 'air', air: { celsius: celsius(24) }, wetBulbCelsius: celsius(17), place: 'booth' },
  }),
  act('sling 24 17', { verb: 'air', air: { celsius: celsius(24) }, wetBulbCelsius: celsius(17) }),
  act('sling wet 17 dry 24', { verb: 'air', air: { celsius: celsius(24) }, wetBulbCelsius: celsius(17) }),
  act('sling 75F 62F', {
    ...{ verb: 'air', air: { celsius: celsiusFromFahrenheit(75) }, wetBulbCelsius: celsiusFromFahrenheit(62) },
  }),
  act('sling 75 62', {
    ...{ verb: 'air', air: { celsius: celsiusFromFahrenheit(75) }, wetBulbCelsius: celsiusFromFahrenheit(62) },
  }),
  miss('sling 24', 'unit-missing', '24', 'sling 24C'),
  miss('air 24C wet 17', 'unit-missing', '17', 'air 24C wet 17C'),
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

  // Parts come in, surfaces, the oven's door, tests, people.
  act('part impeller-7 cast-iron 12mm; part valve-3 steel', {
    verb: 'part',
    part: 'impeller-7',
    details: { metal: 'cast-iron', wallMillimetres: millimetres(12) },
    more: [{ part: 'valve-3', details: { metal: 'steel' } }],
  }),
  act(
    'part rail-2 customer "Invented; two"\r\n# the small one\nPart lid-1 0.2m2 at 9:40',
    {
      ...{ verb: 'part', part: 'rail-2', details: { customer: 'Invented; two' } },
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
  act('prep lid-6 salts 12uS/cm', {
    ...{ verb: 'prep', parts: ['lid-6'], saltsMicrosiemensPerCentimetre: microsiemensPerCentimetre(12) },
  }),
  act('Prep lid-6 salts 12 µS/cm extract 15 mL', {
    ...{ verb: 'prep', parts: ['lid-6'], saltsMicrosiemensPerCentimetre: microsiemensPerCentimetre(12) },
    extractLitres: litresFromMillilitres(15),
  }),
  act('amend lid-6 prep salts 4 μS/cm misread', {
    ...{ verb: 'amend', of: { verb: 'prep', part: 'lid-6' }, why: 'misread' },
    change: { saltsMicrosiemensPerCentimetre: microsiemensPerCentimetre(4) },
  }),
  miss('prep lid-6 salts 12uS/cm extract 2L', 'impossible', '2L'),
  act('prep lid-6 degreased acetone, rust off', {
    ...{ verb: 'prep', parts: ['lid-6'], removed: ['grease', 'rust'], solvents: ['acetone'] },
  }),
  act('degreased lid-6 and lid-7 ipa', {
    ...{ verb: 'prep', parts: ['lid-6', 'lid-7'], removed: ['grease'], solvents: ['isopropyl-alcohol'] },
  }),
  act('prep lid-6 sp10 old coat off blasted, dust off, dust 1', {
    ...{ verb: 'prep', parts: ['lid-6'], grade: 'sp10', removed: ['old-coat', 'dust'], prepWays: ['blasting'] },
    dustRating: 1,
  }),
  act('prep lid-6 wiped with IPA', {
    ...{ verb: 'prep', parts: ['lid-6'], prepWays: ['wiping'], solvents: ['isopropyl-alcohol'] },
  }),
  act('prep lid-6 sanded 120, old paint stripped', {
    ...{ verb: 'prep', parts: ['lid-6'], grit: 'p120', removed: ['old-coat'] },
  }),
  act('prep lid-6 oil and grease off, sanding', {
    ...{ verb: 'prep', parts: ['lid-6'], removed: ['grease'], prepWays: ['sanding'] },
  }),
  act('amend impeller-7 prep sa2 rust-off salts 8mg/m2 wrong word', {
    ...{ verb: 'amend', of: { verb: 'prep', part: 'impeller-7' }, why: 'wrong word' },
    change: { grade: 'sa2', removed: ['rust'], saltsMilligramsPerSquareMetre: milligramsPerSquareMetre(8) },
  }),
  act('amend impeller-7 prep 55um wrong gauge', {
    ...{ verb: 'amend', of: { verb: 'prep', part: 'impeller-7' }, why: 'wrong gauge' },
    change: { profileMicrometres: micrometres(55) },
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
  act('all out', { verb: 'out', parts: [] }),
  act('adhesion impeller-7 5B', { verb: 'adhesion', part: 'impeller-7', rating: '5B' }),
  act('adhesion coupon impeller-7 1', { verb: 'adhesion', part: 'impeller-7', rating: '1', coupon: true }),
  miss('adhesion impeller-7', 'incomplete', '', 'adhesion impeller-7 5B'),
  act('rub impeller-7 50 ok', { verb: 'rub', part: 'impeller-7', doubleRubs: 50, result: 'no-effect' }),
  act('rubbed impeller-7 25 double rubs soft', {
    ...{ verb: 'rub', part: 'impeller-7', doubleRubs: 25, result: 'softened' },
  }),
  miss('rub impeller-7 50', 'incomplete', '', 'rub impeller-7 50 no-effect'),
  act('pull-off impeller-7 7MPa', { verb: 'pull-off', part: 'impeller-7', megapascals: megapascals(7) }),
  act('pull off impeller-7 6.5 MPa in the coat', {
    ...{ verb: 'pull-off', part: 'impeller-7', megapascals: megapascals(6.5), brokeAt: 'in-coat' },
  }),
  miss('pull-off impeller-7', 'incomplete', ''),
  act('gloss impeller-7 85', { verb: 'gloss', part: 'impeller-7', glossUnits: 85 }),
  act('gloss impeller-7 84.6 GU coupon', { verb: 'gloss', part: 'impeller-7', glossUnits: 84.6, coupon: true }),
  act('pencil hardness impeller-7 2H', { verb: 'hardness', part: 'impeller-7', pencil: '2H' }),
  act('hardness impeller-7 HB', { verb: 'hardness', part: 'impeller-7', pencil: 'HB' }),
  act('holidays impeller-7 0 at 500V', { verb: 'holidays', part: 'impeller-7', found: 0, volts: volts(500) }),
  act('holiday test impeller-7 3 found 1.5kV', {
    ...{ verb: 'holidays', part: 'impeller-7', found: 3, volts: volts(1500) },
  }),
  act('visual impeller-7 orange peel and runs', {
    ...{ verb: 'visual', part: 'impeller-7', looks: ['orange-peel', 'runs'] },
  }),
  act('visual impeller-7 ok', { verb: 'visual', part: 'impeller-7', looks: ['good'] }),
  act('prep impeller-7 dust 2 size 3 water break held', {
    ...{ verb: 'prep', parts: ['impeller-7'], dustRating: 2, dustSize: 3, waterBreak: 'held' },
  }),
  act('snooze 5m', { verb: 'snooze', minutes: minutes(5) }),
  act('snooze part/impeller-7/cure-done 10 min', {
    ...{ verb: 'snooze', minutes: minutes(10), key: 'part/impeller-7/cure-done' },
  }),
  miss('snooze', 'incomplete', '', 'snooze 5m'),
  miss('snooze 2h', 'impossible', '2h'),
  act('remind 15m check the gun', { verb: 'remind', minutes: minutes(15), text: 'check the gun' }),
  act('timer 1h', { verb: 'remind', minutes: minutes(60), text: '' }),
  miss('remind', 'incomplete', ''),
  act('shift on', { verb: 'shift', on: true }),
  act('Shift off at 9:40', { verb: 'shift', on: false }, happenedAt('2026-03-02T09:40')),
  miss('shift', 'incomplete', '', 'shift on'),
  act('hand over to Kari', { verb: 'handover', to: 'Kari' }),
  miss('handover', 'incomplete', ''),
  act('take over', { verb: 'takeover' }),
  act('first shift', { verb: 'first-shift' }),
  act("I'm new here", { verb: 'first-shift' }),
  act('i am new', { verb: 'first-shift' }),
  act('show me how', { verb: 'first-shift' }),
  act('first shift done Kari', { verb: 'first-shift-done', person: 'Kari' }),
  act('countersign first shift of Kari', { verb: 'first-shift-done', person: 'Kari' }),
  miss('first shift done', 'incomplete', ''),
  act('first shift off', { verb: 'first-shift-off' }),
  act('first shift off kari', { verb: 'first-shift-off', person: 'kari' }),
  { line: '  ', expected: { kind: 'silence' } },
];
