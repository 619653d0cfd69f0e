// How much a thumb has to do: one whole pot and its part, from the opening to the release, counted in taps and in characters
// typed. What was asked once is remembered: cans in use, product, method, and what the maker's paper asks of shop and people.

import { expect, test } from 'vitest';
import { chat, repliesIn } from './chat.ts';

/** The pot before it, invented: the same product and method; its part is still curing in the room. */
const before = [
  'air 24C 48%',
  'open A lot 7731 5kg gas',
  'open B lot 9902 5kg gas',
  'prestir 1',
  'wait 2m',
  ...['equipment', 'bonding', 'papers', 'vessel', 'clean-oven', 'clean-room'].map((step) => `confirm ${step} yes`),
  'mix 1kg',
  'weigh 500g 500g',
  'blanket 1',
  'wait 117m',
  'filter 3',
  'coat new plate-1 3 flow',
  'empty 3',
  'wait 11m',
  'dry plate-1',
  'cure plate-1 room',
  'air 24C 48%',
];

/** Typed lines are sent with a tap; a form is opened and sent. `wait` is nobody's. */
const counted = [
  'prestir 1 gas',
  'wait 2m',
  'mix 2.4kg',
  'weigh 1201g 1198g',
  'tap blanket-1',
  'wait 105m',
  'tap filter',
  'part impeller-8',
  'tap coat-impeller-8',
  'wait 10m',
  'tap dry',
  'tap cure-oven',
  'tap temp 91',
  'wait 61m',
  'tap temp 91',
  'tap out',
  'tap release',
];

function countTaps(lines: readonly string[]): { readonly taps: number; readonly characters: number } {
  const told = lines.filter((line) => !line.startsWith('wait '));
  const each = told.map((line) => {
    if (!line.startsWith('tap ')) return { taps: 1, characters: line.length };
    const [, , ...typed] = line.split(' ');
    return { taps: typed.length === 0 ? 1 : 2, characters: typed.join('').length };
  });
  return {
    taps: each.reduce((sum, { taps }) => sum + taps, 0),
    characters: each.reduce((sum, { characters }) => sum + characters, 0),
  };
}

test('given a pot like the one before, then it takes fifteen taps and fewer than sixty characters to its part’s release', async () => {
  const ran = await chat([...before, ...counted]);
  const replies = repliesIn(ran).slice(before.length);
  expect(replies.filter(({ kind }) => kind !== 'reply')).toEqual([]);
  expect(replies.at(-1)?.card.title).toBe('impeller-8: released');
  expect(countTaps(counted)).toEqual({ taps: 15, characters: 58 });
});
