// The figures of a shown line in the units and with the decimal sign of whoever reads it. What is exact in one of the units is
// told in that, as it was typed; anything else is rounded.

import type { UnitSystem } from '../../core/crew/unit-system.ts';
import { isOwnKey } from '../../core/own-key.ts';
import {
  celsius,
  fahrenheitFromCelsius,
  feetPerMinuteFromMetresPerSecond,
  grams,
  inchesFromMillimetres,
  litres,
  metresPerSecond,
  micrometres,
  millimetres,
  milsFromMicrometres,
  ouncesFromGrams,
  squareFeetFromSquareMetres,
  squareMetres,
  usGallonsFromLitres,
} from '../../core/units.ts';
import type { Figures } from './figures.ts';

type Scale = readonly [unit: string, of: (base: number) => number];

const asIs = (base: number): number => base;
const ounces: Scale = ['oz', (base) => ouncesFromGrams(grams(base))];
const pounds: Scale = ['lb', (base) => ouncesFromGrams(grams(base)) / 16];
const kilograms: Scale = ['kg', (base) => base / 1000];
const scale: Scale = ['g', asIs];
const oneOf = (metric: Scale, us: Scale): Readonly<Record<UnitSystem, readonly Scale[]>> => ({
  metric: [metric, us],
  us: [us, metric],
});

/** By the unit of the canonical line, the reader's first. A scale shows grams everywhere. */
const scales = {
  g: { metric: [scale, ounces, pounds], us: [scale, ounces, pounds] },
  kg: { metric: [kilograms, pounds, ounces], us: [pounds, ounces, kilograms] },
  L: oneOf(['L', asIs], ['gal', (base) => usGallonsFromLitres(litres(base))]),
  C: oneOf(['C', asIs], ['F', (base) => fahrenheitFromCelsius(celsius(base))]),
  um: oneOf(['um', asIs], ['mil', (base) => milsFromMicrometres(micrometres(base))]),
  mm: oneOf(['mm', asIs], ['in', (base) => inchesFromMillimetres(millimetres(base))]),
  m2: oneOf(['m2', asIs], ['ft2', (base) => squareFeetFromSquareMetres(squareMetres(base))]),
  'm2/h': oneOf(['m2/h', asIs], ['ft2/h', (base) => squareFeetFromSquareMetres(squareMetres(base))]),
  'm/s': oneOf(['m/s', asIs], ['fpm', (base) => feetPerMinuteFromMetresPerSecond(metresPerSecond(base))]),
  '%': { metric: [['%', asIs]], us: [['%', asIs]] },
  min: { metric: [['min', asIs]], us: [['min', asIs]] },
} as const satisfies Readonly<Record<string, Readonly<Record<UnitSystem, readonly Scale[]>>>>;

const bare = /^-?\d+(?:\.\d+)?$/;
const figure = /^(-?\d+(?:\.\d+)?)(\D\S*)$/;

/** Readings of one gauge share the unit behind the last. */
export function figuresShown(pieces: readonly string[], figures: Figures): readonly string[] {
  return pieces.map((piece, i) => {
    const last = pieces.findIndex((each, k) => k >= i && !bare.test(each));
    const [, , unit = ''] = figure.exec(pieces[last] ?? '') ?? [];
    if (!isOwnKey(scales, unit) || (last !== i && unit !== 'um')) return piece;
    const first = unit === 'um' ? pieces.findLastIndex((each, k) => k < last && !bare.test(each)) + 1 : i;
    const gauge = pieces.slice(first, last + 1).map((each) => Number.parseFloat(each) * (unit === 'kg' ? 1000 : 1));
    const [shownIn, of] = scaleFor(gauge, scales[unit][figures.units]);
    // A comma stands between readings of a gauge.
    const sign = unit === 'um' ? '.' : figures.decimal(0.5).charAt(1);
    const shown = String(rounded(of(gauge[i - first] ?? 0))).replace('.', sign);
    return last === i ? `${shown}${shownIn}` : shown;
  });
}

function scaleFor(gauge: readonly number[], [first, ...others]: readonly Scale[]): Scale {
  const isExact = ([, of]: Scale) => gauge.every((base) => Math.abs(rounded(of(base)) - of(base)) < 1e-7);
  if (first === undefined) return scale;
  return [first, ...others].find(isExact) ?? first;
}

/** Never three digits behind the sign where thousands could be meant; more only of what would else be nothing. */
const rounded = (value: number): number => Number(value.toFixed(Math.abs(value) < 0.1 ? 4 : 2));
