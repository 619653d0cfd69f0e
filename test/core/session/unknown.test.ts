// What nobody knows before spraying, or has run out: it objects before the act, is marked where it has happened, and whoever
// supervises may go on knowing it for this session. Sheets and people invented.

import { describe, expect, it } from 'vitest';
import { solvents } from '../../../core/calc/solvents.ts';
import { isConfined } from '../../../core/session/confined-places.ts';
import { given } from '../given.ts';
import { shelfWith, sprayOf } from './own-sheets.ts';

// Stirred by 9:42 at 24 degC: see batch/pot-life.test.ts.
const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
const booth = '09:43 @omar: set booth 4m2';
const briefed = [...filtered, booth, '09:43 brief 1 in booth spray kari', '09:43 ack'];
const aired = ['09:44 fan on 0.6m/s', '09:44 supplied yes'];

describe('a sheet that says nothing of spraying', () => {
  const shelf = shelfWith({ spray: undefined });

  it('given a fan that nobody measured and no supplied air, then neither passes: vapour burns by any sheet', async () => {
    const shift = await given([...briefed, '09:44 fan on', '09:44 supplied no'], { shelf });
    expect(await shift.when('09:45 spray on')).toEqual({
      objected: expect.arrayContaining(['fan-not-measured', 'air-not-summed']),
    });
    expect(shift.objections()[0]).toEqual({ code: 'fan-not-measured', missing: 'velocity', place: 'booth' });
  });

  it('given a fan that gives its least, then it is still asked which solvents, and a supervisor goes on knowing it', async () => {
    const shift = await given([...briefed, ...aired], { shelf });
    expect(await shift.when('09:45 spray on')).toEqual({ objected: ['air-not-summed'] });
    expect(shift.objections()).toMatchObject([{ sheet: 'Demo Clear', because: { is: 'sheet-silent' } }]);
    expect(await shift.when('09:46 @omar: spray on permit asked the maker')).toEqual({ unclear: 'may-not-permit' });
    await shift.when('09:46 @rosa: spray on permit water-borne, section 9 read');
    await shift.when('09:50 spray off');
    // Once a session.
    expect(await shift.when('09:55 spray on')).toEqual({ recorded: ['SprayStarted'] });
    expect(await shift.deviations()).toEqual([
      'SprayStarted 09:46 air-not-summed permitted: water-borne, section 9 read',
    ]);
  });
});

describe('a solvent of which no explosive limit was read', () => {
  const [without] =
    Object.entries(solvents).find(([, { lowerExplosiveLimits }]) => lowerExplosiveLimits.length === 0) ?? [];

  it('given it on the sheet, then no sum against fire is taken for one', async () => {
    const shelf = shelfWith({ spray: sprayOf(without ?? '') });
    const shift = await given([...briefed, ...aired], { shelf });
    expect(await shift.when('09:45 spray on')).toEqual({ objected: ['air-not-summed'] });
    expect(shift.objections()).toMatchObject([{ because: { is: 'without-limit', solvents: [without] } }]);
  });
});

describe('what nobody has said', () => {
  it('given neither a batch nor how much an hour, then there is no sum, and it is asked', async () => {
    const lines = ['08:00 @omar: set booth 4m2', '08:00 brief in booth spray kari', '08:00 ack', '08:01 fan on 0.6m/s'];
    const shift = await given([...lines, '08:01 supplied yes']);
    expect(await shift.when('08:02 spray on')).toEqual({ objected: ['air-not-summed'] });
    expect(shift.objections()).toMatchObject([{ because: { is: 'rate-unknown' } }]);
  });

  it('given supplied air and nobody who speaks of the fan, then it is asked: vapour burns all the same', async () => {
    const shift = await given([...briefed, '09:44 supplied yes']);
    expect(await shift.when('09:45 spray on')).toEqual({ objected: ['fan-not-measured'] });
    expect(shift.objections()).toMatchObject([{ missing: 'extraction' }]);
  });
});

describe('a date that has run out', () => {
  it('given the medical of who stays near, then it objects; moved out, it does not', async () => {
    const lines = [
      ...filtered,
      booth,
      '09:43 @omar: medical rosa 2026-03-01',
      '09:43 @omar: medical kari 2027-03-01',
      '09:43 brief 1 in booth spray kari near rosa',
    ];
    const shift = await given([...lines, '09:43 ack', '09:43 @rosa: ack', ...aired]);
    expect(await shift.when('09:45 spray on')).toEqual({ objected: ['not-qualified'] });
    expect(shift.objections()).toEqual([
      { code: 'not-qualified', ranOut: [{ person: 'rosa', what: 'medical', until: '2026-03-01' }] },
    ]);
    await shift.when('09:46 near rosa out');
    expect(await shift.when('09:47 spray on')).toEqual({ recorded: ['SprayStarted'] });
  });

  it('given its last day, then it serves', async () => {
    const shift = await given([...briefed, ...aired, '09:44 @omar: fit kari 2026-03-02']);
    expect(await shift.when('09:45 spray on')).toEqual({ recorded: ['SprayStarted'] });
  });

  it('given that it is renewed afterwards, then the day on which it had run out stays marked', async () => {
    const shift = await given([
      ...briefed,
      ...aired,
      '09:44 @omar: training kari 2026-03-01',
      '09:45 spray on already',
    ]);
    await shift.when('09:50 @omar: training kari 2027-03-01');
    expect(await shift.deviations()).toEqual(['SprayStarted 09:45 not-qualified']);
  });
});

describe('a place whose name means that people are closed in', () => {
  const inside = (place: string) => [
    ...[...filtered, `09:43 @omar: set booth ${place} 4m2`, `09:43 brief 1 in ${place} spray kari`, '09:43 ack'],
    ...aired,
  ];

  it.each(['tank-3', 'pit', 'cellar', 'silo-2', 'vessel-1', 'duct', 'manhole', 'trench', 'hopper', 'foso', 'sótano'])(
    'given a brief in %s, then it objects and nobody lifts it',
    async (place) => {
      const shift = await given(inside(place));
      expect(await shift.when('09:45 spray on')).toEqual({ objected: ['confined-place'] });
      expect(await shift.when('09:45 @rosa: spray on permit PERMIT-1')).toEqual({ unclear: 'may-not-permit' });
      await shift.when('09:46 spray on already');
      expect(await shift.deviations()).toEqual(['SprayStarted 09:46 confined-place']);
    },
  );

  it('given "sprayed from outside, nobody in it", then it starts, and the next session asks again', async () => {
    const shift = await given([...inside('cellar'), '09:45 sprayed from outside, nobody in it']);
    expect(await shift.when('09:46 spray on')).toEqual({ recorded: ['SprayStarted'] });
    await shift.when('09:50 spray off');
    await shift.when('09:51 close already');
    for (const line of ['09:52 brief 1 in cellar spray kari', '09:52 ack', '09:52 fan on 0.6m/s', '09:52 supplied yes'])
      await shift.when(line);
    expect(await shift.when('09:53 spray on')).toEqual({ objected: ['confined-place'] });
  });

  it('given that the name is only a name, then a lead keeps it, and another of its kind is asked about', async () => {
    const shift = await given(inside('tank-3'));
    expect(await shift.when('09:45 set confined tank-3 off')).toEqual({ unclear: 'may-not-settle' });
    await shift.when('09:45 @omar: set confined tank-3 off');
    expect(await shift.when('09:46 spray on')).toEqual({ recorded: ['SprayStarted'] });
    const { confined } = (await shift.shop()).crew.spray;
    expect([isConfined('tank-3', confined), isConfined('tank-4', confined)]).toEqual([false, true]);
  });

  it('given names that only hold such a word within another, then they are no such place', () => {
    const open = ['booth', 'booth-2', 'hall', 'room', 'wellington', 'pitch-2', 'vaulting', 'shop', 'cabina'];
    expect(open.filter((place) => isConfined(place, new Map()))).toEqual([]);
    expect(isConfined('bay-4', new Map([['bay-4', true]]))).toBe(true);
  });
});
