// What now: one step, how long, one thing not to do, from sealed cans to a released part; and the last line of each card.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const opened = ['open A lot 7731 5kg exp 2026-12 gas', 'open B lot 8820 5kg exp 2026-12'];
const read = 'air 24C 48%';
const received = 'received 5kg A lot 7731';
const mixed = [read, 'mix 2.4kg'];
const stirred = [...mixed, ...opened, 'prestir 2', 'prestir 3', 'wait 3m'];
const weighed = [read, 'mix 2.4kg', 'weigh 1 1201g 1198g'];
const inUse = [...weighed, 'wait 103m', 'filter 1'];
const coated = [...inUse, 'coat new impeller-7 1 brush'];
const inOven = [...coated, 'empty 1 0g', 'flush 1 brush', 'wait 12m', 'dry impeller-7', 'cure impeller-7 oven 90C'];
const warm = [...inOven, 'temp impeller-7 91C'];
const given = [...warm, 'wait 61m', 'temp impeller-7 91C'];

const asked = async (lines: readonly string[], line = 'what now') => {
  const { say } = await talkAfter(...lines);
  const { card } = await say(line);
  return { lines: card.lines, taps: card.actions.map((action) => action.line) };
};

describe('what now', () => {
  it.each<readonly [string, readonly string[], string, RegExp, RegExp]>([
    ['nothing', [], 'Read the air', /serves for 4 h/, /air that nobody has read/],
    ['air, and no can known', [read], 'Read me the label of a can of Part A', /No clock/, /lid off without gas/],
    ['one can', [read, received], 'Read me the label of a can of Part B', /No clock/, /not weighed/],
    ['cans that stand sealed', [read, received, 'received 5kg B lot 8820'], 'Mix a batch', /No clock/, /pot life ends/],
    ['a mix', mixed, 'Batch 1: open a can of Part A', /No clock/, /lid off without gas/],
    ['an open can', [...mixed, ...opened], 'Batch 1: stir can 2 up', /No clock/, /pour from it before it is stirred/],
    ['stirred cans', stirred, 'Batch 1: weigh Part A', /mixing takes 1 h 42 min/, /not weighed/],
    [
      'a lid off and nothing to pour',
      [read, ...opened],
      'Can 1: gas over it, lid on',
      /Gas over it by: 08:20/,
      /leave it open/,
    ],
    [
      'a weighed pot',
      weighed,
      'Batch 1: nothing to do but wait',
      /09:42, 1 h 42 min left/,
      /Leave the stirrer on.*09:42/,
    ],
    [
      'a stirrer that stands',
      [...weighed, 'stop 1'],
      'Batch 1: turn the stirrer on',
      /No clock/,
      /Do not filter or coat/,
    ],
    ['a part meanwhile', [...weighed, 'part rail-2'], 'rail-2: prepare the surface', /No clock/, /bare hands/],
    ['a stirred pot', [...weighed, 'wait 103m'], 'Batch 1: filter it', /Pot life ends: 12:33/, /before it is filtered/],
    ['a pot in use', inUse, 'Batch 1: coat the parts', /Pot life ends/, /after 12:33, however thin/],
    ['a coat', coated, 'Batch 1: coat what else waits', /Pot life ends/, /after 12:33/],
    ['a pot past its life', [...inUse, 'wait 3h'], 'Batch 1: empty what is left', /No clock/, /coat from it, thin it/],
    ['a brush', [...coated, 'empty 1 0g'], 'Batch 1: flush the gear', /No clock/, /set in the gear/],
    [
      'flash-off',
      inOven.slice(0, -3),
      'impeller-7: nothing to do but wait',
      /Flash-off, least until: 09:53/,
      /before 09:53/,
    ],
    ['a film to touch', inOven.slice(0, -2), 'impeller-7: touch the film', /most until: 09:58/, /stand past 09:58/],
    ['a dry film', inOven.slice(0, -1), 'impeller-7: put it into the oven', /most until: 09:58/, /stand past 09:58/],
    ['a part in the oven', inOven, 'impeller-7: read the part', /Cure time given at/, /end its cure/],
    ['a warm part', warm, 'impeller-7: nothing to do but wait', /Cure time given at: 10:55/, /end its cure/],
    ['a cure that is given', given, 'impeller-7: take it out', /Cure time given at/, /gloves for heat/],
    [
      'a part that is out',
      [...given, 'out impeller-7'],
      'impeller-7: release',
      /No clock|look/,
      /before it is released/,
    ],
    ['an alarm', [...weighed, 'fire'], 'An alarm is on: stay out', /No clock/, /before a lead says/],
  ])('given %s, then one step, how long, one thing not to do', async (_, lines, step, lasts, never) => {
    const told = await asked(lines);
    expect(told.lines[0]).toContain(step.replace('release', 'look it over'));
    expect(told.lines[1]).toMatch(lasts);
    expect(told.lines[2]).toMatch(never);
  });

  it('given a crew that keeps no record of its cans, once it has mixed, then it is asked for none', async () => {
    expect(
      (await asked([...coated, 'empty 1 0g', 'flush 1 brush', 'wait 20m', 'dry impeller-7', 'cure impeller-7 room']))
        .lines[0],
    ).not.toContain('label');
  });

  it('given a dry film, then what the oven must do before it is heated is told before the part is in it', async () => {
    const { say } = await talkAfter(...inOven.slice(0, -2));
    expect((await say('dry impeller-7')).text).toContain('before the oven is heated its fan blows');
    expect((await say('what now')).text).toContain('before the oven is heated its fan blows');
  });

  it('given a part that was prepared, then it is told so until its coat', async () => {
    const { say } = await talkAfter('part rail-2');
    expect((await say('now')).card.lines).toContain('rail-2: bare');
    await say('prep rail-2 wiping');
    expect((await say('now')).card.lines).toContain('rail-2: prepared, not coated');
    expect((await say('where is rail-2')).card.title).toContain('prepared, not coated');
  });

  it('given a bare question mark, then it is asked the same', async () => {
    expect(await asked(mixed, '?')).toEqual(await asked(mixed));
    expect(await asked(mixed, '???')).toEqual(await asked(mixed));
  });

  it('given Spanish, then in Spanish', async () => {
    const { say } = await talkAfter(...mixed, 'set language es');
    expect((await say('qué toca')).card.lines).toEqual([
      'Mezcla 1: abra una lata de Parte A.',
      'Ningún reloj corre: tómese el tiempo que haga falta.',
      'No la destape sin el gas a mano.',
    ]);
  });

  it('given the step is a lead’s, then whoever is none is told whose it is', async () => {
    const { say } = await talkAfter(...given, 'hold impeller-7 dust', 'out impeller-7');
    expect((await say('@kari: what now')).card.lines.at(-1)).toBe('That is for omar, rosa to say.');
    expect((await say('what now')).card.lines).toHaveLength(3);
  });

  it('given a brief that somebody has not read, then they read it first, and nobody else is told so', async () => {
    const { say } = await talkAfter(...inUse, '@rosa: set booth booth-2 4m2', '@rosa: brief 1 in booth-2 spray kari');
    expect((await say('@kari: what now')).card.lines[0]).toBe('Session 2: booth-2: read the brief, then say so.');
    expect((await say('@lia: what now')).card.lines[0]).not.toContain('read the brief, then');
  });
});

describe('the last line of a card', () => {
  it.each([
    ['air 24C 48%', [], 'Next: read me the label of a can of Part A, sealed or open.'],
    ['mix 2.4kg', [read], 'Next: open a can of Part A.'],
    ['weigh 1 1201g 1198g', mixed, 'Leave the stirrer on: do not filter or coat before 09:42.'],
    ['filter 1', inUse.slice(0, -1), 'Next: coat the parts.'],
    ['dry impeller-7', inOven.slice(0, -2), 'Next: put it into the oven.'],
    ['temp impeller-7 91C', inOven, 'Do not end its cure before the time is given.'],
  ])('given "%s", then it leads on', async (line, before, leads) => {
    const { say } = await talkAfter(...before);
    const { card, text } = await say(line);
    expect(card.leads).toBe(leads);
    expect(text).toContain(leads);
  });

  it('given an alarm is on, then no card leads on in the work', async () => {
    const { say } = await talkAfter(...mixed, 'fire in booth');
    const { card } = await say('weigh 1 1201g 1198g already');
    expect(card.leads).toBe('Next: An alarm is on: stay out, and do what its card says.');
  });

  it('given a cry, then its card says what to do now, and nothing of the work', async () => {
    const { say } = await talkAfter(...mixed);
    expect((await say('fire')).card.leads).toBeUndefined();
  });
});
