// Which units a crew works in: those that are asked for, and the lines that are offered first. Grams, minutes and percents are everybody's.

import type { UnitSystem } from '../../core/crew/unit-system.ts';

const foreign: Readonly<Record<UnitSystem, ReadonlySet<string>>> = {
  metric: new Set(['lb', 'oz', 'gal', 'fl oz', 'qt', 'F', 'mil', 'in', 'ft2', 'fpm', 'ft2/h', 'lb/month']),
  us: new Set(['kg', 'L', 'mL', 'C', 'um', 'mm', 'cm', 'm2', 'm/s', 'm2/h', 'kg/month', 'kg/day', 'kg/year']),
};

/** All of them where none is a crew's own. */
export function ownUnits(units: readonly string[], system: UnitSystem | undefined): readonly string[] {
  if (system === undefined) return units;
  const own = units.filter((unit) => !foreign[system].has(unit));
  return own.length === 0 ? units : own;
}

/** All of them, the crew's own first. */
export function ownUnitsBefore(units: readonly string[], system: UnitSystem | undefined): readonly string[] {
  return [...new Set([...ownUnits(units, system), ...units])];
}

const figures = /\d(fl oz|[a-z]+\d?(?:\/[a-z]+)?)/gi;

/** Whether it holds a unit that is none of theirs. */
export const isForeign = (line: string, system: UnitSystem | undefined): boolean =>
  system !== undefined && [...line.matchAll(figures)].some(([, unit = '']) => foreign[system].has(unit));

/** In their order otherwise. */
export function ownUnitsFirst(lines: readonly string[], system: UnitSystem | undefined): readonly string[] {
  return [...lines.filter((line) => !isForeign(line, system)), ...lines.filter((line) => isForeign(line, system))];
}
