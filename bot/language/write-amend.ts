// The canonical line of an amendment: the act, what it should be, and why in quotes.

import type { CommandOf } from '../../core/commands.ts';
import { amendsOf } from '../../core/verbs/amends.ts';
import { isoLocal } from './times/wall-clock.ts';
import { writeFilms, written } from './write-quantities.ts';

export function writeAmend({ of, change, why }: CommandOf<'amend'>, zone: string): readonly string[] {
  const said: ReadonlyMap<string, unknown> = new Map(Object.entries(change));
  const values = (amendsOf(of.verb) ?? []).flatMap(({ name, slot, options }) => {
    const value = said.get(name);
    if (value === undefined || (Array.isArray(value) && value.length === 0)) return [];
    const text = Array.isArray(value)
      ? writeFilms(value.map(Number))
      : typeof value === 'number'
        ? written(value, slot.unit ?? '')
        : String(value);
    const behind = options?.behind ?? options?.alone?.toLowerCase();
    return behind === undefined ? [text] : [behind, text];
  });
  return [
    'amend',
    of.part ?? '',
    of.batch === undefined ? '' : String(of.batch),
    of.can === undefined ? '' : String(of.can),
    of.verb,
    of.place === undefined ? '' : `in ${of.place}`,
    ...values,
    change.at === undefined ? '' : `at ${isoLocal(change.at, zone)}`,
    JSON.stringify(why),
  ];
}
