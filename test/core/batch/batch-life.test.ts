// A batch of the demo clear from the first reading to the released part. Figures of that sheet: 1 : 1 by weight, stir 90
// to 120 minutes, filter 1 um, flash-off 10 to 15 minutes, cure 1 h at 90 degC (common practice, no source); the
// temperatures and the pot life are invented.

import { describe, expect, it } from 'vitest';
import { phaseOf } from '../../../core/batch/batch.ts';
import { phaseOfPart } from '../../../core/part/part.ts';
import { given } from '../given.ts';

// 24 degC: stir 120 - 9 * 2 = 102 minutes; pot life 360 - 4 * 18 = 288 minutes.
const weighed = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1201g 1198g'];

describe('a batch, straight through', () => {
  it('given air and a mix, when it is weighed, then stir and pot life run from there', async () => {
    const shift = await given(weighed);
    expect(await shift.plan()).toEqual({
      'batch/1/stir-done': '09:42',
      'batch/1/pot-half': '10:24',
      // The air serves four hours, until 12:00; then 48 of 288 minutes are left and go at the sheet's fastest, 200
      // minutes for the whole: 48 / 288 * 200 = 33 min 20 s. The margin is 30 minutes before.
      'batch/1/pot-margin': '12:03:20',
      'batch/1/pot-end': '12:33:20',
      'place/room/air-due': '12:00',
      'crew/digest/2026-03-02': '17:00',
    });
  });

  it('given each act in its turn, then each starts its own clock and ends the one before', async () => {
    const shift = await given(weighed);
    expect(await shift.when('09:42 filter 1')).toEqual({ recorded: ['MixFiltered'] });
    expect(Object.keys(await shift.plan())).not.toContain('batch/1/stir-done');

    expect(await shift.when('09:50 coat new impeller-7 1 brush')).toEqual({ recorded: ['CoatApplied'] });
    expect(await shift.plan()).toMatchObject({
      'part/impeller-7/flash-least': '10:00',
      'part/impeller-7/flash-most': '10:05',
    });

    expect(await shift.when('10:01 flush gun')).toEqual({ recorded: ['GearFlushed'] });
    expect(await shift.when('10:02 dry impeller-7')).toEqual({ recorded: ['FilmDry'] });
    expect(Object.keys(await shift.plan()).filter((key) => key.startsWith('part/'))).toEqual([]);

    expect(await shift.when('10:05 cure impeller-7 oven 90C')).toEqual({ recorded: ['CureStarted'] });
    expect(await shift.plan()).toMatchObject({ 'part/impeller-7/cure-done': '11:05' });
    expect(await shift.when('10:25 temp impeller-7 92C')).toEqual({ recorded: ['PartTemperatureRead'] });
    expect(await shift.plan()).toMatchObject({ 'part/impeller-7/cure-done': '11:25' });
    await shift.when('11:25 temp impeller-7 91C');
    expect(await shift.when('11:25 out impeller-7')).toEqual({ recorded: ['CureEnded'] });
    expect(await shift.when('11:30 release impeller-7')).toEqual({ recorded: ['PartReleased'] });
    expect(await shift.when('11:35 empty 1 60g')).toEqual({ recorded: ['PotEmptied'] });

    // What the sheet promises of a cured part rings though it was released: service an hour after its cure, best after a week.
    expect(await shift.plan()).toEqual({
      'crew/digest/2026-03-02': '17:00',
      'part/impeller-7/after-service': '12:25',
      'part/impeller-7/after-improves': '2026-03-09 11:25',
    });
    expect(await shift.deviations()).toEqual([]);
  });

  it('given the whole of it, then the record holds each act once, in order, with the bells that rang', async () => {
    const shift = await given([
      ...weighed,
      '09:42 filter 1',
      '09:50 coat new impeller-7 1 brush',
      '10:02 dry impeller-7',
    ]);
    expect((await shift.events()).map(({ body }) => body.type)).toEqual([
      'AirRead',
      'BatchOpened',
      'PartsWeighed',
      'Rang', // stirring done
      'MixFiltered',
      'CoatApplied',
      'Rang', // flash-off at its least
      'FilmDry',
    ]);
  });

  it('given no number on the line, then the only batch that fits is meant', async () => {
    const shift = await given(['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:05 mix 1.2kg', '08:10 weigh 1 1200g 1200g']);
    expect(await shift.when('08:12 weigh 600g 600g')).toEqual({ recorded: ['PartsWeighed'] });
    expect((await shift.shop()).batches.get(2)?.weighing?.partAGrams).toBe(600);
    expect(await shift.when('08:15 stop')).toEqual({ unclear: 'which-batch' });
    expect(await shift.when('08:15 stop 3')).toEqual({ unclear: 'no-such-batch' });
  });

  it('given each act, then the pot is in the phase that it names', async () => {
    const phases: string[] = [];
    const shift = await given(weighed.slice(0, 2));
    const note = async (): Promise<void> => {
      const batch = (await shift.shop()).batches.get(1);
      if (batch !== undefined) phases.push(phaseOf(batch).is);
    };
    await note();
    for (const line of ['08:00 weigh 1 1200g 1200g', '08:10 stop 1', '08:20 stir 1', '10:00 filter 1', '10:10 gel 1']) {
      await shift.when(line);
      await note();
    }
    await shift.when('10:20 empty 1 already');
    await note();
    expect(phases).toEqual(['to-weigh', 'blending', 'paused', 'blending', 'filtered', 'dead', 'emptied']);
  });

  it('given a part, then its phase follows coat, dry, cure, out, release', async () => {
    const phases: string[] = [];
    const shift = await given([...weighed, '08:00 part impeller-7 cast-iron 12mm 0.8m2 max 120C', '09:42 filter 1']);
    const lines = [
      '09:50 coat impeller-7 1 brush',
      '10:02 dry impeller-7',
      '10:05 cure impeller-7 oven',
      '10:05 temp impeller-7 95C',
      '11:05 temp impeller-7 90C',
      '11:05 out impeller-7',
      '11:20 release impeller-7',
    ];
    for (const line of lines) {
      await shift.when(line);
      const part = (await shift.shop()).parts.get('impeller-7');
      if (part !== undefined) phases.push(phaseOfPart(part).is);
    }
    expect(phases).toEqual(['flashing', 'dry', 'curing', 'curing', 'curing', 'cured', 'released']);
  });

  it('given three parts on one line, then they are coated together or not at all', async () => {
    const shift = await given([...weighed, '09:42 filter 1']);
    expect(await shift.when('09:50 coat new valve-1 valve-2 valve-3 1 brush')).toEqual({
      recorded: ['CoatApplied', 'CoatApplied', 'CoatApplied'],
    });
    expect(await shift.when('10:00 coat new valve-3 valve-4 1 brush')).toEqual({ objected: ['recoat-forbidden'] });
    expect((await shift.shop()).parts.has('valve-4')).toBe(false);
  });

  it('given a slip in a name, then the known one is asked about before anything is recorded', async () => {
    const shift = await given([...weighed, '09:42 filter 1', '09:50 part impeller-7 cast-iron']);
    expect(await shift.when('09:55 coat impelle-7 1 brush')).toEqual({ unclear: 'new-part' });
    expect(await shift.when('09:55 coat new impeller-8 1 brush')).toEqual({ recorded: ['CoatApplied'] });
  });

  it('given nobody has said a thing about a part, then an act on it is not clear', async () => {
    const shift = await given(weighed);
    expect(await shift.when('10:00 dry impeller-7')).toEqual({ unclear: 'new-part' });
  });
});
