// Air read with two thermometers: the humidity that comes of it, against psychrolib 1.1.1 (ASHRAE 2017 equations), how it was had,
// and what no air can be.

import { describe, expect, it } from 'vitest';
import { talkAfter, taps, value } from './session-talk.ts';

describe('a dry and a wet bulb', () => {
  // psychrolib 1.1.1, GetRelHumFromTWetBulb at 101,325 Pa.
  it.each([
    [20, 15, 58.92],
    [25, 18, 50.68],
    [30, 25, 66.95],
    [15, 12, 70.73],
    [10, 8, 76.71],
  ])('given %d and %d degC, then the humidity is %d %%', async (dry, wet, humidity) => {
    const { say } = await talkAfter();
    const answer = await say(`air ${dry}C wet ${wet}C`);
    expect(value(answer, 'humidity')).toBeCloseTo(humidity, 1);
    expect(value(answer, 'wet-bulb')).toBe(wet);
    expect(answer.card.lines).toContain(
      'Humidity from the wet bulb, at sea-level pressure (ASHRAE Fundamentals 2017, chapter 1).',
    );
  });

  it('given it was said on a sling, in degF by whoever reads degF, then it serves as any reading of the air', async () => {
    const { say } = await talkAfter('@kari: set units us');
    const answer = await say('@kari: sling 75 62');
    expect(value(answer, 'air-temperature')).toBeCloseTo(23.89, 2);
    expect(answer.text).toContain('62 °F');
    expect((await say('mix 2.4kg')).recorded).toBe(true);
  });

  it('given it was corrected in nothing, then the export and the undo name what was read', async () => {
    const { say } = await talkAfter('@kari: air 24C wet 17C');
    expect((await say('@kari: undo')).text).toContain('wet bulb 17 °C');
  });

  it('given a hygrometer was read too, then its humidity counts and nothing is said of a sum', async () => {
    const { say } = await talkAfter();
    const answer = await say('air 24C 48% wet 17C');
    expect([value(answer, 'humidity'), value(answer, 'wet-bulb')]).toEqual([48, 17]);
    expect(answer.text).not.toContain('Humidity from');
  });
});

describe('what no air can be', () => {
  it.each([
    ['the wet bulb above the dry', 'air 24C wet 26C'],
    ['lower than bone-dry air makes it', 'air 40C wet 5C'],
    ['below freezing', 'air 2C wet -1C'],
  ])('given %s, then it is asked about and nothing is recorded', async (_, line) => {
    const { say } = await talkAfter();
    const { code, recorded } = await say(line);
    expect([code, recorded]).toEqual(['wet-bulb-cannot-be', false]);
  });

  it('given the two were said the wrong way round, then one tap puts them right', async () => {
    const { say } = await talkAfter();
    expect(taps(await say('air 17C wet 24C'))).toEqual({ 'other-bulb': 'air 24C wet 17C' });
    expect(value(await say('tap other-bulb'), 'humidity')).toBeCloseTo(49.8, 0);
  });
});
