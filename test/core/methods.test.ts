// What the bot does otherwise for one way of applying than for another stands in that way's row.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { meaningOf } from '../../bot/language/hearing.ts';
import { englishMethods } from '../../bot/language/tongues/english/methods.ts';
import { spanishMethods } from '../../bot/language/tongues/spanish/methods.ts';
import { shipped } from '../../bot/language/tongues/tongues.ts';
import { methodsByWord } from '../../bot/language/trade-words.ts';
import { methodRows, methods } from '../../core/methods.ts';

const compared = new RegExp(
  `[=!]==\\s*'(${methods.join('|')})'|case '(${methods.join('|')})':|includes\\('(${methods.join('|')})'\\)`,
);
/** Where a word happens to be spelt like a method and means something else: a stretch of a timeline, work, a setting. */
const otherMeaning = /kind === 'spray'|work === 'spray'/;

function sources(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name));
}

describe('the ways of applying a coat', () => {
  it('are told apart by their rows alone, nowhere by name', () => {
    const told = [...sources('core'), ...sources('bot')].flatMap((file) =>
      readFileSync(file, 'utf8')
        .split('\n')
        .filter((line) => compared.test(line) && !otherMeaning.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
    expect(told).toEqual([]);
  });

  it('are each read from every word that means them, and no word means two', () => {
    const typed = methods.flatMap((method) => [
      ...englishMethods[method].typed.split(' ').map((word) => [word, method] as const),
      ...spanishMethods[method].typed.split(' ').map((word) => [word, method] as const),
    ]);
    expect(new Set(typed.map(([word]) => word)).size).toBe(typed.length);
    for (const [word, method] of typed) expect(methodsByWord.get(meaningOf(word, shipped.every)), word).toBe(method);
  });

  it('are as common practice has them: what is dipped is dipped once, what is poured drains, what is atomised is sprayed', () => {
    expect(methods.filter((method) => methodRows[method].once)).toEqual(['dip']);
    expect(methods.filter((method) => methodRows[method].drains)).toEqual(['flow']);
    expect(methods.filter((method) => methodRows[method].atomised)).toEqual(['spray']);
  });
});
