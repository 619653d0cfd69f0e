// What a tongue types stands in its folder and nowhere else: no other file of the program holds a word of the Spanish one in its
// strings and patterns, but where English has the same word.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { spanishTyped } from '../../../bot/language/tongues/spanish/typed.ts';
import { withoutAccents } from '../../../bot/language/typed/without-accents.ts';

const root = join(import.meta.dirname, '../../..');
/** What they read are notes and names in the record, written in either tongue before. */
const ofTheRecord = ['core/crew/alarm-decide.ts', 'core/records/solvent-names.ts'];
/** The same letters for something else: a locale's code, a company, an abbreviation. */
const alike = new Set(['en', 'num', 'si', 'por', 'final', 'status', 'normal', 'airless', 'su']);

const wordsOf = (text: string): readonly string[] => withoutAccents(text.toLowerCase()).match(/[a-z]+/g) ?? [];

function filesIn(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((path) => `${folder}/${path}`)
    .filter((path) => path.endsWith('.ts'));
}

/** Strings, templates and patterns, without the comments. */
function literalsIn(source: string): readonly string[] {
  const code = source
    .replace(/\/\*[\s\S]*?\*\/|(?<![:'"`])\/\/[^\n]*/g, ' ')
    .replace(/^(?:import|export) [^;]*? from '[^']*';/gm, ' ');
  return code.match(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`|\/(?:[^/\\\n]|\\.)+\/[a-z]*/g) ?? [];
}

it('given every file outside the Spanish folder, then no string of it holds a Spanish word', () => {
  const english = new Set(
    filesIn('bot/language/tongues/english').flatMap((path) => wordsOf(readFileSync(join(root, path), 'utf8'))),
  );
  const { verbs, openings, meanings, terms, methods, units, times, cries: cried } = spanishTyped;
  const typed = [
    ...Object.values(verbs).flatMap(({ words, ignores, means }) => [...words, ...ignores, ...Object.values(means)]),
    ...openings.map(({ words }) => words),
    ...Object.values(meanings),
    ...Object.values(terms).map((term) => term.typed),
    ...Object.values(methods).map((method) => method.typed),
    ...Object.values(units),
    ...Object.keys({ ...times.minutes, ...times.partsOfDay }),
    ...Object.values(cried),
  ].flatMap(wordsOf);
  const spanish = new Set(typed.filter((word) => word.length > 1 && !english.has(word) && !alike.has(word)));
  const found = ['bot', 'core'].flatMap(filesIn).flatMap((path) => {
    if (/tongues\/spanish\//.test(path) || ofTheRecord.includes(path)) return [];
    const words = literalsIn(readFileSync(join(root, path), 'utf8')).flatMap(wordsOf);
    return [...new Set(words)].filter((word) => spanish.has(word)).map((word) => `${path}: ${word}`);
  });
  expect(found).toEqual([]);
});
