// Cans that are received sealed: a can is opened by its lot alone, the rest is counted down, and what expires is told as of
// open cans. Invented lots and days.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const received = ['Mon 08:00 received 4x5kg A lot 7731 exp 12/2026'];

describe('given four cans of Part A received', () => {
  it('when one is opened by its lot, then its size and last day are those that were received, and three are left', async () => {
    const shift = await given(received);
    expect(await shift.when('08:05 open A lot 7731')).toEqual({ objected: ['no-gas'] });
    expect(await shift.when('08:05 open A lot 7731 gas')).toEqual({ recorded: ['CanOpened'] });
    const { cans, crew } = await shift.shop();
    expect(cans.get(1)).toMatchObject({ openedGrams: 5000, expires: '2026-12-31', lot: '7731' });
    expect(crew.sealed).toMatchObject([{ received: 4, left: 3 }]);
    expect((await shift.events()).at(-1)?.alsoUnder).toEqual(['crew/crew']);
  });

  it('when the opening is undone, then four stand there again; when the receipt is, then none', async () => {
    const shift = await given([...received, '08:05 open A lot 7731 gas', '08:06 undo']);
    expect((await shift.shop()).crew.sealed).toMatchObject([{ left: 4 }]);
    await shift.when('08:07 undo');
    expect((await shift.shop()).crew.sealed).toEqual([]);
  });

  it('when the weight was wrong, then an amendment puts it right for the next opening', async () => {
    const shift = await given([...received, '08:02 amend received 4kg "misread"', '08:05 open A lot 7731 gas']);
    expect((await shift.shop()).cans.get(1)?.openedGrams).toBe(4000);
  });

  it('when all are opened, or the lot is another, then the size is asked, and said it is opened all the same', async () => {
    const shift = await given(['Mon 08:00 received 5kg B lot 8', '08:01 open B lot 8']);
    expect(await shift.when('08:02 open B lot 8')).toEqual({ unclear: 'can-size-needed' });
    expect(await shift.when('08:02 open B lot 8 5kg')).toEqual({ recorded: ['CanOpened'] });
    expect((await shift.shop()).crew.sealed).toMatchObject([{ left: 0 }]);
  });

  it('when cans of two sizes of the lot stand there, then which size is asked, and each is counted by itself', async () => {
    const shift = await given([...received, '08:01 received 2x1kg A lot 7731']);
    expect(await shift.when('08:02 open A lot 7731 gas')).toEqual({ unclear: 'can-size-needed' });
    expect(shift.asked()).toMatchObject({ sizes: [5000, 1000] });
    await shift.when('08:02 open A lot 7731 1kg gas');
    expect((await shift.shop()).crew.sealed.map(({ left }) => left)).toEqual([4, 1]);
  });

  it('when it is of another product, then it is none of these', async () => {
    const shift = await given(received);
    expect(await shift.when('08:02 open A lot 7731 demo-build gas')).toEqual({ unclear: 'can-size-needed' });
  });
});

describe('given a sealed can whose last day is Thursday', () => {
  const soon = ['Mon 08:00 received 5kg B lot 8 exp 2026-03-05'];

  it('when mornings come, then it rings within its week, and on the day after', async () => {
    const shift = await given(soon);
    await shift.until('Tue 08:00');
    expect(shift.rung().map(({ key }) => key)).toContain('crew/morning/2026-03-03');
    expect(Object.keys(await shift.plan())).toContain('crew/morning/2026-03-06');
  });

  it('when it is opened on Friday, then the bot objects by the day that was received with it', async () => {
    const shift = await given(soon);
    expect(await shift.when('Fri 08:00 open B lot 8')).toEqual({ objected: ['can-expired'] });
  });
});
