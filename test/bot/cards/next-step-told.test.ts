// An answer leaves nobody without the next step: a tap for what is to be done first, and no word of a step that is over.
// Figures of the demo sheet, which is invented.

import { expect, it } from 'vitest';
import type { Answer } from '../../../bot/talk/answer.ts';
import { sessionTalk } from './session-talk.ts';

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of lines) await say(line);
  return say;
}

const ids = ({ card }: Answer) => card.actions.map(({ id }) => id);

const filteredTooEarly = ['air 24C 48%', 'mix 1kg', 'weigh 500g 500g', 'wait 99m', 'filter 1 already'];

it('given a pot filtered before it was stirred enough, then its stirrer is a tap, there and where a coat objects', async () => {
  const say = await talkAfter(...filteredTooEarly);
  const refused = await say('coat new rail-1 1 brush');
  expect([refused.code, ids(refused)]).toEqual(['blend-not-done', expect.arrayContaining(['stir', 'happened'])]);
  const stirring = await say('tap stir');
  expect(stirring.card.title).toBe('Batch 1: stirrer on');
  expect(ids(stirring)).toContain('stop');
});

it('given it is stirred to the end then, then nobody is told to filter once more', async () => {
  const say = await talkAfter(...filteredTooEarly, 'stir 1', 'wait 10m');
  const { card } = await say('stop 1');
  expect(card.lines).toContain('The stir time is given. Next: coat.');
  expect(card.actions.map(({ id }) => id)).not.toContain('filter');
});

it('given a coat from a pot that is stirred and not filtered, then filtering is a tap', async () => {
  const say = await talkAfter('air 24C 48%', 'mix 1kg', 'weigh 500g 500g', 'wait 110m', 'stop 1');
  const refused = await say('coat new rail-1 1 brush');
  expect([refused.code, ids(refused)]).toEqual(['not-filtered', expect.arrayContaining(['filter'])]);
});

it('given a film read on a bare part, then it says so, and nothing of a rule that the sheet lacks', async () => {
  const say = await talkAfter('part rail-1');
  const { card, recorded } = await say('film rail-1 12 13 14um');
  expect(recorded).toBe(true);
  expect(card.lines).toContain('No coat is recorded on it: say the coat first. Nothing is accepted by these figures.');
});

it('given two loads in ovens and a door said of no part, then each load is a tap, and both', async () => {
  const say = await talkAfter(
    ...['air 24C 48%', 'mix 1kg', 'weigh 500g 500g', 'wait 110m', 'filter 1', 'coat new rail-1, rail-2 1 brush'],
    ...['wait 11m', 'dry rail-1 rail-2', 'cure rail-1 oven 90C', 'wait 20m', 'cure rail-2 oven 90C'],
  );
  const asked = await say('door 3m');
  expect(asked.code).toBe('which-load');
  expect(asked.card.actions.map(({ line }) => line)).toEqual([
    'door rail-1 3min',
    'door rail-2 3min',
    'door rail-1 rail-2 3min',
  ]);
  expect((await say('tap load-3')).recorded).toBe(true);
});

it('given what was caught and not filtered again, then the day does not say that it was, nor what nobody has said is left', async () => {
  const say = await talkAfter(
    ...['air 24C 48%', 'mix 1kg', 'weigh 500g 500g', 'wait 110m', 'filter 1', 'coat new rail-1 1 flow', 'catch 1 100g'],
  );
  expect((await say('day')).card.lines).toContain(
    'Batch 1: 1000 g mixed, 100 g caught, 100 g of it not filtered again',
  );
  await say('filter 1');
  expect((await say('day')).card.lines).toContain('Batch 1: 1000 g mixed, 100 g caught and filtered again');
});
