// A brief for a place whose name means that people are closed in, as it is talked about: the stop, the permit, and the two taps.

import { describe, expect, it } from 'vitest';
import { sessionTalk, taps } from './session-talk.ts';

// Stirred by 9:42 at 24 degC (common practice, no source; the temperatures invented).
const filtered = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1'];

async function briefedIn(place: string, ...before: readonly string[]) {
  const talk = sessionTalk();
  for (const line of [...before, ...filtered, `set booth ${place} 4m2`]) await talk.say(line);
  return { ...talk, brief: await talk.say(`@kari: brief 1 in ${place} spray kari`) };
}

describe('a brief for a tank', () => {
  it('given tank-3, then the card stops, names the permit, and the taps say what else it may be', async () => {
    const { brief } = await briefedIn('tank-3');
    expect(brief.card.tone).toBe('stop');
    expect(brief.text).toContain('tank-3: its name says that people are closed in there.');
    expect(brief.text).toContain("the employer's confined-space permit");
    expect(taps(brief)).toMatchObject({ 'from-outside': 'from-outside 2', 'not-confined': 'set confined tank-3 off' });
  });

  it('given the tap, then it stands with who said it, and spraying starts', async () => {
    const { say } = await briefedIn('tank-3');
    for (const line of ['@kari: ack', 'fan on 0.6m/s', 'supplied yes']) await say(line);
    const asked = await say('spray on 2');
    expect(asked.code).toBe('confined-place');
    expect(asked.text).toContain('say from-outside 2');
    const told = await say(taps(asked)['from-outside'] ?? '');
    expect(told.text).toContain('Sprayed from outside, nobody in it: by omar at 09:42');
    expect((await say('spray on 2')).recorded).toBe(true);
  });

  it('given a lead’s tap that it is only a name, then the next brief there is as any other', async () => {
    const { say, brief } = await briefedIn('tank-3');
    await say(taps(brief)['not-confined'] ?? '');
    const next = await say('brief 1 in tank-3 spray kari');
    expect(next.card.tone).not.toBe('stop');
    expect(taps(next)).not.toHaveProperty('from-outside');
  });

  it('given a Spanish reader, then it is told and asked in Spanish', async () => {
    const { say, brief } = await briefedIn('foso', '@kari: set language es');
    expect(brief.text).toContain('foso: por su nombre es un espacio confinado');
    expect((await say('@kari: desde fuera 2')).text).toContain('Se pinta desde fuera, nadie dentro');
  });
});

describe('what nobody knows, told', () => {
  it('given a date that has run out, then its taps are the new date, moving out, and going on by name', async () => {
    const { say } = await briefedIn('booth', 'medical kari 2026-03-01');
    for (const line of ['@kari: ack', 'fan on 0.6m/s', 'supplied yes']) await say(line);
    const asked = await say('spray on 2');
    expect(asked.text).toContain('Out of date: medical of kari, Sun 1 Mar');
    expect(asked.text).toContain('A supervisor may go on knowing it, for this session');
    expect(taps(asked)).toMatchObject({
      'dated-medical': 'medical kari {until-day}',
      'go-on': 'spray-on 2 permit {why}',
    });
  });

  it('given a booth whose face nobody has set, then what to say is said', async () => {
    const { say } = await briefedIn('booth-9');
    for (const line of [
      '@kari: ack',
      'brief 1 in hall spray kari',
      '@kari: ack 3',
      'fan 3 on 0.6m/s',
      'supplied 3 yes',
    ])
      await say(line);
    expect((await say('spray on 3')).text).toContain('say set booth hall 4m2');
  });
});
