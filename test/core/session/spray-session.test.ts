// A spray session from its brief to its closing. Spell, recheck, ventilation and solvents of the demo sheet are invented;
// acetone, then isopropyl alcohol of 99 % is common practice, no source.

import { describe, expect, it } from 'vitest';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { demoCrew, given, type Shift } from '../given.ts';

/** Two sprayers, one who moves out, one who stands outside; invented. */
const crew: CrewFile = {
  ...demoCrew,
  people: [
    ...demoCrew.people,
    { name: 'noor', role: 'crew', language: 'en', units: 'metric' },
    { name: 'lia', role: 'crew', language: 'en', units: 'metric' },
  ],
};
// Stirred by 9:42 at 24 degC: see batch/pot-life.test.ts.
const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
const booth = '09:43 @omar: set booth booth-2 4m2';
const said = ['09:50 near lia out', '09:50 fan on 0.6m/s', '09:50 supplied yes', '09:51 ack', '09:52 @omar: ack noor'];
const briefed = [
  ...filtered,
  booth,
  '09:44 @omar: brief 1 in booth-2 spray kari noor near lia outside omar 1.2kg',
  ...said,
];
const sprayed = [
  ...briefed,
  '10:00 @omar: spray on',
  '10:20 @omar: coat new impeller-7 1 spray',
  '10:21 @omar: spray off',
];

const rungFor = (shift: Shift, name: string) =>
  shift.rung().filter(({ key }) => key.startsWith('session/') && key.includes(`/${name}`));

describe('the brief', () => {
  it('given a brief ahead, then it rings 15 minutes before (common practice, no source) for whom it concerns', async () => {
    const shift = await given(
      [...filtered, booth, '09:44 @omar: brief 1 in booth-2 10:30 spray kari noor near lia outside omar'],
      { crew },
    );
    await shift.until('10:16');
    expect(rungFor(shift, 'brief')).toEqual([
      { at: '10:15', key: 'session/2/brief', to: ['kari', 'noor', 'lia', 'omar'] },
    ]);
  });

  it('given that the crew sets 30 minutes, then it rings as long before', async () => {
    const lines = [...filtered, booth, '09:44 @omar: set brief-ahead 30min', '09:44 brief 1 10:30 spray kari'];
    expect(await (await given(lines, { crew })).plan()).toMatchObject({ 'session/2/brief': '10:00' });
  });

  it('given a session, then its number is of the one series of batches and cans', async () => {
    const shift = await given([...filtered, '09:44 brief 1 spray kari', '09:45 open B lot 8802 5kg'], { crew });
    expect([...(await shift.shop()).sessions.keys()]).toEqual([2]);
    expect([...(await shift.shop()).cans.keys()]).toEqual([3]);
  });

  it('given two sprayers and one who moved out, then each exposed one must have read it, by phone or by a witness', async () => {
    const shift = await given([...filtered, booth, '09:44 @omar: brief 1 in booth-2 spray kari noor near lia'], {
      crew,
    });
    await shift.when('09:50 fan on 0.6m/s');
    await shift.when('09:50 supplied yes');
    await shift.when('09:51 @kari: ack');
    await shift.when('09:52 @omar: ack noor');
    expect(await shift.when('09:53 @omar: spray on')).toEqual({ objected: ['brief-not-acknowledged'] });
    expect(shift.objections()).toEqual([{ code: 'brief-not-acknowledged', session: 2, people: ['lia'] }]);
    await shift.when('09:54 @omar: near lia out');
    expect(await shift.when('09:55 @omar: spray on')).toEqual({ recorded: ['SprayStarted'] });
    expect((await shift.shop()).sessions.get(2)?.acknowledged).toMatchObject([
      { person: 'kari', witness: undefined },
      { person: 'noor', witness: 'omar' },
    ]);
  });

  it('given somebody who is not on the brief, then nobody acknowledges for them, and a stranger is asked about', async () => {
    const shift = await given([...filtered, '09:44 brief 1 spray kari'], { crew });
    expect(await shift.when('09:45 @lia: ack')).toEqual({ unclear: 'not-exposed' });
    expect(await shift.when('09:46 near nora stays')).toEqual({ unclear: 'no-such-person' });
    expect(await shift.when('09:47 near Lia stays')).toEqual({ recorded: ['PeoplePlaced'] });
  });

  it('given work inside a vessel, then nobody lifts it: none of this serves there', async () => {
    const shift = await given([...filtered, '09:44 brief 1 spray kari vessel', '09:45 ack', '09:45 supplied yes'], {
      crew,
    });
    await shift.when('09:45 fan no');
    expect(await shift.when('09:46 @rosa: spray on permit VA-1')).toEqual({ unclear: 'may-not-permit' });
  });
});

describe('a brief lapses', () => {
  it('given a person who comes to stay, then the next coat waits until they have read it', async () => {
    const shift = await given([...briefed, '10:00 @omar: spray on', '10:10 @omar: near lia stays'], { crew });
    expect(await shift.when('10:20 @omar: coat new impeller-7 1 spray')).toEqual({
      objected: ['brief-not-acknowledged'],
    });
    await shift.when('10:20 @lia: ack');
    expect(await shift.when('10:21 @omar: coat new impeller-7 1 spray')).toEqual({ recorded: ['CoatApplied'] });
  });

  it.each([
    [
      'another batch',
      ['10:00 @omar: mix 2.4kg', '10:00 weigh 3 1200g 1200g', '11:42 filter 3'],
      '11:42 coat new lid-1 3 spray',
      'batch',
    ],
    ['another booth', [], '10:00 spray on in booth-3', 'booth'],
    ['the next day', [], 'Tue 00:01 spray on', 'shift'],
    ['somebody exposed going off shift', ['09:58 shift off'], '10:00 spray on', 'shift'],
    [
      'the end of the longest spell',
      ['10:00 @omar: spray on', '10:30 @omar: spray off'],
      '11:01 @omar: spray on',
      'spell',
    ],
    ['its closing', ['10:00 close 2'], '10:01 @omar: spray on 2', 'closed'],
  ])('given %s, then it no longer serves', async (_, lines, act, because) => {
    const shift = await given([...briefed, ...lines], { crew });
    expect(await shift.when(act)).toMatchObject({ objected: expect.arrayContaining(['brief-lapsed']) });
    expect(shift.objections()).toContainEqual({ code: 'brief-lapsed', session: 2, because });
  });

  it('given the last minute of the longest spell, then it serves', async () => {
    const shift = await given([...briefed, '10:00 @omar: spray on'], { crew });
    expect(await shift.when('11:00 @omar: coat new impeller-7 1 spray')).toEqual({ recorded: ['CoatApplied'] });
  });
});

describe('spraying without a brief', () => {
  it('given a crew that never briefed, then it is objected to as with any other, and a deviation where it happened', async () => {
    const shift = await given(filtered, { crew });
    expect(await shift.when('09:45 coat new impeller-7 1 spray')).toEqual({ objected: ['no-brief'] });
    await shift.when('09:46 coat new impeller-7 1 spray already');
    expect(await shift.deviations()).toEqual(['CoatApplied 09:46 no-brief']);
    expect(await shift.when('09:47 coat new lid-1 1 flow')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given a supervisor who excuses the crew from it, then nothing is asked, and a lead may not', async () => {
    const shift = await given(filtered, { crew });
    expect(await shift.when('09:43 @omar: set brief off')).toEqual({ unclear: 'may-not-settle' });
    await shift.when('09:43 @rosa: set brief off');
    expect(await shift.when('09:45 coat new impeller-7 1 spray')).toEqual({ recorded: ['CoatApplied'] });
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a crew that has briefed once, then it is objected to, and a deviation where it happened', async () => {
    const lines = [...filtered, '09:43 brief spray kari', '09:44 close'];
    const shift = await given(lines, { crew });
    expect(await shift.when('09:45 coat new impeller-7 1 spray')).toEqual({ objected: ['no-brief'] });
    await shift.when('09:46 coat new impeller-7 1 spray already');
    expect(await shift.deviations()).toEqual(['CoatApplied 09:46 no-brief']);
    expect(await shift.when('09:47 coat new lid-1 1 flow')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given that the crew puts it off again, then what was before stays a deviation and what follows is none', async () => {
    const shift = await given([...filtered, '09:43 @omar: set brief on', '09:45 coat new lid-1 1 spray already'], {
      crew,
    });
    await shift.when('09:46 @rosa: set brief off');
    await shift.when('09:47 coat new rail-2 1 spray');
    expect(await shift.deviations()).toEqual(['CoatApplied 09:45 no-brief']);
  });
});

describe('while they spray', () => {
  it('given an attendant outside, then spell and recheck ring there and never for who sprays', async () => {
    const shift = await given([...briefed, '10:00 @omar: spray on'], { crew });
    await shift.until('11:00');
    const during = shift.rung().filter(({ key }) => /air-recheck|spell-end/.test(key));
    expect(during).toEqual([
      { at: '10:20', key: 'session/2/air-recheck', to: ['omar'] },
      { at: '10:40', key: 'session/2/air-recheck/2', to: ['omar'] },
      { at: '11:00', key: 'session/2/spell-end', to: ['omar'] },
    ]);
  });

  it('given nobody named outside, then the lead has the timers', async () => {
    const lines = [
      ...filtered,
      booth,
      '09:44 brief 1 in booth-2 spray kari',
      '09:50 fan on 0.6m/s',
      '09:50 supplied yes',
    ];
    const shift = await given([...lines, '09:51 ack', '10:00 spray on'], { crew });
    await shift.until('10:21');
    expect(rungFor(shift, 'air-recheck')).toEqual([{ at: '10:20', key: 'session/2/air-recheck', to: ['omar'] }]);
  });

  it('given a spell that nobody answers, then lead and supervisor hear it after the crew’s ten minutes each', async () => {
    const shift = await given([...briefed, '10:00 @omar: spray on'], { crew });
    await shift.until('11:30');
    expect(rungFor(shift, 'spell-end')).toEqual([
      { at: '11:00', key: 'session/2/spell-end', to: ['omar'] },
      { at: '11:10', key: 'session/2/spell-end/2', to: ['omar'] },
      { at: '11:20', key: 'session/2/spell-end/3', to: ['rosa'] },
    ]);
  });
});

describe('flushing', () => {
  it('given that spraying stops, then the gun rings at once and every five minutes, numbered; the lead after the third', async () => {
    const lines = [...filtered, booth, '09:44 brief 1 in booth-2 spray kari noor outside lia', ...said.slice(1, 4)];
    const shift = await given([...lines, '09:52 ack noor', '10:00 spray on', '10:20 spray off', '10:20 empty 1'], {
      crew,
    });
    await shift.until('10:36');
    expect(rungFor(shift, 'flush')).toEqual([
      { at: '10:20', key: 'session/2/flush/1', to: ['kari', 'noor', 'lia'] },
      { at: '10:25', key: 'session/2/flush/2', to: ['kari', 'noor', 'lia'] },
      { at: '10:30', key: 'session/2/flush/3', to: ['kari', 'noor', 'lia'] },
      { at: '10:35', key: 'session/2/flush/4', to: ['kari', 'noor', 'lia', 'omar'] },
    ]);
    expect(rungFor(shift, 'vessels')[0]).toEqual({
      at: '10:25',
      key: 'session/2/vessels/1',
      to: ['kari', 'noor', 'lia'],
    });
  });

  it('given that the pot is still in use, then its vessels wait until it is empty, or over by its clock', async () => {
    const shift = await given(sprayed, { crew });
    expect(await shift.plan()).toHaveProperty('session/2/vessels/1', '12:33:20');
    await shift.when('10:40 coat new lid-2 1 brush');
    await shift.when('11:00 empty 1');
    await shift.until('11:06');
    expect(rungFor(shift, 'vessels').map(({ at }) => at)).toEqual(['11:00', '11:05']);
    await shift.when('11:20 flush vessels');
    expect((await shift.deviations()).filter((each) => each.startsWith('GearFlushed 11:20'))).toEqual([]);
  });

  it('given two pots, then the vessels ring for the one that is empty first', async () => {
    const second = ['10:22 mix 2.4kg', '10:22 weigh 3 1200g 1200g', '12:04 coat new lid-2 3 spray already'];
    const shift = await given([...sprayed, ...second, '12:05 flush gun'], { crew });
    expect(await shift.plan()).toHaveProperty('session/2/vessels/1', '12:33:20');
    await shift.when('12:10 empty 3');
    expect(rungFor(shift, 'vessels').map(({ at }) => at)).toEqual(['12:10']);
  });

  it('given that somebody only hears it, then it rings on; it ends with the last solvent of the sequence', async () => {
    const shift = await given([...sprayed, '10:22 ok', '10:27 flush gun acetone 300ml'], { crew });
    expect(await shift.plan()).toHaveProperty('session/2/flush/3', '10:31');
    await shift.when('10:28 flush gun ipa 300ml');
    expect(Object.keys(await shift.plan()).filter((key) => key.includes('/flush/'))).toEqual([]);
  });

  it('given isopropyl alcohol before acetone, then that was not the sequence', async () => {
    const shift = await given([...sprayed, '10:22 flush gun ipa 300ml', '10:23 flush gun acetone 300ml'], { crew });
    expect(Object.keys(await shift.plan()).some((key) => key.includes('/flush/'))).toBe(true);
  });

  it('given nobody said that the gun runs, then a coat alone gives the gun as long before it rings', async () => {
    const shift = await given([...briefed, '10:10 @omar: coat new impeller-7 1 spray'], { crew });
    expect(await shift.plan()).toMatchObject({ 'session/2/flush/1': '10:15' });
  });

  it('given a bell that must not move, then snoozing it is refused', async () => {
    const shift = await given(sprayed, { crew });
    expect(await shift.when('10:22 snooze 5m')).toEqual({ unclear: 'not-snoozed' });
  });
});

describe('closing', () => {
  const flushed = [...sprayed, '10:25 flush', '10:26 flush vessels'];

  it('given gun, vessels and rags, then it closes, and the fan rings half an hour later (invented for the demo)', async () => {
    const shift = await given([...flushed, '10:27 rags'], { crew });
    expect(await shift.when('10:28 @omar: close')).toEqual({ recorded: ['SessionClosed'] });
    await shift.until('11:00');
    expect(rungFor(shift, 'fan-off')).toEqual([{ at: '10:58', key: 'session/2/fan-off', to: ['omar'] }]);
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a booth whose four volumes take longer than the sheet’s half hour, then the sum’s minutes count', async () => {
    // 4 x 1200 m3 over 4 m2 x 0.6 m/s = 8640 m3/h: 33 min 20 s.
    const shift = await given([...flushed, '10:27 rags', '10:27 @omar: set booth booth-2 4m2 1200m3'], { crew });
    await shift.when('10:28 @omar: close');
    expect(await shift.plan()).toMatchObject({ 'session/2/fan-off': '11:01:20' });
  });

  it('given a brief under which nobody sprayed, then it closes without more', async () => {
    const shift = await given([...briefed, '10:00 @omar: close'], { crew });
    expect(await shift.plan()).not.toHaveProperty('session/2/fan-off');
  });

  it('given two open sessions, then which is meant is asked', async () => {
    const shift = await given([...briefed, '10:00 brief 1 spray kari'], { crew });
    expect(await shift.when('10:01 close')).toEqual({ unclear: 'which-session' });
    expect(await shift.when('10:01 close 9')).toEqual({ unclear: 'no-such-session' });
  });
});
