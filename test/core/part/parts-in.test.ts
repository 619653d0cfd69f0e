// Parts come in, many in one message: a row books at once as any strict line, all else is shown first; what is known already stays
// as it is, and one undo takes all of it back. Parts, jobs and serials are invented.

import { describe, expect, it } from 'vitest';
import { demoCrew, given } from '../given.ts';

const crew = { ...demoCrew, language: 'es' };
const booked = (count: number) => ({ recorded: Array.from({ length: count }, () => 'PartReceived') });

describe('a row of parts', () => {
  it.each([
    ['parts in job 88 rail-01..rail-40', 'rail-01', 'rail-40', 40],
    ['book in rail-01 to rail-40 job 88', 'rail-01', 'rail-40', 40],
    ['part rail-01..40 job 88', 'rail-01', 'rail-40', 40],
    ['parts in rail-01–rail-40 job 88', 'rail-01', 'rail-40', 40],
    ['parts in rail 1-12 job 88', 'rail-1', 'rail-12', 12],
    ['parts in rail 1 to 12 job 88', 'rail-1', 'rail-12', 12],
    ['piezas riel-1 a riel-12 orden 88', 'riel-1', 'riel-12', 12],
    ['apunta las piezas riel 1-12 del trabajo 88', 'riel-1', 'riel-12', 12],
    ['parts in a-08..a-11 job 88', 'a-08', 'a-11', 4],
  ])('given "%s", then each has a stream of its own, in one act', async (line, first, last, count) => {
    const shift = await given([], { crew });
    expect(await shift.when(`08:00 ${line}`)).toEqual(booked(count));
    const { parts } = await shift.shop();
    expect([...parts.keys()].at(0)).toBe(first);
    expect([...parts.keys()].at(-1)).toBe(last);
    expect([...parts.values()].map(({ details }) => details.job)).toEqual(Array.from({ length: count }, () => '88'));
    const events = await shift.events();
    expect(new Set(events.map(({ request }) => request)).size).toBe(1);
  });

  it('given what is said of the row, then each of it has it', async () => {
    const shift = await given(['08:00 parts in rail-1..rail-3 steel 6mm 0.2m2 max 120C']);
    const { parts } = await shift.shop();
    const details = { metal: 'steel', wallMillimetres: 6, areaSquareMetres: 0.2, highestCelsius: 120 };
    expect([...parts.values()].map((part) => part.details)).toEqual([details, details, details]);
  });

  it('given an undo, then all of it is gone', async () => {
    const shift = await given(['08:00 parts in rail-01..rail-40', '08:01 undo']);
    expect([...(await shift.shop()).parts.keys()]).toEqual([]);
  });

  it.each([
    ['parts in rail-1..rail-900', 'too-many-parts'],
    ['parts in rail-1..rail-4 serial 4411', 'left-over'],
    ['parts in steel', 'incomplete'],
    ['parts waiting', 'left-over'],
  ])('given "%s", then nothing is booked', async (line, misread) => {
    const shift = await given([]);
    expect(await shift.when(`08:00 ${line}`)).toEqual({ misread });
  });
});

describe('parts of which some are known', () => {
  it('given a row that reaches into them, then what would be new is asked about, and nothing is booked', async () => {
    const shift = await given(['08:00 parts in rail-1..rail-3 job 88']);
    const before = (await shift.events()).length;
    expect(await shift.when('08:05 parts in rail-2..rail-5 job 90')).toEqual({ unclear: 'parts-in' });
    expect(shift.asked()).toMatchObject({
      fresh: [{ part: 'rail-4' }, { part: 'rail-5' }],
      known: [{ part: 'rail-2' }, { part: 'rail-3' }],
    });
    expect((await shift.events()).length).toBe(before);
  });

  it('given all of them are, then what is said is noted of each', async () => {
    const shift = await given(['08:00 parts in rail-1..rail-3 job 88', '08:05 part rail-1..rail-3 max 90C']);
    const { parts } = await shift.shop();
    expect([...parts.values()].map(({ details }) => details.highestCelsius)).toEqual([90, 90, 90]);
  });
});

describe('names that are not one list', () => {
  it.each(['part x-1 dwg-77 steel', 'part x-1 y-2'])(
    'given "%s", then it is asked about: the second may be no part',
    async (line) => {
      const shift = await given([]);
      expect(await shift.when(`08:00 ${line}`)).toEqual({ unclear: 'parts-in' });
    },
  );

  it.each(['part x-1, y-2 steel', 'part x-1 and y-2', 'part x-1 x-2 steel'])(
    'given "%s", then both are booked',
    async (line) => {
      const shift = await given([]);
      expect(await shift.when(`08:00 ${line}`)).toEqual(booked(2));
    },
  );
});
