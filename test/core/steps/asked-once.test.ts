// The steps that a maker's paper asks for beside its figures: each asked once, at most one a batch, and remembered for the
// place, the reader or the crew. That they are asked for: common practice, no source.

import { describe, expect, it } from 'vitest';
import type { Shop } from '../../../core/shop.ts';
import { answerTo, stepAskedAt } from '../../../core/steps/steps-answered.ts';
import { epochMs } from '../../../core/units.ts';
import { demoShelf, given, type Shift } from '../given.ts';

const air = '08:00 air 22C 50%';

function askedAt(shop: Shop, number: number) {
  const batch = shop.batches.get(number);
  return batch && stepAskedAt(shop.crew.stepAnswers, batch, epochMs(Number.MAX_SAFE_INTEGER));
}

const askedBy = async (shift: Shift, batch: number) => askedAt(await shift.shop(), batch);

describe('a step that the sheet asks for', () => {
  it('given nobody has answered anything, then a batch asks the first, which is what can hurt somebody', async () => {
    const shift = await given([air, '08:01 mix 2.4kg']);
    expect(await askedBy(shift, 1)).toBe('equipment');
  });

  it('given it was answered, then that batch asks no more, and the next one asks the next', async () => {
    const shift = await given([air, '08:01 mix 2.4kg', '08:02 confirm equipment yes']);
    expect(await askedBy(shift, 1)).toBeUndefined();
    await shift.when('08:03 mix 1kg');
    expect(await askedBy(shift, 2)).toBe('bonding');
  });

  it('given it was answered in the minute in which the batch was opened, then that batch asks no more either', async () => {
    const shift = await given([air, '08:01 mix 2.4kg', '08:01 confirm equipment yes']);
    expect(await askedBy(shift, 1)).toBeUndefined();
  });

  it('given every step was answered, then nothing is asked any more', async () => {
    const shift = await given([
      air,
      '08:01 mix 2.4kg',
      ...['equipment', 'bonding', 'papers', 'vessel', 'clean-oven', 'clean-room'].map(
        (step) => `08:02 confirm ${step} yes`,
      ),
      '08:03 mix 1kg',
    ]);
    expect(await askedBy(shift, 2)).toBeUndefined();
  });

  it('given four batches opened in one minute, each answered, then each asks another step', async () => {
    const shift = await given([air, '08:01 mix 1kg']);
    const asked = [await askedBy(shift, 1)];
    for (const batch of [2, 3, 4]) {
      await shift.when(`08:01 confirm ${batch - 1} ${asked.at(-1)} yes`);
      await shift.when('08:01 mix 1kg');
      asked.push(await askedBy(shift, batch));
    }
    expect(asked).toEqual(['equipment', 'bonding', 'papers', 'vessel']);
  });

  it('given one has read the papers, then whoever opens the next batch is asked for themselves', async () => {
    const others = ['equipment', 'bonding', 'vessel', 'clean-oven', 'clean-room'].map(
      (step) => `08:02 confirm ${step} yes`,
    );
    const shift = await given([air, '08:01 mix 2.4kg', ...others, '08:02 confirm papers yes', '08:03 @omar: mix 1kg']);
    expect(await askedBy(shift, 2)).toBe('papers');
    await shift.when('08:04 mix 1kg');
    expect(await askedBy(shift, 3)).toBeUndefined();
  });

  it('given a sheet that has no such step, then it is never asked', async () => {
    const shift = await given([air, '08:01 mix 6.45kg demo-build']);
    const { steps } = (await shift.shop()).batches.get(1)?.sheet ?? {};
    expect([steps, await askedBy(shift, 1)]).toEqual([undefined, undefined]);
  });
});

describe('a step that the crew lacks', () => {
  it('given equipment that is not rated, then no part goes in until it is', async () => {
    const shift = await given([air, '08:01 mix 2.4kg', '08:02 confirm equipment no']);
    expect(await shift.when('08:03 weigh 1 1201g 1199g')).toEqual({ objected: ['step-lacking'] });
    await shift.when('08:04 confirm equipment yes');
    expect(await shift.when('08:05 weigh 1 1201g 1199g')).toEqual({ recorded: ['PartsWeighed'] });
  });

  it('given the parts met all the same, then it stands as a deviation', async () => {
    const shift = await given([
      air,
      '08:01 mix 2.4kg',
      '08:02 confirm bonding no',
      '08:03 weighed 1 1201g 1199g already',
    ]);
    expect(await shift.deviations()).toEqual(['PartsWeighed 08:03 step-lacking']);
  });

  it('given no clean oven, then a cure in the oven waits and one in the room does not', async () => {
    const shift = await given([
      '08:00 air 24C 48%',
      ...['08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1', '10:00 coat new impeller-7 1 brush'],
      ...['10:12 dry impeller-7', '10:13 confirm clean-oven no'],
    ]);
    expect(await shift.when('10:20 cure impeller-7 oven 90C')).toEqual({ objected: ['step-lacking'] });
    expect(await shift.when('10:21 cure impeller-7 room')).toEqual({ recorded: ['CureStarted'] });
  });
});

it('given the demo sheet, then it has every step that can be asked', () => {
  const read = demoShelf.get('demo-clear');
  const { steps } = read?.kind === 'sheet' ? read.sheet : {};
  expect(Object.keys(steps ?? {})).toEqual(
    expect.arrayContaining(['papers', 'equipment', 'bonding', 'vessel', 'cleanOven', 'cleanRoom']),
  );
});

describe('the strength of the bottle that the flush ends with', () => {
  const others = ['equipment', 'bonding', 'papers', 'vessel', 'clean-oven', 'clean-room'].map(
    (step) => `08:00 confirm ${step} yes`,
  );
  const brushed = [
    ...[air, ...others, '08:01 mix 2.4kg', '08:01 weigh 1 1200g 1200g', '09:48 filter 1'],
    ...['09:50 coat new lid-1 1 brush', '09:55 flush brush acetone'],
  ];

  it('given a flush with it, then the batch asks once, if it has asked nothing else', async () => {
    const shift = await given(brushed);
    expect(await askedBy(shift, 1)).toBeUndefined();
    await shift.when('09:56 flush brush ipa');
    expect(await askedBy(shift, 1)).toBe('alcohol');
    await shift.when('09:57 confirm alcohol yes');
    expect(await askedBy(shift, 1)).toBeUndefined();
    const early = await given([air, '08:01 mix 2.4kg', '08:01 weigh 1 1200g 1200g', '09:48 filter 1']);
    await early.when('09:50 coat new lid-1 1 brush');
    await early.when('09:55 flush brush');
    expect(await askedBy(early, 1)).toBe('equipment');
  });

  it('given a weaker bottle, then a flush with it is a deviation, until a new one is told of; acetone alone is none', async () => {
    const shift = await given([...brushed.slice(0, -1), '09:52 ipa 90%']);
    await shift.when('09:55 flush brush acetone');
    expect(await shift.deviations()).toEqual([]);
    await shift.when('09:56 flush brush ipa');
    expect(await shift.deviations()).toEqual(['GearFlushed 09:56 step-lacking']);
    await shift.when('10:00 new ipa 99%');
    await shift.when('10:05 coat new lid-2 1 brush');
    await shift.when('10:10 flush brush');
    expect(await shift.deviations()).toEqual(['GearFlushed 09:56 step-lacking']);
  });

  it('given it is taken back, then nobody knows, and two pots ask of no pot', async () => {
    const shift = await given([...brushed, '09:56 ipa 90%', '09:57 undo', '09:58 flush brush ipa']);
    expect(await shift.deviations()).toEqual([]);
    await shift.when('09:59 mix 1kg');
    expect(await shift.when('10:00 ipa 99%')).toEqual({ recorded: ['StepAnswered'] });
  });
});

describe('the vessel', () => {
  it('given a mix that names what its vessel is of, then that answers the step, once', async () => {
    const shift = await given([air]);
    expect(await shift.when('08:01 mix 2.4kg in stainless 5L')).toEqual({ recorded: ['BatchOpened', 'StepAnswered'] });
    expect(await shift.when('08:02 mix 1kg in stainless 5L')).toEqual({ recorded: ['BatchOpened'] });
  });

  it('given two pots in different vessels, then what was said of the later one says nothing of the first', async () => {
    const shift = await given([
      ...[air, '08:01 mix 1kg in stainless 5L', '08:02 mix 1kg in hdpe 5L', '08:03 confirm 2 vessel no'],
    ]);
    expect(await shift.when('08:04 weigh 2 500g 500g')).toEqual({ objected: ['step-lacking'] });
    expect(await shift.when('08:05 weigh 1 500g 500g')).toEqual({ recorded: ['PartsWeighed'] });
  });

  it('given the last pot stood in the wrong one, then so does the next until somebody says otherwise', async () => {
    const shift = await given([air, '08:01 mix 1kg', '08:02 confirm 1 vessel no', '08:03 mix 1kg']);
    expect(await shift.when('08:04 weigh 2 500g 500g')).toEqual({ objected: ['step-lacking'] });
    await shift.when('08:05 confirm 2 vessel yes');
    expect(await shift.when('08:06 weigh 2 500g 500g')).toEqual({ recorded: ['PartsWeighed'] });
    expect(await shift.when('08:07 weigh 1 500g 500g')).toEqual({ objected: ['step-lacking'] });
  });

  it('given a vessel that one sheet allows, then nothing is known of it for another sheet', () => {
    const answer = {
      seq: 1,
      by: 'kari',
      happenedAt: epochMs(0),
      fact: {
        ...{ type: 'StepAnswered' as const, step: 'vessel' as const, kept: true },
        ...{ sheet: 'demo-clear', revision: '1', place: 'room' },
      },
    };
    const of = (id: string) => ({ sheet: { id, revision: '1' }, place: 'room', reader: 'kari' });
    expect(answerTo([answer], 'vessel', of('demo-clear'), epochMs(1))?.kept).toBe(true);
    expect(answerTo([answer], 'vessel', of('own-clear'), epochMs(1))).toBeUndefined();
  });

  it('given a mix that fills more of its vessel than the sheet allows, then it objects before anything goes in', async () => {
    const shift = await given([air]);
    // 1.2 kg / 0.95 + 1.2 kg / 0.92 = 2.57 L, of 2.5 L nine tenths: the densities are invented.
    expect(await shift.when('08:01 mix 2.4kg in glass 2.5L')).toEqual({ objected: ['vessel-too-small'] });
  });
});
