// People and shifts: who is there, and whose bells they are. The crew is invented: kari and ola spray, omar and lena lead,
// rosa supervises; ten minutes unanswered and a critical bell goes on.

import { describe, expect, it } from 'vitest';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { minutes } from '../../../core/units.ts';
import { demoCrew, given, type Shift } from '../given.ts';

const crew: CrewFile = {
  ...demoCrew,
  people: [
    ...demoCrew.people,
    { name: 'ola', role: 'crew', language: 'en', units: 'metric' },
    { name: 'lena', role: 'lead', language: 'en', units: 'metric' },
  ],
  escalationMinutes: minutes(10),
};
const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const stirDone = 'batch/1/stir-done';

const rungUnder = (shift: Shift, key: string) =>
  shift.rung().flatMap((ring) => (ring.key.startsWith(key) ? [`${ring.at} ${ring.key} ${ring.to.join(' ')}`] : []));

describe('a handover', () => {
  it('given the lead hands over, then both are pinged until the next takes over by name', async () => {
    const shift = await given([...weighed, '09:00 @omar: handover lena'], { crew });
    await shift.until('09:42');
    expect(rungUnder(shift, stirDone)).toEqual(['09:42 batch/1/stir-done kari lena']);
    await shift.when('09:43 @lena: take over');
    await shift.until('10:30');
    expect(rungUnder(shift, 'batch/1/pot-half')).toEqual(['10:24 batch/1/pot-half lena']);
  });

  it('given a name typed without its accent, then it is the person’s all the same', async () => {
    const people = [...crew.people, { name: 'Lía', role: 'lead', language: 'es', units: 'metric' } as const];
    const shift = await given([...weighed, '09:00 @omar: handover lia'], { crew: { ...crew, people } });
    await shift.until('09:42');
    expect(rungUnder(shift, stirDone)).toEqual(['09:42 batch/1/stir-done kari Lía']);
  });

  it('given a batch opened after it, then its bells are its own people’s', async () => {
    const shift = await given(
      [
        ...weighed,
        '09:00 @omar: handover lena',
        '09:01 @lena: take over',
        '09:05 @ola: mix 1kg',
        '09:05 @ola: weigh 2 500g 500g',
      ],
      { crew },
    );
    await shift.until('10:50');
    expect(rungUnder(shift, 'batch/2/stir-done')[0]).toBe('10:47 batch/2/stir-done ola');
    expect(rungUnder(shift, stirDone)[0]).toBe('09:42 batch/1/stir-done lena');
  });

  it('given one of the crew hands over, then only what rings for them moves', async () => {
    const shift = await given(
      [
        ...weighed,
        '08:10 @ola: mix 1kg',
        '08:10 @ola: weigh 2 500g 500g',
        '09:00 handover ola',
        '09:01 @ola: take over',
      ],
      { crew },
    );
    await shift.until('10:00');
    expect(rungUnder(shift, 'batch/')).toContain('09:42 batch/1/stir-done ola');
    const second = await given(
      [
        ...weighed,
        '08:10 @ola: mix 1kg',
        '08:10 @ola: weigh 2 500g 500g',
        '09:00 handover lena',
        '09:01 @lena: take over',
      ],
      { crew },
    );
    await second.until('10:00');
    expect(rungUnder(second, 'batch/')).toContain('09:52 batch/2/stir-done ola');
  });

  it('given nobody takes over, then its bell goes on to the leads and the supervisor', async () => {
    const shift = await given(['08:00 @omar: handover lena'], { crew });
    await shift.until('08:45');
    expect(rungUnder(shift, 'crew/handover')).toEqual([
      '08:00 crew/handover lena',
      '08:10 crew/handover/2 omar lena',
      '08:20 crew/handover/3 rosa',
    ]);
  });

  it('given it is taken over, then its bell is silent', async () => {
    const shift = await given(['08:00 @omar: handover lena', '08:05 @lena: take over'], { crew });
    expect(await shift.plan()).not.toHaveProperty(['crew/handover/2']);
  });

  it('given a lead has gone, then a critical bell goes on to the one who is there', async () => {
    const shift = await given(
      [
        ...weighed,
        '08:10 @omar: handover lena',
        '08:11 @lena: take over',
        '08:20 @ola: mix 1kg',
        '08:20 @ola: weigh 2 500g 500g',
      ],
      { crew },
    );
    await shift.until('10:30');
    expect(rungUnder(shift, 'batch/2/stir-done')).toEqual([
      '10:02 batch/2/stir-done ola',
      '10:12 batch/2/stir-done/2 lena',
      '10:22 batch/2/stir-done/3 rosa',
    ]);
  });

  it.each([
    ['@omar: handover zoe', 'no-such-person'],
    ['@omar: handover omar', 'handover-to-self'],
    ['@lena: take over', 'nothing-to-take-over'],
  ])('given "%s", then it is asked about: %s', async (line, code) => {
    expect(await (await given([], { crew })).when(`08:00 ${line}`)).toEqual({ unclear: code });
  });

  it('given it waits for lena, then nobody else takes it over', async () => {
    const shift = await given(['08:00 @omar: handover lena'], { crew });
    expect(await shift.when('08:01 take over')).toEqual({ unclear: 'nothing-to-take-over' });
  });

  it('given it is undone, then the bells are where they were', async () => {
    const shift = await given([...weighed, '09:00 @omar: handover lena', '09:01 @omar: undo'], { crew });
    await shift.until('09:42');
    expect(rungUnder(shift, stirDone)).toEqual(['09:42 batch/1/stir-done kari']);
  });
});

describe('a shift', () => {
  it('given one of two leads is on shift, then a critical bell goes on to that one', async () => {
    const shift = await given([...weighed, '08:05 @lena: shift on'], { crew });
    await shift.until('09:55');
    expect(rungUnder(shift, stirDone)).toEqual(['09:42 batch/1/stir-done kari', '09:52 batch/1/stir-done/2 lena']);
  });

  it('given nobody has said so, then it goes to every lead', async () => {
    const shift = await given([...weighed, '08:05 @lena: shift on', '08:06 @lena: shift off'], { crew });
    await shift.until('09:55');
    expect(rungUnder(shift, stirDone)[1]).toBe('09:52 batch/1/stir-done/2 omar lena');
  });
});
