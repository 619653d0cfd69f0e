// Undo: one's own last act, until a later act rests on it.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1201g 1198g'];

describe('undo', () => {
  it('given a weighing of the wrong batch, when it is undone, then its clocks are gone and the batch waits again', async () => {
    const shift = await given(weighed);
    expect(await shift.when('08:01 undo')).toEqual({ recorded: ['Amended'] });
    expect((await shift.shop()).batches.get(1)?.weighing).toBeUndefined();
    expect(Object.keys(await shift.plan()).filter((key) => key.startsWith('batch/'))).toEqual([]);
  });

  it('given it is undone, then what was taken back still stands in the record, with who and when', async () => {
    const shift = await given([...weighed, '08:01 undo']);
    const events = await shift.events();
    expect(events.map(({ body }) => body.type)).toEqual(['AirRead', 'BatchOpened', 'PartsWeighed', 'Amended']);
    expect(events.at(-1)).toMatchObject({ by: 'kari', body: { amends: 3, to: { kind: 'undone' } } });
  });

  it('given undo after undo, then each takes back the act before', async () => {
    const shift = await given([...weighed, '08:01 undo']);
    expect(await shift.when('08:02 undo')).toEqual({ recorded: ['Amended'] });
    expect((await shift.shop()).batches.has(1)).toBe(false);
    expect(await shift.when('08:03 undo')).toEqual({ recorded: ['Amended'] });
    expect((await shift.shop()).places.get('room')?.air).toEqual([]);
    expect(await shift.when('08:04 undo')).toEqual({ unclear: 'nothing-to-undo' });
  });

  it('given a mix that brought its air, when it is undone, then both go: they were one line', async () => {
    const shift = await given(['08:00 mix 2.4kg 24C 48%']);
    expect(await shift.when('08:01 undo')).toEqual({ recorded: ['Amended', 'Amended'] });
    expect((await shift.shop()).batches.size).toBe(0);
  });

  it('given a batch was undone, then its number is not given again', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:01 undo', '08:02 mix 2.4kg']);
    expect([...(await shift.shop()).batches.keys()]).toEqual([2]);
  });

  it("given somebody else's act came after, then one's own last is meant", async () => {
    const shift = await given([...weighed, '08:10 @omar: surface 21C']);
    await shift.when('08:11 undo');
    expect((await shift.shop()).batches.get(1)?.weighing).toBeUndefined();
    expect((await shift.shop()).places.get('room')?.surfaces).toHaveLength(1);
  });

  it('given somebody has gone on from it, then it is refused, and says who', async () => {
    const shift = await given([...weighed, '08:10 @omar: stop 1']);
    expect(await shift.when('08:11 undo')).toEqual({ unclear: 'undo-rests' });
    expect((await shift.shop()).batches.get(1)?.weighing).toBeDefined();
  });

  it('given a coat of another was put on from the batch, then the mix cannot be undone', async () => {
    const shift = await given([
      '08:00 air 24C 48%',
      '08:00 @omar: mix 2.4kg',
      '08:00 weigh 1 1201g 1198g',
      '09:42 filter 1',
      '09:50 coat new impeller-7 1 spray',
    ]);
    expect(await shift.when('09:51 @omar: undo')).toEqual({ unclear: 'undo-rests' });
  });

  it('given a coat is undone, then the part is bare, the pot has one coat less, and neither bell stands', async () => {
    const shift = await given([...weighed, '09:42 filter 1', '09:50 coat new impeller-7 1 spray', '09:51 undo']);
    expect((await shift.shop()).batches.get(1)?.coats).toEqual([]);
    expect(Object.keys(await shift.plan()).filter((key) => key.startsWith('part/'))).toEqual([]);
    expect(await shift.when('09:55 coat new impeller-7 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });
});

describe('undo of an amendment', () => {
  it('given a good weighing was amended by mistake, when it is undone, then the first figures stand, and the clocks run on', async () => {
    const shift = await given([...weighed, '08:10 amend 1 weigh 1301g 1198g wrong batch', '08:11 undo']);
    const batch = (await shift.shop()).batches.get(1);
    expect(batch?.weighing).toMatchObject({ partAGrams: 1201, partBGrams: 1198 });
    expect(await shift.plan()).toMatchObject({ 'batch/1/stir-done': '09:42' });
    expect(await shift.deviations()).toEqual([]);
  });

  it('given two amendments, then undo takes back the later, then the earlier, then the act itself', async () => {
    const shift = await given([...weighed, '08:10 amend 1 weigh 1301g 1198g a', '08:11 amend 1 weigh 1401g 1198g b']);
    const partA = async () => (await shift.shop()).batches.get(1)?.weighing?.partAGrams;
    const seen = [await partA()];
    for (const minute of [12, 13, 14]) {
      await shift.when(`08:${minute} undo`);
      seen.push(await partA());
    }
    expect(seen).toEqual([1401, 1301, 1201, undefined]);
  });

  it('given somebody amended it again, then the earlier amendment cannot be undone from below', async () => {
    const shift = await given([
      ...weighed,
      '08:10 amend 1 weigh 1301g 1198g a',
      '08:11 @omar: amend 1 weigh 1201g 1198g checked',
    ]);
    expect(await shift.when('08:12 undo')).toEqual({ unclear: 'undo-rests' });
  });
});
