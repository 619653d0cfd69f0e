// `set voc-limit 300kg/month`: a mass in a time, from the shop's permit.

import type { CommandOf } from '../../../core/commands.ts';
import { grams, gramsFromKilograms, gramsFromPounds } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import type { Token } from '../typed/tokens.ts';
import type { ActLine } from './act-line.ts';

const shape = /^(\d+(?:[.,]\d+)?) ?(kg|g|lb)s? ?(?:\/|per|a|an) ?(day|month|year)$/i;
const units: Readonly<Record<string, (value: number) => ReturnType<typeof grams>>> = {
  g: grams,
  kg: gramsFromKilograms,
  lb: gramsFromPounds,
};

export function setVocLimit(act: ActLine, values: readonly Token[]): CommandOf<'set'> | Fault {
  const [first] = values;
  const last = values.at(-1);
  if (first === undefined || last === undefined) return { code: 'incomplete', needs: ['voc-limit'] };
  const token = { text: act.line.slice(first.start, last.end), start: first.start, end: last.end };
  const [, amount = '', unit = '', per] = shape.exec(token.text) ?? [];
  const make = units[unit.toLowerCase()];
  const length = per?.toLowerCase();
  if (make === undefined || (length !== 'day' && length !== 'month' && length !== 'year')) {
    return { code: 'unit-missing', token, needs: ['voc-limit'], tries: [] };
  }
  const mass = make(Number(amount.replace(',', '.')));
  return mass > 0
    ? { verb: 'set', setting: { name: 'voc-limit', grams: mass, per: length } }
    : { code: 'impossible', token, needs: ['voc-limit'] };
}
