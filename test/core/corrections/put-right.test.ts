// What can be put right besides figures: of which part and pot a coat was, a can's lot and last day, what a batch is mixed
// of, why a part is held, when a session sprayed. And by whom: one's own by anybody, another's by whoever leads.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const twoPots = [
  '08:00 air 24C 48%',
  '08:00 mix 2.4kg',
  '08:00 mix 1kg',
  '08:20 weigh 1 1201g 1198g',
  '08:20 weigh 2 501g 499g',
  '10:05 filter 1',
  '10:05 filter 2',
  '10:06 coat new fin-1 1 brush',
  '10:06 part fin-2',
];

const coatsOf = async (shift: Awaited<ReturnType<typeof given>>, name: string) =>
  (await shift.shop()).parts.get(name)?.coats.map(({ batch, at }) => `${batch} ${shift.spoken(at)}`) ?? [];

describe('a coat', () => {
  it('given it was told of the wrong pot, when that is put right, then both pots know, and it stays at its time', async () => {
    const shift = await given(twoPots);
    expect(await shift.when('10:12 amend fin-1 coat batch 2 "wrong pot"')).toEqual({
      recorded: ['Amended', 'CoatApplied'],
    });
    expect(await coatsOf(shift, 'fin-1')).toEqual(['2 10:06']);
    const { batches } = await shift.shop();
    expect([1, 2].map((number) => batches.get(number)?.coats.map(({ part }) => part))).toEqual([[], ['fin-1']]);
  });

  it('given it was told of the wrong part, then its flash-off runs on the right one, and what it was told of first stays', async () => {
    const shift = await given(twoPots);
    await shift.when('10:12 amend fin-1 coat part fin-2 "wrong tag"');
    expect([await coatsOf(shift, 'fin-1'), await coatsOf(shift, 'fin-2')]).toEqual([[], ['1 10:06']]);
    const bells = Object.keys(await shift.plan()).filter((key) => key.startsWith('part/'));
    expect(bells).toContain('part/fin-2/flash-least');
    expect(bells.filter((key) => key.startsWith('part/fin-1'))).toEqual([]);
    const told = (await shift.shop()).parts.get('fin-2')?.entries.at(-1)?.fact;
    expect(told).toMatchObject({ toldOf: { part: 'fin-1', batch: 1, why: 'wrong tag' } });
  });

  it('given another puts it right, then whoever told it is still who put it on', async () => {
    const shift = await given(twoPots);
    await shift.when('10:12 @omar: amend fin-1 coat part fin-2 "wrong tag"');
    expect((await shift.shop()).parts.get('fin-2')?.entries.at(-1)).toMatchObject({
      ...{ by: 'omar', fact: { appliedBy: 'kari' } },
    });
  });

  it('given it was moved, when that is undone, then it stands where it was told first', async () => {
    const shift = await given(twoPots);
    await shift.when('10:12 amend fin-1 coat part fin-2 "wrong tag"');
    expect(await shift.when('10:13 undo')).toEqual({ recorded: ['Amended', 'CoatApplied'] });
    expect([await coatsOf(shift, 'fin-1'), await coatsOf(shift, 'fin-2')]).toEqual([['1 10:06'], []]);
  });

  it('given the pot that it really came of was past its life, then it is a deviation, and its part is held', async () => {
    const shift = await given(twoPots.slice(0, -2));
    for (const line of [
      '12:30 air 24C 48%',
      '12:30 mix 1kg',
      '12:31 weigh 3 501g 499g',
      '14:20 filter 3',
      '14:30 coat new fin-1 3 brush',
    ])
      expect(await shift.when(line)).toHaveProperty('recorded');
    expect(await shift.when('14:31 amend fin-1 coat batch 1 "the old pot"')).toEqual({
      recorded: ['Amended', 'CoatApplied', 'PartHeld'],
    });
    expect(await shift.deviations()).toEqual(['CoatApplied 14:30 past-pot-life']);
  });

  it('given a pot or a part that nobody knows, then nothing is recorded', async () => {
    const shift = await given(twoPots);
    expect(await shift.when('10:12 amend fin-1 coat batch 9 "slip"')).toEqual({ unclear: 'no-such-batch' });
    expect(await shift.when('10:12 amend fin-1 coat part fin-9 "slip"')).toEqual({ unclear: 'no-such-part' });
  });
});

describe('material', () => {
  it('given a lot and a last day misread, then the can has the right ones, and was opened past its day', async () => {
    const shift = await given(['08:00 open B lot 8820 5kg exp 2026-12']);
    await shift.when('08:05 amend 1 open lot 8802 exp 2026-02 "misread"');
    expect((await shift.shop()).cans.get(1)).toMatchObject({ lot: '8802', expires: '2026-02-28' });
    expect(await shift.deviations()).toEqual(['CanOpened 08:00 can-expired']);
  });

  it('given a delivery whose lot was misread, then the cans that were opened of it follow', async () => {
    const shift = await given([
      '08:00 received 2 x 5kg B lot 8820',
      '08:10 open B lot 8820',
      '08:20 discard 1 dropped',
    ]);
    expect(await shift.when('08:30 amend received lot 8802 "misread"')).toEqual({ recorded: ['Amended', 'Amended'] });
    expect((await shift.shop()).cans.get(1)?.lot).toBe('8802');
  });

  it('given the wrong product before anything is weighed, then the batch is of the right one, and keeps its number', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 1kg']);
    await shift.when('08:05 amend 1 mix sheet demo-build "wrong product"');
    expect((await shift.shop()).batches.get(1)?.sheet.id).toBe('demo-build');
  });

  it('given a part of it is weighed, then its product stands', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 1kg', '08:10 weigh 1 a 501g']);
    expect(await shift.when('08:15 amend 1 mix sheet demo-build "late"')).toEqual({ unclear: 'product-stands' });
  });
});

describe('a hold and a session', () => {
  it('given a hold, then its reason can be put in better words, and it goes on', async () => {
    const shift = await given(['08:00 part fin-1', '08:01 hold fin-1 run']);
    await shift.when('08:05 amend fin-1 hold runs at the flange');
    expect((await shift.shop()).parts.get('fin-1')?.verdict).toMatchObject({ is: 'held', why: 'runs at the flange' });
  });

  it('given spraying and a fan told wrong, then time and speed are put right', async () => {
    const crew = ['08:00 air 24C 48%', '08:00 @omar: brief in booth'];
    const shift = await given(crew);
    for (const line of ['08:02 @omar: ack', '08:03 @omar: fan 0.6m/s', '08:04 @omar: supplied yes'])
      expect(await shift.when(line)).toHaveProperty('recorded');
    await shift.when('08:10 @omar: spray on already');
    expect(await shift.when('08:20 @omar: amend 1 fan 0.5m/s "misread"')).toEqual({ recorded: ['Amended'] });
    expect(await shift.when('08:21 @omar: amend 1 spray-on at 8:12 "told early"')).toEqual({ recorded: ['Amended'] });
    const session = (await shift.shop()).sessions.get(1);
    expect(session?.spraying.map(({ from }) => shift.spoken(from))).toEqual(['08:12']);
  });
});

describe('whose it is to put right', () => {
  it("given another of the crew told it, then it is theirs or a lead's, and one's own goes", async () => {
    const shift = await given([...twoPots, '10:07 @omar: hold fin-2 customer looks']);
    expect(await shift.when('10:12 amend fin-2 hold customer has looked')).toEqual({ unclear: 'not-own-entry' });
    expect(shift.asked()).toMatchObject({ wanted: 'lead', who: ['omar', 'rosa'], act: { entry: { by: 'omar' } } });
    expect(await shift.when('10:13 amend fin-1 coat at 10:05 "told late"')).toEqual({ recorded: ['Amended'] });
    expect(await shift.when('10:14 @rosa: amend fin-1 coat dip "seen"')).toEqual({ recorded: ['Amended'] });
  });

  it('given a coat that another typed for whoever put it on, then they may', async () => {
    const shift = await given([...twoPots, '10:07 @omar: coat fin-2 1 brush by kari']);
    expect(await shift.when('10:12 amend fin-2 coat roller "it was the roller"')).toEqual({ recorded: ['Amended'] });
  });
});
