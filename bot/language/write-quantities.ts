// Figures as the reader takes them back without a doubt: no exponent, never three digits after a point where a
// thousands mark could be meant.

import { gramsFromKilograms, type Micrometres } from '../../core/units.ts';
import type { AirSaid, Amount, PartDetails } from '../../core/verbs/said.ts';
import { isSpanishWord } from './tongues/spanish/lexicon.ts';
import { fillers, notNames } from './trade-words.ts';

const couldBeThousands = /^-?[1-9]\d{0,2}\.\d{3}$/;

export function written(value: number, unit: string): string {
  const plain = String(value);
  const text = plain.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : plain;
  return `${couldBeThousands.test(text) ? `${text}0` : text}${unit}`;
}

export function writeAmount(amount: Amount): string {
  if (amount.kind === 'volume') return written(amount.litres, 'L');
  const kilograms = amount.grams / 1000;
  return kilograms >= 1 && gramsFromKilograms(kilograms) === amount.grams
    ? written(kilograms, 'kg')
    : written(amount.grams, 'g');
}

export function writeAir(air: AirSaid | undefined): readonly string[] {
  if (air === undefined) return [];
  const { celsius, relativeHumidityPercent } = air;
  return [
    ...(celsius === undefined ? [] : [written(celsius, 'C')]),
    ...(relativeHumidityPercent === undefined ? [] : [written(relativeHumidityPercent, '%')]),
  ];
}

export function writeFilms(films: readonly Micrometres[]): string {
  return films.map((film, i) => written(film, i === films.length - 1 ? 'um' : '')).join(' ');
}

const plainWord = /^[a-z0-9][a-z0-9-]*$/i;
const labels = new Set(['serial', 'sn', 'job', 'order', 'customer', 'cust', 'client', 'metal', 'material']);

export function writeDetails(details: PartDetails): readonly string[] {
  const { serial, job, customer, metal, wallMillimetres, areaSquareMetres, highestCelsius } = details;
  return [
    ...labelled('serial', serial),
    ...labelled('job', job),
    ...labelled('customer', customer),
    ...labelled('metal', metal),
    ...(wallMillimetres === undefined ? [] : [written(wallMillimetres, 'mm')]),
    ...(areaSquareMetres === undefined ? [] : [written(areaSquareMetres, 'm2')]),
    ...(highestCelsius === undefined ? [] : [`max ${written(highestCelsius, 'C')}`]),
  ];
}

/**
 * In quotes where it could be read as anything else: a label, a word of the reader's own, a number with its
 * unit, several words.
 */
function labelled(label: string, value: string | undefined): readonly string[] {
  if (value === undefined) return [];
  const word = value.toLowerCase();
  const meansMore = labels.has(word) || notNames.has(word) || fillers.has(word) || isSpanishWord(word);
  const isPlain = plainWord.test(value) && !meansMore && !/^\d+\D|^[a-z]+\d/i.test(value);
  return [`${label} ${isPlain ? value : JSON.stringify(value)}`];
}
