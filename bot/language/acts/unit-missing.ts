// A number without a unit where one is needed, with the lines that each likely unit would make of it.

import { ownUnitsBefore } from '../own-units.ts';
import type { Fault } from '../reading.ts';
import { type Slot, slots } from '../slots.ts';
import { atClock } from '../times/hour-said.ts';
import type { NumberToken, Token } from '../typed/token.ts';
import { type ActLine, lineWith } from './act-line.ts';
import { withUnitText } from './figure-of-slot.ts';
import { slotsByUnit } from './slots-by-unit.ts';

/** Undefined where nothing on the line still wants a number. */
export function unitMissing(act: ActLine, filled: ReadonlyMap<Slot, unknown>): Fault | undefined {
  const later = act.tokens.flatMap((token) => (token.kind === 'quantity' ? [token.quantity.is] : []));
  const open = (slot: Slot): boolean =>
    slots[slot].units.length > 0 &&
    !filled.has(slot) &&
    slots[slot].kinds.every((kind) => !later.some((k) => k === kind));
  const { needs } = act.verb.row;
  const bare = bareNumbers(act);
  const token = bare[0];
  const wanted = slotsByUnit(act.verb.row).filter((slot) => open(slot) && couldBe(slot, token));
  const first = wanted[0];
  if (first === undefined || token === undefined) return undefined;
  const asked = hourAsked(act, token);
  if (asked !== undefined) return asked;
  const preferred = needs.includes(first) && bare.length === 1 ? [first] : wanted;
  return { failed: 'unit-missing', token, needs: preferred, tries: triesOf(act, bare, preferred) };
}

/** What few acts take is not thought of where the number could be none of it: a stirrer that turns twice a minute. */
function couldBe(slot: Slot, token: NumberToken | undefined): boolean {
  const { kinds, limits } = slots[slot];
  return !kinds.includes('word') || limits === undefined || token === undefined || token.number.value >= limits.lowest;
}

/** `mezclar 2kg a la 1`: an hour, of the night or of the afternoon. */
function hourAsked({ line, tokens, context }: ActLine, token: NumberToken): Fault | undefined {
  const at = tokens.indexOf(token);
  const [to, article] = tokens.slice(Math.max(0, at - 2), at);
  const typed = (each: Token | undefined) => each?.text.toLowerCase();
  const said = context.hearing.times.find(({ atOne }) => atOne?.[0] === typed(to) && atOne?.[1] === typed(article));
  if (said?.atHour === undefined || to === undefined || token.text !== '1') return undefined;
  const whole = { text: line.slice(to.start, token.end), start: to.start, end: token.end };
  const couldBe = [1, 13].map((hour) => atClock({ hour, minute: 0 }, context));
  return { failed: 'ambiguous-time', token: whole, couldBe, tries: couldBe.map((each) => lineWith(line, whole, each)) };
}

/** Bare numbers that can be no batch or session: all of them, or all after the first where the act may name one. */
function bareNumbers(act: ActLine): readonly NumberToken[] {
  const numbers = act.tokens.filter((token): token is NumberToken => token.kind === 'number');
  const [first] = numbers;
  const { may } = act.verb.row;
  const isNumbered = (may.includes('batch') || may.includes('session')) && first?.countable === true;
  return isNumbered && first.number.whole ? numbers.slice(1) : numbers;
}

/** The units of whoever speaks before those of others. */
function triesOf({ line, context }: ActLine, bare: readonly NumberToken[], wanted: readonly Slot[]): readonly string[] {
  const unitsOf = (slot: Slot): readonly string[] => ownUnitsBefore(slots[slot].units, context.units);
  const only = bare.length === 1 ? bare[0] : undefined;
  if (only !== undefined) {
    const units = wanted.length === 1 ? unitsOf(wanted[0] ?? 'amount') : likeliest(wanted.map(unitsOf));
    return units.slice(0, 4).map((unit) => lineWith(line, only, withUnitText(only, unit)));
  }
  return [0, 1, 2].map((choice) =>
    bare.reduceRight((text, token, i) => {
      const units = wanted[i] === undefined ? [] : unitsOf(wanted[i]);
      return lineWith(text, token, withUnitText(token, units[choice % Math.max(1, units.length)] ?? ''));
    }, line),
  );
}

/** The first unit of each, then the second of each. */
function likeliest(units: readonly (readonly string[])[]): readonly string[] {
  return [0, 1].flatMap((choice) => units.flatMap((each) => each[choice] ?? []));
}
