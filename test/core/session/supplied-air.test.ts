// Spraying with nobody on supplied air: on the supervisor's standing assessment, and never where the extraction is not known or
// not enough, or the sheet names a respiratory sensitiser or leaves it open. Sheets, people and days invented.

import { describe, expect, it } from 'vitest';
import { demoCrew, given } from '../given.ts';
import { shelfWith } from './own-sheets.ts';

// Stirred by 9:42 at 24 degC: see batch/pot-life.test.ts. Of 4 m2 at 0.6 m/s the sum passes: 8640 m3/h against 7990.
const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
const briefed = [...filtered, '09:43 @omar: set booth 4m2', '09:43 brief 1 in booth spray kari', '09:43 ack'];
const noAir = [...briefed, '09:44 fan on 0.6m/s', '09:44 supplied no'];
const assess = (until: string) => `09:44 @rosa: assess demo-clear in booth without-supplied-air until ${until}`;

describe('a sum that passes', () => {
  it('given no assessment, then it objects: that sum knows neither mist nor isocyanate', async () => {
    const shift = await given(noAir);
    expect(await shift.when('09:45 spray on')).toEqual({ objected: ['no-assessment'] });
    expect(shift.objections()).toEqual([
      { code: 'no-assessment', session: 2, place: 'booth', sheet: 'demo-clear', product: 'Demo Clear' },
    ]);
  });

  it('given the supervisor’s, then nothing is asked until its last day is over', async () => {
    const shift = await given([...noAir, assess('2026-03-02')]);
    expect(await shift.when('09:45 spray on')).toEqual({ recorded: ['SprayStarted'] });
    expect(await shift.deviations()).toEqual([]);
    const over = await given([...noAir, assess('2026-03-01')]);
    await over.when('09:45 spray on');
    expect(over.objections()).toMatchObject([{ code: 'no-assessment', ended: '2026-03-01' }]);
  });

  it('given one of another booth, or of another product, then it is not this one', async () => {
    for (const other of ['demo-clear in booth-2', 'demo-build in booth']) {
      const shift = await given([...noAir, `09:44 @rosa: assess ${other} without-supplied-air until 2027-01-31`]);
      expect(await shift.when('09:45 spray on')).toEqual({ objected: ['no-assessment'] });
    }
  });

  it('given the maker’s next revision, then it is assessed anew', async () => {
    const store = await given([...noAir, assess('2027-01-31')]);
    const assessments = (await store.shop()).crew.spray.assessments;
    expect(assessments).toMatchObject([{ by: 'rosa', sheet: 'demo-clear', revision: '1' }]);
    const shift = await given([...noAir, assess('2027-01-31')], { shelf: shelfWith({ revision: '2' }) });
    expect((await shift.shop()).crew.spray.assessments).toMatchObject([{ revision: '2' }]);
  });

  it('given a lead, then it is the supervisor’s; given a list without one, then whoever ranks highest', async () => {
    const shift = await given(noAir);
    expect(await shift.when('09:44 @omar: assess demo-clear in booth without-supplied-air until 2027-01-31')).toEqual({
      unclear: 'may-not-settle',
    });
    const people = demoCrew.people.filter(({ role }) => role !== 'supervisor');
    const small = await given(noAir, { crew: { ...demoCrew, people } });
    expect(await small.when('09:44 @omar: assess demo-clear in booth without-supplied-air until 2027-01-31')).toEqual({
      recorded: ['AirAssessed'],
    });
  });

  it('given the supervisor goes on by name, then for this session and no other', async () => {
    const shift = await given([...noAir, '09:45 @rosa: spray on permit one part, door open', '09:50 spray off']);
    expect(await shift.when('09:51 spray on')).toEqual({ recorded: ['SprayStarted'] });
    expect(await shift.deviations()).toEqual(['SprayStarted 09:45 no-assessment permitted: one part, door open']);
    for (const line of ['09:52 spray off', '09:52 close already', '09:53 brief 1 in booth spray kari', '09:53 ack'])
      await shift.when(line);
    await shift.when('09:54 fan on 0.6m/s');
    await shift.when('09:54 supplied no');
    expect(await shift.when('09:55 spray on')).toEqual({ objected: ['no-assessment'] });
  });
});

describe('supplied air or no spraying', () => {
  const lifted = async (lines: readonly string[], groups: Readonly<Record<string, unknown>> = {}) => {
    const shift = await given([...lines, assess('2027-01-31')], { shelf: shelfWith(groups) });
    const asked = await shift.when('09:45 spray on');
    const because = shift
      .objections()
      .flatMap((each) => (each.code === 'supplied-air-or-none' ? [each.because.is] : []));
    const permitted = await shift.when('09:46 @rosa: spray on permit VA-1');
    await shift.when('09:47 spray on already');
    return { asked, because, permitted, deviations: await shift.deviations() };
  };

  it.each([
    [
      'a sensitiser on the sheet',
      noAir,
      { sensitisers: { named: [{ kind: 'isocyanates' }], source: 'invented' } },
      'sensitiser',
    ],
    ['a sheet that leaves it open', noAir, { sensitisers: undefined }, 'sensitiser-open'],
    ['a fan that nobody measured', [...briefed, '09:44 fan on', '09:44 supplied no'], {}, 'not-measured'],
    ['a sheet without solvents', noAir, { spray: undefined }, 'not-summed'],
    ['a fan that falls short', [...briefed, '09:44 fan on 0.52m/s', '09:44 supplied no'], {}, 'falls-short'],
    ['supplied air that nobody speaks of', [...briefed, '09:44 fan on'], {}, 'not-measured'],
  ])('given %s, then nobody lifts it, and what happened all the same is marked', async (_, lines, groups, because) => {
    const found = await lifted(lines, groups);
    expect(found.asked).toEqual({ objected: expect.arrayContaining(['supplied-air-or-none']) });
    expect(found.because).toEqual([because]);
    expect(found.permitted).toEqual({ unclear: 'may-not-permit' });
    expect(found.deviations).toContain('SprayStarted 09:47 supplied-air-or-none');
  });

  it('given no extraction and no supplied air, then nobody lifts that either', async () => {
    const shift = await given([...briefed, '09:44 fan no', '09:44 supplied no', assess('2027-01-31')]);
    expect(await shift.when('09:45 spray on')).toEqual({ objected: ['no-extraction-no-air', 'fan-too-weak'] });
    expect(await shift.when('09:46 @rosa: spray on permit VA-1')).toEqual({ unclear: 'may-not-permit' });
  });

  it('given a sensitiser and supplied air, then spraying starts', async () => {
    const sensitisers = { named: [{ kind: 'isocyanates' }], source: 'invented' };
    const lines = [...briefed, '09:44 fan on 0.6m/s', '09:44 supplied yes'];
    const shift = await given(lines, { shelf: shelfWith({ sensitisers }) });
    expect(await shift.when('09:45 spray on')).toEqual({ recorded: ['SprayStarted'] });
  });

  it('given the air is told to be gone while they spray, then the next coat waits', async () => {
    const shift = await given([...briefed, '09:44 fan on 0.6m/s', '09:44 supplied yes', '09:45 spray on']);
    expect(await shift.when('09:46 coat new rail-1 1 spray')).toEqual({ recorded: ['CoatApplied'] });
    await shift.when('09:47 fan no');
    expect(await shift.when('09:48 coat new rail-2 1 spray')).toEqual({ objected: ['fan-too-weak'] });
    await shift.when('09:49 supplied no');
    expect(await shift.when('09:50 coat new rail-2 1 spray')).toEqual({
      objected: expect.arrayContaining(['no-extraction-no-air']),
    });
  });
});
