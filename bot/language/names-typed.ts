// What a part or a place may be called. Names are lower case and without spaces; a name of digits alone would be a
// batch, a verb or a unit would be read as such, so none of them is a name.

import type { PartName, PlaceName } from '../../core/ids.ts';
import { batchMarks, fillers, methodsByWord, notNames } from './trade-words.ts';
import { verbNamed } from './verbs-typed.ts';

const nameShape = /^[\p{L}\p{N}][\p{L}\p{N}._/-]{0,39}$/u;
const hasLetter = /\p{L}/u;
const timeShape = /^\d{1,2}([:.h]\d{2})?[ap]\.?m?$|^\d{4}-\d{1,2}-\d{1,2}/;
/** A number run into something that is no unit: `24Cx`, `1201gg`. Read as a name it would hide a slip. */
const slippedQuantity = /^\d+[.,]?\d*[\p{L}]{1,2}$/u;

export function partNamed(word: string): PartName | undefined {
  return word !== 'oven' && word !== 'room' && isName(word) ? word : undefined;
}

export function placeNamed(word: string): PlaceName | undefined {
  return isName(word) ? word : undefined;
}

/** A letter-and-number name such as `valve-3`, which is no plain word. */
export function looksLikePart(word: string): boolean {
  return /^\p{L}+[-_./]?\d+$/u.test(word);
}

function isName(word: string): boolean {
  return (
    nameShape.test(word) &&
    hasLetter.test(word) &&
    word === word.toLowerCase() &&
    !timeShape.test(word) &&
    !slippedQuantity.test(word) &&
    !fillers.has(word) &&
    !batchMarks.has(word) &&
    !notNames.has(word) &&
    !methodsByWord.has(word) &&
    verbNamed(word) === undefined
  );
}
