// Rates against temperature, and the warming of a part, against published worked examples and derived values.

import { biotNumber, type Lump, lumpOfWall, minutesToReach, timeConstant } from '../../core/calc/heating.ts';
import { type HeatProperties, heatProperties, type Metal } from '../../core/calc/metals.ts';
import { durationAt, gasConstant, type RateLaw } from '../../core/calc/rate-law.ts';
import { celsius, metres, millimetres, minutes } from '../../core/units.ts';
import { answered, checkPublished, derived, fromMemory, type PublishedCase, run, seen } from './published-case.ts';

const ruleOfTen = 't2 = t1 / Q10^((T2 - T1)/10)';
const potLife: RateLaw = {
  kind: 'q10',
  minutes: minutes(240),
  atCelsius: celsius(20),
  factorPerTenDegrees: 2,
  range: { lowestCelsius: celsius(10), highestCelsius: celsius(35) },
};
const potLifeHours = (at: number) => {
  const found = durationAt(potLife, celsius(at));
  return found.given ? found.minutes / 60 : found;
};

const kinetics: readonly PublishedCase[] = [
  ...(
    [
      [30, 2],
      [25, 2.83],
      [35, 1.41],
      [10, 8],
    ] as const
  ).map(([at, expected]) =>
    derived(
      `a pot life of 4 h at 20 degC that halves every 10 is ${expected} h at ${at}`,
      ruleOfTen,
      () => potLifeHours(at),
      expected,
      0.01,
    ),
  ),
  run('the gas constant is 8.31446261815 J/(mol K)', 'GNU Units 2.22', () => gasConstant, 8.31446261815, 1e-11),
];

const bead: HeatProperties = { kilogramsPerCubicMetre: 8500, wattsPerMetreKelvin: 20, joulesPerKilogramKelvin: 400 };
const beadLump: Lump = { metal: bead, characteristicMetres: metres(7.06e-4 / 6) };
const gas = { celsius: celsius(200), wattsPerSquareMetreKelvin: 400 };
const slab: HeatProperties = { kilogramsPerCubicMetre: 7833, wattsPerMetreKelvin: 42.5, joulesPerKilogramKelvin: 460 };
const slabLump = lumpOfWall(slab, millimetres(40), 2);
const room = { celsius: celsius(50), wattsPerSquareMetreKelvin: 30 };
const oven = { celsius: celsius(120), wattsPerSquareMetreKelvin: 25 };
const incropera = 'Incropera, example 5.1, public companion notebook';
const plate = 'public worked example, cooling steel plate';
const lumped = 'tau = rho cp Lc / h, t = tau ln((Ta - T0)/(Ta - T))';
const wall = (metal: Metal, thickness: number) => lumpOfWall(heatProperties[metal], millimetres(thickness), 2);
/** As a public worked example has it, after DIN EN 12524. */
const olderStainless = lumpOfWall({ ...heatProperties.stainless, joulesPerKilogramKelvin: 460 }, millimetres(6), 2);
const seconds = (found: ReturnType<typeof timeConstant>) => answered(found) * 60;
const toHundredTen = (metal: Metal, thickness: number) =>
  minutesToReach(wall(metal, thickness), oven, celsius(20), celsius(110));

const heating: readonly PublishedCase[] = [
  seen(
    'a thermocouple bead of 7.06e-4 m has a time constant of 1 s',
    incropera,
    () => seconds(timeConstant(beadLump, gas)),
    1,
    0.005,
  ),
  seen(
    'and goes from 25 to 199 degC in gas of 200 in 5.16 s',
    incropera,
    () => seconds(minutesToReach(beadLump, gas, celsius(25), celsius(199))),
    5.16,
    0.01,
  ),
  seen('a steel plate of 4 cm has a Biot number of 0.014', plate, () => biotNumber(slabLump, room), 0.014, 0.0005),
  seen(
    'and cools from 500 to 100 degC in air of 50 in 5,282 s',
    plate,
    () => seconds(minutesToReach(slabLump, room, celsius(500), celsius(100))),
    5282,
    5,
  ),
  derived(
    'to the second in 5,278 s',
    lumped,
    () => seconds(minutesToReach(slabLump, room, celsius(500), celsius(100))),
    5278,
    0.5,
  ),
  derived(
    '3 mm steel heated on both faces has a Biot number of 0.00075',
    'h Lc / k',
    () => biotNumber(wall('steel', 3), oven),
    0.00075,
    1e-9,
  ),
  ...(
    [
      ['steel', 3, 210.6],
      ['steel', 6, 421.2],
      ['steel', 10, 702],
    ] as const
  ).map(([metal, thickness, expected]) =>
    derived(
      `${thickness} mm ${metal} has a time constant of ${expected} s`,
      lumped,
      () => seconds(timeConstant(wall(metal, thickness), oven)),
      expected,
      0.05,
    ),
  ),
  derived(
    '6 mm stainless has a Biot number of 0.0044',
    'h Lc / k',
    () => biotNumber(wall('stainless', 6), oven),
    0.0044,
    0.00005,
  ),
  ...(
    [
      ['steel', 3, 8.08],
      ['steel', 6, 16.16],
      ['steel', 10, 26.94],
      // 16.74 min at 460 J/(kg K) times 500 / 460.
      ['stainless', 6, 18.2],
      ['aluminium', 6, 11.35],
    ] as const
  ).map(([metal, thickness, expected]) =>
    derived(
      `${thickness} mm ${metal} goes from 20 to 110 degC in an oven of 120 in ${expected} minutes`,
      lumped,
      () => toHundredTen(metal, thickness),
      expected,
      0.05,
    ),
  ),
  derived(
    '6 mm stainless of 460 J/(kg K) takes 16.74 minutes',
    lumped,
    () => minutesToReach(olderStainless, oven, celsius(20), celsius(110)),
    16.74,
    0.05,
  ),
  derived(
    "a target at the oven's own temperature is never reached",
    lumped,
    () => minutesToReach(wall('steel', 6), oven, celsius(20), celsius(120)),
    { failed: 'never-reached', what: 'target', given: 120, limit: 120 },
  ),
  derived('nor is one above it', lumped, () => minutesToReach(wall('steel', 6), oven, celsius(20), celsius(121)), {
    failed: 'never-reached',
    what: 'target',
    given: 121,
    limit: 120,
  }),
];

const designValues = 'EN ISO 10456 / DIN EN 12524, in the data of a public heat-transfer library';
const metalRows: readonly (readonly [Metal, number, number, number])[] = [
  ['steel', 7800, 50, 450],
  // Austenitic: of the standard from memory, 7900 and 500 as EN 10088-1 has them too.
  ['stainless', 7900, 17, 500],
  ['aluminium', 2800, 160, 880],
  ['cast-iron', 7500, 50, 450],
  ['copper', 8900, 380, 380],
  ['brass', 8400, 120, 380],
  ['zinc', 7200, 110, 380],
];
const metals = metalRows.map(([metal, density, conductivity, capacity]) =>
  (metal === 'stainless' ? fromMemory : seen)(
    `${metal}: ${density} kg/m3, ${conductivity} W/(m K), ${capacity} J/(kg K)`,
    designValues,
    () => heatProperties[metal],
    {
      kilogramsPerCubicMetre: density,
      wattsPerMetreKelvin: conductivity,
      joulesPerKilogramKelvin: capacity,
    },
  ),
);

checkPublished('kinetics and part heating', { seen: 10, run: 1, derived: 18, 'from-memory': 1 }, [
  ...kinetics,
  ...heating,
  ...metals,
]);
