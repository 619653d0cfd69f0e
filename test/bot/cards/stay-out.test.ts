// An alarm, or gas beyond its limit, in the place of a spray session: everybody stays out, nothing is asked for in there, and
// what waits for hands in there waits until it is over.

import { describe, expect, it } from 'vitest';
import { talkAfter, taps } from './session-talk.ts';

// Stirred and filtered; the temperatures invented.
const ready = ['air 24C 48%', 'set booth 4m2', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1'];
const briefed = [...ready, '@kari: brief 1 in booth spray kari outside lia', '@kari: ack'];
const sprays = [...briefed, 'fan on 0.6m/s', 'supplied yes', 'spray on', 'wait 5m'];

const flushBells = ({ heard }: Awaited<ReturnType<typeof talkAfter>>) =>
  heard.filter(({ key }) => key?.startsWith('session/2/flush'));

describe('the gun stops while an alarm is on there', () => {
  it('given gas beyond its limit, then nobody is sent in to flush, by card, tap or bell, until both are over', async () => {
    const talk = await talkAfter(...sprays, 'set monitor 2026-12-31', '@kari: lel 14%');
    const off = await talk.say('spray off');
    expect(off.card.lines).toEqual(['Stay out; flush after alarm over and a gas reading within the limit.']);
    expect(off.card.tone).toBe('stop');
    for (const id of ['flush', 'flush-step', 'vessels', 'rags']) expect(Object.keys(taps(off))).not.toContain(id);
    await talk.say('wait 20m');
    expect(flushBells(talk)).toEqual([]);
    await talk.say('alarm over');
    await talk.say('wait 10m');
    expect(flushBells(talk)).toEqual([]);
    await talk.say('lel 2%');
    await talk.say('wait 1m');
    expect(flushBells(talk)[0]?.card.actions.map(({ id }) => id)).toContain('flush');
  });

  it('given a cry there, then after alarm over it is flushed; said in Spanish too', async () => {
    const talk = await talkAfter(...sprays, 'set language es', '@kari: spill in booth');
    expect((await talk.say('spray off')).card.lines).toEqual(['Quédense fuera; laven después del fin de alarma.']);
    await talk.say('alarm over');
    await talk.say('wait 1m');
    expect(flushBells(talk).length).toBeGreaterThan(0);
  });

  it('given a cry of no said place, then nobody is sent in either: it may be there', async () => {
    const talk = await talkAfter(...sprays, '@kari: fire');
    expect((await talk.say('spray off')).card.lines).toEqual(['Stay out; flush after alarm over.']);
    await talk.say('wait 20m');
    expect(flushBells(talk)).toEqual([]);
  });

  it('given an alarm elsewhere, then it is flushed now', async () => {
    const { say } = await talkAfter(...sprays, '@kari: spill in hall');
    const off = await say('spray off');
    expect(off.card.lines[0]).toBe('Spraying stops. Flush the gun now, in the booth with the fan on.');
    expect(Object.keys(taps(off))).toContain('flush');
  });
});

describe('work is asked about while an alarm is on there', () => {
  it('given gas beyond its limit and the fan off, then the alarm is named before the fan, and no tap switches the fan on', async () => {
    const { say } = await talkAfter(
      ...briefed,
      'fan off',
      'part bracket-3',
      'set monitor 2026-12-31',
      '@kari: lel 14%',
    );
    const asked = await say('coat bracket-3 1 spray');
    expect([asked.code, asked.recorded]).toEqual(['alarm-on', false]);
    expect(asked.text.indexOf('alarm')).toBeLessThan(asked.text.indexOf('xtraction'));
    expect(Object.keys(taps(asked))).not.toContain('fan-on');
    await say('alarm over');
    const beyond = await say('coat bracket-3 1 spray');
    expect(beyond.code).toBe('gas-beyond');
    expect(Object.keys(taps(beyond))).not.toContain('fan-on');
    await say('lel 2%');
    expect(Object.keys(taps(await say('coat bracket-3 1 spray')))).toContain('fan-on');
  });

  it('given nobody has said anything of the fan, then no card of the session taps it on', async () => {
    const { say } = await talkAfter(...briefed, '@kari: spill in booth');
    for (const line of ['supplied yes', 'vent 2']) expect(Object.keys(taps(await say(line)))).not.toContain('fan-on');
  });
});

describe('the brief after an alarm there', () => {
  it('given alarm over, then nobody sprays by a brief from before it, and a new one serves', async () => {
    const { say } = await talkAfter(
      ...sprays,
      'spray off',
      'flush gun',
      '@kari: spill in booth',
      'wait 2m',
      'alarm over',
    );
    const asked = await say('spray on');
    expect([asked.code, asked.recorded]).toEqual(['brief-lapsed', false]);
    expect(asked.text).toContain('no longer serves: there has been an alarm there since. Brief anew.');
    expect(Object.keys(taps(asked))).toContain('brief');
    for (const line of ['already close 2', '@kari: brief 1 in booth spray kari outside lia', '@kari: ack'])
      await say(line);
    for (const line of ['fan on 0.6m/s', 'supplied yes']) await say(line);
    expect((await say('spray on')).recorded).toBe(true);
  });

  it.each(['@kari: fire', '@kari: help!!!', '@kari: lel 30% in room'])(
    'given %s, which holds every place, then the brief in booth is over too',
    async (cry) => {
      const { say } = await talkAfter(...sprays, 'spray off', cry, 'wait 2m', 'lel 2% in room', 'alarm over all');
      const asked = await say('spray on');
      expect([asked.code, asked.recorded]).toEqual(['brief-lapsed', false]);
    },
  );

  it('given a drill, or an alarm elsewhere, then the brief serves on', async () => {
    const { say } = await talkAfter(
      ...sprays,
      'spray off',
      '@kari: spill in hall',
      'drill spill',
      'wait 1m',
      'alarm over',
    );
    expect((await say('spray on')).recorded).toBe(true);
  });
});
