// A first shift: begun by whoever is new, countersigned by somebody else where there is anybody, or left. The crew is
// invented: kari is crew, omar leads, rosa supervises.

import { describe, expect, it } from 'vitest';
import { demoCrew, given, type Shift } from '../given.ts';

const inTheirs = async (shift: Shift) => [...(await shift.shop()).crew.firstShifts.keys()];
const kariAlone = demoCrew.people.filter(({ name }) => name === 'kari');

describe('a first shift', () => {
  it('given who is new says so, then it is on until a lead countersigns it', async () => {
    const shift = await given([]);
    expect(await shift.when('08:00 @kari: first shift')).toEqual({ recorded: ['FirstShiftBegun'] });
    expect(await inTheirs(shift)).toEqual(['kari']);
    expect(await shift.when('08:01 @omar: first shift done Kari')).toEqual({ recorded: ['FirstShiftCountersigned'] });
    expect(await inTheirs(shift)).toEqual([]);
  });

  it('given it is said twice, then the first beginning stands', async () => {
    const shift = await given(['08:00 @kari: first shift', '08:30 @kari: first shift']);
    expect((await shift.shop()).crew.firstShifts.get('kari')?.at).toBe(Date.UTC(2026, 2, 2, 8));
  });

  it.each([
    ['@kari: first shift done kari', 'may-not-settle'],
    ['@omar: first shift done omar', 'may-not-settle'],
    ['@omar: first shift done rosa', 'no-first-shift'],
    ['@kari: first shift off omar', 'may-not-settle'],
    ['@rosa: first shift off', 'no-first-shift'],
  ])('given "%s", then it stays as it is', async (line, code) => {
    const shift = await given(['08:00 @kari: first shift', '08:00 @omar: first shift']);
    expect(await shift.when(`08:01 ${line}`)).toEqual({ unclear: code });
    expect(await inTheirs(shift)).toEqual(['kari', 'omar']);
  });

  it('given nobody else can, then one’s own is countersigned, and stands as by the same person', async () => {
    const shift = await given(['08:00 @kari: first shift'], { crew: { ...demoCrew, people: kariAlone } });
    await shift.when('08:01 @kari: first shift done kari');
    const [, done] = (await shift.shop()).crew.entries;
    expect(done?.fact).toEqual({ type: 'FirstShiftCountersigned', person: 'kari', samePerson: true });
  });

  it.each(['@kari: first shift off', '@omar: first shift off kari'])('given "%s", then it is over', async (line) => {
    const shift = await given(['08:00 @kari: first shift']);
    expect(await shift.when(`08:01 ${line}`)).toEqual({ recorded: ['FirstShiftLeft'] });
    expect(await inTheirs(shift)).toEqual([]);
  });

  it('given the countersign is taken back, then it is on again', async () => {
    const shift = await given(['08:00 @kari: first shift', '08:01 @omar: first shift done kari', '08:02 @omar: undo']);
    expect(await inTheirs(shift)).toEqual(['kari']);
  });

  it('given it was countersigned, then who began it is asked before its beginning is taken back', async () => {
    const shift = await given(['08:00 @kari: first shift', '08:01 @omar: first shift done kari']);
    expect(await shift.when('08:02 @kari: undo')).toEqual({ unclear: 'undo-asks' });
  });
});
