// Several alarms at once: each is ended by itself, by what it is or where; one word ends none that was not meant.

import { describe, expect, it } from 'vitest';
import { sessionTalk, sprayCrew, taps } from '../cards/session-talk.ts';

const two = ['@kari: fire in booth-2', '@kari: spill in the booth'];

async function talkWith(lines: readonly string[], language = 'en') {
  const talk = sessionTalk(':memory:', {
    ...sprayCrew,
    people: sprayCrew.people.map((person) => ({ ...person, language })),
  });
  for (const line of lines) await talk.say(line);
  return talk;
}

describe('several alarms at once', () => {
  it('given two, when a lead says that the alarm is over, then none ends and each has a tap, with one for all', async () => {
    const { say } = await talkWith(two);
    const { recorded, code, card } = await say('@omar: alarm over');
    expect({ recorded, code }).toEqual({ recorded: false, code: 'which-alarm' });
    expect(card.lines[0]).toBe('Which is over? On: fire (booth-2), spill (booth).');
    expect(card.actions.map(({ label, line }) => [label, line])).toEqual([
      ['Fire (booth-2)', 'alarm-over fire in booth-2'],
      ['Spill (booth)', 'alarm-over spill in booth'],
      ['All of them', 'alarm-over all'],
    ]);
  });

  it.each(['alarm over booth-2', 'alarm over fire', 'all clear in booth-2', 'alarm-over fire in booth-2'])(
    'given two, when "%s", then that one ends, and the other is told as on and holds its place',
    async (line) => {
      const { say } = await talkWith(two);
      const { recorded, card, text } = await say(`@omar: ${line}`);
      expect([recorded, card.tone]).toEqual([true, 'stop']);
      expect(card.lines[0]).toBe('Over: fire.');
      expect(text).toContain('ALARM, spill');
      expect((await say('brief in booth spray kari')).code).toBe('alarm-on');
      expect((await say('brief in booth-2 spray kari')).code).not.toBe('alarm-on');
      expect((await say('@omar: alarm over')).recorded).toBe(true);
      expect((await say('brief in booth spray kari')).code).not.toBe('alarm-on');
    },
  );

  it('given two, when all, then both end', async () => {
    const { say } = await talkWith(two);
    const { card } = await say('@omar: alarm over all');
    expect(card.lines[0]).toBe('Over: fire, spill.');
    expect((await say('@omar: alarm over')).code).toBe('no-alarm-on');
  });

  it('given a fire of no said place beside one in booth-2, when "alarm over fire", then the one of booth-2 is still on', async () => {
    const { say } = await talkWith(['@kari: fire', '@kari: fire in booth-2']);
    expect((await say('@omar: alarm over fire')).recorded).toBe(true);
    expect((await say('brief in booth-2 spray kari')).code).toBe('alarm-on');
    expect((await say('brief in booth spray kari')).code).not.toBe('alarm-on');
  });

  it('given one alone, when another place is named, then it stays on and is asked about', async () => {
    const { say } = await talkWith(['@kari: fire in booth-2']);
    const answer = await say('@omar: alarm over booth-3');
    expect([answer.recorded, answer.card.lines[0]]).toEqual([false, 'That one is not on. On: fire (booth-2).']);
    expect(Object.keys(taps(answer))).toEqual(['over-1']);
  });

  it('given the same cried twice, then one word ends both', async () => {
    const { say } = await talkWith(['@kari: fire in booth-2', '@rosa: fire in booth-2']);
    expect((await say('@omar: alarm over')).recorded).toBe(true);
    expect((await say('@omar: alarm over')).code).toBe('no-alarm-on');
  });

  it('given a drill beside an alarm, then the end of one leaves the other', async () => {
    const { say } = await talkWith(['@omar: drill fire', '@kari: spill in the booth']);
    expect((await say('@omar: alarm over')).code).toBe('which-alarm');
    expect((await say('@omar: alarm over drill')).card.lines[0]).toBe('Over: drill (fire).');
    expect((await say('brief in booth spray kari')).code).toBe('alarm-on');
  });

  it('given two pots that heat, then each ends by its number', async () => {
    const { say } = await talkWith([
      'air 22C 48%',
      ...[
        'mix 2.4kg',
        'weigh 1 1200g 1200g',
        'mix 2.4kg',
        'weigh 2 1200g 1200g',
        '@kari: hot pot 1',
        '@kari: hot pot 2',
      ],
    ]);
    const asked = await say('@omar: alarm over');
    expect(asked.card.actions.map(({ line }) => line)).toEqual([
      ...['alarm-over hot 1', 'alarm-over hot 2', 'alarm-over all'],
    ]);
    expect((await say('@omar: alarm-over hot 1')).text).toContain('the pot of batch 2 is heating');
  });

  it('given two, in Spanish, then each is asked about', async () => {
    const { say } = await talkWith(two, 'es');
    const { card } = await say('@omar: fin de alarma');
    expect(card.lines[0]).toContain('¿Cuál terminó?');
    expect(card.actions.at(-1)?.label).toBe('Todas');
    const [, spill] = card.actions;
    expect((await say(`@omar: ${spill?.line}`)).recorded).toBe(true);
    expect((await say('@omar: fin de alarma fuego')).recorded).toBe(true);
  });
});
