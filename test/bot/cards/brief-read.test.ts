// A brief that is read on a phone: what nobody knows is all there, of what is known five lines, the rest one tap away.

import { describe, expect, it } from 'vitest';
import { talkAfter, taps } from './session-talk.ts';

// Stirred by 9:42 at 24 degC (common practice, no source; the temperatures invented).
const filtered = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1'];
const known = [
  ...['set booth booth-2 4m2', 'set emergency call 112, gate 2'],
  ...['fit', 'medical', 'training'].map((what) => `${what} kari 2027-01-31`),
];

describe('the brief', () => {
  it('given nothing is known, then all of it is told, and every unknown has its line', async () => {
    const { say } = await talkAfter(...filtered);
    const { card } = await say('@kari: brief 1 spray kari');
    const told = card.lines.join('\n');
    for (const unknown of [
      'Extraction: nobody has said.',
      'Supplied air: nobody has said.',
      'Nobody was named as near.',
      'No date known: fit test, medical, spray training of kari',
      'Not acknowledged yet: kari.',
      'The shop’s emergency numbers are not set.',
    ])
      expect(told).toContain(unknown);
  });

  it('given all is known, then five lines of it stand there, and the tap has the rest', async () => {
    const { say } = await talkAfter(...filtered, ...known);
    await say('@kari: brief 1 in booth-2 spray kari out lia outside rosa');
    for (const line of ['@kari: ack', 'fan on 0.6m/s', 'supplied yes']) await say(line);
    const brief = await say('@kari: brief 1 in booth-2 spray kari out lia outside rosa');
    const whole = await say(taps(brief)['brief-rest'] ?? '');
    // Where and what, then five, what is behind the taps, and the caution; three are not known yet.
    expect(brief.card.lines).toHaveLength(1 + 3 + 5 + 2);
    expect(whole.text).toContain('It lapses with a new person');
    expect(whole.text).toContain('No open flame');
  });

  it('given the same answers as in the session before, in this booth and shift, then they are one line', async () => {
    const { say } = await talkAfter(...filtered, ...known, '@kari: brief 1 in booth-2 spray kari out lia');
    const sprayed = ['spray on', 'spray off', 'flush', 'flush vessels', 'rags', 'close', 'wait 20m'];
    for (const line of ['@kari: ack', 'fan on 0.6m/s', 'supplied yes', ...sprayed]) await say(line);
    await say('@kari: brief 1 in booth-2 spray kari out lia');
    for (const line of ['fan on 0.6m/s', 'supplied yes']) await say(line);
    // The one before is closed, and its fan still runs.
    const all = await say('hazards spray');
    expect(all.text).toContain('As at 09:42, unchanged: Extraction: running, 0.6 m/s');
    await say('fan on 0.55m/s');
    expect((await say('hazards spray')).text).not.toContain('As at');
  });

  const first = ['@kari: brief 1 in booth-2 spray kari out lia', '@kari: ack', 'fan on 0.6m/s', 'supplied yes'];
  const closed = ['spray on', 'spray off', 'flush', 'flush vessels', 'rags', 'close', 'wait 90m'];

  it('given that session long closed, then the same answers are still one line, with who gave them and when', async () => {
    const { say } = await talkAfter(...filtered, ...known, ...first, ...closed);
    const brief = await say('brief 1 in booth-2 spray kari out lia');
    const before = brief.card.actions.find(({ id }) => id === 'fan-as-before');
    expect(before).toMatchObject({ label: 'As at 09:42, unchanged: 0.6 m/s', line: 'fan 3 on 0.6m/s' });
    for (const line of ['tap fan-as-before', '@kari: supplied yes']) await say(line);
    expect((await say('hazards spray')).text).toContain(
      'As at 09:42, unchanged: Extraction: running, 0.6 m/s, by omar at 09:42; Supplied air: yes, by omar at 09:42',
    );
  });

  it.each([
    ['other people', 'brief 1 in booth-2 spray lia out kari', []],
    ['another booth', 'brief 1 in booth-3 spray kari out lia', []],
    ['a shift that began since', 'brief 1 in booth-2 spray kari out lia', ['@kari: shift on', 'wait 1m']],
    ['a fan read too long ago', 'brief 1 in booth-2 spray kari out lia', ['set air-limit 1h']],
  ])('given %s, then nothing stands as it was', async (_, brief, between) => {
    const { say } = await talkAfter(...filtered, ...known, ...first, ...closed, ...between);
    expect((await say(brief)).card.actions.map(({ id }) => id)).not.toContain('fan-as-before');
    for (const line of ['fan on 0.6m/s', 'supplied yes']) await say(line);
    expect((await say('hazards spray')).text).not.toContain('As at');
  });

  it('given a tank, then whether nobody is in it is asked at every session, whatever was answered before', async () => {
    const tank = ['set booth tank-3 4m2', '@kari: brief 1 in tank-3 spray kari out lia', 'from-outside', '@kari: ack'];
    const aired = ['fan on 0.6m/s', 'supplied yes'];
    const { say } = await talkAfter(...filtered, ...known, ...tank, ...aired, ...closed);
    const brief = await say('brief 1 in tank-3 spray kari out lia');
    expect(brief.text).toContain('its name says that people are closed in there');
    for (const line of ['fan on 0.6m/s', 'supplied yes', '@kari: ack']) await say(line);
    expect((await say('spray on')).text).toContain('is by its name a place that people are closed in');
  });

  it('given that there is supplied air, then all lines say it once', async () => {
    const { say } = await talkAfter(...filtered, ...known, 'brief 1 in booth-2 spray kari out lia outside rosa');
    const line = 'supplied air at the least for everybody';
    expect((await say('hazards spray')).text).toContain(line);
    await say('supplied yes');
    expect((await say('hazards spray')).text).not.toContain(line);
  });
});
