// What a tongue types stands in its folder and nowhere else: no other file of the program holds a word of theirs in its
// strings and patterns, but where English has the same word; and none holds English that somebody says or reads.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import * as lineWords from '../../../bot/language/tongues/english/line-words.ts';
import { englishTyped } from '../../../bot/language/tongues/english/typed.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Typed } from '../../../bot/language/tongues/typed.ts';
import { withoutAccents } from '../../../bot/language/typed/without-accents.ts';

const root = join(import.meta.dirname, '../../..');
/** What they read are notes and names in the record, written in either tongue before. */
const ofTheRecord = [
  ...['core/crew/alarm-decide.ts', 'core/records/solvent-names.ts', 'core/session/confined-places.ts'],
];
/** The same letters for something else: a locale's code, a company, an abbreviation. */
const alike = new Set(['en', 'es', 'num', 'si', 'por', 'final', 'status', 'normal', 'airless', 'su']);

const wordsOf = (text: string): readonly string[] => withoutAccents(text.toLowerCase()).match(/[a-z]+/g) ?? [];

function filesIn(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((path) => `${folder}/${path}`)
    .filter((path) => path.endsWith('.ts'));
}

const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');

/** Strings, templates and patterns, without the comments. */
function literalsIn(source: string): readonly string[] {
  const code = source
    .replace(/\/\*[\s\S]*?\*\/|(?<![:'"`])\/\/[^\n]*/g, ' ')
    .replace(/^(?:import|export) [^;]*? from '[^']*';/gm, ' ');
  return code.match(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`|\/(?:[^/\\\n]|\\.)+\/[a-z]*/g) ?? [];
}

const typedIn = ({ verbs, openings, meanings, terms, methods, units, times, cries: cried }: Typed) =>
  [
    ...Object.values(verbs).flatMap(({ words, ignores, means }) => [...words, ...ignores, ...Object.values(means)]),
    ...openings.map(({ words }) => words),
    ...Object.values(meanings),
    ...Object.values(terms).map((term) => term.typed),
    ...Object.values(methods).map((method) => method.typed),
    ...Object.values(units),
    ...Object.keys({ ...times.minutes, ...times.partsOfDay }),
    ...Object.values(cried),
  ].flatMap(wordsOf);

const others = shipped.every.tongues.slice(1).map((tongue) => ({ first: tongue.verbs.mix.example, tongue }));

it.each(others)(
  'given every file outside the folders, then no string of it is of the tongue that says "$first"',
  ({ tongue }) => {
    const english = new Set(filesIn('bot/language/tongues/english').flatMap((path) => wordsOf(textOf(path))));
    const typed = typedIn(tongue);
    const own = new Set(typed.filter((word) => word.length > 1 && !english.has(word) && !alike.has(word)));
    const found = ['bot', 'core'].flatMap(filesIn).flatMap((path) => {
      if (/tongues\/[a-z]+\//.test(path) || ofTheRecord.includes(path)) return [];
      const words = literalsIn(textOf(path)).flatMap(wordsOf);
      return [...new Set(words)].filter((word) => own.has(word)).map((word) => `${path}: ${word}`);
    });
    expect(found).toEqual([]);
  },
);

/** Where English is meant for nobody who talks with the bot, and why. */
const forNobodyHere: readonly (readonly [path: RegExp, why: string])[] = [
  [/^bot\/(?:config|run)\//, 'for whoever starts it, in a shell and a log'],
  [/^bot\/slack\/(?:start-slack|slack-(?:crew|settings|client|log))\.ts$/, 'faults of what it is started with'],
  [/^bot\/demo\//, 'the invented crew and its name'],
  [/^bot\/web\/html\/tap-html\.ts$/, 'a template in a template, which holds code'],
  [/^bot\/main\.ts$/, 'for whoever starts it'],
  [/^bot\/web\/guards\.ts$/, 'for a machine that asks under a wrong name: nobody is known yet'],
];
/** Kinds, codes, symbols of units and fields of the program, each by a word that English types as well; and what the terminal takes. */
const alsoKinds = new Set(
  'measure number temperature percent question happened permitted figures hours gone line sprayers note list short long degc sqft about moved alarm alcohol correction wait minute take over filtered curing speed reading nothing light leave first answer said mark lines spots'.split(
    ' ',
  ),
);

it('given every file of the bot outside the tongues, then no string of it holds what English says', () => {
  // The readers' own spelling of a thing is its key in every tongue.
  const { verbs, meanings, terms, slots, methods, settings, units, cries: cried } = englishTyped;
  const tables = [verbs, meanings, terms, slots, methods, settings, units, cried];
  const keys = new Set(tables.flatMap((table) => Object.keys(table).map((key) => key.toLowerCase())));
  const typed = [...typedIn(englishTyped), ...Object.values(lineWords).flatMap((set) => [...set.keys()])];
  const english = new Set(typed.filter((word) => word.length > 3 && !keys.has(word) && !alsoKinds.has(word)));
  const isSaid = (literal: string, path: string): boolean =>
    / /.test(literal.trim()) || path.startsWith('bot/language/') || path.startsWith('bot/terminal/');
  const found = filesIn('bot').flatMap((path) => {
    if (/language\/tongues\//.test(path) || forNobodyHere.some(([where]) => where.test(path))) return [];
    const literals = literalsIn(textOf(path).replace(/throw new Error\([^;]*;|log\.\w+\([^;]*;/g, ' '));
    const words = literals
      .map((literal) => literal.slice(1, -1).replace(/\$\{[^}]*\}*|<[^>]*>?|^[\s\S]*\.\w+\(|\{\w+\}/g, ' '))
      .filter((literal) => isSaid(literal, path))
      .flatMap((literal) => literal.toLowerCase().match(/[a-z]+(?:-[a-z]+)*/g) ?? []);
    return [...new Set(words)].filter((word) => english.has(word)).map((word) => `${path}: ${word}`);
  });
  expect(found).toEqual([]);
});
