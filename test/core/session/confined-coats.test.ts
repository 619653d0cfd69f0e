// A coat in a tank, a pit or their like is asked about however it goes on: brushed, rolled, dipped, poured or sprayed; each time anew.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];

describe('a coat in a confined place', () => {
  it.each([
    ...['brush', 'roller', 'dip', 'flow'].flatMap((method) => [
      `coat new lid-9 1 ${method} in tank-9`,
      `coat new lid-9 1 ${method} in the pit`,
      `coat new lid-9 1 ${method} in cellar-2`,
      `coat new lid-9 1 ${method} in silo`,
    ]),
    ...['coat new tank-9 1 brush', 'coat new tank-9 1 roller', 'coat new vessel-2 1 brush in tank-9'],
  ])('given "%s", then it is objected to, and nobody lifts it', async (line) => {
    const shift = await given(filtered);
    expect(await shift.when(`09:43 ${line}`)).toEqual({ objected: ['confined-place'] });
    expect(await shift.when(`09:43 @omar: ${line} permit it is aired`)).toEqual({ unclear: 'may-not-permit' });
  });

  it.each(['coat new tank-9 1 brush in tank-9 from-outside', 'coat new lid-9 1 dip in tank-9 from-outside'])(
    'given "%s", then it goes on, and the next one is asked about again',
    async (line) => {
      const shift = await given(filtered);
      expect(await shift.when(`09:43 ${line}`)).not.toHaveProperty('objected');
      expect(await shift.when('09:44 coat new lid-10 1 brush in tank-9')).toEqual({ objected: ['confined-place'] });
    },
  );

  it.each([
    'coat new lid-9 1 brush',
    'coat new tank-9 1 dip',
    'coat new tank-9 1 flow',
    'coat new lid-9 1 brush in bay-2',
  ])('given "%s", then nothing is asked', async (line) => {
    const shift = await given(filtered);
    expect(await shift.when(`09:43 ${line}`)).not.toHaveProperty('objected');
  });

  it('given a lead said that tank-9 is only a name, then nothing is asked', async () => {
    const shift = await given([...filtered, '09:42 @omar: set confined tank-9 off']);
    expect(await shift.when('09:43 coat new tank-9 1 brush in tank-9')).not.toHaveProperty('objected');
  });

  it('given it had happened, then it is recorded against it', async () => {
    const shift = await given([...filtered, '09:43 coat new lid-9 1 brush in tank-9 already']);
    expect(await shift.deviations()).toContain('CoatApplied 09:43 confined-place');
  });
});
