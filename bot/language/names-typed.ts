// What a part or a place may be called. Names are lower case and without spaces; a name of digits alone would be a
// batch, a verb or a unit would be read as such, so none of them is a name. In whatever tongue: the record stays, and a
// crew's languages change.

import type { PartName, PlaceName } from '../../core/ids.ts';
import { type Hearing, meansAnother } from './hearing.ts';
import type { LineContext } from './reading.ts';
import type { Slot } from './slots.ts';
import { readTimeOfDay } from './times/time-typed.ts';
import { batchMarks, fillers, notNames } from './tongues/english/line-words.ts';
import { isMetalWord, methodsByWord } from './trade-words.ts';
import { tokenize } from './typed/tokens.ts';
import { withoutAccents } from './typed/without-accents.ts';
import { verbNamed } from './verbs-typed.ts';
import { type VocabularyRow, vocabulary } from './vocabulary.ts';

const nameShape = /^[\p{L}\p{N}](?:[\p{L}\p{N}._/-]{0,38}[\p{L}\p{N}])?$/u;
const hasLetter = /\p{L}/u;
/** A number run into something that is no unit: `24Cx`, `1201gg`. Read as a name it would hide a slip. */
const slippedQuantity = /^\d+[.,]?\d*[\p{L}]{1,2}$/u;

/** The same with more letters, `60uwn`: no part begins with its figure. */
const slippedUnit = /^\d+[.,]?\d*[\p{L}]{1,4}$/u;

/** What the shop has is its name, whatever a new one may be called. */
export function partNamed(
  word: string,
  { hearing, parts }: Pick<LineContext, 'hearing' | 'parts'>,
): PartName | undefined {
  return parts.includes(word) || mayNamePart(word, hearing) ? word : undefined;
}

/** `Part B` is of the product, whatever else it says. */
const component = /^[ab]$/;

/** No place to cure in, no metal, no solvent, no part of the product, no figure whose unit slipped, no range of several. */
export function mayNamePart(word: string, { every }: Hearing): boolean {
  const isThing = word === 'oven' || word === 'room' || isMetalWord(word) || every.cries.liquids.has(word);
  return !isThing && !component.test(word) && !slippedUnit.test(word) && !word.includes('..') && isName(word, every);
}

export function placeNamed(word: string, { every }: Hearing): PlaceName | undefined {
  return isName(word, every) && !meansOnActOf('place', word, every) ? word : undefined;
}

/** `in wb` on the air's line is the wet bulb: what an act reads as another word there names no place of its. */
function meansOnActOf(slot: Slot, word: string, { rows }: Hearing): boolean {
  return Object.values<VocabularyRow>(vocabulary).some(
    ({ name, needs, may }) =>
      (needs.includes(slot) || may.includes(slot)) && rows.get(name)?.means.has(withoutAccents(word)) === true,
  );
}

/** A letter-and-number name such as `valve-3`, which is no plain word. */
export function looksLikePart(word: string): boolean {
  return /^\p{L}+[-_./]?\d+$/u.test(word);
}

function isName(word: string, every: Hearing): boolean {
  return (
    nameShape.test(word) &&
    hasLetter.test(word) &&
    word === word.toLowerCase() &&
    !slippedQuantity.test(word) &&
    // `batch12` and `max120` come apart before they could be names.
    !every.gluedNumber.test(word) &&
    (!/^[\do]/.test(word) || isOneWord(word, every)) &&
    !fillers.has(word) &&
    !batchMarks.has(word) &&
    !notNames.has(word) &&
    !isInterjection(word, every) &&
    !every.numberWords.has(word) &&
    !methodsByWord.has(word) &&
    !meansAnother(word, every) &&
    verbNamed(word, every) === undefined
  );
}

/** `dry, yeah`: what agrees, greets or puts right names nothing. */
function isInterjection(word: string, { otherwise, said }: Hearing): boolean {
  const plain = withoutAccents(word);
  const { agrees, opens, wrongs } = otherwise.byFirst;
  return (
    [otherwise.rounds, said.greetings].some((words) => words.has(plain)) ||
    [agrees, opens, wrongs].some((phrases) => phrases.get(plain)?.includes(plain) === true)
  );
}

/** `0/0f` would be read as a number and a temperature, `o.5` as a half, `9am` as a time, `2026-03-02` as a day. */
function isOneWord(word: string, every: Hearing): boolean {
  if (typeof readTimeOfDay(word) === 'object' || /^\d{4}-\d{1,2}-\d{1,2}/.test(word)) return false;
  const [only, second] = tokenize(word, every);
  return only?.kind === 'word' && only.word === word && second === undefined;
}
