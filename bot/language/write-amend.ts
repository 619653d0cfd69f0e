// The canonical line of an amendment: the act, what it should be, and why in quotes.

import type { CommandOf } from '../../core/commands.ts';
import { isoLocal } from './times/wall-clock.ts';
import { writeFilms, written } from './write-quantities.ts';

export function writeAmend({ of, change, why }: CommandOf<'amend'>, zone: string): readonly string[] {
  const { at, partAGrams, partBGrams, celsius, relativeHumidityPercent, method, leftGrams, grams, filmMicrometres } =
    change;
  return [
    'amend',
    of.part ?? '',
    of.batch === undefined ? '' : String(of.batch),
    of.can === undefined ? '' : String(of.can),
    of.verb,
    of.place === undefined ? '' : `in ${of.place}`,
    partAGrams === undefined ? '' : `a ${written(partAGrams, 'g')}`,
    partBGrams === undefined ? '' : `b ${written(partBGrams, 'g')}`,
    celsius === undefined ? '' : written(celsius, 'C'),
    relativeHumidityPercent === undefined ? '' : written(relativeHumidityPercent, '%'),
    method ?? '',
    grams === undefined ? '' : written(grams, 'g'),
    leftGrams === undefined ? '' : written(leftGrams, 'g'),
    filmMicrometres === undefined || filmMicrometres.length === 0 ? '' : writeFilms(filmMicrometres),
    at === undefined ? '' : `at ${isoLocal(at, zone)}`,
    JSON.stringify(why),
  ];
}
