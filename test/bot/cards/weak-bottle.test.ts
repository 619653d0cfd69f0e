// A flush for no pot with alcohol that was told to be weaker than the sheet asks: said at once, with what it may have cost,
// and marked in the day. 99 %: common practice, no source.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const mark = 'flush solvent as strong as the sheet asks';
const cost = 'What it left behind sets in the gear, which may be scrap. Flush it again.';

describe('a flush for no pot', () => {
  it('given the bottle was told to be 90 %, then the card says so with its cost, and the day marks it', async () => {
    const { say } = await talkAfter('air 24C 48%', 'ipa 90%', 'wait 5m');
    const { card, recorded } = await say('flush brush isopropyl-alcohol 100ml');
    expect({ recorded, tone: card.tone }).toEqual({ recorded: true, tone: 'warn' });
    expect(card.lines.join(' ')).toContain(mark);
    expect(card.lines).toContain(cost);
    const day = await say('day');
    expect(day.text).toContain('Deviations: 1');
    expect(day.text).toContain(mark);
  });

  it.each([
    ['nobody has told of the bottle', ['air 24C 48%'], 'flush brush isopropyl-alcohol 100ml'],
    ['it is strong enough', ['air 24C 48%', 'ipa 99%'], 'flush brush isopropyl-alcohol 100ml'],
    ['it was flushed with acetone', ['air 24C 48%', 'ipa 90%'], 'flush brush acetone 100ml'],
    ['another bottle was told of since', ['air 24C 48%', 'ipa 90%', 'wait 1m', 'ipa 99%'], 'flush brush'],
  ])('given %s, then nothing is marked', async (_, lines, flush) => {
    const { say } = await talkAfter(...lines, 'wait 5m');
    expect((await say(flush)).card.lines).not.toContain(cost);
    expect((await say('day')).text).toContain('Deviations: 0');
  });
});
