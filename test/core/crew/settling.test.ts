// What a crew settles by saying it, and who may. The crew is invented: kari sprays, omar leads, rosa supervises.

import { describe, expect, it } from 'vitest';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { demoCrew, given } from '../given.ts';

const alone: CrewFile = { ...demoCrew, people: [] };
const without = (gone: string): CrewFile => ({
  ...demoCrew,
  people: demoCrew.people.filter(({ name }) => name !== gone),
});
const peopleOf = (shop: { readonly crew: Pick<CrewFile, 'people'> }) =>
  shop.crew.people.map(({ name, role }) => `${name} ${role}`);
const mayNot = { unclear: 'may-not-settle' };
const set = { recorded: ['SettingChanged'] };

describe('what moves everybody’s clocks, or who is told', () => {
  it.each([
    'set air-limit 3h',
    'set zone Europe/Madrid',
    'set crew Bay two',
    'set crew-language es',
    'set crew-units us',
  ])('given "%s", then it is for a lead or a supervisor', async (line) => {
    const shift = await given([]);
    expect(await shift.when(`08:00 @kari: ${line}`)).toEqual(mayNot);
    expect(await shift.when(`08:01 @omar: ${line}`)).toEqual(set);
    expect(await shift.when(`08:02 @rosa: ${line}`)).toEqual(set);
  });

  it.each(['set lel 20%', 'set mixing 4'])('given "%s", then the sums of the air are for a lead too', async (line) => {
    const shift = await given([]);
    expect(await shift.when(`08:00 @kari: ${line}`)).toEqual(mayNot);
    expect(await shift.when(`08:01 @omar: ${line}`)).toEqual(set);
  });

  it.each(['set rate 4m2/h', 'set units us', 'set language es', 'set rings direct'])(
    'given "%s", then anybody may',
    async (line) => {
      const shift = await given([]);
      expect(await shift.when(`08:00 @kari: ${line}`)).toEqual(set);
    },
  );
});

describe('what lifts safety', () => {
  it.each([
    'set sprayers kari',
    'set sprayers nobody',
    'set booth booth 4m2',
    'set brief on',
    'set brief-ahead 5min',
    'set emergency call 666',
    'set emergency fire run',
    'set quiet 0-23',
    'set quiet off',
    'set bell off',
    'set sheet demo-build',
    'set morning 23',
    'set digest 23',
    'set voc-limit 100kg/month',
  ])('given "%s", then it is for a lead or a supervisor, and nothing is recorded of anybody else', async (line) => {
    const shift = await given([]);
    expect(await shift.when(`08:00 @kari: ${line}`)).toEqual(mayNot);
    expect(await shift.events()).toEqual([]);
    expect(await shift.when(`08:01 @omar: ${line}`)).toEqual(set);
    expect(await shift.when(`08:02 @rosa: ${line}`)).toEqual(set);
  });

  it.each(['fit kari 2026-05-01', 'medical kari 2026-09-30', 'training omar 2027-01-31'])(
    'given "%s", then whose date it is does not say it',
    async (line) => {
      const shift = await given([]);
      expect(await shift.when(`08:00 @kari: ${line}`)).toEqual(mayNot);
      expect(await shift.when(`08:00 @kari: ${line} already`)).toEqual(mayNot);
      expect(await shift.when(`08:01 @omar: ${line}`)).toEqual({ recorded: ['QualificationDated'] });
    },
  );

  it('given the brief put off, then it is the supervisor’s alone', async () => {
    const shift = await given(['08:00 @omar: set brief on']);
    expect(await shift.when('08:01 @kari: set brief off')).toEqual(mayNot);
    expect(await shift.when('08:01 @omar: set brief off')).toEqual(mayNot);
    expect(await shift.when('08:02 @rosa: set brief off')).toEqual(set);
  });

  it('given nobody who supervises, then the brief is put off by the lead, and by nobody below', async () => {
    const shift = await given(['08:00 @omar: set brief on'], { crew: without('rosa') });
    expect(await shift.when('08:01 @kari: set brief off')).toEqual(mayNot);
    expect(await shift.when('08:02 @omar: set brief off')).toEqual(set);
  });

  it('given a supervisor who has gone off shift, then away is not none', async () => {
    const shift = await given(['08:00 @omar: set brief on', '08:00 @rosa: shift off', '08:00 @omar: shift on']);
    expect(await shift.when('08:01 @omar: set brief off')).toEqual(mayNot);
  });

  it('given a crew in which nobody leads yet, then whoever there is may; once somebody leads, they do', async () => {
    const shift = await given(['08:00 @ola: set sprayers ola', '08:00 @ola: fit ola 2026-05-01'], { crew: alone });
    expect(await shift.when('08:01 @ola: set role ana lead')).toEqual(set);
    expect(await shift.when('08:02 @ola: set sprayers nobody')).toEqual(mayNot);
    expect(await shift.when('08:03 @ana: set brief off')).toEqual(set);
  });
});

describe('spraying without a session', () => {
  const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
  const unbriefed = [...filtered, '09:43 @omar: set brief on'];

  it('given the supervisor’s leave, then it is lifted; given a lead’s, then not', async () => {
    const shift = await given(unbriefed);
    expect(await shift.when('09:50 @kari: coat new lid-1 1 spray permit late')).toEqual({ unclear: 'may-not-permit' });
    expect(await shift.when('09:50 @omar: coat new lid-1 1 spray permit late')).toEqual({ unclear: 'may-not-permit' });
    expect(await shift.when('09:51 @rosa: coat new lid-1 1 spray permit VA-1')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given nobody who supervises, then whoever ranks highest may lift it', async () => {
    const shift = await given(unbriefed, { crew: without('rosa') });
    expect(await shift.when('09:50 @kari: coat new lid-1 1 spray permit late')).toEqual({ unclear: 'may-not-permit' });
    expect(await shift.when('09:51 @omar: coat new lid-1 1 spray permit VA-1')).toEqual({ recorded: ['CoatApplied'] });
  });
});

describe('a crew that nobody leads', () => {
  const flat = { ...demoCrew, people: demoCrew.people.map((person) => ({ ...person, role: 'crew' as const })) };

  it('given somebody who is not of it, then the crew decides and the stranger does not', async () => {
    const shift = await given([], { crew: flat });
    for (const line of ['set brief off', 'set sprayers stranger', 'set emergency call 666', 'set role stranger lead']) {
      expect(await shift.when(`08:00 @stranger: ${line}`), line).toEqual({ unclear: 'may-not-settle' });
    }
    expect(await shift.when('08:01 @kari: set role kari lead')).toEqual({ recorded: ['SettingChanged'] });
  });

  it('given a can in doubt, then whoever is of the crew may look at it: nobody else is asked for', async () => {
    const shift = await given(['08:00 open A lot 7731 5kg gas', '08:40 blanket 1'], { crew: flat });
    expect((await shift.shop()).cans.get(1)?.checkedAt).toEqual([]);
    expect(await shift.when('08:41 check 1')).toEqual({ recorded: ['CanChecked'] });
    expect((await shift.shop()).cans.get(1)?.checkedAt).toHaveLength(1);
    expect(await shift.deviations()).toEqual([]);
  });
});

describe('a role', () => {
  it('given by a lead, goes up to lead; a supervisor’s is given and taken by a supervisor', async () => {
    const shift = await given([]);
    expect(await shift.when('08:00 @kari: set role kari lead')).toEqual(mayNot);
    expect(await shift.when('08:01 @omar: set role kari lead')).toEqual(set);
    expect(await shift.when('08:02 @kari: set role kari supervisor')).toEqual(mayNot);
    expect(await shift.when('08:03 @kari: set role rosa crew')).toEqual(mayNot);
    expect(await shift.when('08:04 @rosa: set role kari supervisor')).toEqual(set);
    expect(peopleOf(await shift.shop())).toEqual(['kari supervisor', 'omar lead', 'rosa supervisor']);
  });

  it('given in one act with one that is beyond the speaker, then none is given', async () => {
    const shift = await given([]);
    expect(await shift.when('08:00 @omar: set role kari lead ola supervisor')).toEqual(mayNot);
    expect(peopleOf(await shift.shop())).toEqual(['kari crew', 'omar lead', 'rosa supervisor']);
  });

  it('given to a name that the crew has, in whatever capitals, then it is that person; another joins', async () => {
    const shift = await given(['08:00 @omar: set role KARI lead', '08:01 @omar: set role "Ana María" crew']);
    expect(peopleOf(await shift.shop())).toEqual(['kari lead', 'omar lead', 'rosa supervisor', 'Ana María crew']);
  });

  it('given a crew without anybody, then whoever speaks first may name its lead, and from then on the lead may', async () => {
    const shift = await given([], { crew: alone });
    expect(await shift.when('08:00 @ola: set zone Europe/Madrid')).toEqual(set);
    expect(await shift.when('08:01 @ola: set role ana lead bea supervisor')).toEqual(set);
    expect(await shift.when('08:02 @ola: set zone UTC')).toEqual(mayNot);
    expect(await shift.when('08:03 @ana: set zone UTC')).toEqual(set);
    expect(await shift.when('08:04 @ana: set role ana supervisor')).toEqual(mayNot);
  });

  it('given a lead, then what nobody answers goes on to them', async () => {
    const shift = await given(
      [
        '08:00 @ola: set role ana lead',
        '08:00 @ola: air 24C 48%',
        '08:00 @ola: mix 2.4kg',
        '08:00 @ola: weigh 1 1200g 1200g',
      ],
      { crew: alone },
    );
    await shift.until('10:00');
    const told = shift.rung().filter(({ key }) => key.startsWith('batch/1/stir-done'));
    expect(told.map(({ at, to }) => `${at} ${to.join(' ')}`)).toEqual(['09:42 ola', '09:52 ana']);
  });

  it('given and taken back by undo, then it is as it was', async () => {
    const shift = await given(['08:00 @omar: set role kari lead', '08:01 @omar: undo']);
    expect(peopleOf(await shift.shop())).toEqual(['kari crew', 'omar lead', 'rosa supervisor']);
  });
});

describe('a zone', () => {
  it('given another one, then the day’s card comes at that wall clock’s hour', async () => {
    // Madrid is an hour ahead of UTC in March: its 17:00 is 16:00.
    const shift = await given(['08:00 air 24C 48%', '08:00 @omar: set zone Europe/Madrid']);
    expect(Object.keys(await shift.plan()).some((key) => key === 'crew/digest/2026-03-02')).toBe(true);
    await shift.until('16:00');
    expect(shift.rung().map(({ key }) => key)).toContain('crew/digest/2026-03-02');
  });
});

describe('one’s own settings', () => {
  it('given language, units and bells, then they are the speaker’s alone', async () => {
    const shift = await given(['08:00 set language es', '08:00 set units us', '08:00 set rings direct']);
    const [kari, omar] = (await shift.shop()).crew.people;
    expect(kari).toEqual({ name: 'kari', role: 'crew', language: 'es', units: 'us', rings: 'direct' });
    expect(omar).toEqual({ name: 'omar', role: 'lead', language: 'en', units: 'metric' });
  });

  it('given the crew’s, then they are those of whoever joins later', async () => {
    const shift = await given([
      '08:00 @omar: set crew-units us',
      '08:00 @omar: set crew-language es',
      '08:01 @omar: set role ola crew',
    ]);
    expect((await shift.shop()).crew.people.at(-1)).toEqual({ name: 'ola', role: 'crew', language: 'es', units: 'us' });
  });
});
