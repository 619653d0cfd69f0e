// A reading on the part that says more heat than it or its film bears holds it; one that is far colder than the one before is
// asked about. The sheet's 110 degC in the oven, and all other figures, are invented.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const filtered = ['08:00 air 20C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '10:30 filter 1 already'];
const inOven = [
  ...[...filtered, '10:35 part hub-1 max 120C', '10:35 part lid-1 max 95C'],
  ...['10:35 coat hub-1 lid-1 1 brush', '10:46 dry hub-1 lid-1', '11:00 cure hub-1 lid-1 oven 90C'],
];

describe('too hot', () => {
  it('given 165 degC on a part that bears 120, then it is recorded, a deviation, and holds it', async () => {
    const shift = await given(inOven);
    expect(await shift.when('11:30 temp hub-1 165C')).toEqual({ recorded: ['PartTemperatureRead', 'PartHeld'] });
    expect(await shift.deviations()).toEqual(['PartTemperatureRead 11:30 overheated']);
    expect((await shift.shop()).parts.get('hub-1')?.verdict).toMatchObject({
      because: ['overheated'],
      failed: [{ of: 'heat', celsius: 165, highestCelsius: 110 }],
    });
  });

  it('given the lower of what the part and the sheet bear, then on it is within, over it is not', async () => {
    const shift = await given(inOven);
    expect(await shift.when('11:30 temp hub-1 110C')).toEqual({ recorded: ['PartTemperatureRead'] });
    expect(await shift.when('11:31 temp hub-1 110.5C')).toEqual({ recorded: ['PartTemperatureRead', 'PartHeld'] });
    expect(await shift.when('11:31 temp lid-1 95C')).toEqual({ recorded: ['PartTemperatureRead'] });
    expect(await shift.when('11:32 temp lid-1 96C')).toEqual({ recorded: ['PartTemperatureRead', 'PartHeld'] });
  });

  it('given it is told afterwards that it bears less, then it is held as it would have been', async () => {
    const shift = await given([...inOven, '11:30 temp hub-1 92C']);
    expect(await shift.when('11:40 part hub-1 max 80C')).toEqual({ recorded: ['PartReceived', 'PartHeld'] });
  });

  it('given a reading for a load, then each part of it is held by what it bears itself', async () => {
    const shift = await given([
      ...[...inOven.slice(0, -1), '10:50 part hub-1 steel 10mm', '10:50 part lid-1 steel 3mm'],
      ...['11:00 cure hub-1 lid-1 oven 90C', '11:30 temp 97C'],
    ]);
    const { parts } = await shift.shop();
    expect(parts.get('hub-1')?.verdict).toBeUndefined();
    expect(parts.get('lid-1')?.verdict).toMatchObject({ is: 'held', because: ['overheated'] });
  });
});

describe('far from the reading before', () => {
  it('given 9 degC after 88, then it is asked; told as it was, it stands', async () => {
    const shift = await given([...inOven, '11:30 temp hub-1 88C']);
    expect(await shift.when('11:40 temp hub-1 9C')).toEqual({ unclear: 'far-reading' });
    expect(shift.asked()).toMatchObject({ part: 'hub-1', celsius: 9, before: { celsius: 88 } });
    expect(await shift.when('11:40 temp hub-1 9C already')).toEqual({ recorded: ['PartTemperatureRead'] });
  });

  it.each([
    ['it is near enough', ['11:30 temp hub-1 88C'], '11:40 temp hub-1 58C'],
    ['the door was open since', ['11:30 temp hub-1 88C', '11:35 door hub-1 5m'], '11:40 temp hub-1 30C'],
    ['it is out', ['11:30 temp hub-1 88C', '11:35 out hub-1 already'], '11:40 temp hub-1 30C'],
    ['it is the first in this oven', ['10:59 temp hub-1 88C already'], '11:40 temp hub-1 30C'],
  ])('given %s, then nothing is asked', async (_, lines, act) => {
    const [first = '', ...rest] = lines;
    const before = first.startsWith('10:59')
      ? [...inOven.slice(0, -1), first, ...inOven.slice(-1)]
      : [...inOven, first];
    expect(await (await given([...before, ...rest])).when(act)).toEqual({ recorded: ['PartTemperatureRead'] });
  });
});
