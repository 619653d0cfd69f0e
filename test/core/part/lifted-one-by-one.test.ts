// A leave lifts what it names and nothing else: a hold and a cure that is not proved are two decisions, each with its own reason.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const half = [
  ...['08:00 part a1 job 88', '08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat a1 1 brush', '10:12 dry a1', '10:12 cure a1 oven 90C', '10:12 temp a1 90C', '10:40 out a1 already'],
];
const held = [...half, '11:20 hold a1 runs'];

const releasedBy = async (shift: Awaited<ReturnType<typeof given>>) =>
  (await shift.events()).findLast(({ body }) => body.type === 'PartReleased')?.saidWith;

describe('a release that two things stand against', () => {
  it.each(['permit customer agreed', 'permit hold customer agreed', 'permit cure oven log 12', 'permit film no gauge'])(
    'given "%s", then what it does not name still stands',
    async (leave) => {
      const shift = await given(held);
      const left = { 'permit hold customer agreed': ['cure-not-given'], 'permit cure oven log 12': ['on-hold'] };
      const stands = Object.entries(left).find(([said]) => said === leave)?.[1] ?? ['on-hold', 'cure-not-given'];
      expect(await shift.when(`11:30 @rosa: release a1 ${leave}`)).toEqual({ objected: stands });
      expect((await shift.shop()).parts.get('a1')?.verdict).toMatchObject({ is: 'held' });
    },
  );

  it('given each is named with its own reason, then it is released, and each deviation has its own', async () => {
    const shift = await given(held);
    expect(await shift.when('11:30 @rosa: release a1 permit hold customer agreed permit cure "oven log 12"')).toEqual({
      recorded: ['PartReleased'],
    });
    expect(await releasedBy(shift)).toMatchObject({
      despite: ['on-hold', 'cure-not-given'],
      lifts: [
        { of: 'hold', why: 'customer agreed' },
        { of: 'cure', why: 'oven log 12' },
      ],
    });
  });

  it('given a lead names both and one is a supervisor’s, then none of it is lifted', async () => {
    const shift = await given(held);
    expect(await shift.when('11:30 @omar: release a1 permit hold customer agreed permit cure oven log 12')).toEqual({
      unclear: 'may-not-permit',
    });
  });
});

describe('a release that one thing stands against', () => {
  it('given a reason alone, then it is of that; given it names another, then it is not', async () => {
    const shift = await given(half);
    expect(await shift.when('11:30 @rosa: release a1 permit hold customer agreed')).toEqual({
      objected: ['cure-not-given'],
    });
    expect(await shift.when('11:31 @rosa: release a1 permit oven log 12')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given a job asks for a film and a cross-cut, then a leave for the one is none for the other', async () => {
    const shift = await given(['08:00 @omar: set job 88 film, adhesion 4B', ...half]);
    expect(await shift.when('11:30 @rosa: release a1 permit no time')).toMatchObject({ objected: expect.any(Array) });
    expect(await shift.when('11:30 @rosa: release a1 permit cure log 12 permit film no gauge')).toEqual({
      objected: ['not-given'],
    });
    expect(
      await shift.when('11:31 @rosa: release a1 permit cure log 12 permit film no gauge permit adhesion no knife'),
    ).toEqual({ recorded: ['PartReleased'] });
  });
});
