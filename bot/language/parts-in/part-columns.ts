// Which detail of a part a column of a table holds, by what stands at its head in any tongue, and the unit that stands there too:
// `Max temp (°C)`, `espesor_mm`.

import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import type { Hearing } from '../hearing.ts';
import { cleanLine } from '../typed/clean-line.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { PartColumn } from './part-column-names.ts';

export interface Column {
  readonly holds: PartColumn;
  /** Of its figures, where the head says it. */
  readonly unit: string | undefined;
}

/** `undefined` where it holds nothing that is booked of a part. */
export function columnOf(head: string, { every: { columns }, units }: Hearing): Column | undefined {
  const words = withoutAccents(cleanLine(head.replaceAll('_', ' ')).toLowerCase())
    .split(/[^\p{L}\p{N}°^]+/u)
    .filter((word) => word !== '');
  const whole = columns.get(words.join(' '));
  if (whole !== undefined) return { holds: whole, unit: undefined };
  const unit = words.at(-1)?.replace('°', '') ?? '';
  const named = columns.get(words.slice(0, -1).join(' '));
  return named !== undefined && usualUnits[named] !== undefined && units.has(unit) ? { holds: named, unit } : undefined;
}

/** What a figure is in where nothing says it: what the reader of the list works in. */
export const usualUnits: Readonly<Partial<Record<PartColumn, Readonly<Record<UnitSystem, string>>>>> = {
  wall: { metric: 'mm', us: 'in' },
  area: { metric: 'm2', us: 'ft2' },
  highest: { metric: 'C', us: 'F' },
};
