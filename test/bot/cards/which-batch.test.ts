// Which pot is meant, where nobody names one: only those are offered that the act can be done to, and no waste for its use.

import { expect, it } from 'vitest';
import { talkAfter, taps } from './session-talk.ts';

const pot = (n: number) => [`mix 2.4kg`, `weigh ${n} 1200g 1200g`];
const three = ['air 24C 48%', ...pot(1), ...pot(2), ...pot(3)];

it('given three pots of which one has gelled, then it is not offered for a coat or a filter, and is to be emptied', async () => {
  const { say } = await talkAfter(...three, 'wait 102m', 'gel 2', 'part a1');
  expect(Object.keys(taps(await say('coat a1 brush')))).toEqual(['batch-1', 'batch-3']);
  expect(Object.keys(taps(await say('filter')))).toEqual(['batch-1', 'batch-3']);
  expect(Object.keys(taps(await say('empty')))).toEqual(['batch-1', 'batch-2', 'batch-3']);
});

it('given a pot past its life beside two fresh ones, then only those are offered', async () => {
  const late = ['air 24C 48%', ...pot(1), 'wait 23h', 'air 24C 48%', ...pot(2), ...pot(3), 'part a1'];
  const { say } = await talkAfter(...late);
  expect(Object.keys(taps(await say('coat a1 brush')))).toEqual(['batch-2', 'batch-3']);
});

it('given pots that are weighed and two that are not, then a weighing is offered those two', async () => {
  const { say } = await talkAfter('air 24C 48%', ...pot(1), 'mix 2kg', 'mix 2kg');
  expect(Object.keys(taps(await say('weigh 1000g 1000g')))).toEqual(['batch-2', 'batch-3']);
});

it.each([
  ['en', 'That can be done to no live batch'],
  ['es', 'Eso no se puede hacer con ninguna mezcla abierta'],
])('given all have gelled, then none is offered, and it is not said that none is live (%s)', async (language, told) => {
  const { say } = await talkAfter(
    ...three,
    'wait 102m',
    'gel 1',
    'gel 2',
    'gel 3',
    'part a1',
    `set language ${language}`,
  );
  const answer = await say('coat a1 brush');
  expect(answer.text).toContain(told);
  expect(Object.keys(taps(answer)).filter((id) => id.startsWith('batch-'))).toEqual([]);
});
