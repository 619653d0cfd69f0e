// Spraying without supplied air, as it is talked about: what it rests on, who may say it, and what a sheet that names a sensitiser
// says to it.

import { describe, expect, it } from 'vitest';
import { sessionTalk, taps } from './session-talk.ts';

// Stirred by 9:42 at 24 degC (common practice, no source; the temperatures invented).
const filtered = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1'];
const noAir = ['set booth 4m2', '@kari: brief 1 in booth spray kari', '@kari: ack', 'fan on 0.6m/s', 'supplied no'];

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of lines) await say(line);
  return say;
}

describe('a standing assessment', () => {
  it('given nobody said whether it is with supplied air, then which is asked with a tap each, and nothing is recorded', async () => {
    const { say } = sessionTalk();
    const asked = await say('@rosa: assess demo-clear in booth until 2027-01-31');
    expect(asked.recorded).toBe(false);
    expect(asked.card.actions.map(({ line }) => line)).toEqual([
      'assess demo-clear in booth until 2027-01-31 without-supplied-air',
      'assess demo-clear in booth until 2027-01-31 with-supplied-air',
    ]);
  });

  it('given it is with supplied air alone, then nobody sprays without, whatever was assessed before', async () => {
    const say = await talkAfter(
      '@rosa: assess demo-clear in booth without-supplied-air until 2027-01-31',
      '@rosa: assess demo-clear in booth with supplied air until 2027-01-31',
      ...[...filtered, ...noAir],
    );
    expect((await say('spray on')).code).toBe('no-assessment');
  });

  it('given none, then it is asked for with a tap, whose it is, and what else there is', async () => {
    const say = await talkAfter(...filtered, ...noAir);
    const asked = await say('spray on');
    expect(asked.code).toBe('no-assessment');
    expect(asked.text).toContain(
      "it rests on the supervisor's standing assessment for booth, Demo Clear and spraying: there is none yet",
    );
    expect(taps(asked)).toMatchObject({
      'supplied-yes': 'supplied 2 yes',
      assess: 'assess demo-clear in booth spray without-supplied-air until {until-day}',
      'go-on': 'spray-on permit {why}',
    });
    expect((await say('assess demo-clear in booth without-supplied-air until 2027-01-31')).code).toBe('may-not-settle');
  });

  it('given the supervisor’s, then each brief there says on what it rests', async () => {
    const say = await talkAfter(
      '@rosa: assess demo-clear in booth without-supplied-air until 2027-01-31',
      ...filtered,
      'set booth 4m2',
    );
    const brief = await say('@kari: brief 1 in booth spray kari');
    expect(brief.text).toContain(
      'Without supplied air, as rosa assessed 08:00 for booth and Demo Clear: until Sun 31 Jan 2027.',
    );
    expect((await say('@kari: brief 1 in hall spray kari')).text).not.toContain('as rosa assessed');
  });

  it('given a sheet that names a sensitiser, then it says that it does not serve, and nobody is offered to go on', async () => {
    const say = await talkAfter('set booth 4m2', 'air 24C 48%', 'mix 6kg demo-build');
    const given = await say('@rosa: assess demo-build in booth without-supplied-air until 2027-01-31');
    expect(given.text).toContain('It does not serve yet: the sheet Demo Build names a respiratory sensitiser');
    const brief = await say('@kari: brief 1 in booth spray kari');
    expect(brief.text).toContain(
      'Respiratory sensitiser by the sheet: isocyanates (0.005 ppm over the day, invented for the demo).',
    );
    for (const line of ['@kari: ack', 'fan on 0.6m/s', 'supplied no']) await say(line);
    const asked = await say('spray on');
    expect(asked.text).toContain('Supplied air, or no spraying: nobody lifts this.');
    expect(taps(asked)).not.toHaveProperty('go-on');
    expect(taps(asked)).toHaveProperty('supplied-yes');
  });

  it('given a Spanish reader, then it is asked for in Spanish', async () => {
    const say = await talkAfter('@kari: set language es', ...filtered, ...noAir);
    const asked = await say('@kari: empiezo a pintar');
    expect(asked.text).toContain('Sin aire suministrado hace falta la evaluación del supervisor');
    await say('@rosa: set language es');
    const given = await say('@rosa: evaluar demo-clear en cabina sin-aire-suministrado hasta 2027-01-31');
    expect(given.text).toContain('sin aire suministrado, según evaluación: cabina, Demo Clear, pistola');
  });
});
