// What undo leaves alone: what is older than a shift, what something rests on, and a cry that others have acted by.

import { describe, expect, it } from 'vitest';
import { given, type Shift } from '../given.ts';

const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1201g 1198g'];

const ends = async (shift: Shift) => ({ nextSeq: (await shift.events()).length + 1 });

describe('undo of what is older than a shift', () => {
  const emptied = [...weighed, '09:42 filter 1', '10:00 empty 1 1200g'];

  it('given yesterday’s empty pot, when undo is said next morning, then it stays', async () => {
    const shift = await given(emptied);
    const before = await shift.events();
    expect(await shift.when('Tue 05:42 undo')).toEqual({ unclear: 'undo-too-late' });
    expect((await shift.events()).filter(({ body }) => body.type === 'Amended')).toEqual([]);
    expect(before.at(-1)?.body).toMatchObject({ type: 'PotEmptied', leftGrams: 1200 });
  });

  it('given 8 hours to the minute, then it may go; a second more, then not', async () => {
    expect(await (await given(emptied)).when('18:00:01 undo')).toEqual({ unclear: 'undo-too-late' });
    expect(await (await given(emptied)).when('18:00 undo')).toEqual({ unclear: 'undo-asks' });
  });

  it('given ten minutes or less, then it goes at once; later it is shown first, since clocks have run on it', async () => {
    const shift = await given(weighed);
    const [, , last] = await shift.events();
    expect(last?.body.type).toBe('PartsWeighed');
    const at = new Date((last?.recordedAt ?? 0) + 10 * 60_000 + 1_000).toISOString().slice(11, 19);
    expect(await shift.when(`${at} undo`)).toEqual({ unclear: 'undo-asks' });
    expect((await shift.shop()).batches.get(1)?.weighing).toBeDefined();
    // The second tap says which.
    expect(await shift.when(`${at} undo entry ${last?.seq}`)).toEqual({ recorded: ['Amended'] });
    expect((await shift.shop()).batches.get(1)?.weighing).toBeUndefined();
  });

  it('given a line that recorded nothing in between, then what was meant is not guessed: the weighing of an hour ago stays', async () => {
    const shift = await given(weighed);
    await shift.when('09:00 weigh 1 1300g 1300g');
    expect(await shift.when('09:01 undo')).toEqual({ unclear: 'undo-asks' });
    expect((await shift.shop()).batches.get(1)?.weighing).toBeDefined();
  });

  it('given it happened long ago but was only just written, then the slip can be taken back', async () => {
    const shift = await given([...weighed, '19:00 empty 1 1200g at 10:00']);
    expect(await shift.when('19:01 undo')).toEqual({ recorded: ['Amended'] });
  });

  it('given an amendment of yesterday, then that stays too', async () => {
    const shift = await given([...weighed, '08:10 amend 1 weigh 1201g 1190g misread']);
    expect(await shift.when('16:11 undo')).toEqual({ unclear: 'undo-too-late' });
  });
});

describe('undo where something rests on it', () => {
  const coated = [...weighed, '09:42 filter 1', '09:50 coat new impeller-7 1 brush'];

  it('given a filtering said late, with a coat after it, then it asks before it goes, and the tap takes just that', async () => {
    const shift = await given([...weighed, '09:50 coat new impeller-7 1 brush already', '09:55 filter 1 at 09:42']);
    const { nextSeq } = await ends(shift);
    expect(await shift.when('09:56 undo')).toEqual({ unclear: 'undo-asks' });
    expect((await ends(shift)).nextSeq).toBe(nextSeq);
    expect(await shift.when(`09:56 undo entry ${nextSeq - 1} despite ${nextSeq - 2}`)).toEqual({
      recorded: ['Amended', 'PartHeld'],
    });
    const batch = (await shift.shop()).batches.get(1);
    expect([batch?.filteredAt, batch?.coats.length]).toEqual([undefined, 1]);
  });

  it('given a reading of the air that somebody mixed by, then it asks', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:01 @omar: mix 2.4kg']);
    expect(await shift.when('08:02 undo')).toEqual({ unclear: 'undo-asks' });
    expect(await shift.when('08:02 undo entry 1 despite 2')).toEqual({ recorded: ['Amended'] });
  });

  it('given a newer reading before the mix, then nothing rests on the older one', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:01 @omar: air 23C 50%', '08:02 @omar: mix 2.4kg']);
    expect(await shift.when('08:03 undo')).toEqual({ recorded: ['Amended'] });
  });

  it('given more rests on it by the time of the tap than was shown, then it asks anew', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:01 @omar: mix 2.4kg']);
    expect(await shift.when('08:02 undo')).toEqual({ unclear: 'undo-asks' });
    await shift.when('08:03 @omar: weigh 1 1200g 1200g');
    expect(await shift.when('08:04 undo entry 1 despite 2')).toEqual({ unclear: 'undo-asks' });
    expect(await shift.when('08:04 undo entry 1 despite 3')).toEqual({ recorded: ['Amended'] });
  });

  it('given a handover that was taken over, then it asks; given none took over, then it goes', async () => {
    const waiting = await given(['08:00 @omar: handover kari']);
    expect(await waiting.when('08:01 @omar: undo')).toEqual({ recorded: ['Amended'] });
    const taken = await given(['08:00 @omar: handover kari', '08:01 @kari: take over']);
    expect(await taken.when('08:02 @omar: undo')).toEqual({ unclear: 'undo-asks' });
  });

  it('given somebody else went on from it, then a tap does not take it back either', async () => {
    const shift = await given([...weighed, '08:10 @omar: stop 1']);
    expect(await shift.when('08:11 undo entry 3 despite 99')).toEqual({ unclear: 'undo-rests' });
  });

  it('given somebody else has corrected it, then their correction is not taken away with it', async () => {
    const shift = await given([...weighed, '08:10 @omar: amend 1 weigh 1201g 1190g scale']);
    expect(await shift.when('08:11 undo')).toEqual({ unclear: 'undo-rests' });
    expect((await shift.shop()).batches.get(1)?.weighing).toMatchObject({ partBGrams: 1190 });
  });

  it('given a release, then it is a decision: its own releaser takes it back, nobody else, and the part waits again', async () => {
    const shift = await given([
      ...coated,
      '10:00 dry impeller-7',
      '10:00 cure impeller-7 oven 90C',
      '10:15 temp impeller-7 91C',
      '11:20 temp impeller-7 90C',
      '11:20 out impeller-7',
      '11:30 @omar: release impeller-7',
    ]);
    const { nextSeq } = await ends(shift);
    expect(await shift.when(`11:31 undo entry ${nextSeq - 1}`)).toEqual({ unclear: 'undo-not-last' });
    expect(await shift.when(`11:31 @omar: undo entry ${nextSeq - 1}`)).toEqual({ recorded: ['Amended'] });
    expect((await shift.shop()).parts.get('impeller-7')?.verdict).toBeUndefined();
  });
});

describe('undo of a cry', () => {
  const hot = [...weighed, '09:42 filter 1', '09:45 hot pot 1'];

  it('given another has said since what that pot went on, then it stays: their deviation rests on it', async () => {
    const shift = await given([...hot, '09:46 @omar: coat new imp-1 1 brush already']);
    expect(await shift.when('09:47 undo')).toEqual({ unclear: 'undo-rests' });
    expect((await shift.shop()).batches.get(1)?.thickened?.seen).toBe('hot');
  });

  it('given nobody has, then the slip goes at once', async () => {
    const shift = await given(hot);
    expect(await shift.when('09:46 undo')).toEqual({ recorded: ['Amended'] });
    expect((await shift.shop()).batches.get(1)?.thickened).toBeUndefined();
  });
});
