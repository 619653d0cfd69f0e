// A bell that is put off rings again for who put it off; what runs on by itself cannot be. Ten minutes unanswered and a
// critical bell goes on to the lead, ten more and to the supervisor (the crew's setting).

import { describe, expect, it } from 'vitest';
import { isMovable } from '../../../core/reminders/snooze.ts';
import { given, type Shift } from '../given.ts';

const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g'];
const rung = (shift: Shift, key: string) =>
  shift.rung().flatMap((ring) => (ring.key.startsWith(key) ? [`${ring.at} ${ring.key} ${ring.to.join(' ')}`] : []));

describe('snooze', () => {
  it('given the stir is done, when it is put off by five minutes, then it rings again for the same person', async () => {
    const shift = await given(weighed);
    await shift.until('09:42');
    expect(await shift.when('09:43 snooze 5m')).toEqual({ recorded: ['RingSnoozed'] });
    await shift.until('09:50');
    expect(rung(shift, 'batch/1/stir-done')).toEqual([
      '09:42 batch/1/stir-done kari',
      '09:48 batch/1/stir-done/2 kari',
    ]);
  });

  it('given it was put off and nobody answers, then from there on it goes to the lead and the supervisor', async () => {
    const shift = await given(weighed);
    await shift.until('09:42');
    await shift.when('09:43 snooze 5m');
    await shift.until('10:20');
    expect(rung(shift, 'batch/1/stir-done').slice(1)).toEqual([
      '09:48 batch/1/stir-done/2 kari',
      '09:58 batch/1/stir-done/3 omar',
      '10:08 batch/1/stir-done/4 rosa',
    ]);
  });

  it('given it was answered, then it stays silent', async () => {
    const shift = await given(weighed);
    await shift.until('09:42');
    await shift.when('09:43 snooze 5m');
    await shift.when('09:44 ok');
    await shift.until('10:20');
    expect(rung(shift, 'batch/1/stir-done')).toHaveLength(1);
  });

  it('given what it rang for is done, then it does not ring again', async () => {
    const shift = await given(weighed);
    await shift.until('09:42');
    await shift.when('09:43 snooze 5m');
    await shift.when('09:44 filter 1');
    await shift.until('10:20');
    expect(rung(shift, 'batch/1/stir-done')).toHaveLength(1);
  });

  it('given the pot is at its end, then it is not put off, and goes on as ever', async () => {
    const shift = await given([...weighed, '09:42 filter 1']);
    // 12:03:20, half an hour before the pot's end (see pot-life.test.ts).
    await shift.until('12:04');
    expect(await shift.when('12:05 snooze 5m')).toEqual({ unclear: 'not-snoozed' });
    await shift.until('12:15');
    expect(rung(shift, 'batch/1/pot-margin')[1]).toBe('12:13:20 batch/1/pot-margin/2 omar');
  });

  it('given two bells, then the key says which', async () => {
    const shift = await given([...weighed, '09:42 filter 1', '10:15 coat new impeller-7 1 brush']);
    await shift.until('10:26');
    // Half the pot life at 10:24, flash-off at 10:25.
    await shift.when('10:26 snooze 5m batch/1/pot-half');
    await shift.until('10:32');
    expect(rung(shift, 'batch/1/pot-half')).toHaveLength(2);
    expect(rung(shift, 'part/impeller-7/flash-least')).toHaveLength(1);
  });

  it('given nothing rang for the speaker, then it says so', async () => {
    expect(await (await given(weighed)).when('08:05 snooze 5m')).toEqual({ unclear: 'nothing-rang' });
  });

  it('given the keys, then what runs on by itself is known by its kind', () => {
    expect(['batch/1/pot-end', 'batch/1/pot-margin', 'can/3/blanket', 'session/4/flush'].filter(isMovable)).toEqual([]);
    expect(isMovable('part/impeller-7/cure-done')).toBe(true);
  });
});

describe('escalation', () => {
  it('given a critical bell that nobody answers, then who is pinged at which minute', async () => {
    const shift = await given(weighed);
    await shift.until('10:20');
    expect(rung(shift, 'batch/1/stir-done')).toEqual([
      '09:42 batch/1/stir-done kari',
      '09:52 batch/1/stir-done/2 omar',
      '10:02 batch/1/stir-done/3 rosa',
    ]);
  });

  it('given a flash-off that nobody answers, then it stays with who coated', async () => {
    const shift = await given([...weighed, '09:42 filter 1', '09:45 coat new impeller-7 1 brush']);
    await shift.until('10:20');
    expect(rung(shift, 'part/impeller-7').map((each) => each.split(' ').slice(-1)[0])).toEqual(['kari', 'kari']);
  });
});
