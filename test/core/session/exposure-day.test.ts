// What people breathed over a working day: by the rule's own examples, with what was not measured taken at the worst that was told.

import { describe, expect, it } from 'vitest';
import { exposureDays } from '../../../core/session/exposure-day.ts';
import { epochMs, hours, partsPerMillion } from '../../../core/units.ts';
import { given } from '../given.ts';

const dayMs = 86_400_000;
const monday = epochMs(Date.UTC(2026, 2, 2));

/** Of the working days that began on that one, as UTC has it. */
async function daysAfter(lines: readonly string[], from = monday) {
  const { crew } = await (await given(lines)).shop();
  return exposureDays(crew.spray, { from, to: epochMs(from + dayMs) }, epochMs(from + dayMs));
}

const soleLine = async (...lines: readonly string[]) => (await daysAfter(lines))[0]?.breathed[0];

describe('exposure over a working day', () => {
  it('given 2 h at 150, 2 h at 75 and 4 h at 50 ppm, then 81.25 ppm: 29 CFR 1910.1000(d)(1)', async () => {
    const told = ['10:00 exposure kari mek 150ppm 2h', '12:00 exposure kari mek 75ppm 2h'];
    const breathed = await soleLine(...told, '16:00 exposure kari mek 50ppm 4h');
    expect(breathed).toMatchObject({ measured: 81.25, assumed: 81.25, rest: 0, is: 'within' });
  });

  it('given 500 of 1000, 45 of 200 and 40 of 200 ppm, then 0.925 together: 29 CFR 1910.1000(d)(2)', async () => {
    const told = ['acetone 500ppm', 'mek 45ppm', 'toluene 40ppm'].map((each) => `16:00 exposure kari ${each} 8h`);
    const [day] = await daysAfter(told);
    expect(day?.mixture?.assumed).toBeCloseTo(0.925, 12);
    expect(day?.mixture?.is).toBe('within');
  });

  it('given 2 h of a shift told, then the other 6 are taken at the highest told, not as clean air', async () => {
    const breathed = await soleLine('10:00 exposure kari mek 250ppm 2h');
    expect(breathed).toMatchObject({ measured: 62.5, assumed: 250, rest: 6, is: 'may-be' });
    const told = await soleLine('10:00 exposure kari mek 250ppm 2h', '16:00 exposure kari mek 0ppm 6h');
    expect(told).toMatchObject({ measured: 62.5, assumed: 62.5, rest: 0, is: 'within' });
  });

  it('given a shift of ten hours, then it is still divided by eight', async () => {
    expect(await soleLine('18:00 exposure kari mek 180ppm 10h')).toMatchObject({ assumed: 225, is: 'over' });
  });

  it('given mg/m3, then it is ppm at 25 degC: 375 mg/m3 of toluene are 99.6 ppm', async () => {
    const breathed = await soleLine('16:00 exposure kari toluene 375mg/m3 8h');
    expect(breathed?.measured).toBeCloseTo(99.57, 2);
  });

  it('given toluene above its ceiling, then 10 minutes a shift up to 500 ppm pass, no more: Table Z-2', async () => {
    const short = async (told: string) => (await soleLine(`16:00 exposure kari toluene ${told}`))?.short;
    expect(await short('450ppm 10m')).toMatchObject([{ limit: { kind: 'ceiling', ppm: 300 }, is: 'within' }]);
    expect(await short('450ppm 11m')).toMatchObject([{ is: 'over' }]);
    expect(await short('510ppm 1m')).toMatchObject([{ is: 'over' }]);
    expect(await short('100ppm 8h')).toMatchObject([{ is: 'not-measured' }]);
  });

  it('given another country’s law, then its limit over 15 minutes: a shorter task may be over it, a longer one is', async () => {
    const short = async (told: string) =>
      (await soleLine('08:00 @rosa: set law eu', `16:00 exposure kari toluene ${told}`))?.short;
    expect(await short('150ppm 15m')).toMatchObject([{ limit: { kind: 'short-term', ppm: 100 }, is: 'over' }]);
    expect(await short('150ppm 9m')).toMatchObject([{ is: 'may-be' }]);
    expect(await short('150ppm 12m')).toMatchObject([{ is: 'over' }]);
    expect(await short('90ppm 15m')).toMatchObject([{ is: 'within' }]);
    expect(await short('40ppm 4h')).toMatchObject([{ is: 'not-measured' }]);
  });

  it('given what the crew has set, then it counts where it is stricter', async () => {
    const told = ['08:00 @rosa: set limit 2-butoxyethanol 5ppm', '16:00 exposure kari 2-butoxyethanol 6ppm 8h'];
    expect(await soleLine(...told)).toMatchObject({ limit: { ppm: 5, stands: 'set' }, is: 'over' });
  });

  it('given no limit of the law, then the lowest known stands in', async () => {
    const breathed = await soleLine('16:00 exposure kari hdi 0.004ppm 8h');
    expect(breathed?.limit?.stands).toBe('stand-in');
    expect(breathed?.is).toBe('over');
  });

  it('given a night shift, then it is one working day; given eleven hours between, two', async () => {
    const night = ['22:00 exposure kari mek 100ppm 2h', 'Tue 05:00 exposure kari mek 100ppm 6h'];
    expect(await daysAfter(night)).toMatchObject([{ breathed: [{ rest: hours(0) }] }]);
    const two = [...night, 'Tue 16:00 exposure kari mek 300ppm 8h'];
    expect(await daysAfter(two)).toMatchObject([{ breathed: [{ measured: partsPerMillion(100) }] }]);
    expect(await daysAfter(two, epochMs(monday + dayMs))).toMatchObject([{ breathed: [{ measured: 300 }] }]);
  });

  it('given more than a day’s hours, then it is asked, and nothing is recorded', async () => {
    const shift = await given(['08:00 exposure kari mek 10ppm 20h']);
    expect(await shift.when('09:00 exposure kari mek 10ppm 5h')).toEqual({ unclear: 'more-than-a-day' });
    expect(await shift.when('09:00 exposure kari acetone 10ppm 5h')).toEqual({ recorded: ['ExposureMeasured'] });
  });

  it('given it is taken back, then it counts no more', async () => {
    expect(await daysAfter(['10:00 exposure kari mek 250ppm 2h', '10:01 undo'])).toEqual([]);
  });
});
