// Units that were left out: taken where one alone would do here, offered where two would, and asked where nobody can tell.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew } from '../../cards/session-talk.ts';

function talkOf(units: 'metric' | 'us', language = 'en') {
  const people = sprayCrew.people.map((person) => ({ ...person, units, language }));
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  onTestFinished(talk.close);
  return talk;
}

const begun = ['air 24C 48%', 'mix 2.4kg', 'part impeller-7 cast-iron max 120C'];
const curing = [
  ...begun,
  ...['weigh 1 1201g 1198g', 'wait 105m', 'filter 1', 'surface 22C', 'coat impeller-7 1 brush', 'wait 12m'],
  ...['dry impeller-7', 'cure impeller-7 oven 90C'],
];

describe('a unit left out', () => {
  it.each([
    ['metric', [], 'air 23 51', 'air 23C 51%'],
    ['us', [], 'air 75 50', 'air 75F 50%'],
    ['metric', [], 'aire 23 grados 51%', 'aire 23C 51%'],
    ['metric', ['air 24C 48%'], 'mix 2.4', 'mix 2.4kg'],
    ['metric', begun, 'surface 21', 'surface 21C'],
    ['metric', begun, 'weigh 1 1201 1198', 'weigh 1 1201 1198g'],
    ['metric', begun, 'weigh one twelve oh one eleven ninety eight', 'weigh 1 1201 1198g'],
    ['us', curing, 'temp impeller-7 196', 'temp impeller-7 196F'],
  ] as const)(
    'given %s units and %j, when "%s" is said, then it is taken as "%s"',
    async (units, before, line, taken) => {
      const talk = talkOf(units, line.startsWith('aire') ? 'es' : 'en');
      for (const each of before) await talk.say(each);
      const answer = await talk.say(line);
      expect(answer.recorded).toBe(true);
      const strict = talkOf(units, line.startsWith('aire') ? 'es' : 'en');
      for (const each of before) await strict.say(each);
      expect(talk.heard.at(-1)?.card.title).toBe((await strict.say(taken)).card.title);
    },
  );

  it.each([
    // In the shade of an oven either may be so: a part at 91 °F warms up, one at 91 °C cures.
    ['metric', curing, 'temp impeller-7 91', ['temp impeller-7 91C', 'temp impeller-7 91F']],
    ['us', curing, 'temp impeller-7 91', ['temp impeller-7 91F', 'temp impeller-7 91C']],
    // A pot of 240 g is rare, one of 240 kg is none: it is asked whether it was meant.
    ['metric', ['air 24C 48%'], 'mix 240', ['mix 240g']],
    ['metric', [], 'air 24', ['air 24C', 'air 24%']],
    // The pot that is there may be meant, by its name.
    ['metric', begun, 'mix 1', ['mix 1kg']],
  ] as const)(
    'given %s units, when "%s" is said, then each that would do is a tap',
    async (units, before, line, offered) => {
      const talk = talkOf(units);
      for (const each of before) await talk.say(each);
      const { recorded, card } = await talk.say(line);
      expect(recorded).not.toBe(true);
      expect(card.actions.map((action) => action.line)).toEqual(offered);
    },
  );

  it.each([
    // 12 g is no half of 2.4 kg, and 12 kg neither.
    [begun, 'weigh 1 12 11'],
    [begun, 'mix 24'],
    // Either ounce.
    [curing, 'flush gun acetone 10oz'],
  ] as const)(
    'given %j, when "%s" is said, then nothing is recorded and nothing is taken for it',
    async (before, line) => {
      const talk = talkOf('metric');
      for (const each of before) await talk.say(each);
      const { recorded, text } = await talk.say(line);
      expect(recorded).not.toBe(true);
      expect(text).not.toContain('Taken as');
    },
  );
});
