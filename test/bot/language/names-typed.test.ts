// What a place may be called: a name that reads back on every line that may name it.

import { describe, expect, it } from 'vitest';
import { mayNamePart, placeNamed } from '../../../bot/language/names-typed.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { shopAtTen } from './shop-at-ten.ts';

describe('what a place may be called', () => {
  it('given two letters that are the wet bulb on the air line, then they name no place', () => {
    expect(placeNamed('wb', shipped.every)).toBeUndefined();
    expect(placeNamed('wb-2', shipped.every)).toBe('wb-2');
  });

  it('given air in a place spelt otherwise, then it is that place', () => {
    expect(readLine('air 48% in wb-2', shopAtTen)).toMatchObject({ kind: 'command', command: { place: 'wb-2' } });
  });
});

describe('what a part may be called', () => {
  it.each(['yeah', 'yep', 'lol', 'sorry', 'oops', 'vale', 'órale', 'perdón'])(
    'given %s, which only agrees, greets or puts right, then it names none in any tongue',
    (word) => {
      expect(mayNamePart(word, shipped.hearingIn('en'))).toBe(false);
    },
  );

  it.each(['yoke', 'okra-1', 'gate'])('given %s, then it may name one', (word) => {
    expect(mayNamePart(word, shipped.hearingIn('en'))).toBe(true);
  });
});
