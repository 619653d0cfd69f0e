// A failing reading on cards: told as a deviation, with the hold and why, to the lead; and what a release objection offers.

import { expect, it } from 'vitest';
import { sessionTalk, taps } from './session-talk.ts';

const cured = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1', 'coat new a1 1 brush', 'wait 12m'],
  ...['dry a1', 'cure a1 oven 90C', 'temp a1 90C', 'wait 60m', 'temp a1 90C', 'out a1'],
];

async function said(...lines: readonly string[]) {
  const talk = sessionTalk();
  for (const line of lines) await talk.say(line);
  return talk;
}

const onHold = 'On hold: dry film 4 µm, 5 µm, 5 µm outside its rule';
const seenTo = 'rosa sees to it';

it('given a failing film, then card, later films, trace and now say the hold and why, and the lead is told', async () => {
  const { say } = await said(...cured);
  const failed = await say('@kari: film a1 4 5 5um');
  expect(failed.card.lines[0]).toContain('Recorded, marked as a deviation: Outside the rule');
  expect(failed.card.lines).toContain(onHold);
  expect(failed.card).toMatchObject({ tone: 'warn', ping: ['omar'] });
  const passing = await say('@kari: film a1 9.5 10 10um');
  expect(passing.card.lines).toEqual([
    ...[onHold, seenTo, expect.stringContaining('Within the rule')],
    'What failed before still stands. Where this reading counts in its place, say so with retest and why.',
  ]);
  expect((await say('trace a1')).card.lines).toContain(onHold);
  expect((await say('now')).card.lines).toContain(`a1: out of cure. ${onHold}. ${seenTo}`);
});

it('given the reading is taken back, then the card says that the hold stays', async () => {
  const { say } = await said(...cured, '@kari: film a1 4 5 5um');
  const undone = await say('@kari: undo');
  expect(undone.card).toMatchObject({ title: 'Undone', tone: 'warn' });
  expect(undone.card.lines.slice(-2)).toEqual([onHold, seenTo]);
});

it('given the hold, then the tap of the card lifts it with a reason, and the worst set stands on the release', async () => {
  const { say } = await said(...cured, 'film a1 4 5 5um');
  const passing = await say('film a1 9.5 10 10um');
  expect(taps(passing)).toMatchObject({ lift: 'release a1 permit hold {why}' });
  expect(taps(passing)).not.toHaveProperty('release');
  const released = await say('tap lift customer agreed');
  expect(released.card.lines.join(' ')).toContain('Outside the rule');
  expect(released.card.lines.join(' ')).not.toContain('Within the rule');
});

it('given crew tells of a release over a hold, then it says that this is a decision, and offers no "it already happened"', async () => {
  const { say } = await said(...cured, 'hold a1 customer looks first');
  const told = await say('@kari: release a1 already');
  expect([told.kind, told.code, told.recorded]).toEqual(['objection', 'on-hold', false]);
  expect(told.text).toContain('That is a decision');
  expect(taps(told)).toEqual({ 'left-unreleased': 'shipped a1', lift: 'release a1 permit hold {why}' });
  const left = await say('@kari: tap left-unreleased');
  expect(left.card.lines).toContain('On hold: customer looks first, left the shop, not released');
  expect(left.card.ping).toContain('omar');
  // Nothing is done to what is gone; what becomes of it is still to be decided.
  expect(Object.keys(taps(left))).toEqual(['rework', 'scrap', 'return']);
});

it('given a part that was not given its cure, then its card offers no release, nor an oven hotter than it bears', async () => {
  const { say } = await said(...cured.slice(0, 7), 'part a1 max 80C');
  expect(taps(await say('dry a1'))).not.toHaveProperty('cure-oven');
  await say('cure a1 room');
  expect(taps(await say('out a1 already'))).not.toHaveProperty('release');
});

it('given a film that is amended to a failing one, then the card says the hold', async () => {
  const { say } = await said(...cured, 'film a1 12 13 12um');
  const amended = await say('amend a1 film 5 6 12um misread');
  expect(amended.card.lines).toContain('On hold: dry film 5 µm, 6 µm, 12 µm outside its rule');
  expect(amended.card.ping).toEqual(['omar']);
});
