// Amounts to be weighed as cards tell them: within the sheet's tolerance on the scale that takes them. By hand from the demo
// sheets, which are invented: Demo Clear 1 : 1 and 2 %, Demo Build 4 : 1 by volume, 5.4 : 1.05 by weight, and 5 %.

import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../bot/talk/answer.ts';
import { talkAfter, taps } from './session-talk.ts';

const shown = ({ card }: Answer) => Object.fromEntries(card.facts.map((fact) => [fact.id, fact.shown]));
const air = 'air 20C 50%';
const bench = 'set scale bench 0.1g to 2kg';
const floor = 'set scale floor 5g to 60kg';

describe('without a scale told of', () => {
  it.each([
    // 5 g in 6.45 parts: 4.186 g and 0.814 g.
    ['mix 5g demo-build', '4.19 g', '0.81 g', '0.01 g'],
    ['mix 20g demo-build', '16.7 g', '3.2 g', '0.1 g'],
    ['mix 1g demo-clear', '0.500 g', '0.500 g', '0.001 g'],
  ])('given %s, then A is %s and B %s, and it says what scale that wants', async (line, a, b, step) => {
    const { say } = await talkAfter(air);
    const opened = await say(line);
    expect(shown(opened)).toMatchObject({ 'part-a': a, 'part-b': b });
    expect(opened.text).toContain(`So little wants a scale that shows ${step} (of the usual steps: common practice)`);
  });

  it('given a mix for any scale, then it is in whole grams and nothing more is said', async () => {
    const { say } = await talkAfter(air);
    const opened = await say('mix 2kg demo-build');
    expect(shown(opened)).toMatchObject({ 'part-a': '1674 g', 'part-b': '326 g' });
    expect(opened.text).not.toContain('scale');
  });

  it('given so little that no usual scale holds, then it says so, and the least that one weighs', async () => {
    const { say } = await talkAfter(air);
    expect((await say('mix 0.1g demo-clear')).text).toMatch(
      /No usual scale weighs so little within the sheet's 2 %\. The least that one does: 0\.15\d g/,
    );
  });

  it('given 1500 g of A, then the ends of B are rounded inwards: 277.08 g is no 277 g', async () => {
    const { say } = await talkAfter(air, 'mix 1792g demo-build');
    // 1500 x 1.05 / 5.4 = 291.67, less 5 % 277.08, and more 306.25.
    const { card } = await say('weigh 1 a 1500g');
    expect(card.lines[0]).toContain('Part B, 292 g; from 278 g to 306 g will do');
    expect((await say('weigh 1 b 278g')).text).toContain("Within the sheet's 5 %");
  });

  it('given what a scale showed, then it is told as it was read', async () => {
    const { say } = await talkAfter(air, 'mix 5g demo-build');
    expect(shown(await say('weigh 1 4.19g 0.81g'))).toMatchObject({ 'part-a': '4.19 g', 'part-b': '0.81 g' });
    expect((await say('trace batch 1')).text).toContain('weighed A 4.19 g, B 0.81 g');
    expect((await say('day')).text).toContain('A 4.19 g, B 0.81 g, ratio −0.58 %');
  });
});

describe("with the shop's scales", () => {
  it('given two, then each part is for the finest that carries it, and the card says which', async () => {
    const { say } = await talkAfter(air, bench, floor);
    const opened = await say('mix 5kg demo-build');
    expect(shown(opened)).toMatchObject({ 'part-a': '4185 g', 'part-b': '813.8 g' });
    expect(opened.card.lines).toContain(
      "Part A on floor (5 g), Part B on bench (0.1 g). The vessel's own weight is not reckoned.",
    );
  });

  it('given too little for it, then it objects with the least that it weighs, and that is one tap', async () => {
    const { say } = await talkAfter(air, bench);
    const asked = await say('mix 5g demo-build');
    expect([asked.kind, asked.code]).toEqual(['objection', 'scale-too-coarse']);
    expect(asked.card.lines[0]).toBe(
      "The scale bench shows 0.1 g: too coarse for so little, within the sheet's 5 %. The smallest mix that it weighs: 13.6 g.",
    );
    expect(taps(asked)).toMatchObject({ smallest: 'mix 13.6g demo-build' });
    expect((await say('tap smallest')).recorded).toBe(true);
  });

  it('given more than any carries, then it says so', async () => {
    const { say } = await talkAfter(air, bench);
    expect((await say('mix 5kg demo-build')).card.lines).toContain(
      'No scale here carries that: weigh it in portions. The scale bench takes 2000 g.',
    );
  });

  it('given a scale that is gone again, then the usual steps stand', async () => {
    const { say } = await talkAfter(air, bench, 'set scale bench off');
    expect((await say('mix 5g demo-build')).recorded).toBe(true);
  });

  it('given a mix before the scale was told of, then nothing is held against it', async () => {
    const { say } = await talkAfter(air, 'mix 5g demo-build', 'wait 5m', bench);
    expect((await say('trace batch 1')).text).not.toContain('too coarse');
  });

  it('given a mix to be brought back, then what is added is to its step, and within', async () => {
    const { say } = await talkAfter(air, bench, 'mix 100g demo-clear');
    const off = await say('weigh 1 50g 45g');
    expect(off.text).toContain('add 5.0 g of Part B');
    expect(taps(off)).toMatchObject({ add: 'add 1 b 5g' });
    expect((await say('tap add')).text).toContain("Within the sheet's 2 %");
  });

  it('given a scale in ounces and who works in pounds, then it is told in its steps', async () => {
    const { say } = await talkAfter(air, 'set units us', 'set scale 0.1oz to 5lb');
    expect(shown(await say('mix 2lb demo-build'))).toMatchObject({
      'part-a': '1 lb 10.8 oz (760 g)',
      'part-b': '5.2 oz (148 g)',
    });
    expect((await say('mix 4oz demo-build')).text).toContain('The scale shows 0.1 oz: too coarse for so little');
  });

  it('given a speaker of Spanish, then it is told in Spanish', async () => {
    const { say } = await talkAfter(air, bench, 'set language es');
    expect((await say('mezclar 5g demo-build')).text).toContain(
      'La báscula bench marca 0,1 g: demasiado basta para tan poco, dentro del 5 % de la ficha. La mezcla más pequeña que pesa: 13,6 g.',
    );
  });
});
