// What went on a part and from which lots; what became of a lot.

import { describe, expect, it } from 'vitest';
import { periodRecord } from '../../../core/records/period.ts';
import { spanOf } from '../../../core/records/span.ts';
import { timelineOf } from '../../../core/records/timeline.ts';
import { traceBatch, traceLot, tracePart } from '../../../core/records/trace.ts';
import { given, type Shift } from '../given.ts';

const shiftWithLots = [
  '07:40 open A lot 7731 5kg gas',
  '07:41 open B lot 8802 5kg',
  '07:45 part impeller-7 serial 4411 job 88 cast-iron 12mm 0.8m2',
  '07:50 air 24C 48%',
  '07:55 prestir 1',
  '08:00 mix 2.4kg',
  '08:00 weigh 3 1200g 1212g already',
  '08:01 blanket 1',
  '09:50 stop 3',
  '09:50 filter 3',
  '10:00 coat new impeller-7 lid-1 3 brush',
  '10:12 dry impeller-7',
  '10:15 cure impeller-7 oven 90C',
  '10:30 temp impeller-7 92C',
  '11:40 temp impeller-7 90C',
  '11:40 out impeller-7',
  '11:45 film impeller-7 12 14 13um',
  '11:50 amend 3 weigh 1200g 1200g wrong scale',
  '11:55 empty 3 300g',
];

function dayOf(shift: Shift) {
  const span = spanOf({ kind: 'range', from: '2026-03-02', to: '2026-03-02' }, shift.time('Mon 12:00'), 'UTC');
  if (span === undefined) throw new Error('no such day');
  return span;
}

describe('a trace', () => {
  it('given a coated part, then its lots, the air then, its steps with who and when, and the correction', async () => {
    const trace = tracePart(await (await given(shiftWithLots)).shop(), 'impeller-7');
    const [coat] = trace?.coats ?? [];
    expect(coat?.lots.map(({ can, component, grams }) => [can.lot, component, grams])).toEqual([
      ['7731', 'part-a', 1200],
      ['8802', 'part-b', 1200],
    ]);
    expect(coat?.air).toMatchObject({ celsius: 24, relativeHumidityPercent: 48, surfaceCelsius: undefined });
    const types = trace?.steps.map(({ fact }) => fact.type);
    expect(types?.slice(0, 3)).toEqual(['PartReceived', 'BatchOpened', 'PartsWeighed']);
    expect(types).not.toContain('Rang');
    const weighed = trace?.steps.find(({ fact }) => fact.type === 'PartsWeighed');
    expect(weighed?.corrections).toMatchObject([{ why: 'wrong scale', wasFact: { partBGrams: 1212 } }]);
    // The other part's coat from the same pot is no step of this one.
    expect(trace?.steps.filter(({ fact }) => fact.type === 'CoatApplied')).toHaveLength(1);
  });

  it('given a lot, then its can with what is left, its batches and the parts that they went on', async () => {
    const trace = traceLot(await (await given(shiftWithLots)).shop(), '7731', ['can/1']);
    expect(trace?.cans.map(({ can, leftGrams }) => [can.number, leftGrams])).toEqual([[1, 3800]]);
    expect(trace?.batches).toEqual([{ batch: 3, grams: 1200, parts: ['impeller-7', 'lid-1'] }]);
    expect(trace?.parts.map(({ name, phase }) => [name, phase?.is])).toEqual([
      ['impeller-7', 'cured'],
      ['lid-1', 'flashing'],
    ]);
  });

  it('given a batch without cans, then its lots are not known and its parts are', async () => {
    const shift = await given([
      '08:00 air 24C 48%',
      '08:00 mix 1kg',
      '08:00 weigh 1 500g 500g',
      '08:05 coat new lid-1 1 dip already',
    ]);
    const trace = traceBatch(await shift.shop(), 1);
    expect(trace).toMatchObject({ lots: [], parts: [{ name: 'lid-1' }] });
    expect(trace?.deviations.map(({ objection }) => objection.code)).toContain('not-filtered');
  });

  it('given names that nobody booked in, then nothing is known of them', async () => {
    const shop = await (await given(shiftWithLots)).shop();
    expect(tracePart(shop, 'nobody-1')).toBeUndefined();
    expect(traceBatch(shop, 77)).toBeUndefined();
    expect(traceLot(shop, '7731', [])).toBeUndefined();
  });
});

describe('the fuller day', () => {
  it('given a shift, then planned, mixed, applied, thrown away and the area, by hand', async () => {
    const shift = await given(shiftWithLots);
    const period = periodRecord(await shift.shop(), dayOf(shift), shift.time('Mon 12:00'));
    expect(period.totals).toMatchObject({
      plannedGrams: 2400,
      mixedGrams: 2400,
      thrownGrams: 300,
      appliedGrams: 2100,
      coatedSquareMetres: 0.8,
      notSaid: 0,
    });
    const [batch] = period.batches;
    expect(batch).toMatchObject({
      thrown: { grams: 300, why: 'left-over' },
      partsWithoutArea: 1,
      ratioErrorPercent: 0,
    });
    expect(period.cans.map(({ can, pouredGrams, leftGrams }) => [can.lot, pouredGrams, leftGrams])).toEqual([
      ['7731', 1200, 3800],
      ['8802', 1200, 3800],
    ]);
    expect(period.corrections).toHaveLength(1);
  });

  it('given a pot emptied past its life, then that is why it was thrown away', async () => {
    const shift = await given(['08:00 air 25C 50%', '08:00 mix 1kg', '08:00 weigh 1 500g 500g', '14:00 empty 1 900g']);
    const { batches } = periodRecord(await shift.shop(), dayOf(shift), shift.time('Mon 15:00'));
    expect(batches[0]?.thrown).toEqual({ grams: 900, why: 'past-pot-life' });
  });

  it('given rings heard by going on, then the middle and the slowest answer are told', async () => {
    const shift = await given(shiftWithLots);
    const { rings } = periodRecord(await shift.shop(), dayOf(shift), shift.time('Mon 12:00'));
    expect(rings.count).toBeGreaterThan(3);
    expect(rings.slowest?.minutes).toBeGreaterThanOrEqual(rings.medianMinutes ?? Number.POSITIVE_INFINITY);
  });
});

describe('the day as bars', () => {
  it('given a shift, then pot life, stirring, flash-off and cure stand from and to as they were', async () => {
    const shift = await given(shiftWithLots);
    const { bars, marks } = timelineOf(await shift.shop(), dayOf(shift), shift.time('Mon 12:00'));
    const said = (stream: string, kind: string) =>
      bars
        .filter((bar) => bar.stream === stream && bar.kind === kind)
        .map(({ from, to }) => `${shift.spoken(from)} ${shift.spoken(to)}`);
    expect(said('batch/3', 'pot-life')).toEqual(['08:00 11:55']);
    expect(said('batch/3', 'stirring')).toEqual(['08:00 09:50']);
    expect(said('part/impeller-7', 'flash-off')).toEqual(['10:00 10:12']);
    expect(said('part/impeller-7', 'cure')).toEqual(['10:15 11:40']);
    // Still wet at noon.
    expect(bars.find(({ stream }) => stream === 'part/lid-1')).toMatchObject({ kind: 'flash-off', open: true });
    expect(marks.filter(({ kind }) => kind === 'coat').map(({ stream }) => stream)).toEqual(
      expect.arrayContaining(['part/impeller-7', 'part/lid-1']),
    );
  });
});
