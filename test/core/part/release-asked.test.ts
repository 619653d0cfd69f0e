// What a job asks for before a release. The grades of a cross-cut: ASTM D3359 method B and ISO 2409, whose pairs add up to five (from
// memory). That the worst of several readings counts: common practice, no source.

import { describe, expect, it } from 'vitest';
import { adhesionClass } from '../../../core/calc/adhesion.ts';
import { adhesionRatings } from '../../../core/grades.ts';
import { given } from '../given.ts';

const asks = (...what: readonly string[]) => `08:00 @omar: set job 88 asks ${what.join(', ')}`;
const cured = [
  ...['08:00 part a1 job 88', '08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat a1 1 brush', '10:12 dry a1', '10:12 cure a1 oven 90C', '10:12 temp a1 90C', '11:12 temp a1 90C'],
  '11:12 out a1',
];

describe('what a job asks for before a release', () => {
  it('given a film and a cross-cut are asked and nobody gave them, then the part is not released, nor by a lead with leave', async () => {
    const shift = await given([asks('film', 'adhesion 4B'), ...cured]);
    expect(await shift.when('11:20 @omar: release a1')).toEqual({ objected: ['not-given'] });
    expect(shift.objections()).toEqual([
      {
        code: 'not-given',
        job: '88',
        lacking: [
          { of: 'film', read: false },
          { of: 'adhesion', least: '4B', worst: undefined },
        ],
      },
    ]);
    // Two things lack: a leave names what it lifts.
    expect(await shift.when('11:21 @omar: release a1 permit no time')).toEqual({ objected: ['not-given'] });
    expect(await shift.when('11:22 @omar: release a1 permit film no time permit adhesion no time')).toEqual({
      unclear: 'may-not-permit',
    });
  });

  it('given both were given and pass, then it is released', async () => {
    const shift = await given([
      asks('film', 'adhesion 4B'),
      ...cured,
      '11:20 film a1 10 11 12um',
      '11:21 adhesion a1 5B',
    ]);
    expect(await shift.when('11:22 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given a cross-cut of 3B where 4B is asked, then it fails and holds, and a better one afterwards makes it none better', async () => {
    const shift = await given([asks('adhesion 4B'), ...cured]);
    expect(await shift.when('11:20 adhesion a1 3B')).toEqual({ recorded: ['AdhesionTested', 'PartHeld'] });
    expect(await shift.deviations()).toEqual(['AdhesionTested 11:20 adhesion-failed']);
    await shift.when('11:21 adhesion a1 5B');
    expect(await shift.when('11:22 @omar: release a1')).toEqual({ objected: ['on-hold', 'not-given'] });
    expect(shift.objections()).toContainEqual({
      code: 'not-given',
      job: '88',
      lacking: [{ of: 'adhesion', least: '4B', worst: '3B' }],
    });
  });

  it('given 3B where the job asks for no cross-cut, then it passes by common practice', async () => {
    const shift = await given([asks('film'), ...cured]);
    expect(await shift.when('11:20 adhesion a1 3B')).toEqual({ recorded: ['AdhesionTested'] });
  });

  it('given double rubs are asked, then fewer are lacking and as many will do', async () => {
    const shift = await given([asks('rub 50'), ...cured, '11:20 rub a1 25 no-effect']);
    expect(await shift.when('11:21 @omar: release a1')).toEqual({ objected: ['not-given'] });
    await shift.when('11:22 rub a1 50 softened');
    expect(await shift.when('11:23 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given readings of the coat before, then of the coat that is on it now they say nothing', async () => {
    const first = [...cured.slice(0, 6), '10:05 film a1 10 11 12um', '10:20 coat a1 1 brush already'];
    const shift = await given([asks('film'), ...first]);
    await shift.when('10:32 dry a1');
    expect(await shift.when('10:33 @omar: release a1')).toMatchObject({
      objected: expect.arrayContaining(['not-given']),
    });
  });

  it('given second eyes are asked, then who coated it does not release it, whatever leave there is; somebody else does', async () => {
    const byLead = cured.map((line) => line.replace('10:00 coat', '10:00 @omar: coat'));
    const shift = await given([asks('second eyes'), ...byLead]);
    expect(await shift.when('11:20 @omar: release a1')).toEqual({ objected: ['second-eyes'] });
    expect(await shift.when('11:20 @omar: release a1 permit I am alone')).toEqual({ unclear: 'may-not-permit' });
    expect(await shift.when('11:21 @rosa: release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given a coat that somebody else typed, then whoever put it on does not release it either', async () => {
    const shift = await given([
      asks('second eyes'),
      ...cured.map((line) => line.replace('1 brush', '1 brush by omar')),
    ]);
    expect(await shift.when('11:20 @omar: release a1')).toEqual({ objected: ['second-eyes'] });
  });

  it('given a job that asks nothing, or only after the release, then a release stands as it was', async () => {
    const shift = await given(cured);
    expect(await shift.when('11:20 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
    await shift.when('11:30 @omar: set job 88 film second eyes');
    expect(await shift.deviations()).toEqual([]);
  });

  it('given a film that is put right to one that was never read, then the release that rests on it is held', async () => {
    const shift = await given([
      asks('film', 'adhesion 4B'),
      ...cured,
      '11:20 film a1 10 11 12um',
      '11:21 adhesion a1 4B',
    ]);
    await shift.when('11:22 @omar: release a1');
    await shift.when('11:40 amend a1 film 4 5 5um misread');
    expect((await shift.shop()).parts.get('a1')?.verdict).toMatchObject({ is: 'held' });
  });

  it.each(adhesionRatings)('given %s, then its class lies between 0 and 5', (rating) => {
    expect(adhesionClass(rating)).toBeGreaterThanOrEqual(0);
    expect(adhesionClass(rating)).toBeLessThanOrEqual(5);
  });
});
