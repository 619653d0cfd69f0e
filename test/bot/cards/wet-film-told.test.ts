// A wet film's card says what it will be dry. By hand, from the demo sheets, which are invented: Demo Clear keeps 30 % and
// asks for 8 to 15 um, Demo Build keeps 65 % and asks for 75 to 150 um.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const coated = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1', 'coat new a1 1 brush'];
const built = ['air 20C 50%', 'mix 2kg demo-build', 'weigh 1 1674g 326g', 'coat new b1 1 brush already'];

describe('what wet film means', () => {
  it.each([
    ['wet a1 30 35 40um', 'Dry it will be 10.5 µm (9 µm to 12 µm), by 30 % solids, not thinned. Within the'],
    ['wet a1 40um', 'Dry it will be 12 µm, by 30 % solids, not thinned. Within the'],
    // 50 um is 15 um dry, and on a limit is within it.
    ['wet a1 50um', 'Dry it will be 15 µm, by 30 % solids, not thinned. Within the'],
    ['wet a1 20 30um', 'Dry it will be 7.5 µm (6 µm to 9 µm), by 30 % solids, not thinned. Thinner than the'],
    ['wet a1 40 60um', 'Dry it will be 15 µm (12 µm to 18 µm), by 30 % solids, not thinned. Thicker than the'],
    [
      'wet a1 20 60um',
      'Dry it will be 12 µm (6 µm to 18 µm), by 30 % solids, not thinned. Both thinner and thicker than the',
    ],
  ])('given %s, then %s', async (line, meaning) => {
    const { say } = await talkAfter(...coated);
    const { card } = await say(line);
    expect(card.lines[0]).toBe(`${meaning} sheet's film: 8 µm to 15 µm.`);
    expect(card.lines[1]).toBe('A wet film is a check while you work, not an acceptance.');
  });

  it('given another sheet and mils, then it is told by that one and in mils: 6 mil is 3.9 mil dry', async () => {
    const { say } = await talkAfter(...built, 'set units us');
    const { card } = await say('wet b1 6mil');
    expect(card.lines).toContainEqual(
      "Dry it will be 3.9 mils, by 65 % solids, not thinned. Within the sheet's film: 2.95 mils to 5.91 mils.",
    );
  });

  it('given a speaker of Spanish, then it is told in Spanish', async () => {
    const { say } = await talkAfter(...coated, 'set language es');
    const { card } = await say('wet a1 40 60um');
    expect(card.lines[0]).toMatch(
      /^En seco serán 15 µm \(de 12 µm a 18 µm\), con un 30 % de sólidos, sin diluir\. Más gruesa/,
    );
  });

  it('given a part without a coat, then nobody knows of which coating it is', async () => {
    const { say } = await talkAfter('part c1 steel 5mm');
    expect((await say('wet c1 40um')).card.lines).toEqual(['A wet film is a check while you work, not an acceptance.']);
  });
});
