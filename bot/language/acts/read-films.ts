// Gauge readings, `12 14 13um`: the last unit covers all before it.

import type { SlotName } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { type Micrometres, micrometres } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { withUnit } from '../typed/numeric-chunk.ts';
import type { Token } from '../typed/token.ts';
import type { Unit } from '../typed/units-typed.ts';
import { figureFor, outside, unitless } from './figure-of-slot.ts';

/** In um. A millimetre is a film's unit too where the film is thick. */
export function filmsFrom(tokens: readonly Token[], line: string, slot: SlotName): readonly Micrometres[] | Fault {
  const films: Micrometres[] = [];
  let unit: Unit | undefined;
  for (const typed of [...tokens].reverse()) {
    if (typed.kind === 'number' && unit === undefined) return unitless(typed, [slot], line);
    const token = typed.kind === 'number' && unit !== undefined ? withUnit(typed, typed.number, unit) : typed;
    const film =
      token.kind === 'quantity' && token.quantity.is === 'length'
        ? (outside(slot, token, token.quantity.value * 1000) ?? token.quantity.value * 1000)
        : figureFor(slot, token, line);
    if (isFailed(film)) return film;
    if (token.kind === 'quantity') unit = token.unit;
    films.unshift(micrometres(film));
  }
  return films;
}
