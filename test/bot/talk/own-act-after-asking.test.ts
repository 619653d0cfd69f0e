// An act in its own words right after a card that asked for it, and what is said of things that are not there. Through the whole bot;
// all figures are invented.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk } from '../cards/session-talk.ts';

const filtered = [
  'air 23C 50%',
  'part hub-1 steel 8mm 0.2m2 max 120C',
  'open A lot 7731 1kg gas',
  'open B lot 8820 1kg',
  'prestir 1',
  'wait 2m',
  'mix 200g',
  'weigh 3 100g 100g gas',
  'wait 110m',
  'filter 3',
];

async function talkAfter(...lines: readonly string[]) {
  const talk = sessionTalk();
  onTestFinished(talk.close);
  for (const line of lines) await talk.say(line);
  return talk.say;
}

describe('given a filtered pot whose card asked for its coat', () => {
  it.each(['coat hub 1 3 brush', 'coat hub-1 3 brush'])('when %s is said, then it is that coat', async (line) => {
    const say = await talkAfter(...filtered);
    const { recorded, card } = await say(line);
    expect([recorded, card.title]).toEqual([true, 'hub-1: coated (brush, batch 3)']);
  });
});

describe('given no such pot', () => {
  it('when another waits to be weighed, then nobody is told that none is there', async () => {
    const say = await talkAfter('air 23C 50%', 'mix 200g');
    expect((await say('filter 7')).text).toContain(
      'There is no batch 7, and what is said of it can be done to no live one.',
    );
  });

  it('when there is no other, then a mix is named', async () => {
    const say = await talkAfter('air 23C 50%');
    expect((await say('filter 7')).text).toContain('Live: none; start one with mix 2.4kg.');
  });
});

describe('given a held part', () => {
  const held = ['air 23C 50%', 'part hub-1', 'part hub-2', 'hold hub-1 a run at the rim', 'hold hub-2 dust'];

  it('when what is on hold is asked, then why and whose it is are two sentences', async () => {
    const say = await talkAfter(...held);
    expect((await say("what's on hold")).card.lines).toContainEqual(
      expect.stringMatching(/^hub-1: On hold: a run at the rim\. \w+ sees to it$/),
    );
  });

  it('when a leave names it, then it alone is meant and its name is no part of the reason', async () => {
    const say = await talkAfter(...held);
    const { card } = await say('permit hub-1 looked at again');
    expect(card.actions.map(({ line }) => line)).toEqual(['release hub-1 permit looked at again']);
  });
});
