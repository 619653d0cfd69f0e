// Published check points for moist air, the dew-point chart, and go or no-go against a sheet's window.

import { dewPoint } from '../../core/calc/air.ts';
import { type ClimateWindow, checkClimate } from '../../core/calc/climate-window.ts';
import { saturationPressure } from '../../core/calc/saturation.ts';
import { humidityFromWetBulb, humidityRatio, seaLevelPressure, standardPressure } from '../../core/calc/wet-bulb.ts';
import {
  celsius,
  celsiusSpread,
  celsiusSpreadFromFahrenheit,
  celsiusFromFahrenheit as f,
  fahrenheitFromCelsius,
  fahrenheitSpreadFromCelsius,
  metres,
  percent,
} from '../../core/units.ts';
import { answered, checkPublished, derived, type PublishedCase, seen } from './published-case.ts';

const handbook = "ASHRAE Handbook Fundamentals 2017, ch. 1, as a reference library's tests quote it";

const pressures = [
  [-20, 103.24],
  [-5, 401.74],
  [5, 872.6],
  [25, 3169.7],
  [50, 12351.3],
  [100, 101418],
] as const;
// The handbook's own table holds the enhancement of real gases, ours is ideal: within 1 %.
const ratios = [
  [-20, 0.0006373],
  [-5, 0.0024863],
  [5, 0.005425],
  [25, 0.020173],
  [50, 0.086863],
] as const;
const altitudes = [
  [500, 95_461],
  [1000, 89_875],
  [4000, 61_640],
] as const;

const saturated = (at: number) => answered(saturationPressure(celsius(at)));
const fromWetBulb = () => answered(humidityFromWetBulb(celsius(40), celsius(20), seaLevelPressure));
const dewFahrenheit = (air: number, humidity: number): number =>
  fahrenheitFromCelsius(answered(dewPoint(f(air), percent(humidity))));

const points: readonly PublishedCase[] = [
  ...pressures.map(([at, printed]) =>
    seen(
      `vapour saturates at ${at} degC with ${printed} Pa`,
      `${handbook}, table 3`,
      () => saturated(at),
      printed,
      printed * 0.0003,
    ),
  ),
  ...ratios.map(([at, printed]) =>
    seen(
      `saturated air of ${at} degC holds ${printed} kg/kg`,
      `${handbook}, table 2`,
      () => answered(humidityRatio(saturated(at), seaLevelPressure)),
      printed,
      printed * 0.01,
    ),
  ),
  ...altitudes.map(([height, printed]) =>
    seen(
      `the air at ${height} m presses with ${printed} Pa`,
      `${handbook}, table 1`,
      () => answered(standardPressure(metres(height))),
      printed,
      1,
    ),
  ),
  seen('dry bulb 40, wet bulb 20 degC: 14 %', `${handbook}, example 1`, fromWetBulb, 14, 1),
  seen(
    'dry bulb 40, wet bulb 20 degC: dew point 7',
    `${handbook}, example 1`,
    () => answered(dewPoint(celsius(40), fromWetBulb())),
    7,
    0.5,
  ),
  seen(
    'dry bulb 40, wet bulb 20 degC: 0.0065 kg/kg',
    `${handbook}, example 1`,
    () => {
      const dew = answered(dewPoint(celsius(40), fromWetBulb()));
      return answered(humidityRatio(saturated(dew), seaLevelPressure));
    },
    0.0065,
    0.0001,
  ),
  seen(
    '25 degC, 80 %: 21.3094 degC',
    'documentation example of psychrolib',
    () => answered(dewPoint(celsius(25), percent(80))),
    21.3094,
    0.001,
  ),
  seen(
    '10 degC, 80 %: about 6.71 degC',
    'documentation of the R package weaana',
    () => answered(dewPoint(celsius(10), percent(80))),
    6.71,
    0.01,
  ),
];

// Air degF, humidity %, dew point degF; the cells run low by up to 1.5 degF.
const chart = [
  [70, 65, 57],
  [50, 85, 45],
  [50, 50, 31],
  [60, 60, 45],
  [60, 85, 55],
  [70, 50, 50],
  [70, 85, 65],
  [80, 50, 59],
  [80, 70, 68],
  [80, 85, 75],
  [90, 60, 73],
  [90, 85, 84],
  [100, 50, 77],
] as const;
const chartSource = 'public dew-point chart for coating work';

const fieldManual = 'FHWA-RD-98-084 check form; MIL-HDBK-1110, 9.6.6';
const window: ClimateWindow = { leastSpreadCelsius: celsiusSpread(3) };
const verdict = (surface: number) =>
  answered(
    checkClimate(window, {
      airCelsius: celsius(25),
      humidityPercent: percent(60),
      surfaceCelsius: celsius(surface),
    }),
  );
const spread = (surface: number): number => surface - answered(dewPoint(celsius(25), percent(60)));

checkPublished('published check points of moist air', { seen: 19, run: 0, derived: 0, 'from-memory': 0 }, points);

checkPublished('dew-point chart', { seen: 14, run: 0, derived: 0, 'from-memory': 0 }, [
  ...chart.map(([air, humidity, printed]) =>
    seen(`${air} degF, ${humidity} %: ${printed} degF`, chartSource, () => dewFahrenheit(air, humidity), printed, 1.5),
  ),
  seen(
    '70 degF, 65 %: the surface at 62 degF at the least',
    chartSource,
    () => dewFahrenheit(70, 65) + fahrenheitSpreadFromCelsius(celsiusSpreadFromFahrenheit(5)),
    62,
    1.5,
  ),
]);

checkPublished('go or no-go', { seen: 2, run: 0, derived: 7, 'from-memory': 0 }, [
  seen(
    'a spread of exactly 3 degC is enough',
    fieldManual,
    () => {
      const dew = answered(dewPoint(celsius(25), percent(60)));
      return verdict(dew + 3).breaches;
    },
    [],
  ),
  derived(
    'a spread of 2.99 degC is not',
    fieldManual,
    () => {
      const dew = answered(dewPoint(celsius(25), percent(60)));
      return verdict(dew + 2.99).breaches.map((breach) => breach.limit);
    },
    ['leastSpreadCelsius'],
  ),
  seen('5 degF of spread are 2.78 degC, not -15', fieldManual, () => celsiusSpreadFromFahrenheit(5), 2.7778, 0.0001),
  derived('3 degC of spread are 5.4 degF', fieldManual, () => fahrenheitSpreadFromCelsius(celsiusSpread(3)), 5.4, 1e-9),
  derived('25 degC, 60 %, steel of 19.6: spread 2.90', fieldManual, () => spread(19.6), 2.9, 0.02),
  derived('25 degC, 60 %, steel of 19.8: spread 3.10', fieldManual, () => spread(19.8), 3.1, 0.02),
  derived(
    'steel of 19.6 degC fails by 0.1',
    fieldManual,
    () => verdict(19.6).breaches.map((breach) => [breach.limit, 'by' in breach ? breach.by.toFixed(1) : breach.given]),
    [['leastSpreadCelsius', '0.1']],
  ),
  derived('steel of 19.8 degC passes', fieldManual, () => verdict(19.8).breaches, []),
  derived('the verdict carries the spread', fieldManual, () => verdict(19.8).spreadCelsius, 3.1, 0.02),
]);
