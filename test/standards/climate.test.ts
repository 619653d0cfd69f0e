// Dew point, humidity and water in the air, over the room temperatures of a coating shop: a reference library's run and
// published tables. The ASHRAE equations, and below 0 degC the frost point.

import { dewPoint, humidityAtSurface, vapourPressure } from '../../core/calc/air.ts';
import { liquidSaturationPressure } from '../../core/calc/saturation.ts';
import { humidityFromWetBulb, humidityRatio, seaLevelPressure } from '../../core/calc/wet-bulb.ts';
import { celsius, celsiusFromFahrenheit as f, fahrenheitFromCelsius, percent } from '../../core/units.ts';
import { psychrometrics } from './psychrometrics.ts';
import { answered, checkPublished, type PublishedCase, run, seen } from './published-case.ts';

const library = 'psychrolib 1.1.1, ASHRAE 2017 equations';
const magnus = 'Magnus equation over water, WMO and Alduchov-Eskridge constants';

const dew = (air: number, humidity: number): number => answered(dewPoint(celsius(air), percent(humidity)));
const vapour = (air: number, humidity: number) => answered(vapourPressure(celsius(air), percent(humidity)));
const gramsPerKilogram = (air: number, humidity: number): number =>
  1000 * answered(humidityRatio(vapour(air, humidity), seaLevelPressure));
const wetBulbHumidity = (air: number, wet: number): number =>
  answered(humidityFromWetBulb(celsius(air), celsius(wet), seaLevelPressure));

// Air degC, humidity %, dew point by the library, by WMO's constants and by Alduchov-Eskridge's, vapour Pa, humidity
// ratio g/kg, water g/m3, wet bulb degC.
type Row = readonly [number, number, number, number, number, number, number, number, number];
const table: readonly Row[] = [
  [5, 85, 2.691, 2.686, 2.688, 741.6, 4.586, 5.777, 3.95],
  [10, 60, 2.6, 2.584, 2.588, 736.8, 4.556, 5.638, 6.48],
  [10, 80, 6.713, 6.706, 6.708, 982.4, 6.089, 7.518, 8.29],
  [10, 85, 7.598, 7.592, 7.594, 1043.8, 6.474, 7.987, 8.73],
  [15, 50, 4.672, 4.652, 4.657, 852.7, 5.279, 6.412, 9.67],
  [15, 70, 9.579, 9.569, 9.572, 1193.8, 7.415, 8.977, 11.92],
  [15, 85, 12.501, 12.497, 12.498, 1449.6, 9.027, 10.9, 13.5],
  [20, 30, 1.914, 1.882, 1.892, 701.6, 4.337, 5.186, 10.85],
  [20, 40, 6.004, 5.98, 5.988, 935.5, 5.796, 6.915, 12.36],
  [20, 50, 9.272, 9.255, 9.261, 1169.4, 7.262, 8.643, 13.78],
  [20, 60, 12.007, 11.995, 12.0, 1403.3, 8.734, 10.372, 15.14],
  [20, 70, 14.367, 14.359, 14.362, 1637.2, 10.214, 12.101, 16.44],
  [20, 80, 16.447, 16.442, 16.444, 1871.0, 11.701, 13.829, 17.68],
  [20, 85, 17.403, 17.399, 17.401, 1988.0, 12.447, 14.694, 18.28],
  [20, 90, 18.31, 18.308, 18.309, 2104.9, 13.194, 15.558, 18.86],
  [23, 50, 12.028, 12.014, 12.02, 1405.2, 8.747, 10.281, 16.25],
  [25, 20, 0.501, 0.463, 0.476, 633.8, 3.915, 4.606, 12.51],
  [25, 30, 6.238, 6.211, 6.221, 950.8, 5.891, 6.909, 14.42],
  [25, 40, 10.476, 10.457, 10.465, 1267.7, 7.88, 9.213, 16.21],
  [25, 50, 13.864, 13.852, 13.858, 1584.6, 9.881, 11.516, 17.89],
  [25, 60, 16.701, 16.693, 16.698, 1901.5, 11.895, 13.819, 19.47],
  [25, 70, 19.15, 19.145, 19.148, 2218.5, 13.922, 16.122, 20.97],
  [25, 80, 21.309, 21.307, 21.309, 2535.4, 15.962, 18.425, 22.38],
  [25, 85, 22.302, 22.3, 22.302, 2693.8, 16.987, 19.577, 23.06],
  [30, 30, 10.548, 10.529, 10.54, 1273.8, 7.918, 9.104, 17.97],
  [30, 50, 18.447, 18.441, 18.447, 2123.0, 13.31, 15.174, 22.01],
  [30, 60, 21.388, 21.385, 21.39, 2547.6, 16.041, 18.209, 23.81],
  [30, 70, 23.928, 23.927, 23.93, 2972.2, 18.795, 21.244, 25.5],
  [30, 80, 26.169, 26.169, 26.171, 3396.8, 21.573, 24.279, 27.09],
  [30, 85, 27.199, 27.199, 27.201, 3609.1, 22.971, 25.796, 27.85],
  [35, 40, 19.385, 19.384, 19.392, 2251.1, 14.132, 15.829, 23.93],
  [35, 60, 26.068, 26.072, 26.077, 3376.7, 21.441, 23.743, 28.17],
  [40, 30, 19.125, 19.132, 19.143, 2215.0, 13.9, 15.326, 25.09],
  [40, 50, 27.585, 27.598, 27.604, 3691.7, 23.517, 25.544, 30.31],
  [0, 80, -2.683, -3.04, -3.039, 488.9, 3.016, 3.878, -1.16],
  [5, 50, -4.033, -4.577, -4.571, 436.2, 2.689, 3.398, 1.35],
  [20, 20, -3.209, -3.671, -3.658, 467.8, 2.884, 3.457, 9.27],
];

const fromTable: readonly PublishedCase[] = table.flatMap(([air, humidity, td, wmo, ae, pascals, ratio, , wet]) => {
  const at = `${air} degC, ${humidity} %`;
  const cases = [
    run(`${at}: dew point ${td}`, library, () => dew(air, humidity), td, 0.02),
    run(`${at}: vapour ${pascals} Pa`, library, () => vapour(air, humidity), pascals, pascals * 0.0003),
    run(`${at}: humidity ratio ${ratio} g/kg`, library, () => gramsPerKilogram(air, humidity), ratio, 0.01),
  ];
  // Below 0 degC the equation over water gives a lower figure: that vapour saturates over liquid there.
  // The row begins with WMO's own equation above 0 degC too, which is up to 0.3 % lower than ours.
  if (td <= 0) {
    const says = `${at}: the vapour saturates over supercooled water at ${wmo} degC`;
    cases.push(run(says, magnus, () => answered(liquidSaturationPressure(celsius(wmo))), pascals, pascals * 0.003));
  } else {
    cases.push(run(`${at}: dew point ${wmo} by WMO`, magnus, () => dew(air, humidity), wmo, 0.05));
    cases.push(run(`${at}: dew point ${ae} by Alduchov-Eskridge`, magnus, () => dew(air, humidity), ae, 0.05));
  }
  if (wet >= 0) {
    // A wet bulb printed to 0.01 degC fixes the humidity to 0.1 %.
    cases.push(
      run(`${air} degC, wet bulb ${wet}: ${humidity} %`, library, () => wetBulbHumidity(air, wet), humidity, 0.1),
    );
  }
  return cases;
});

// Air degF, humidity %, dew point degF.
const imperial = [
  [50, 60, 36.68],
  [50, 85, 45.68],
  [60, 50, 41.33],
  [60, 70, 50.2],
  [60, 85, 55.48],
  [70, 40, 44.6],
  [70, 50, 50.53],
  [70, 60, 55.49],
  [70, 80, 63.55],
  [70, 85, 65.28],
  [75, 50, 55.12],
  [77, 50, 56.96],
  [80, 50, 59.71],
  [80, 70, 69.34],
  [80, 85, 75.08],
  [90, 40, 62.45],
  [90, 60, 74.24],
  [90, 80, 82.99],
  [100, 50, 78.0],
] as const;
const grains = [
  [70, 50, 54.48],
  [80, 70, 107.82],
  [90, 60, 127.87],
] as const;
// Dry bulb, wet bulb, humidity %, dew point.
const wetBulbs = [
  [20, 15, 58.92, 11.733],
  [25, 18, 50.68, 14.072],
  [30, 25, 66.95, 23.19],
  [15, 12, 70.73, 9.733],
  [10, 8, 76.71, 6.104],
] as const;

const others: readonly PublishedCase[] = [
  ...imperial.map(([air, humidity, td]) =>
    run(
      `${air} degF, ${humidity} %: dew point ${td} degF`,
      library,
      () => fahrenheitFromCelsius(celsius(dew(f(air), humidity))),
      td,
      0.02,
    ),
  ),
  ...grains.map(([air, humidity, printed]) =>
    run(
      `${air} degF, ${humidity} %: ${printed} grains a pound`,
      library,
      () => 7 * gramsPerKilogram(f(air), humidity),
      printed,
      0.07,
    ),
  ),
  ...wetBulbs.flatMap(([air, wet, humidity, td]) => [
    run(`${air} degC, wet bulb ${wet}: ${humidity} %`, library, () => wetBulbHumidity(air, wet), humidity, 0.01),
    run(`${air} degC, wet bulb ${wet}: dew point ${td}`, library, () => dew(air, wetBulbHumidity(air, wet)), td, 0.02),
  ]),
  run(
    'air of 25 degC and 60 % on steel of 20 degC: 81.3 % there',
    library,
    () => answered(humidityAtSurface(celsius(25), percent(60), celsius(20))),
    81.3,
    0.05,
  ),
  run(
    'air of 30 degC and 70 % on steel of 27 degC: 83.3 % there',
    library,
    () => answered(humidityAtSurface(celsius(30), percent(70), celsius(27))),
    83.3,
    0.05,
  ),
];

// A public climate table: grams a cubic metre, and dew point in whole degrees, at 30, 40 ... 90 %.
const dewTable: readonly (readonly [number, readonly number[]])[] = [
  [15, [-3, 1, 4, 7, 9, 11, 13]],
  [20, [1, 5, 9, 12, 14, 16, 18]],
  [25, [5, 10, 13, 16, 19, 21, 23]],
  [30, [10, 14, 18, 21, 24, 26, 28]],
  [35, [14, 18, 21, 25, 28, 31, 33]],
  [40, [18, 23, 27, 30, 33, 36, 38]],
  [50, [26, 32, 36, 40, 43, 45, 48]],
];
const printedTable = 'public climate and humidity table';
const cell = (column: number): number => 30 + 10 * column;

// Cells that cut the degrees off, some by more than one: the water that the same table prints contradicts them.
const printedTooLow: ReadonlySet<string> = new Set([
  '20 degC, 40 %',
  '25 degC, 30 %',
  '35 degC, 40 %',
  '35 degC, 50 %',
  '35 degC, 60 %',
  '40 degC, 30 %',
  '50 degC, 30 %',
]);

const wholeDegrees: readonly PublishedCase[] = [
  ...dewTable.flatMap(([air, row]) =>
    row.map((printed, column) => {
      const at = `${air} degC, ${cell(column)} %`;
      if (!printedTooLow.has(at)) {
        return seen(`${at}: dew point ${printed}`, printedTable, () => dew(air, cell(column)), printed, 1);
      }
      return run(
        `${at}: the printed dew point ${printed} is too low by more than a degree, not repeated`,
        `${library}, beside a ${printedTable}`,
        () => dew(air, cell(column)),
        psychrometrics.GetTDewPointFromRelHum(air, cell(column) / 100),
        0.02,
      );
    }),
  ),
];

checkPublished('air by the reference library', { seen: 0, run: 252, derived: 0, 'from-memory': 0 }, [
  ...fromTable,
  ...others,
]);
checkPublished('air by a printed table', { seen: 42, run: 7, derived: 0, 'from-memory': 0 }, wholeDegrees);
