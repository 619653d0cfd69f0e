// A place that nobody has named is asked about once, the near known ones first; what shops usually call their places is not. A
// monitor's reading is never asked about: it can hurt somebody. Places are invented.

import { describe, expect, it } from 'vitest';
import { given } from './given.ts';

describe('a place that nobody has named', () => {
  it.each(['air 24C 48% in shed', 'surface 22C in shed', 'night 12C in shed', 'air 24C 48% in shed already'])(
    'given "%s", then it is asked about, and nothing is recorded',
    async (line) => {
      const shift = await given([]);
      expect(await shift.when(`08:00 ${line}`)).toEqual({ unclear: 'new-place' });
      expect(await shift.events()).toEqual([]);
    },
  );

  it('given it is said to be new, then it is recorded, and never asked about again', async () => {
    const shift = await given(['08:00 air new 24C 48% in shed', '08:10 air 25C 48% in shed']);
    expect(await shift.when('08:20 night 12C in shed')).toEqual({ recorded: ['LowestRead'] });
  });

  it('given a known one is near, then that stands first', async () => {
    const shift = await given(['08:00 air new 24C 48% in shed', '08:01 air new 24C 48% in bay-2']);
    await shift.when('08:10 air 24C 48% in shedd');
    expect(shift.asked()).toEqual({ code: 'new-place', place: 'shedd', near: ['shed'] });
    await shift.when('08:11 surface 22C in bay2');
    expect(shift.asked()).toEqual({ code: 'new-place', place: 'bay2', near: ['bay-2'] });
  });

  it.each(['air 24C 48% in booth', 'air 24C 48% in booth-2', 'air 24C 48%', 'surface 22C in tank-1', 'lel 2% in shed'])(
    'given "%s", then nobody is asked',
    async (line) => {
      const shift = await given([]);
      expect(await shift.when(`08:00 ${line}`)).toHaveProperty('recorded');
    },
  );

  it('given the crew has set it up, then it is known', async () => {
    const shift = await given(['08:00 @omar: set booth shed 4m2']);
    expect(await shift.when('08:10 air 24C 48% in shed')).toEqual({ recorded: ['AirRead'] });
  });
});
