// A name that nobody has used starts no part by itself: it is asked about, or the line says that it is new. Parts are
// invented.

import { describe, expect, it } from 'vitest';
import { demoCrew, given } from '../given.ts';

/** Both tongues are typed here. */
const crew = { ...demoCrew, language: 'es' };

const filtered = [
  '08:00 air 24C 48%',
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1200g 1200g',
  '08:30 part impeller-1; part impeller-4; part a-01; part a-02; part a-04',
  '09:42 filter 1',
];

describe('a part that nobody has named before', () => {
  it.each([
    'coat imp-1 1 brush',
    'coat impeller-1-4 1 brush',
    'coat zeta-9 1 brush',
    'coat impeller-1 zeta-9 1 brush',
    'coat imp-1 1 brush already',
    'coat imp-1 1 brush at 9:45',
    'prep imp-1 sa2.5 60um',
    'surface imp-1 19C',
    'surface tank-1 15C',
    'dry zeta-9',
    'cure zeta-9 oven 90C',
    'temp zeta-9 88C',
    'wet zeta-9 60um',
    'film zeta-9 60um',
    'adhesion zeta-9 5B',
    'rub zeta-9 50 no-effect',
    'hold zeta-9 dent',
  ])('given "%s", then it is asked about, and nothing is recorded', async (line) => {
    const shift = await given(filtered);
    const before = (await shift.events()).length;
    expect(await shift.when(`09:50 ${line}`)).toEqual({ unclear: 'new-part' });
    expect((await shift.events()).length).toBe(before);
  });

  it.each([
    ['coat new imp-1 1 brush', ['CoatApplied']],
    ['coat imp-1 1 brush new', ['CoatApplied']],
    ['aplicar nueva imp-1 1 brocha', ['CoatApplied']],
    ['coat new imp-1 impeller-1 1 brush', ['CoatApplied', 'CoatApplied']],
    ['prep new imp-1 sa2.5 60um', ['SurfacePrepared']],
    ['surface new tank-1 15C', ['SurfaceRead']],
    ['surface 15C in tank-1', ['SurfaceRead']],
    ['hold new zeta-9 dent', ['PartHeld']],
    ['temp new zeta-9 88C', ['PartTemperatureRead']],
    ['wet new zeta-9 60um', ['FilmRead']],
  ])('given "%s", which says so, then it is recorded', async (line, recorded) => {
    const shift = await given(filtered, { crew });
    expect(await shift.when(`09:50 ${line}`)).toEqual({ recorded });
  });
});

describe('several parts by their range', () => {
  it.each([
    'prep a-01..a-02 sa2.5 60um',
    'prep a-01 to a-02 sa2.5 60um',
    'coat a-01..02 1 brush',
    'hold a-01 to a-02 runs',
  ])('given "%s", then it is of each of them', async (line) => {
    const shift = await given(filtered);
    await shift.when(`09:50 ${line}`);
    const [one, other] = (await shift.events()).slice(-2).map(({ stream }) => stream);
    expect([one, other]).toEqual(['part/a-01', 'part/a-02']);
  });

  it('given one of them is not known, then it is asked about, and no part bears the range as its name', async () => {
    const shift = await given(filtered);
    expect(await shift.when('09:50 prep a-01..a-04 sa2.5 60um')).toEqual({ unclear: 'new-part' });
    await shift.when('09:50 prep new a-01..a-04 sa2.5 60um');
    expect([...(await shift.shop()).parts.keys()].filter((name) => name.startsWith('a-'))).toEqual([
      'a-01',
      'a-02',
      'a-04',
      'a-03',
    ]);
  });
});

describe('forty parts that nobody has named', () => {
  it('given a coat of them, then they are asked about once, and said to be new all of them are coated', async () => {
    const shift = await given(filtered);
    expect(await shift.when('09:50 coat rail-1..rail-40 1 brush')).toEqual({ unclear: 'new-part' });
    const heard = await shift.when('09:51 coat new rail-1..rail-40 1 brush');
    expect(heard).toEqual({ recorded: Array.from({ length: 40 }, () => 'CoatApplied') });
  });

  it('given they are said dry, then said to be new they meet the ordinary objection', async () => {
    const shift = await given(filtered);
    expect(await shift.when('09:50 dry rail-1..rail-40')).toEqual({ unclear: 'new-part' });
    await shift.when('09:51 dry new rail-1..rail-40');
    expect(new Set(shift.objections().map(({ code }) => code))).toEqual(new Set(['not-coated']));
    expect(await shift.when('09:52 dry new rail-1..rail-40 already')).toHaveProperty('recorded');
  });
});

describe('a crew whose coats may name parts', () => {
  const named = [...filtered, '09:43 @omar: set new-parts on'];

  it.each(['coat rail-1..rail-3 1 brush', 'prep rail-1..rail-3 sa2.5'])(
    'given "%s", then nobody is asked',
    async (line) => {
      const shift = await given(named);
      expect(await shift.when(`09:50 ${line}`)).toHaveProperty('recorded');
    },
  );

  it.each(['coat imp-1 1 brush', 'coat a-1 1 brush', 'dry rail-1', 'surface rail-1 19C'])(
    'given "%s", which may be a slip or begins no work, then it is asked about all the same',
    async (line) => {
      const shift = await given(named);
      expect(await shift.when(`09:50 ${line}`)).toEqual({ unclear: 'new-part' });
    },
  );

  it('given nobody leads who says it, then it is not set', async () => {
    const shift = await given(filtered);
    expect(await shift.when('09:43 set new-parts on')).toEqual({ unclear: 'may-not-settle' });
  });
});

describe('words that are no part', () => {
  it.each([
    'prep impeller-1 sa2.5 60uwn',
    'coat acetone 1 brush',
    'coat new acetone 1 brush',
    'prep ipa sa2.5',
    'part steel',
    'coat new thinner 1 brush',
  ])('given "%s", then it is not read', async (line) => {
    const shift = await given(filtered);
    expect(await shift.when(`09:50 ${line}`)).toHaveProperty('misread');
  });
});
