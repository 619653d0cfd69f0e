// Lines as they are dictated: units in words, words that were heard for others, keys that were missed. What is not sure is a tap.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew } from '../../cards/session-talk.ts';

function talkIn(language: 'en' | 'es' = 'en') {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  onTestFinished(talk.close);
  return talk;
}

const begun = ['air 24C 48%', 'mix 2.4kg', 'mix 1.2kg', 'part impeller-7', 'part impeller-8'];
const curing = [
  ...['air 24C 48%', 'mix 2.4kg', 'part impeller-7', 'weigh 1 1201g 1198g already', 'coat impeller-7 1 brush already'],
  ...['dry impeller-7 already', 'cure impeller-7 oven 90C already', 'temp impeller-7 88C'],
];

describe('what is sure', () => {
  it.each([
    ['surface impeller-7 twenty one point five degrees', 'surface impeller-7 21.5C'],
    ['prep impeller-7 sa2.5 sixty microns', 'prep impeller-7 sa2.5 60 microns'],
    ['fan on zero point six metres per second', 'fan on 0.6 m/s'],
    // One hundred degrees of the other scale would be colder than an oven gets in a minute.
    ['temp impeller-7 eighty nine degrees', 'temp impeller-7 89C'],
    // Of the ways to cut them one alone is met with here.
    ['wet impeller-7 sixty sixty two fifty eight microns', 'wet impeller-7 60 62 58 microns'],
  ])('given "%s", then it is taken', async (line, as) => {
    const talk = talkIn();
    for (const each of curing) await talk.say(each);
    expect((await talk.say(line)).card.lines).toContain(`Taken as: ${as}`);
  });

  it('given readings one after the other in Spanish, then they are a list', async () => {
    const talk = talkIn('es');
    for (const each of curing) await talk.say(each);
    const answer = await talk.say(
      'húmeda impeller-7 sesenta y dos micras luego sesenta y cinco y luego cincuenta y ocho',
    );
    expect(answer.recorded).toBe(true);
    expect(answer.text).toMatch(/58/);
  });

  it('given an hour and minutes that make a number as well, then it is a time', async () => {
    const talk = talkIn('es');
    for (const each of [...begun, 'wait until 10:30']) await talk.say(each);
    const answer = await talk.say('a las diez y cinco superficie impeller-7 21C');
    expect(answer.recorded).toBe(true);
    expect(answer.card.lines.join()).toMatch(/10:05/);
  });
});

describe('what is a tap', () => {
  it.each([
    ['wait batch one twelve oh one grams eleven ninety eight grams', 'weigh batch 1 1201 grams 1198 grams'],
    ['err twenty four and forty eight', 'air 24C and 48%'],
    ['weigh patch two 600g 599g', 'weigh batch 2 600g 599g'],
    ['weigh 1 1201h 1198g', 'weigh 1 1201g 1198g'],
    ['hey can you set up one point two kilos please', 'mix 1.2 kilos please'],
  ])('given "%s", then it is offered and nothing is recorded', async (line, tap) => {
    const talk = talkIn();
    for (const each of begun) await talk.say(each);
    const answer = await talk.say(line);
    expect(answer.recorded).toBe(false);
    expect(answer.card.actions.map((action) => action.line)).toContain(tap);
  });
});

it.each(['try again later', 'wait for batch 1', 'way to go', 'wait 1 minute', 'patch it up'])(
  'given "%s", which says something else, then nothing is offered',
  async (line) => {
    const talk = talkIn();
    for (const each of begun) await talk.say(each);
    const answer = await talk.say(line);
    expect(answer.recorded).toBe(false);
    expect(answer.card.actions.map((action) => action.line).filter((each) => /^(weigh|dry|mix)/.test(each))).toEqual(
      [],
    );
  },
);
