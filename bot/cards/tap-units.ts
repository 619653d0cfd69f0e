// A tap's line in the units that its person reads: what is asked for in a form is then what stands on their gauge. Scales
// in the shop weigh in grams, so masses of A and B stay.

import type { UnitSystem } from '../../core/crew/crew.ts';

const usUnits: Readonly<Record<string, string>> = { C: 'F', kg: 'lb', um: 'mil' };

export function inUnitsOf(line: string, units: UnitSystem): string {
  if (units === 'metric') return line;
  return line.replaceAll(
    /\{([\w-]+)\}([A-Za-z]+)/g,
    (_, id: string, unit: string) => `{${id}}${usUnits[unit] ?? unit}`,
  );
}
