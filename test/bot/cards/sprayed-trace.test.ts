// What a customer or an owner asks of a spray session later: who had read the brief, and what there was of extraction and
// supplied air. Nobody acknowledges for a sprayer who is there (common practice, no source).

import { describe, expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

async function talkAfter(...lines: readonly string[]) {
  const talk = sessionTalk();
  for (const line of lines) await talk.say(line);
  return async (line: string) => (await talk.say(line)).card;
}

const filtered = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 105m', 'filter 1'];
const said = ['brief 1 spray kari out lia', '@kari: ack', 'fan no', 'supplied no'];
const noAir = /There is no extraction, and there is no supplied air/;

describe('a spray without extraction or supplied air', () => {
  it('given it went on all the same, then day and both traces say who, where and with what', async () => {
    const card = await talkAfter(...filtered, ...said, 'spray on already', 'coat new impeller-7 1 spray already');
    for (const question of ['day', 'trace 1', 'trace impeller-7']) {
      const { tone, lines } = await card(question);
      expect(lines.join('\n')).toMatch(noAir);
      expect(lines.join('\n')).toMatch(/spraying starts, room/);
      if (question !== 'day')
        expect([tone, lines.join('\n')]).toEqual(['warn', expect.stringMatching(/brief read by kari/)]);
    }
    expect((await card('day')).lines.map((line) => line.trim())).toContain('Read by kari, 09:45');
  });
});

describe('an acknowledgement for somebody else', () => {
  it('given a sprayer on shift, then a lead is told that each says it himself, and a witness still serves who is not there', async () => {
    const card = await talkAfter(...filtered, '@kari: shift on', 'brief 1 spray kari lia');
    const { lines } = await card('ack kari');
    expect(lines[0]).toBe('kari sprays and is there: nobody says ack for them. kari says ack 2.');
    expect((await card('ack lia')).lines.join('\n')).toContain('Read by lia, 09:45, before omar');
    expect((await card('ack kari already')).lines[0]).toMatch(
      /^Recorded, marked as a deviation: kari sprays and is there/,
    );
  });
});
