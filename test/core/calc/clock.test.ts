// A clock over a log of readings. Stirring as on the demo sheet: 120 minutes at 15 degC, 90 at 30, a straight line between
// (common practice, no source; the temperatures are invented). A reading serves for 240 minutes.

import { describe, expect, it } from 'vitest';
import { dueAt, piecesOf, type Run, readClock, type TemperatureLog } from '../../../core/calc/clock.ts';
import type { DoseRules } from '../../../core/calc/dose.ts';
import { celsius, epochMs, minutes } from '../../../core/units.ts';

const start = Date.UTC(2026, 2, 2, 8);
/** Minutes after eight. */
const at = (past: number) => epochMs(start + past * 60_000);
const minutesPast = (moment: number | undefined) => (moment === undefined ? undefined : (moment - start) / 60_000);

const law = {
  kind: 'table',
  points: [
    { celsius: celsius(15), minutes: minutes(120) },
    { celsius: celsius(30), minutes: minutes(90) },
  ],
} as const;
const atLeast: DoseRules = { law, caution: 'at-least', withoutFigure: 'nothing' };
const atMost: DoseRules = { law, caution: 'at-most', withoutFigure: 'nothing' };

function log(readings: readonly (readonly [number, number])[], lowest: TemperatureLog['lowest'] = []): TemperatureLog {
  return {
    readings: readings.map(([when, temperature]) => ({ at: at(when), celsius: celsius(temperature) })),
    lowest,
    staleAfter: minutes(240),
  };
}
const run = (from: number, to?: number): Run => ({ from: at(from), to: to === undefined ? undefined : at(to) });

describe('when an at-least clock rings', () => {
  it.each<[string, TemperatureLog, readonly Run[], number | undefined]>([
    ['one reading holds', log([[0, 15]]), [run(0)], 120],
    [
      'half at 15, then 30 degC: 60 + 45',
      log([
        [0, 15],
        [60, 30],
      ]),
      [run(0)],
      105,
    ],
    ['a reading from before the start holds', log([[-30, 30]]), [run(0)], 90],
    ['a reading too old at the start still projects', log([[-300, 30]]), [run(0)], 90],
    ['no reading at all: the slowest stands in', log([]), [run(0)], 120],
    ['a pause of ten minutes', log([[0, 30]]), [run(0, 30), run(40)], 100],
    ['stopped before its time', log([[0, 30]]), [run(0, 30)], undefined],
    ['stopped just at its time', log([[0, 30]]), [run(0, 90)], 90],
    ['never started', log([[0, 30]]), [], undefined],
    // 240 minutes without a fresh reading earn nothing; at 20 degC a reading at 300 goes on from what was earned.
    [
      'a reading after a gap',
      log([
        [-200, 12],
        [300, 30],
      ]),
      [run(0)],
      390,
    ],
  ])('%s', (_, readings, runs, due) => {
    const found = minutesPast(dueAt(atLeast, runs, readings));
    if (due === undefined) expect(found).toBeUndefined();
    else expect(found).toBeCloseTo(due, 6);
  });
});

describe('when an at-most clock ends', () => {
  it('given a fresh reading, then it runs by it', () => {
    expect(minutesPast(dueAt(atMost, [run(0)], log([[0, 15]])))).toBeCloseTo(120, 6);
  });

  it('given the reading grows too old on the way, then the rest runs at the sheet’s fastest', () => {
    // Read at -180, it serves until 60: half of 120; the other half at 90 is 45.
    expect(minutesPast(dueAt(atMost, [run(0)], log([[-180, 15]])))).toBeCloseTo(105, 6);
  });

  it('given no reading, then it runs at the fastest from the start', () => {
    expect(minutesPast(dueAt(atMost, [run(0)], log([])))).toBeCloseTo(90, 6);
  });

  it('given half of it as the target, then it rings half way', () => {
    expect(minutesPast(dueAt(atMost, [run(0)], log([[0, 30]]), 0.5))).toBeCloseTo(45, 6);
  });

  it('given a night’s lowest, then it does not serve: nobody knows how warm it was', () => {
    const night = [{ from: at(0), to: at(60), celsius: celsius(15) }];
    expect(minutesPast(dueAt(atMost, [run(0)], log([], night)))).toBeCloseTo(90, 6);
  });
});

describe('a clock of long ago in a log of years', () => {
  it('given readings days later, then it ended when it ended', () => {
    const years = log([
      [0, 30],
      [10_000, 20],
      [20_000, 20],
    ]);
    expect(minutesPast(dueAt(atLeast, [run(0)], years))).toBeCloseTo(90, 6);
    expect(minutesPast(dueAt(atMost, [run(0)], years))).toBeCloseTo(90, 6);
  });

  it('given two days were not enough, then the later readings count', () => {
    const cold = log([
      [0, 12],
      [10_000, 30],
    ]);
    expect(minutesPast(dueAt(atLeast, [run(0)], cold))).toBeCloseTo(10_090, 6);
  });
});

describe('what a clock shows', () => {
  it('given a night’s lowest, then an at-most clock runs at the fastest all the same, and an at-least one by it', () => {
    const night = log([], [{ from: at(0), to: at(60), celsius: celsius(15) }]);
    expect(readClock(atMost, [run(0)], night, at(45)).dose.progress).toBeCloseTo(0.5, 9);
    expect(readClock(atLeast, [run(0)], night, at(60)).dose.progress).toBeCloseTo(0.5, 9);
  });

  it('given a running clock, then its dose, its temperature and when that was read', () => {
    expect(readClock(atLeast, [run(0)], log([[0, 30]]), at(45))).toMatchObject({
      dose: { progress: 0.5, ranMinutes: 45 },
      doneAt: undefined,
      dueAt: at(90),
      running: true,
      celsius: 30,
      readAt: at(0),
      withoutFigure: undefined,
    });
  });

  it('given it is done, then since when', () => {
    expect(readClock(atLeast, [run(0)], log([[0, 30]]), at(100))).toMatchObject({ doneAt: at(90), dueAt: at(90) });
  });

  it('given it stands, or never ran, then it does not run', () => {
    expect(readClock(atLeast, [run(0, 30)], log([[0, 30]]), at(45)).running).toBe(false);
    expect(readClock(atLeast, [], log([[0, 30]]), at(45))).toMatchObject({ running: false, dueAt: undefined });
  });

  it('given a reading exactly at the limit of its age, then it still serves; a moment later it does not', () => {
    const old = log([[-240, 24]]);
    expect(readClock(atLeast, [run(0)], old, at(0)).celsius).toBe(24);
    const later = readClock(atLeast, [run(0)], old, epochMs(at(0) + 1));
    expect(later).toMatchObject({ celsius: undefined, readAt: at(-240), withoutFigure: 'unknown' });
  });

  it('given a temperature outside the table, then on which side', () => {
    expect(readClock(atLeast, [run(0)], log([[0, 12]]), at(1)).withoutFigure).toBe('below');
    expect(readClock(atLeast, [run(0)], log([[0, 31]]), at(1)).withoutFigure).toBe('above');
  });
});

describe('the pieces of a run', () => {
  it('given readings, an age limit and a night’s lowest, then it is cut where what is known changes', () => {
    const night = [{ from: at(300), to: at(400), celsius: celsius(16) }];
    const pieces = piecesOf(
      atLeast,
      [run(-10)],
      log(
        [
          [0, 20],
          [30, 22],
        ],
        night,
      ),
      at(500),
    );
    expect(pieces.map(({ from, to, celsius: known }) => [minutesPast(from), minutesPast(to), known])).toEqual([
      [-10, 0, undefined],
      [0, 30, 20],
      [30, 240, 22],
      [240, 270, 22],
      [270, 300, undefined],
      [300, 400, 16],
      [400, 500, undefined],
    ]);
  });

  it('given a run that ended, or one that begins later, then nothing outside it counts', () => {
    expect(piecesOf(atLeast, [run(0, 10)], log([[-5, 20]]), at(60))).toEqual([
      { from: at(0), to: at(10), celsius: celsius(20) },
    ]);
    expect(piecesOf(atLeast, [run(70)], log([[-5, 20]]), at(60))).toEqual([]);
  });
});
