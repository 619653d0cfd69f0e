// `set voc-limit 300kg/month`: a mass in a time, from the shop's permit.

import type { CommandOf } from '../../../core/commands.ts';
import { ownValue } from '../../../core/own-key.ts';
import { grams, gramsFromKilograms, gramsFromPounds } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { withoutAccents } from '../tongues/spanish/lexicon.ts';
import type { Token } from '../typed/tokens.ts';
import type { ActLine } from './act-line.ts';

const shape = /^(\d+(?:[.,]\d+)?) ?(kg|g|lb)s? ?(?:\/|per|a|an|al|por) ?(day|month|year|d[ií]a|mes|a[ñn]o)$/i;
const units: Readonly<Record<string, (value: number) => ReturnType<typeof grams>>> = {
  g: grams,
  kg: gramsFromKilograms,
  lb: gramsFromPounds,
};

const spans: ReadonlyMap<string, 'day' | 'month' | 'year'> = new Map([
  ['day', 'day'],
  ['dia', 'day'],
  ['month', 'month'],
  ['mes', 'month'],
  ['year', 'year'],
  ['ano', 'year'],
]);

export function setVocLimit(act: ActLine, values: readonly Token[]): CommandOf<'set'> | Fault {
  const [first] = values;
  const last = values.at(-1);
  if (first === undefined || last === undefined) return { code: 'incomplete', needs: ['voc-limit'] };
  const token = { text: act.line.slice(first.start, last.end), start: first.start, end: last.end };
  const [, amount = '', unit = '', per] = shape.exec(token.text) ?? [];
  const make = ownValue(units, unit.toLowerCase());
  const length = spans.get(withoutAccents(per?.toLowerCase() ?? ''));
  if (make === undefined || length === undefined) {
    return { code: 'unit-missing', token, needs: ['voc-limit'], tries: [] };
  }
  const mass = make(Number(amount.replace(',', '.')));
  return mass > 0
    ? { verb: 'set', setting: { name: 'voc-limit', grams: mass, per: length } }
    : { code: 'impossible', token, needs: ['voc-limit'] };
}
