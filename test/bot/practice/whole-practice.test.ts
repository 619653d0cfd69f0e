// Practice from sealed cans to parts in cure by nothing but its cards: the first tap of each. Invented throughout.

import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../bot/talk/answer.ts';
import { isOffered, isPractice, practiceTalk } from './practice-talk.ts';

const barOfTaps = 30;

async function ledThrough(talk: Awaited<ReturnType<typeof practiceTalk>>, begins: string): Promise<readonly Answer[]> {
  const answers = [await talk.say(begins)];
  while (answers.length < 2 * barOfTaps) {
    const [first] = answers.at(-1)?.card.actions ?? [];
    if (first === undefined || (answers.length > 1 && first.id === 'practice-off')) break;
    answers.push(await talk.say(`@kari: tap ${first.id}`));
  }
  return answers;
}

describe('a whole practice', () => {
  it.each([
    [
      'practice on',
      'en',
      'in cure',
      /^\d+ lines, 1 h 5\d min of shop time: batches 1, parts in cure 1, objections 0\.$/,
    ],
    [
      'práctica',
      'es',
      'en curado',
      /^\d+ líneas, 1 h 5\d min de taller: mezclas 1, piezas en curado 1, objeciones 0\.$/,
    ],
  ] as const)(
    'given only the first tap of each card after `%s`, then a part is in cure',
    async (begins, language, cured, done) => {
      const talk = await practiceTalk(`@kari: set language ${language}`);
      const answers = await ledThrough(talk, `@kari: ${begins}`);

      expect(answers.every(isPractice)).toBe(true);
      expect(answers.map(({ kind }) => kind)).toEqual(answers.map(() => 'reply'));
      expect(answers.length).toBeLessThanOrEqual(barOfTaps);
      expect(answers.at(-1)?.card.title).toContain(cured);
      const over = await talk.card('@kari: practice off');
      expect(over.lines[0]).toMatch(done);
      expect(over.lines.filter((line) => line.startsWith('– '))).toHaveLength(4);
    },
  );

  it('given a wait, then its bells come at once, and the clock of practice stands on each card', async () => {
    const talk = await practiceTalk();
    const answers = await ledThrough(talk, '@kari: practice on');
    const clocks = answers.map(({ card }) => /^PRACTICE (\d\d:\d\d)/.exec(card.title)?.[1]);
    expect([...new Set(clocks)]).toEqual(['08:00', '08:02', '09:44', '09:54']);
    expect(answers.filter(({ card }) => card.title.includes('stirring done'))).toHaveLength(1);
  });

  it('given the end of the lesson, then it goes on until it is left', async () => {
    const talk = await practiceTalk();
    const last = (await ledThrough(talk, '@kari: practice on')).at(-1);
    expect(last?.card.leads).toBe(
      'That was the whole way, from sealed cans to parts in cure. Try more, or: practice off.',
    );
    expect(last !== undefined && isOffered(last, 'practice-off')).toBe(true);
    expect((await talk.card('@kari: temp impeller-7 91C')).title).toMatch(/^PRACTICE .*impeller-7/);
  });
});
