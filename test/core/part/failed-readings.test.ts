// Readings that fail hold their part until a lead lifts it. The film rule (8 to 20 um, three readings, the gauge off by
// 1 um) is the demo sheet's and invented; that 2B, by ISO 2409 3, fails: common practice, no source.

import { describe, expect, it } from 'vitest';
import { crossCutFails } from '../../../core/calc/adhesion.ts';
import { decide } from '../../../core/decide.ts';
import { adhesionRatings } from '../../../core/grades.ts';
import { foldPart } from '../../../core/part/part.ts';
import { deviationsIn } from '../../../core/records/deviations.ts';
import type { Shop } from '../../../core/shop.ts';
import { epochMs } from '../../../core/units.ts';
import { given } from '../given.ts';

const coated = [
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'],
  ...[
    '10:00 coat new a1 1 brush',
    '10:12 dry a1',
    '10:12 cure a1 oven 90C',
    '10:12 temp a1 90C',
    '11:12 temp a1 90C',
    '11:12 out a1',
  ],
];

const verdictOf = async (shift: Awaited<ReturnType<typeof given>>) => (await shift.shop()).parts.get('a1')?.verdict;

describe('the worst set stands until a lead lifts it', () => {
  it('given whoever read it takes the reading back, then the hold stays: taking back lifts nothing', async () => {
    const shift = await given([...coated, '11:15 film a1 4 5 5um', '11:16 undo']);
    expect((await shift.shop()).parts.get('a1')?.films).toEqual([]);
    expect(await verdictOf(shift)).toMatchObject({ is: 'held', because: ['film-outside'] });
    expect(await shift.when('11:17 release a1')).toEqual({ objected: ['on-hold'] });
  });

  it('given 4, 5 and 5 um where 8 are the least, then it is a deviation, and the hold says which reading', async () => {
    const shift = await given(coated);
    expect(await shift.when('11:15 film a1 4 5 5um')).toEqual({ recorded: ['FilmRead', 'PartHeld'] });
    expect(await shift.deviations()).toEqual(['FilmRead 11:15 film-outside']);
    const failed = [{ of: 'film', micrometres: [4, 5, 5] }];
    expect(await verdictOf(shift)).toMatchObject({ is: 'held', because: ['film-outside'], failed });
  });

  it('when three sets of 9 um and more follow, then it stays on hold: crew is objected to, a lead lifts it', async () => {
    const shift = await given([
      ...coated,
      '11:15 film a1 4 5 5um',
      '11:16 film a1 9.5 10 10um',
      '11:17 film a1 12 12 12um',
    ]);
    expect(await shift.when('11:20 release a1')).toEqual({ objected: ['on-hold'] });
    expect(await shift.when('11:20 release a1 permit looks fine')).toEqual({ unclear: 'may-not-permit' });
    expect(await shift.when('11:21 @omar: release a1')).toEqual({ objected: ['on-hold'] });
    expect(await shift.when('11:21 @omar: release a1 permit customer agreed')).toEqual({ recorded: ['PartReleased'] });
    expect(await shift.deviations()).toEqual([
      'FilmRead 11:15 film-outside',
      'PartReleased 11:21 on-hold permitted: customer agreed',
    ]);
  });

  it('given sets within the rule, too few, or in doubt by the gauge, then nothing is held', async () => {
    const shift = await given(coated);
    for (const films of ['12 13 14', '12 14', '8.5 12 13']) {
      expect(await shift.when(`11:15 film a1 ${films}um`)).toEqual({ recorded: ['FilmRead'] });
    }
    expect(await shift.when('11:20 release a1')).toEqual({ recorded: ['PartReleased'] });
  });

  it('given one reading of 4 um alone, then it fails though three are asked for', async () => {
    const shift = await given(coated);
    expect(await shift.when('11:15 film a1 4um')).toEqual({ recorded: ['FilmRead', 'PartHeld'] });
  });

  it('given no film was asked for, then a part is released without one', async () => {
    expect(await (await given(coated)).when('11:20 release a1')).toEqual({ recorded: ['PartReleased'] });
  });
});

describe('adhesion and rubs', () => {
  it('given the two scales, then 2B and worse fail, 3 and worse of the other', () => {
    expect(adhesionRatings.filter((rating) => crossCutFails(rating))).toEqual(['2B', '1B', '0B', '3', '4', '5']);
  });

  it.each([
    ['adhesion a1 0B', 'AdhesionTested', 'adhesion-failed'],
    ['adhesion a1 2B coupon', 'AdhesionTested', 'adhesion-failed'],
    ['adhesion a1 3', 'AdhesionTested', 'adhesion-failed'],
    ['rub a1 50 through', 'SolventRubbed', 'rubbed-through'],
  ])('given "%s", then it is recorded, a deviation, and holds', async (line, event, code) => {
    const shift = await given(coated);
    expect(await shift.when(`11:15 ${line}`)).toEqual({ recorded: [event, 'PartHeld'] });
    expect(await shift.deviations()).toEqual([`${event} 11:15 ${code}`]);
    expect(await shift.when('11:20 release a1')).toEqual({ objected: ['on-hold'] });
  });

  it.each(['adhesion a1 3B', 'adhesion a1 2', 'rub a1 50 no-effect', 'rub a1 50 softened'])(
    'given "%s", then nothing is held',
    async (line) => {
      const shift = await given([...coated, `11:15 ${line}`]);
      expect(await shift.when('11:20 release a1')).toEqual({ recorded: ['PartReleased'] });
    },
  );

  it('given a film and an adhesion that fail, and somebody’s own hold, then the hold has all three reasons', async () => {
    const shift = await given([
      ...coated,
      '11:15 film a1 4 5 5um',
      '11:16 adhesion a1 1B',
      '11:17 hold a1 orange peel',
    ]);
    expect(await verdictOf(shift)).toMatchObject({
      why: 'orange peel',
      because: ['film-outside', 'adhesion-failed'],
      failed: [{ of: 'film' }, { of: 'adhesion', rating: '1B' }],
    });
  });
});

describe('what is corrected or told late', () => {
  it('given a film that is amended to 5, 6 and 12 um, then it holds as it would have at the time', async () => {
    const shift = await given([...coated, '11:15 film a1 12 13 12um']);
    expect(await shift.when('11:20 amend a1 film 5 6 12um misread')).toEqual({ recorded: ['Amended', 'PartHeld'] });
    expect(await shift.deviations()).toEqual(['FilmRead 11:15 film-outside']);
    expect(await verdictOf(shift)).toMatchObject({ failed: [{ of: 'film', micrometres: [5, 6, 12] }] });
  });

  it('when it was released in between, then it is on hold again', async () => {
    const shift = await given([...coated, '11:15 film a1 12 13 12um', '11:16 release a1']);
    await shift.when('11:20 amend a1 film 5 6 12um misread');
    expect(await verdictOf(shift)).toMatchObject({ is: 'held', because: ['film-outside'] });
  });

  it('when the amendment is undone, then the figures are as before, and the hold stays a lead’s to lift', async () => {
    const shift = await given([...coated, '11:15 film a1 12 13 12um', '11:20 amend a1 film 5 6 12um misread']);
    expect(await shift.when('11:21 undo')).toEqual({ recorded: ['Amended'] });
    expect((await shift.shop()).parts.get('a1')?.films.at(-1)?.micrometres).toEqual([12, 13, 12]);
    expect(await shift.deviations()).toEqual([]);
    expect(await verdictOf(shift)).toMatchObject({ is: 'held', because: ['film-outside'] });
  });

  it('given a failing film that is amended to a good one, then the hold stays a lead’s to lift', async () => {
    const shift = await given([...coated, '11:15 film a1 4 5 5um', '11:20 amend a1 film 12 13 12um wrong shim']);
    expect(await shift.deviations()).toEqual([]);
    expect(await shift.when('11:21 release a1')).toEqual({ objected: ['on-hold'] });
  });

  it('given a failing film told late, after a release that did not know of it, then the part is on hold', async () => {
    const shift = await given([...coated, '11:15 release a1', '11:30 film a1 4 5 5um at 11:13']);
    expect(await verdictOf(shift)).toMatchObject({ is: 'held', because: ['film-outside'] });
  });
});

describe('a record from before readings held anything', () => {
  /** The same record without the holds that readings make. */
  const asBefore = (shop: Shop): Shop => {
    const parts = [...shop.parts.values()].map((part) => {
      const entries = part.entries.filter(({ fact }) => fact.type !== 'PartHeld');
      return [part.name, foldPart(part.name, entries)] as const;
    });
    return { ...shop, parts: new Map(parts) };
  };
  const failing = [...coated, '11:15 film a1 4 5 5um'];
  const release = { verb: 'release', parts: ['a1'] } as const;

  it('given a part that was released then, then it is neither marked nor held anew', async () => {
    const shift = await given([...failing, '11:20 @omar: release a1 permit customer agreed']);
    const shop = asBefore(await shift.shop());
    expect([deviationsIn(shop), shop.parts.get('a1')?.verdict?.is]).toEqual([[], 'released']);
  });

  it('given one that waits, when it is released now, then its failing film objects', async () => {
    const shift = await given(failing);
    const shop = asBefore(await shift.shop());
    const now = epochMs(shift.time('11:30'));
    const said = { command: release, by: 'kari', at: now, now, stance: { is: 'asked' } } as const;
    expect(shop.parts.get('a1')?.verdict).toBeUndefined();
    expect(decide(shop, said)).toMatchObject({
      kind: 'objected',
      objections: [{ code: 'on-hold', because: ['film-outside'], failed: [{ of: 'film', micrometres: [4, 5, 5] }] }],
    });
  });
});
