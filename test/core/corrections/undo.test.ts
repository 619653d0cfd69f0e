// Undo: one's own last act of the last 8 hours, until somebody else goes on from it; where anything rests on it, asked first.

import { describe, expect, it } from 'vitest';
import { demoCrew, given } from '../given.ts';

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
    const shift = await given([...weighed, '08:05 @omar: surface 21C']);
    await shift.when('08:06 undo');
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
      '09:50 coat new impeller-7 1 brush',
    ]);
    expect(await shift.when('09:51 @omar: undo')).toEqual({ unclear: 'undo-rests' });
  });

  it('given a coat is undone, then the part is bare, the pot has one coat less, and neither bell stands', async () => {
    const shift = await given([...weighed, '09:42 filter 1', '09:50 coat new impeller-7 1 brush', '09:51 undo']);
    expect((await shift.shop()).batches.get(1)?.coats).toEqual([]);
    expect(Object.keys(await shift.plan()).filter((key) => key.startsWith('part/'))).toEqual([]);
    expect(await shift.when('09:55 coat new impeller-7 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });
});

describe('undo by the tap of a card', () => {
  it('given something else was said since, then the tap takes back neither', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:05 surface 21C']);
    expect(await shift.when('08:06 undo entry 2')).toEqual({ unclear: 'undo-not-last' });
    expect((await shift.shop()).batches.size).toBe(1);
    expect((await shift.shop()).places.get('room')?.surfaces).toHaveLength(1);
  });

  it('given another person presses it, then it takes back neither theirs nor that', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:05 @omar: surface 21C']);
    expect(await shift.when('08:06 @omar: undo entry 2')).toEqual({ unclear: 'undo-not-last' });
    expect((await shift.shop()).places.get('room')?.surfaces).toHaveLength(1);
  });

  it('given it is pressed twice, then the second takes back nothing more', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:01 undo entry 2']);
    expect(await shift.when('08:01 undo entry 2')).toEqual({ unclear: 'undo-not-last' });
    expect((await shift.shop()).places.get('room')?.air).toHaveLength(1);
  });

  it('given a mix that brought its air, then its tap takes both: they were one line', async () => {
    const shift = await given(['08:00 mix 2.4kg 24C 48%']);
    expect(await shift.when('08:01 undo entry 2')).toEqual({ recorded: ['Amended', 'Amended'] });
  });
});

describe('a hold that followed from a correction', () => {
  // Stopped at 9:00 the mix had 60 of 102 minutes.
  const coated = [...weighed, '09:42 stop 1', '09:42 filter 1', '09:50 coat new impeller-7 1 brush'];
  const held = [...coated, '10:00 amend 1 stop at 09:00 clock was wrong'];

  it('given the correction is undone, then its hold goes with it', async () => {
    const shift = await given(held);
    expect((await shift.shop()).parts.get('impeller-7')?.verdict?.is).toBe('held');
    expect(await shift.when('10:01 undo')).toEqual({ recorded: ['Amended', 'Amended'] });
    const { parts, batches } = await shift.shop();
    expect(parts.get('impeller-7')?.verdict).toBeUndefined();
    expect(shift.spoken(batches.get(1)?.stirring.at(-1)?.to ?? shift.time('08:00'))).toBe('09:42');
  });

  it('given it followed from an undo, then a second undo does not lift the hold by itself', async () => {
    // Without the 24 degC of 8:30 the stirring ran at 8 degC: far from enough.
    const cold = await given([
      '08:00 air 24C 48%',
      '08:00 mix 2.4kg',
      '08:00 weigh 1 1201g 1198g',
      '08:05 @omar: air 8C 50%',
      '08:06 air 24C 48%',
      '10:20 @omar: filter 1 already',
      '10:25 @omar: coat new impeller-7 1 brush already',
      '10:30 undo entry 5 despite 99',
    ]);
    expect((await cold.shop()).parts.get('impeller-7')?.verdict?.is).toBe('held');
    await cold.when('10:31 undo');
    expect((await cold.shop()).parts.get('impeller-7')?.verdict?.is).toBe('held');
  });
});

describe('undo of the brief', () => {
  it('given a lead who put it on, then it is not put off by undo: that is the supervisor’s', async () => {
    const shift = await given(['08:00 @omar: set brief on']);
    expect(await shift.when('08:01 @omar: undo')).toEqual({ unclear: 'may-not-settle' });
  });

  it('given a crew that nobody leads, then a slip in a role is taken back by whoever made it', async () => {
    const shift = await given(['08:00 @ola: set role anna lead'], { crew: { ...demoCrew, people: [] } });
    expect(await shift.when('08:01 @ola: undo')).toEqual({ recorded: ['Amended'] });
    expect((await shift.shop()).crew.people).toEqual([]);
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
    const shift = await given([...weighed, '08:05 amend 1 weigh 1301g 1198g a', '08:06 amend 1 weigh 1401g 1198g b']);
    const partA = async () => (await shift.shop()).batches.get(1)?.weighing?.partAGrams;
    const seen = [await partA()];
    for (const minute of ['07', '08', '09']) {
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
