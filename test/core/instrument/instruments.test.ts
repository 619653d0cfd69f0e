// Instruments by name: which one a reading was made with, what an overdue check marks, and what rests on one that failed.

import { describe, expect, it } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { given, type Shift } from '../given.ts';

const gauges = ['07:30 instrument gauge-1 gauge due 2026-12-01', '07:30 instrument gauge-2 gauge due 2026-12-01'];
const cured = (...parts: readonly string[]) => [
  ...['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:10 weigh 1 1201g 1198g', '09:55 filter 1'],
  `10:00 coat ${parts.map((part) => `new ${part}`).join(' ')} 1 brush`,
  ...[`10:15 dry ${parts.join(' ')}`, `10:20 cure ${parts.join(' ')} oven 90C`],
  ...parts.map((part) => `10:25 temp ${part} 90C`),
  ...parts.map((part) => `11:26 temp ${part} 90C`),
  `11:27 out ${parts.join(' ')}`,
];

const heldIn = async (shift: Shift) =>
  [...(await shift.shop()).parts.values()]
    .flatMap(({ name, verdict }) => (verdict?.is === 'held' ? [name] : []))
    .sort();

/** What each film, or other reading, was made with. */
const readWith = async (shift: Shift, type = 'FilmRead') =>
  [
    ...(await shift.shop()).parts.values(),
    ...(await shift.shop()).places.values(),
    ...(await shift.shop()).batches.values(),
  ]
    .flatMap(({ entries }) => entries.map(({ fact }) => fact))
    .flatMap((fact) => (fact.type === type && 'instrument' in fact ? [fact.instrument] : []));

describe('which instrument a reading was made with', () => {
  it('given a shop that keeps none, then a reading is as it was, and with a name nobody knows it does not read', async () => {
    const shift = await given(cured('fin-1'));
    expect(await shift.when('11:30 film fin-1 12 12 13um')).toEqual({ recorded: ['FilmRead'] });
    expect(await readWith(shift)).toEqual([]);
    expect(await shift.when('11:31 film fin-1 12 12 13um with gauge-9')).toHaveProperty('misread');
  });

  it('given one of its kind is kept, then it is that one; of several the one that was used there last', async () => {
    const one = await given([gauges[0] ?? '', ...cured('fin-1')]);
    expect(await one.when('11:30 film fin-1 12 12 13um')).toEqual({ recorded: ['FilmRead', 'InstrumentTaken'] });
    const two = await given([...gauges, ...cured('fin-1', 'fin-2', 'fin-3')]);
    expect(await two.when('11:30 film fin-1 12 12 13um')).toEqual({ recorded: ['FilmRead'] });
    await two.when('11:31 film fin-2 12 12 13um with gauge-2');
    expect(await two.when('11:32 film fin-3 12 12 13um')).toEqual({ recorded: ['FilmRead'] });
    expect(await readWith(two)).toEqual(['gauge-2', 'gauge-2']);
  });

  it('given each place and each kind has its own, then they are told apart', async () => {
    const shift = await given([
      ...[
        '07:30 instrument hygro-1 hygrometer',
        '07:30 instrument hygro-2 hygrometer',
        '07:30 instrument scale-1 scale',
      ],
      ...[
        '07:31 instrument probe-1 thermometer',
        '07:32 air 24C 48% with hygro-1',
        '07:33 air 22C 50% booth with hygro-2',
      ],
      ...['07:40 air 24C 48%', '07:41 air 22C 50% in booth', ...cured('fin-1'), '12:00 surface 21C'],
    ]);
    expect(await readWith(shift, 'AirRead')).toEqual(['hygro-1', 'hygro-1', 'hygro-1', 'hygro-2', 'hygro-2']);
    expect(await readWith(shift, 'PartsWeighed')).toEqual(['scale-1']);
    expect(await readWith(shift, 'PartTemperatureRead')).toEqual(['probe-1', 'probe-1']);
    expect(await readWith(shift, 'SurfaceRead')).toEqual(['probe-1']);
  });

  it('given it was another, when that is put right, then what is read next there is read with that', async () => {
    const shift = await given([...gauges, ...cured('fin-1', 'fin-2')]);
    await shift.when('11:30 film fin-1 12 12 13um with gauge-1');
    expect(await shift.when('11:31 amend fin-1 film with gauge-2 ""')).toEqual({
      recorded: ['Amended', 'InstrumentTaken'],
    });
    await shift.when('11:32 film fin-2 12 12 13um');
    expect(await readWith(shift)).toEqual(['gauge-2', 'gauge-2']);
    // And taken back, it is as it was.
    await shift.when('11:33 undo');
    await shift.when('11:34 undo');
    expect(await readWith(shift)).toEqual(['gauge-1']);
    await shift.when('11:35 film fin-2 12 12 13um');
    expect(await readWith(shift)).toEqual(['gauge-1', 'gauge-1']);
  });

  it('given it is of another kind, then it is asked which is meant', async () => {
    const shift = await given([...gauges, '07:31 instrument scale-1 scale', ...cured('fin-1')]);
    expect(await shift.when('11:30 film fin-1 12 12 13um with scale-1')).toEqual({ unclear: 'no-such-instrument' });
    expect(await shift.when('11:30 amend 1 weigh with gauge-1 ""')).toEqual({ unclear: 'no-such-instrument' });
    expect(await shift.when('11:30 instrument gauge-3')).toEqual({ unclear: 'which-kind' });
    expect(await shift.when('11:30 calibrated gauge-3 ok')).toEqual({ unclear: 'no-such-instrument' });
  });

  it('given the one used last failed its check or is out of use, then another of its kind is taken', async () => {
    const shift = await given([
      ...gauges,
      ...cured('fin-1', 'fin-2', 'fin-3'),
      '11:30 film fin-1 12 12 13um with gauge-1',
    ]);
    await shift.when('11:31 calibrated gauge-1 failed');
    await shift.when('11:32 film fin-2 12 12 13um');
    expect(await readWith(shift)).toEqual(['gauge-1', 'gauge-2']);
    expect(await heldIn(shift)).toEqual(['fin-1']);
    await shift.when('11:33 instrument gauge-2 retired');
    await shift.when('11:34 film fin-3 12 12 13um');
    // The only one left is one that failed: what it reads is held.
    expect(await readWith(shift)).toEqual(['gauge-1', 'gauge-2', 'gauge-1']);
    expect(await heldIn(shift)).toEqual(['fin-1', 'fin-3']);
  });
});

describe('an overdue check', () => {
  it('given its day is past, then what is read from then on is marked, and nothing is held', async () => {
    const shift = await given(['07:30 instrument gauge-1 gauge due 2026-03-02', ...cured('fin-1')]);
    await shift.when('11:30 film fin-1 12 12 13um');
    expect(await shift.deviations()).toEqual([]);
    await shift.when('Tue 08:00 film fin-1 12 12 13um');
    expect(await shift.deviations()).toEqual(['FilmRead Tue 08:00 instrument-overdue']);
    expect(await heldIn(shift)).toEqual([]);
    // Checked before it, as is told only now.
    await shift.when('Tue 08:10 calibrated gauge-1 ok next 2027-03-01 at 07:00');
    expect(await shift.deviations()).toEqual([]);
  });
});

describe('a check that failed', () => {
  const read = ['07:31 calibrated gauge-2 ok next 2026-12-01', ...cured('fin-1', 'fin-2', 'fin-3')];

  it('given parts were read with it since its last good one, then each is held, and no other', async () => {
    const shift = await given([
      ...[...gauges, ...read, '11:30 film fin-1 12 12 13um with gauge-2', '11:31 film fin-2 12 12 13um with gauge-2'],
      ...['11:32 film fin-3 12 12 13um with gauge-1', '11:40 @omar: release fin-1', '11:41 shipped fin-1'],
    ]);
    expect(await shift.when('12:00 calibrated gauge-2 failed')).toEqual({
      recorded: ['InstrumentChecked', 'PartHeld', 'PartHeld'],
    });
    expect(await heldIn(shift)).toEqual(['fin-1', 'fin-2']);
    // The release of it rests on it as well.
    expect(await shift.deviations()).toEqual([
      'FilmRead 11:30 instrument-failed',
      'FilmRead 11:31 instrument-failed',
      'PartReleased 11:40 instrument-failed',
    ]);
  });

  it('given a good one lies between, then what was read before it stands', async () => {
    const shift = await given([
      ...[...gauges, ...read, '11:30 film fin-1 12 12 13um with gauge-2', '11:35 calibrated gauge-2 ok'],
      '11:40 film fin-2 12 12 13um with gauge-2',
    ]);
    await shift.when('12:00 calibrated gauge-2 failed');
    expect(await heldIn(shift)).toEqual(['fin-2']);
    await shift.when('12:10 calibrated gauge-2 ok');
    expect(await shift.when('12:11 film fin-3 12 12 13um with gauge-2')).toEqual({ recorded: ['FilmRead'] });
    expect(await heldIn(shift)).toEqual(['fin-2']);
  });

  it('given a year has gone by and nothing of it is live any more, then its parts are found all the same', async () => {
    const store = openSqliteStore(':memory:');
    const before = await given(
      [
        ...[...gauges, ...read, '11:30 film fin-1 12 12 13um with gauge-2', '11:31 film fin-2 12 12 13um with gauge-1'],
        ...['11:40 @omar: release fin-1 fin-2 fin-3', '11:41 shipped fin-1 fin-2 fin-3', '11:42 empty 1'],
      ],
      { store },
    );
    await before.until('Sun 23:00');
    const later = await given([], { store, week: '2027-03-01' });
    expect(await later.when('08:00 calibrated gauge-2 failed')).toEqual({
      recorded: ['InstrumentChecked', 'PartHeld'],
    });
    expect(await heldIn(later)).toEqual(['fin-1']);
  });

  it('given the air of a coat and of a cure in the room, or the weights of a pot, were read with it, then what rests on them is held', async () => {
    const hygrometer = await given([
      ...[
        '07:30 instrument hygro-1 hygrometer',
        ...cured('fin-1'),
        '12:00 coat new fin-2 1 brush',
        '12:10 air 24C 48%',
        '12:15 dry fin-2',
      ],
      ...['12:20 cure fin-2 room', '12:30 @omar: release fin-1', '12:31 shipped fin-1', '12:32 empty 1'],
    ]);
    await hygrometer.when('13:00 calibrated hygro-1 failed');
    expect(await heldIn(hygrometer)).toEqual(['fin-1', 'fin-2']);
    expect(await hygrometer.deviations()).toEqual(
      expect.arrayContaining([
        'AirRead 08:00 instrument-failed',
        'CoatApplied 10:00 instrument-failed',
        'CureStarted 12:20 instrument-failed',
      ]),
    );
    const scale = await given(['07:30 instrument scale-1 scale', ...cured('fin-1'), '12:30 @omar: release fin-1']);
    await scale.when('13:00 calibrated scale-1 failed');
    expect(await heldIn(scale)).toEqual(['fin-1']);
    const probe = await given([
      '07:30 instrument probe-1 thermometer',
      ...cured('fin-1'),
      '12:30 @omar: release fin-1',
    ]);
    await probe.when('13:00 calibrated probe-1 failed');
    expect(await heldIn(probe)).toEqual(['fin-1']);
  });

  it('given one reading was of a whole load, then all of the load is held', async () => {
    const shift = await given([
      ...['07:30 instrument probe-1 thermometer', '08:00 air 24C 48%', '08:00 mix 2.4kg', '08:10 weigh 1 1201g 1198g'],
      ...[
        '09:55 filter 1',
        '10:00 part fin-1 steel 10mm',
        '10:00 part fin-2 steel 5mm',
        '10:00 coat fin-1 fin-2 1 brush',
      ],
      ...['10:15 dry fin-1 fin-2', '10:20 cure fin-1 fin-2 oven 90C', '10:50 temp 90C'],
    ]);
    await shift.when('11:00 calibrated probe-1 failed');
    expect(await heldIn(shift)).toEqual(['fin-1', 'fin-2']);
    // And what is read with it from then on.
    const again = await given([
      '07:30 instrument probe-1 thermometer',
      '07:31 calibrated probe-1 failed',
      ...cured('fin-1'),
    ]);
    expect(await heldIn(again)).toEqual(['fin-1']);
  });

  it('given the air was read with it, then nothing more is coated in that air, until it is read with another', async () => {
    const shift = await given([
      '07:30 instrument hygro-1 hygrometer',
      ...cured('fin-1'),
      '11:30 calibrated hygro-1 failed',
    ]);
    expect(await shift.when('11:40 coat new fin-2 1 brush')).toEqual({ objected: ['instrument-failed'] });
    await shift.when('11:41 instrument hygro-2 hygrometer');
    await shift.when('11:42 air 24C 48%');
    expect(await shift.when('11:43 coat new fin-2 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given it was a slip, when it is taken back or put right, then the marks go; and the holds with what is taken back', async () => {
    const told = [...gauges, ...read, '11:30 film fin-1 12 12 13um with gauge-2', '12:00 calibrated gauge-2 failed'];
    const undone = await given([...told, '12:01 undo']);
    expect(await undone.deviations()).toEqual([]);
    expect(await heldIn(undone)).toEqual([]);
    const amended = await given([...told, '12:01 amend calibrated ok wrong gauge']);
    expect(await amended.deviations()).toEqual([]);
    // What is held stays so until somebody decides.
    expect(await heldIn(amended)).toEqual(['fin-1']);
  });

  it('given it was told as good, when it is put right, then what was read with it is held, gone or not', async () => {
    const shift = await given([
      ...[...gauges, ...read, '11:30 film fin-1 12 12 13um with gauge-2', '11:40 @omar: release fin-1 fin-2 fin-3'],
      ...['11:41 shipped fin-1 fin-2 fin-3', '11:42 empty 1', '12:00 calibrated gauge-2 ok'],
    ]);
    await shift.until('Wed 08:00');
    expect(await shift.when('Wed 08:00 amend calibrated failed misread the block')).toEqual({
      recorded: ['Amended', 'PartHeld'],
    });
    expect(await heldIn(shift)).toEqual(['fin-1']);
  });

  it('given what was read with it is read again with another, then the release rests on that', async () => {
    const shift = await given([
      ...gauges,
      ...read,
      '11:30 film fin-1 12 12 13um with gauge-2',
      '12:00 calibrated gauge-2 failed',
    ]);
    await shift.when('12:05 film fin-1 12 12 13um with gauge-1');
    expect(await shift.when('12:06 @omar: release fin-1')).toEqual({ objected: ['on-hold'] });
    expect(await shift.when('12:07 @omar: release fin-1 permit hold read again')).toEqual({
      recorded: ['PartReleased'],
    });
    expect(await shift.deviations()).toEqual([
      'FilmRead 11:30 instrument-failed',
      'PartReleased 12:07 on-hold permitted: read again',
    ]);
  });

  it('given a part was scrapped since, or put right to another instrument, then nothing of it is held', async () => {
    const shift = await given([
      ...[...gauges, ...read, '11:30 film fin-1 12 12 13um with gauge-2', '11:31 film fin-2 12 12 13um with gauge-2'],
      ...['11:40 @omar: scrap fin-1 cracked', '11:41 amend fin-2 film with gauge-1 ""'],
    ]);
    await shift.when('12:00 calibrated gauge-2 failed');
    expect(await heldIn(shift)).toEqual([]);
  });

  it('given a reading is put right to one that failed, then its part is held', async () => {
    const shift = await given([
      ...[...gauges, ...read, '11:30 film fin-1 12 12 13um with gauge-1', '12:00 calibrated gauge-2 failed'],
    ]);
    await shift.when('12:05 amend fin-1 film with gauge-2 ""');
    expect(await heldIn(shift)).toEqual(['fin-1']);
  });
});
