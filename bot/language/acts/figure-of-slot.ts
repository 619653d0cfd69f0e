// One piece of a line as a figure of a slot, or what is wrong with it there: no unit, another kind of thing, more than one
// meaning, out of reach.

import { known } from '../../../core/known.ts';
import { grams, litres } from '../../../core/units.ts';
import type { Amount } from '../../../core/verbs/said.ts';
import type { Fault } from '../reading.ts';
import { isOutside, type Slot, slots } from '../slots.ts';
import type { NumberToken, QuantityToken, Span, Token } from '../typed/token.ts';
import type { Quantity } from '../typed/units-typed.ts';
import { leftOver, lineWith } from './act-line.ts';

/** In its base unit; of a slot without units, a whole number. */
export function figureFor(slot: Slot, token: Token, line: string): number | Fault {
  switch (token.kind) {
    case 'number':
      return slots[slot].units.length === 0 ? countFrom(token, slot) : unitless(token, [slot], line);
    case 'quantity':
      if (!slots[slot].kinds.includes(token.quantity.is)) return leftOver(token);
      return quantityOutside(slot, token) ?? token.quantity.value;
    case 'doubt':
      return slots[slot].kinds.includes(token.is) ? doubtful(token, line, slot) : leftOver(token);
    case 'impossible':
      return slots[slot].kinds.includes(token.is) ? impossible(slot, token) : leftOver(token);
    case 'word':
    case 'quoted':
      return leftOver(token);
    default: {
      const never: never = token;
      return never;
    }
  }
}

/** A bare whole number: of a batch, a can, a session, or a count. */
export function countFrom(token: NumberToken, slot: Slot = 'batch'): number | Fault {
  const { value, other, whole } = token.number;
  if (other !== undefined) return { failed: 'ambiguous-number', token, couldBe: [`${other}`, `${value}`] };
  return whole ? (outside(slot, token, value) ?? value) : impossible(slot, token);
}

/** Outside what the slot's row allows; `value` in the unit of its limits. */
export function outside(slot: Slot, token: Span, value: number): Fault | undefined {
  const { limits } = slots[slot];
  return limits !== undefined && isOutside(limits, value) ? impossible(slot, token) : undefined;
}

/** The same number bounds a mass in grams and a volume in millilitres. */
export function quantityOutside(slot: Slot, token: QuantityToken): Fault | undefined {
  const { quantity } = token;
  if (quantity.is !== 'volume') return outside(slot, token, quantity.value);
  const fault = outside(slot, token, quantity.value * 1000);
  return fault?.limits === undefined ? fault : { ...fault, limits: { ...fault.limits, unit: 'mL' } };
}

export function impossible(slot: Slot, token: Span): Fault {
  const { limits } = slots[slot];
  return { failed: 'impossible', token, needs: [slot], ...known({ limits }) };
}

/** `all`: the pieces of the line. Whoever means thousands by one comma means them by the next. */
export function doubtful(
  token: Extract<Token, { kind: 'doubt' }>,
  line: string,
  slot: Slot | undefined,
  all: readonly Token[] = [token],
): Fault {
  const settled = (text: string, each: Token, way: number): string =>
    each.kind === 'doubt' ? lineWith(text, each, each.couldBe[way] ?? each.text) : text;
  const tries = token.couldBe.map((_, way) => all.reduceRight((text, each) => settled(text, each, way), line));
  const { couldBe } = token;
  return { failed: 'ambiguous-number', token, couldBe, tries, needs: slot === undefined ? [] : [slot] };
}

/** With the line that each unit would make of it. */
export function unitless(
  token: NumberToken,
  needs: readonly Slot[],
  line: string,
  units = needs.flatMap((slot) => slots[slot].units),
): Fault {
  const tries = units.map((unit) => lineWith(line, token, withUnitText(token, unit)));
  return { failed: 'unit-missing', token, needs, tries };
}

export function withUnitText(token: NumberToken, unit: string): string {
  const number = /^[+-]?[\d.,']+/.exec(token.text)?.[0] ?? token.text;
  return `${number}${unit}`;
}

/** By weight, or by volume. */
export function amountFrom({ is, value }: Quantity): Amount {
  return is === 'mass' ? { kind: 'mass', grams: grams(value) } : { kind: 'volume', litres: litres(value) };
}
