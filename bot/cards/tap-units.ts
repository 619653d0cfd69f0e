// A tap's line in the units that its person reads: what is asked for in a form is then what stands on their gauge. Scales
// in the shop weigh in grams, so masses of A and B stay.

import type { UnitSystem } from '../../core/crew/unit-system.ts';

const pairs = [
  ['C', 'F'],
  ['kg', 'lb'],
  ['um', 'mil'],
  ['m2', 'ft2'],
] as const;
const unitsOf: Readonly<Record<UnitSystem, ReadonlyMap<string, string>>> = {
  us: new Map(pairs),
  metric: new Map(pairs.map(([metric, us]) => [us, metric])),
};

/** Either way: a card that was worded for somebody else is tapped too. */
export function inUnitsOf(line: string, units: UnitSystem): string {
  return line.replaceAll(
    /\{([\w-]+)\}([A-Za-z]+)/g,
    (_, id: string, unit: string) => `{${id}}${unitsOf[units].get(unit) ?? unit}`,
  );
}
