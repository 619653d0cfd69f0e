// The canonical line of an amendment: the act, what it should be, and why in quotes.

import type { CommandOf } from '../../core/commands.ts';
import { amendsOf } from '../../core/verbs/amends.ts';
import type { AmendTarget } from '../../core/verbs/correction-verbs.ts';
import { writeName } from './people-typed.ts';
import { isoLocal } from './times/wall-clock.ts';
import { englishVerbs } from './tongues/english/verbs.ts';
import { type WrittenFor, writeText } from './write-fields.ts';
import { writeFilms, written } from './write-quantities.ts';

export function writeTarget(of: AmendTarget): readonly string[] {
  return [
    'amend',
    of.part ?? '',
    of.batch === undefined ? '' : String(of.batch),
    of.can === undefined ? '' : String(of.can),
    of.session === undefined ? '' : String(of.session),
    of.verb,
    of.spot === undefined ? '' : `spot ${of.spot}`,
    of.place === undefined ? '' : `in ${of.place}`,
  ];
}

/** A correction of the same act: with the figures of its own example where it has any, else of its time. */
export function amendExample(of: AmendTarget): string {
  const has = (amendsOf(of.verb) ?? []).some(({ slot }) => slot.unit !== undefined);
  const figures = englishVerbs[of.verb].example.match(/(?<= )\d[\d.]*[A-Za-z%]\S*/g) ?? [];
  const said = has && figures.length > 0 ? figures : ['at 9:40'];
  return [...writeTarget(of), ...said, '"…"'].filter((piece) => piece !== '').join(' ');
}

export function writeAmend({ of, change, why }: CommandOf<'amend'>, { zone, hearing }: WrittenFor): readonly string[] {
  if (change.holdWhy !== undefined) return [...writeTarget(of), JSON.stringify(change.holdWhy)];
  const said: ReadonlyMap<string, unknown> = new Map(Object.entries(change));
  const values = (amendsOf(of.verb) ?? []).flatMap(({ name, slot, told, options }) => {
    const value = said.get(name);
    if (value === undefined || (Array.isArray(value) && value.length === 0)) return [];
    const text = Array.isArray(value)
      ? writeFilms(value.map(Number))
      : typeof value === 'number'
        ? written(value, slot.unit ?? '')
        : told === 'person'
          ? writeName(String(value), hearing)
          : told === 'text'
            ? writeText(String(value))
            : String(value);
    const behind = options?.behind ?? options?.alone?.toLowerCase();
    return behind === undefined ? [text] : [behind, text];
  });
  return [
    ...writeTarget(of),
    ...values,
    change.at === undefined ? '' : `at ${isoLocal(change.at, zone)}`,
    JSON.stringify(why),
  ];
}
