// What becomes of a part: rework, concession, scrap, return. Each is a decision of whoever may release, with who and why.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const cured = [
  ...['08:00 part a1 job 88', '08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...['10:00 coat a1 1 brush', '10:12 dry a1', '10:12 cure a1 oven 90C', '10:12 temp a1 90C', '11:12 temp a1 90C'],
  '11:12 out a1',
];
const thin = [...cured, '11:20 film a1 4 5 5um'];
const letter = 'person "Ms. Hale" document QA-118 dated 2026-03-01';
const recoated = [
  ...[
    '11:45 @kari: coat a1 1 brush',
    '11:57 dry a1',
    '11:57 cure a1 oven 90C',
    '11:57 temp a1 90C',
    '12:57 temp a1 90C',
  ],
  '12:57 out a1',
];

type Shift = Awaited<ReturnType<typeof given>>;
const partOf = async (shift: Shift) => (await shift.shop()).parts.get('a1');

describe('who decides, and what has to be told', () => {
  it.each(['rework a1 runs', `concession a1 ${letter}`, 'scrap a1 cracked', 'return a1 customer wrong alloy'])(
    'given crew says "%s", then it is a lead’s, and no telling that it was so makes it one',
    async (line) => {
      const shift = await given(thin);
      expect(await shift.when(`11:25 ${line}`)).toEqual({ unclear: 'may-not-settle' });
      expect(await shift.when(`11:25 ${line} already`)).toEqual({ unclear: 'may-not-settle' });
      expect(await partOf(shift)).toMatchObject({ verdict: { is: 'held' } });
    },
  );

  it.each([
    ['rework a1', ['why']],
    ['scrap a1', ['why']],
    ['return a1', ['to', 'why']],
    ['return a1 supplier', ['why']],
    ['concession a1', ['person', 'document', 'date']],
    ['concession a1 person "Ms. Hale" document QA-118 dated 2026-03-03', ['date']],
  ] as const)('given "%s", then %j is lacking and nothing is recorded', async (line, lacking) => {
    const shift = await given(thin);
    expect(await shift.when(`11:25 @omar: ${line}`)).toEqual({ objected: ['not-told'] });
    expect(shift.objections()).toMatchObject([{ code: 'not-told', lacking }]);
  });

  it('given it is still in the oven, then it comes out first', async () => {
    const shift = await given([...cured.slice(0, -2), '10:30 hold a1 wrong job']);
    expect(await shift.when('10:40 @omar: scrap a1 wrong job')).toEqual({ objected: ['still-in-oven'] });
  });
});

describe('rework', () => {
  it('given it, then coats begin anew, the old film is in the way until it is off, and the earlier coats stay readable', async () => {
    const shift = await given([...thin, '11:30 @omar: rework a1 film too thin']);
    expect(await partOf(shift)).toMatchObject({ verdict: undefined, coats: [], earlier: [{ batch: 1 }] });
    expect(await shift.when('11:31 coat a1 1 brush')).toEqual({ objected: ['recoat-forbidden'] });
    expect(await shift.when('11:31 @omar: release a1')).toEqual({ objected: ['not-coated'] });
    await shift.when('11:32 prep a1 old-coat-off');
    expect(await shift.when('11:45 coat a1 1 brush')).toEqual({ recorded: ['CoatApplied'] });
    expect(await partOf(shift)).toMatchObject({ coats: [{ batch: 1 }], earlier: [{ batch: 1 }] });
  });

  it('given a grade that takes the old coat off, then it is off too; given it was only wiped, then not', async () => {
    const shift = await given([...thin, '11:30 @omar: rework a1 film too thin', '11:31 prep a1 wiping']);
    expect(await shift.when('11:32 coat a1 1 brush')).toEqual({ objected: ['recoat-forbidden'] });
    await shift.when('11:33 prep a1 sa2.5');
    expect(await shift.when('11:45 coat a1 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given a job that asks for a film, then that of the old coat does not count, nor does its failure', async () => {
    const shift = await given([
      ...[
        '08:00 @omar: set job 88 film',
        ...thin,
        '11:30 @omar: rework a1 film too thin',
        '11:31 prep a1 old-coat-off',
      ],
      ...recoated,
    ]);
    expect(await shift.when('13:00 @omar: release a1')).toEqual({ objected: ['not-given'] });
    await shift.when('13:01 film a1 10 11 12um');
    expect(await shift.when('13:02 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given second eyes are asked, then whoever coated what is off has none in what is there now', async () => {
    const byLead = thin.map((line) => line.replace('10:00 coat', '10:00 @omar: coat'));
    const shift = await given([
      ...['08:00 @omar: set job 88 second eyes', ...byLead, '11:30 @omar: rework a1 film too thin'],
      ...['11:31 prep a1 old-coat-off', ...recoated],
    ]);
    expect(await shift.when('13:00 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given the mix of the old coat is put right afterwards, then what is on it now is not held for that', async () => {
    const shift = await given([...thin, '11:30 @omar: rework a1 film too thin', '11:31 prep a1 old-coat-off']);
    await shift.when('11:40 @omar: amend 1 weigh 1200g 1400g wrong scale');
    expect((await partOf(shift))?.verdict).toBeUndefined();
  });

  it('given it is not coated at all, then there is nothing to do anew', async () => {
    const shift = await given(['08:00 part a1', '08:01 hold a1 wrong job']);
    expect(await shift.when('08:02 @omar: rework a1 wrong job')).toEqual({ objected: ['not-coated'] });
  });
});

describe('concession', () => {
  it('given person, document and date, then it releases what was held, and the release has them', async () => {
    const shift = await given(thin);
    expect(await shift.when(`11:25 @omar: concession a1 ${letter}`)).toEqual({
      recorded: ['PartDisposed', 'PartReleased'],
    });
    expect(await partOf(shift)).toMatchObject({
      verdict: {
        is: 'released',
        by: 'omar',
        concession: { person: 'Ms. Hale', document: 'QA-118', date: '2026-03-01' },
      },
    });
  });

  it('given something else stands against its release, then the customer’s word on the film lifts none of it', async () => {
    const shift = await given([...cured.slice(0, -2), '10:40 out a1 already', '11:20 film a1 4 5 5um']);
    expect(await shift.when(`11:25 @rosa: concession a1 ${letter}`)).toEqual({ objected: ['cure-not-given'] });
    expect(await shift.when(`11:26 @rosa: concession a1 ${letter} permit cure "oven log 12"`)).toEqual({
      recorded: ['PartDisposed', 'PartReleased'],
    });
  });

  it('given second eyes are asked, then nobody stands in for them here either', async () => {
    const byLead = thin.map((line) => line.replace('10:00 coat', '10:00 @omar: coat'));
    const shift = await given(['08:00 @omar: set job 88 second eyes', ...byLead]);
    expect(await shift.when(`11:25 @omar: concession a1 ${letter}`)).toEqual({ objected: ['second-eyes'] });
  });

  it('given nothing holds it, then there is nothing to concede', async () => {
    const shift = await given(cured);
    expect(await shift.when(`11:25 @omar: concession a1 ${letter}`)).toEqual({ objected: ['not-on-hold'] });
  });

  it('given it is coated again, then the concession was of the film before', async () => {
    const shift = await given([...thin, `11:25 @omar: concession a1 ${letter}`, '11:45 coat a1 1 brush already']);
    expect(await partOf(shift)).toMatchObject({ concession: undefined, verdict: { is: 'held' } });
  });
});

describe('scrap and return', () => {
  it.each([
    ['scrap a1 cracked', 'scrapped'],
    ['return a1 to the customer wrong alloy', 'returned'],
  ])('given "%s", then it rings no more, and neither coat nor release passes without objection', async (line, is) => {
    const shift = await given([...thin, `11:25 @omar: ${line}`]);
    expect((await partOf(shift))?.verdict).toMatchObject({ is, by: 'omar' });
    expect(Object.keys(await shift.plan()).filter((key) => /^part\/a1|^crew\/held/.test(key))).toEqual([]);
    expect(await shift.when('11:30 coat a1 1 brush')).toEqual({ objected: ['disposed', 'recoat-forbidden'] });
    expect(await shift.when('11:30 @omar: release a1')).toEqual({ objected: ['disposed'] });
    expect(await shift.when('11:30 @omar: scrap a1 once more')).toEqual({ objected: ['disposed'] });
  });

  it('given it was coated all the same, then that is recorded, marked, and holds it', async () => {
    const shift = await given([...thin, '11:25 @omar: scrap a1 cracked', '11:30 coat a1 1 brush already']);
    expect(await shift.deviations()).toContain('CoatApplied 11:30 disposed');
    expect((await partOf(shift))?.verdict).toMatchObject({ is: 'held', because: ['disposed', 'recoat-forbidden'] });
  });

  it('given a lead decides on rework after all, then it is worked on again', async () => {
    const shift = await given([...thin, '11:25 @omar: scrap a1 cracked', '11:30 @rosa: rework a1 it was another one']);
    expect(await partOf(shift)).toMatchObject({ verdict: undefined, coats: [] });
  });

  it('given a part that nothing holds, then it may be scrapped with why, and a correction of its mix holds nothing more', async () => {
    const shift = await given([...cured, '11:25 @omar: scrap a1 dropped']);
    await shift.when('11:40 @omar: amend 1 weigh 1200g 1400g wrong scale');
    expect((await partOf(shift))?.verdict).toMatchObject({ is: 'scrapped', why: 'dropped' });
  });
});
