// A dry film told spot by spot. SSPC-PA 2: three readings to a spot, five spots to an area of about 100 ft2, a spot from 80 % of the
// least to 120 % of the most (its publisher's slides); that spots beside one that fails mark how far it goes: from memory.

import { describe, expect, it } from 'vitest';
import { setsJudged } from '../../../core/part/film-set-failed.ts';
import { batchOf } from '../../../core/shop.ts';
import { given, type Shift } from '../given.ts';
import { cured, nominal, pa2 } from './film-by-spots.ts';

const whole = ['11:21 film a1 95 100 105um', '11:22 film a1 98 99 97um', '11:23 film a1 96 97 98um'];
const rest = ['11:24 film a1 90 91 92um', '11:25 film a1 99 98 97um'];

async function setsOf(shift: Shift) {
  const shop = await shift.shop();
  const part = shop.parts.get('a1');
  if (part === undefined) throw new Error('no such part');
  return setsJudged(part, batchOf(shop, part)?.sheet);
}
const verdict = async (shift: Shift) => (await shift.shop()).parts.get('a1')?.verdict;

describe('a film told spot by spot', () => {
  it('given three lines of three readings, then each is recorded as a spot of one set, which is half', async () => {
    const shift = await given([...cured('4m2'), ...whole], { shelf: pa2 });
    const [set, ...more] = await setsOf(shift);
    expect(more).toEqual([]);
    expect(set?.spots.map(({ mean }) => mean?.counted)).toEqual([100, 98, 97]);
    expect(set).toMatchObject({ told: 3, next: { spot: 4, lacks: 3 }, finding: { is: 'half', told: 3, needed: 5 } });
  });

  it('given no readings, then the next spot is asked for and nothing is recorded', async () => {
    const shift = await given([...cured('4m2'), ...whole], { shelf: pa2 });
    expect(await shift.when('11:30 film a1')).toEqual({ unclear: 'film-asked' });
    expect(shift.asked()).toMatchObject({ code: 'film-asked', set: { next: { spot: 4 } } });
  });

  it('given one reading after the other, then they fill one spot', async () => {
    const shift = await given([...cured('4m2'), '11:21 film a1 95um', '11:22 film a1 100um'], { shelf: pa2 });
    expect((await setsOf(shift))[0]).toMatchObject({ told: 0, next: { spot: 1, lacks: 1 } });
    await shift.when('11:23 film a1 105um');
    expect((await setsOf(shift))[0]).toMatchObject({ told: 1, next: { spot: 2, lacks: 3 } });
  });

  it('given half a set, then another goes on with it the next day, and it is one set', async () => {
    const shift = await given([...cured('4m2'), ...whole], { shelf: pa2 });
    await shift.when('Tue 07:30 @rosa: film a1 90 91 92um');
    await shift.when('Tue 07:31 @omar: film a1 99 98 97um');
    expect(await setsOf(shift)).toMatchObject([{ told: 5, next: undefined, finding: { is: 'within' } }]);
  });

  it('given a whole set, then what is told next begins another', async () => {
    const shift = await given([...cured('4m2'), ...whole, ...rest, '11:30 film a1 95 95 95um'], { shelf: pa2 });
    expect(await setsOf(shift)).toMatchObject([{ set: { number: 1 } }, { set: { number: 2 }, told: 1 }]);
  });

  it('given a spot that is whole is told again, then it is asked about; another set is said as such', async () => {
    const shift = await given([...cured('4m2'), ...whole], { shelf: pa2 });
    expect(await shift.when('11:30 film a1 spot 2 90 90 90um')).toEqual({ unclear: 'spot-told' });
    expect(await shift.when('11:31 film a1 spot 1 90 90 90um new-set')).toEqual({ recorded: ['FilmRead'] });
    expect(await setsOf(shift)).toMatchObject([{ told: 3 }, { told: 1 }]);
  });

  it('given spots by their numbers in one line, then none of the numbers is a reading', async () => {
    const shift = await given([...cured('4m2')], { shelf: pa2 });
    expect(await shift.when('11:20 film a1 1: 95 100 105 2: 98 99 97um')).toEqual({
      recorded: ['FilmRead', 'FilmRead'],
    });
    expect((await setsOf(shift))[0]?.spots.map(({ readings }) => readings)).toEqual([
      [95, 100, 105],
      [98, 99, 97],
    ]);
  });

  it('given figures that may be numbered, then it is asked which are readings', async () => {
    const shift = await given([...cured('4m2')], { shelf: pa2 });
    expect(await shift.when('11:20 film a1 1 95 100 105 2 98 99 97um')).toEqual({ misread: 'ambiguous-number' });
  });
});

describe('a spot that fails', () => {
  const failing = [...cured('4m2'), ...whole.slice(0, 2), '11:23 film a1 60 62 64um'];

  it('given its mean is under 80 % of the least, then it holds the part at once, and the set goes on', async () => {
    const shift = await given(failing, { shelf: pa2 });
    expect(await shift.deviations()).toEqual(['FilmRead 11:23 film-outside']);
    expect(await verdict(shift)).toMatchObject({
      is: 'held',
      failed: [{ of: 'film', micrometres: [60, 62, 64], set: 1, spot: 3, meanMicrometres: 62 }],
    });
    expect((await setsOf(shift))[0]).toMatchObject({ told: 3, next: { spot: 4 }, finding: { is: 'outside' } });
  });

  it('given spots beside it, then they are no part of the mean and count for no spot', async () => {
    const shift = await given([...failing, '11:24 film a1 beside 3 99 99 99um'], { shelf: pa2 });
    const [set] = await setsOf(shift);
    expect(set).toMatchObject({ told: 3, next: { spot: 4 } });
    expect(set?.mean).toBeCloseTo((100 + 98 + 62) / 3);
    expect(set?.spots.at(-1)).toMatchObject({ number: 6, near: 3, beyond: [] });
  });

  it('given the five means come to less than the least, then the set fails with its last spot', async () => {
    const thin = [1, 2, 3, 4, 5].map((spot) => `11:2${spot} film a1 70 72 74um`);
    const shift = await given([...cured('4m2'), ...thin], { shelf: pa2 });
    expect(await shift.deviations()).toEqual(['FilmRead 11:25 film-outside']);
    expect((await setsOf(shift))[0]?.finding).toMatchObject({
      findings: [{ what: 'area-below', measured: 72, limit: 80 }],
    });
  });

  it('given a new set that passes, then a lead lifts it with why, and without why it stays', async () => {
    const again = (from: number) => whole.concat(rest).map((line, i) => line.replace(/^\S+/, `11:${from + i}`));
    const shift = await given([...failing, ...rest], { shelf: pa2 });
    for (const line of again(30)) await shift.when(line);
    expect(await verdict(shift)).toMatchObject({ is: 'held' });
    const [first = '', ...others] = again(40).map((line) => line.replace(' film', ' @omar: film'));
    await shift.when(`${first} retest blasted and coated again`);
    for (const line of others) await shift.when(line);
    expect(await verdict(shift)).toBeUndefined();
    expect(await shift.when('11:50 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
  });
});

describe('half a set', () => {
  it('given no job asks for a film, then it never passes a release all the same', async () => {
    const shift = await given([...cured('4m2'), ...whole], { shelf: pa2 });
    expect(await shift.when('11:30 @omar: release a1')).toEqual({ objected: ['film-half'] });
    expect(shift.objections()).toEqual([{ code: 'film-half', told: 3, needed: 5 }]);
    for (const line of rest) await shift.when(line.replace('11:2', '11:3'));
    expect(await shift.when('11:40 @omar: release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given its job asks for one, then the release says how far it is', async () => {
    const shift = await given(['08:00 @omar: set job 88 film', ...cured('4m2'), ...whole], { shelf: pa2 });
    expect(await shift.when('11:30 @omar: release a1')).toEqual({ objected: ['not-given'] });
    expect(shift.objections()).toMatchObject([{ lacking: [{ of: 'film', half: { told: 3, needed: 5 } }] }]);
  });

  it('given a set that passed and half of another, then the half counts', async () => {
    const shift = await given([...cured('4m2'), ...whole, ...rest, '11:30 film a1 95 95 95um'], { shelf: pa2 });
    expect(await shift.when('11:40 @omar: release a1')).toEqual({ objected: ['film-half'] });
  });
});

describe('how many spots', () => {
  it.each([
    ['4m2', 5],
    ['12m2', 10],
    ['27m2', 15],
    ['30m2', 15],
    ['90m2', 15],
    ['100m2', 20],
  ])('given %s, then SSPC-PA 2 asks %i: its square feet decide', async (area, needed) => {
    const shift = await given(cured(area), { shelf: pa2 });
    await shift.when('11:20 film a1');
    expect(shift.asked()).toMatchObject({ set: { terms: { spots: needed } } });
  });

  it('given nobody said the area, then five are the fewest and nothing passes until it is said', async () => {
    const shift = await given([...cured(), ...whole, ...rest], { shelf: pa2 });
    expect((await setsOf(shift))[0]?.finding).toMatchObject({ is: 'area-unknown' });
    await shift.when('11:30 part a1 4m2');
    expect((await setsOf(shift))[0]?.finding).toMatchObject({ is: 'within' });
    await shift.when('11:31 part a1 12m2');
    expect((await setsOf(shift))[0]).toMatchObject({ next: { spot: 6 }, finding: { is: 'half', needed: 10 } });
  });
});

describe('readings left out', () => {
  it('given one is dropped and read again in its line, then it stays in the record and out of the mean', async () => {
    const shift = await given([...cured('4m2'), '11:20 film a1 95 100 180 105 drop 180um'], { shelf: pa2 });
    expect((await setsOf(shift))[0]?.spots[0]).toMatchObject({ dropped: [180], mean: { counted: 100 } });
  });

  it('given it is dropped after it was told, then the reading in its place counts', async () => {
    const lines = [...cured('4m2'), '11:20 film a1 95 100 180um', '11:21 film a1 spot 1 105 drop 180um'];
    const shift = await given(lines, { shelf: pa2 });
    expect((await setsOf(shift))[0]?.spots[0]).toMatchObject({ dropped: [180], mean: { counted: 100 } });
  });

  it('given a rule of its own that lets none be left out, then it counts', async () => {
    const shift = await given([...cured('4m2'), '11:20 film a1 spot 1 12 drop 4um']);
    expect((await setsOf(shift))[0]?.spots[0]).toMatchObject({ dropped: [4], counted: [12, 4] });
    expect(await verdict(shift)).toMatchObject({ is: 'held' });
  });

  it('given ISO 19840, then up to a fifth of the readings may be (from memory), and more of them count', async () => {
    const read = (dropped: number) => `11:20 film a1 spot 1 ${'130 '.repeat(1)}drop ${'70 '.repeat(dropped).trim()}um`;
    const one = await given([...cured('1m2'), read(1)], { shelf: nominal('medium') });
    expect((await setsOf(one))[0]?.spots[0]?.counted).toEqual([105]);
    const two = await given([...cured('1m2'), read(2)], { shelf: nominal('medium') });
    expect((await setsOf(two))[0]?.spots[0]?.counted).toEqual([105, 45, 45]);
  });
});

describe('what is taken off', () => {
  it('given what the gauge shows on the bare metal, then each reading of the set counts without it', async () => {
    const lines = [...cured('4m2'), '11:20 film a1 95 100 105um base 12um', '11:21 film a1 95 100 105um'];
    const shift = await given(lines, { shelf: pa2 });
    expect((await setsOf(shift))[0]?.spots.map(({ mean }) => mean)).toEqual([
      { read: 100, counted: 88 },
      { read: 100, counted: 88 },
    ]);
  });

  it('given ISO 19840 and a medium profile, then 25 um come off (from memory); none where the gauge was set on it', async () => {
    const read = ['11:20 film a1 100um'];
    const medium = await given([...cured('1m2'), ...read], { shelf: nominal('medium') });
    expect((await setsOf(medium))[0]).toMatchObject({ off: { is: 'profile', micrometres: 25 }, mean: 75 });
    const set = await given([...cured('1m2'), ...read], { shelf: nominal('gauge-set-on-profile') });
    expect((await setsOf(set))[0]).toMatchObject({ off: { is: 'set-on-profile' }, mean: 100 });
  });
});

describe('a spot put right', () => {
  it('given spot 2 was another, then only it changes, however many lines it was told in', async () => {
    const told = ['11:21 film a1 95 100 105um', '11:22 film a1 60um', '11:23 film a1 61um', '11:24 film a1 90 91 92um'];
    const shift = await given([...cured('4m2'), ...told.slice(0, 3)], { shelf: pa2 });
    await shift.when('11:24 film a1 62um');
    expect(await verdict(shift)).toMatchObject({ is: 'held' });
    expect(await shift.when('11:25 amend a1 film spot 2 95 96 97um')).toEqual({
      recorded: ['Amended', 'Amended', 'Amended'],
    });
    expect((await setsOf(shift))[0]?.spots.map(({ readings }) => readings)).toEqual([
      [95, 100, 105],
      [95, 96, 97],
    ]);
    // What failed stays failed until a lead disposes of it.
    expect(await verdict(shift)).toMatchObject({ is: 'held' });
  });

  it('given it comes to fail by what it is put right to, then it holds the part', async () => {
    const shift = await given([...cured('4m2'), ...whole], { shelf: pa2 });
    expect(await shift.when('11:30 amend a1 film spot 2 60 60 60um')).toEqual({ recorded: ['Amended', 'PartHeld'] });
  });

  it('given one of several spots of a line, then the others stay as they are', async () => {
    const shift = await given([...cured('1m2'), '11:20 film a1 110 111 112 113um'], { shelf: nominal('medium') });
    await shift.when('11:21 amend a1 film spot 2 120um');
    expect((await setsOf(shift))[0]?.spots.flatMap(({ readings }) => readings)).toEqual([110, 120, 112, 113]);
  });

  it('given it is taken back, then it is asked for again', async () => {
    const shift = await given([...cured('4m2'), ...whole, '11:30 undo'], { shelf: pa2 });
    expect((await setsOf(shift))[0]).toMatchObject({ told: 2, next: { spot: 3 } });
  });
});

describe('figures far off', () => {
  it.each(['9500 9500 9800um', '4000 4100 3900mil', '9.5 9.6 9.8um', '0.1 0.1 0.1mil', '3.9 4 4.1um'])(
    'given %s where 80 to 120 um are asked, then it is asked about, and nothing is recorded',
    async (readings) => {
      const shift = await given(cured('4m2'), { shelf: pa2 });
      expect(await shift.when(`11:20 film a1 spot 1 ${readings}`)).toEqual(
        readings.startsWith('4000') ? { misread: 'impossible' } : { unclear: 'far-reading' },
      );
      expect(await setsOf(shift)).toEqual([]);
    },
  );
});
