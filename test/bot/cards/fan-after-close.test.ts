// The fan that goes off after a session was closed: it is that session's, and no question which one is meant.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const closed = [
  ...['air 24C 48%', 'set booth room 4m2', 'mix 1kg', 'weigh 1 500g 500g', 'wait 103m', 'filter 1'],
  ...['brief 1 spray omar', 'fan on 0.6m/s', 'supplied yes', 'ack', 'spray on', 'coat new x-1 1 spray', 'spray off'],
  ...['flush gun acetone', 'flush gun isopropyl-alcohol', 'flush vessels acetone', 'flush vessels isopropyl-alcohol'],
  ...['rags', 'close'],
];

describe('a fan that goes off after the closing', () => {
  it('given it is off too soon, then it is recorded and the card says until when it should run', async () => {
    const { say } = await talkAfter(...closed, 'wait 5m');
    const { card, recorded } = await say('fan off');
    expect({ recorded, tone: card.tone }).toEqual({ recorded: true, tone: 'warn' });
    expect(card.lines).toEqual(['Extraction: no, by omar at 09:48', 'Leave the fan on until 10:13.']);
  });

  it('given its time is over and its bell has rung, then it is recorded and nothing is asked', async () => {
    const { say } = await talkAfter(...closed, 'wait 31m');
    const { card, recorded } = await say('fan off');
    expect({ recorded, tone: card.tone }).toEqual({ recorded: true, tone: 'plain' });
    expect(card.lines).toEqual(['Extraction: no, by omar at 10:14']);
  });

  it('given it is off, or nobody has closed a session, then it is asked which', async () => {
    for (const lines of [['air 24C 48%'], [...closed, 'wait 31m', 'fan off']]) {
      const { say } = await talkAfter(...lines);
      expect(await say('fan off')).toMatchObject({ recorded: false, code: 'which-session' });
    }
  });

  it('given nobody has closed it, then a fan that goes on is the fan of no session yet', async () => {
    const { say } = await talkAfter(...closed);
    expect(await say('fan on')).toMatchObject({ recorded: false, code: 'which-session' });
  });
});
