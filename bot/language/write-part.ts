// Parts, and what is booked of each, as the reader takes them back.

import { isDeepStrictEqual } from 'node:util';
import type { CommandOf } from '../../core/commands.ts';
import type { PartName } from '../../core/ids.ts';
import type { NamedPart, PartDetails } from '../../core/verbs/said.ts';
import { type Hearing, meansAnother } from './hearing.ts';
import { fillers, notNames } from './tongues/english/line-words.ts';
import { writeParts } from './write-names.ts';
import { written } from './write-quantities.ts';

export function writePart({ part, details, more = [] }: CommandOf<'part'>, { every }: Hearing): readonly string[] {
  return alikeIn([{ part, details }, ...more]).map(({ names, details }, i) =>
    [i === 0 ? '' : '; part', writeParts(names).join(', '), ...writeDetails(details, every)]
      .filter((piece) => piece !== '')
      .join(' '),
  );
}

interface Alike {
  readonly names: PartName[];
  readonly details: PartDetails;
}

/** Those that follow one another and of which the same is known are one piece; a name without a figure stands alone. */
function alikeIn(parts: readonly NamedPart[]): readonly Alike[] {
  const alike: Alike[] = [];
  for (const { part, details } of parts) {
    const last = alike.at(-1);
    const isSame =
      last !== undefined &&
      [part, last.names[0] ?? ''].every((name) => /\d/.test(name)) &&
      isEqual(last.details, details);
    if (isSame) last.names.push(part);
    else alike.push({ names: [part], details });
  }
  return alike;
}

/** A serial is of one part. */
const isEqual = (one: PartDetails, other: PartDetails): boolean =>
  one.serial === undefined && isDeepStrictEqual(one, other);

const plainWord = /^[a-z0-9][a-z0-9-]*$/i;
const labels = new Set(['serial', 'job', 'customer', 'metal']);

function writeDetails(details: PartDetails, every: Hearing): readonly string[] {
  const { serial, job, customer, metal, wallMillimetres, areaSquareMetres, highestCelsius } = details;
  return [
    ...labelled('serial', serial, every),
    ...labelled('job', job, every),
    ...labelled('customer', customer, every),
    ...labelled('metal', metal, every),
    ...(wallMillimetres === undefined ? [] : [written(wallMillimetres, 'mm')]),
    ...(areaSquareMetres === undefined ? [] : [written(areaSquareMetres, 'm2')]),
    ...(highestCelsius === undefined ? [] : [`max ${written(highestCelsius, 'C')}`]),
  ];
}

/**
 * In quotes where it could be read as anything else: a label, a word of the reader's own, a number with its
 * unit, several words.
 */
function labelled(label: string, value: string | undefined, every: Hearing): readonly string[] {
  if (value === undefined) return [];
  const word = value.toLowerCase();
  const meansMore = labels.has(word) || notNames.has(word) || fillers.has(word) || meansAnother(word, every);
  const isPlain = plainWord.test(value) && !meansMore && !/^\d+\D|^[a-z]+\d/i.test(value);
  return [`${label} ${isPlain ? value : JSON.stringify(value)}`];
}
