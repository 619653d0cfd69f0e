// The fan is switched off while somebody sprays: whoever goes on does so against it, at the coat and when the gun stops.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const spraying = [
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['09:43 @omar: set booth 4m2', '09:43 brief 1 in booth spray kari out omar', '09:44 ack', '09:44 supplied yes'],
  ...['09:44 fan on 0.6m/s', '09:45 spray on'],
];
const ofStop = (deviations: readonly string[]) => deviations.filter((each) => each.startsWith('SprayStopped'));

describe('a fan that is switched off while somebody sprays', () => {
  it('given the gun ran on for ten minutes, then its stop stands against it, and so does a coat', async () => {
    const shift = await given([...spraying, '09:50 fan off']);
    expect(await shift.when('09:52 coat new lid-9 1 spray')).toHaveProperty('objected');
    await shift.when('10:00 spray off');
    expect(ofStop(await shift.deviations())).toEqual(['SprayStopped 10:00 fan-too-weak']);
  });

  it('given it was flushed while it ran, then its stop stands against it too', async () => {
    const shift = await given([...spraying, '09:50 fan off', '10:00 flush gun']);
    expect(ofStop(await shift.deviations())).toEqual(['SprayStopped 10:00 fan-too-weak']);
  });

  it.each([
    ['it was stopped at once', ['09:50 fan off', '09:51 spray off']],
    ['the fan was on again before', ['09:50 fan off', '09:50 fan on 0.6m/s', '10:00 spray off']],
    ['the fan was off only after it', ['09:50 spray off', '09:55 fan off']],
  ])('given %s, then nothing stands against it', async (_, lines) => {
    const shift = await given([...spraying, ...lines]);
    expect(ofStop(await shift.deviations())).toEqual([]);
  });
});
