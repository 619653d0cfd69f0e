// A word that is typed has one meaning in each place of a line: where it begins the line, anywhere after it, after one verb, and
// behind a number. `vertido acetona` was once recorded as a coat.

import { describe, expect, it } from 'vitest';
import { meaningsOf } from '../../../bot/language/hearing.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { spanishTyped } from '../../../bot/language/tongues/spanish/typed.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Typed } from '../../../bot/language/tongues/typed.ts';
import { withoutAccents } from '../../../bot/language/typed/without-accents.ts';
import { methodWordsOf } from '../../../bot/language/verbs-of-tongues.ts';
import { solvents } from '../../../core/calc/solvents.ts';
import { epochMs } from '../../../core/units.ts';
import { shopAtTen, tallerALasDiez } from './shop-at-ten.ts';
import { vocabularyNames } from './vocabulary-names.ts';

const tongues = shipped.every.tongues.map((tongue) => ({ first: tongue.verbs.mix.example, tongue }));

function meantTwice(pairs: readonly (readonly [string, string])[]) {
  const meanings = new Map<string, Set<string>>();
  for (const [word, meaning] of pairs) meanings.set(word, (meanings.get(word) ?? new Set()).add(meaning));
  return [...meanings].filter(([, meant]) => meant.size > 1).map(([word, meant]) => `${word}: ${[...meant]}`);
}

/** What begins a line, with what it says. */
function beginningsOf(tongue: Typed): readonly (readonly [string, string])[] {
  const verbs = vocabularyNames.flatMap((name) => tongue.verbs[name].words.map((word) => [word, name] as const));
  const openings = tongue.openings.flatMap(({ words, verb, printed: _, ...said }) =>
    words.split(', ').map((word) => [word, `${verb} ${JSON.stringify(said)}`] as const),
  );
  return [...verbs, ...openings, ...methodWordsOf(tongue)].map(([word, meaning]) => [withoutAccents(word), meaning]);
}

describe.each(tongues)('the tongue that says "$first"', ({ tongue }) => {
  it('given a word after the verb, then it means one thing', () => {
    expect(meantTwice(meaningsOf(tongue))).toEqual([]);
  });

  it('given a word or two that begin a line, then they say one thing', () => {
    expect(meantTwice(beginningsOf(tongue))).toEqual([]);
  });

  it.each(vocabularyNames)(
    'given a word on the line of %s only, then it means one thing and is not passed over',
    (name) => {
      const { means, ignores } = tongue.verbs[name];
      const pairs = Object.entries(means).flatMap(([meaning, words]) =>
        words.split(' ').map((word) => [word, meaning] as const),
      );
      expect(meantTwice(pairs)).toEqual([]);
      expect(pairs.filter(([word]) => ignores.includes(word))).toEqual([]);
    },
  );

  it('given a word behind a number, then it is one unit', () => {
    const spelt = Object.entries(tongue.units).flatMap(([unit, words]) =>
      words.split(' ').map((word) => [word, unit] as const),
    );
    expect(meantTwice(spelt.filter(([word]) => word !== ''))).toEqual([]);
  });
});

it('given vertido for a coat that is poured and for a spill, then it is found', () => {
  const flow = { ...spanishTyped.methods.flow, typed: `${spanishTyped.methods.flow.typed} vertido` };
  const both: Typed = { ...spanishTyped, methods: { ...spanishTyped.methods, flow } };
  expect(meantTwice(beginningsOf(both))).toEqual(['vertido: spill {},flow']);
});

describe('a solvent', () => {
  it.each([...Object.keys(solvents), 'acetona', 'tolueno'])('given %s poured out, then no coat is read', (solvent) => {
    for (const line of [`vertido ${solvent}`, `flujo ${solvent} 1`, `aplicar ${solvent} 1 flujo`]) {
      expect(readLine(line, tallerALasDiez)).not.toMatchObject({ kind: 'command', command: { verb: 'coat' } });
    }
    expect(readLine(`vertido ${solvent}`, tallerALasDiez)).toMatchObject({ command: { verb: 'spill' } });
  });
});

describe('a figure that may mean two things', () => {
  it.each([
    ['metric', ['weigh 1 2.4 2.4g', 'weigh 1 2.4 2.4kg']],
    ['us', ['weigh 1 2.4 2.4g', 'weigh 1 2.4 2.4lb', 'weigh 1 2.4 2.4kg']],
  ] as const)('given a weight without a unit from somebody in %s units, then %j are offered', (units, suggestions) => {
    expect(readLine('weigh 1 2.4 2.4', { ...shopAtTen, units })).toMatchObject({ misread: { suggestions } });
  });

  it('given a solvent by the ounce, then a fluid ounce is offered and nothing is recorded', () => {
    const read = readLine('lavar pistola acetona 10oz', tallerALasDiez);
    expect(read).toMatchObject({
      misread: { code: 'unit-missing', token: '10oz', suggestions: ['lavar pistola acetona 10 fl oz'] },
    });
  });

  it('given "a la 1" behind a weight, then the hours that have been are offered, and no degrees', () => {
    const afternoon = { ...tallerALasDiez, now: epochMs(tallerALasDiez.now + 5 * 3_600_000) };
    expect(readLine('mezclar 2kg a la 1', afternoon)).toMatchObject({
      misread: { code: 'ambiguous-time', suggestions: ['mezclar 2kg a la 1:00', 'mezclar 2kg a las 13:00'] },
    });
  });
});
