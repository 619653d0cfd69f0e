// What is typed in other words is understood, or asked about: nothing is ever recorded otherwise, no tap does harm, and the shares
// never fall under what they were.

import { afterAll, describe, expect, it } from 'vitest';
import { corpus } from './corpus.ts';
import { sharesOf } from './shares.ts';
import { openShops } from './shop-copy.ts';
import { type Understanding, understandingOf } from './understanding.ts';

const shops = openShops();
afterAll(shops.close);

/** Raised as more is understood. A release in other words is a tap: it is a decision. */
const floors = { en: { atOnce: 0.84, orOneTap: 0.95 }, es: { atOnce: 0.7, orOneTap: 0.8 } };

describe.each(['en', 'es'] as const)('the lines of %s', (language) => {
  it('given each of them, then it is understood as a colleague would, or nothing is recorded', async () => {
    const understood: Understanding[] = [];
    for (const spoken of corpus[language]) understood.push(await understandingOf(shops, spoken));
    const wrong = understood.filter(({ became, harmful }) => became === 'recorded otherwise' || harmful.length > 0);
    expect(wrong.map(({ spoken: { line }, harmful, answer }) => ({ line, harmful, answer }))).toEqual([]);
    const shares = sharesOf(understood);
    expect(shares.atOnce).toBeGreaterThanOrEqual(floors[language].atOnce);
    expect(shares.orOneTap).toBeGreaterThanOrEqual(floors[language].orOneTap);
  });
});

describe('an act said in other words', () => {
  it('given one that is sure, then its card says what it was taken as, with one tap that takes it back', async () => {
    const { answers, left } = await shops.say('flashed', 'Ines', ['the 8 is dry']);
    const undo = answers[0]?.card.actions.find(({ id }) => id === 'undo')?.line ?? '';
    expect(answers[0]?.card.lines).toContain('Taken as: dry bracket-8');
    expect(left).toHaveLength(1);
    const undone = await shops.say('flashed', 'Ines', ['the 8 is dry', undo]);
    expect(undone.answers[1]?.card.title).toBe('Undone');
  });

  it('given several in one line, then all are recorded and told on one card, the same delivery once', async () => {
    const line = 'bracket-8 is dry and in the oven at 90';
    const { answers, left } = await shops.say('flashed', 'Ines', [line]);
    expect(left).toEqual((await shops.say('flashed', 'Ines', ['dry bracket-8', 'cure bracket-8 oven 90C'])).left);
    expect(answers[0]?.card.lines).toEqual(
      expect.arrayContaining(['Taken as: dry bracket-8', 'Taken as: cure bracket-8 oven 90C']),
    );
  });

  it('given several of which the first meets a rule, then nothing is recorded, and the others are a tap', async () => {
    const { answers, left } = await shops.say('bare', 'Ines', ['start a mix of 2kg, air 24C 46%']);
    expect(left).toEqual([]);
    expect(answers[0]?.card.actions.map(({ line }) => line)).toContain('air 24C 46%');
  });

  it('given one that may mean several, then each tap says what it will do', async () => {
    const { answers } = await shops.say('working', 'Ines', ['19C on flange-3']);
    expect(answers[0]?.recorded).toBe(false);
    expect(answers[0]?.card.actions.map(({ label }) => label)).toContain('Flange-3: surface 19 °C');
  });
});
