// Which known part a name nobody knows may have been meant for. Parts are invented.

import { describe, expect, it } from 'vitest';
import { nearNames } from '../../../core/part/near-names.ts';

const known = [
  'impeller-7',
  'impeller-12',
  'a-01',
  'a-02',
  'plate-3',
  'plate-22',
  'plate-10',
  'plate-4',
  'rib',
  'a-1-2',
];

describe('a name nobody knows', () => {
  it.each([
    ['other zeros', 'impeller-07', ['impeller-7']],
    ['its zero left out', 'a-1', ['a-01']],
    ['zeros in each of its numbers', 'a-01-02', ['a-1-2', 'a-01', 'a-02']],
    ['neither dash nor zero', 'a1', ['a-01']],
    ['no dash', 'impeller7', ['impeller-7']],
    ['no dash between its numbers', 'a-12', ['a-1-2']],
    ['letters cut short and a zero more', 'imp-07', ['impeller-7']],
    ['no number: three at most, as a reader counts', 'plate', ['plate-3', 'plate-4', 'plate-10']],
    ['no number, and cut short', 'imp', ['impeller-7', 'impeller-12']],
    ['no number, and a slip', 'impeler', ['impeller-7', 'impeller-12']],
    ['one letter alone', 'a', ['a-01', 'a-1-2', 'a-02']],
    ['cut short where the part has no number either', 'ri', ['rib']],
    ['another number', 'impeller-8', []],
    ['another number that only begins alike', 'plate-2', []],
    ['nothing of theirs', 'valve', []],
  ])('with %s: %s', (_, name, near) => {
    expect(nearNames(name, known)).toEqual(near);
  });

  it('is nearest to the one that only lost its number, before those that lost letters too', () => {
    expect(nearNames('imp', ['impeller-1', 'imp-9'])).toEqual(['imp-9', 'impeller-1']);
  });
});

it('given two neighbours that changed places in a short word, then it is near', () => {
  expect(nearNames('ldi-1', ['lid-1', 'rib-1'])).toEqual(['lid-1']);
});
