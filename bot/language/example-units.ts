// The examples of the vocabulary in the units that somebody works in, on round figures: a line to copy, no conversion.

import type { UnitSystem } from '../../core/crew/unit-system.ts';
import { ownValue } from '../../core/own-key.ts';

const customary: Readonly<Record<string, readonly [unit: string, perUnit: number, digits: number]>> = {
  kg: ['lb', 2.2046, 0],
  'L/min': ['cfh', 2.1189, 0],
  L: ['gal', 0.26417, 1],
  um: ['mil', 0.03937, 1],
  m2: ['ft2', 10.764, 0],
  mm: ['in', 0.03937, 1],
  ml: [' fl oz', 0.033814, 0],
  'm/s': ['fpm', 196.85, 0],
};

/** A scale shows grams everywhere. Readings of one gauge share the unit behind the last. */
export function exampleIn(example: string, units: UnitSystem): string {
  if (units === 'metric') return example;
  return example
    .replaceAll(/\b1([3-9]):(\d\d)\b/g, (_, hour: string, minute: string) => `${Number(hour) - 2}:${minute}pm`)
    .replaceAll(/(\d+)C\b/g, (_, degrees: string) => `${Math.round(Number(degrees) * 1.8 + 32)}F`)
    .replaceAll(
      /((?:(?<![\w.,-])\d+ )*\d+(?=um)|\d+(?:[.,]\d+)?)(kg|L\/min|L|um|m2|mm|ml|m\/s)\b/g,
      (said, figures: string, metric: string) => {
        const [unit, perUnit, digits] = ownValue(customary, metric) ?? ['', Number.NaN, 0];
        const shown = figures
          .split(' ')
          .map((figure) => Number((Number(figure.replace(',', '.')) * perUnit).toFixed(digits)));
        return shown.some(Number.isNaN) ? said : `${shown.join(' ')}${unit}`;
      },
    );
}

/** A country's sentences that are the same for everybody, their examples in its units. */
export const inCustomary = <Table extends object>(table: Table): Table => ({
  ...table,
  ...Object.fromEntries(Object.entries(table).map(([key, value]: [string, unknown]) => [key, leafInCustomary(value)])),
});

function leafInCustomary(value: unknown): unknown {
  if (typeof value === 'string') return exampleIn(value, 'us');
  if (Array.isArray(value)) return value.map(leafInCustomary);
  return typeof value === 'object' && value !== null ? inCustomary(value) : value;
}
