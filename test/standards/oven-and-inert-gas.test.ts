// Oven ventilation, oxygen and inert gas.

import { oxygenAfterPurge, purgeTime, purgeVolume } from '../../core/calc/gas.ts';
import { batchOvenFlow } from '../../core/calc/oven-air.ts';
import {
  oxygenAfterRelease,
  oxygenBand,
  oxygenDeficientBelow,
  oxygenEnrichedAbove,
} from '../../core/calc/room-oxygen.ts';
import { solvents } from '../../core/calc/solvents.ts';
import { shareOfLel } from '../../core/calc/vapour.ts';
import { purgeBeforeHeat } from '../../core/calc/ventilation.ts';
import {
  type CubicMetresPerHour,
  celsius,
  cubicFeetPerMinuteFromCubicMetresPerHour,
  cubicMetres,
  cubicMetresPerHour,
  type Litres,
  litres,
  litresFromUsGallons,
  litresPerMinute,
  percent,
} from '../../core/units.ts';
import { answered, checkPublished, derived, fromMemory, seen } from './published-case.ts';

const philippine = 'Fire Code of the Philippines, industrial-oven ventilation rule';
const nfpa = 'NFPA 86';
const oven = celsius(90);
const acetone = (volume: Litres) => [{ solvent: solvents.acetone, litres: volume }];
const flow = (volume: Litres): CubicMetresPerHour => answered(batchOvenFlow(acetone(volume), oven));

checkPublished('oven ventilation', { seen: 2, run: 0, derived: 1, 'from-memory': 6 }, [
  seen(
    'an oven stays below a quarter of the limit',
    'application note quoting NFPA 86',
    () => shareOfLel.oshaSpray,
    0.25,
  ),
  seen('batch oven: not less than 3 m3/min a litre', philippine, () => flow(litres(1)) / 60 >= 3, true),
  derived(
    'that 3 m3/min a litre is 401 cfm a gallon, which ours passes',
    philippine,
    () => cubicFeetPerMinuteFromCubicMetresPerHour(flow(litresFromUsGallons(1))) > 401,
    true,
  ),
  fromMemory(
    'batch oven: 440 cfm a gallon',
    nfpa,
    () => cubicFeetPerMinuteFromCubicMetresPerHour(flow(litresFromUsGallons(1))),
    440,
    1e-6,
  ),
  fromMemory(
    'half a gallon takes 220 cfm',
    nfpa,
    () => cubicFeetPerMinuteFromCubicMetresPerHour(flow(litresFromUsGallons(0.5))),
    220,
    1e-6,
  ),
  fromMemory('440 cfm a gallon is 3.29 m3/min a litre', nfpa, () => flow(litres(1)) / 60, 3.29, 0.005),
  fromMemory(
    'from 121 degC the flow is 1.4 times as much',
    nfpa,
    () => answered(batchOvenFlow(acetone(litres(1)), celsius(121))) / flow(litres(1)),
    1.4,
    1e-9,
  ),
  fromMemory(
    'four volumes of a 0.20 m3 oven are 0.8 m3: eight minutes at 6 m3/h',
    nfpa,
    () => answered(purgeBeforeHeat(cubicMetres(0.2), cubicMetresPerHour(6))) * (6 / 60),
    0.8,
    1e-9,
  ),
  fromMemory('no figure above 260 degC (500 degF)', nfpa, () => batchOvenFlow(acetone(litres(1)), celsius(261)), {
    failed: 'out-of-range',
    what: 'oven-temperature',
    given: 261,
    lowest: 0,
    highest: 260,
  }),
]);

const permit = '29 CFR 1910.146(b)';

checkPublished('oxygen', { seen: 3, run: 0, derived: 2, 'from-memory': 0 }, [
  seen('deficient below 19.5 %', `${permit}, 1910.134`, () => oxygenDeficientBelow, 19.5),
  seen('enriched above 23.5 %', permit, () => oxygenEnrichedAbove, 23.5),
  derived('19.5 and 23.5 % themselves are neither', permit, () => [19.5, 23.5].map((one) => oxygenBand(percent(one))), [
    'normal',
    'normal',
  ]),
  derived('19.49 and 23.51 % are', permit, () => [19.49, 23.51].map((one) => oxygenBand(percent(one))), [
    'deficient',
    'enriched',
  ]),
  seen('above a tenth of the explosive limit is hazardous', permit, () => shareOfLel.confinedSpaceHazard, 0.1),
]);

const clean = (volume: number, from: number) => ({
  headspace: litres(volume),
  from: percent(from),
  gasOxygen: percent(0),
});
const volumes = (from: number, to: number): number => answered(purgeVolume(clean(1, from), percent(to)));
const page = 'public inerting page of a gas trade body';
const chart = "sheet after Branan's rules of thumb";
const mixed = 'C = C0 exp(-V / Vh)';
const release = (room: number, gas: number): number =>
  answered(oxygenAfterRelease(cubicMetres(room), cubicMetres(gas)));

checkPublished('purging', { seen: 4, run: 0, derived: 11, 'from-memory': 0 }, [
  seen('21 to 10 % takes 0.74 volumes', page, () => volumes(21, 10), 0.74, 0.01),
  seen('21 to 7.7 % takes one volume', page, () => volumes(21, 7.7), 1, 0.01),
  seen(
    'after one volume 63 % of it is inert gas',
    page,
    () => 1 - answered(oxygenAfterPurge(clean(1, 21), litres(1))) / 21,
    0.63,
    0.005,
  ),
  seen('21 to 1 % takes 3.1 volumes by the chart', chart, () => volumes(21, 1), 3.1, 0.1),
  derived('21 to 1 % takes 3.045 volumes by the logarithm', mixed, () => volumes(21, 1), 3.045, 0.0005),
  ...[7.689, 2.829, 1.041, 0.383, 0.141].map((left, index) =>
    derived(
      `20.9 % after ${index + 1} volumes: ${left} %`,
      mixed,
      () => answered(oxygenAfterPurge(clean(1, 20.9), litres(index + 1))),
      left,
      0.01,
    ),
  ),
  derived(
    'a headspace of 30 US gallons from 20.9 to 1 % takes 345.2 L',
    mixed,
    () => answered(purgeVolume({ ...clean(1, 20.9), headspace: litresFromUsGallons(30) }, percent(1))),
    345.2,
    0.5,
  ),
  derived(
    'at 10 L/min that lasts 34.5 minutes',
    't = (V / Q) ln(C0 / C), public industrial-hygiene text',
    () =>
      answered(purgeTime({ ...clean(1, 20.9), headspace: litresFromUsGallons(30) }, percent(1), litresPerMinute(10))),
    34.52,
    0.05,
  ),
  derived('2 m3 of argon in a room of 30 m3, mixed: 19.55 %', mixed, () => release(30, 2), 19.55, 0.02),
  derived('1 m3 in a room of 12 m3, mixed: 19.23 %', mixed, () => release(12, 1), 19.23, 0.02),
  derived(
    'the first is not deficient, the second is',
    permit,
    () => [oxygenBand(percent(release(30, 2))), oxygenBand(percent(release(12, 1)))],
    ['normal', 'deficient'],
  ),
]);
