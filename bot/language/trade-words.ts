// Words that are not verbs but mean something: methods, metals, places, and those that only round a sentence off.

import { type Method, methods } from '../../core/methods.ts';

export const methodsByWord: ReadonlyMap<string, Method> = new Map(methods.map((method) => [method, method]));

/** Dropped wherever nothing takes them. */
export const fillers: ReadonlySet<string> = new Set(
  'please pls thanks thx the with of for and & + / is was by on in at into to now just from parts #'.split(' '),
);

/** The number after it is a batch. */
export const batchMarks: ReadonlySet<string> = new Set(['batch', 'pot', 'no', '#']);

/** Where a part's name stands these never are one. */
export const notNames: ReadonlySet<string> = new Set(
  'a new not no all both it them this that again everything same already permit ago before-now yesterday today at am pm noon midnight final'.split(
    ' ',
  ),
);

/** As a part carries it: some spellings meet in one. */
const metalBySpelling: ReadonlyMap<string, string> = new Map([
  ['aluminum', 'aluminium'],
  ['alu', 'aluminium'],
  ['stainless-steel', 'stainless'],
  ['inox', 'stainless'],
  // Spanish puts the metal before its kind: acero inoxidable.
  ['steel-stainless', 'stainless'],
  ['steel-inox', 'stainless'],
  ['cast-iron-grey', 'grey-iron'],
  ['cast-iron-ductile', 'ductile-iron'],
  ['steel-carbon', 'carbon-steel'],
  ['steel-mild', 'mild-steel'],
  ['steel-galvanised', 'galvanised-steel'],
]);
const metalWords: ReadonlySet<string> = new Set(
  'steel stainless iron aluminium aluminum alu inox brass bronze copper zinc titanium nickel magnesium'.split(' '),
);
const metalKinds: ReadonlySet<string> = new Set(
  'cast ductile grey gray mild carbon galvanised galvanized stainless duplex tool forged wrought'.split(' '),
);

/** True for a word that begins or goes on with a metal's name: `cast`, `iron`, `cast-iron`. */
export function isMetalWord(word: string): boolean {
  return word.split('-').every((piece) => metalWords.has(piece) || metalKinds.has(piece));
}

/** `cast iron` and `cast-iron` are one; undefined where a kind stands without its metal (`mild`). */
export function metalNamed(words: readonly string[]): string | undefined {
  const name = words.join('-');
  return name.split('-').some((piece) => metalWords.has(piece)) ? (metalBySpelling.get(name) ?? name) : undefined;
}

const placeRoots = new Set(
  'room shop workshop booth oven bay tent store storeroom yard outside outdoors hall tank dock cabinet floor area'.split(
    ' ',
  ),
);

/** `booth`, `booth-2`, `spray-booth`. */
export function isPlaceRoot(word: string): boolean {
  return word.split(/[-_]/).some((piece) => placeRoots.has(piece.replace(/\d+$/, '')));
}

/** `tank-1`, `cabinet`: people stand in them, and they are coated. */
export function isCoatedThing(word: string): boolean {
  return /(?:^|[-_])(?:tank|cabinet)\d*(?:$|[-_])/.test(word);
}

/** A place that needs no introduction: also `line-3`. */
export function isPlaceWord(word: string): boolean {
  return isPlaceRoot(word) || /^[a-z]+[-_]?\d+$/.test(word);
}
