// Amendments: what was wrong is put right in place, who, when and why are kept, and everything that follows from it
// follows: figures, bells, deviations. Nothing in the record is changed or erased.

import { describe, expect, it } from 'vitest';
import { given } from '../given.ts';

const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:20 weigh 1 1201g 1198g'];

describe('an amendment', () => {
  it('given a wrong scale, when the weights are amended, then the new ones count and the old stand beside them', async () => {
    const shift = await given(weighed);
    expect(await shift.when('08:30 @omar: amend 1 weigh 1201g 1169g wrong scale')).toEqual({ recorded: ['Amended'] });
    const batch = (await shift.shop()).batches.get(1);
    expect(batch?.weighing).toMatchObject({ partAGrams: 1201, partBGrams: 1169, by: 'kari', corrected: true });
    const entry = batch?.entries.find(({ fact }) => fact.type === 'PartsWeighed');
    expect(entry?.corrections).toMatchObject([
      { by: 'omar', at: shift.time('08:30'), why: 'wrong scale', wasAt: shift.time('08:20') },
    ]);
    expect(entry?.corrections[0]?.wasFact).toMatchObject({ partAGrams: 1201, partBGrams: 1198 });
  });

  it('given what it now makes wrong, then it is taken and marked a deviation, and unmarked when amended back', async () => {
    const shift = await given(weighed);
    await shift.when('08:30 amend 1 weigh 1201g 1169g wrong scale');
    // (1169 / 1201) - 1 = -2.66 %, against 2 % (invented).
    expect(await shift.deviations()).toEqual(['PartsWeighed 08:20 ratio-out']);
    await shift.when('08:40 amend 1 weigh 1201g 1198g it was the right one');
    expect(await shift.deviations()).toEqual([]);
  });

  it('given the time of the weighing was wrong, then stir and pot life move with it', async () => {
    const shift = await given(weighed);
    expect(await shift.plan()).toMatchObject({ 'batch/1/stir-done': '10:02', 'batch/1/pot-half': '10:44' });
    await shift.when('08:30 amend 1 weigh at 8:10 "clock was slow"');
    expect(await shift.plan()).toMatchObject({ 'batch/1/stir-done': '09:52', 'batch/1/pot-half': '10:34' });
  });

  it('given the air was misread, then every clock that ran by it moves', async () => {
    const shift = await given(weighed);
    await shift.when('08:30 amend air 30C misread');
    // 90 minutes at 30 degC; half of 200 minutes of pot life.
    expect(await shift.plan()).toMatchObject({ 'batch/1/stir-done': '09:50', 'batch/1/pot-half': '10:00' });
  });

  it('given thick and later gelled, when the time of one is amended, then that one moves and not the other', async () => {
    const shift = await given([...weighed, '10:10 thick 1', '10:40 gel 1']);
    expect(await shift.when('10:45 amend 1 thick at 10:05 "told late"')).toEqual({ recorded: ['Amended'] });
    expect(await shift.when('10:46 amend 1 gel at 10:35 "told late"')).toEqual({ recorded: ['Amended'] });
    const seen = ((await shift.shop()).batches.get(1)?.entries ?? []).flatMap(({ fact, happenedAt }) =>
      fact.type === 'MixThickened' ? [`${fact.seen} ${shift.spoken(happenedAt)}`] : [],
    );
    expect(seen).toEqual(['thick 10:05', 'gelled 10:35']);
  });

  it('given only thick, when a gel is amended, then there is none to amend', async () => {
    const shift = await given([...weighed, '10:10 thick 1']);
    expect(await shift.when('10:45 amend 1 gel at 10:05 "told late"')).toEqual({ unclear: 'nothing-to-amend' });
  });

  it('given only the humidity was wrong, then the temperature stays', async () => {
    const shift = await given(weighed);
    await shift.when('08:30 amend air 90% misread');
    expect((await shift.shop()).places.get('room')?.air).toMatchObject([{ celsius: 24, relativeHumidityPercent: 90 }]);
    expect(await shift.deviations()).toEqual(['BatchOpened 08:00 air-outside']);
  });

  it('given a coat told too early, when its time is amended to after the end of the pot, then it is a deviation', async () => {
    const shift = await given([...weighed, '10:02 filter 1', '12:30 coat new impeller-7 1 brush']);
    expect(await shift.deviations()).toEqual([]);
    await shift.when('13:10 amend impeller-7 coat at 13:05 "told too early"');
    expect(await shift.deviations()).toEqual(['CoatApplied 13:05 past-pot-life']);
  });

  it.each([
    ['temp', '10:40 temp impeller-7 60C', '10:45 amend impeller-7 temp 95C misread', { celsius: 95 }],
    ['oven', '10:41 hold impeller-7 wait', '10:45 amend impeller-7 cure 100C misread', { setCelsius: 100 }],
    ['film', '10:40 film impeller-7 12 14um', '10:45 amend impeller-7 film 15 16um misread', { micrometres: [15, 16] }],
    [
      'wet film',
      '10:40 wet impeller-7 60 65um',
      '10:45 amend impeller-7 wet 50 55um misread',
      { micrometres: [50, 55] },
    ],
    ['waste', '10:40 empty 1 200g', '10:45 amend 1 empty 300g misread', { leftGrams: 300 }],
    ['surface', '10:40 surface 20C', '10:45 amend surface 22C misread', { celsius: 22 }],
    ['night', '10:40 night 12C', '10:45 amend night 16C misread', { lowestCelsius: 16 }],
  ])('given a wrong %s, then the right one stands in its place', async (_, line, amendment, figures) => {
    const shift = await given([
      ...weighed,
      '10:02 filter 1',
      '10:05 coat new impeller-7 1 brush',
      '10:16 dry impeller-7',
      '10:30 cure impeller-7 oven 90C',
      line,
    ]);
    expect(await shift.when(amendment)).toEqual({ recorded: ['Amended'] });
    const amended = (await shift.events()).at(-1)?.body;
    expect(amended).toMatchObject({ type: 'Amended', to: { kind: 'corrected', fact: figures } });
  });

  it('given nothing to amend, nothing changed, or a time to come, then nothing is recorded', async () => {
    const shift = await given(weighed);
    expect(await shift.when('08:30 amend 1 filter at 8:10 typo')).toEqual({ unclear: 'nothing-to-amend' });
    expect(await shift.when('08:30 amend 1 weigh 1201g 1198g same')).toEqual({ unclear: 'nothing-changed' });
    expect(await shift.when('08:30 amend 1 weigh at 9:10 typo')).toHaveProperty('misread');
    expect((await shift.events()).some(({ body }) => body.type === 'Amended')).toBe(false);
  });
});

describe('the record', () => {
  it('given amendments and undos, then every row of before is as it was, to the last hash', async () => {
    const shift = await given([...weighed, '10:02 filter 1', '10:05 coat new impeller-7 1 brush']);
    let before = await shift.events();
    for (const line of [
      '10:10 amend 1 weigh 1201g 1169g wrong scale',
      '10:11 amend air 30C misread',
      '10:12 amend impeller-7 coat at 10:06 "told late"',
      '10:13 undo',
      '10:14 @omar: thick 1',
      '10:15 @omar: undo',
    ]) {
      expect(await shift.when(line)).toHaveProperty('recorded');
      const after = await shift.events();
      expect(after.slice(0, before.length)).toEqual(before);
      expect(after.length).toBeGreaterThan(before.length);
      before = after;
    }
  });
});
