// The steel before its coat: several parts in one line, the part's own surface against the dew point, and the life of a
// prepared surface. Air at 24 degC and 48 % has its dew point at 12.3 degC (psychrometric tables); the least spread of 3 degC
// and the four hours of the demo build's surface are common practice and invented.

import { describe, expect, it } from 'vitest';
import { coatClimate } from '../../../core/coat/coat-climate.ts';
import { given } from '../given.ts';

const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
const built = ['08:00 air 25C 48%', '08:00 mix 6.45kg demo-build', '08:00 weigh 1 5400g 1050g'];
const ends = 'part/rail-2/surface-ends';

describe('parts come in', () => {
  it('given a pasted list, when it is said, then all of its parts are there from one line', async () => {
    const shift = await given([]);
    const heard = await shift.when('08:00 part impeller-7 cast-iron 12mm; part valve-3 steel 6mm 0.2m2');
    expect(heard).toEqual({ recorded: ['PartReceived', 'PartReceived'] });
    const { parts } = await shift.shop();
    expect(parts.get('impeller-7')?.details).toEqual({ metal: 'cast-iron', wallMillimetres: 12 });
    expect(parts.get('valve-3')?.details).toEqual({ metal: 'steel', wallMillimetres: 6, areaSquareMetres: 0.2 });
  });

  it('given one faulty line in a list, then nothing of it is recorded', async () => {
    const shift = await given([]);
    expect(await shift.when('08:00 part impeller-7 12mm; part valve-3 6')).toEqual({ misread: 'unit-missing' });
    expect(await shift.events()).toEqual([]);
  });

  it('given a list, when it is undone, then all of it is taken back', async () => {
    const shift = await given(['08:00 part impeller-7; part valve-3', '08:01 undo']);
    expect([...(await shift.shop()).parts.keys()]).toEqual([]);
  });
});

describe("the part's own surface", () => {
  it('given a part colder than the room says, then its coat is objected to, and another part is not', async () => {
    const shift = await given([...filtered, '09:45 surface new impeller-7 14C']);
    expect(await shift.when('09:50 coat new impeller-7 1 brush')).toEqual({ objected: ['air-outside'] });
    expect(shift.objections()).toMatchObject([{ breaches: [{ limit: 'leastSpreadCelsius', allowed: 3 }] }]);
    expect(await shift.when('09:50 coat new valve-3 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it("given the room's surface is too cold and the part's own is not, then the part's own decides", async () => {
    const shift = await given([...filtered, '09:45 surface 14C', '09:46 surface new impeller-7 19C']);
    expect(await shift.when('09:50 coat new impeller-7 1 brush')).toEqual({ recorded: ['CoatApplied'] });
    expect(await shift.when('09:50 coat new valve-3 1 brush')).toEqual({ objected: ['air-outside'] });
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a reading of five hours ago, then it no longer serves', async () => {
    const shift = await given(['08:00 surface new impeller-7 14C', '08:00 air 24C 48%']);
    const shop = await shift.shop();
    const part = shop.parts.get('impeller-7');
    expect(coatClimate(shop, 'room', part, shift.time('12:00')).surfaceCelsius).toBe(14);
    expect(coatClimate(shop, 'room', part, shift.time('13:00')).surfaceCelsius).toBeUndefined();
  });

  it('given nobody has read any surface, then a coat goes on as ever', async () => {
    const shift = await given(filtered);
    expect(await shift.when('09:50 coat new impeller-7 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given a surface is amended, then what it made of a coat follows', async () => {
    const shift = await given([...filtered, '09:45 surface new impeller-7 19C', '09:50 coat new impeller-7 1 brush']);
    await shift.when('10:00 amend impeller-7 surface 14C misread');
    expect(await shift.deviations()).toEqual(['CoatApplied 09:50 air-outside']);
  });
});

describe('a prepared surface', () => {
  it('given the usual sheet gives it no life, then nothing rings and nothing is objected to', async () => {
    const shift = await given(['04:00 prep new impeller-7 sa2.5', ...filtered]);
    expect(await shift.plan()).not.toHaveProperty(['part/impeller-7/surface-ends']);
    expect(await shift.when('09:50 coat new impeller-7 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given four hours by the sheet of a batch that is mixed later, then it rings half an hour before', async () => {
    const shift = await given(['04:45 prep new rail-2 sa2.5 60um']);
    expect(await shift.plan()).not.toHaveProperty([ends]);
    for (const line of built) await shift.when(line);
    expect(await shift.plan()).toMatchObject({ [ends]: '08:15' });
    expect(await shift.when('08:29 coat new rail-2 1 brush')).toEqual({ recorded: ['CoatApplied'] });
    expect(await shift.plan()).not.toHaveProperty([ends]);
    expect(await shift.deviations()).toEqual([]);
  });

  it('given its life is over, then a coat is objected to; prepared again, it is not', async () => {
    const shift = await given(['04:20 prep new rail-2 sa2.5', ...built]);
    expect(await shift.when('08:20 coat new rail-2 1 brush')).toEqual({ objected: ['surface-life-over'] });
    await shift.when('08:25 prep rail-2 sa2.5');
    expect(await shift.when('08:30 coat new rail-2 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given it was never said to be prepared, then its life is nobody’s question', async () => {
    const shift = await given(built);
    expect(await shift.when('08:40 coat new rail-2 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given a name nearly like a known part, then it is asked about', async () => {
    const shift = await given(['08:00 part impeller-7 steel']);
    expect(await shift.when('08:05 prep impelle-7 sp10')).toEqual({ unclear: 'new-part' });
  });
});
