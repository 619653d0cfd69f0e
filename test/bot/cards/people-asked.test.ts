// Who sprays, who else is near, whose dates nobody knows: each asked once a session, with taps that say what they record.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

// Stirred by 9:42 at 24 degC (common practice, no source; the temperatures invented).
const filtered = ['air 24C 48%', 'set booth 4m2', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1'];
const aired = ['fan on 0.6m/s', 'supplied yes'];

const pressed = (actions: readonly { readonly label: string; readonly line: string }[], label: RegExp) => {
  const found = actions.find((each) => label.test(each.label));
  if (found === undefined) throw new Error(`no tap ${label}: ${actions.map((each) => each.label).join(', ')}`);
  return found;
};

describe('the brief', () => {
  it('given nobody named to spray, then one tap says who does; everybody else is out with another', async () => {
    const { card } = await talkAfter(...filtered);
    const brief = await card('brief 1 in booth');
    expect(pressed(brief.actions, /^kari: sprays$/).line).toBe('near 2 kari sprays');
    const moved = await card(pressed(brief.actions, /^kari, rosa, lia: moved out$/).line);
    expect(moved.lines).toContain('Moved out: kari, rosa, lia');
    // Answered: neither is asked again.
    expect((await card('ack')).actions.map(({ label }) => label)).not.toContain('kari: sprays');
  });

  it('given who is near unknown, then each may stay with a tap, who is exposed from then on', async () => {
    const { card } = await talkAfter(...filtered);
    const brief = await card('@kari: brief 1 in booth spray kari outside omar');
    const near = await card(pressed(brief.actions, /^lia: stays near, exposed$/).line);
    expect(near.lines).toContain('Stays near, exposed: lia');
  });

  it('given no date of the sprayer, then each that lacks is a tap that asks for the day alone', async () => {
    const { card } = await talkAfter(...filtered);
    const brief = await card('brief 1 in booth spray kari out lia');
    const dated = brief.actions.filter(({ id }) => id.startsWith('dated-'));
    expect(dated.map(({ line }) => line)).toEqual([
      ...['fit kari {until-day}', 'medical kari {until-day}', 'training kari {until-day}'],
    ]);
    await card('tap dated-medical 2027-03-01');
    const again = await card('brief 1 in booth spray kari out lia');
    expect(again.actions.map(({ id }) => id)).not.toContain('dated-medical');
  });

  it('given Spanish, then the taps say the same', async () => {
    const { card } = await talkAfter(...filtered, 'set language es');
    const { actions } = await card('charla 1 en cabina pintan kari');
    expect(pressed(actions, /^omar, rosa y lia, fuera/).line).toBe('near 2 omar rosa lia out');
  });
});

describe('spraying that is objected to', () => {
  it('given a crew that names who is near, then the tap answers it, and whoever supervises goes on by name', async () => {
    const first = ['@kari: brief 1 in booth spray kari out lia', 'close', 'wait 1m'];
    const { card } = await talkAfter(
      ...filtered,
      ...first,
      '@kari: brief 1 in booth spray kari',
      '@kari: ack',
      ...aired,
    );
    const { actions } = await card('spray on');
    expect(pressed(actions, /^omar, rosa, lia: moved out$/).line).toBe('near 3 omar rosa lia out');
    const goOn = actions.find(({ id }) => id === 'go-on');
    expect(goOn?.line).toBe('spray-on permit {why}');
    expect((await card('@rosa: spray on permit alone in the hall')).title).toBe('Session 3: spraying starts');
  });

  it('given a crew that keeps dates, then the tap asks for the one that lacks', async () => {
    const brief = ['@kari: brief 1 in booth spray kari out lia', '@kari: ack', ...aired, 'fit lia 2027-03-01'];
    const { card } = await talkAfter(...filtered, ...brief);
    const objection = await card('spray on');
    expect(objection.lines[0]).toContain('No date known: fit test of kari.');
    expect(objection.actions.map(({ line }) => line)).toContain('fit kari {until-day}');
    await card('tap dated-fit 2027-03-01');
    expect((await card('spray on')).title).toBe('Session 2: spraying starts');
  });
});

it('given whoever sprays is named as the watcher outside too, then it is asked who is, in either tongue; what happened is recorded', async () => {
  const { say } = await talkAfter('air 24C 48%', 'mix 2.4kg');
  const asked = await say('brief 1 in booth spray kari out lia outside kari');
  expect([asked.code, asked.recorded]).toEqual(['watcher-sprays', false]);
  expect(asked.text).toContain('kari sprays, and cannot watch from outside too. Who is outside with the timers?');
  expect((await say('@kari: brief 1 in booth outside kari')).code).toBe('watcher-sprays');
  await say('set language es');
  expect((await say('brief 1 in booth spray kari outside kari')).text).toContain('¿Quién queda afuera con los avisos?');
  expect((await say('brief 1 in booth spray kari outside lia')).recorded).toBe(true);
  expect((await say('already brief 1 in booth spray kari outside kari')).recorded).toBe(true);
});
