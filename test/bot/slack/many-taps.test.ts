// More taps than a phone shows as buttons: a menu, a list, and what neither holds stays to be typed.

import { describe, expect, test } from 'vitest';
import { type Card, makeCard } from '../../../bot/cards/card.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { actionBlocks } from '../../../bot/slack/action-blocks.ts';
import { cardMessage } from '../../../bot/slack/card-blocks.ts';
import { limits } from '../../../bot/slack/limits.ts';
import { complaintsAbout } from './fake/assert-slack-message.ts';

const long = (length: number): string => 'x'.repeat(length);
const show = (card: Card) => cardMessage(card, { words: shipped.wordsIn('en'), showing: 'batch/1.1' });
const tap = (i: number, line = `stir ${i}`) => ({ id: `stir-${i}`, label: `Stir ${i}`, line });
const taps = (count: number) => Array.from({ length: count }, (_, i) => tap(i));
const sound = (card: Card) => expect(complaintsAbout(show(card))).toEqual([]);

describe('many taps', () => {
  test('ten taps are four buttons and a list, nine a menu of five at most, five all buttons', () => {
    const shapes = [4, 5, 6, 9, 10].map((count) => {
      const elements = actionBlocks(taps(count), 's').flatMap((block) => block.elements);
      return [elements.filter(({ type }) => type === 'button').length, elements.at(-1)?.type];
    });
    expect(shapes).toEqual([
      [4, 'button'],
      [5, 'button'],
      [4, 'overflow'],
      [4, 'overflow'],
      [4, 'static_select'],
    ]);
  });

  test('neither a menu nor a list takes a line of 76 characters: those taps stay buttons, four at most', () => {
    const line = long(limits.option.value + 1);
    const elements = (count: number, longer: number) =>
      actionBlocks([...taps(count), ...Array.from({ length: longer }, (_, i) => tap(50 + i, line))], 's').flatMap(
        (block) => block.elements.map(({ type }) => type),
      );
    expect(elements(5, 1)).toEqual(Array.from({ length: 6 }, () => 'button'));
    expect(elements(6, 5)).toEqual([...Array.from({ length: 8 }, () => 'button'), 'overflow']);
  });

  test('105 taps are four buttons and a list of 100; the text says how many are not named', () => {
    const card = makeCard('Batch 1', 'plain', { actions: taps(limits.selectOptions + 5) });
    sound(card);
    const [row] = actionBlocks(card.actions, 's');
    const list = row?.elements.at(-1);
    expect(list?.type === 'static_select' && list.options?.length).toBeLessThanOrEqual(limits.selectOptions);
    expect(show(card).text).toContain('[Stir 11] [+93]');
  });

  test('a list whose options would fill the message loses its last ones, and the words keep their room', () => {
    const actions = Array.from({ length: 100 }, (_, i) => tap(i, `hold ${i} ${long(65)}`));
    const lines = Array.from({ length: 100 }, (_, i) => `${i} ${long(70)}`);
    const card = makeCard('Batch 1', 'plain', { actions, lines });
    sound(card);
    const blocks = JSON.stringify(show(card).blocks);
    expect(blocks).toContain('static_select');
    expect(blocks).toContain('20 xxx');
  });
});
