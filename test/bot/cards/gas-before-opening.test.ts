// Gas told of a time before the lid came off keeps no air from what is in the can; and no tap moves a weighing to before the
// can was opened or stirred. Minutes are the demo sheet's, invented.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const opened = ['air 24C 48%', 'wait 40m', 'open A lot 7731 5kg gas'];

describe('gas from before the lid came off', () => {
  it('given the can was opened at 8:40 and gas is told of 8:35, then its minutes run on and the card says why', async () => {
    const { say, heard } = await talkAfter(...opened);
    const { card, recorded } = await say('blanket 1 at 08:35');
    expect({ recorded, tone: card.tone, title: card.title }).toEqual({
      recorded: true,
      tone: 'warn',
      title: 'Can 1: gas from before its lid came off',
    });
    expect(card.lines.join(' ')).toContain('08:40');
    await say('wait 10m');
    expect(heard.map(({ key }) => key)).toContain('can/1/blanket');
  });

  it('given gas of after it, then it is over it as ever', async () => {
    const { say, heard } = await talkAfter(...opened, 'wait 3m');
    expect((await say('blanket 1 at 08:41')).card).toMatchObject({ tone: 'good', title: 'Can 1: gas over it, lid on' });
    await say('wait 10m');
    expect(heard.map(({ key }) => key)).not.toContain('can/1/blanket');
  });
});

describe('the taps that move a weighing', () => {
  const weighed = [...opened, 'prestir 1', 'wait 3m', 'mix 1kg'];

  it('given Part A was stirred three minutes before, then no tap moves the weighing to before it', async () => {
    const { say } = await talkAfter(...weighed);
    const { card } = await say('weigh 2 500g can 1 500g');
    expect(card.actions.map(({ id }) => id).filter((id) => id.startsWith('minus'))).toEqual([]);
  });

  it('given it was stirred seven minutes before, then five are offered', async () => {
    const { say } = await talkAfter(...weighed, 'wait 4m');
    const { card } = await say('weigh 2 500g can 1 500g');
    expect(card.actions.map(({ id }) => id).filter((id) => id.startsWith('minus'))).toEqual(['minus-5']);
    await say('tap minus-5');
    expect((await say('day')).text).not.toMatch(/not stirred/i);
  });
});
