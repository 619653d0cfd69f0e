// Words that are not verbs but mean something: methods, metals and places.

import { type Method, methods } from '../../core/methods.ts';
import { coatedPlaces, metalKinds, metalSpellings, metals, places } from './tongues/english/line-words.ts';

export const methodsByWord: ReadonlyMap<string, Method> = new Map(methods.map((method) => [method, method]));

/** True for a word that begins or goes on with a metal's name: `cast`, `iron`, `cast-iron`. */
export function isMetalWord(word: string): boolean {
  return word.split('-').every((piece) => metals.has(piece) || metalKinds.has(piece));
}

/** `cast iron` and `cast-iron` are one; undefined where a kind stands without its metal (`mild`), which some need not say (`galvanised`). */
export function metalNamed(words: readonly string[]): string | undefined {
  const name = words.join('-');
  return metalSpellings.get(name) ?? (name.split('-').some((piece) => metals.has(piece)) ? name : undefined);
}

/** `booth`, `booth-2`, `spray-booth`. */
export const isPlaceRoot = (word: string): boolean => rootsOf(word).some((root) => places.has(root));

/** `tank-1`, `cabinet`: people stand in them, and they are coated. */
export const isCoatedThing = (word: string): boolean => rootsOf(word).some((root) => coatedPlaces.has(root));

const rootsOf = (word: string): readonly string[] => word.split(/[-_]/).map((piece) => piece.replace(/\d+$/, ''));

/** A place that needs no introduction: also `line-3`. */
export const isPlaceWord = (word: string): boolean => isPlaceRoot(word) || /^[a-z]+[-_]?\d+$/.test(word);
