// The day as the record has it.

import { describe, expect, it } from 'vitest';
import { localDay } from '../../../core/crew/local-day.ts';
import { dayRecord, daySpan } from '../../../core/records/day.ts';
import { type EpochMs, epochMs } from '../../../core/units.ts';
import { given, type Shift } from '../given.ts';

const shiftOfTheDay = [
  '07:50 air 24C 48%',
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1200g 1212g',
  '08:30 stop 1',
  '08:50 stir 1',
  '09:00 surface 22C',
  '10:05 filter 1',
  '10:10 coat new lid-1 lid-2 1 dip',
  '10:12 coat new impeller-7 1 brush',
  '10:25 dry lid-1 lid-2 impeller-7',
  '10:30 cure lid-1 lid-2 room',
  '10:30 cure impeller-7 oven 90C',
  '10:30 temp impeller-7 92C',
  '11:30 temp impeller-7 90C',
  '11:30 out impeller-7',
  '11:45 air 26C 52%',
  '12:50 coat new lid-3 1 dip already',
  '13:00 amend air 25C misread',
  '13:10 empty 1 300g',
];

async function day(shift: Shift, date = '2026-03-02', now: EpochMs = shift.time('Mon 18:00')) {
  const span = daySpan(date, 'UTC');
  if (span === undefined) throw new Error(`${date} is no day`);
  return dayRecord(await shift.shop(), span, now);
}

describe('the day', () => {
  it('given a shift, then masses, ratio, stirring, parts by method, air and corrections are those of the day', async () => {
    const record = await day(await given(shiftOfTheDay));
    const [batch] = record.batches;
    expect(batch).toMatchObject({ weighedThatDay: true, batch: { weighing: { partAGrams: 1200, partBGrams: 1212 } } });
    // (1212 / 1200) - 1 = 1 %.
    expect(batch?.ratioErrorPercent).toBeCloseTo(1, 9);
    // 30 + 75 minutes given; 102 wanted at 24 degC.
    expect(batch?.blend.givenMinutes).toBeCloseTo(105, 9);
    expect(batch?.blend.wantedMinutes).toBeCloseTo(102, 6);
    expect(record.partsByMethod).toEqual([
      { method: 'dip', parts: ['lid-1', 'lid-2', 'lid-3'] },
      { method: 'brush', parts: ['impeller-7'] },
    ]);
    expect(record.airCelsius).toEqual([24, 25]);
    expect(record.humidityPercent).toEqual([48, 52]);
    expect(record.corrections).toMatchObject([{ correction: { why: 'misread', wasFact: { celsius: 26 } } }]);
    expect(record.idle).toBe(false);
  });

  it('given a part that is dry and was never put to cure, then it is listed with since when', async () => {
    const shift = await given([...shiftOfTheDay, '15:00 coat new lid-9 1 dip already', '15:12 dry lid-9']);
    const { waiting } = await day(shift);
    expect(waiting.map(({ part, dryAt }) => `${part} ${shift.spoken(dryAt)}`)).toContain('lid-9 15:12');
    await shift.when('15:13 cure lid-9 room');
    expect((await day(shift)).waiting.map(({ part }) => part)).not.toContain('lid-9');
  });

  it('given lids curing in the room, then they are listed with when they ring, and the part out of the oven is not', async () => {
    const shift = await given(shiftOfTheDay);
    const { curing } = await day(shift);
    expect(curing.map(({ part, dueAt }) => `${part} ${dueAt && shift.spoken(dueAt)}`)).toEqual([
      'lid-1 Tue 10:30',
      'lid-2 Tue 10:30',
    ]);
  });

  it('given a coat past the pot life, then it is among the deviations', async () => {
    const { deviations } = await day(await given(shiftOfTheDay));
    expect(deviations.map(({ objection }) => objection.code)).toContain('past-pot-life');
  });

  it('given bells that rang, then those nobody acted on after are unanswered, and lateness is in minutes', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '10:02 filter 1']);
    await shift.when('10:40 coat new lid-1 1 dip at 10:10');
    await shift.until('18:00');
    const { rings } = await day(shift);
    expect(rings.find(({ key }) => key === 'batch/1/stir-done')).toMatchObject({ lateMinutes: 0, answered: true });
    // Due at 10:20, told of at 10:40.
    expect(rings.find(({ key }) => key === 'part/lid-1/flash-least')).toMatchObject({
      lateMinutes: 20,
      answered: false,
    });
    expect(rings.find(({ key }) => key === 'batch/1/pot-end')).toMatchObject({ answered: false });
  });

  it('given the next day without an act, then it is idle, and what still cures is told', async () => {
    const shift = await given(shiftOfTheDay);
    const record = await day(shift, '2026-03-03', shift.time('Tue 09:00'));
    expect(record).toMatchObject({ idle: true, batches: [], partsByMethod: [], deviations: [] });
    expect(record.curing.map(({ part }) => part)).toEqual(['lid-1', 'lid-2']);
  });

  it('given a pot of yesterday used today, then it stands in both days and was weighed in one', async () => {
    const shift = await given(['23:00 air 15C 50%', '23:00 mix 1kg', '23:00 weigh 1 500g 500g', 'Tue 01:05 filter 1']);
    expect((await day(shift)).batches).toMatchObject([{ weighedThatDay: true }]);
    expect((await day(shift, '2026-03-03')).batches).toMatchObject([{ weighedThatDay: false }]);
  });
});

describe('the span of a day', () => {
  it.each([
    ['2026-03-28', 24],
    ['2026-03-29', 23],
    ['2026-10-25', 25],
  ])('given %s in Madrid, then it has %d hours', (date, hours) => {
    const span = daySpan(date, 'Europe/Madrid');
    expect(span && (span.to - span.from) / 3_600_000).toBe(hours);
  });

  it('given a date that the calendar does not have, then there is no such day', () => {
    expect(daySpan('2026-02-30', 'UTC')).toBeUndefined();
  });

  it('given half past midnight after the clocks went forward, then yesterday is the short Sunday', () => {
    const monday = epochMs(Date.UTC(2026, 2, 29, 22, 30));
    expect(localDay('Europe/Madrid', monday)).toBe('2026-03-30');
    expect(localDay('Europe/Madrid', monday, 1)).toBe('2026-03-29');
  });
});
